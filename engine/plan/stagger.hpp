// Several aircraft come to an overhaul limit: the day on which each stops flying and goes in, so
// that no more are out at once than may be, no shop has more than it takes, and it costs least.
//
// The hard questions.
//   The day it goes in is the day of its last flight, and its first day out. To go in on the day of
//   the limit costs nothing; each day before it is a day given up, each after it a day of standing.
//   Standing counts from today: what a limit already past has cost is spent, whatever is decided.
//   At most so many out at once: in the shop, from going in to the day before it is back. One that
//   stands past its limit fills no place; its standing is paid for, and it is told as unmet.
//   Nothing is refused: there is always a later day. What cannot be met is who stands, and why.
//   Plans that cost the same: the one that moves the fewest days in all, then, of visits alike in
//   everything, the first in the list goes first, then the one found first. The order of looking
//   is fixed and counts steps, not time, so every build proposes the same.
//   The least is proven where the search came to its end; beyond, the best plan found is given.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace twoclocks::plan {

/// One aircraft that has to go in. Days are counted from today, which is 0.
struct Visit {
    std::int32_t ready_on{0};       // from then on the work can begin: kit here, slot given
    std::int32_t limit_on{0};       // the last day it may fly; negative: already past
    std::int32_t out_days{1};       // from going in to the release
    std::int64_t early_cost{0};     // of a day given up before its limit
    std::int64_t standing_cost{0};  // of a day past its limit before the work begins
    std::string shop;               // empty: none that others share
    std::int32_t shop_takes{0};     // of its visits at once; 0: as the capacity says

    bool operator==(const Visit&) const = default;
};

/// What visits share. 0: no bound.
struct Capacity {
    std::int32_t out_at_once{0};
    std::int32_t shop_takes{1};  // at once, of visits to the same shop
};

/// Why a visit begins on its day.
enum class Reason : std::uint8_t {
    on_limit,       // the day of its limit
    limit_past,     // the limit is behind and it is ready: today
    not_ready,      // its kit or slot comes after the limit: it stands until then
    moved_earlier,  // to make room
    moved_later,    // to make room: it stands
};

/// When one aircraft is out, and why then.
struct Placement {
    std::int32_t begin_on{0};  // not before today, nor before it is ready
    std::int32_t back_on{0};   // the first day back in service
    std::int32_t early_days{0};
    std::int32_t standing_days{0};
    std::int64_t cost{0};
    Reason reason{Reason::on_limit};
    std::vector<std::int32_t> because_of;  // moved: the visits that fill the days it would take
};

/// A plan for all of them. Places are those of the visits asked about.
struct Stagger {
    std::vector<Placement> placements;
    std::int64_t cost{0};
    std::int64_t alone_cost{0};       // if nothing were shared
    bool proven{false};               // no plan costs less
    std::vector<std::int32_t> unmet;  // these go in after their limit
};

/// The days that cost least.
/// Units: days, minor units of money. Range: days within 100'000 of today, out_days 1 or more,
/// costs 0 to 10^9 a day, 100 visits. Errors: none.
/// Source: branch and bound over who goes before whom, each step a circulation of greatest weight
/// (the dual of the days that cost least), common practice; what is moved first, our choice.
[[nodiscard]] Stagger stagger(const std::vector<Visit>& visits, const Capacity& capacity);

}  // namespace twoclocks::plan
