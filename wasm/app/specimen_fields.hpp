// Every kind of field in every state, for the specimen page and the layout tests.
#pragma once

#include "wasm/app/form.hpp"

namespace twoclocks::canvas {

/// Fields as they stand on a page: how they were understood and what their searches leave is filled
/// in.
[[nodiscard]] std::vector<FieldView> specimen_fields(base::Date today);

}  // namespace twoclocks::canvas
