#include "engine/views/plan_slip.hpp"

namespace twoclocks::views {
namespace {

using base::Word;
using plan::Role;

/// The day a task was done, or the last for it.
[[nodiscard]] std::optional<base::Date> day_of(const Lived& lived,
                                               Role role,
                                               const std::optional<std::int32_t>& last) {
    const plan::Task* task = lived.with(role);
    if (task == nullptr) return std::nullopt;
    if (task->progress.finished) return lived.day(plan::day_at(*task->progress.finished) - 1);
    if (task->progress.begun) return lived.day(plan::day_at(*task->progress.begun));
    if (!last) return std::nullopt;
    return lived.day(*last);
}

}  // namespace

void add_slip(const Lived& lived, PlanView& view) {
    const plan::Outcome& outcome = lived.outcome;
    view.as_it_stands = {day_of(lived, Role::order, outcome.order_by),
                         day_of(lived, Role::book, outcome.book_by),
                         day_of(lived, Role::stop, outcome.stop_on),
                         day_of(lived, Role::release, outcome.back_on)};
    const auto& kept = lived.aircraft.state.campaign.kept;
    if (!kept) return;
    view.slip_title = {Word::plan_slip, {base::day_arg(kept->on)}};
    const auto line = [&](Word what,
                          const std::optional<base::Date>& then,
                          const std::optional<base::Date>& now) {
        if (!then || !now) return;
        const std::int32_t days = base::days_between(*then, *now);
        base::Message moved{Word::plan_as_kept, {}};
        if (days > 0) moved = {Word::plan_late_by, {base::whole_arg(days)}};
        if (days < 0) moved = {Word::plan_early_by, {base::whole_arg(-days)}};
        view.slip.push_back({{what, {}}, std::move(moved)});
    };
    const facts::PlanKept& now = view.as_it_stands;
    line(Word::slip_order, kept->said.order_on, now.order_on);
    line(Word::slip_book, kept->said.book_on, now.book_on);
    line(Word::slip_stop, kept->said.stop_on, now.stop_on);
    line(Word::slip_back, kept->said.back_on, now.back_on);
}

}  // namespace twoclocks::views
