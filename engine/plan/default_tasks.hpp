// Tasks of a campaign before anybody has said how long they take: ours, marked as estimates.
#pragma once

#include <string_view>

#include "engine/base/date.hpp"
#include "engine/plan/task.hpp"

namespace twoclocks::plan {

/// What the campaign is for.
enum class Work : std::uint8_t { overhaul, calendar_work };

/// The day these estimates were made.
inline constexpr base::Date default_tasks_made{20'786};  // 29 November 2026

/// The tasks of a whole-aircraft overhaul, or of a calendar inspection.
/// Units: days. Errors: none.
/// Source: kit 21 to 24 weeks, cores about three months, common practice, no source; all else our
/// estimate for an independent shop, two to four months on the ground.
[[nodiscard]] Tasks default_tasks(Work work);

/// Whether a key is that of one of these tasks.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_ours(std::string_view key);

/// Whether a key is that of a task that only some routes have.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_of_routes(std::string_view key);

/// What people call a task: its own name, our word for the key, or the key.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Arg task_name(std::string_view key, const std::string& own);

}  // namespace twoclocks::plan
