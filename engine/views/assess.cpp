#include "engine/views/assess.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/budget/cores.hpp"
#include "engine/plan/by_route.hpp"
#include "engine/plan/from_records.hpp"
#include "engine/views/directive_view.hpp"
#include "engine/views/wear_view.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using facts::Clock;
using forecast::Projection;
using limits::ClockDue;
using limits::ItemDue;

/// True when hours were recorded after a day: then a date that passed was flown past.
[[nodiscard]] bool flown_after(const timeline::UsageSeries& usage, Date on) {
    std::optional<base::FlightTime> by_then;
    for (const timeline::UsagePoint& point : usage) {
        if (point.on <= on) by_then = point.total;
    }
    return !usage.empty() && (!by_then || usage.back().total > *by_then);
}

[[nodiscard]] State passed_state(const ClockDue& clock, const timeline::AircraftState& state) {
    if (!clock.passed()) return State::nothing_due;
    const bool by_date_alone =
        clock.clock == Clock::calendar && !flown_after(state.usage, clock.due_on);
    return by_date_alone ? State::before_next_flight : State::over;
}

/// Where the later of the clocks counts, the mildest of them is the state: the item passed when
/// the last of them did. A clock that is not known extends nothing.
[[nodiscard]] State passed_state(const ItemDue& item, const timeline::AircraftState& state) {
    State out = State::nothing_due;
    if (!item.passed()) return out;
    // A check in storage is due where it stands: no flight has to come first.
    if (item.may_be_stored) return State::over;
    const bool later = item.combine == facts::Combine::later;
    std::optional<State> mildest;
    for (const ClockDue& clock : item.clocks) {
        const State one = passed_state(clock, state);
        if (!later) out = std::max(out, one);
        if (clock.known) mildest = std::min(mildest.value_or(one), one);
    }
    if (later && mildest) out = *mildest;
    for (const ClockDue& cap : item.caps)
        out = std::max(out, passed_state(cap, state));
    return out;
}

[[nodiscard]] bool is_near(const ItemDue& item,
                           const Projection& projection,
                           Date today,
                           std::int32_t days) {
    if (projection.early && base::days_between(today, *projection.early) <= days) return true;
    const auto used_up = [](const ClockDue& clock) {
        const bool counted = clock.clock == Clock::landings || clock.clock == Clock::starts;
        return counted && clock.known && clock.left_count.value == 0;
    };
    return std::any_of(item.clocks.begin(), item.clocks.end(), used_up) ||
           std::any_of(item.caps.begin(), item.caps.end(), used_up);
}

/// True when a task that has to be over before the overhaul should have begun by now.
[[nodiscard]] bool lead_has_begun(const ItemDue& item,
                                  const Projection& projection,
                                  const Assessed& aircraft) {
    const timeline::PlanState& campaign = aircraft.state.campaign;
    const facts::Route* route = plan::chosen_route(campaign);
    const Projection by_route = plan::project_by_route(
        route, item, projection, aircraft.state, aircraft.ahead, aircraft.today);
    if (!by_route.early) return false;
    const std::int32_t days = base::days_between(aircraft.today, *by_route.early) -
                              (route == nullptr ? 0 : plan::days_on_the_way(*route));
    if (days > farthest_lead_days) return false;
    const auto first = plan::first_lead_day(campaign, days, aircraft.today);
    return first && *first <= 0;
}

[[nodiscard]] State item_state(const ItemDue& item,
                               const Projection& projection,
                               const Assessed& aircraft) {
    const timeline::AircraftState& state = aircraft.state;
    const Date today = aircraft.today;
    if (item.complied || item.asleep) return State::nothing_due;
    if (item.clocks.empty()) return State::unknown;
    const State passed = passed_state(item, state);
    if (!item.mandatory()) {
        const bool warn =
            passed != State::nothing_due || is_near(item, projection, today, due_days);
        return warn ? State::act : State::nothing_due;
    }
    if (passed != State::nothing_due) return passed;
    if (is_near(item, projection, today, due_days)) return State::due;
    if (!item.all_known()) return State::unknown;
    const bool overhaul = item.role == facts::ItemRole::overhaul;
    if (overhaul && lead_has_begun(item, projection, aircraft)) return State::act;
    return State::nothing_due;
}

void assess_items(Assessed& out) {
    for (std::size_t place = 0; place < out.items.size(); ++place) {
        const ItemDue& item = out.items[place];
        out.projections.push_back(forecast::project(item, out.state, out.ahead, out.today));
        out.wear.push_back(work_out_wear(out, item.item));
        const State by_clocks = item_state(item, out.projections.back(), out);
        const State by_interval = with_directive(by_clocks, item);
        out.item_states.push_back(with_wear(by_interval, item, out.wear.back(), out.today));
        const auto here = static_cast<std::int32_t>(place);
        const bool is_own = item.role == facts::ItemRole::overhaul && item.part.id.empty();
        if (is_own && out.overhaul < 0) out.overhaul = here;
        const bool worse =
            out.worst < 0 ||
            out.item_states.back() > out.item_states[static_cast<std::size_t>(out.worst)];
        if (worse) out.worst = here;
    }
}

