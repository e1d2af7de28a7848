// Every widget in every state, for contributors: the page behind the address #specimen. All of it
// is invented.
#pragma once

#include "wasm/screen.hpp"

namespace twoclocks::canvas {

[[nodiscard]] SpecimenPage make_specimen(base::Date today);

}  // namespace twoclocks::canvas
