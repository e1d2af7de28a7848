// Kinds of cores, payments and the reserve: as little as each can hold, and as much.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace twoclocks::support {

/// Kind, and what comes after `about` in its line.
[[nodiscard]] std::vector<std::pair<std::string, std::string>> cash_lines();

}  // namespace twoclocks::support
