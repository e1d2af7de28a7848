#include "engine/views/plan_induction.hpp"

#include "engine/base/permille.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using plan::InductionDay;
using plan::Worth;

constexpr std::int32_t four_weeks = 28;

void explain(const Lived& lived, const Worth& worth, Why& why) {
    add(why,
        Word::why_induct_standing,
        {base::money_arg(worth.standing()),
         base::money_arg(worth.lost),
         base::money_arg(worth.saved)});
    if (worth.hour && worth.hours_of_limit > 0)
        add(why,
            Word::why_induct_hour_reckoned,
            {base::money_arg(*worth.hour),
             base::money_arg(*worth.sum),
             base::whole_arg(worth.hours_of_limit)});
    else if (worth.hour)
        add(why, Word::why_induct_hour, {base::money_arg(*worth.hour)});
    if (worth.month && worth.months_of_limit > 0)
        add(why,
            Word::why_induct_month_reckoned,
            {base::money_arg(*worth.month),
             base::money_arg(*worth.sum),
             base::whole_arg(worth.months_of_limit)});
    else if (worth.month)
        add(why, Word::why_induct_month, {base::money_arg(*worth.month)});
    if (worth.sum && worth.interest > 0)
        add(why,
            Word::why_induct_interest,
            {base::decimal_arg(worth.interest, 1), base::money_arg(*worth.sum)});
    add(why,
        Word::why_induct_ready,
        {lived.said(std::max(lived.outcome.ready_on, 0)),
         base::whole_arg(lived.terms.confidence_percent)});
    add(why, Word::why_induct_ways, {base::whole_arg(plan::campaign_count)});
}

[[nodiscard]] ChartView chart_of(const Lived& lived,
                                 const Worth& worth,
                                 const plan::Induction& found) {
    constexpr std::size_t bars_shown = 24;
    const auto& spread = found.spread;
    const auto dearest =
        std::max_element(spread.begin(), spread.end(), [](const auto& one, const auto& other) {
            return one.cost() < other.cost();
        });
    const std::int64_t most = std::max<std::int64_t>(dearest->cost(), 1);
    const auto cost = [&](const InductionDay& day) {
        return base::cost_arg(worth.money(day.cost()));
    };
    ChartView chart{
        {Word::plan_induct_chart, {}}, {Word::record_of, {cost(*dearest)}}, Edge::calendar, {}, {}};
    for (std::size_t bar = 0; bar < bars_shown; ++bar) {
        const InductionDay& day = spread[bar * (spread.size() - 1) / (bars_shown - 1)];
        const std::size_t next = (bar + 1) * (spread.size() - 1) / (bars_shown - 1);
        const bool is_last = bar + 1 == bars_shown;
        const bool is_best =
            day.day <= found.best.day && (is_last || found.best.day < spread[next].day);
        const bool has_label = bar % (bars_shown / 3) == 3;
        const std::int64_t cost_shown = std::max<std::int64_t>(day.cost(), 0);
        const auto height = most >= base::whole_permille
                                ? cost_shown / (most / base::whole_permille)
                                : cost_shown * base::whole_permille / most;
        chart.bars.push_back(
            {has_label ? Message{Word::record_of, {base::month_arg(lived.day(day.day))}}
                       : Message{Word::blank, {}},
             static_cast<std::int32_t>(height),
             !is_best});
    }
    chart.spoken = {Word::plan_induct_chart_spoken,
                    {cost(found.best),
                     lived.said(found.best.day),
                     cost(spread.front()),
                     lived.said(spread.front().day),
                     cost(spread.back()),
                     lived.said(spread.back().day)}};
    return chart;
}

}  // namespace

InductionView induction_view(const Lived& lived, const facts::PlanCosts& said) {
    InductionView out;
    if (lived.has_stopped()) return out;  // it is in: nothing is left to choose
    const auto worth = plan::worth_of(said, lived.aircraft.state.campaign, lived.item);
    if (!worth) {
        out.missing = {Word::plan_induct_missing, {}};
        return out;
    }
    if (!plan::weighs_life(*worth, lived.item)) {
        out.missing = {Word::plan_induct_no_life, {}};
        return out;
    }
    if (worth->standing().minor_units <= 0) {
        out.missing = {Word::plan_induct_no_standing, {}};
        return out;
    }
    const plan::InductionCosts costs = plan::costs_of(*worth);
    const plan::LifeLeft left = plan::left_of(lived.item, lived.run_out, lived.terms);
    const plan::Induction found = plan::cheapest_induction(lived.draws, costs, left);
    const auto cost = [&](std::int64_t minor_units) {
        return base::cost_arg(worth->money(minor_units));
    };
    // A day before all is ready is the day on which it is.
    const bool is_now = found.best.day == 0;
    const std::int32_t ready = std::max(lived.outcome.ready_on, 0);
    out.best.text = {is_now ? Word::plan_induct_now : Word::plan_induct_best,
                     {lived.said(is_now ? ready : found.best.day)}};
    out.best.why = {{Word::why_induct, {}}, out.best.text, {}};
    explain(lived, *worth, out.best.why);
    // The whole is the sum of its parts as they are shown, each rounded up.
    const base::Arg standing = cost(found.best.standing);
    const base::Arg unused = cost(found.best.unused);
    const base::Arg early = cost(found.best.early);
    base::Arg whole = standing;
    whole.first += unused.first + early.first;
    out.lines.push_back({Word::plan_induct_cost, {whole, standing, unused, early}});
    const auto more = [&](std::int32_t day) {
        return plan::induction_on(lived.draws, costs, left, day).cost() - found.best.cost();
    };
    if (found.best.day >= four_weeks)
        out.lines.push_back({Word::plan_induct_sooner, {cost(more(found.best.day - four_weeks))}});
    out.lines.push_back({Word::plan_induct_later, {cost(more(found.best.day + four_weeks))}});
    out.chart = chart_of(lived, *worth, found);
    return out;
}

}  // namespace twoclocks::views
