#include "engine/budget/cores.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/base/scaled.hpp"
#include "engine/budget/core_amounts.hpp"

namespace twoclocks::budget {
namespace {

using base::Date;
using base::Trouble;
using facts::CoreStage;
using timeline::CoreState;
using timeline::CoreStepState;

[[nodiscard]] const CoreStepState* last_of(const CoreState& core, CoreStage stage) {
    const CoreStepState* out = nullptr;
    for (const CoreStepState& step : core.steps)
        if (step.said.stage == stage) out = &step;
    return out;
}

[[nodiscard]] std::optional<Date> day_of(const CoreState& core, CoreStage stage) {
    const CoreStepState* step = last_of(core, stage);
    return step == nullptr ? std::nullopt : std::optional{step->on};
}

[[nodiscard]] std::optional<Date> sooner(std::optional<Date> one, std::optional<Date> other) {
    if (!one) return other;
    return other ? std::min(*one, *other) : one;
}

[[nodiscard]] bool is_here(CoreStanding standing) {
    return standing == CoreStanding::fitted || standing == CoreStanding::to_send;
}

void warn(CoreWorked& out, Trouble code, std::vector<base::Arg> args) {
    base::Problem problem = base::trouble(code, std::move(args));
    problem.severity = base::Severity::caution;
    out.notes.push_back(std::move(problem));
}

/// The day its days run from where the plan has it.
[[nodiscard]] std::optional<Date> planned_deadline(const facts::Core& said, const PayDays& days) {
    const auto from = said.returns_from == facts::CoreFrom::shipment ? days.shipped : days.back;
    if (!from || !said.return_days) return std::nullopt;
    return base::add_days(*from, *said.return_days);
}

void find_days(const CoreState& core, const Setting& setting, CoreWorked& out) {
    const facts::Core& said = core.said;
    out.off_on = day_of(core, CoreStage::off);
    if (!out.off_on) out.off_on = core.released;
    out.is_off = out.off_on.has_value();
    if (!out.off_on) out.off_on = setting.days.off;
    out.deadline = recorded_deadline(core);
    // A day to export by says nothing of the day to return it by.
    out.is_deadline_known = out.deadline && (said.return_by || !said.return_days ||
                                             (said.returns_from == facts::CoreFrom::shipment
                                                  ? said.shipped_on.has_value()
                                                  : core.released.has_value()));
    if (!out.is_deadline_known)
        out.deadline = sooner(out.deadline, planned_deadline(said, setting.days));
    out.sent_on = day_of(core, CoreStage::sent);
}

/// Whether its deadline passed, is near, or comes before the core can go.
void find_risk(const Setting& setting, CoreWorked& out) {
    if (!out.deadline) return;
    const Date today = setting.today;
    if (!is_here(out.standing)) {
        // On its way too late: until it is graded nobody has to take it.
        out.is_late = out.is_deadline_known && out.sent_on && *out.sent_on > *out.deadline &&
                      out.standing < CoreStanding::graded;
        if (out.is_late)
            warn(out, Trouble::core_late, {core_name(out.said), base::day_arg(*out.deadline)});
        return;
    }
    out.is_late = out.is_deadline_known && *out.deadline < today;
    const bool is_near = base::days_between(today, *out.deadline) <= core_risk_days;
    const bool is_short =
        out.off_on && !out.is_off && base::add_days(*out.off_on, core_packing_days) > *out.deadline;
    out.is_at_risk = !out.is_late && ((is_near && out.is_deadline_known) || is_short);
    const base::Arg named = core_name(out.said);
    if (out.is_late)
        warn(out, Trouble::core_late, {named, base::day_arg(*out.deadline)});
    else if (is_short)
        warn(out,
             Trouble::core_short,
             {named, base::day_arg(*out.deadline), base::day_arg(*out.off_on)});
}

/// The day on which the credit came, or can be expected.
void find_credit_day(const CoreState& core, const Setting& setting, CoreWorked& out) {
    if (const auto settled = day_of(core, CoreStage::settled)) {
        out.credit_on = settled;
        return;
    }
    if (!is_open(out.standing) || out.said.destroy) return;
    std::optional<Date> sent = out.sent_on;
    if (!sent) sent = day_of(core, CoreStage::received);
    if (!sent && out.off_on)
        sent = std::max(setting.today, base::add_days(*out.off_on, core_packing_days));
    if (!sent) return;
    const Date expected = base::add_days(*sent, out.said.credit_days.value_or(usual_credit_days));
    out.is_overdue = expected < setting.today;
    out.credit_on = std::max(expected, setting.today);
}

void tell(const CoreState& core, CoreWorked& out) {
    const base::Arg named = core_name(out.said);
    if (!out.said.lien.empty() && is_here(out.standing))
        warn(out, Trouble::core_lien, {named, base::text_arg(out.said.lien)});
    if (!out.deadline && is_here(out.standing) && !out.said.destroy)
        warn(out, Trouble::core_no_deadline, {named});
    for (base::Problem& fault : core_faults(core))
        out.notes.push_back(std::move(fault));
}

}  // namespace

base::Arg core_name(const facts::Core& core) {
    return base::text_arg(core.name.empty() ? core.core : core.name);
}

CoreStanding standing_of(const CoreState& core) {
    constexpr std::array stands{CoreStanding::to_send,
                                CoreStanding::sent,
                                CoreStanding::received,
                                CoreStanding::graded,
                                CoreStanding::settled,
                                CoreStanding::forfeited,
                                CoreStanding::destroyed};
    CoreStanding out = core.released ? CoreStanding::to_send : CoreStanding::fitted;
    // How far it is at the most; of several ends the last.
    for (const CoreStepState& step : core.steps) {
        const CoreStanding now = stands[static_cast<std::size_t>(step.said.stage)];
        if (!is_open(now) || (is_open(out) && now > out)) out = now;
    }
    return out;
}

bool is_open(CoreStanding standing) {
    return standing != CoreStanding::settled && standing != CoreStanding::forfeited &&
           standing != CoreStanding::destroyed;
}

std::optional<Date> recorded_deadline(const CoreState& core) {
    const facts::Core& said = core.said;
    std::optional<Date> out = said.return_by;
    const auto from =
        said.returns_from == facts::CoreFrom::shipment ? said.shipped_on : core.released;
    if (!out && from && said.return_days) out = base::add_days(*from, *said.return_days);
    return said.relief == facts::DutyRelief::none ? out : sooner(out, said.export_by);
}

bool must_go_now(const CoreState& core, Date today) {
    if (!is_here(standing_of(core))) return false;
    const auto deadline = recorded_deadline(core);
    return deadline && base::days_between(today, *deadline) <= core_risk_days;
}

base::Problems core_faults(const CoreState& core) {
    base::Problems out;
    const base::Arg named = core_name(core.said);
    const auto off = day_of(core, CoreStage::off);
    std::int32_t settled = 0;
    for (const CoreStepState& step : core.steps) {
        if (step.said.stage == CoreStage::sent && off && step.on < *off)
            out.push_back(base::trouble(Trouble::core_sent_early,
                                        {named, base::day_arg(step.on), base::day_arg(*off)}));
        if (step.said.stage == CoreStage::settled) ++settled;
        const auto& bound = core.said.charge ? core.said.charge : core.said.best_credit;
        if (!step.said.credit || !bound) continue;
        const bool is_over = step.said.credit->currency == bound->currency &&
                             step.said.credit->minor_units > bound->minor_units;
        if (is_over)
            out.push_back(base::trouble(
                Trouble::core_credit_over,
                {named, base::money_arg(*step.said.credit), base::money_arg(*bound)}));
    }
    if (settled > 1) out.push_back(base::trouble(Trouble::core_settled_twice, {named}));
    return out;
}

CoreWorked core_of(const CoreState& core, const Setting& setting) {
    CoreWorked out;
    out.said = core.said;
    out.steps = core.steps;
    out.fact = core.fact;
    out.standing = standing_of(core);
    out.is_of_this = !core.released;
    find_days(core, setting, out);
    find_risk(setting, out);
    find_credit_day(core, setting, out);
    find_amounts(core, setting, out);
    tell(core, out);
    return out;
}

std::vector<CoreWorked> cores_of(const std::vector<CoreState>& cores, const Setting& setting) {
    std::vector<CoreWorked> out;
    for (const CoreState& core : cores)
        out.push_back(core_of(core, setting));
    return out;
}

}  // namespace twoclocks::budget
