// The lines of a limit's record beside its interval.
#pragma once

#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::views {

/// Adds a line for each setting that a limit has beside its interval and its source.
/// Units: as limit_fact.hpp. Errors: none. Source: our choice.
void add_limit_lines(const facts::LimitSet& limit, std::vector<base::Message>& out);

}  // namespace twoclocks::views
