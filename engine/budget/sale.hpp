// What an aircraft costs on its way to a fresh overhaul, at the flying of whoever buys it.
//
//   limits, prices, a rate of flying -> what falls due by when -> sums
//   what is left of the overhaul limit -> what it is worth
//
// The hard questions.
//   How long is the way? To the day on which the overhaul limit is met at that rate, by whichever
//   clock is first. The hours flown by then are the usable ones.
//   What falls due on it? Every mandatory item, as often as it comes round: from the work on, by
//   its own interval. What counts landings or starts has no day at a rate of hours, and says so.
//   What is life left worth? The sum of an overhaul, by the smaller of the shares that both clocks
//   have left; or, where calendar work keeps the hours, by the hours left less that work. The
//   better of both is told, with why. Common practice, no source.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/limits/due.hpp"

namespace twoclocks::budget {

/// Rates that are set side by side, hours a year.
inline constexpr std::int32_t least_sale_rate = 50;
inline constexpr std::int32_t most_sale_rate = 400;
inline constexpr std::int32_t sale_rate_step = 50;

/// When an item is met at a rate.
struct MetAt {
    std::int32_t days{0};  // from today
    facts::Clock clock{facts::Clock::hours};
};

/// When an item is met at a rate of so much a year; nothing where it is not known, or never.
/// Units: days from today, rounded down. Range: 0 and up. Errors: nothing. Source: our choice.
[[nodiscard]] std::optional<MetAt> met_at_rate(const limits::ItemDue& item, base::FlightTime year);

/// Days on which an item falls due up to a day, at a rate.
/// Units: days from today. Range: up to 8,000 times, once a day for more than twenty years.
/// Errors: none. Source: our choice.
[[nodiscard]] std::vector<std::int32_t> due_days_at_rate(const limits::ItemDue& item,
                                                         base::FlightTime year,
                                                         base::Date today,
                                                         std::int32_t last_day);

/// Hours flown in so many days at a rate.
/// Units: seconds, rounded down. Errors: none. Source: 365 days to a year.
[[nodiscard]] base::FlightTime flown_in(base::FlightTime year, std::int32_t days);

/// What a sale is worked out from; amounts in minor units of one currency.
struct SaleAsked {
    base::Date today;
    base::FlightTime year;  // flown in a year by the buyer
    limits::ItemDue overhaul;
    std::vector<limits::ItemDue> items;              // mandatory, without the overhaul
    std::vector<std::optional<std::int64_t>> price;  // one an item
    std::optional<std::int64_t> overhaul_now;        // at prices of today
    std::optional<std::int64_t> overhaul_then;       // on the day it is met
    std::optional<std::int64_t> calendar_work;       // that keeps the hours; missing: there is none
    std::int32_t rise_permille{0};                   // of the prices of items
    std::optional<std::int32_t> interest_permille;
};

/// One item on the way.
struct SaleItem {
    std::int32_t item{0};             // its place
    std::vector<std::int32_t> days;   // on which it falls due
    bool is_open{false};              // when it falls due is not known
    std::optional<std::int64_t> sum;  // at prices of today
};

/// One rate beside others.
struct SaleRate {
    base::FlightTime year;
    std::optional<MetAt> met;
    base::FlightTime usable;
};

/// A sale worked out.
struct SaleWorked {
    std::optional<MetAt> met;  // the overhaul
    base::FlightTime usable;
    std::optional<MetAt> first;  // the first mandatory stop of all
    std::int32_t first_item{-1};
    std::vector<SaleItem> items;          // those that fall due, and those of which it is not known
    std::int32_t unpriced{0};             // that fall due without a price
    std::optional<std::int64_t> now;      // all of it, at prices of today
    std::optional<std::int64_t> risen;    // each on its day
    std::optional<std::int64_t> present;  // worth today
    std::optional<std::int64_t> usable_hour;  // of each usable hour, at prices of today
    std::optional<std::int64_t> by_lesser;    // what life left is worth
    std::optional<std::int64_t> by_hours;     // calendar work done: hours left less that work
    std::vector<SaleRate> rates;
};

/// Works a sale out.
/// Units: minor units, days, seconds. Errors: parts missing. Source: our choice, and common
/// practice, no source, for what life left is worth; costs round up, what it is worth down.
[[nodiscard]] SaleWorked work_out_sale(const SaleAsked& asked);

}  // namespace twoclocks::budget
