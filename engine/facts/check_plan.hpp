// What a record of a campaign must be on its own.
#pragma once

#include "engine/base/problem.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// Everything that is wrong with a record of a campaign; nothing for other kinds.
/// Units: days. Errors: every one there is. Source: our choice.
[[nodiscard]] base::Problems check_plan(const Body& body);

}  // namespace twoclocks::facts
