#include "wasm/app/written.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/base/region.hpp"
#include "engine/base/written_number.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Trouble;
using base::Word;

constexpr std::int64_t most_whole = 999'999'999;
constexpr std::int32_t most_shown = 40;  // more rows are not looked through, they are searched

[[nodiscard]] bool is_empty(std::string_view text) {
    return base::without_margins(text).empty();
}

[[nodiscard]] std::string lowered(std::string_view text) {
    std::string out{text};
    for (char& letter : out) {
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    }
    return out;
}

[[nodiscard]] Message hours_message(base::FlightTime time) {
    constexpr std::int64_t minute = 60;
    constexpr std::int64_t hundredth = base::seconds_per_hour / 100;
    const std::int64_t hours = time.seconds / base::seconds_per_hour;
    const std::int64_t minutes = time.seconds % base::seconds_per_hour / minute;
    const std::int64_t seconds = time.seconds % minute;
    const bool whole_tenths = time.seconds % (hundredth * 10) == 0;
    const std::int64_t parts = whole_tenths ? hundredth * 10 : hundredth;
    const base::Arg figure = base::decimal_arg(time.seconds / parts, whole_tenths ? 1 : 2);
    const base::Arg hours_arg = base::whole_arg(hours);
    const base::Arg minutes_arg = base::whole_arg(minutes);
    if (minutes == 0 && seconds == 0)
        return {Word::hours_figure, {base::decimal_arg(time.seconds / parts, 1)}};
    if (time.seconds % hundredth != 0) {
        return {Word::understood_clock, {hours_arg, minutes_arg, figure}};
    }
    if (seconds != 0) {
        return {Word::understood_seconds,
                {figure, hours_arg, minutes_arg, base::whole_arg(seconds)}};
    }
    return {Word::understood_hours, {figure, hours_arg, minutes_arg}};
}

[[nodiscard]] Message size_message(std::int64_t bytes) {
    constexpr std::int64_t kilo = 1000;
    constexpr std::int64_t mega = kilo * kilo;
    if (bytes < kilo) return {Word::file_bytes, {base::whole_arg(bytes)}};
    if (bytes < mega) return {Word::file_kilobytes, {base::whole_arg((bytes + kilo - 1) / kilo)}};
    const std::int64_t tenths = (bytes + mega / 10 - 1) / (mega / 10);
    return {Word::file_megabytes, {base::decimal_arg(tenths, 1)}};
}

[[nodiscard]] Message money_message(const base::Money& money) {
    return {Word::money_figure,
            {base::decimal_arg(money.minor_units, base::minor_digits(money.currency)),
             base::text_arg(base::print_currency(money.currency))}};
}

/// How the text was read; word `blank` when it was not.
[[nodiscard]] Message understood(const FieldView& field) {
    const Message nothing{Word::blank, {}};
    if (field.text.empty() || (is_empty(field.text) && field.kind != FieldKind::secret))
        return nothing;
    switch (field.kind) {
        case FieldKind::hours: {
            const auto time = base::parse_flight_time(field.text);
            return time ? hours_message(time.value()) : nothing;
        }
        case FieldKind::money: {
            const auto money = read_money(field);
            return money ? money_message(money.value()) : nothing;
        }
        case FieldKind::whole: {
            const auto whole = read_whole(field.text);
            return whole ? Message{Word::count_figure, {base::whole_arg(whole.value())}} : nothing;
        }
        case FieldKind::date: {
            const auto date = base::parse_date(base::without_margins(field.text));
            return date ? Message{Word::day_figure, {base::day_arg(date.value())}} : nothing;
        }
        case FieldKind::file:
            return size_message(field.size_bytes);
        case FieldKind::secret:
            return {Word::secret_shown, {base::whole_arg(letters_in(field.text))}};
        case FieldKind::text:
        case FieldKind::note:
        case FieldKind::decimal:
        case FieldKind::code:
        case FieldKind::search:
        case FieldKind::choice:
            return nothing;
    }
    return nothing;
}

template <class Value>
[[nodiscard]] std::optional<base::Problem> first_problem(const base::Result<Value>& result) {
    if (result) return std::nullopt;
    return result.problems().front();
}

}  // namespace

