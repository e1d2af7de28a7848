// Screens of the plan, its routes, the fleet, and how sure the date is, made from an aircraft made
// by hand. Every aircraft is invented.
#include "tests/support/by_hand.hpp"
#include "tests/support/sample_screens.hpp"

#include <utility>

#include "engine/views/plan_view.hpp"
#include "engine/views/routes_view.hpp"
#include "engine/views/stagger_view.hpp"

namespace twoclocks::canvas::samples {
namespace {

using timeline::AircraftState;
using twoclocks::support::hand_today;

facts::Route route(const char* key, const char* name, std::int64_t whole) {
    facts::Route out = twoclocks::support::route(key);
    out.name = name;
    out.price = base::Money{whole * 100, {}};
    out.tax = facts::TaxCase::borne;
    out.tax_permille = 200;
    out.said_by = "Somebody with a long name at the counter";
    return out;
}

AircraftState planned_state() {
    AircraftState state = twoclocks::support::hand_state();
    twoclocks::support::add_item(state, facts::ItemRole::overhaul, base::hours(150), 900);
    timeline::PlanState& records = state.campaign;
    facts::Route near = route("near", "Service centre of the northern islands", 278'000);
    near.accepted = facts::Acceptance::accepted;
    facts::Route works = route("works", "Works", 312'000);
    works.ferry = base::hours(151);
    facts::Route water = route("water", "Shop over the water", 1'999'999);
    water.carriage = facts::Carriage::crated;
    water.accepted = facts::Acceptance::refused;
    for (const facts::Route& one : {near, works, water})
        records.routes.push_back({one, hand_today, {}});
    records.costs.lost_day = base::Money{410'00, {}};
    records.costs.sum = base::Money{278'000'00, {}};
    records.kept =
        timeline::KeptState{{{}, {}, {}, twoclocks::support::day("2024-12-01")}, hand_today, {}};
    records.terms.out_at_once = 1;
    return state;
}

Screen screen_of(Page page) {
    Screen screen = samples::aircraft();
    screen.page = std::move(page);
    screen.whys.clear();
    return screen;
}

}  // namespace

// Made once: each is lived through thousands of times.

Screen plan() {
    static const Screen made = [] {
        const auto assessed = views::assess(planned_state(), hand_today);
        Screen screen = screen_of(PlanPage{views::make_plan_view(assessed)});
        screen.whys = views::whys_of(std::get<PlanPage>(screen.page).view);
        return screen;
    }();
    return made;
}

Screen unplanned() {
    const auto assessed = views::assess(twoclocks::support::hand_state(), hand_today);
    return screen_of(PlanPage{views::make_plan_view(assessed)});
}

Screen routes() {
    static const Screen made = [] {
        const auto assessed = views::assess(planned_state(), hand_today);
        return screen_of(RoutesPage{views::make_routes_view(assessed)});
    }();
    return made;
}

Screen stagger() {
    static const Screen made = [] {
        AircraftState other = planned_state();
        other.id = twoclocks::support::id_of(90);
        other.registration = "ISLE-2";
        const auto one = views::assess(planned_state(), hand_today);
        const auto two = views::assess(other, hand_today);
        return screen_of(StaggerPage{views::make_stagger_view({&one, &two})});
    }();
    return made;
}

}  // namespace twoclocks::canvas::samples
