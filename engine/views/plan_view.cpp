#include "engine/views/plan_view.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/views/plan_chart.hpp"
#include "engine/views/plan_induction.hpp"
#include "engine/views/plan_rows.hpp"
#include "engine/views/plan_slip.hpp"
#include "engine/views/record_plan.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using plan::Outcome;
using plan::Role;
using plan::Stage;
using plan::Task;

void explain_limit(Why& why, const Lived& lived) {
    const auto& [known, early, likely, late, binds] = lived.projection;
    if (likely && late) {
        add(why,
            Word::why_plan_limit,
            {base::day_arg(*early), base::day_arg(*likely), base::day_arg(*late)});
    } else if (likely) {
        add(why, Word::why_plan_limit_open, {base::day_arg(*early), base::day_arg(*likely)});
    }
    if (lived.terms.margin_days > 0)
        add(why, Word::why_plan_margin, {base::whole_arg(lived.terms.margin_days)});
}

/// Each task on the way from one to the moment it must not keep waiting.
void explain_path(Why& why, const Lived& lived, Role from) {
    const std::int32_t first = plan::place_of(lived.network, from);
    if (first < 0) return;  // left out
    std::vector<bool> on_it(lived.network.tasks.size(), false);
    on_it[static_cast<std::size_t>(first)] = true;
    for (std::size_t place = 0; place < on_it.size(); ++place) {
        const Task& task = lived.network.tasks[place];
        if (task.stage != Stage::ahead) continue;
        for (const plan::Neighbour& link : lived.network.before[place])
            if (on_it[static_cast<std::size_t>(link.place)]) on_it[place] = true;
        if (!on_it[place]) continue;
        add(why,
            Word::why_plan_path,
            {task.name,
             base::whole_arg(task.days.low),
             base::whole_arg(task.days.high),
             base::whole_arg(task.days.likely),
             base::word_arg(task.kind == plan::DayKind::working ? Word::plan_task_working
                                                                : Word::plan_task_calendar)});
    }
}

void explain_ways(Why& why, const Lived& lived, Word rule) {
    add(why, Word::why_plan_ways, {base::whole_arg(plan::campaign_count)});
    add_sum(why, rule, {base::whole_arg(lived.terms.confidence_percent)});
}

[[nodiscard]] Figure figure(Message text) {
    return {text, {{Word::why_plan_date, {}}, text, {}}};
}

/// The last day for a task; when it was done, once it was; that it is begun in between.
[[nodiscard]] Figure last_day(const Lived& lived,
                              Role role,
                              const std::optional<std::int32_t>& day,
                              std::array<Word, 3> words) {
    const auto [by, late, done] = words;
    const Task* task = lived.with(role);
    if (task == nullptr)
        return figure({role == Role::order ? Word::plan_no_order : Word::blank, {}});
    if (task->progress.finished)
        return figure({done, {lived.said(plan::day_at(*task->progress.finished) - 1)}});
    if (task->progress.begun) return figure({Word::record_plan_begun, {task->name}});
    if (!day) return figure({Word::blank, {}});
    Figure out = figure({*day < 0 ? late : by, {lived.said(*day)}});
    explain_limit(out.why, lived);
    explain_path(out.why, lived, role);
    explain_ways(out.why, lived, Word::why_plan_order);
    return out;
}

/// Until when it can be flown, or when it last was.
[[nodiscard]] Figure stop_of(const Lived& lived) {
    const std::int32_t day = lived.outcome.stop_on;
    if (lived.has_stopped()) return figure({Word::plan_stopped, {lived.said(day)}});
    Figure out = figure({day < 0 ? Word::plan_stop_behind : Word::plan_stop_on, {lived.said(day)}});
    explain_limit(out.why, lived);
    explain_ways(out.why, lived, Word::why_plan_stop);
    return out;
}

void add_dates(const Lived& lived, PlanView& view) {
    const Outcome& outcome = lived.outcome;
    view.order = last_day(lived,
                          Role::order,
                          outcome.order_by,
                          {Word::plan_order_by, Word::plan_order_late, Word::plan_ordered});
    view.book = last_day(lived,
                         Role::book,
                         outcome.book_by,
                         {Word::plan_book_by, Word::plan_book_late, Word::plan_booked});
    view.order_late = outcome.order_by && *outcome.order_by < 0;
    view.book_late = outcome.book_by && *outcome.book_by < 0;
    view.stop = stop_of(lived);
    view.back = figure({Word::plan_back_on, {lived.said(outcome.back_on)}});
    explain_limit(view.back.why, lived);
    explain_path(view.back.why, lived, Role::order);
    explain_ways(view.back.why, lived, Word::why_plan_back);
    view.confidence = {Word::plan_at_confidence, {base::whole_arg(lived.terms.confidence_percent)}};
    if (!outcome.not_before || !outcome.order_by) return;
    const bool none = *outcome.not_before > *outcome.order_by;
    if (*outcome.not_before > 0)
        view.window = {none ? Word::plan_no_window : Word::plan_not_before,
                       {lived.said(*outcome.not_before)}};
}

