// The list of checks: what a search, an order, a day or hours leave of it, and in which order.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/checks_view.hpp"

using namespace twoclocks;
using facts::ItemRole;
using support::add_item;
using support::hand_state;
using support::hand_today;
using views::CheckOrder;
using views::ChecksAsked;
using views::ChecksView;

namespace {

/// One hour a day is planned. Left: A 80 h; B 20 h; C 300 days; D 10 h and 700 days.
views::Assessed five() {
    timeline::AircraftState state = hand_state();
    const auto named = [&](const char* name, const char* chapter, auto left, auto days) {
        timeline::ItemState& item = add_item(state, ItemRole::inspection, left, days);
        item.name = name;
        item.chapter = chapter;
    };
    using Left = std::optional<base::FlightTime>;
    using Days = std::optional<std::int32_t>;
    named("A drive belts", "63", Left{base::hours(80)}, Days{});
    named("B oil filter", "79", Left{base::hours(20)}, Days{});
    named("C battery", "24", Left{}, Days{300});
    named("D tail rotor", "", Left{base::hours(10)}, Days{700});
    return views::assess(state, hand_today);
}

std::vector<std::string> names(const ChecksView& view) {
    std::vector<std::string> out;
    for (const views::ChecksGroup& group : view.groups) {
        for (const views::CheckRow& row : group.rows)
            out.push_back(row.due.name.substr(0, 1));
    }
    return out;
}

using Names = std::vector<std::string>;

ChecksAsked asked(CheckOrder order) {
    ChecksAsked made;
    made.order = order;
    return made;
}

}  // namespace

TEST_CASE("checks come soonest first, or with the least left first", "[views][checks]") {
    // At an hour a day: D in 10 days, B in 20, A in 80, C in 300.
    CHECK(names(make_checks_view(five(), asked(CheckOrder::soonest))) == Names{"D", "B", "A", "C"});
    const ChecksView least = make_checks_view(five(), asked(CheckOrder::least_left));
    std::int32_t before = -1;
    for (const views::CheckRow& row : least.groups.front().rows) {
        const std::int32_t hours = row.hours ? row.hours->left_permille : 1000;
        const std::int32_t calendar = row.calendar ? row.calendar->left_permille : 1000;
        CHECK(std::min(hours, calendar) >= before);
        before = std::min(hours, calendar);
    }
}

TEST_CASE("by chapter, a check without one comes last", "[views][checks]") {
    const ChecksView view = make_checks_view(five(), asked(CheckOrder::chapter));
    CHECK(names(view) == Names{"C", "A", "B", "D"});
    REQUIRE(view.groups.size() == 4);
    CHECK(base::say(view.groups[0].title, {}) == "Chapter 24");
    CHECK(base::say(view.groups[3].title, {}) == "No chapter");
}

TEST_CASE("a search looks at name and chapter, in any case of letters", "[views][checks]") {
    struct Row {
        const char* search;
        Names found;
    };

    for (const Row& row : {Row{"", {"D", "B", "A", "C"}},
                           Row{"OIL", {"B"}},
                           Row{"79", {"B"}},
                           Row{"r", {"D", "B", "A", "C"}},
                           Row{"gearbox", {}}}) {
        CAPTURE(row.search);
        ChecksAsked question;
        question.search = row.search;
        CHECK(names(make_checks_view(five(), question)) == row.found);
    }
}

TEST_CASE("what falls due by a day or within hours, a row either side", "[views][checks]") {
    struct Row {
        std::optional<std::int32_t> days;
        std::optional<std::int64_t> hours;
        Names found;
    };

    // By a day: by the early line, ten hours of D and twenty of B.
    const auto early_day = [](std::int64_t hours) {
        const auto ahead = forecast::flying_ahead(hand_state());
        const auto out =
            forecast::day_when(ahead.early, 0, static_cast<double>(base::hours(hours).seconds));
        REQUIRE(out);
        return *out;
    };
    const std::int32_t d = early_day(10);
    const std::int32_t b = early_day(20);
    CHECK(d < b);
    CHECK(b < 20);
    for (const Row& row : {Row{d - 1, {}, {}},
                           Row{d, {}, {"D"}},
                           Row{b - 1, {}, {"D"}},
                           Row{b, {}, {"D", "B"}},
                           Row{300, {}, {"D", "B", "A", "C"}},
                           Row{299, {}, {"D", "B", "A"}},
                           Row{{}, 9, {}},
                           Row{{}, 10, {"D"}},
                           Row{{}, 19, {"D"}},
                           Row{{}, 20, {"D", "B"}},
                           Row{{}, 80, {"D", "B", "A"}},
                           Row{10, 20, {"D", "B"}}}) {
        CAPTURE(row.days.value_or(-1), row.hours.value_or(-1));
        ChecksAsked question;
        if (row.days) question.until = base::add_days(hand_today, *row.days);
        if (row.hours) question.within = base::hours(*row.hours);
        CHECK(names(make_checks_view(five(), question)) == row.found);
    }
}

TEST_CASE("a check whose day is not known stays in every answer about days", "[views][checks]") {
    timeline::AircraftState state = hand_state();
    timeline::ItemState& item = add_item(state,
                                         ItemRole::inspection,
                                         std::optional<base::FlightTime>{},
                                         std::optional<std::int32_t>{});
    item.name = "Not known";
    item.limit = facts::LimitSet{};
    item.limit->landings = base::Count{100};
    ChecksAsked question;
    question.until = base::add_days(hand_today, 1);
    CHECK(names(make_checks_view(views::assess(state, hand_today), question)) == Names{"N"});
}

TEST_CASE("every figure of the list answers why, in the order it is drawn", "[views][checks]") {
    const ChecksView view = make_checks_view(five(), asked(CheckOrder::soonest));
    // Likely for each of the four, hours for three, calendar for two.
    const std::vector<views::Why> whys = whys_of(view);
    REQUIRE(whys.size() == 9);
    CHECK(base::say(whys[0].title, {}) == "D tail rotor: what is left");
    CHECK(base::say(whys[2].title, {}) == "D tail rotor: when it is likely due");
    CHECK(base::say(view.summary, {}) == "4 of 4 checks");
}
