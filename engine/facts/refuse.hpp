// A fault told at the field that has it.
#pragma once

#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/message_args.hpp"
#include "engine/base/problem.hpp"

namespace twoclocks::facts {

/// Adds a fault of the field of that key.
/// Units: none. Errors: none. Source: none needed.
inline void refuse(base::Problems& out,
                   base::Trouble code,
                   std::vector<base::Arg> args,
                   std::string_view key) {
    base::Problem problem = base::trouble(code, std::move(args));
    problem.field = key;
    out.push_back(std::move(problem));
}

}  // namespace twoclocks::facts
