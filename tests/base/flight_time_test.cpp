#include "engine/base/flight_time.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/adds.hpp"
#include "tests/support/first_trouble.hpp"

#include <cstdint>
#include <limits>
#include <string>
#include <type_traits>

#include "engine/base/count.hpp"

using namespace twoclocks::base;
using twoclocks::support::adds;
using twoclocks::support::first_trouble;

namespace {

// Hours, landings and bare numbers do not mix.
static_assert(adds<FlightTime, FlightTime>);
static_assert(!adds<FlightTime, Count>);
static_assert(!adds<FlightTime, std::int64_t>);
static_assert(!std::is_convertible_v<std::int64_t, FlightTime>);
static_assert(!std::is_convertible_v<FlightTime, std::int64_t>);

struct Read {
    const char* text;
    std::int64_t seconds;
};

struct Refused {
    const char* text;
    const char* outcome;
};

}  // namespace

TEST_CASE("hours are read in every form people write them", "[base][flight_time]") {
    const std::int64_t half_past = 1234 * 3600 + 1800;
    for (const Read& row : {Read{"0", 0},
                            Read{"1234", 1234 * 3600},
                            Read{"01234", 1234 * 3600},
                            Read{"1234.5", half_past},
                            Read{"1234,5", half_past},
                            Read{"1234.50", half_past},
                            Read{"1234,56", 1234 * 3600 + 2016},
                            Read{"1234.567", 1234 * 3600 + 2041},
                            Read{"1 234", 1234 * 3600},
                            Read{"1 234.5", half_past},
                            Read{"1'234.5", half_past},
                            Read{"1’234,5", half_past},
                            Read{"1\u00A0234,5", half_past},
                            Read{"1\u202F234,5", half_past},
                            Read{"1\u2009234,5", half_past},
                            Read{"1,234.5", half_past},
                            Read{"1.234,5", half_past},
                            Read{"1,234.567", 1234 * 3600 + 2041},
                            Read{"123 456.7", 123456LL * 3600 + 2520},
                            Read{"1234:30", half_past},
                            Read{"1 234:30", half_past},
                            Read{"1,234:30", half_past},
                            Read{"0:01", 60},
                            Read{"12:59", 12 * 3600 + 59 * 60},
                            Read{"0.125", 450},
                            Read{"0,125", 450},
                            Read{"007.125", 7 * 3600 + 450},
                            Read{"  1234.5\t", half_past}}) {
        CAPTURE(row.text);
        const Result<FlightTime> read = parse_flight_time(row.text);
        REQUIRE(first_trouble(read) == "accepted");
        CHECK(read.value().seconds == row.seconds);
    }
}

TEST_CASE("hours that are not plain are refused with what is wrong", "[base][flight_time]") {
    for (const Refused& row : {Refused{"", "hours_empty"},
                               Refused{" \t ", "hours_empty"},
                               Refused{"-", "hours_malformed"},
                               Refused{"abc", "hours_malformed"},
                               Refused{"12a", "hours_malformed"},
                               Refused{"12 h", "hours_malformed"},
                               Refused{".5", "hours_malformed"},
                               Refused{"5.", "hours_malformed"},
                               Refused{"1..5", "hours_malformed"},
                               Refused{"1,.5", "hours_malformed"},
                               Refused{"+5", "hours_malformed"},
                               Refused{"--5", "hours_malformed"},
                               Refused{"5e3", "hours_malformed"},
                               Refused{"1.5 7", "hours_malformed"},
                               Refused{"1 5.5", "hours_malformed"},
                               Refused{"1234 567.5", "hours_malformed"},
                               Refused{"1.234.5", "hours_malformed"},
                               Refused{"1,234 567.5", "hours_malformed"},
                               Refused{"1 2,345.6", "hours_malformed"},
                               Refused{"12:3", "hours_malformed"},
                               Refused{"12:300", "hours_malformed"},
                               Refused{"12:60", "hours_malformed"},
                               Refused{"12:30:15", "hours_malformed"},
                               Refused{"12:30.5", "hours_malformed"},
                               Refused{"１２", "hours_malformed"},
                               Refused{"1\xFF", "hours_malformed"},
                               Refused{"1,234", "hours_ambiguous"},
                               Refused{"1.234", "hours_ambiguous"},
                               Refused{"999,000", "hours_ambiguous"},
                               Refused{"-5", "hours_negative"},
                               Refused{"−5", "hours_negative"},
                               Refused{"-0.1", "hours_negative"},
                               Refused{"-1,234", "hours_negative"},
                               Refused{"-x", "hours_malformed"}}) {
        CAPTURE(row.text);
        CHECK(first_trouble(parse_flight_time(row.text)) == row.outcome);
    }
}

