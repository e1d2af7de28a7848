// Hours that a meter did not count: dead, rolled over.
#include "engine/timeline/meter_adjust.hpp"

#include "tests/support/stored.hpp"

#include <vector>

#include "engine/timeline/entry.hpp"

using namespace twoclocks;
using base::Trouble;
using facts::AdjustReason;
using facts::MeterAdjusted;
using support::day;
using support::Stored;

namespace {

MeterAdjusted dead(std::int64_t tenths, std::int64_t reads) {
    return {AdjustReason::dead, base::tenths(tenths), base::tenths(reads), {}, {}};
}

/// A meter of four digits and a tenth: it starts again after 999.9 h.
MeterAdjusted rolled(std::int64_t reads) {
    return {AdjustReason::rolled_over, base::hours(1000), base::tenths(reads), {}, {}};
}

std::vector<Trouble> refused(const Stored& s, std::int64_t tenths, const char* on) {
    std::vector<Trouble> out;
    for (const base::Problem& problem :
         timeline::check_reading(s.state(), base::tenths(tenths), day(on), s.today))
        out.push_back(problem.code);
    return out;
}

}  // namespace

TEST_CASE("hours of a dead meter are added from their day on", "[timeline][adjust]") {
    Stored s;
    s.adjusted("2024-06-10", dead(123, 1600));
    CHECK(s.total_tenths() == 11'723);
    CHECK(s.state("2024-06-09").usage.back().total == base::tenths(11'723));
    CHECK(s.state().usage[3].total == base::tenths(11'600));
    CHECK(s.state().cautions.empty());
    s.keep(s.read(s.ann, "2024-06-20", 1650));
    CHECK(s.total_tenths() == 11'773);
    CHECK(s.state().questions.empty());
}

TEST_CASE("hours of a dead meter may be more than a day has", "[timeline][adjust]") {
    Stored s;
    s.keep(s.read(s.ann, "2024-06-09", 1600));
    s.adjusted("2024-06-10", dead(900, 1600));
    s.keep(s.read(s.ann, "2024-06-10", 1601));
    CHECK(s.state().cautions.empty());
    CHECK(s.state().questions.empty());
    CHECK(s.total_tenths() == 12'501);
    CHECK(s.state().certain.back().total == base::tenths(12'501));
}

TEST_CASE("a reading that falls is right when a rollover is on record", "[timeline][adjust]") {
    Stored s;
    const facts::Fact meter = s.keep(
        s.ann.add(day("2024-06-02"),
                  {s.id()},
                  facts::MeterFitted{"Second", {}, base::tenths(9'900), base::tenths(11'600), {}}));
    s.keep(s.ann.write(day("2024-06-05"), {s.id(), meter.id}, support::reads(9'995)));
    CHECK(refused(s, 10, "2024-06-10") == std::vector{Trouble::entry_falls});
    const auto write = [&](const char* on, MeterAdjusted fields) {
        fields.source = "Manual";
        return s.keep(s.ann.write(day(on), {s.id(), meter.id}, fields));
    };
    write("2024-06-06", rolled(2));
    CHECK(s.total_tenths() == 11'702);
    CHECK(s.state().questions.empty());
    CHECK(refused(s, 10, "2024-06-10").empty());
    CHECK(refused(s, 1, "2024-06-10") == std::vector{Trouble::entry_falls});
    s.keep(s.ann.write(day("2024-06-10"), {s.id(), meter.id}, support::reads(10)));
    CHECK(s.total_tenths() == 11'710);
    CHECK(s.state().questions.empty());
    CHECK(s.state().meters.back().last_reads == base::tenths(10));
}

TEST_CASE("on the day of a rollover the upper half was read before it", "[timeline][adjust]") {
    timeline::MeterState meter;
    meter.adjusted.push_back(
        {day("2024-06-06"), base::hours(1000), {}, AdjustReason::rolled_over, {}, {}});
    const auto total = [&](std::int64_t tenths, const char* on) {
        return timeline::total_of(meter, base::tenths(tenths), day(on)).seconds / 360;
    };
    CHECK(total(9'999, "2024-06-05") == 9'999);
    CHECK(total(9'999, "2024-06-06") == 9'999);
    CHECK(total(5'001, "2024-06-06") == 5'001);
    CHECK(total(5'000, "2024-06-06") == 15'000);
    CHECK(total(5'001, "2024-06-07") == 15'001);
    for (const auto& [tenths, on] : {std::pair{9'999, "2024-06-06"},
                                     std::pair{10'002, "2024-06-06"},
                                     std::pair{10'002, "2024-06-07"}}) {
        const auto shown = timeline::shown_at(meter, base::tenths(tenths), day(on));
        CHECK(timeline::total_of(meter, shown, day(on)) == base::tenths(tenths));
    }
}

TEST_CASE("hours added on the day of a reading may have come after it", "[timeline][adjust]") {
    Stored s;
    s.keep(s.ann.write(day("2024-06-10"), {s.id()}, support::renews({s.check.id}, 11'600)));
    s.adjusted("2024-06-10", dead(900, 1600));
    s.keep(s.read(s.ann, "2024-06-11", 1605));
    CHECK(s.state().cautions.empty());
    CHECK(s.total_tenths() == 12'505);
}

TEST_CASE("a new meter starts with its own total", "[timeline][adjust]") {
    Stored s;
    s.adjusted("2024-06-05", dead(50, 1600));
    const facts::Fact meter = s.keep(
        s.ann.add(day("2024-06-10"),
                  {s.id()},
                  facts::MeterFitted{"Second", {}, base::hours(0), base::tenths(11'650), {}}));
    s.keep(s.ann.write(day("2024-06-20"), {s.id(), meter.id}, support::reads(10)));
    CHECK(s.total_tenths() == 11'660);
}

TEST_CASE("what is typed too fast is still refused after hours were added", "[timeline][adjust]") {
    Stored s;
    s.adjusted("2024-06-30", dead(900, 1600));
    CHECK(refused(s, 1600 + 480, "2024-07-01").empty());
    CHECK(refused(s, 1600 + 481, "2024-07-01") == std::vector{Trouble::entry_too_fast});
}
