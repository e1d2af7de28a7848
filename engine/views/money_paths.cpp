#include "engine/views/money_paths.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/base/permille.hpp"
#include "engine/base/scaled.hpp"
#include "engine/views/both_paths.hpp"
#include "engine/views/money_estimate.hpp"
#include "engine/views/record_plan.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Money;
using base::Word;
using budget::Estimate;
using facts::PlanWork;

[[nodiscard]] std::int64_t whole_hours_of(base::FlightTime time) {
    return time.seconds / base::hours(1).seconds;
}

[[nodiscard]] Message hour_cost(Money net, std::int64_t whole_hours) {
    if (whole_hours <= 0) return {Word::blank, {}};
    return {Word::money_an_hour,
            {base::money_arg(base::divided(net, whole_hours, base::MoneyRound::up)),
             base::whole_arg(whole_hours)}};
}

void tell_missing(const Estimate& estimate, MoneyPath& out) {
    if (estimate.missing > 0)
        out.lines.push_back({Word::money_not_whole, {base::whole_arg(estimate.missing)}});
}

[[nodiscard]] MoneyPath path_of(const Estimate& estimate, Message name, std::int64_t hours) {
    MoneyPath out;
    out.name = std::move(name);
    const Money net{estimate.net.likely, estimate.home};
    const bool is_known = has_sum(estimate);
    out.net = {Word::record_of, {is_known ? base::cost_arg(net) : base::word_arg(Word::not_known)}};
    out.hour = is_known ? hour_cost(net, hours) : Message{Word::blank, {}};
    tell_missing(estimate, out);
    return out;
}

/// The hours that an overhaul buys: those of its limit.
[[nodiscard]] std::int64_t hours_of_limit(const Assessed& aircraft) {
    const limits::ItemDue* item = overhaul_of(aircraft);
    const limits::ClockDue* hours = item == nullptr ? nullptr : plan::hours_of(*item);
    return hours == nullptr ? 0 : whole_hours_of(hours->limit_hours);
}

/// Both kinds of work beside each other.
class BothWorks {
  public:
    BothWorks(const Assessed& aircraft, const Living& planned, const BothPathsView& both)
        : aircraft_(aircraft), days_(pay_days(planned)), both_(both) {
        route_ = plan::chosen_route(aircraft.state.campaign);
    }

    [[nodiscard]] MoneyPath row(std::size_t place) const {
        const BothPathsView::Path& path = both_.paths[place];
        const Estimate estimate = of(works.at(place), days_);
        MoneyPath out = path_of(estimate, path.title, whole_hours_of(path.gained));
        if (route_ != nullptr && route_->price &&
            works.at(place) != aircraft_.state.campaign.terms.work)
            out.lines.push_back({Word::money_path_own_route, {route_name(*route_)}});
        out.lines.push_back(path.next_stop);
        if (!both_.horizon) return out;
        add_up_to(static_cast<std::int32_t>(place), estimate, out);
        // To its own next stop it would be said twice.
        if (both_.horizon->sooner != static_cast<std::int32_t>(place)) out.hour = {Word::blank, {}};
        return out;
    }

  private:
    static constexpr std::array works{PlanWork::calendar_work, PlanWork::overhaul};

    [[nodiscard]] Estimate of(PlanWork work, const budget::PayDays& days) const {
        const std::string route = route_ == nullptr ? std::string{} : route_->route;
        return estimate_of(aircraft_, {route, work, aircraft_.state.serial}, days, 0);
    }

    /// What it comes to up to the day that both are followed to.
    void add_up_to(std::int32_t place, const Estimate& estimate, MoneyPath& out) const {
        const PathHorizon& horizon = *both_.horizon;
        const std::int64_t hours = whole_hours_of(horizon.flown);
        if (hours <= 0 || !has_sum(estimate)) return;
        const base::Arg until = base::day_arg(horizon.until);
        std::optional<Money> sum = Money{estimate.net.likely, estimate.home};
        if (horizon.sooner == place) {
            const Estimate later = of(PlanWork::overhaul, paid_on(horizon.sooner_stop));
            if (!has_sum(later)) return;
            const Money net{later.net.likely, later.home};
            // How long an overhaul lasts: as long as the one that is the other way.
            const base::Date lasts = place == 0 ? horizon.until : horizon.sooner_stop;
            const std::int64_t all = base::days_between(horizon.from, lasts);
            const std::int64_t used =
                std::min<std::int64_t>(base::days_between(horizon.sooner_stop, horizon.until), all);
            if (all <= 0) return;
            const auto share = base::scaled(net, used, all, base::MoneyRound::up);
            sum = share ? base::plus(*sum, *share) : std::nullopt;
            // Costs up: the share too.
            const std::int64_t permille = (used * base::whole_permille + all - 1) / all;
            out.lines.push_back({Word::money_then_overhaul,
                                 {base::day_arg(horizon.sooner_stop),
                                  base::cost_arg(net),
                                  base::short_decimal_arg(permille, 1),
                                  until}});
            tell_missing(later, out);
        }
        if (!sum) return;
        out.lines.push_back({Word::money_up_to,
                             {until,
                              base::cost_arg(*sum),
                              base::money_arg(base::divided(*sum, hours, base::MoneyRound::up)),
                              base::whole_arg(hours)}});
    }

    const Assessed& aircraft_;
    budget::PayDays days_;
    const BothPathsView& both_;
    const facts::Route* route_;
};

}  // namespace

std::vector<MoneyPath> money_paths(const Assessed& aircraft,
                                   const Living& planned,
                                   const std::vector<const Living*>& routes) {
    std::vector<MoneyPath> out;
    const timeline::PlanState& records = aircraft.state.campaign;
    const PlanWork work = records.terms.work;
    // Calendar work keeps the hours: how many it buys is told where both kinds stand side by side.
    const std::int64_t limit = work == PlanWork::overhaul ? hours_of_limit(aircraft) : 0;
    for (std::size_t place = 0; place < records.routes.size(); ++place) {
        const facts::Route& route = records.routes[place].said;
        if (route.accepted == facts::Acceptance::refused) continue;
        const Estimate estimate = estimate_of(
            aircraft, {route.route, work, aircraft.state.serial}, pay_days(*routes[place]), 0);
        out.push_back(path_of(estimate, {Word::record_of, {route_name(route)}}, limit));
    }
    const BothPathsView both = both_paths(aircraft);
    constexpr std::size_t two = 2;
    if (both.paths.size() != two) return out;
    const BothWorks works{aircraft, planned, both};
    for (std::size_t place = 0; place < two; ++place)
        out.push_back(works.row(place));
    return out;
}

}  // namespace twoclocks::views
