// Canonical lines of every kind: as little as each can hold, and as much.
#pragma once

#include <string>
#include <vector>

namespace twoclocks::support {

[[nodiscard]] std::vector<std::string> kind_lines();

}  // namespace twoclocks::support
