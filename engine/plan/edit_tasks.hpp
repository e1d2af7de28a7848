// Changing a set of tasks so that what waits for what still holds together.
#pragma once

#include <string_view>

#include "engine/plan/task.hpp"

namespace twoclocks::plan {

/// The task with a key, null when it is not there.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Task* find_task(Tasks& tasks, std::string_view key);

/// Takes a task out: who waited for it waits for what it waited for. Nothing when it is not there.
/// Units: days. Errors: none. Source: our choice.
void leave_out(Tasks& tasks, const std::string& key);

}  // namespace twoclocks::plan
