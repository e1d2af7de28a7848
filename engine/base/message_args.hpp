// Typed arguments for messages. The name says how the figure will be cut.
#pragma once

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/message.hpp"
#include "engine/base/money.hpp"

namespace twoclocks::base {

/// Somebody's own words.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] inline Arg text_arg(std::string text) {
    return {ArgType::text, 0, 0, std::move(text)};
}

/// Somebody's own words, cut to what a sentence can bear, never inside a letter.
/// Units: none. Range: 40 bytes, then an ellipsis. Errors: none. Source: our choice.
[[nodiscard]] inline Arg excerpt_arg(std::string_view text) {
    constexpr std::size_t most_bytes = 40;
    if (text.size() <= most_bytes) return text_arg(std::string{text});
    std::size_t end = most_bytes;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U)
        --end;
    return text_arg(std::string{text.substr(0, end)} + "\xE2\x80\xA6");
}

/// A whole number.
/// Units: the message's. Errors: none. Source: our choice.
[[nodiscard]] inline Arg whole_arg(std::int64_t number) {
    return {ArgType::whole, number, 0, {}};
}

/// A day, written in full.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] inline Arg day_arg(Date date) {
    return {ArgType::day, date.day_number, 0, {}};
}

/// A day, written as its month.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] inline Arg month_arg(Date date) {
    return {ArgType::month, date.day_number, 0, {}};
}

/// Hours left: cut down to the tenth.
/// Units: hours. Errors: none. Source: our choice, remaining rounds down.
[[nodiscard]] inline Arg hours_left_arg(FlightTime time) {
    return {ArgType::hours_down, time.seconds, 0, {}};
}

/// Hours used: cut up to the tenth.
/// Units: hours. Errors: none. Source: our choice, used rounds up.
[[nodiscard]] inline Arg hours_used_arg(FlightTime time) {
    return {ArgType::hours_up, time.seconds, 0, {}};
}

/// A limit in whole hours.
/// Units: hours. Errors: none. Source: our choice, limits are round figures.
[[nodiscard]] inline Arg hours_whole_arg(FlightTime time) {
    return {ArgType::hours_whole, time.seconds, 0, {}};
}

/// Hours to the second, in a form that loses nothing: see exact_form.
/// Units: hours. Errors: none. Source: our choice, a sum on paper adds up as it is printed.
[[nodiscard]] inline Arg hours_exact_arg(FlightTime time, HoursForm form) {
    return {ArgType::hours_exact, time.seconds, static_cast<std::int64_t>(form), {}};
}

/// A decimal number, every digit of it: 123450 with 2 decimals is 1,234.50.
/// Units: the message's. Range: 0 to 9 decimals. Errors: none. Source: our choice.
[[nodiscard]] inline Arg decimal_arg(std::int64_t units, std::int32_t decimals) {
    return {ArgType::decimal, units, decimals, {}};
}

/// The same without the zeros at its end.
/// Units: as decimal_arg. Errors: none. Source: our choice.
[[nodiscard]] inline Arg short_decimal_arg(std::int64_t units, std::int32_t decimals) {
    constexpr std::int64_t ten = 10;
    for (; decimals > 0 && units % ten == 0; --decimals)
        units /= ten;
    return decimal_arg(units, decimals);
}

/// An amount, every digit of it.
/// Units: minor units. Errors: none. Source: ISO 4217.
[[nodiscard]] inline Arg money_arg(Money money) {
    return {ArgType::money,
            money.minor_units,
            minor_digits(money.currency),
            print_currency(money.currency)};
}

/// An amount that was reckoned, in whole units of its currency, rounded up.
/// Units: whole units of the currency. Errors: none. Source: our choice, costs round up.
[[nodiscard]] inline Arg cost_arg(Money money) {
    return {ArgType::money, whole_units_up(money), 0, print_currency(money.currency)};
}

/// Years and days.
/// Units: years and days. Errors: none. Source: our choice.
[[nodiscard]] inline Arg span_arg(Span span) {
    return {ArgType::span,
            span.negative ? -span.years : span.years,
            span.negative ? -span.days : span.days,
            {}};
}

/// A word of the catalogue inside another sentence.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] inline Arg word_arg(Word word) {
    return {ArgType::word, static_cast<std::int64_t>(word), 0, {}};
}

}  // namespace twoclocks::base
