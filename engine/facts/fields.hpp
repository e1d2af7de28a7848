// Words of the kinds, and the way through their fields. The list of fields is in field_list.hpp.
#pragma once

#include <array>
#include <string_view>

#include "engine/facts/fact.hpp"
#include "engine/facts/field_visitor.hpp"

namespace twoclocks::facts {

/// Words of the kinds, in the order of the variant `Fields`; the first is never printed.
inline constexpr std::array<std::string_view, std::variant_size_v<Fields>> kind_words{
    "",
    "aircraft",
    "aircraft_changed",
    "limit",
    "meter",
    "reading",
    "item",
    "item_changed",
    "work",
    "usage_planned",
    "out_of_service",
    "note",
    "correction",
    "withdrawal",
    "answer",
    "permit",
    "part",
    "part_fitted",
    "part_removed",
    "part_scrapped",
    "part_moved",
    "part_rebuilt",
    "directive",
    "alternative_means",
    "event",
    "wear_limit",
    "wear",
    "meter_adjusted",
    "work_rule",
    "hours_factor",
    "flown_as",
    "plan_task",
    "plan_step",
    "plan_terms",
    "closed",
    "route",
    "plan_costs",
    "plan_kept",
    "cost_line",
    "price_list",
    "exchange_rate",
    "cost_terms",
    "core",
    "core_step",
    "pay_term",
    "payment",
    "balance",
    "reserve_terms",
    "holder",
    "item_price",
    "closing_point"};

/// An empty record of the kind that a word names; a word we do not know is kept as it is.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Fields empty_fields(const std::string& word);

}  // namespace twoclocks::facts
