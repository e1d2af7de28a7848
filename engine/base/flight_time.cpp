#include "engine/base/flight_time.hpp"

#include <algorithm>
#include <optional>

#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"

namespace twoclocks::base {
namespace {

constexpr std::int64_t seconds_per_minute = 60;
constexpr std::int64_t minutes_per_hour = 60;

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
    if (without_margins(text).empty()) return trouble(Trouble::hours_empty);
    const WrittenNumber number = read_number(text);
    const NumberForm form = number.form;
    if (form == NumberForm::malformed) return refuse(Trouble::hours_malformed);
    if (number.negative) return refuse(Trouble::hours_negative);
    if (form == NumberForm::ambiguous) return refuse(Trouble::hours_ambiguous);
    const auto runs = static_cast<std::int32_t>(number.runs.size());
    const std::optional<std::int64_t> whole =
        joined_runs(number, form == NumberForm::whole ? runs : runs - 1, most_hours);
    std::optional<std::int64_t> seconds{0};
    if (form == NumberForm::decimal) seconds = fraction_seconds(number.runs.back());
    if (form == NumberForm::clock) seconds = minute_seconds(number.runs.back());
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
