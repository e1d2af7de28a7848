#include "engine/limits/permit.hpp"

#include <algorithm>

namespace twoclocks::limits {
namespace {

/// Hours flown past the limit, by whichever of its hours clocks and caps is passed the most.
[[nodiscard]] base::FlightTime hours_past(const ItemDue& due) {
    base::FlightTime out;
    for (const auto* clocks : {&due.clocks, &due.caps}) {
        for (const ClockDue& clock : *clocks) {
            if (clock.clock == facts::Clock::hours && clock.passed())
                out = std::max(out, base::FlightTime{0} - clock.left);
        }
    }
    return out;
}

}  // namespace

std::vector<PermitUse> permit_uses(const timeline::ItemState& item,
                                   const ItemDue& due,
                                   base::Date today) {
    std::vector<PermitUse> out;
    const bool passed = due.passed();
    for (const timeline::PermitState& state : item.permits) {
        PermitUse& use = out.emplace_back();
        use.permit = state.permit;
        use.fact = state.fact;
        if (!passed) continue;
        use.past = hours_past(due);
        use.expired = state.permit.until && *state.permit.until < today;
        use.exceeded = state.permit.hours && use.past > *state.permit.hours;
    }
    return out;
}

}  // namespace twoclocks::limits
