// How well the invented fleets would have been told, a year at a time, over all their history.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <iostream>

#include "engine/facts/parse.hpp"
#include "engine/forecast/back_test.hpp"

using namespace twoclocks;

namespace {

struct Tally {
    std::int32_t asked{0};
    std::int32_t inside{0};
    std::int32_t late_held{0};
};

/// Asks a year before each day, a quarter of a year apart.
void tally(const timeline::AircraftState& state, Tally& out) {
    constexpr std::int32_t quarter_days = 91;
    timeline::AircraftState then = state;
    while (!then.usage.empty()) {
        if (const auto test = forecast::back_test(then)) {
            ++out.asked;
            out.inside += test->inside ? 1 : 0;
            out.late_held += test->late_held ? 1 : 0;
        }
        const base::Date end = base::add_days(then.usage.back().on, -quarter_days);
        while (!then.usage.empty() && then.usage.back().on > end)
            then.usage.pop_back();
        then.certain = then.usage;
    }
}

}  // namespace

TEST_CASE("over the invented fleets the late date holds for eight answers in ten or more",
          "[forecast][back_test][calibration]") {
    constexpr base::Date today{20'786};  // 2026-11-29
    Tally all;
    const facts::Parsed parsed = facts::parse_journal(support::file_text("demo/fleet.jsonl"));
    facts::Journal journal;
    for (const facts::Fact& fact : parsed.facts)
        journal.add(fact);
    for (const base::Id& id : journal.aircraft())
        tally(timeline::replay(journal, id, today), all);
    std::cerr << "# calibration: of " << all.asked << " answers a year ahead " << all.inside
              << " came within the band, " << all.late_held << " no later than the late day\n";
    CHECK(all.asked > 40);
    CHECK(all.late_held * 10 >= all.asked * 8);
    CHECK(all.inside * 10 >= all.asked * 5);
}
