// Cores: what comes back for old parts, when, and what puts it at risk.
//
//   what is recorded, the days of the plan -> standing, deadline, outcomes -> credit
//
// The hard questions.
//   What can be counted on? The outcomes by their chances. Where no chance was recorded, or the
//   deadline passed with the core still here, nothing of it: only the most it may be is told.
//   Which deadline holds? The earlier of the day to return it and, where it was exchanged under a
//   customs relief, the day to export it. From recorded days it is known; from the plan, expected.
//   What of tax? Where the owner bore it, the credit note gives it back with the credit. Where it
//   was recovered it goes through and is not counted.
#pragma once

#include "engine/budget/cost_line.hpp"

namespace twoclocks::budget {

/// How near a deadline puts a core at risk. Our choice.
inline constexpr std::int32_t core_risk_days = 30;
/// From the day it comes off to the day it is sent. Our estimate.
inline constexpr std::int32_t core_packing_days = 14;
/// From its way back to the credit. About three months: common practice, no source.
inline constexpr std::int32_t usual_credit_days = 91;

/// How a core stands.
enum class CoreStanding : std::uint8_t {
    fitted,   // not off yet
    to_send,  // off, or its life over and not destroyed yet
    sent,
    received,
    graded,
    settled,
    forfeited,
    destroyed
};

/// One way in which it may come out, in minor units of the home currency with the tax that comes
/// back; below zero it is billed.
struct CoreOutcome {
    facts::CoreGrade grade{facts::CoreGrade::full};
    std::int64_t amount{0};
    std::int32_t permille{0};
};

/// A core worked out.
struct CoreWorked {
    facts::Core said;
    std::vector<timeline::CoreStepState> steps;
    base::Id fact;
    CoreStanding standing{CoreStanding::fitted};
    std::optional<base::Date> off_on;
    bool is_off{false};  // recorded; else `off_on` is that of the plan
    std::optional<base::Date> deadline;
    bool is_deadline_known{false};  // from recorded days; else from the plan
    bool is_late{false};            // passed, and it was not sent by then
    bool is_at_risk{false};         // near, or before it can be sent
    std::optional<base::Date> sent_on;
    std::optional<base::Date> credit_on;  // when it came, or is expected
    bool is_overdue{false};               // the credit should have come
    bool is_of_this{false};               // of the campaign ahead, not of one that is over
    bool known{false};                    // its amounts could be worked out
    std::vector<CoreOutcome> outcomes;    // what is possible; chances add up to a thousand, or none
    Points credit;  // of the least, as counted on, at the most; minor units of the home currency
    base::Problems notes;
};

/// Whether it is still owed: neither settled nor forfeited nor destroyed.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_open(CoreStanding standing);

/// How far it is, by its steps.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] CoreStanding standing_of(const timeline::CoreState& core);

/// The deadline that recorded days alone give.
/// Units: days. Errors: nothing where none is known. Source: our choice.
[[nodiscard]] std::optional<base::Date> recorded_deadline(const timeline::CoreState& core);

/// Whether it is not on its way, and a recorded deadline is near or over.
/// Units: days. Errors: none. Source: our choice, core_risk_days.
[[nodiscard]] bool must_go_now(const timeline::CoreState& core, base::Date today);

/// What the records of a core say together that cannot be.
/// Units: none. Errors: core_sent_early, core_settled_twice, core_credit_over.
/// Source: our choice.
[[nodiscard]] base::Problems core_faults(const timeline::CoreState& core);

/// Works one out; `setting.days` are those of the plan.
/// Units: minor units, days. Errors: `notes`: core_faults, core_late, core_chances_missing,
/// core_no_deadline, core_lien, rate_missing, tax_unknown, sum_beyond. Source: our choice.
[[nodiscard]] CoreWorked core_of(const timeline::CoreState& core, const Setting& setting);

/// Every core, in the order of their records.
/// Units: as above. Errors: as above. Source: as above.
[[nodiscard]] std::vector<CoreWorked> cores_of(const std::vector<timeline::CoreState>& cores,
                                               const Setting& setting);

}  // namespace twoclocks::budget
