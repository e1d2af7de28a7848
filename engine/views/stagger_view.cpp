#include "engine/views/stagger_view.hpp"

#include "engine/base/order.hpp"
#include "engine/plan/shares.hpp"
#include "engine/plan/stagger.hpp"
#include "engine/views/plan_lived.hpp"
#include "engine/views/record_plan.hpp"
#include "engine/views/routes_view.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using plan::Reason;
using plan::Visit;

constexpr std::int64_t most_day_cost = 1'000'000'000;  // that the reckoning takes
constexpr std::int64_t days_given_up = 10;  // as bad as a day standing, where nobody said

/// One aircraft that has yet to go in, or is in already.
struct Coming {
    const Assessed* aircraft;
    Visit visit;
    bool is_in{false};
    std::int32_t confidence{0};
    std::int32_t out_at_once{0};
    std::optional<base::Currency> currency;  // of its costs
};

[[nodiscard]] Coming coming_of(const Lived& lived) {
    Coming out;
    out.aircraft = &lived.aircraft;
    out.confidence = lived.terms.confidence_percent;
    out.visit.ready_on = plan::day_at_share(lived.draws.readies, out.confidence);
    out.visit.limit_on = lived.outcome.stop_on;
    out.visit.out_days = std::max(lived.outcome.out_days, 1);
    const timeline::PlanState& records = lived.aircraft.state.campaign;
    out.out_at_once = records.terms.out_at_once.value_or(0);
    if (const facts::Route* route = plan::chosen_route(records)) {
        out.visit.shop_takes = route->shop_takes.value_or(0);
        if (out.visit.shop_takes > 0) out.visit.shop = route_name(*route).text;
    }
    if (const auto worth = plan::worth_of(records.costs, records, lived.item)) {
        out.currency = worth->currency;
        out.visit.early_cost = plan::early_day_cost(
            *worth, plan::left_of(lived.item, lived.run_out, lived.terms), lived.outcome.stop_on);
        out.visit.standing_cost = std::max<std::int64_t>(worth->standing().minor_units, 0);
    }
    if (!lived.has_stopped()) return out;
    out.is_in = true;
    out.visit.ready_on = out.visit.limit_on = 0;
    out.visit.out_days = std::max(lived.outcome.back_on + 1, 1);
    return out;
}

/// What is in stays where it is.
void hold_those_in(std::vector<Coming>& all) {
    for (Coming& one : all)
        if (one.is_in) one.visit.early_cost = one.visit.standing_cost = most_day_cost;
}

/// The least of the bounds that are recorded; 0 without one.
template <class Take>
[[nodiscard]] std::int32_t least_bound(const std::vector<Coming>& all, Take take) {
    std::int32_t out = 0;
    for (const Coming& one : all)
        if (take(one) > 0) out = out == 0 ? take(one) : std::min(out, take(one));
    return out;
}

/// The currency that all costs are in; nothing where one has none, or another.
[[nodiscard]] std::optional<base::Currency> shared_currency(const std::vector<Coming>& all) {
    std::optional<base::Currency> out;
    for (const Coming& one : all) {
        if (one.is_in) continue;
        if (!one.currency || (out && *out != *one.currency)) return std::nullopt;
        out = one.currency;
    }
    return out;
}

/// Without costs a day standing counts as many days given up.
void weigh_days(std::vector<Coming>& all) {
    for (Coming& one : all) {
        one.visit.early_cost = 1;
        one.visit.standing_cost = days_given_up;
    }
}

/// What is dearer than the reckoning takes is made smaller with all others; gives by how much.
[[nodiscard]] std::int64_t shrink(std::vector<Coming>& all) {
    std::int64_t most = 0;
    for (const Coming& one : all)
        most = std::max({most, one.visit.early_cost, one.visit.standing_cost});
    const std::int64_t parts = most / most_day_cost + 1;
    for (Coming& one : all) {
        one.visit.early_cost /= parts;
        one.visit.standing_cost /= parts;
    }
    return parts;
}

[[nodiscard]] Message reason_of(const plan::Placement& placement, const std::vector<Coming>& all) {
    std::string others;
    for (const std::int32_t place : placement.because_of) {
        if (!others.empty()) others += ", ";
        others += all[static_cast<std::size_t>(place)].aircraft->state.registration;
    }
    switch (placement.reason) {
        case Reason::on_limit:
            return {Word::stagger_on_limit, {}};
        case Reason::limit_past:
            return {Word::stagger_limit_past, {}};
        case Reason::not_ready:
            return {Word::stagger_not_ready, {base::whole_arg(placement.standing_days)}};
        case Reason::moved_earlier:
            return {Word::stagger_sooner,
                    {base::whole_arg(placement.early_days), base::text_arg(others)}};
        case Reason::moved_later:
            return {Word::stagger_later,
                    {base::whole_arg(placement.standing_days), base::text_arg(others)}};
    }
    return {Word::blank, {}};
}

