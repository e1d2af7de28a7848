// What a fuzz target holds true of every input: where it does not, the input is kept as a crasher.
#pragma once

#include <cstdlib>

namespace twoclocks::fuzz {

inline void must(bool holds) {
    if (!holds) std::abort();
}

}  // namespace twoclocks::fuzz
