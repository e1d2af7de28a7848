// Taking back what was just saved. Nothing is deleted: a new record takes it back and says why.
#pragma once

#include "wasm/app/signer.hpp"

#include <vector>

#include "engine/facts/journal.hpp"

namespace twoclocks::canvas {

/// The records that take others back. A correction and a withdrawal stand in the place of an
/// earlier record: what takes them back puts that record in force again. Ids that are not here are
/// left out.
[[nodiscard]] std::vector<facts::Fact> take_back(const std::vector<base::Id>& saved,
                                                 const facts::Journal& journal,
                                                 base::Date today,
                                                 Signer& signer);

}  // namespace twoclocks::canvas
