// The type templates that the program carries, from assets/templates.
#pragma once

#include <vector>

#include "engine/facts/type_template.hpp"

namespace twoclocks::canvas {

/// Every template, in the order of their files; one that does not read is left out, and a test
/// says that none is.
[[nodiscard]] const std::vector<facts::TypeTemplate>& shipped_templates();

}  // namespace twoclocks::canvas
