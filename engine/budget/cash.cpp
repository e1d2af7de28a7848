#include "engine/budget/cash.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/base/scaled.hpp"
#include "engine/budget/core_amounts.hpp"

namespace twoclocks::budget {
namespace {

using base::Date;
using base::MoneyRound;
using base::Trouble;
using facts::PaidAt;
using facts::whole_permille;
using timeline::PayTermState;

[[nodiscard]] std::optional<Date> day_of(PaidAt at, facts::CostGroup group, const PayDays& days) {
    switch (at) {
        case PaidAt::order:
            return days.ordered;
        case PaidAt::booking:
            return days.booked;
        case PaidAt::shipment:
            return days.shipped;
        case PaidAt::stop:
            return days.stopped;
        case PaidAt::release:
            return days.back;
        case PaidAt::cores:
            return days.cores;
    }
    return paid_on(group, days);
}

/// Terms of the line itself, else of its group, else of every line.
[[nodiscard]] std::vector<const PayTermState*> terms_of(const facts::CostLine& line,
                                                        const std::vector<PayTermState>& terms) {
    std::vector<const PayTermState*> own;
    std::vector<const PayTermState*> of_group;
    std::vector<const PayTermState*> of_all;
    for (const PayTermState& term : terms) {
        if (!term.said.line.empty()) {
            if (term.said.line == line.line) own.push_back(&term);
        } else if (term.said.group) {
            if (*term.said.group == line.group) of_group.push_back(&term);
        } else {
            of_all.push_back(&term);
        }
    }
    if (!own.empty()) return own;
    return of_group.empty() ? of_all : of_group;
}

/// The flows while they are gathered.
class Gathering {
  public:
    Gathering(const timeline::MoneyState& money, const Setting& setting, base::Problems& faults)
        : money_(money), setting_(setting), faults_(faults) {}

    void take(const Estimate& estimate) {
        for (const CostedLine& line : estimate.lines)
            if (line.counts && line.known) take_line(line);
        // Where the work has no cores, those of the aircraft stay on it.
        for (const CoreWorked& core : cores_of(money_.cores, setting_))
            if (!core.is_of_this || !estimate.cores.empty()) take_core(core);
        // A payment takes the earliest shares, whatever order the terms were recorded in.
        base::sort_stably(flows_, [](const Flow& one, const Flow& other) {
            if (!one.on || !other.on) return one.on.has_value() && !other.on;
            return *one.on < *other.on;
        });
        for (const timeline::PaymentState& payment : money_.payments)
            take_payment(payment);
    }

    [[nodiscard]] std::vector<Flow> done() {
        std::erase_if(flows_, [](const Flow& flow) { return flow.amount == 0; });
        for (Flow& flow : flows_)
            if (flow.kind != FlowKind::paid && flow.on && *flow.on < setting_.today)
                flow.was_due = std::exchange(flow.on, setting_.today);
        base::sort_stably(flows_, [](const Flow& one, const Flow& other) {
            if (one.on.has_value() != other.on.has_value()) return one.on.has_value();
            if (one.on && *one.on != *other.on) return *one.on < *other.on;
            return one.amount < 0 && other.amount > 0;
        });
        return std::move(flows_);
    }

  private:
    void complain(Trouble code, std::vector<base::Arg> args) {
        faults_.push_back(base::trouble(code, std::move(args)));
    }

    void take_line(const CostedLine& line) {
        const std::int64_t whole = line.home_gross.likely;
        std::int64_t left = whole;
        const auto share = [&](std::int32_t permille, PaidAt at, std::int32_t after) -> Flow& {
            const auto cut = base::scaled({whole, {}}, permille, whole_permille, MoneyRound::up);
            const std::int64_t amount = std::min(left, cut ? cut->minor_units : 0);
            left -= amount;
            auto on = day_of(at, line.said.group, setting_.days);
            if (on) on = base::add_days(*on, after);
            return add(line, FlowKind::share, at, amount, on);
        };
        std::int32_t told = 0;
        for (const PayTermState* const term : terms_of(line.said, money_.pay_terms)) {
            told += term->said.permille;
            Flow& flow =
                share(term->said.permille, term->said.at, term->said.after_days.value_or(0));
            flow.term = term->said.name;
            flow.fact = term->fact;
        }
        if (told > whole_permille) complain(Trouble::terms_over_whole, {name_of(line.said)});
        const std::int32_t deposit = line.said.deposit_permille.value_or(0);
        if (told == 0 && deposit > 0) {
            Flow& flow = share(deposit, PaidAt::order, 0);
            flow.on = agreed_on(line.said.group, setting_.days);
        }
        add(line, FlowKind::rest, std::nullopt, left, paid_on(line.said.group, setting_.days));
        take_tax_back(line);
    }

    void take_tax_back(const CostedLine& line) {
        // After the last of its shares: no tax comes back before it was paid.
        auto on = paid_on(line.said.group, setting_.days);
        for (const Flow& flow : flows_)
            if (flow.line == line.said.line && flow.amount != 0 && flow.on && on)
                on = std::max(*on, *flow.on);
        if (on)
            on = base::add_days(*on, setting_.terms.tax_back_days.value_or(usual_tax_back_days));
        Flow& flow = add(line, FlowKind::tax_back, std::nullopt, 0, on);
        flow.amount = line.home_back.likely;
    }

