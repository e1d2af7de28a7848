#include "engine/base/flight_time.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "engine/base/message_args.hpp"

namespace twoclocks::base {
namespace {

constexpr std::int64_t seconds_per_minute = 60;
constexpr std::int64_t minutes_per_hour = 60;
constexpr std::size_t group_digits = 3;

// What people and keyboards put between thousands, beside . and , : spaces of any width,
// apostrophes.
constexpr std::array<std::string_view, 6> gaps{
    " ", "'", "\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89", "\xE2\x80\x99"};

// A hyphen, and the minus sign that `say` prints.
constexpr std::array<std::string_view, 2> minuses{"-", "\xE2\x88\x92"};

[[nodiscard]] bool is_digit(char sign) {
    return sign >= '0' && sign <= '9';
}

/// Takes the first of `signs` that `text` begins with off its front.
template <std::size_t size>
[[nodiscard]] bool took(std::string_view& text, const std::array<std::string_view, size>& signs) {
    for (const std::string_view sign : signs) {
        if (!text.starts_with(sign)) continue;
        text.remove_prefix(sign.size());
        return true;
    }
    return false;
}

[[nodiscard]] std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

/// Runs of digits, and one sign between every two: . , : or a space for every kind of gap.
struct Pieces {
    std::vector<std::string_view> runs;
    std::string signs;
};

/// Nothing when it is anything else than runs of digits with one sign between every two.
[[nodiscard]] std::optional<Pieces> split(std::string_view text) {
    Pieces out;
    for (;;) {
        const auto length = static_cast<std::size_t>(
            std::find_if_not(text.begin(), text.end(), is_digit) - text.begin());
        if (length == 0) return std::nullopt;
        out.runs.push_back(text.substr(0, length));
        text.remove_prefix(length);
        if (text.empty()) return out;
        if (took(text, gaps)) {
            out.signs += ' ';
            continue;
        }
        if (std::string_view{".,:"}.find(text.front()) == std::string_view::npos) {
            return std::nullopt;
        }
        out.signs += text.front();
        text.remove_prefix(1);
    }
}

enum class Form : std::uint8_t { whole, decimal, clock, ambiguous, malformed };

/// What the signs between the runs make of them.
[[nodiscard]] Form form_of(const Pieces& pieces) {
    if (pieces.signs.empty()) return Form::whole;
    const char last = pieces.signs.back();
    const std::string_view before{pieces.signs.data(), pieces.signs.size() - 1};
    const char grouping = before.empty() ? ' ' : before.front();
    const bool one_grouping = before.find_first_not_of(grouping) == std::string_view::npos;
    if (!one_grouping || grouping == ':') return Form::malformed;
    if (last == ':') return Form::clock;
    if (last == grouping) return Form::whole;
    if (last == ' ') return Form::malformed;
    const std::string_view lead = pieces.runs.front();
    const bool like_a_group = before.empty() && pieces.runs.back().size() == group_digits &&
                              lead.size() <= group_digits && lead.front() != '0';
    return like_a_group ? Form::ambiguous : Form::decimal;
}

/// Whole hours of the first `count` runs, held at a figure past every limit; nothing when a group
/// of thousands is not three digits long.
[[nodiscard]] std::optional<std::int64_t> joined(const Pieces& pieces, std::size_t count) {
    constexpr std::int64_t held = most_hours + 1;
    std::int64_t out = 0;
    for (std::size_t at = 0; at < count; ++at) {
        const std::string_view run = pieces.runs[at];
        if (at > 0 && run.size() != group_digits) return std::nullopt;
        if (at == 0 && count > 1 && run.size() > group_digits) return std::nullopt;
        for (const char digit : run)
            out = std::min(out * 10 + (digit - '0'), held);
    }
    return out;
}

/// Seconds of a decimal fraction of an hour, cut to the second. Dividing digit by digit from the
/// right loses nothing that a longer division would keep, however many digits there are.
[[nodiscard]] std::int64_t fraction_seconds(std::string_view digits) {
    std::int64_t out = 0;
    for (std::size_t left = digits.size(); left > 0; --left) {
        out = ((digits[left - 1] - '0') * seconds_per_hour + out) / 10;
    }
    return out;
}

/// Seconds of two digits of minutes.
[[nodiscard]] std::optional<std::int64_t> minute_seconds(std::string_view digits) {
    if (digits.size() != 2) return std::nullopt;
    const std::int64_t minutes = (digits[0] - '0') * 10 + (digits[1] - '0');
    if (minutes >= minutes_per_hour) return std::nullopt;
    return minutes * seconds_per_minute;
}

}  // namespace

Result<FlightTime> parse_flight_time(std::string_view text) {
    const auto refuse = [&](Trouble code) { return trouble(code, {excerpt_arg(text)}); };
    std::string_view figures = trimmed(text);
    if (figures.empty()) return trouble(Trouble::hours_empty);
    const bool negative = took(figures, minuses);
    const std::optional<Pieces> pieces = split(figures);
    if (!pieces) return refuse(Trouble::hours_malformed);
    if (negative) return refuse(Trouble::hours_negative);
    const Form form = form_of(*pieces);
    if (form == Form::ambiguous) return refuse(Trouble::hours_ambiguous);
    if (form == Form::malformed) return refuse(Trouble::hours_malformed);
    const std::size_t runs = pieces->runs.size();
    const std::optional<std::int64_t> whole =
        joined(*pieces, form == Form::whole ? runs : runs - 1);
    std::optional<std::int64_t> seconds{0};
    if (form == Form::decimal) seconds = fraction_seconds(pieces->runs.back());
    if (form == Form::clock) seconds = minute_seconds(pieces->runs.back());
    if (!whole || !seconds) return refuse(Trouble::hours_malformed);
    const FlightTime time = hours(*whole) + FlightTime{*seconds};
    if (time > hours(most_hours)) return refuse(Trouble::hours_absurd);
    return time;
}

std::string print_tenths(FlightTime time, Round round) {
    constexpr std::int64_t seconds_per_tenth = seconds_per_hour / 10;
    std::int64_t count = time.seconds / seconds_per_tenth;
    const std::int64_t rest = time.seconds % seconds_per_tenth;
    if (rest < 0 && round == Round::down) --count;
    if (rest > 0 && round == Round::up) ++count;
    const std::int64_t size = count < 0 ? -count : count;
    return (count < 0 ? "-" : "") + std::to_string(size / 10) + '.' + std::to_string(size % 10);
}

HoursForm exact_form(const std::vector<FlightTime>& times) {
    const auto all_whole = [&](std::int64_t unit_seconds) {
        return std::all_of(times.begin(), times.end(), [&](FlightTime time) {
            return time.seconds % unit_seconds == 0;
        });
    };
    if (all_whole(seconds_per_hour / 10)) return HoursForm::tenths;
    if (all_whole(seconds_per_minute)) return HoursForm::minutes;
    return all_whole(seconds_per_hour / 100) ? HoursForm::hundredths : HoursForm::seconds;
}

std::string print_exact(FlightTime time, HoursForm form) {
    const auto two = [](std::int64_t number) {
        return (number < 10 ? "0" : "") + std::to_string(number);
    };
    const std::int64_t size = time.seconds < 0 ? -time.seconds : time.seconds;
    const std::int64_t rest = size % seconds_per_hour;
    std::string out = (time.seconds < 0 ? "-" : "") + std::to_string(size / seconds_per_hour);
    switch (form) {
        case HoursForm::tenths:
            return out + '.' + std::to_string(rest * 10 / seconds_per_hour);
        case HoursForm::hundredths:
            return out + '.' + two(rest * 100 / seconds_per_hour);
        case HoursForm::minutes:
            return out + ':' + two(rest / seconds_per_minute);
        case HoursForm::seconds:
            return out + ':' + two(rest / seconds_per_minute) + ':' +
                   two(rest % seconds_per_minute);
    }
    return out;
}

}  // namespace twoclocks::base
