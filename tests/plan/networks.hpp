// Networks for tests, by letters.
#pragma once

#include "catch_amalgamated.hpp"

#include <string>
#include <vector>

#include "engine/base/message_args.hpp"
#include "engine/plan/network.hpp"

namespace twoclocks::support {

/// A task that waits for others, each a letter: calendar days, on the ground.
inline plan::Task task(const std::string& key, plan::Estimate days, const std::string& after = {}) {
    plan::Task out{key,
                   base::text_arg(key),
                   days,
                   plan::DayKind::calendar,
                   plan::Stage::grounded,
                   plan::Role::none,
                   {}};
    for (const char before : after)
        out.after.push_back({std::string(1, before), 0});
    return out;
}

inline plan::Network network(const plan::Tasks& tasks) {
    const auto made = plan::make_network(tasks);
    REQUIRE(made.ok());
    return made.value();
}

/// Codes of everything that is wrong with tasks.
inline std::vector<base::Trouble> faults(const plan::Tasks& tasks) {
    std::vector<base::Trouble> out;
    const auto made = plan::make_network(tasks);
    if (made.ok()) return out;
    for (const base::Problem& problem : made.problems())
        out.push_back(problem.code);
    return out;
}

/// The place of a task in its network.
inline std::size_t at(const plan::Network& network, const std::string& key) {
    for (std::size_t place = 0; place < network.tasks.size(); ++place)
        if (network.tasks[place].key == key) return place;
    FAIL("no task " << key);
    return 0;
}

}  // namespace twoclocks::support
