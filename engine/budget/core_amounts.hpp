// What a core may bring, in the home currency.
#pragma once

#include "engine/budget/cores.hpp"

namespace twoclocks::budget {

/// What a core is called in a problem: its name, or its key.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Arg core_name(const facts::Core& core);

/// Fills the outcomes and the credit of one whose standing and days are found: what was settled or
/// graded counts alone, else the outcomes by their chances.
/// Units: minor units; credits round down, bills up. Errors: core_chances_missing, rate_missing,
/// tax_unknown, sum_beyond in `notes`. Source: our choice.
void find_amounts(const timeline::CoreState& core, const Setting& setting, CoreWorked& out);

}  // namespace twoclocks::budget
