#include "engine/views/money_view.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/budget/from_records.hpp"
#include "engine/views/cores_view.hpp"
#include "engine/views/money_estimate.hpp"
#include "engine/views/money_paths.hpp"
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

/// The word of each figure at the top, and the line of its why that a line of the estimate makes.
struct Top {
    Word text;
    Word title;
    Word line;
    Word sum;
};

/// A figure of the top: what each line adds, and their sum. Each is rounded up by itself, and the
/// sum is that of all of them before they were.
/// `rows`: those whose workings are told below their line; none, or one a line.
template <class Take>
[[nodiscard]] Figure top_figure(const Estimate& estimate,
                                const Top& top,
                                Money whole,
                                Take take,
                                const std::vector<MoneyRow>& rows = {}) {
    Figure out;
    out.text = {top.text, {base::cost_arg(whole)}};
    out.why = {{top.title, {}}, out.text, {}};
    for (std::size_t place = 0; place < estimate.lines.size(); ++place) {
        const CostedLine& line = estimate.lines[place];
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
        if (rows.empty()) continue;
        for (const Message& told : rows[place].workings)
            add(out.why, told.word, told.args);
    }
    add_sum(out.why, top.sum, {base::money_arg(whole)});
    return out;
}

/// What is counted on for each core, before the sum.
void add_credits(const Estimate& estimate, Why& why) {
    const WhyLine sum = why.lines.back();
    why.lines.pop_back();
    for (const budget::CoreWorked& core : estimate.cores)
        if (core.known) explain_core(why, core, estimate.home);
    why.lines.push_back(sum);
}

void add_top(const Estimate& estimate, MoneyView& view) {
    const auto money = [&](std::int64_t minor_units) { return Money{minor_units, estimate.home}; };
    view.gross = top_figure(
        estimate,
        {Word::money_gross, Word::why_money_gross, Word::why_money_line, Word::why_money_gross_sum},
        money(estimate.gross.likely),
        [](const CostedLine& line) { return line.home_gross.likely; },
        view.rows);
    view.back = top_figure(estimate,
                           {Word::money_back,
                            Word::why_money_back,
                            Word::why_money_tax_back,
                            Word::why_money_back_sum},
                           money(estimate.back.likely),
                           [](const CostedLine& line) { return line.home_back.likely; });
    add_credits(estimate, view.back.why);
    // What comes back is told exactly: rounded up it would be too much.
    view.back.text = {Word::money_back, {base::money_arg(money(estimate.back.likely))}};
    view.back.why.figure = view.back.text;
    view.net.text = {Word::money_net, {base::cost_arg(money(estimate.net.likely))}};
    view.net.why = {{Word::why_money_net, {}}, view.net.text, {}};
    add(view.net.why, Word::why_money_gross_sum, {base::money_arg(money(estimate.gross.likely))});
    add(view.net.why, Word::why_money_back_sum, {base::money_arg(money(estimate.back.likely))});
    add_sum(view.net.why, Word::why_money_net_sum, {base::money_arg(money(estimate.net.likely))});
    if (!has_sum(estimate))
        for (views::Figure* const figure : {&view.gross, &view.back, &view.net}) {
            figure->text.args = {base::word_arg(Word::not_known)};
            figure->why = {figure->why.title, figure->text, {}};
        }
    if (estimate.net.low == estimate.net.high) return;
    const auto cost = [&](std::int64_t minor_units) { return base::cost_arg(money(minor_units)); };
    view.range = {Word::money_shares,
                  {hundredths_up(estimate.net_over_permille),
                   cost(estimate.net_shares.half),
                   cost(estimate.net_shares.tenth),
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
        view.effects.push_back({Word::money_adds_mass,
                                {base::short_decimal_arg(estimate.added_grams, grams_decimals)}});
    if (estimate.added_grams < 0)
        view.effects.push_back({Word::money_saves_mass,
                                {base::short_decimal_arg(-estimate.added_grams, grams_decimals)}});
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
    const Estimate estimate =
        estimate_of(aircraft, asked_of(aircraft), pay_days(living), budget::estimate_draws);
    if (estimate.lines.empty()) view.missing = {Word::money_nothing, {}};
    view.rows = money_rows(estimate);
    add_top(estimate, view);
    if (estimate.missing > 0)
        view.not_whole = {Word::money_not_whole, {base::whole_arg(estimate.missing)}};
    view.faults = estimate.faults;
    view.movers = mover_rows(estimate);
    add_currencies(estimate, view);
    add_effects(estimate, view);
    add_changes(aircraft, view);
    view.paths = money_paths(aircraft, living, routes);
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
