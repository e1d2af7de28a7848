// What is recorded of a campaign before and while it runs: how long its tasks take, how far each
// is, how sure the dates are to be, when nobody works, by which routes it can be had, what days
// and hours are worth, and what was planned first. All about the aircraft.
//
// The hard questions.
//   What does a record change? Only what it gives. A task of ours that nobody recorded anything of
//   keeps our estimate; days, what it waits for and how it runs are each replaced on their own.
//   Which of several holds? Of one task the last by day; of one day the one recorded last. Planning
//   decides nothing about flying: a disagreement here makes a date earlier, never a state unknown.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/money.hpp"
#include "engine/base/permille.hpp"

namespace twoclocks::facts {

/// Whether a task also runs on days on which nobody works.
enum class TaskDays : std::uint8_t { working, calendar };

/// How far a task is.
enum class TaskStep : std::uint8_t { begun, promised, finished };

/// What is planned.
enum class PlanWork : std::uint8_t { overhaul, calendar_work };

/// Most days of a task: ten years.
inline constexpr std::int32_t most_plan_days = 3'653;

/// One task. About the aircraft.
struct PlanTask {
    std::string task;  // its key: one of ours, or any word for a task of one's own
    std::string name;  // of a task of one's own
    std::optional<std::int32_t> low_days;
    std::optional<std::int32_t> likely_days;
    std::optional<std::int32_t> high_days;
    std::optional<TaskDays> runs;
    std::string
        waits_for;  // keys with a space between, "kit+5" for five days later; empty: as ours
    std::string resource;
    bool left_out{false};
    std::string said_by;
};

/// How far a task is, from the day of the record on. About the aircraft.
struct PlanStep {
    std::string task;
    TaskStep step{TaskStep::begun};
    std::optional<base::Date> promised;  // its end, where the step is a promise
    std::string reference;
};

/// How sure, for what, and which days the kit and the cores ask for. About the aircraft.
struct PlanTerms {
    PlanWork work{PlanWork::overhaul};
    std::int32_t confidence_percent{90};
    std::optional<std::int32_t> margin_days;
    std::optional<std::int32_t> core_days;
    std::optional<std::int32_t> keeps_days;
    std::optional<std::int32_t> out_at_once;  // of the fleet, while this one is out
};

/// Days on which nobody works, from the day of the record on. About the aircraft.
struct Closed {
    std::optional<base::Date> last;  // missing: that day alone
    std::string why;
};

/// Who does the work on a route.
enum class RouteBy : std::uint8_t { works, service_centre, abroad, own_workshop };

/// How the aircraft gets there. On a permit its ferry hours lie past the limit.
enum class Carriage : std::uint8_t { flown, on_permit, crated, stays };

/// What a price is worth.
enum class PriceBasis : std::uint8_t { estimate, fixed, hourly };

/// Who bears the tax.
enum class TaxCase : std::uint8_t { unknown, none, recoverable, borne, reverse_charge };

/// Whether the aircraft's registry accepts the release.
enum class Acceptance : std::uint8_t { unknown, accepted, refused };

/// From when a warranty runs.
enum class WarrantyFrom : std::uint8_t { unknown, release, shipment, first_flight };

using base::whole_permille;
/// Most aircraft that a shop takes, or that may be out, at once.
inline constexpr std::int32_t most_at_once = 1'000;

/// One route by which the work can be had. About the aircraft. A later record of a route takes the
/// place of the earlier one as a whole.
struct Route {
    std::string route;  // its key
    std::string name;
    RouteBy by{RouteBy::works};
    Carriage carriage{Carriage::flown};
    std::optional<base::FlightTime> ferry;  // one way, there
    std::optional<std::int32_t> there_days;
    std::optional<std::int32_t> back_days;
    std::optional<std::int32_t> queue_days;  // from the booking to the place
    std::optional<std::int32_t> kit_days;    // from the order to the kit
    std::optional<std::int32_t> low_days;    // at the shop, all of the work
    std::optional<std::int32_t> likely_days;
    std::optional<std::int32_t> high_days;
    PriceBasis basis{PriceBasis::estimate};
    std::optional<base::Money> price;    // without tax and duty
    std::optional<base::Money> freight;  // there and back, or of the parts
    TaxCase tax{TaxCase::unknown};
    std::optional<std::int32_t> tax_permille;
    std::optional<std::int32_t> duty_permille;
    std::optional<base::Date> price_until;
    std::optional<std::int32_t> warranty_months;
    std::optional<base::FlightTime> warranty_hours;
    WarrantyFrom warranty_from{WarrantyFrom::unknown};
    Acceptance accepted{Acceptance::unknown};
    std::optional<std::int32_t> shop_takes;  // at once
    bool chosen{false};                      // the plan goes by it
    bool left_out{false};
    std::string said_by;
};

/// What days, hours and money are worth to the owner. About the aircraft.
struct PlanCosts {
    std::optional<base::Money> sum;                 // of the overhaul
    std::optional<base::Money> lost_day;            // margin lost a day that it stands
    std::optional<base::Money> saved_day;           // cost of flying avoided on such a day
    std::optional<base::Money> life_hour;           // an hour before the limit given up
    std::optional<base::Money> life_month;          // a month before the limit given up
    std::optional<std::int32_t> interest_permille;  // a year

    bool operator==(const PlanCosts& other) const = default;
};

/// The plan as it was when somebody kept it, to see what slips. About the aircraft.
struct PlanKept {
    std::optional<base::Date> order_on;
    std::optional<base::Date> book_on;
    std::optional<base::Date> stop_on;
    std::optional<base::Date> back_on;
};

}  // namespace twoclocks::facts
