// The routes of an aircraft's overhaul in words.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/plan_lived.hpp"
#include "engine/views/routes.hpp"

namespace twoclocks::views {

/// How often each route is lived through.
inline constexpr std::int32_t ways_a_route = 2'000;

/// Lives through the campaign by each route, in their order.
/// Units: days. Errors: those of `Living`. Source: our choice.
[[nodiscard]] std::vector<Living> live_routes(const Assessed& aircraft);

/// The whole page, of what each route came to when it was lived through, in their order.
/// Units: days, money. Errors: `missing` says why nothing can be compared. Source: our choice.
[[nodiscard]] RoutesView make_routes_view(const Assessed& aircraft,
                                          const std::vector<const Living*>& lives);

/// The same, each lived through at once.
/// Units: days, money. Errors: `missing` says why nothing can be compared. Source: our choice.
[[nodiscard]] RoutesView make_routes_view(const Assessed& aircraft);

}  // namespace twoclocks::views
