// What a record must be to make sense on its own, whoever wrote it.
#pragma once

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// Every problem of one record taken alone; empty when it is sound.
/// Units: as fact.hpp. Range: hours 0 to 200,000, counts 0 to 10,000,000, months 1 to 1,200.
/// Errors: limit_without_any, limit_zero, hours_negative, hours_absurd, count_absurd,
/// months_absurd,
/// about_missing, answer_empty. Each names its field.
/// Source: our choice of bounds; common practice, no source.
[[nodiscard]] base::Problems check(const Body& body);

}  // namespace twoclocks::facts
