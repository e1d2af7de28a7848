// The part of a journal that may bear on one subject.
#pragma once

#include "engine/facts/journal.hpp"

namespace twoclocks::facts {

/// Every fact that may bear on an aircraft or part: those about it, those they name or that name
/// them, and so on to the end. Of aircraft that never shared a part or a directive, each has its
/// own; where everything hangs together it is the whole journal.
/// Units: none. Errors: none. Source: our choice; what the timeline reads, it reads by such names.
[[nodiscard]] Journal related_to(const Journal& journal, base::Id subject);

}  // namespace twoclocks::facts
