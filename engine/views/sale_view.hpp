// The pages of a sale: what it costs to reach a fresh overhaul at the buyer's flying, several
// aircraft side by side, and the closing list.
#pragma once

#include <optional>
#include <vector>

#include "engine/budget/cost_line.hpp"
#include "engine/budget/sale.hpp"
#include "engine/views/plan_lived.hpp"
#include "engine/views/sums.hpp"

namespace twoclocks::views {

/// A sale worked out, with what its words are made from.
struct Sale {
    const Assessed& aircraft;
    budget::Setting setting;
    budget::SaleAsked asked{};
    budget::SaleWorked worked{};
    std::vector<std::int32_t> places{};            // of its items among those of the aircraft
    base::Message missing{base::Word::blank, {}};  // why there is none
    bool is_estimated{false};                      // the overhaul is priced by the estimate
};

/// Gathers and works it out; without a rate at that of the record.
/// Units: minor units, days, seconds. Errors: `missing`. Source: our choice.
[[nodiscard]] Sale make_sale(const Assessed& aircraft, std::optional<base::FlightTime> year);

/// The page of one aircraft.
/// Units: as above. Errors: `missing`. Source: our choice.
[[nodiscard]] SumsView make_sale_view(const Assessed& aircraft,
                                      std::optional<base::FlightTime> year);

/// Several aircraft at one rate, each to a fresh overhaul; best first, and by how much less the
/// others should cost.
/// Units: minor units. Errors: those without a sum, or in another currency, stand at the end.
/// Source: our choice.
[[nodiscard]] SumsView make_compare_view(const std::vector<const Assessed*>& fleet,
                                         std::optional<base::FlightTime> year);

/// The closing list: what is open, what is settled, and what the record does not say.
/// Units: minor units, days. Errors: none. Source: our choice.
[[nodiscard]] SumsView make_closing_view(const Assessed& aircraft);

}  // namespace twoclocks::views
