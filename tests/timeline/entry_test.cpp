// A reading is checked before it becomes a fact, a row either side of every boundary.
#include "engine/timeline/entry.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <string>

using namespace twoclocks;
using support::day;
using support::Hangar;

namespace {

std::string verdict(const timeline::AircraftState& state, const char* on, std::int64_t tenths) {
    const base::Problems problems =
        timeline::check_reading(state, base::tenths(tenths), day(on), day("2024-07-01"));
    if (problems.empty()) return "accepted";
    return std::string{base::name_of(problems.front().code)};
}

}  // namespace

TEST_CASE("a reading fits between those before and after it", "[timeline][entry]") {
    // Fitted on 1 January at 0.0, read 100.0 on 1 March and 160.0 on 1 June; 120.0 on 1 April by
    // the work's total.
    const Hangar h;
    const auto state = timeline::replay(h.journal, h.id(), h.today);

    struct Row {
        const char* on;
        std::int64_t tenths;
        const char* verdict;
    };

    for (const Row& row : {Row{"2024-07-01", 1600, "accepted"},
                           Row{"2024-07-02", 1600, "entry_day_ahead"},
                           Row{"2024-07-01", 1599, "entry_falls"},
                           Row{"2024-06-01", 1600, "accepted"},
                           Row{"2024-06-01", 1599, "entry_falls"},
                           Row{"2024-05-31", 1600, "accepted"},
                           Row{"2024-05-31", 1601, "entry_above_later"},
                           Row{"2024-04-10", 1200, "accepted"},
                           Row{"2024-04-10", 1199, "entry_falls"},
                           Row{"2024-01-01", 0, "accepted"},
                           Row{"2023-12-31", 0, "entry_before_meter"},
                           Row{"2024-06-02", 2080, "accepted"},
                           Row{"2024-06-02", 2081, "entry_too_fast"},
                           Row{"2024-05-31", 1120, "entry_falls"},
                           Row{"2024-03-01", 1001, "accepted"},
                           Row{"2024-02-29", 519, "entry_too_fast"},
                           Row{"2024-02-29", 520, "accepted"}}) {
        CAPTURE(row.on, row.tenths);
        CHECK(verdict(state, row.on, row.tenths) == row.verdict);
    }
}

TEST_CASE("a total time fits between the days before and after it", "[timeline][entry]") {
    // 1,100.0 h on 1 March, 1,120.0 h on 1 April, 1,160.0 h on 1 June.
    const Hangar h;
    const auto state = timeline::replay(h.journal, h.id(), h.today);

    struct Row {
        const char* on;
        std::int64_t tenths;
        const char* verdict;
    };

    for (const Row& row : {Row{"2024-06-10", 11'600, ""},
                           Row{"2024-06-10", 11'599, "entry_total_falls"},
                           Row{"2024-06-01", 11'500, ""},  // that morning
                           Row{"2024-06-01", 11'610, ""},  // that evening
                           Row{"2024-06-01", 11'199, "entry_total_falls"},
                           Row{"2024-05-20", 11'600, ""},
                           Row{"2024-05-20", 11'601, "entry_total_above_later"},
                           Row{"2024-06-02", 12'081, "entry_too_fast"},
                           Row{"2024-06-02", 12'080, ""}}) {
        CAPTURE(row.on, row.tenths);
        const base::Problems problems =
            timeline::check_total(state, base::tenths(row.tenths), day(row.on));
        CHECK((problems.empty() ? "" : base::name_of(problems.front().code)) ==
              std::string{row.verdict});
        if (!problems.empty()) CHECK(problems.front().field == "total");
    }
}

TEST_CASE("what the old meter showed is nothing to the new one", "[timeline][entry]") {
    Hangar h;
    facts::Journal journal = h.journal;
    journal.add(h.ann.add(
        day("2024-06-10"), {h.id()}, facts::MeterFitted{"New", {}, {}, base::hours(1165), {}}));
    const auto state = timeline::replay(journal, h.id(), h.today);
    CHECK(verdict(state, "2024-06-20", 0) == "accepted");
    CHECK(verdict(state, "2024-06-20", 2640) == "accepted");  // 264 h in eleven days
    CHECK(verdict(state, "2024-06-20", 2641) == "entry_too_fast");
    CHECK(verdict(state, "2024-06-09", 0) == "entry_before_meter");
}

TEST_CASE("a refusal shows what this meter read and when", "[timeline][entry]") {
    const Hangar h;
    const auto state = timeline::replay(h.journal, h.id(), h.today);
    const auto problems =
        timeline::check_reading(state, base::tenths(1500), day("2024-07-01"), day("2024-07-01"));
    REQUIRE(problems.size() == 1);
    REQUIRE(problems.front().args.size() == 2);
    CHECK(problems.front().args[0].first == base::tenths(1600).seconds);
    CHECK(problems.front().args[1].first == day("2024-06-01").day_number);
}
