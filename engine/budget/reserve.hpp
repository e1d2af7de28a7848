// The reserve: what should be there for the overhaul, what is, and how to close the gap.
//
// The hard questions.
//   How much should be there today? As much as equal deposits since the last overhaul would have
//   made, with their interest, on the way to the whole sum on the day of the limit.
//   Which limit? The day that is expected, whichever clock it is. Set aside by the hour alone and
//   stopped by the calendar, fewer hours are flown than the price was divided by: it falls short.
//   When are deposits made? At the end of each month; the last full month before the day counts.
//   Which interest is it? So much a year; that of a month makes the year's over twelve of them.
#pragma once

#include <optional>
#include <vector>

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/problem.hpp"
#include "engine/timeline/money_state.hpp"

namespace twoclocks::budget {

/// The deposit at the end of each month that makes `goal` of `hand` in so many months.
/// Units: minor units, of one a month. Range: rate above -1. Errors: nothing for no months, a rate
/// of -1 or below, or a sum beyond what an amount can be; zero where nothing is needed.
/// Source: sinking fund, goal x i / ((1 + i)^n - 1), less what is there grown; rounded up.
[[nodiscard]] std::optional<std::int64_t> monthly_deposit(std::int64_t goal,
                                                          std::int64_t hand,
                                                          double rate,
                                                          std::int32_t months);

/// What is there after so many months with a deposit at the end of each.
/// Units: minor units, of one a month. Range: rate above -1, months from 0.
/// Errors: nothing for a rate of -1 or below. Source: compound growth; rounded down.
[[nodiscard]] std::optional<std::int64_t> grown_to(std::int64_t hand,
                                                   std::int64_t deposit,
                                                   double rate,
                                                   std::int32_t months);

/// What has to be there today to be so much after so many months without a deposit.
/// Units: minor units, of one a month. Range: rate above -1, months from 0.
/// Errors: nothing for a rate of -1 or below. Source: compound discount; rounded up.
[[nodiscard]] std::optional<std::int64_t> needed_today(std::int64_t goal,
                                                       double rate,
                                                       std::int32_t months);

/// What a reserve is worked out from; amounts in minor units of one currency.
struct ReserveAsked {
    base::Date today;
    std::optional<std::int64_t> goal;    // on the day of the limit
    std::optional<std::int64_t> hand{};  // missing: not known
    std::optional<base::Date> since;     // of the last overhaul
    std::optional<base::Date> due;       // the day of the limit, as expected
    std::int32_t interest_permille{0};
    std::optional<base::FlightTime> flown;   // since the last overhaul
    std::optional<base::FlightTime> to_fly;  // until that day
    std::optional<base::FlightTime> life;    // hours of the limit; missing: it has none
    std::optional<std::int64_t> hour;        // set aside
    std::optional<std::int64_t> month;
};

/// A reserve worked out; what is missing could not be.
struct ReserveWorked {
    std::int32_t months_gone{0};
    std::int32_t months_left{0};
    std::optional<std::int64_t> should_be;     // today
    std::optional<std::int64_t> shortfall;     // below zero: more than should be
    std::optional<std::int64_t> once;          // to close it today
    std::optional<std::int64_t> monthly;       // or each month
    std::optional<std::int64_t> hourly;        // or for each hour flown
    std::optional<std::int64_t> at_the_end;    // or on the day
    std::optional<std::int64_t> will_be;       // on the day, as it is set aside now
    std::optional<std::int64_t> linear_hour;   // the goal over the hours of the limit
    std::optional<std::int64_t> linear_short;  // by which that falls short by the day
};

/// Works a reserve out.
/// Units: minor units, months. Errors: parts missing. Source: sinking fund, as above; months are
/// full ones from day to day.
[[nodiscard]] ReserveWorked work_out(const ReserveAsked& asked);

/// A sum in the shares that are recorded, the greatest rests rounded up; together they are the sum.
/// Units: minor units. Range: shares that add up to a thousand. Errors: none; shares that add up to
/// anything else are taken of a thousand, and the rest is nobody's.
/// Source: largest remainders, because a split never loses a minor unit.
[[nodiscard]] std::vector<std::int64_t> in_shares(std::int64_t sum,
                                                  const std::vector<std::int32_t>& permille);

/// The last balance of each account.
/// Units: minor units. Errors: none. Source: our choice.
[[nodiscard]] std::vector<timeline::BalanceState> last_balances(
    const std::vector<timeline::BalanceState>& balances);

}  // namespace twoclocks::budget
