// The same campaign by another route: other days for the kit and the place, a way there and back,
// one stay instead of its steps, and hours of life flown on the way.
//
// The hard questions.
//   What does a route change? Only what it gives. A route of which no days are recorded is planned
//   as the campaign is.
//   One number of days is taken as it is said. Somebody who knows it less well records the task
//   with its three points.
//   The days at the shop stand for every step there: what we do not see inside is not reckoned.
//   Ferry hours flown before the limit are taken off what is left, and the days of that flight off
//   the days, so the flying ends earlier; on a permit they lie past the limit and take nothing.
//   Steps recorded at the shop are not lost in the stay: with the first of them it has begun.
#pragma once

#include "engine/forecast/projection.hpp"
#include "engine/plan/task.hpp"

namespace twoclocks::plan {

/// The route that the plan goes by; null when none is chosen.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const facts::Route* chosen_route(const timeline::PlanState& records);

/// The records with another route chosen, by its place among the routes.
/// Units: none. Range: a place of the routes. Errors: none. Source: our choice.
[[nodiscard]] timeline::PlanState choosing(timeline::PlanState records, std::int32_t place);

/// Changes tasks to those of a route.
/// Units: days. Errors: none. Source: our choice.
void go_by(const facts::Route& route, Tasks& tasks);

/// The stay at the shop that stands for a step of ours there; null where there is none.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Task* stay_of(Tasks& tasks, std::string_view step);

/// Days that the flight there takes before the limit.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] std::int32_t days_on_the_way(const facts::Route& route);

/// Hours of life that a route takes on the way.
/// Units: seconds. Errors: none. Source: our choice.
[[nodiscard]] base::FlightTime hours_on_the_way(const facts::Route& route);

/// The limit with so many hours kept back.
/// Units: seconds. Errors: none. Source: our choice.
[[nodiscard]] limits::ItemDue keeping_back(limits::ItemDue item, base::FlightTime hours);

/// When a limit is met if the hours of a route are kept back; as `projection` where there are none.
/// Units: days. Errors: as project. Source: our choice.
[[nodiscard]] forecast::Projection project_by_route(const facts::Route* route,
                                                    const limits::ItemDue& item,
                                                    const forecast::Projection& projection,
                                                    const timeline::AircraftState& state,
                                                    const forecast::FlyingAhead& ahead,
                                                    base::Date today);

}  // namespace twoclocks::plan
