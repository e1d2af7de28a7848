#include "engine/limits/least_due.hpp"

#include <algorithm>

namespace twoclocks::limits {
namespace {

using facts::Clock;

[[nodiscard]] std::int64_t left_of(const ClockDue& clock) {
    switch (clock.clock) {
        case Clock::hours:
            return clock.left.seconds;
        case Clock::calendar:
            return clock.days_left;
        case Clock::landings:
        case Clock::starts:
            return clock.left_count.value;
    }
    return 0;
}

/// Of each kind of clock the least that is known, and one that is not known where that says more.
void add_clock(std::vector<ClockDue>& into, const ClockDue& clock) {
    for (ClockDue& mine : into) {
        if (mine.clock != clock.clock || mine.known != clock.known) continue;
        if (clock.known && left_of(clock) < left_of(mine)) mine = clock;
        return;
    }
    into.push_back(clock);
}

void drop_unknown(std::vector<ClockDue>& clocks) {
    const std::vector<ClockDue> all = clocks;
    const auto says_less = [&](const ClockDue& clock) {
        return !clock.known && std::any_of(all.begin(), all.end(), [&](const ClockDue& other) {
            return other.clock == clock.clock && other.passed();
        });
    };
    clocks.erase(std::remove_if(clocks.begin(), clocks.end(), says_less), clocks.end());
}

[[nodiscard]] bool has_all(const ItemDue& left, const ItemDue& right) {
    return std::all_of(left.clocks.begin(), left.clocks.end(), [&](const ClockDue& clock) {
        return clock_of(right, clock.clock) != nullptr;
    });
}

}  // namespace

ItemDue least_due(ItemDue into, const ItemDue& other) {
    const bool both_later = into.combine == facts::Combine::later &&
                            other.combine == facts::Combine::later && has_all(into, other) &&
                            has_all(other, into);
    if (!both_later) into.combine = facts::Combine::sooner;
    into.complied = into.complied && other.complied;
    into.once = into.once && other.once;
    for (const ClockDue& clock : other.clocks)
        add_clock(into.clocks, clock);
    for (const ClockDue& cap : other.caps)
        add_clock(into.caps, cap);
    drop_unknown(into.clocks);
    drop_unknown(into.caps);
    return into;
}

}  // namespace twoclocks::limits
