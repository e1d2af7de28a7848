// The versions of one record that nothing replaces, and what they come to together.
#pragma once

#include "engine/timeline/resolve.hpp"

namespace twoclocks::timeline {

/// True for a correction, a withdrawal and an answer.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool changes_another(const facts::Fact& fact);

/// The record of some first versions: its heads, and the value in use.
/// Units: none. Errors: none; needs one version. Source: our choice.
[[nodiscard]] Record make_record(const facts::Journal& journal,
                                 base::Id root,
                                 const std::vector<const facts::Fact*>& versions);

}  // namespace twoclocks::timeline