void add_bounds(const std::vector<Coming>& all, plan::Capacity capacity, StaggerView& view) {
    if (capacity.out_at_once > 0)
        view.bounds.push_back({Word::stagger_bound, {base::whole_arg(capacity.out_at_once)}});
    else
        view.bounds.push_back({Word::stagger_unbound, {}});
    std::vector<std::string> told;
    for (const Coming& one : all) {
        const std::string& shop = one.visit.shop;
        if (shop.empty() || std::find(told.begin(), told.end(), shop) != told.end()) continue;
        told.push_back(shop);
        view.bounds.push_back(
            {Word::stagger_shop, {base::whole_arg(one.visit.shop_takes), base::text_arg(shop)}});
    }
}

void add_rows(const std::vector<Coming>& all, const plan::Stagger& found, StaggerView& view) {
    std::vector<std::pair<std::int32_t, StaggerRow>> rows;
    for (std::size_t place = 0; place < all.size(); ++place) {
        const plan::Placement& placement = found.placements[place];
        const Assessed& aircraft = *all[place].aircraft;
        const auto said = [&](std::int32_t day) {
            return base::day_arg(base::add_days(aircraft.today, day));
        };
        StaggerRow row;
        row.id = aircraft.state.id;
        row.name = {Word::record_of, {base::text_arg(aircraft.state.registration)}};
        row.days = {Word::stagger_days, {said(placement.begin_on), said(placement.back_on)}};
        row.reason = reason_of(placement, all);
        if (all[place].is_in) {
            row.days = {Word::stagger_in_already, {said(placement.back_on)}};
            row.reason = {Word::blank, {}};
        }
        row.stands = placement.standing_days > 0;
        rows.emplace_back(placement.begin_on, std::move(row));
        if (placement.standing_days > 0)
            view.notes.push_back(
                {Word::stagger_unmet, {base::text_arg(aircraft.state.registration)}});
    }
    base::sort_stably(rows,
                      [](const auto& one, const auto& other) { return one.first < other.first; });
    for (auto& [day, row] : rows)
        view.rows.push_back(std::move(row));
}

}  // namespace

StaggerView make_stagger_view(const std::vector<const Assessed*>& fleet) {
    std::vector<Living> lives;
    for (const Assessed* aircraft : fleet)
        lives.push_back(live(*aircraft, aircraft->state.campaign, ways_a_route));
    std::vector<const Living*> all;
    for (const Living& one : lives)
        all.push_back(&one);
    return make_stagger_view(fleet, all);
}

StaggerView make_stagger_view(const std::vector<const Assessed*>& fleet,
                              const std::vector<const Living*>& lives) {
    StaggerView view;
    std::vector<Coming> all;
    for (std::size_t place = 0; place < fleet.size(); ++place) {
        if (overhaul_of(*fleet[place]) == nullptr) continue;
        if (lives[place]->lived)
            all.push_back(coming_of(*lives[place]->lived));
        else
            view.notes.push_back(
                {Word::stagger_left_out, {base::text_arg(fleet[place]->state.registration)}});
    }
    if (all.size() < 2) {
        view.missing = {Word::stagger_none, {}};
        return view;
    }
    const auto currency = shared_currency(all);
    if (!currency) weigh_days(all);
    const std::int64_t parts = shrink(all);
    hold_those_in(all);
    const plan::Capacity capacity{
        least_bound(all, [](const Coming& one) { return one.out_at_once; }), 0};
    std::vector<Visit> visits;
    for (const Coming& one : all)
        visits.push_back(one.visit);
    const plan::Stagger found = plan::stagger(visits, capacity);
    add_bounds(all, capacity, view);
    add_rows(all, found, view);
    if (currency)
        view.notes.push_back(
            {Word::stagger_cost,
             {base::cost_arg({(found.cost - found.alone_cost) * parts, *currency})}});
    else
        view.notes.push_back({Word::stagger_weights, {base::whole_arg(days_given_up)}});
    view.notes.push_back({found.proven ? Word::stagger_proven : Word::stagger_found, {}});
    view.notes.push_back(
        {Word::stagger_estimates,
         {base::whole_arg(least_bound(all, [](const Coming& one) { return one.confidence; }))}});
    return view;
}

}  // namespace twoclocks::views
