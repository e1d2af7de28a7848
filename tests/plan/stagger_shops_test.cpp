// Shops that take different numbers at once.
#include "catch_amalgamated.hpp"

#include "engine/plan/stagger.hpp"

using namespace twoclocks;
using plan::Visit;

TEST_CASE("each shop takes what it takes", "[plan][stagger]") {
    // Four due on day 100, ten days out each, a day given up costs 1 and a day standing 5. The
    // shop that takes two loses nothing; at the one that takes one the other goes in ten days
    // early.
    const Visit one{0, 100, 10, 1, 5, "one", 1};
    const Visit two{0, 100, 10, 1, 5, "two", 2};
    const auto found = plan::stagger({one, one, two, two}, {});
    CHECK(found.cost == 10);
    CHECK(found.placements[0].begin_on + found.placements[1].begin_on == 190);
    CHECK(found.placements[2].begin_on == 100);
    CHECK(found.placements[3].begin_on == 100);
    // Of three the shop for two moves one.
    CHECK(plan::stagger({two, two, two}, {}).cost == 10);
}
