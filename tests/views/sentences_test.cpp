// What an aircraft's card and its answer say, from state to sentence.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <string>

#include "engine/base/region.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/sentence.hpp"

using namespace twoclocks;
using base::FlightTime;
using facts::ItemRole;
using support::add_item;
using support::hand_state;
using support::hand_today;
using support::stood_still;
using timeline::AircraftState;

namespace {

struct Sentences {
    std::string card;
    std::string answer;
    std::string range;
};

Sentences sentences_of(const AircraftState& state) {
    const views::Assessed one = views::assess(state, hand_today);
    return {base::say(views::card_sentence(one), {}),
            base::say(views::answer_sentence(one), {}),
            base::say(views::range_sentence(one), {})};
}

}  // namespace

TEST_CASE("the overhaul's first edge is said with its day", "[views][sentence]") {
    AircraftState by_hours = hand_state();
    add_item(by_hours, ItemRole::overhaul, base::hours(400), 900);
    CHECK(sentences_of(by_hours).card == "Hours stop it, about Aug 2025");
    CHECK(sentences_of(by_hours).answer == "Hours stop it first, about 5 Aug 2025.");
    CHECK(sentences_of(by_hours).range ==
          "Between Mar 2025 and Mar 2026 in eight of ten ways it may be flown.");
    AircraftState by_calendar = hand_state();
    add_item(by_calendar, ItemRole::overhaul, base::hours(400), 300);
    CHECK(sentences_of(by_calendar).card == "Calendar stops it, 27 Apr 2025");
    CHECK(sentences_of(by_calendar).answer == "The calendar stops it first, on 27 Apr 2025.");
    CHECK(sentences_of(by_calendar).range ==
          "Between Mar 2025 and Apr 2025 in eight of ten ways it may be flown.");
    AircraftState soon = hand_state();
    add_item(soon, ItemRole::overhaul, base::hours(400), 40);
    CHECK(sentences_of(soon).range == "No range: the calendar day is fixed.");
}

TEST_CASE("the fan is said by its months, and open when the hours never end", "[views][sentence]") {
    AircraftState flown = hand_state();
    add_item(flown, ItemRole::overhaul, base::hours(400), 3000);
    flown.usage.insert(flown.usage.begin(),
                       {base::add_days(hand_today, -30), base::hours(985), {}});
    CHECK(sentences_of(flown).range ==
          "Between Mar 2025 and Sep 2026 in eight of ten ways it may be flown.");
    AircraftState still = stood_still();
    add_item(still, ItemRole::overhaul, base::hours(400), {});
    CHECK(sentences_of(still).range ==
          "Hardly before Mar 2025; flown little enough, the hours never end.");
    still.plan->month = {0};
    CHECK(sentences_of(still).card == "Not flown: hours stand still");
}

TEST_CASE("another limit that comes first is said before the overhaul", "[views][sentence]") {
    AircraftState state = hand_state();
    add_item(state, ItemRole::overhaul, base::hours(400), 900);
    add_item(state, ItemRole::inspection, {}, 200).name = "Annual";
    CHECK(sentences_of(state).card == "Next: Annual, 17 Jan 2025");
    CHECK(sentences_of(state).answer ==
          "Hours end the overhaul life, about 5 Aug 2025. Before that: Annual, 17 Jan 2025.");
    state.items.back().limit->limit_class = facts::LimitClass::recommended;
    CHECK(sentences_of(state).card == "Hours stop it, about Aug 2025");
    state.items.back() = {};
    state.items.pop_back();
    add_item(state, ItemRole::inspection, base::hours(100), {}).name = "100 h";
    CHECK(sentences_of(state).card == "Next: 100 h, about 9 Oct 2024");
}

TEST_CASE("past a limit there is no soft wording", "[views][sentence]") {
    AircraftState state = stood_still();
    add_item(state, ItemRole::overhaul, base::hours(400), 900);
    timeline::ItemState& item = add_item(state, ItemRole::inspection, {}, -1);
    item.name = "Annual";
    CHECK(sentences_of(state).card == "Annual lapsed 30 Jun 2024");
    CHECK(sentences_of(state).answer == "Before next flight: Annual ended on 30 Jun 2024.");
    state.usage.front().on = base::add_days(hand_today, -2);
    state.usage.front().total = base::hours(999);
    CHECK(sentences_of(state).card == "Annual passed 30 Jun 2024");
    CHECK(sentences_of(state).answer ==
          "Over: Annual ended on 30 Jun 2024 and it has flown since.");
    state.items.back().limit->landings = base::Count{10};
    state.landings = base::Count{11};
    CHECK(sentences_of(state).card == "Annual flown past");
    CHECK(sentences_of(state).answer == "Over: Annual was flown past its landings or starts.");
    state.items.back().limit->hours = base::hours(10);
    CHECK(sentences_of(state).answer == "Over: Annual was flown past its hours limit.");
}

TEST_CASE("what is not known is said with its reason, the gravest first", "[views][sentence]") {
    AircraftState state = hand_state();
    state.plan.reset();
    CHECK(sentences_of(state).card == "No overhaul limit yet");
    add_item(state, ItemRole::overhaul, base::hours(400), 900);
    CHECK(sentences_of(state).card == "Not enough readings for a date");
    CHECK(sentences_of(state).range == "No range yet.");
    state.usage.clear();
    CHECK(sentences_of(state).card == "No reading yet");
    state.questions.push_back({timeline::QuestionKind::versions, {}, {}, {}, true});
    CHECK(sentences_of(state).card == "Records disagree");
    CHECK(sentences_of(state).answer == "Unknown: records disagree and neither is the safer.");
    state.unknown_records = 1;
    CHECK(sentences_of(state).card == "Holds records of a newer version");
}

TEST_CASE("of landings and starts the nearer is shown", "[views][due]") {
    AircraftState state = hand_state();
    timeline::ItemState& item = add_item(state, ItemRole::component, {}, {});
    item.limit->landings = base::Count{1000};
    item.limit->starts = base::Count{1000};
    const auto shown = [&] {
        const auto view = views::make_aircraft_view(views::assess(state, hand_today));
        return base::say(view.due.front().count_left->text, {});
    };
    state.landings = base::Count{900};
    CHECK(shown() == "unknown");
    state.starts = base::Count{300};
    CHECK(shown() == "100");
    state.starts = base::Count{950};
    CHECK(shown() == "50");
}
