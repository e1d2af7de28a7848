// What a directive, an event, wear or a record of use cannot be, whatever else is recorded.
#pragma once

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// What is wrong with the fields of these kinds; nothing for the others.
/// Units: none. Errors: none; an empty list is sound. Source: our choice; an hours factor and
/// uncounted hours rest on a named document, common practice, no source.
[[nodiscard]] base::Problems check_care(const Fields& fields);

/// True for those of these kinds that name two subjects: what bears the item, and the item.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool names_two(const Fields& fields);

}  // namespace twoclocks::facts