[[nodiscard]] bool hides_the_answer(const Assessed& aircraft) {
    const auto hides = [](const auto& state) {
        return state.unknown_records > 0 ||
               std::any_of(state.questions.begin(),
                           state.questions.end(),
                           [](const auto& question) { return question.no_safe_side; });
    };
    return hides(aircraft.state) ||
           std::any_of(aircraft.parts.begin(), aircraft.parts.end(), hides);
}

[[nodiscard]] State overall_state(const Assessed& aircraft) {
    State out = aircraft.worst < 0 ? State::unknown
                                   : aircraft.item_states[static_cast<std::size_t>(aircraft.worst)];
    const bool lacks =
        aircraft.overhaul < 0 || aircraft.state.usage.empty() || hides_the_answer(aircraft);
    if (lacks) out = std::max(out, State::unknown);
    if (!aircraft.state.events.empty()) out = std::max(out, State::before_next_flight);
    return aircraft.core_due ? std::max(out, State::act) : out;
}

[[nodiscard]] std::optional<Date> first_core_due(const timeline::AircraftState& state, Date today) {
    std::optional<Date> out;
    for (const timeline::CoreState& core : state.money.cores) {
        if (!budget::must_go_now(core, today)) continue;
        const Date due = *budget::recorded_deadline(core);
        out = std::min(out.value_or(due), due);
    }
    return out;
}

}  // namespace

Assessed assess(timeline::AircraftState state, Date today, std::vector<timeline::PartState> parts) {
    Assessed out;
    out.today = today;
    out.state = std::move(state);
    out.ahead = forecast::flying_ahead(out.state);
    out.items = limits::due_items(out.state, today);
    out.parts = std::move(parts);
    for (const timeline::PartState& part : out.parts) {
        for (ItemDue& item : limits::due_items(part, today))
            out.items.push_back(std::move(item));
    }
    assess_items(out);
    out.first = forecast::first_stop(out.items, out.state, out.ahead, today);
    out.core_due = first_core_due(out.state, today);
    out.overall = overall_state(out);
    return out;
}

const timeline::ItemState* item_state(const Assessed& aircraft, base::Id item) {
    const auto find_in = [&](const auto& bearer) {
        const auto found = std::find_if(bearer.items.begin(),
                                        bearer.items.end(),
                                        [&](const auto& state) { return state.id == item; });
        return found == bearer.items.end() ? nullptr : &*found;
    };
    const timeline::ItemState* out = find_in(aircraft.state);
    for (const timeline::PartState& part : aircraft.parts) {
        if (out == nullptr) out = find_in(part);
    }
    return out;
}

const timeline::PartState* part_of(const Assessed& aircraft, const ItemDue& item) {
    const auto found = std::find_if(
        aircraft.parts.begin(), aircraft.parts.end(), [&](const timeline::PartState& part) {
            return part.id == item.part.id;
        });
    return found == aircraft.parts.end() ? nullptr : &*found;
}

std::vector<timeline::Question> open_questions(const Assessed& aircraft) {
    std::vector<timeline::Question> out = aircraft.state.questions;
    for (const timeline::PartState& part : aircraft.parts) {
        for (const timeline::Question& question : part.questions) {
            const bool stands = std::any_of(out.begin(), out.end(), [&](const auto& other) {
                return !other.root.empty() && other.root == question.root;
            });
            if (!stands) out.push_back(question);
        }
    }
    return out;
}

bool only_core_asks(const Assessed& aircraft) {
    return aircraft.core_due && aircraft.overall == State::act &&
           std::none_of(aircraft.item_states.begin(), aircraft.item_states.end(), [](State state) {
               return state == State::act;
           });
}

base::Message core_caution(const Assessed& aircraft) {
    const Date due = aircraft.core_due.value_or(aircraft.today);
    return {due < aircraft.today ? base::Word::caution_core_late : base::Word::caution_core,
            {base::day_arg(due)}};
}

std::string item_label(const ItemDue& item) {
    if (item.part.id.empty()) return item.name;
    return item.part.name + ' ' + item.part.serial + ": " + item.name;
}

base::Message state_word(State state) {
    switch (state) {
        case State::nothing_due:
            return {base::Word::state_nothing_due, {}};
        case State::act:
            return {base::Word::state_act, {}};
        case State::unknown:
            return {base::Word::state_unknown, {}};
        case State::due:
            return {base::Word::state_due, {}};
        case State::before_next_flight:
            return {base::Word::state_before_flight, {}};
        case State::over:
            return {base::Word::state_over, {}};
    }
    return {base::Word::state_unknown, {}};
}

const ItemDue* overhaul_of(const Assessed& aircraft) {
    return aircraft.overhaul < 0 ? nullptr
                                 : &aircraft.items[static_cast<std::size_t>(aircraft.overhaul)];
}

}  // namespace twoclocks::views
