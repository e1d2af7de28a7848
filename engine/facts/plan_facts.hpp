// What is recorded of a campaign before and while it runs: how long its tasks take, how far each
// is, how sure the dates are to be, and when nobody works. All about the aircraft.
//
// The hard questions.
//   What does a record change? Only what it gives. A task of ours that nobody recorded anything of
//   keeps our estimate; days, what it waits for and how it runs are each replaced on their own.
//   Which of several holds? Of one task the last by day; of one day the longer. Planning decides
//   nothing about flying: a disagreement here makes a date earlier, never a state unknown.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/base/date.hpp"

namespace twoclocks::facts {

/// Whether a task also runs on days on which nobody works.
enum class TaskDays : std::uint8_t { working, calendar };

/// How far a task is.
enum class TaskStep : std::uint8_t { begun, promised, finished };

/// What is planned.
enum class PlanWork : std::uint8_t { overhaul, calendar_work };

/// Most days of a task: ten years.
inline constexpr std::int32_t most_plan_days = 3'653;

/// One task. About the aircraft.
struct PlanTask {
    std::string task;  // its key: one of ours, or any word for a task of one's own
    std::string name;  // of a task of one's own
    std::optional<std::int32_t> low_days;
    std::optional<std::int32_t> likely_days;
    std::optional<std::int32_t> high_days;
    std::optional<TaskDays> runs;
    std::string
        waits_for;  // keys with a space between, "kit+5" for five days later; empty: as ours
    std::string resource;
    bool left_out{false};
    std::string said_by;
};

/// How far a task is, from the day of the record on. About the aircraft.
struct PlanStep {
    std::string task;
    TaskStep step{TaskStep::begun};
    std::optional<base::Date> promised;  // its end, where the step is a promise
    std::string reference;
};

/// How sure, for what, and which days the kit and the cores ask for. About the aircraft.
struct PlanTerms {
    PlanWork work{PlanWork::overhaul};
    std::int32_t confidence_percent{90};
    std::optional<std::int32_t> margin_days;
    std::optional<std::int32_t> core_days;
    std::optional<std::int32_t> keeps_days;
};

/// Days on which nobody works, from the day of the record on. About the aircraft.
struct Closed {
    std::optional<base::Date> last;  // missing: that day alone
    std::string why;
};

}  // namespace twoclocks::facts
