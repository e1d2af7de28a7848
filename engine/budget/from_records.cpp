#include "engine/budget/from_records.hpp"

#include <algorithm>
#include <utility>

#include "engine/timeline/money.hpp"

namespace twoclocks::budget {
namespace {

using facts::CostGroup;
using facts::CostLine;
using timeline::CostLineState;

[[nodiscard]] base::Currency currency_of(const std::string& text) {
    const auto currency = base::parse_currency(text);
    return currency ? currency.value() : base::Currency{};
}

/// What the price and the freight of a route have in common.
[[nodiscard]] CostLine line_of(const facts::Route& route, const char* key, CostGroup group) {
    CostLine out;
    out.line = key;
    out.group = group;
    out.route = route.route;
    out.price_until = route.price_until;
    out.tax = route.tax;
    out.tax_permille = route.tax_permille;
    out.said_by = route.said_by;
    return out;
}

/// A route was asked for the work that the plan is of.
void add_route(const timeline::RouteState& route,
               facts::PlanWork work,
               std::vector<CostLineState>& out) {
    if (route.said.price) {
        CostLine line = line_of(route.said, route_price_key, CostGroup::whole_price);
        line.work = work == facts::PlanWork::overhaul ? facts::CostFor::overhaul
                                                      : facts::CostFor::calendar_work;
        line.price = route.said.price;
        line.duty_permille = route.said.duty_permille;
        out.push_back({std::move(line), route.on, route.fact});
    }
    if (route.said.freight) {
        CostLine line = line_of(route.said, route_freight_key, CostGroup::freight);
        line.price = route.said.freight;
        out.push_back({std::move(line), route.on, route.fact});
    }
}

/// The version of a list before its last one; null where there is none.
[[nodiscard]] const timeline::PriceListState* before_last(
    const std::string& list, const std::vector<timeline::PriceListState>& lists) {
    const timeline::PriceListState* last = nullptr;
    const timeline::PriceListState* before = nullptr;
    for (const timeline::PriceListState& one : lists) {
        if (one.list != list) continue;
        before = last;
        last = &one;
    }
    return before;
}

[[nodiscard]] base::Date last_day(const std::string& list,
                                  const std::vector<timeline::PriceListState>& lists) {
    base::Date out;
    for (const timeline::PriceListState& one : lists)
        if (one.list == list) out = one.on;
    return out;
}

}  // namespace

base::Currency home_of(const timeline::AircraftState& aircraft) {
    const timeline::MoneyState& money = aircraft.money;
    if (!money.terms.home.empty()) return currency_of(money.terms.home);
    for (const CostLineState& line : money.lines)
        if (line.said.price) return line.said.price->currency;
    for (const timeline::RouteState& route : aircraft.campaign.routes)
        if (route.said.price) return route.said.price->currency;
    for (const CostLineState& line : money.past)
        if (line.said.price) return line.said.price->currency;
    return {};
}

Setting setting_of(const timeline::AircraftState& aircraft, base::Date today, const PayDays& days) {
    Setting out;
    out.today = today;
    out.home = home_of(aircraft);
    out.lists = aircraft.money.lists;
    out.terms = aircraft.money.terms;
    out.days = days;
    out.cores = aircraft.money.cores;
    for (const timeline::RateState& rate : aircraft.money.rates) {
        const auto figure = base::parse_rate(rate.said.rate);
        if (!figure) continue;  // no record that was checked
        out.rates.push_back({currency_of(rate.said.from),
                             currency_of(rate.said.to),
                             figure.value(),
                             rate.on,
                             rate.said.said_by});
    }
    return out;
}

std::vector<CostLineState> lines_of(const timeline::AircraftState& aircraft,
                                    const std::string& route) {
    std::vector<CostLineState> out;
    const auto& routes = aircraft.campaign.routes;
    const auto found = std::find_if(
        routes.begin(), routes.end(), [&](const auto& one) { return one.said.route == route; });
    if (found != routes.end()) add_route(*found, aircraft.campaign.terms.work, out);
    out.insert(out.end(), aircraft.money.lines.begin(), aircraft.money.lines.end());
    return out;
}

std::vector<ListChange> list_changes(const timeline::MoneyState& money) {
    std::vector<ListChange> out;
    for (const CostLineState& line : money.lines) {
        const CostLine& said = line.said;
        const facts::PriceRow* now = listed(said, money.lists);
        const timeline::PriceListState* before = before_last(said.list, money.lists);
        if (said.price || now == nullptr || before == nullptr) continue;
        const auto was =
            std::find_if(before->rows.begin(), before->rows.end(), [&](const facts::PriceRow& row) {
                return row.article == said.article;
            });
        if (was == before->rows.end() || was->price == now->price) continue;
        out.push_back({said.list,
                       said.article,
                       said,
                       was->price,
                       now->price,
                       last_day(said.list, money.lists)});
    }
    return out;
}

std::vector<PriceChange> price_changes(const timeline::MoneyState& money,
                                       timeline::PriceListState said) {
    const std::string list = said.list;
    std::vector<timeline::PriceListState> lists;
    for (const timeline::PriceListState& one : money.lists)
        if (one.list == list) lists.push_back(one);
    timeline::put_list(std::move(said), lists);
    const auto price = [](const facts::PriceRow* row) {
        return row == nullptr ? std::nullopt : std::optional{row->price};
    };
    std::vector<PriceChange> out;
    for (const CostLineState& line : money.lines) {
        if (line.said.price || line.said.list != list) continue;
        PriceChange change{
            line.said, price(listed(line.said, money.lists)), price(listed(line.said, lists))};
        if (change.before != change.now) out.push_back(std::move(change));
    }
    return out;
}

}  // namespace twoclocks::budget
