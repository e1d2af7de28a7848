#include "engine/views/money_view.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/budget/from_records.hpp"
#include "engine/views/both_paths.hpp"
#include "engine/views/money_rows.hpp"
#include "engine/views/record_money.hpp"
#include "engine/views/record_plan.hpp"
#include "engine/views/routes_view.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Money;
using base::Word;
using budget::CostedLine;
using budget::Estimate;
using budget::Points;

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

/// The days on which things are agreed on and paid, as the plan has them.
[[nodiscard]] budget::PayDays pay_days(const Living& living) {
    budget::PayDays out;
    if (!living.lived) return out;
    const Lived& lived = *living.lived;
    out.ordered = done_on(lived, plan::Role::order, lived.outcome.order_by);
    out.booked = done_on(lived, plan::Role::book, lived.outcome.book_by);
    // The days of the kit are told as if it were ordered today: it comes so much later as the order
    // is placed later.
    const plan::Task* order = lived.with(plan::Role::order);
    const bool is_to_order = order != nullptr && !order->progress.finished && out.ordered;
    const std::int32_t wait =
        is_to_order ? out.ordered->day_number - lived.aircraft.today.day_number : 0;
    if (lived.with(plan::Role::kit_here) != nullptr)
        out.shipped = lived.day(lived.outcome.kit_here.middle + wait);
    out.stopped = lived.day(lived.outcome.stop_on);
    out.back = lived.day(lived.outcome.back_on);
    return out;
}

[[nodiscard]] Estimate estimate_of(const Assessed& aircraft,
                                   const Living& living,
                                   const std::string& route,
                                   facts::PlanWork work,
                                   std::int32_t draws) {
    return budget::estimate(budget::lines_of(aircraft.state, route),
                            {route, work, aircraft.state.serial},
                            budget::setting_of(aircraft.state, aircraft.today, pay_days(living)),
                            draws);
}

/// The word of each figure at the top, and the line of its why that a line of the estimate makes.
struct Top {
    Word text;
    Word title;
    Word line;
    Word sum;
};

/// A figure of the top: what each line adds, and their sum. Each is rounded up by itself, and the
/// sum is that of all of them before they were.
template <class Take>
[[nodiscard]] Figure top_figure(const Estimate& estimate, const Top& top, Money whole, Take take) {
    Figure out;
    out.text = {top.text, {base::cost_arg(whole)}};
    out.why = {{top.title, {}}, out.text, {}};
    for (const CostedLine& line : estimate.lines) {
        if (!line.counts || !line.known) continue;
        const std::int64_t part = take(line);
        if (part == 0) continue;
        const std::vector<base::Arg> args{cost_name(line.said),
                                          base::money_arg({part, estimate.home})};
        if (line.said.line == budget::route_price_key ||
            line.said.line == budget::route_freight_key)
            add(out.why, top.line, args);
        else
            add(out.why, top.line, args, line.fact);
    }
    add_sum(out.why, top.sum, {base::money_arg(whole)});
    return out;
}

void add_top(const Estimate& estimate, MoneyView& view) {
    const auto money = [&](std::int64_t minor_units) { return Money{minor_units, estimate.home}; };
    view.gross = top_figure(
        estimate,
        {Word::money_gross, Word::why_money_gross, Word::why_money_line, Word::why_money_gross_sum},
        money(estimate.gross.likely),
        [](const CostedLine& line) { return line.home_gross.likely; });
    view.back = top_figure(estimate,
                           {Word::money_back,
                            Word::why_money_back,
                            Word::why_money_tax_back,
                            Word::why_money_back_sum},
                           money(estimate.back.likely),
                           [](const CostedLine& line) { return line.home_back.likely; });
    // What comes back is told exactly: rounded up it would be too much.
    view.back.text = {Word::money_back, {base::money_arg(money(estimate.back.likely))}};
    view.back.why.figure = view.back.text;
    view.net.text = {Word::money_net, {base::cost_arg(money(estimate.net.likely))}};
    view.net.why = {{Word::why_money_net, {}}, view.net.text, {}};
    add(view.net.why, Word::why_money_gross_sum, {base::money_arg(money(estimate.gross.likely))});
    add(view.net.why, Word::why_money_back_sum, {base::money_arg(money(estimate.back.likely))});
    add_sum(view.net.why, Word::why_money_net_sum, {base::money_arg(money(estimate.net.likely))});
    const bool any = std::any_of(estimate.lines.begin(),
                                 estimate.lines.end(),
                                 [](const CostedLine& line) { return line.counts && line.known; });
    if (!any)
        for (views::Figure* const figure : {&view.gross, &view.back, &view.net}) {
            figure->text.args = {base::word_arg(Word::not_known)};
            figure->why = {figure->why.title, figure->text, {}};
        }
    if (estimate.net.low == estimate.net.high) return;
    const auto cost = [&](std::int64_t minor_units) { return base::cost_arg(money(minor_units)); };
    view.range = {Word::money_shares,
                  {cost(estimate.net_shares.tenth),
                   cost(estimate.net_shares.ninth),
                   cost(estimate.net.low),
                   cost(estimate.net.high)}};
}

