#include "engine/views/money_estimate.hpp"

#include <algorithm>

#include "engine/budget/from_records.hpp"

namespace twoclocks::views {
namespace {

/// The day on which a task was done, or the last on which it is to be, no sooner than today.
[[nodiscard]] std::optional<base::Date> done_on(const Lived& lived,
                                                plan::Role role,
                                                const std::optional<std::int32_t>& by) {
    const plan::Task* task = lived.with(role);
    if (task == nullptr) return std::nullopt;
    if (task->progress.finished) return lived.day(plan::day_at(*task->progress.finished) - 1);
    if (!by) return std::nullopt;
    return lived.day(std::max(*by, 0));
}

[[nodiscard]] std::int32_t day_of(const plan::DayRange& range, budget::Pace pace) {
    switch (pace) {
        case budget::Pace::early:
            return range.early;
        case budget::Pace::likely:
            return range.middle;
        case budget::Pace::late:
            return range.late;
    }
    return range.middle;
}

}  // namespace

budget::PayDays pay_days(const Living& living, budget::Pace pace) {
    budget::PayDays out;
    if (!living.lived) return out;
    const Lived& lived = *living.lived;
    const auto at_pace = [&](const plan::DayRange& range) {
        return lived.day(day_of(range, pace));
    };
    out.ordered = done_on(lived, plan::Role::order, lived.outcome.order_by);
    out.booked = done_on(lived, plan::Role::book, lived.outcome.book_by);
    // The days of the kit are told as if all that comes before it began today: it comes so much
    // later as the order is placed later than it then would be.
    std::int32_t wait = 0;
    const std::int32_t order = plan::place_of(lived.network, plan::Role::order);
    if (order >= 0 && out.ordered) {
        const auto place = static_cast<std::size_t>(order);
        const plan::Progress& progress = lived.network.tasks[place].progress;
        if (!progress.begun && !progress.finished)
            wait = base::days_between(at_pace(lived.outcome.starts[place]), *out.ordered);
    }
    if (lived.with(plan::Role::kit_here) != nullptr)
        out.shipped = base::add_days(at_pace(lived.outcome.kit_here), std::max(wait, 0));
    out.stopped = lived.day(lived.outcome.stop_on);
    out.back = pace == budget::Pace::likely ? lived.day(lived.outcome.back_on)
                                            : at_pace(lived.outcome.back);
    const std::int32_t sent = plan::place_of(lived.network, plan::Role::send_cores);
    if (sent >= 0) out.off = at_pace(lived.outcome.starts[static_cast<std::size_t>(sent)]);
    if (lived.with(plan::Role::credit) != nullptr) out.cores = at_pace(lived.outcome.credit);
    return out;
}

budget::EstimateFor asked_of(const Assessed& aircraft) {
    const timeline::PlanState& records = aircraft.state.campaign;
    const facts::Route* route = plan::chosen_route(records);
    return {
        route == nullptr ? std::string{} : route->route, records.terms.work, aircraft.state.serial};
}

budget::PayDays paid_on(base::Date day) {
    return {day, day, day, day, day, day, day};
}

budget::Estimate estimate_of(const Assessed& aircraft,
                             const budget::EstimateFor& asked,
                             const budget::PayDays& days,
                             std::int32_t draws) {
    return budget::estimate(budget::lines_of(aircraft.state, asked.route),
                            asked,
                            budget::setting_of(aircraft.state, aircraft.today, days),
                            draws);
}

bool has_sum(const budget::Estimate& estimate) {
    return std::any_of(estimate.lines.begin(), estimate.lines.end(), [](const auto& line) {
        return line.counts && line.known;
    });
}

}  // namespace twoclocks::views
