// From what is recorded of an aircraft to what an estimate is made of.
#pragma once

#include "engine/budget/estimate.hpp"
#include "engine/timeline/state.hpp"

namespace twoclocks::budget {

/// The key of the lines that a route's own price and freight make.
inline constexpr const char* route_price_key = "route_price";
inline constexpr const char* route_freight_key = "route_freight";

/// The home currency: as recorded, else that of the first price there is, else that of the first of
/// the last campaign, else the euro.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Currency home_of(const timeline::AircraftState& aircraft);

/// What lines are worked out by; the days from the plan, where there is one.
/// Units: days. Errors: none; a record that was checked can be read. Source: our choice.
[[nodiscard]] Setting setting_of(const timeline::AircraftState& aircraft,
                                 base::Date today,
                                 const PayDays& days);

/// The lines that are recorded, and those of the price and the freight that a route was quoted at.
/// An empty key is no route.
/// Units: minor units. Errors: none. Source: our choice.
[[nodiscard]] std::vector<timeline::CostLineState> lines_of(const timeline::AircraftState& aircraft,
                                                            const std::string& route);

/// Where a list that is newer than the one before it changes the price of a line.
struct ListChange {
    std::string list;
    std::string article;
    facts::CostLine line;
    base::Money before;
    base::Money now;
    base::Date on;
};

/// Every line whose article the last version of its list prices otherwise than the version before.
/// Units: minor units. Errors: none. Source: our choice.
[[nodiscard]] std::vector<ListChange> list_changes(const timeline::MoneyState& money);

/// What a list that is about to be recorded makes of the price of a line.
struct PriceChange {
    facts::CostLine line;
    std::optional<base::Money> before;  // missing: it has none
    std::optional<base::Money> now;
};

/// Every line that takes its price of this list and would have another one.
/// Units: minor units. Errors: none. Source: our choice.
[[nodiscard]] std::vector<PriceChange> price_changes(const timeline::MoneyState& money,
                                                     timeline::PriceListState said);

}  // namespace twoclocks::budget