void add_currencies(const Estimate& estimate, MoneyView& view) {
    if (estimate.by_currency.size() < 2 &&
        (estimate.by_currency.empty() || estimate.by_currency.front().currency == estimate.home))
        return;
    for (const budget::CurrencySum& sum : estimate.by_currency)
        view.currencies.push_back({Word::money_in_currency,
                                   {base::text_arg(base::print_currency(sum.currency)),
                                    base::money_arg({sum.gross.likely, sum.currency}),
                                    base::money_arg({sum.back.likely, sum.currency})}});
    std::vector<std::string> told;
    for (const CostedLine& line : estimate.lines) {
        if (!line.counts || !line.rate) continue;
        const budget::Rate& rate = *line.rate;
        const std::string from = base::print_currency(rate.from);
        if (std::find(told.begin(), told.end(), from) != told.end()) continue;
        told.push_back(from);
        view.rates.push_back({rate.said_by.empty() ? Word::money_rate : Word::money_rate_said,
                              {base::text_arg(from),
                               base::decimal_arg(rate.figure.digits, rate.figure.decimals),
                               base::text_arg(base::print_currency(rate.to)),
                               base::day_arg(rate.on),
                               base::text_arg(rate.said_by)}});
    }
}

/// What was chosen adds beside money.
void add_effects(const Estimate& estimate, MoneyView& view) {
    if (estimate.added_hours.seconds > 0)
        view.effects.push_back(
            {Word::money_adds_hours, {base::hours_used_arg(estimate.added_hours)}});
    if (estimate.added_days > 0)
        view.effects.push_back({Word::money_adds_days, {base::whole_arg(estimate.added_days)}});
    constexpr std::int32_t grams_decimals = 3;
    if (estimate.added_grams > 0)
        view.effects.push_back(
            {Word::money_adds_mass, {base::decimal_arg(estimate.added_grams, grams_decimals)}});
    if (estimate.added_grams < 0)
        view.effects.push_back(
            {Word::money_saves_mass, {base::decimal_arg(-estimate.added_grams, grams_decimals)}});
}

void add_changes(const Assessed& aircraft, MoneyView& view) {
    for (const budget::ListChange& change : budget::list_changes(aircraft.state.money))
        view.changes.push_back({Word::money_list_changes,
                                {cost_name(change.line),
                                 base::money_arg(change.before),
                                 base::money_arg(change.now),
                                 base::text_arg(change.list),
                                 base::day_arg(change.on)}});
}

[[nodiscard]] Message hour_cost(Money net, std::int64_t whole_hours) {
    if (whole_hours <= 0) return {Word::blank, {}};
    return {Word::money_an_hour,
            {base::money_arg(base::divided(net, whole_hours, base::MoneyRound::up)),
             base::whole_arg(whole_hours)}};
}

[[nodiscard]] MoneyPath path_of(const Estimate& estimate, Message name, std::int64_t hours) {
    MoneyPath out;
    out.name = std::move(name);
    const Money net{estimate.net.likely, estimate.home};
    out.net = {Word::record_of, {base::cost_arg(net)}};
    out.hour = hour_cost(net, hours);
    if (estimate.missing > 0)
        out.lines.push_back({Word::money_not_whole, {base::whole_arg(estimate.missing)}});
    return out;
}

