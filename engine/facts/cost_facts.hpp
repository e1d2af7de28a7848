// What is recorded of money: lines of an estimate, price lists, rates between currencies, and the
// terms that totals are made by. All about the aircraft.
//
// The hard questions.
//   What does a record change? A later record of a line takes the place of the earlier one as a
//   whole, as with a route: a price is corrected by saying it anew.
//   Which price of a list holds? That of its last version; a version is all lists of one name and
//   one day together.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/money.hpp"
#include "engine/facts/plan_facts.hpp"

namespace twoclocks::facts {

/// What a line of an estimate is for.
enum class CostGroup : std::uint8_t {
    whole_price,
    kit,
    labour,
    engine,
    findings,
    frame,
    interior,
    avionics,
    freight,
    duty,
    ferry,
    cover,
    financing,
    lost_use,
    other
};

/// For which work a line counts.
enum class CostFor : std::uint8_t { either, overhaul, calendar_work };

/// Whether a line counts by itself, or is one that can be had.
enum class CostTaken : std::uint8_t { counted, offered, chosen };

/// What spares a line its duty, or gives it back.
enum class DutyRelief : std::uint8_t { none, temporary_export, processing };

/// How tax is cut to whole minor units.
enum class TaxRound : std::uint8_t { half_up, up, down };

/// A thousand of a thing: quantities are recorded in thousandths.
inline constexpr std::int32_t most_quantity = 1'000'000'000;
/// Most grams that an option adds or takes.
inline constexpr std::int32_t most_grams = 1'000'000;

/// One line of an estimate.
struct CostLine {
    std::string line;  // its key
    std::string name;
    CostGroup group{CostGroup::other};
    std::string route;  // its key; empty: every route
    CostFor work{CostFor::either};
    std::optional<std::int32_t> low_quantity;  // thousandths; missing: one
    std::optional<std::int32_t> quantity;
    std::optional<std::int32_t> high_quantity;
    std::optional<base::Money> low_price;  // of one, without tax and duty
    std::optional<base::Money> price;
    std::optional<base::Money> high_price;
    std::optional<base::Date> price_on;  // missing: the day of the record
    std::optional<base::Date> price_until;
    bool at_shipment{false};  // the price of the day it is shipped counts
    std::optional<std::int32_t> deposit_permille;
    bool deposit_back{false};  // it is paid back if the order is cancelled
    TaxCase tax{TaxCase::unknown};
    std::optional<std::int32_t> tax_permille;
    std::optional<std::int32_t> duty_permille;
    DutyRelief relief{DutyRelief::none};
    std::optional<base::Date> relief_until;
    std::string relief_terms;
    CostTaken taken{CostTaken::counted};
    std::string one_of;  // of the lines with this word one is chosen
    std::string needs;   // keys with a space between
    std::string excludes;
    std::string serials;  // of the aircraft it fits: "1001-1234, 1240"; empty: all
    std::optional<base::FlightTime> added_hours;  // of work
    std::optional<std::int32_t> added_days;
    std::optional<std::int32_t> added_grams;
    std::optional<std::int32_t> removed_grams;
    std::string list;     // the price list it is priced by
    std::string article;  // and what it is there
    bool left_out{false};
    std::string said_by;
};

/// A price list of the day of the record: lines of an article, a price and a name, a tab between.
struct PriceList {
    std::string list;
    std::string rows;
    std::string said_by;
};

/// How much one currency was in another on the day of the record.
struct ExchangeRate {
    std::string from;  // ISO 4217
    std::string to;
    std::string rate;  // "1.0845"
    std::string said_by;
};

/// How totals are made.
struct CostTerms {
    std::string home;                               // ISO 4217
    std::optional<std::int32_t> linked_permille;    // how much the lines of a group go together
    std::optional<std::int32_t> kit_rise_permille;  // a year
    std::optional<std::int32_t> labour_rise_permille;
    std::optional<std::int32_t> engine_rise_permille;
    std::optional<std::int32_t> other_rise_permille;
    TaxRound tax_round{TaxRound::half_up};
    std::optional<std::int32_t> rate_days;      // a rate that is older is called old
    std::optional<std::int32_t> tax_back_days;  // until tax that was paid comes back
};

}  // namespace twoclocks::facts
