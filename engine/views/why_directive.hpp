// Why a directive counts as it does: every step from the decision to what acts on it.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Adds what is told of the directive that an item rests on; nothing when it rests on none and none
/// names it.
/// Units: none. Errors: none. Source: timeline/directives.hpp, limits/directive_due.hpp.
void explain_directive(Why& why, const Assessed& aircraft, const limits::ItemDue& item);

/// What its serials and its part number say of what a directive hangs on, which bears `serial`.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> evidence_of(const timeline::DirectiveState& directive,
                                                     const std::string& serial);

}  // namespace twoclocks::views
