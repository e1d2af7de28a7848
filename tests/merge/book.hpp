// What every page of the book shares: two devices, a case, and how it is told.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <vector>

#include "engine/limits/due.hpp"

namespace twoclocks::book {

using facts::Fact;
using facts::Journal;
using facts::Ref;
using support::day;
using support::Hangar;
using support::reads;
using timeline::AircraftState;

/// Two devices with the same nine facts, and what is written on each.
struct Pair : Hangar {
    Journal ann_has = journal;
    Journal ben_has = journal;

    Fact ann_writes(const Fact& fact) {
        ann_has.add(fact);
        return fact;
    }

    Fact ben_writes(const Fact& fact) {
        ben_has.add(fact);
        return fact;
    }

    /// Both correct the last reading: 165.0 and 170.0 instead of 160.0.
    std::vector<Ref> both_correct() {
        const Fact first = ann_writes(ann.correct(reading, reads(1650)));
        const Fact second = ben_writes(ben.correct(reading, reads(1700)));
        return {{first.id, 0}, {second.id, 0}};
    }

    /// Everybody has everything.
    void join() { ann_has = ben_has = facts::merge(ann_has, ben_has); }
};

struct Case {
    const char* name;
    void (*write)(Pair&);
    std::int32_t questions;
    std::int64_t total_tenths;
    std::int64_t left_tenths;
};

inline std::int64_t left_of(const AircraftState& state, base::Id item) {
    for (const limits::ItemDue& due : limits::due_items(state, day("2024-07-01"))) {
        if (due.item != item) continue;
        const limits::ClockDue* clock = limits::clock_of(due, facts::Clock::hours);
        REQUIRE(clock != nullptr);
        return clock->left.seconds / 360;
    }
    FAIL("the item is not there");
    return 0;
}

inline void tell(const Case& one) {
    CAPTURE(one.name);
    Pair pair;
    one.write(pair);
    const Journal joined = facts::merge(pair.ann_has, pair.ben_has);
    CHECK(print_journal(joined) == print_journal(facts::merge(pair.ben_has, pair.ann_has)));
    const AircraftState state = timeline::replay(joined, pair.id(), pair.today);
    CHECK(static_cast<std::int32_t>(state.questions.size()) == one.questions);
    REQUIRE(limits::total_time(state).has_value());
    CHECK(limits::total_time(state)->seconds == one.total_tenths * 360);
    CHECK(left_of(state, pair.check.id) == one.left_tenths);
}

}  // namespace twoclocks::book
