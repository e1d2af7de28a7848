// Makes the status of an aircraft.
#pragma once

#include "engine/facts/journal.hpp"
#include "engine/views/assess.hpp"
#include "engine/views/status.hpp"

namespace twoclocks::views {

/// The status on the day the aircraft was worked out for.
/// Units: as views.hpp; used rounds up, left and next round down. Errors: none; what is not known
/// says so. Source: 14 CFR 91.417(a)(2) for what it lists; GM M.A.305 for limit, accumulated and
/// remaining in each parameter.
[[nodiscard]] StatusView make_status_view(const facts::Journal& journal, const Assessed& aircraft);

/// Every "why?" of the clocks, in their order.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Why> whys_of(const StatusView& view);

}  // namespace twoclocks::views
