// From the records of an aircraft to what a sale is worked out from.
#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/budget/from_records.hpp"
#include "engine/budget/growth.hpp"
#include "engine/forecast/flying_ahead.hpp"
#include "engine/views/both_paths.hpp"
#include "engine/views/money_estimate.hpp"
#include "engine/views/sale_view.hpp"

namespace twoclocks::views {
namespace {

using base::Word;

/// The net sum of an estimate that is whole.
[[nodiscard]] std::optional<std::int64_t> whole_sum(const Assessed& aircraft,
                                                    facts::PlanWork work,
                                                    base::Date day) {
    budget::EstimateFor asked = asked_of(aircraft);
    asked.work = work;
    const budget::Estimate estimate = estimate_of(aircraft, asked, paid_on(day), 0);
    if (!has_sum(estimate) || estimate.missing > 0) return std::nullopt;
    // Freight alone is no work: something has to be for this work itself.
    const auto own = work == facts::PlanWork::overhaul ? facts::CostFor::overhaul
                                                       : facts::CostFor::calendar_work;
    const bool is_told =
        std::any_of(estimate.lines.begin(), estimate.lines.end(), [&](const auto& line) {
            return line.counts && line.known &&
                   (line.said.work == own || (work == facts::PlanWork::overhaul &&
                                              line.said.work == facts::CostFor::either &&
                                              line.said.group <= facts::CostGroup::engine));
        });
    return is_told ? std::optional{estimate.net.likely} : std::nullopt;
}

[[nodiscard]] std::optional<std::int64_t> price_of(const Sale& sale, base::Id item) {
    for (const timeline::ItemPriceState& one : sale.aircraft.state.money.item_prices) {
        base::Problems faults;
        if (one.item == item && one.said.price)
            return budget::in_home(*one.said.price, sale.setting, base::MoneyRound::up, faults);
    }
    return std::nullopt;
}

void add_items(Sale& sale) {
    for (std::size_t place = 0; place < sale.aircraft.items.size(); ++place) {
        const limits::ItemDue& item = sale.aircraft.items[place];
        if (static_cast<std::int32_t>(place) == sale.aircraft.overhaul || !item.mandatory())
            continue;
        sale.asked.items.push_back(item);
        sale.asked.price.push_back(price_of(sale, item.item));
        sale.places.push_back(static_cast<std::int32_t>(place));
    }
}

/// What the overhaul costs: by the estimate where it is whole, else the sum that was recorded.
void add_overhaul(Sale& sale) {
    const Assessed& aircraft = sale.aircraft;
    const auto met = budget::met_at_rate(sale.asked.overhaul, sale.asked.year);
    const base::Date then = base::add_days(aircraft.today, met ? met->days : 0);
    sale.asked.overhaul_now = whole_sum(aircraft, facts::PlanWork::overhaul, aircraft.today);
    sale.is_estimated = sale.asked.overhaul_now.has_value();
    if (sale.is_estimated) {
        sale.asked.overhaul_then = whole_sum(aircraft, facts::PlanWork::overhaul, then);
    } else if (const auto& sum = aircraft.state.campaign.costs.sum) {
        base::Problems faults;
        sale.asked.overhaul_now = budget::in_home(*sum, sale.setting, base::MoneyRound::up, faults);
        if (sale.asked.overhaul_now)
            sale.asked.overhaul_then = budget::grown(
                *sale.asked.overhaul_now, sale.asked.rise_permille, met ? met->days : 0);
    }
    // Only where a document says which calendar work keeps the hours.
    if (both_paths(aircraft).paths.size() > 1)
        sale.asked.calendar_work =
            whole_sum(aircraft, facts::PlanWork::calendar_work, aircraft.today);
}

}  // namespace

Sale make_sale(const Assessed& aircraft, std::optional<base::FlightTime> year) {
    Sale out{aircraft, budget::setting_of(aircraft.state, aircraft.today, {})};
    const limits::ItemDue* overhaul = overhaul_of(aircraft);
    if (overhaul == nullptr) {
        out.missing = {Word::plan_no_overhaul, {}};
        return out;
    }
    out.asked.today = aircraft.today;
    out.asked.year = year.value_or(forecast::a_year(aircraft.ahead));
    out.asked.overhaul = *overhaul;
    out.asked.rise_permille = out.setting.terms.labour_rise_permille.value_or(0);
    out.asked.interest_permille = aircraft.state.campaign.costs.interest_permille;
    if (!budget::met_at_rate(*overhaul, out.asked.year)) {
        out.missing = {Word::sale_no_day, {}};
        return out;
    }
    add_items(out);
    add_overhaul(out);
    out.worked = budget::work_out_sale(out.asked);
    return out;
}

}  // namespace twoclocks::views
