#include "engine/budget/estimate.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/forecast/uniform.hpp"
#include "engine/plan/moment.hpp"
#include "engine/plan/pert.hpp"

namespace twoclocks::budget {
namespace {

using facts::CostTaken;

constexpr std::uint64_t seed = 2'026'1129;
constexpr std::size_t group_count = static_cast<std::size_t>(facts::CostGroup::other) + 1;
constexpr std::int32_t usual_link_permille = 500;

void add(Points& to, const Points& more) {
    to.low += more.low;
    to.likely += more.likely;
    to.high += more.high;
}

[[nodiscard]] Points less(const Points& from, const Points& part) {
    return {from.low - part.low, from.likely - part.likely, from.high - part.high};
}

[[nodiscard]] CurrencySum& sum_in(base::Currency currency, Estimate& out) {
    const auto found =
        std::find_if(out.by_currency.begin(), out.by_currency.end(), [&](const CurrencySum& one) {
            return one.currency == currency;
        });
    return found == out.by_currency.end()
               ? out.by_currency.emplace_back(CurrencySum{currency, {}, {}})
               : *found;
}

void add_currency(const CostedLine& line, Estimate& out) {
    CurrencySum& sum = sum_in(line.currency, out);
    add(sum.gross, line.gross());
    add(sum.back, line.tax_back);
}

void add_effects(const CostedLine& line, Estimate& out) {
    if (line.said.taken != CostTaken::chosen) return;
    out.added_days += line.said.added_days.value_or(0);
    out.added_grams += line.said.added_grams.value_or(0) - line.said.removed_grams.value_or(0);
    out.added_hours.seconds += line.said.added_hours.value_or(base::FlightTime{}).seconds;
}

/// Sums beyond what an amount can be are not made: the line that would do it is left out.
[[nodiscard]] bool has_room(const Estimate& out, const CostedLine& line) {
    return out.gross.high + line.home_gross.high <= base::most_minor_units;
}

void add_line(CostedLine& line, Estimate& out) {
    if (line.known && !has_room(out, line)) {
        line.known = false;
        line.notes.push_back(base::trouble(base::Trouble::sum_beyond, {name_of(line.said)}));
    }
    if (!line.known) {
        ++out.missing;
        return;
    }
    add(out.gross, line.home_gross);
    add(out.back, line.home_back);
    add_currency(line, out);
    add_effects(line, out);
}

/// What it would be in its own currency, for the sums of each currency.
[[nodiscard]] CoreWorked in_own_currency(const timeline::CoreState& core, const Setting& setting) {
    Setting own = setting;
    if (core.said.best_credit) own.home = core.said.best_credit->currency;
    return core_of(core, own);
}

void add_cores(const Setting& setting, Estimate& out) {
    for (const timeline::CoreState& core : setting.cores) {
        CoreWorked worked = core_of(core, setting);
        if (!worked.is_of_this) continue;
        if (!worked.known) ++out.missing;
        if (worked.known) {
            out.back.low += worked.credit.high;
            out.back.likely += worked.credit.likely;
            out.back.high += worked.credit.low;
            const CoreWorked own = in_own_currency(core, setting);
            const base::Currency currency =
                core.said.best_credit ? core.said.best_credit->currency : setting.home;
            if (own.known)
                add(sum_in(currency, out).back,
                    {own.credit.high, own.credit.likely, own.credit.low});
        }
        out.cores.push_back(std::move(worked));
    }
}

/// What one core brings at a luck between 0 and 1: the better outcomes first.
[[nodiscard]] double at_luck(const CoreWorked& core, double luck) {
    double passed = 0;
    for (const CoreOutcome& one : core.outcomes) {
        passed += static_cast<double>(one.permille) / facts::whole_permille;
        if (luck < passed) return static_cast<double>(one.amount);
    }
    return static_cast<double>(core.credit.likely);
}

/// What one line comes to at a luck between 0 and 1.
[[nodiscard]] double at_luck(const Points& points, double luck) {
    return plan::triangular(static_cast<double>(points.low),
                            static_cast<double>(points.likely),
                            static_cast<double>(points.high),
                            luck);
}

[[nodiscard]] Shares shares_of(std::vector<double>& sums) {
    std::sort(sums.begin(), sums.end());
    const auto at = [&](std::size_t tenths) {
        constexpr std::size_t whole = 10;
        return plan::whole_from(sums[(sums.size() * tenths + whole - 1) / whole - 1]);
    };
    return {at(1), at(5), at(9)};
}

/// A share that a hair of a draw took past the sums comes back to them. Net of the three points may
/// be in disorder by a minor unit: gross is rounded up, what comes back down.
void hold_between(Shares& shares, const Points& sums) {
    const std::int64_t least = std::min({sums.low, sums.likely, sums.high});
    const std::int64_t most = std::max({sums.low, sums.likely, sums.high});
    for (std::int64_t* const share : {&shares.tenth, &shares.half, &shares.ninth})
        *share = std::clamp(*share, least, most);
}

void draw(const Setting& setting, std::int32_t draws, Estimate& out) {
    if (draws <= 0) return;
    std::vector<const CostedLine*> lines;
    for (const CostedLine& line : out.lines)
        if (line.counts && line.known) lines.push_back(&line);
    const double linked =
        std::sqrt(static_cast<double>(setting.terms.linked_permille.value_or(usual_link_permille)) /
                  facts::whole_permille);
    std::mt19937_64 random{seed};
    std::vector<double> gross;
    std::vector<double> net;
    for (std::int32_t way = 0; way < draws; ++way) {
        std::array<double, group_count> luck{};
        for (double& one : luck)
            one = forecast::uniform(random);
        double gross_sum = 0;
        double back_sum = 0;
        for (const CostedLine* line : lines) {
            const bool with_group = forecast::uniform(random) < linked;
            const double own = forecast::uniform(random);
            const double mine = with_group ? luck[static_cast<std::size_t>(line->said.group)] : own;
            gross_sum += at_luck(line->home_gross, mine);
            back_sum += at_luck(line->home_back, mine);
        }
        for (const CoreWorked& core : out.cores)
            if (core.known) back_sum += at_luck(core, forecast::uniform(random));
        gross.push_back(gross_sum);
        net.push_back(gross_sum - back_sum);
    }
    const auto over = std::count_if(net.begin(), net.end(), [&](double sum) {
        return sum > static_cast<double>(out.net.likely);
    });
    constexpr std::int64_t whole = facts::whole_permille;
    out.net_over_permille = static_cast<std::int32_t>((over * whole + draws - 1) / draws);
    out.gross_shares = shares_of(gross);
    out.net_shares = shares_of(net);
    hold_between(out.gross_shares, out.gross);
    hold_between(out.net_shares, out.net);
}

void rank(Estimate& out) {
    for (std::size_t place = 0; place < out.lines.size(); ++place) {
        const CostedLine& line = out.lines[place];
        if (!line.counts || !line.known) continue;
        const Points net = less(line.home_gross, line.home_back);
        if (net.high > net.low)
            out.movers.push_back({static_cast<std::int32_t>(place), -1, net.high - net.low});
    }
    for (std::size_t place = 0; place < out.cores.size(); ++place) {
        const Points& credit = out.cores[place].credit;
        if (out.cores[place].known && credit.high > credit.low)
            out.movers.push_back({0, static_cast<std::int32_t>(place), credit.high - credit.low});
    }
    base::sort_stably(out.movers,
                      [](const Mover& one, const Mover& other) { return one.swing > other.swing; });
}

}  // namespace

Estimate estimate(const std::vector<timeline::CostLineState>& lines,
                  const EstimateFor& asked,
                  const Setting& setting,
                  std::int32_t draws) {
    Estimate out;
    out.home = setting.home;
    const Settled settled = settle(lines, asked);
    out.faults = settled.faults;
    for (std::size_t place = 0; place < settled.lines.size(); ++place) {
        CostedLine line = worked_out(*settled.lines[place], setting);
        line.counts = settled.counts[place];
        for (const base::Problem& why : settled.why[place])
            line.notes.push_back(why);
        out.lines.push_back(std::move(line));
        // Chosen, and cannot be had.
        if (!settled.counts[place] && !settled.why[place].empty()) ++out.missing;
    }
    base::sort_stably(out.lines, [](const CostedLine& one, const CostedLine& other) {
        return one.said.group < other.said.group;
    });
    for (CostedLine& line : out.lines)
        if (line.counts) add_line(line, out);
    if (asked.work == facts::PlanWork::overhaul) add_cores(setting, out);
    for (const base::Problem& fault : out.faults)
        if (fault.code == base::Trouble::option_unsettled) ++out.missing;
    out.net = less(out.gross, out.back);
    draw(setting, draws, out);
    rank(out);
    return out;
}

}  // namespace twoclocks::budget