TEST_CASE("an ambiguous figure is plain as soon as one sign is less or more",
          "[base][flight_time]") {
    for (const char* text : {"1234", "1.23", "1,23", "1234.567", "0.234", "1,234.0", "1 234"}) {
        CAPTURE(text);
        CHECK(first_trouble(parse_flight_time(text)) == "accepted");
    }
}

TEST_CASE("hours end where no aircraft has flown", "[base][flight_time]") {
    for (const Refused& row : {Refused{"199999.9", "accepted"},
                               Refused{"200000", "accepted"},
                               Refused{"200000.0", "accepted"},
                               Refused{"200000:00", "accepted"},
                               Refused{"200000.001", "hours_absurd"},
                               Refused{"200000:01", "hours_absurd"},
                               Refused{"200001", "hours_absurd"},
                               Refused{"1,234,567", "hours_absurd"},
                               Refused{"9223372036854775807", "hours_absurd"},
                               Refused{"99999999999999999999999999999999.9", "hours_absurd"},
                               Refused{"99999999999999999999999999:59", "hours_absurd"}}) {
        CAPTURE(row.text);
        CHECK(first_trouble(parse_flight_time(row.text)) == row.outcome);
    }
}

TEST_CASE("a fraction of an hour is cut to the second, however long", "[base][flight_time]") {
    // 0.0002777... h is a second: either side of it, and digits past every integer type.
    for (const Read& row : {Read{"0.0002777777777777777777777777", 0},
                            Read{"0.0002777777777777777777777778", 1},
                            Read{"0.9999999999999999999999999999", 3599},
                            Read{"0.1", 360},
                            Read{"0.01", 36},
                            Read{"0.9997", 3598}}) {
        CAPTURE(row.text);
        CHECK(parse_flight_time(row.text).value().seconds == row.seconds);
    }
}

TEST_CASE("a refused figure is told as it was written, cut when it is long",
          "[base][flight_time]") {
    CHECK(parse_flight_time(" 1,234").problems().front().args.front().text == " 1,234");
    const std::string essay(5000, 'x');
    CHECK(parse_flight_time(essay).problems().front().args.front().text ==
          std::string(40, 'x') + "…");
}

TEST_CASE("tenths are cut down for what is left and up for what is used", "[base][flight_time]") {
    struct Row {
        std::int64_t seconds;
        const char* down;
        const char* up;
    };

    for (const Row& row :
         {Row{0, "0.0", "0.0"},
          Row{1, "0.0", "0.1"},
          Row{359, "0.0", "0.1"},
          Row{360, "0.1", "0.1"},
          Row{361, "0.1", "0.2"},
          Row{3599, "0.9", "1.0"},
          Row{3600, "1.0", "1.0"},
          Row{1044 * 3600, "1044.0", "1044.0"},
          Row{-1, "-0.1", "0.0"},
          Row{-360, "-0.1", "-0.1"},
          Row{-361, "-0.2", "-0.1"},
          Row{-11520, "-3.2", "-3.2"},
          Row{std::numeric_limits<std::int64_t>::max(), "2562047788015215.5", "2562047788015215.6"},
          Row{std::numeric_limits<std::int64_t>::min(),
              "-2562047788015215.6",
              "-2562047788015215.5"}}) {
        CAPTURE(row.seconds);
        CHECK(print_tenths({row.seconds}, Round::down) == row.down);
        CHECK(print_tenths({row.seconds}, Round::up) == row.up);
    }
}

TEST_CASE("every tenth prints and reads back the same", "[base][flight_time]") {
    std::int32_t wrong = 0;
    for (std::int64_t count = 0; count <= most_hours * 10; count += 7) {
        const FlightTime time = tenths(count);
        const Result<FlightTime> back = parse_flight_time(print_tenths(time, Round::down));
        if (!back.ok() || back.value() != time) ++wrong;
        if (print_tenths(time, Round::down) != print_tenths(time, Round::up)) ++wrong;
    }
    CHECK(wrong == 0);
}

TEST_CASE("tenths, hundredths and minutes add up without a rest", "[base][flight_time]") {
    FlightTime sum = parse_flight_time("1043.9").value();
    for (int flight = 0; flight < 6; ++flight)
        sum = sum + parse_flight_time("0:01").value();
    CHECK(sum == hours(1044));
    CHECK(sum - tenths(10440) == FlightTime{});
    CHECK(parse_flight_time("0.01").value().seconds * 100 == hours(1).seconds);
}
