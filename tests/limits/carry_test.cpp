// Where an interval counts from after work: chains of due points, gaps, doubt.
#include "engine/limits/carry.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/hangar.hpp"

#include <optional>
#include <string>
#include <vector>

#include "engine/limits/due.hpp"

using namespace twoclocks;
using base::FlightTime;
using facts::CarryOver;
using facts::Clock;
using facts::ItemRole;
using facts::LimitSet;
using limits::Carried;
using support::day;
using support::Hangar;
using support::renews;
using timeline::AircraftState;
using timeline::ItemState;
using timeline::Renewed;

namespace {

/// A 100 h inspection with 10 h of tolerance, counted from the due point, first due at 1,100 h.
struct Chain {
    AircraftState state = support::hand_state();
    ItemState* item = &support::add_item(state, ItemRole::inspection, FlightTime{}, {});

    Chain() {
        item->limit->hours = base::hours(100);
        item->limit->anchor_total = base::hours(1000);
        item->limit->tolerance.hours = base::hours(10);
        item->limit->tolerance.carry_over = CarryOver::from_due;
        state.usage.back().total = base::hours(5000);
    }

    Chain& done(std::int64_t total) {
        if (item->renewed[0]) item->earlier[0].push_back(*item->renewed[0]);
        item->renewed[0] = Renewed{support::hand_today, base::hours(total), false, {}, {}, {}};
        return *this;
    }

    [[nodiscard]] std::int64_t from() const {
        return limits::hours_from(limits::bearer_of(state), *item)->from.seconds / 3600;
    }

