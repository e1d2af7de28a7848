// What a Result refused for, as a name, so that a table row can say what it expects.
#pragma once

#include <string>

#include "engine/base/message.hpp"
#include "engine/base/problem.hpp"

namespace twoclocks::support {

/// "accepted", or the id of the first trouble as it stands in words.def.
template <class T>
[[nodiscard]] std::string first_trouble(const base::Result<T>& result) {
    if (result.ok()) return "accepted";
    return std::string{base::name_of(result.problems().front().code)};
}

}  // namespace twoclocks::support
