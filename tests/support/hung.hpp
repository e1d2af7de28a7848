// Limits that hang on a part, for every case about them: see stores.hpp for the part.
#pragma once

#include "tests/support/stores.hpp"

#include <string>
#include <utility>
#include <vector>

#include "engine/limits/due.hpp"

namespace twoclocks::support {

struct Hung : Stores {
    /// An item of the gearbox, or of another part, with its limit.
    facts::Fact item(const facts::Fact& part,
                     facts::ItemRole role,
                     facts::LimitSet limit,
                     const char* on = "2024-01-01") {
        const facts::Fact out =
            keep(ann.add(day(on), {part.id}, facts::ItemAdded{"Limit", role, {}}));
        keep(ann.write(day(on), {part.id, out.id}, std::move(limit)));
        return out;
    }

    /// Work on an item, about what is given; below zero the total is not given.
    facts::Fact work(const facts::Fact& item,
                     std::vector<base::Id> about,
                     const char* on,
                     std::int64_t total) {
        return keep(ann.write(day(on), std::move(about), renews({item.id}, total)));
    }

    [[nodiscard]] limits::ItemDue due(const facts::Fact& part, const facts::Fact& item) const {
        for (limits::ItemDue& one : limits::due_items(state(part), today)) {
            if (one.item == item.id) return one;
        }
        return {};
    }

    /// The hours clock of an item; one that is not known when there is none.
    [[nodiscard]] limits::ClockDue hours(const facts::Fact& part, const facts::Fact& item) const {
        const limits::ItemDue one = due(part, item);
        const limits::ClockDue* clock = limits::clock_of(one, facts::Clock::hours);
        return clock == nullptr ? limits::ClockDue{} : *clock;
    }

    [[nodiscard]] limits::ClockDue calendar(const facts::Fact& part,
                                            const facts::Fact& item) const {
        const limits::ItemDue one = due(part, item);
        const limits::ClockDue* clock = limits::clock_of(one, facts::Clock::calendar);
        return clock == nullptr ? limits::ClockDue{} : *clock;
    }
};

/// A life that ends, of the class that stops and takes no tolerance.
[[nodiscard]] inline facts::LimitSet life(std::int64_t whole_hours, std::int32_t months = 0) {
    facts::LimitSet out = limit(whole_hours, months);
    out.limit_class = facts::LimitClass::airworthiness_limitation;
    return out;
}

}  // namespace twoclocks::support
