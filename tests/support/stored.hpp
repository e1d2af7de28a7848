// The hangar's aircraft in and out of storage, and what people write about it; see hangar.hpp.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <utility>
#include <vector>

#include "engine/limits/due.hpp"

namespace twoclocks::support {

struct Stored : Hangar {
    facts::Fact keep(facts::Fact fact) {
        journal.add(fact);
        return fact;
    }

    /// A record of storage; no end when `until` is null.
    facts::Fact stored(const char* from, const char* until = nullptr) {
        return keep(ann.write(day(from), {id()}, storage(until)));
    }

    [[nodiscard]] static facts::OutOfService storage(const char* until) {
        facts::OutOfService out;
        if (until != nullptr) out.until = day(until);
        out.stored = true;
        out.source = "Manual, chapter 10";
        return out;
    }

    /// An inspection every so many days that counts as told.
    facts::Fact item(facts::InForce in_force, std::int32_t days) {
        const facts::Fact out = keep(ann.add(
            day("2024-01-01"), {id()}, facts::ItemAdded{"Told", facts::ItemRole::inspection, {}}));
        keep(ann.write(day("2024-01-01"), with(out), counted(in_force, days)));
        return out;
    }

    [[nodiscard]] static facts::LimitSet counted(facts::InForce in_force, std::int32_t days) {
        facts::LimitSet out;
        out.days = days;
        out.in_force = in_force;
        out.anchor_on = day("2024-01-01");
        out.source = "Manual";
        return out;
    }

    facts::Fact work(const facts::Fact& item, const char* on, std::int64_t total = 11'600) {
        return keep(ann.write(day(on), {id()}, renews({item.id}, total)));
    }

    /// Hours that the meter did not count.
    facts::Fact adjusted(const char* on, facts::MeterAdjusted fields) {
        if (fields.source.empty()) fields.source = "Flight log";
        return keep(ann.write(day(on), with(meter), std::move(fields)));
    }

    [[nodiscard]] timeline::AircraftState state(const char* on = "2024-07-01") const {
        return timeline::replay(journal, id(), day(on));
    }

    [[nodiscard]] std::int64_t total_tenths() const {
        const auto total = limits::total_time(state());
        REQUIRE(total.has_value());
        return total->seconds / 360;
    }

    [[nodiscard]] limits::ItemDue due(const facts::Fact& item,
                                      const char* on = "2024-07-01") const {
        for (limits::ItemDue& one : limits::due_items(state(on), day(on))) {
            if (one.item == item.id) return one;
        }
        FAIL("the item is not there");
        return {};
    }

    /// The day the calendar of an item ends, or that it is asleep.
    [[nodiscard]] std::string ends(const facts::Fact& item, const char* on = "2024-07-01") const {
        const limits::ItemDue one = due(item, on);
        if (one.asleep) return "asleep";
        const limits::ClockDue* clock = limits::clock_of(one, facts::Clock::calendar);
        return clock != nullptr && clock->known ? base::print_date(clock->due_on) : "unknown";
    }
};

}  // namespace twoclocks::support
