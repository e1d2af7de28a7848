#include "wasm/app/pad.hpp"

#include "wasm/app/form_fields.hpp"

#include <utility>

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

void press_key(std::string& digits, char key, PadSign sign) {
    constexpr std::size_t most_digits = 9;
    constexpr std::size_t most_behind = 2;  // hundredths, or minutes
    if (key == '<') {
        if (!digits.empty()) digits.pop_back();
        return;
    }
    const bool is_sign =
        (key == '.' && sign == PadSign::decimal) || (key == ':' && sign == PadSign::minutes);
    if (!is_sign && (key < '0' || key > '9')) return;
    const std::size_t at = digits.find_first_of(".:");
    const bool has_sign = at != std::string::npos;
    if (is_sign && (has_sign || digits.empty())) return;
    if (has_sign && digits.size() - at > most_behind) return;
    constexpr char most_ten_minutes = '5';
    if (has_sign && digits.back() == ':' && key > most_ten_minutes) return;
    if (digits == "0" && !is_sign) digits.clear();  // no leading zeros
    if (digits.size() < most_digits) digits += key;
}

void press(PadDraft& draft, char key) {
    if (key == 'c' && !draft.digits.empty()) {
        draft.cleared = std::exchange(draft.digits, {});
    } else if (key == 'u' && !draft.cleared.empty()) {
        draft.digits = std::exchange(draft.cleared, {});
    } else if (key != 'c' && key != 'u') {
        draft.cleared.clear();
        press_key(draft.digits, key, PadSign::decimal);
    }
}

LogPage::Pad pad_page(const PadDraft& draft, const views::Assessed& aircraft) {
    LogPage::Pad pad;
    pad.view = views::make_log_view(aircraft);
    pad.digits = draft.digits;
    pad.date_text = draft.date_text;
    pad.can_clear = !draft.digits.empty();
    pad.can_undo_clear = !draft.cleared.empty();
    const base::Result<base::Date> date = base::parse_date(draft.date_text);
    const bool today = date && date.value() == aircraft.today;
    pad.date = today || !date ? base::Message{Word::pad_today, {}}
                              : base::Message{Word::day_figure, {base::day_arg(date.value())}};
    // One tap away is the day it is not.
    pad.days = {quick_days(aircraft.today)[today ? 1 : 0]};
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
