#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/views/clock_view.hpp"
#include "engine/views/life_box.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/sentence.hpp"

namespace twoclocks::views {
namespace {

using facts::Clock;

/// The day the first mandatory limit stops it; far away when it is not known.
[[nodiscard]] base::Date first_day(const Assessed& aircraft) {
    constexpr base::Date never{100'000};
    return aircraft.first ? *aircraft.first->projection.likely : never;
}

[[nodiscard]] bool needs_me_before(const Assessed* left, const Assessed* right) {
    if (left->overall != right->overall) return left->overall > right->overall;
    if (first_day(*left) != first_day(*right)) return first_day(*left) < first_day(*right);
    if (left->state.registration != right->state.registration) {
        return left->state.registration < right->state.registration;
    }
    return left->state.id < right->state.id;
}

[[nodiscard]] AircraftCard make_card(const Assessed& aircraft) {
    AircraftCard card;
    card.id = aircraft.state.id;
    card.registration = aircraft.state.registration;
    card.state = aircraft.overall;
    card.state_word = state_word(aircraft.overall);
    card.sentence = card_sentence(aircraft);
    const limits::ItemDue* overhaul = overhaul_of(aircraft);
    card.hours = clock_view(
        overhaul == nullptr ? nullptr : limits::clock_of(*overhaul, Clock::hours), aircraft.today);
    card.calendar =
        clock_view(overhaul == nullptr ? nullptr : limits::clock_of(*overhaul, Clock::calendar),
                   aircraft.today);
    card.box = life_box(aircraft);
    const auto open = static_cast<std::int64_t>(open_questions(aircraft).size());
    if (open > 0) card.questions = {base::Word::card_questions, {base::whole_arg(open)}};
    return card;
}

}  // namespace

FleetView make_fleet_view(const std::vector<Assessed>& fleet) {
    std::vector<const Assessed*> order;
    for (const Assessed& aircraft : fleet)
        order.push_back(&aircraft);
    base::sort_stably(order, needs_me_before);
    FleetView view;
    for (const Assessed* aircraft : order) {
        view.cards.push_back(make_card(*aircraft));
        view.has_demo = view.has_demo || aircraft->state.invented;
    }
    return view;
}

}  // namespace twoclocks::views
