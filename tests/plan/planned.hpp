// An aircraft with records of its campaign.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <string>
#include <vector>

#include "engine/plan/from_records.hpp"
#include "engine/timeline/state.hpp"

namespace twoclocks::support {

/// An aircraft with records of its campaign.
struct Planned {
    support::Pen pen{"ann"};
    std::vector<facts::Fact> facts;
    base::Id aircraft;

    Planned() {
        facts.push_back(
            pen.add(day("2026-01-01"), {}, facts::AircraftAdded{"ISLE-1", {}, {}, {}, {}}));
        aircraft = facts.front().id;
    }

    template <class Kind>
    base::Id say(const char* on, Kind kind) {
        facts.push_back(pen.write(day(on), {aircraft}, std::move(kind)));
        return facts.back().id;
    }

    [[nodiscard]] timeline::PlanState state(const char* today) const {
        return timeline::replay(support::journal_of(facts), aircraft, day(today)).campaign;
    }

    [[nodiscard]] plan::Tasks tasks(const char* today) const {
        return plan::tasks_of(state(today), day(today));
    }
};

/// The task with a key, which has to be there.
inline const plan::Task& in(const plan::Tasks& tasks, const std::string& key) {
    for (const plan::Task& task : tasks)
        if (task.key == key) return task;
    FAIL("no task " << key);
    return tasks.front();
}

}  // namespace twoclocks::support