/// The hours that an overhaul buys: those of its limit.
[[nodiscard]] std::int64_t hours_of_limit(const Assessed& aircraft) {
    const limits::ItemDue* item = overhaul_of(aircraft);
    const limits::ClockDue* hours = item == nullptr ? nullptr : plan::hours_of(*item);
    return hours == nullptr ? 0 : hours->limit_hours.seconds / base::hours(1).seconds;
}

/// Each route there is, and calendar work beside the overhaul where both can be done.
void add_paths(const Assessed& aircraft,
               const Living& planned,
               const std::vector<const Living*>& routes,
               MoneyView& view) {
    const timeline::PlanState& records = aircraft.state.campaign;
    const std::int64_t limit = hours_of_limit(aircraft);
    for (std::size_t place = 0; place < records.routes.size(); ++place) {
        const facts::Route& route = records.routes[place].said;
        if (route.accepted == facts::Acceptance::refused) continue;
        view.paths.push_back(path_of(
            estimate_of(aircraft, *routes[place], route.route, facts::PlanWork::overhaul, 0),
            {Word::record_of, {route_name(route)}},
            limit));
    }
    const BothPathsView both = both_paths(aircraft);
    constexpr std::size_t two = 2;
    if (both.paths.size() != two) return;
    const std::array works{facts::PlanWork::calendar_work, facts::PlanWork::overhaul};
    const facts::Route* chosen = plan::chosen_route(records);
    const std::string route = chosen == nullptr ? std::string{} : chosen->route;
    for (std::size_t place = 0; place < two; ++place) {
        const BothPathsView::Path& path = both.paths[place];
        MoneyPath row = path_of(estimate_of(aircraft, planned, route, works[place], 0),
                                path.title,
                                path.gained.seconds / base::hours(1).seconds);
        row.lines.push_back(path.next_stop);
        if (path.after.word != Word::blank) row.lines.push_back(path.after);
        view.paths.push_back(std::move(row));
    }
}

}  // namespace

MoneyView make_money_view(const Assessed& aircraft) {
    const std::vector<Living> lives = live_routes(aircraft);
    std::vector<const Living*> routes;
    for (const Living& one : lives)
        routes.push_back(&one);
    return make_money_view(
        aircraft, live(aircraft, aircraft.state.campaign, plan::campaign_count), routes);
}

MoneyView make_money_view(const Assessed& aircraft,
                          const Living& living,
                          const std::vector<const Living*>& routes) {
    MoneyView view;
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    const timeline::PlanState& records = aircraft.state.campaign;
    const facts::Route* route = plan::chosen_route(records);
    view.past_lines = static_cast<std::int32_t>(aircraft.state.money.past.size());
    if (route != nullptr) view.route = {Word::money_by_route, {route_name(*route)}};
    const Estimate estimate = estimate_of(aircraft,
                                          living,
                                          route == nullptr ? std::string{} : route->route,
                                          records.terms.work,
                                          budget::estimate_draws);
    if (estimate.lines.empty()) view.missing = {Word::money_nothing, {}};
    add_top(estimate, view);
    if (estimate.missing > 0)
        view.not_whole = {Word::money_not_whole, {base::whole_arg(estimate.missing)}};
    view.faults = estimate.faults;
    view.rows = money_rows(estimate);
    view.movers = mover_rows(estimate);
    add_currencies(estimate, view);
    add_effects(estimate, view);
    add_changes(aircraft, view);
    add_paths(aircraft, living, routes, view);
    view.notes.push_back({Word::money_estimate, {base::day_arg(aircraft.today)}});
    view.notes.push_back({Word::money_rounding,
                          {base::word_arg(tax_round_word(aircraft.state.money.terms.tax_round))}});
    view.notes.push_back({living.lived ? Word::money_days : Word::money_no_days, {}});
    view.notes.push_back({Word::money_advice, {}});
    return view;
}

std::vector<Why> whys_of(const MoneyView& view) {
    return {view.gross.why, view.back.why, view.net.why};
}

}  // namespace twoclocks::views
