#include "engine/views/routes_view.hpp"

#include "engine/views/plan_lived.hpp"
#include "engine/views/record_plan.hpp"
#include "engine/views/route_cost.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using facts::Acceptance;
using facts::Route;
using plan::Role;

/// One route, worked out.
struct Worked {
    const Route& route;
    base::Date on;
    const Living& living;
    std::optional<RouteCost> cost;

    [[nodiscard]] bool is_open() const {
        return route.accepted != Acceptance::refused && living.lived.has_value();
    }
};

[[nodiscard]] Message by_itself(base::Arg arg) {
    return {Word::record_of, {std::move(arg)}};
}

[[nodiscard]] Message mark_of(const Worked& worked, bool is_chosen) {
    if (!worked.is_open()) return {Word::route_ruled_out, {}};
    if (is_chosen) return {Word::route_is_chosen, {}};
    if (worked.route.accepted == Acceptance::unknown) return {Word::route_to_ask, {}};
    return {Word::blank, {}};
}

void add_days(const Lived& lived, RouteRow& row) {
    const plan::Outcome& outcome = lived.outcome;
    row.days = by_itself(base::whole_arg(outcome.out_days));
    row.late = {Word::route_of_hundred, {hundredths_up(outcome.waiting_permille)}};
    const plan::Task* order = lived.with(Role::order);
    if (outcome.order_by && order != nullptr && !order->progress.finished)
        row.lines.push_back(
            {*outcome.order_by < 0 ? Word::route_order_late_line : Word::route_order_line,
             {lived.said(*outcome.order_by)}});
    row.lines.push_back({Word::route_back_line, {lived.said(outcome.back_on)}});
}

void add_way(const Route& route, RouteRow& row) {
    const bool is_unknown = route.carriage == facts::Carriage::flown && !route.ferry;
    row.hours = is_unknown ? Message{Word::not_known, {}}
                           : by_itself(base::hours_used_arg(plan::hours_on_the_way(route)));
    if (route.carriage != facts::Carriage::on_permit) return;
    row.lines.push_back(route.ferry
                            ? Message{Word::route_on_permit, {base::hours_used_arg(*route.ferry)}}
                            : Message{Word::route_permit_unknown, {}});
}

void add_tax(const Route& route, const RouteCost& cost, RouteRow& row) {
    if (route.tax == facts::TaxCase::none) {
        row.lines.push_back({Word::route_tax_none_line, {}});
        return;
    }
    if (route.tax == facts::TaxCase::reverse_charge) {
        row.lines.push_back({Word::money_reverse_charge, {}});
        return;
    }
    if (!cost.tax_known && !route.tax_permille) {
        row.lines.push_back({Word::route_tax_unknown_line, {}});
        return;
    }
    const Word word = route.tax == facts::TaxCase::recoverable ? Word::route_tax_back_line
                      : route.tax == facts::TaxCase::borne     ? Word::route_tax_borne_line
                                                               : Word::route_tax_maybe_line;
    row.lines.push_back(
        {word, {base::decimal_arg(*route.tax_permille, 1), base::cost_arg(cost.tax)}});
}

/// Calendar work keeps the hours: its price buys none.
void add_cost(const Worked& worked, const limits::ItemDue* item, bool keeps_hours, RouteRow& row) {
    const Route& route = worked.route;
    if (!worked.cost) {
        row.cost = {Word::not_known, {}};
        row.lines.push_back({Word::route_price_unknown, {}});
        return;
    }
    const RouteCost& cost = *worked.cost;
    row.cost = by_itself(base::cost_arg(cost.borne));
    row.lines.push_back(
        {Word::route_price_line,
         {base::money_arg(cost.price), base::word_arg(price_basis_word(route.basis))}});
    if (route.freight)
        row.lines.push_back(
            {cost.freight_apart ? Word::route_freight_other : Word::route_freight_line,
             {base::money_arg(*route.freight)}});
    if (!route.freight && cost.needs_freight)
        row.lines.push_back({Word::route_freight_unknown, {}});
    if (!route.duty_permille && cost.needs_duty)
        row.lines.push_back({Word::route_duty_unknown, {}});
    if (route.duty_permille)
        row.lines.push_back(
            {Word::route_duty_line,
             {base::decimal_arg(*route.duty_permille, 1), base::cost_arg(cost.duty)}});
    add_tax(route, cost, row);
    const limits::ClockDue* hours =
        item == nullptr || keeps_hours ? nullptr : plan::hours_of(*item);
    const std::int64_t whole =
        hours == nullptr ? 0 : hours->limit_hours.seconds / base::hours(1).seconds;
    if (whole > 0)
        row.lines.push_back(
            {Word::route_hour_cost,
             {base::money_arg(base::divided(cost.borne, whole, base::MoneyRound::up)),
              base::whole_arg(whole)}});
    if (route.tax == facts::TaxCase::recoverable)
        row.lines.push_back(
            {Word::route_pay_first, {base::cost_arg(cost.pay_first), base::cost_arg(cost.tax)}});
}

void add_warranty(const Route& route, RouteRow& row) {
    const Word from = route.warranty_from == facts::WarrantyFrom::unknown
                          ? Word::route_from_unknown
                          : warranty_from_word(route.warranty_from);
    const base::Arg runs = base::word_arg(from);
    const auto& months = route.warranty_months;
    const auto& hours = route.warranty_hours;
    if (months && hours)
        row.lines.push_back({Word::route_warranty_both,
                             {base::whole_arg(*months), base::hours_left_arg(*hours), runs}});
    else if (months)
        row.lines.push_back({Word::route_warranty_months, {base::whole_arg(*months), runs}});
    else if (hours)
        row.lines.push_back({Word::route_warranty_hours, {base::hours_left_arg(*hours), runs}});
    else
        row.lines.push_back({Word::route_warranty_none, {}});
}

