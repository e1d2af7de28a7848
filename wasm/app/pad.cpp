#include "wasm/app/pad.hpp"

#include "engine/base/message_args.hpp"
#include "engine/timeline/entry.hpp"
#include "engine/views/make_views.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// A meter reading typed without its tenth's sign is still a reading; an empty pad is no problem
/// yet.
[[nodiscard]] std::optional<base::FlightTime> reads_of(const PadDraft& draft) {
    if (draft.digits.empty() || draft.digits.back() == '.') return std::nullopt;
    const base::Result<base::FlightTime> reads = base::parse_flight_time(draft.digits);
    if (!reads) return std::nullopt;
    return reads.value();
}

[[nodiscard]] base::Problems problems_of(const PadDraft& draft, const views::Assessed& aircraft) {
    const base::Result<base::Date> date = base::parse_date(draft.date_text);
    if (!date) return date.problems();
    if (draft.digits.empty()) return {};
    const std::string digits = draft.digits.back() == '.' ? draft.digits + '0' : draft.digits;
    const base::Result<base::FlightTime> reads = base::parse_flight_time(digits);
    if (!reads) return reads.problems();
    return timeline::check_reading(aircraft.state, reads.value(), date.value(), aircraft.today);
}

[[nodiscard]] base::Message difference(const PadDraft& draft, const views::LogView& view) {
    const std::optional<base::FlightTime> reads = reads_of(draft);
    if (!reads || !view.last_reads || !view.last_on || *reads < *view.last_reads)
        return {Word::blank, {}};
    const base::FlightTime flown = *reads - *view.last_reads;
    return {Word::pad_difference, {base::hours_used_arg(flown), base::day_arg(*view.last_on)}};
}

/// While a longer number is still being typed, a lower reading is no mistake yet: only as many
/// digits as
/// the last reading had make one.
[[nodiscard]] bool still_typing(const PadDraft& draft, const views::LogView& view) {
    if (!view.last_reads) return false;
    const bool has_point = draft.digits.find('.') != std::string::npos;
    const std::string last = base::print_tenths(*view.last_reads, base::Round::down);
    return !has_point && draft.digits.size() < last.find('.');
}

}  // namespace

void press(PadDraft& draft, char key) {
    constexpr std::size_t most_digits = 9;
    if (key == '<') {
        if (!draft.digits.empty()) draft.digits.pop_back();
        return;
    }
    const std::size_t point = draft.digits.find('.');
    const bool has_point = point != std::string::npos;
    if (key == '.' && (has_point || draft.digits.empty())) return;
    constexpr std::size_t most_decimals = 2;
    if (has_point && draft.digits.size() - point > most_decimals) return;
    if (draft.digits == "0" && key != '.') draft.digits.clear();  // no leading zeros
    if (draft.digits.size() < most_digits) draft.digits += key;
}

LogPage::Pad pad_page(const PadDraft& draft, const views::Assessed& aircraft) {
    LogPage::Pad pad;
    pad.view = views::make_log_view(aircraft);
    pad.digits = draft.digits;
    pad.date_text = draft.date_text;
    const base::Result<base::Date> date = base::parse_date(draft.date_text);
    const bool today = date && date.value() == aircraft.today;
    pad.date = today || !date ? base::Message{Word::pad_today, {}}
                              : base::Message{Word::day_figure, {base::day_arg(date.value())}};
    pad.difference = difference(draft, pad.view);
    const base::Problems problems = problems_of(draft, aircraft);
    pad.can_save = problems.empty() && !draft.digits.empty();
    if (problems.empty()) return pad;
    const base::Trouble code = problems.front().code;
    const bool falls = code == base::Trouble::entry_falls;
    if (falls && still_typing(draft, pad.view)) return pad;
    pad.problem = problems.front();
    pad.offer_meter_change = falls || code == base::Trouble::entry_no_meter;
    return pad;
}

std::optional<facts::Body> pad_body(const PadDraft& draft, const views::Assessed& aircraft) {
    const base::Result<base::Date> date = base::parse_date(draft.date_text);
    const timeline::MeterState* meter = timeline::meter_in_use(aircraft.state);
    PadDraft whole = draft;
    if (!whole.digits.empty() && whole.digits.back() == '.') whole.digits += '0';
    const std::optional<base::FlightTime> reads = reads_of(whole);
    if (!date || meter == nullptr || !reads || !problems_of(whole, aircraft).empty())
        return std::nullopt;
    return facts::Body{
        date.value(), {aircraft.state.id, meter->id}, facts::Reading{*reads, {}, {}}, {}};
}

}  // namespace twoclocks::canvas