std::int64_t letters_in(std::string_view text) {
    return std::count_if(text.begin(), text.end(), [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
    });
}

base::Result<std::int64_t> read_whole(std::string_view text) {
    const std::optional<std::int64_t> whole = base::parse_whole(text, most_whole);
    if (!whole) return base::trouble(Trouble::form_not_whole, {base::excerpt_arg(text)});
    if (*whole > most_whole)
        return base::trouble(Trouble::form_too_large, {base::excerpt_arg(text)});
    return *whole;
}

base::Result<std::int64_t> read_decimal(std::string_view text, std::int32_t decimals) {
    const base::Arg shown = base::excerpt_arg(text);
    const base::WrittenNumber number = base::read_number(text);
    if (number.form == base::NumberForm::ambiguous)
        return base::trouble(Trouble::form_figure_ambiguous, {shown});
    const bool has_fraction = number.form == base::NumberForm::decimal;
    const auto runs = static_cast<std::int32_t>(number.runs.size());
    const auto whole = base::joined_runs(number, has_fraction ? runs - 1 : runs, most_whole);
    if ((number.form != base::NumberForm::whole && !has_fraction) || !whole)
        return base::trouble(Trouble::form_not_decimal, {shown});
    std::string_view fraction = has_fraction ? number.runs.back() : std::string_view{};
    const auto most = static_cast<std::size_t>(decimals);
    // A zero more makes three digits a fraction and no thousands: it says nothing itself.
    while (fraction.size() > most && fraction.back() == '0')
        fraction.remove_suffix(1);
    if (fraction.size() > most)
        return base::trouble(Trouble::form_decimals, {base::whole_arg(decimals), shown});
    if (*whole > most_whole) return base::trouble(Trouble::form_too_large, {shown});
    std::int64_t out = *whole;
    for (std::size_t at = 0; at < most; ++at)
        out = out * 10 + (at < fraction.size() ? fraction[at] - '0' : 0);
    return number.negative ? -out : out;
}

base::Result<base::Money> read_money(const FieldView& field) {
    const auto& all = base::currencies();
    const auto place = static_cast<std::size_t>(std::max(0, field.chosen));
    return base::parse_money(field.text, place < all.size() ? all[place] : base::Currency{});
}

std::optional<base::Problem> problem_of(const FieldView& field) {
    if (is_empty(field.text)) return std::nullopt;
    switch (field.kind) {
        case FieldKind::hours:
            return first_problem(base::parse_flight_time(field.text));
        case FieldKind::money:
            return first_problem(read_money(field));
        case FieldKind::whole:
            return first_problem(read_whole(field.text));
        case FieldKind::decimal:
            return first_problem(read_decimal(field.text, field_decimals));
        case FieldKind::date:
            return first_problem(base::parse_date(base::without_margins(field.text)));
        case FieldKind::text:
        case FieldKind::note:
        case FieldKind::code:
        case FieldKind::search:
        case FieldKind::secret:
        case FieldKind::choice:
        case FieldKind::file:
            return std::nullopt;
    }
    return std::nullopt;
}

void understand(FieldView& field) {
    field.understood = understood(field);
    field.shown.clear();
    const bool searched = field.kind == FieldKind::search;
    if (!searched && !field.open) return;
    const std::string& query = searched ? field.text : field.filter;
    const auto count = static_cast<std::int32_t>(field.options.size());
    for (std::int32_t at = 0; at < count; ++at) {
        if (static_cast<std::int32_t>(field.shown.size()) == most_shown) break;
        const base::Message& option = field.options[static_cast<std::size_t>(at)];
        if (matches(base::say(option, {}), query)) field.shown.push_back(at);
    }
}

bool matches(std::string_view text, std::string_view query) {
    const std::string where = lowered(text);
    const std::string wanted = lowered(query);
    std::size_t at = 0;
    while (at < wanted.size()) {
        const std::size_t end = std::min(wanted.find(' ', at), wanted.size());
        if (where.find(wanted.substr(at, end - at)) == std::string::npos) return false;
        at = end + 1;
    }
    return true;
}

}  // namespace twoclocks::canvas
