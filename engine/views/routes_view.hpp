// The routes of an aircraft's overhaul in words.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/routes.hpp"

namespace twoclocks::views {

/// How often each route is lived through.
inline constexpr std::int32_t ways_a_route = 2'000;

/// The whole page. Each route is lived through: keep it while nothing changes.
/// Units: days, money. Errors: `missing` says why nothing can be compared. Source: our choice.
[[nodiscard]] RoutesView make_routes_view(const Assessed& aircraft);

}  // namespace twoclocks::views