/// The most hours a month that last until all is ready; nothing when hours do not stop it.
[[nodiscard]] std::optional<Message> just_lasts(const Lived& lived) {
    const std::int32_t days = lived.outcome.ready_on + lived.terms.margin_days;
    const bool calendar_first = lived.run_out.calendar && *lived.run_out.calendar <= days;
    if (calendar_first) return Message{Word::plan_calendar_wait, {}};
    for (const limits::ClockDue& clock : lived.item.clocks) {
        if (clock.clock != facts::Clock::hours || !clock.known || days <= 0) continue;
        // A month of a twelfth of 365 days, cut down.
        constexpr std::int64_t days_a_year = 365;
        constexpr std::int64_t months = 12;
        const std::int64_t left = std::max<std::int64_t>(clock.left.seconds, 0);
        return Message{Word::plan_fly_less,
                       {base::hours_left_arg({left * days_a_year / (months * days)})}};
    }
    return std::nullopt;
}

void add_today(const Lived& lived, PlanView& view) {
    const Outcome& outcome = lived.outcome;
    view.title = {lived.any_begun() ? Word::plan_going_on : Word::plan_if_today, {}};
    const Task* kit = lived.with(Role::kit_here);
    if (kit != nullptr && kit->progress.finished) {
        view.today.push_back(
            {Word::plan_kit_came, {lived.said(plan::day_at(*kit->progress.finished) - 1)}});
    } else if (kit != nullptr) {
        view.today.push_back(
            {Word::plan_kit_between,
             {lived.said(outcome.kit_here.early), lived.said(outcome.kit_here.late)}});
    }
    if (outcome.waiting_permille == 0) {
        view.today.push_back({Word::plan_no_wait, {}});
    } else {
        view.today.push_back({Word::plan_wait_chance, {hundredths_up(outcome.waiting_permille)}});
        view.today.push_back(
            {Word::plan_wait_days,
             {base::whole_arg(outcome.waiting_days), base::whole_arg(outcome.waiting_bad)}});
        if (const auto message = just_lasts(lived)) view.today.push_back(*message);
    }
    view.today.push_back({Word::plan_out_days, {base::whole_arg(outcome.out_days)}});
    if (lived.with(Role::credit) != nullptr)
        view.today.push_back({Word::plan_credit_between,
                              {lived.said(outcome.credit.early), lived.said(outcome.credit.late)}});
}

/// By which route it is planned, and what that takes before it gets there.
void add_route(const Lived& lived, PlanView& view) {
    const facts::Route* route = plan::chosen_route(lived.aircraft.state.campaign);
    if (route == nullptr) return;
    view.route.push_back({Word::plan_by_route, {route_name(*route)}});
    const base::FlightTime way = plan::hours_on_the_way(*route);
    if (way.seconds > 0) view.route.push_back({Word::plan_ferry_kept, {base::hours_used_arg(way)}});
    const std::int32_t days = plan::days_on_the_way(*route);
    if (days > 0) view.route.push_back({Word::plan_way_kept, {base::whole_arg(days)}});
    if (route->accepted != facts::Acceptance::accepted)
        view.route.push_back({route_gate_word(route->accepted), {}});
    if (route->price_until && *route->price_until < lived.aircraft.today)
        view.route.push_back({Word::route_lapsed_line, {base::day_arg(*route->price_until)}});
}

void add_sure(const Lived& lived, PlanView& view) {
    const Outcome& outcome = lived.outcome;
    view.chart = plan_chart(outcome, lived.aircraft.today);
    view.sure.push_back(
        {Word::plan_handbook,
         {lived.said(outcome.handbook_day), base::whole_arg(outcome.handbook_permille / 10)}});
    for (const base::Arg& loose : plan::loose_ends(lived.network))
        view.notes.push_back({Word::plan_loose, {loose}});
    view.notes.push_back({Word::plan_estimates, {base::day_arg(plan::default_tasks_made)}});
}

}  // namespace

PlanView make_plan_view(const Assessed& aircraft) {
    return make_plan_view(aircraft, live(aircraft, aircraft.state.campaign, plan::campaign_count));
}

PlanView make_plan_view(const Assessed& aircraft, const Living& living) {
    PlanView view;
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    view.missing = living.missing;
    view.faults = living.faults;
    if (!living.lived) return view;
    const Lived& lived = *living.lived;
    add_route(lived, view);
    add_dates(lived, view);
    add_slip(lived, view);
    add_today(lived, view);
    add_next(lived, view);
    add_rows(lived, view);
    add_sure(lived, view);
    view.induction = induction_view(lived, aircraft.state.campaign.costs);
    return view;
}

std::vector<Why> whys_of(const PlanView& view) {
    return {view.order.why, view.book.why, view.stop.why, view.back.why, view.induction.best.why};
}

}  // namespace twoclocks::views