    Flow& add(const CostedLine& line,
              FlowKind kind,
              std::optional<PaidAt> at,
              std::int64_t amount,
              std::optional<Date> on) {
        Flow flow;
        flow.kind = kind;
        flow.line = line.said.line;
        flow.name = name_of(line.said);
        flow.at = at;
        flow.amount = -amount;
        flow.on = on;
        flow.fact = line.fact;
        return flows_.emplace_back(std::move(flow));
    }

    void take_core(const CoreWorked& core) {
        if (!core.known) {
            for (const base::Problem& one : core.notes)
                if (one.severity == base::Severity::refused) faults_.push_back(one);
            return;
        }
        Flow flow;
        flow.kind = core.standing == CoreStanding::settled ? FlowKind::paid : FlowKind::credit;
        flow.line = core.said.core;
        flow.name = core_name(core.said);
        flow.amount = core.credit.likely;
        flow.on = core.credit_on;
        flow.fact = core.fact;
        flows_.push_back(std::move(flow));
    }

    void take_payment(const timeline::PaymentState& payment) {
        if (!payment.said.amount) return;
        const auto amount = in_home(*payment.said.amount, setting_, MoneyRound::down, faults_);
        if (!amount) return;
        Flow flow;
        flow.kind = FlowKind::paid;
        flow.line = payment.said.line;
        flow.amount = payment.said.back ? *amount : -*amount;
        flow.on = payment.on;
        flow.fact = payment.fact;
        flow.name = base::text_arg(payment.said.payee);
        for (const Flow& one : flows_)
            if (!flow.line.empty() && one.line == flow.line) flow.name = one.name;
        lower(payment.said.back ? FlowKind::tax_back : FlowKind::share, flow);
        flows_.push_back(std::move(flow));
    }

    /// What was paid is no longer to pay: the earliest shares of its line first.
    void lower(FlowKind kind, const Flow& paid) {
        if (paid.line.empty()) return;
        std::int64_t left = paid.amount;
        bool is_known = false;
        for (Flow& flow : flows_) {
            if (flow.line != paid.line || flow.kind == FlowKind::paid) continue;
            is_known = true;
            if (left == 0) break;
            if ((flow.kind == FlowKind::tax_back) != (kind == FlowKind::tax_back)) continue;
            const std::int64_t part =
                left < 0 ? std::max(left, flow.amount) : std::min(left, flow.amount);
            flow.amount -= part;
            left -= part;
        }
        // More came back than tax: so much is to pay again.
        for (Flow& flow : flows_) {
            const bool is_share = flow.kind == FlowKind::share || flow.kind == FlowKind::rest;
            if (left <= 0 || flow.line != paid.line || !is_share) continue;
            flow.amount -= std::exchange(left, 0);
        }
        if (!is_known)
            complain(Trouble::payment_unplaced, {base::day_arg(*paid.on)});
        else if (left < 0)
            complain(Trouble::paid_too_much, {paid.name, base::money_arg({-left, setting_.home})});
    }

    const timeline::MoneyState& money_;
    const Setting& setting_;
    base::Problems& faults_;
    std::vector<Flow> flows_;
};

[[nodiscard]] CashMonth& month_of(Date day, CashCourse& out) {
    const Date first = base::add_days(day, 1 - base::civil(day).day);
    if (out.months.empty()) out.months.push_back({first, 0, 0, out.last, out.last});
    while (out.months.back().first < first) {
        const Date next = base::add_months(out.months.back().first, 1, base::CalendarRule::exact);
        if (next <= out.months.back().first) break;  // the end of the calendar
        out.months.push_back({next, 0, 0, out.last, out.last});
    }
    return out.months.back();
}

/// Through the months, from what is in hand today; what was paid is in that already.
void run(Date today, std::int64_t in_hand, CashCourse& out) {
    out.last = in_hand;
    out.lowest = in_hand;
    (void)month_of(today, out);
    for (const Flow& flow : out.flows) {
        if (!flow.on) {
            out.undated += flow.amount;
            continue;
        }
        if (flow.kind == FlowKind::paid) continue;
        CashMonth& month = month_of(*flow.on, out);
        (flow.amount < 0 ? month.goes : month.comes) +=
            flow.amount < 0 ? -flow.amount : flow.amount;
        out.last += flow.amount;
        month.left = out.last;
        month.lowest = std::min(month.lowest, out.last);
        if (out.last >= out.lowest) continue;
        out.lowest = out.last;
        out.lowest_on = flow.on;
    }
}

}  // namespace

CashCourse cash_course(const Estimate& estimate,
                       const timeline::MoneyState& money,
                       const Setting& setting,
                       std::int64_t in_hand,
                       base::Problems& faults) {
    CashCourse out;
    Gathering gathering{money, setting, faults};
    gathering.take(estimate);
    out.flows = gathering.done();
    run(setting.today, in_hand, out);
    return out;
}

}  // namespace twoclocks::budget