    [[nodiscard]] Carried carried() const {
        return limits::hours_from(limits::bearer_of(state), *item)->carried;
    }
};

/// The check's hours left in tenths and the day its calendar ends.
std::string check_of(const Hangar& h, const facts::Journal& journal) {
    const auto items = limits::due_items(timeline::replay(journal, h.id(), h.today), h.today);
    for (const limits::ItemDue& item : items) {
        if (item.item != h.check.id) continue;
        return std::to_string(limits::clock_of(item, Clock::hours)->left.seconds / 360) + ' ' +
               base::print_date(limits::clock_of(item, Clock::calendar)->due_on);
    }
    return {};
}

/// 100 h or 12 months, 10 h and 30 days of tolerance from the due point, from 1,010.0 h.
LimitSet carrying() {
    LimitSet out = support::limit(100, 12);
    out.anchor_total = base::tenths(10'100);
    out.anchor_on = day("2023-04-10");
    out.tolerance = {base::hours(10), 30, {}, {}, {}, CarryOver::from_due, {}, "Programme 3"};
    return out;
}

}  // namespace

TEST_CASE("due points chain, and work outside the tolerance starts a new chain",
          "[limits][carry_over]") {
    CHECK(Chain{}.done(1105).from() == 1100);
    CHECK(Chain{}.done(1105).carried() == Carried::due_point);
    CHECK(Chain{}.done(1100).carried() == Carried::none);
    CHECK(Chain{}.done(1105).done(1209).from() == 1200);
    CHECK(Chain{}.done(1105).done(1211).from() == 1211);
    CHECK(Chain{}.done(1105).done(1211).done(1303).from() == 1311);
    CHECK(Chain{}.done(1089).done(1198).from() == 1189);
    CHECK(Chain{}.done(1090).done(1198).from() == 1200);
}

TEST_CASE("an anchor that is assumed has no due point", "[limits][carry_over]") {
    Chain chain;
    chain.item->limit->anchor_total = std::nullopt;
    CHECK(chain.done(105).from() == 105);
    CHECK(chain.done(203).from() == 205);
}

TEST_CASE("the first interval gives the first due point", "[limits][carry_over]") {
    Chain chain;
    chain.item->limit->first.hours = base::hours(300);
    CHECK(chain.done(1295).from() == 1300);
    CHECK(chain.done(1405).from() == 1400);
}

TEST_CASE("work without a total breaks the chain", "[limits][carry_over]") {
    Chain chain;
    chain.done(1105).done(1200);
    chain.item->earlier[0].back().total = std::nullopt;
    CHECK(chain.from() == 1200);
    CHECK(chain.carried() == Carried::none);
    chain.item->renewed[0]->total = std::nullopt;
    CHECK_FALSE(limits::hours_from(limits::bearer_of(chain.state), *chain.item));
}

TEST_CASE("excess counts in the next interval, a whole interval past is a gap",
          "[limits][overfly]") {
    Chain chain;
    chain.item->limit->tolerance = {};
    chain.item->limit->tolerance.overfly_hours = base::hours(10);
    CHECK(chain.done(1106).from() == 1100);
    CHECK(chain.done(1195).from() == 1195);
    CHECK(chain.done(1299).from() == 1295);
    CHECK(chain.done(1495).from() == 1495);
    CHECK(chain.carried() == Carried::none);
    CHECK(limits::hours_from(limits::bearer_of(chain.state), *chain.item)->past == FlightTime{});
    // Of inspections in a programme alone.
    chain.item->role = ItemRole::component;
    CHECK(limits::overfly_of(*chain.item->limit, ItemRole::component) == FlightTime{});
    CHECK(limits::overfly_of(*chain.item->limit, ItemRole::inspection) == base::hours(10));
    LimitSet directive = *chain.item->limit;
    directive.limit_class = facts::LimitClass::directive;
    CHECK(limits::overfly_of(directive, ItemRole::inspection) == FlightTime{});
}

TEST_CASE("of an amount and a percentage the lesser, and a percentage rounds down",
          "[limits][tolerance]") {
    LimitSet limit = support::limit(100, 12);
    CHECK(limits::tolerance_hours(limit, base::hours(100)) == FlightTime{});
    CHECK(limits::tolerance_days(limit, 365) == 0);
    limit.tolerance.hours = base::hours(5);
    limit.tolerance.days = 30;
    limit.tolerance.permille = 33;
    CHECK(limits::tolerance_hours(limit, base::hours(100)) == FlightTime{11'880});
    CHECK(limits::tolerance_hours(limit, base::hours(200)) == base::hours(5));
    CHECK(limits::tolerance_hours(limit, FlightTime{31}) == FlightTime{1});
    CHECK(limits::tolerance_days(limit, 365) == 12);
    CHECK(limits::tolerance_days(limit, 1000) == 30);
    limit.tolerance.cap_days = 7;
    CHECK(limits::tolerance_days(limit, 365) == 7);
    limit.tolerance.permille = 0;
    CHECK(limits::tolerance_days(limit, 365) == 0);
}

TEST_CASE("a calendar counts from its due point inside the window", "[limits][carry_over]") {
    AircraftState state = support::hand_state();
    ItemState& item = support::add_item(state, ItemRole::inspection, {}, 0);
    item.limit = carrying();
    const auto from = [&](const char* done) {
        item.renewed[1] = Renewed{day(done), {}, false, {}, {}, {}};
        return base::print_date(limits::day_from(limits::bearer_of(state), item)->from);
    };
    CHECK(from("2024-03-11") == "2024-04-10");
    CHECK(from("2024-03-10") == "2024-03-10");
    CHECK(from("2024-05-10") == "2024-04-10");
    CHECK(from("2024-05-11") == "2024-05-11");
    item.earlier[1].push_back(Renewed{day("2024-04-20"), {}, false, {}, {}, {}});
    CHECK(from("2025-05-01") == "2025-04-10");
}

TEST_CASE("replay keeps every renewal, so due points chain through the journal",
          "[limits][carry_over][replay]") {
    Hangar h;
    facts::Journal journal = h.journal;
    // Due at 1,110.0 h and on 10 April 2024, done at 1,120.0 h on 1 April: inside both windows.
    journal.add(h.ann.write(day("2024-01-02"), h.with(h.check), carrying()));
    CHECK(check_of(h, journal) == "500 2025-04-10");
    // Due at 1,210.0 h; done at 1,155.0 h and on 20 June: outside both.
    journal.add(h.ann.write(day("2024-06-20"), {h.id()}, renews({h.check.id}, 11'550)));
    CHECK(check_of(h, journal) == "950 2025-06-20");
}

TEST_CASE("while records disagree an interval counts from the earliest it could",
          "[limits][carry_over][doubt]") {
    Hangar h;
    facts::Journal journal = h.journal;
    journal.add(h.ann.write(day("2024-01-02"), h.with(h.check), carrying()));
    journal.add(h.ann.correct(h.work, renews({h.check.id}, 11'210)));
    journal.add(h.ben.correct(h.work, renews({h.check.id}, 11'150)));
    // Done at 1,115.0 h at the earliest, less 10 h; on 1 April, less 30 days.
    CHECK(check_of(h, journal) == "450 2025-03-02");
    // Without carry-over nothing is taken off.
    facts::Journal plain = h.journal;
    plain.add(h.ann.correct(h.work, renews({h.check.id}, 11'210)));
    plain.add(h.ben.correct(h.work, renews({h.check.id}, 11'150)));
    CHECK(check_of(h, plain) == "550 2025-04-01");
}
