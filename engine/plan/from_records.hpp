// A campaign as the records of an aircraft have it: our tasks, and what somebody recorded of them.
#pragma once

#include "engine/forecast/projection.hpp"
#include "engine/plan/campaign.hpp"
#include "engine/plan/default_tasks.hpp"

namespace twoclocks::plan {

/// The tasks: ours where nothing is recorded, without those left out, with people's own at the end.
/// A task that waited for one left out waits for what that one waited for.
/// Units: days. Errors: none; what does not hold together is told by make_network.
/// Source: our choice.
[[nodiscard]] Tasks tasks_of(const timeline::PlanState& records, base::Date today);

/// Working days as recorded.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] WorkDays work_days_of(const timeline::PlanState& records, base::Date today);

/// What the campaign asks for.
/// Units: days, of a hundred. Errors: none. Source: our choice.
[[nodiscard]] Terms terms_of(const timeline::PlanState& records);

/// The day of a limit as the forecast has it; nothing when it is not known.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] std::optional<RunOut> run_out_of(const limits::ItemDue& item,
                                               const forecast::Projection& projection,
                                               base::Date today);

/// The last day for the first task ahead that nobody has begun, if the limit comes on its early
/// day and everything takes as long as expected; negative: behind. Nothing when all are begun, or
/// where the tasks do not hold together.
/// Units: days from today. Errors: none. Source: our choice, one pass instead of ten thousand.
[[nodiscard]] std::optional<std::int32_t> first_lead_day(const timeline::PlanState& records,
                                                         std::int32_t early_limit,
                                                         base::Date today);

}  // namespace twoclocks::plan
