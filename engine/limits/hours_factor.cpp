#include "engine/limits/hours_factor.hpp"

#include <algorithm>

#include "engine/base/order.hpp"

namespace twoclocks::limits {
namespace {

using base::Date;
using base::FlightTime;
using timeline::FactorState;
using timeline::FlownState;
using timeline::ItemState;

constexpr std::int64_t as_flown = 1000;

/// The day from which flying counts for the hours of an item; nothing when that is not known. A
/// figure of the work that is an estimate may be that of work before it.
[[nodiscard]] std::optional<Date> counts_since(const ItemState& item) {
    const auto& last = item.renewed[static_cast<std::size_t>(facts::Clock::hours)];
    if (last && last->total) {
        if (last->total_estimated) return std::nullopt;
        return last->on;
    }
    if (item.disputed || !item.limit->anchor_total) return std::nullopt;
    return item.limit->anchor_on;
}

/// The factor that uses the most of those a record may mean.
[[nodiscard]] const FactorState* greatest_of(const timeline::UseState& use,
                                             const FlownState& flown,
                                             base::Id item) {
    const FactorState* out = nullptr;
    for (const facts::Operation kind : flown.kinds) {
        const FactorState* factor = factor_of(use, kind, item);
        if (factor == nullptr) continue;
        if (out == nullptr || factor->thousandths > out->thousandths) out = factor;
    }
    return out;
}

[[nodiscard]] FlightTime rounded_up(FlightTime hours, std::int64_t more_thousandths) {
    return {(hours.seconds * more_thousandths + as_flown - 1) / as_flown};
}

}  // namespace

const FactorState* factor_of(const timeline::UseState& use, facts::Operation kind, base::Id item) {
    const FactorState* all = nullptr;
    for (const FactorState& factor : use.factors) {
        if (factor.kind != kind) continue;
        if (factor.item == item) return &factor;
        if (factor.item.empty()) all = &factor;
    }
    return all;
}

std::vector<FactorTerm> factor_terms(const Bearer& bearer,
                                     const ItemState& item,
                                     FlightTime flown) {
    std::vector<FactorTerm> out;
    if (bearer.is_part || bearer.use.factors.empty()) return out;
    const std::optional<Date> since = counts_since(item);
    for (const FlownState& one : bearer.use.flown) {
        if (since && one.on < *since) continue;
        const FactorState* factor = greatest_of(bearer.use, one, item.id);
        if (factor == nullptr || factor->thousandths <= as_flown) continue;
        out.push_back({factor->kind, one.hours, factor->thousandths, {}, factor->source, one.fact});
    }
    base::sort_stably(out, [](const FactorTerm& left, const FactorTerm& right) {
        return left.thousandths > right.thousandths;
    });
    FlightTime left = std::max(FlightTime{0}, flown);
    for (FactorTerm& term : out) {
        term.hours = std::min(term.hours, left);
        left = left - term.hours;
        term.more = rounded_up(term.hours, term.thousandths - as_flown);
    }
    out.erase(
        std::remove_if(
            out.begin(), out.end(), [](const FactorTerm& term) { return term.hours.seconds == 0; }),
        out.end());
    return out;
}

FlightTime extra_hours(const std::vector<FactorTerm>& terms) {
    FlightTime out;
    for (const FactorTerm& term : terms)
        out = out + term.more;
    return out;
}

}  // namespace twoclocks::limits
