// What cash that moves is worth today, and what a week later costs.
#include "engine/budget/cash.hpp"
#include "engine/budget/growth.hpp"
#include "engine/plan/moment.hpp"

namespace twoclocks::budget {
namespace {

using base::Date;

constexpr std::int32_t week = 7;

/// What is not paid yet of a line.
[[nodiscard]] std::int64_t to_pay(const std::string& line, const CashCourse& course) {
    std::int64_t out = 0;
    for (const Flow& flow : course.flows)
        if (flow.line == line && flow.amount < 0 && flow.kind != FlowKind::paid) out -= flow.amount;
    return out;
}

/// The same a week later: days that lie behind stay where they are.
[[nodiscard]] Setting week_later(const Setting& setting) {
    Setting out = setting;
    PayDays& days = out.days;
    for (std::optional<Date>* const day : {&days.ordered,
                                           &days.booked,
                                           &days.shipped,
                                           &days.stopped,
                                           &days.back,
                                           &days.off,
                                           &days.cores})
        if (*day && **day >= setting.today) *day = base::add_days(**day, week);
    out.today = base::add_days(setting.today, week);
    return out;
}

/// How much more a line comes to, as far as it is not paid.
[[nodiscard]] double more_of(const CostedLine& line, std::int64_t left, const Setting& later) {
    const CostedLine then = worked_out({line.said, line.on, line.fact}, later);
    const std::int64_t whole = line.home_gross.likely;
    if (!then.known || whole == 0) return 0;
    return static_cast<double>(then.home_gross.likely - whole) * static_cast<double>(left) /
           static_cast<double>(whole);
}

}  // namespace

std::optional<std::int64_t> present_cost(const CashCourse& course,
                                         Date today,
                                         std::int32_t interest_permille) {
    double sum = 0;
    for (const Flow& flow : course.flows) {
        if (flow.kind == FlowKind::paid) continue;
        if (!flow.on) return std::nullopt;
        sum -= static_cast<double>(flow.amount) *
               growth(interest_permille, -base::days_between(today, *flow.on));
    }
    return plan::whole_from(sum);
}

WeekCost week_cost(const Estimate& estimate,
                   const CashCourse& course,
                   const facts::PlanCosts& costs,
                   const Setting& setting) {
    WeekCost out;
    if (costs.lost_day && costs.lost_day->currency == setting.home) {
        const bool is_alike = costs.saved_day && costs.saved_day->currency == setting.home;
        const std::int64_t saved = is_alike ? costs.saved_day->minor_units : 0;
        out.standing = week * (costs.lost_day->minor_units - saved);
    }
    const Setting later = week_later(setting);
    double rise = 0;
    for (const CostedLine& line : estimate.lines)
        if (line.counts && line.known) rise += more_of(line, to_pay(line.said.line, course), later);
    out.rise = plan::whole_from(rise);
    if (!costs.interest_permille) return out;
    double owed = 0;
    for (const Flow& flow : course.flows)
        if (flow.kind != FlowKind::paid) owed -= static_cast<double>(flow.amount);
    const double kept = owed * (growth(*costs.interest_permille, week) - 1);
    out.interest = plan::whole_from(-kept);
    return out;
}

}  // namespace twoclocks::budget
