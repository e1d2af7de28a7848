// Measured wear against its limit.
#include "engine/timeline/wear.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/hung.hpp"
#include "tests/support/worn.hpp"

using namespace twoclocks;
using facts::WearSense;
using support::day;
using support::Worn;
using timeline::WearFinding;
using timeline::WearVerdict;

TEST_CASE("wear is judged a thousandth either side of the limit", "[timeline][wear]") {
    struct Row {
        const char* name;
        WearSense sense;
        std::int32_t value;
        WearVerdict verdict;
    };

    constexpr auto at_most = WearSense::at_most;
    constexpr auto at_least = WearSense::at_least;
    for (const Row& row : {Row{"under at most", at_most, 3'999, WearVerdict::sound},
                           Row{"at the limit", at_most, 4'000, WearVerdict::sound},
                           Row{"above at most", at_most, 4'001, WearVerdict::past},
                           Row{"above at least", at_least, 4'001, WearVerdict::sound},
                           Row{"at the least", at_least, 4'000, WearVerdict::sound},
                           Row{"under at least", at_least, 3'999, WearVerdict::past}}) {
        CAPTURE(row.name);
        Worn worn;
        worn.limited(4'000, row.sense);
        worn.measured("2024-05-01", row.value);
        CHECK(worn.finding().verdict == row.verdict);
    }
}

TEST_CASE("what is missing is said, and nothing is converted", "[timeline][wear]") {
    Worn bare;
    CHECK_FALSE(bare.wear().has_value());
    Worn unlimited;
    unlimited.measured("2024-05-01", 3'000);
    CHECK(unlimited.finding().verdict == WearVerdict::no_limit);
    Worn unmeasured;
    unmeasured.limited(4'000);
    CHECK(unmeasured.finding().verdict == WearVerdict::unmeasured);
    Worn other;
    other.limited(4'000);
    other.measured("2024-05-01", 3'000, "in");
    CHECK(other.finding().verdict == WearVerdict::other_unit);
}

TEST_CASE("the last measurement counts, by day and then as it was written", "[timeline][wear]") {
    Worn worn;
    worn.limited(4'000);
    worn.measured("2024-05-01", 4'500);
    worn.measured("2024-04-01", 3'000);
    CHECK(worn.finding().verdict == WearVerdict::past);  // the later day, though written earlier
    worn.measured("2024-05-01", 1'000);                  // replaced on the same day
    CHECK(worn.finding().verdict == WearVerdict::sound);
    CHECK(worn.finding().point->value_thousandths == 1'000);
    CHECK_FALSE(worn.finding().disputed);
}

TEST_CASE("the last limit of a day gone by is in force", "[timeline][wear]") {
    Worn worn;
    worn.measured("2024-05-01", 3'500);
    worn.limited(3'000, WearSense::at_most, "2024-01-01");
    CHECK(worn.finding().verdict == WearVerdict::past);
    worn.limited(4'000, WearSense::at_most, "2024-07-01");
    CHECK(worn.finding().verdict == WearVerdict::sound);
    worn.limited(2'000, WearSense::at_most, "2024-07-02");
    CHECK(worn.finding().verdict == WearVerdict::sound);
}

TEST_CASE("a measurement dated ahead counts only where it is past", "[timeline][wear]") {
    Worn worn;
    worn.limited(4'000);
    worn.measured("2024-07-02", 1'000);
    CHECK(worn.finding().verdict == WearVerdict::unmeasured);
    worn.measured("2024-07-01", 3'000);
    CHECK(worn.finding().verdict == WearVerdict::sound);
    CHECK(worn.finding().point->value_thousandths == 3'000);
    worn.measured("2024-07-03", 4'001);
    CHECK(worn.finding().verdict == WearVerdict::past);
}

TEST_CASE("wear of what hangs on a part is measured with the part", "[timeline][wear]") {
    support::Hung s;
    const facts::Fact item = s.item(s.gearbox, facts::ItemRole::component, support::limit(1000, 0));
    const std::vector<base::Id> about{s.gearbox.id, item.id};
    s.keep(s.ann.write(
        day("2024-02-01"), about, facts::WearLimit{4'000, "mm", WearSense::at_most, {}, {}}));
    s.keep(s.ann.write(day("2024-05-01"), about, facts::Wear{4'001, "mm", {}, {}, {}}));
    const timeline::PartState part = s.state(s.gearbox);
    REQUIRE(part.items.size() == 1);
    REQUIRE(part.items.front().wear.has_value());
    CHECK(timeline::judge_wear(*part.items.front().wear).verdict == WearVerdict::past);
}
