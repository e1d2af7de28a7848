// What a campaign consists of: tasks, how long each takes, and what waits for what.
//
// Time is counted in days from the start of the day of the plan: 0 is its morning, 1 the next one.
// A task that ends at 5 has used up the fifth day.
//
// The hard questions.
//   What may be done while the aircraft still flies? Tasks of the stage `ahead`. The stage
//   `grounded` begins when it stops, `after` when it is stripped: it keeps nobody waiting.
//   Which tasks have a meaning beyond their length? Those with a role: a date is asked of them.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/message.hpp"

namespace twoclocks::plan {

/// Whether a task also runs on days on which nobody works.
enum class DayKind : std::uint8_t { working, calendar };

/// When a task can be done.
enum class Stage : std::uint8_t { ahead, grounded, after };

/// Tasks that a date is asked of.
enum class Role : std::uint8_t {
    none,
    order,       // the kit is ordered: it must not start later than this
    kit_here,    // the kit is on hand
    book,        // a place in the shop is asked for
    stop,        // the last flight; the first task of the stage grounded
    fit,         // the kit begins to be used
    release,     // back in service
    send_cores,  // old parts are on their way back
    credit       // what they are worth has come back
};

/// So many days: at the least, as expected, at the most. Least <= expected <= most, none negative.
struct Estimate {
    std::int32_t low{0};
    std::int32_t likely{0};
    std::int32_t high{0};
    bool operator==(const Estimate&) const = default;
};

/// Days of a task, 0 to ten years.
inline constexpr std::int32_t most_task_days = 3'653;

/// What has to be over, and how long before.
struct Link {
    std::string key;  // of the task before
    std::int32_t lag{0};
    bool operator==(const Link&) const = default;
};

/// What is known of a task beyond its estimate, in days of the plan. What is finished was begun.
struct Progress {
    std::optional<double> begun;
    std::optional<double> promised;  // its end
    std::optional<double> finished;
};

struct Task {
    std::string key;  // unique in its network
    base::Arg name;   // a word of ours or somebody's own
    Estimate days;
    DayKind kind{DayKind::working};
    Stage stage{Stage::ahead};
    Role role{Role::none};
    std::vector<Link> after;
    std::string resource{};  // who or what does it, in somebody's own words
    Progress progress{};
};

/// Tasks in any order.
using Tasks = std::vector<Task>;

}  // namespace twoclocks::plan