[[nodiscard]] RouteRow row_of(const Worked& worked, const Assessed& aircraft, bool is_chosen) {
    const Route& route = worked.route;
    RouteRow row;
    row.key = route.route;
    row.name = by_itself(route_name(route));
    row.who = {
        Word::route_price_line,
        {base::word_arg(route_by_word(route.by)), base::word_arg(carriage_word(route.carriage))}};
    row.chosen = is_chosen;
    row.ruled_out = !worked.is_open();
    row.mark = mark_of(worked, is_chosen);
    if (is_chosen && row.ruled_out) row.lines.push_back({Word::route_is_chosen, {}});
    row.lines.push_back({route_gate_word(route.accepted), {}});
    if (worked.living.lived)
        add_days(*worked.living.lived, row);
    else
        row.lines.push_back(worked.living.missing);
    add_way(route, row);
    const bool keeps_hours = aircraft.state.campaign.terms.work == facts::PlanWork::calendar_work;
    add_cost(worked, overhaul_of(aircraft), keeps_hours, row);
    if (route.price_until)
        row.lines.push_back(
            {*route.price_until < aircraft.today ? Word::route_lapsed_line : Word::route_until_line,
             {base::day_arg(*route.price_until)}});
    add_warranty(route, row);
    const base::Arg on = base::day_arg(worked.on);
    row.lines.push_back(route.said_by.empty()
                            ? Message{Word::route_recorded_line, {on}}
                            : Message{Word::route_said_line, {base::text_arg(route.said_by), on}});
    return row;
}

/// Whether all open routes that have a price have it in one currency.
[[nodiscard]] bool one_currency(const std::vector<Worked>& all) {
    std::optional<base::Currency> first;
    for (const Worked& worked : all) {
        if (!worked.is_open() || !worked.cost) continue;
        if (first && *first != worked.cost->borne.currency) return false;
        first = worked.cost->borne.currency;
    }
    return true;
}

/// The least of what the open routes have; nothing with fewer than two to compare.
template <class Take>
[[nodiscard]] std::optional<std::int64_t> least_of(const std::vector<Worked>& all, Take take) {
    std::optional<std::int64_t> out;
    std::int32_t count = 0;
    for (const Worked& worked : all) {
        if (!worked.is_open()) continue;
        const std::optional<std::int64_t> one = take(worked);
        if (!one) continue;
        ++count;
        out = std::min(out.value_or(*one), *one);
    }
    return count > 1 ? out : std::nullopt;
}

void add_praise(const std::vector<Worked>& all, RoutesView& view) {
    const auto days = [](const Worked& worked) {
        return std::optional<std::int64_t>{worked.living.lived->outcome.out_days};
    };
    const auto cost = [](const Worked& worked) -> std::optional<std::int64_t> {
        // What nobody knows may turn the order round.
        if (!worked.cost || !worked.cost->is_whole()) return std::nullopt;
        return worked.cost->borne.minor_units;
    };
    const auto shortest = least_of(all, days);
    const auto cheapest = one_currency(all) ? least_of(all, cost) : std::nullopt;
    for (std::size_t place = 0; place < all.size(); ++place) {
        if (!all[place].is_open()) continue;
        RouteRow& row = view.rows[place];
        if (shortest && days(all[place]) == shortest)
            row.praise.push_back({Word::route_shortest, {}});
        if (cheapest && cost(all[place]) == cheapest)
            row.praise.push_back({Word::route_cheapest, {}});
    }
}

}  // namespace

std::vector<Living> live_routes(const Assessed& aircraft) {
    const timeline::PlanState& records = aircraft.state.campaign;
    std::vector<Living> out;
    for (std::size_t place = 0; place < records.routes.size(); ++place)
        out.push_back(live(
            aircraft, plan::choosing(records, static_cast<std::int32_t>(place)), ways_a_route));
    return out;
}

RoutesView make_routes_view(const Assessed& aircraft) {
    const std::vector<Living> lives = live_routes(aircraft);
    std::vector<const Living*> all;
    for (const Living& one : lives)
        all.push_back(&one);
    return make_routes_view(aircraft, all);
}

RoutesView make_routes_view(const Assessed& aircraft, const std::vector<const Living*>& lives) {
    RoutesView view;
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    const timeline::PlanState& records = aircraft.state.campaign;
    if (records.routes.empty()) {
        view.missing = {Word::routes_none, {}};
        return view;
    }
    std::vector<Worked> all;
    for (std::size_t place = 0; place < records.routes.size(); ++place) {
        const auto here = static_cast<std::int32_t>(place);
        const timeline::RouteState& one = records.routes[place];
        all.push_back({one.said, one.on, *lives[place], cost_of(one.said)});
        view.rows.push_back(row_of(all.back(), aircraft, records.chosen_route == here));
    }
    add_praise(all, view);
    view.notes.push_back({Word::routes_intro, {base::whole_arg(ways_a_route)}});
    if (!one_currency(all)) view.notes.push_back({Word::routes_currencies, {}});
    return view;
}

}  // namespace twoclocks::views
