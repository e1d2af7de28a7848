// The book goes on: wear that two people measured, and limits that they disagree about.
#include "catch_amalgamated.hpp"
#include "tests/support/worn.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Wear;
using facts::WearLimit;
using facts::WearSense;
using support::day;
using support::Worn;
using timeline::WearVerdict;

namespace {

struct WearCase {
    const char* name;
    void (*write)(Worn&);
    WearVerdict verdict;
    std::int32_t value;  // the measurement that counts
    std::int32_t limit;
};

Wear wear_of(std::int32_t thousandths, const char* unit = "mm") {
    return {thousandths, unit, {}, {}, {}};
}

WearLimit limit_of(std::int32_t thousandths, WearSense sense = WearSense::at_most) {
    return {thousandths, "mm", sense, "Manual", {}};
}

void disputed(Worn& w, const Fact& fact, facts::Fields ann, facts::Fields ben) {
    w.keep(w.ann.correct(fact, std::move(ann)));
    w.keep(w.ben.correct(fact, std::move(ben)));
}

const WearCase wear_cases[] = {
    {"nobody disagrees", [](Worn&) {}, WearVerdict::sound, 3'000, 4'000},
    {"two values: the worse",
     [](Worn& w) { disputed(w, w.measured("2024-06-01", 3'100), wear_of(3'200), wear_of(3'300)); },
     WearVerdict::sound,
     3'300,
     4'000},
    {"two values, one of them past: past",
     [](Worn& w) { disputed(w, w.measured("2024-06-01", 3'100), wear_of(4'001), wear_of(1'000)); },
     WearVerdict::past,
     4'001,
     4'000},
    {"the worse where it must not fall",
     [](Worn& w) {
         w.limited(2'000, WearSense::at_least, "2024-01-03");
         disputed(w, w.measured("2024-06-01", 3'100), wear_of(2'100), wear_of(3'300));
     },
     WearVerdict::sound,
     2'100,
     2'000},
    {"one takes a better value back: the one before counts too",
     [](Worn& w) {
         const Fact better = w.measured("2024-06-01", 1'000);
         w.keep(w.ann.withdraw(better));
         w.keep(w.ben.correct(better, wear_of(1'100)));
     },
     WearVerdict::sound,
     3'000,
     4'000},
    {"one takes a worse value back: it counts",
     [](Worn& w) {
         const Fact worse = w.measured("2024-06-01", 4'500);
         w.keep(w.ann.withdraw(worse));
         w.keep(w.ben.correct(worse, wear_of(4'400)));
     },
     WearVerdict::past,
     4'400,
     4'000},
    {"a later measurement that nobody doubts settles it",
     [](Worn& w) {
         disputed(w, w.measured("2024-06-01", 3'100), wear_of(4'001), wear_of(1'000));
         w.measured("2024-06-02", 2'000);
     },
     WearVerdict::sound,
     2'000,
     4'000},
    {"one in another unit: nothing can be said",
     [](Worn& w) {
         disputed(w, w.measured("2024-06-01", 3'100), wear_of(3'200), wear_of(3'300, "in"));
     },
     WearVerdict::other_unit,
     3'300,
     4'000},
    {"two limits: the stricter",
     [](Worn& w) {
         disputed(w,
                  w.limited(3'900, WearSense::at_most, "2024-01-03"),
                  limit_of(3'500),
                  limit_of(2'900));
     },
     WearVerdict::past,
     3'000,
     2'900},
    {"a limit that one takes back stands, and so does the one before it",
     [](Worn& w) {
         const Fact looser = w.limited(9'000, WearSense::at_most, "2024-01-03");
         w.keep(w.ann.withdraw(looser));
         w.keep(w.ben.correct(looser, limit_of(8'000)));
     },
     WearVerdict::sound,
     3'000,
     4'000},
};

}  // namespace

TEST_CASE("of wear that people disagree about the worst that may hold counts", "[merge][wear]") {
    for (const WearCase& one : wear_cases) {
        CAPTURE(one.name);
        Worn w;
        w.limited(4'000);
        w.measured("2024-05-01", 3'000);
        one.write(w);
        const timeline::WearFinding finding = w.finding();
        CHECK(finding.verdict == one.verdict);
        REQUIRE(finding.point.has_value());
        REQUIRE(finding.bound.has_value());
        CHECK(finding.point->value_thousandths == one.value);
        CHECK(finding.bound->limit.limit_thousandths == one.limit);
    }
}

TEST_CASE("the only measurement, taken back by one, is none to rely on", "[merge][wear]") {
    Worn w;
    w.limited(4'000);
    const Fact only = w.measured("2024-05-01", 3'000);
    w.keep(w.ann.withdraw(only));
    w.keep(w.ben.correct(only, wear_of(3'100)));
    CHECK(w.finding().verdict == WearVerdict::unmeasured);
}
