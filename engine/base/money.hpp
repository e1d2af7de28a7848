// Money, exact: whole minor units of one currency.
//
// How many minor units a currency has is a fact of ISO 4217. Codes that it lists without minor
// units (metals, baskets, testing) are no currencies here. Two amounts of different currencies have
// no sum: a rate belongs to a day and a source, and comes with the rooms that price.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/problem.hpp"

namespace twoclocks::base {

/// An ISO 4217 alphabetic code. Made by `parse_currency`, so it always is one of the list.
struct Currency {
    std::array<char, 3> letters{'E', 'U', 'R'};

    // Written out: one of the compilers has no order of arrays.
    bool operator==(const Currency& other) const { return letters == other.letters; }

    bool operator<(const Currency& other) const { return letters < other.letters; }
};

/// An amount: 123450 minor units of EUR are 1234.50 EUR. May be negative: a credit turned bill.
struct Money {
    std::int64_t minor_units{0};
    Currency currency;

    bool operator==(const Money& other) const {
        return minor_units == other.minor_units && currency == other.currency;
    }
};

/// Which way a division goes. Estimates go up; an invoice says its own rule, mostly half up.
enum class MoneyRound : std::uint8_t { down, up, half_up };

inline constexpr std::int64_t most_minor_units = 1'000'000'000'000'000;

/// Every currency, in the order of its code.
/// Units: none. Errors: none. Source: ISO 4217, list one.
[[nodiscard]] const std::vector<Currency>& currencies();

/// Reads a code, in capitals or not.
/// Units: none. Errors: money_currency. Source: ISO 4217, list one.
[[nodiscard]] Result<Currency> parse_currency(std::string_view text);

/// The code as text.
/// Units: none. Errors: none. Source: ISO 4217.
[[nodiscard]] std::string print_currency(Currency currency);

/// Decimals of a currency: 2 for EUR, 0 for JPY, 3 for KWD.
/// Units: decimal digits. Range: 0 to 4. Errors: none. Source: ISO 4217, list one, minor unit.
[[nodiscard]] std::int32_t minor_digits(Currency currency);

/// Reads an amount with any separators and the code before or behind it: 1234.5, "1 234,50 EUR",
/// "EUR 1'234.50". Without a code it is in `otherwise`. "1,234" is refused where the currency has
/// decimals and is a thousand where it has none: "1,234 JPY" can be read one way only.
/// Units: minor units. Range: 10^15 either side of zero. Errors: money_malformed, money_ambiguous,
/// money_decimals, money_currency, money_absurd. Source: our choice, as for hours.
[[nodiscard]] Result<Money> parse_money(std::string_view text, Currency otherwise);

/// Prints an amount: 1234.50 EUR, -3 JPY.
/// Units: major units with all decimals of the currency. Errors: none. Source: our choice.
[[nodiscard]] std::string print_money(Money money);

/// One of `parts` equal shares, cut as `round` says. down is toward minus infinity, half_up takes
/// the greater when it lies in the middle.
/// Units: minor units. Range: `parts` from 1. Errors: none. Source: our choice.
[[nodiscard]] Money divided(Money whole, std::int64_t parts, MoneyRound round);

/// The amount in whole units of its currency, toward plus infinity.
/// Units: major units. Errors: none. Source: our choice, costs round up.
[[nodiscard]] std::int64_t whole_units_up(Money money);

/// Shares that differ by one minor unit at most, the greater first, and add up to the whole.
/// Units: minor units. Range: `parts` from 1. Errors: none. Source: our choice, because a split
/// never loses a minor unit.
[[nodiscard]] std::vector<Money> split(Money whole, std::int32_t parts);

}  // namespace twoclocks::base
