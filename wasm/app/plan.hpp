// The page of the plan, and what is opened from it.
#pragma once

#include "wasm/app/inside.hpp"

namespace twoclocks::canvas {

/// The campaigns that each page is made from: they are over when it is.
[[nodiscard]] LifeAsked as_planned(const views::Assessed& aircraft);
[[nodiscard]] std::vector<LifeAsked> routes_asked(const views::Assessed& aircraft);
[[nodiscard]] std::vector<LifeAsked> fleet_asked(const AppState::Inside& in);

/// What each of them came to, once they are over.
[[nodiscard]] std::vector<const views::Living*> lives_of(const AppState::Inside& in,
                                                         const std::vector<LifeAsked>& asked);

/// The page.
[[nodiscard]] PlanPage plan_page(AppState::Inside& in, const views::Assessed& aircraft);

/// The routes.
[[nodiscard]] RoutesPage routes_page(AppState::Inside& in, const views::Assessed& aircraft);

/// The fleet.
[[nodiscard]] StaggerPage stagger_page(AppState::Inside& in);

/// What the page asks for, and what opens it.
void open_page(AppState::Inside& in, const intent::OpenPlan& intent);
void open_page(AppState::Inside& in, const intent::OpenTask& intent);
void open_page(AppState::Inside& in, const intent::OpenRoutes& intent);
void open_page(AppState::Inside& in, const intent::OpenStagger& intent);
void open_page(AppState::Inside& in, const intent::WeighDays& intent);

/// Back to what is recorded of what days are worth.
void stop_weighing(AppState::Inside& in);

/// The form that records what is tried, filled in with it.
void keep_weighed(AppState::Inside& in);

}  // namespace twoclocks::canvas
