// Time in service, exact.
//
// Seconds, because a tenth of an hour (360 s), a hundredth (36 s) and a minute (60 s) are all whole
// numbers of them: nothing is ever lost by adding a reading in tenths to a flight in minutes.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/problem.hpp"

namespace twoclocks::base {

/// A length of time in service. May be negative: a limit that is flown past.
struct FlightTime {
    std::int64_t seconds{0};
    auto operator<=>(const FlightTime&) const = default;

    constexpr FlightTime operator+(FlightTime other) const { return {seconds + other.seconds}; }

    constexpr FlightTime operator-(FlightTime other) const { return {seconds - other.seconds}; }
};

/// Which way a figure is cut: remaining goes down, used goes up.
enum class Round : std::uint8_t { down, up };

inline constexpr std::int64_t seconds_per_hour = 3600;
inline constexpr std::int64_t most_hours = 200'000;

/// Whole hours as a flight time.
/// Units: hours. Range: any. Errors: none. Source: our choice, for constants and tests.
[[nodiscard]] constexpr FlightTime hours(std::int64_t whole) {
    return {whole * seconds_per_hour};
}

/// Tenths of an hour as a flight time.
/// Units: tenths of an hour. Range: any. Errors: none. Source: our choice, for constants and tests.
[[nodiscard]] constexpr FlightTime tenths(std::int64_t count) {
    return {count * 360};
}

/// Reads what people write for hours: 1234, 1234.5, 1234,56, 1 234.5, 1'234.5 or 1234:30.
/// One dot or comma with one to three digits before it and three behind is ambiguous: "1,234" and
/// "1.234" are a thousand and more to one reader and an hour and a bit to another, so both are
/// refused. "0.125", "1,234.5", "1.234,5" and "1 234" are plain.
/// Units: hours. Range: 0 to 200,000 h. Errors: hours_empty, hours_malformed, hours_ambiguous,
/// hours_negative, hours_absurd. Decimals finer than a second round down to it.
/// Source: our choice, because meters read in tenths or hundredths and logbooks in minutes.
[[nodiscard]] Result<FlightTime> parse_flight_time(std::string_view text);

/// Prints tenths with a dot and no grouping: 1044.0, -3.2.
/// Units: hours. Range: any. Errors: none. `round` is toward minus or plus infinity.
/// Source: our choice, because hour meters show tenths.
[[nodiscard]] std::string print_tenths(FlightTime time, Round round);

/// How hours are written when nothing may be cut: 1234.5, 1234:30, 1234.56 or 1234:30:15.
enum class HoursForm : std::uint8_t { tenths, minutes, hundredths, seconds };

/// The first form, in the order above, in which every one of these is written whole.
/// Units: none. Range: any. Errors: none. Source: our choice: figures of one sum share a form.
[[nodiscard]] HoursForm exact_form(const std::vector<FlightTime>& times);

/// Prints hours with a dot and no grouping: 9.9, 9:54, 9.87, 9:51:36. A form too coarse for the
/// time cuts it toward zero, so the form comes from exact_form.
/// Units: hours. Range: any but the least number. Errors: none.
/// Source: our choice, as meters and logbooks write them.
[[nodiscard]] std::string print_exact(FlightTime time, HoursForm form);

}  // namespace twoclocks::base
