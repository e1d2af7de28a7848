#include "engine/base/region.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <cstdint>
#include <limits>
#include <string>

#include "engine/base/message_args.hpp"

using namespace twoclocks::base;
using twoclocks::support::day;

namespace {

constexpr std::int64_t least_long = std::numeric_limits<std::int64_t>::min();
constexpr std::int64_t most_long = std::numeric_limits<std::int64_t>::max();

const Region day_first{};
const Region month_first{".", ",", DateOrder::month_first};
const Region year_first{".", ",", DateOrder::year_first};
const Region comma{",", "\u202F", DateOrder::day_first};

/// A figure alone, as the region writes it: `{0}` is the whole pattern of this word.
std::string figure(Arg arg, const Region& region = day_first) {
    return say(Message{Word::day_figure, {std::move(arg)}}, region);
}

}  // namespace

TEST_CASE("thousands are grouped from four digits on", "[base][region]") {
    struct Row {
        std::int64_t number;
        const char* text;
        const char* with_comma;
    };

    for (const Row& row : {Row{0, "0", "0"},
                           Row{999, "999", "999"},
                           Row{1000, "1,000", "1\u202F000"},
                           Row{999'999, "999,999", "999\u202F999"},
                           Row{1'000'000, "1,000,000", "1\u202F000\u202F000"},
                           Row{-999, "−999", "−999"},
                           Row{-1000, "−1,000", "−1\u202F000"},
                           Row{most_long,
                               "9,223,372,036,854,775,807",
                               "9\u202F223\u202F372\u202F036\u202F854\u202F775\u202F807"},
                           Row{least_long,
                               "−9,223,372,036,854,775,808",
                               "−9\u202F223\u202F372\u202F036\u202F854\u202F775\u202F808"}}) {
        CHECK(figure(whole_arg(row.number)) == row.text);
        CHECK(figure(whole_arg(row.number), comma) == row.with_comma);
    }
}

TEST_CASE("hours left are cut down and hours used cut up", "[base][region]") {
    CHECK(figure(hours_left_arg(hours(1044))) == "1,044.0");
    CHECK(figure(hours_left_arg(hours(1044)), comma) == "1\u202F044,0");
    CHECK(figure(hours_left_arg({359})) == "0.0");
    CHECK(figure(hours_used_arg({1})) == "0.1");
    CHECK(figure(hours_left_arg({-1})) == "−0.1");
    CHECK(figure(hours_used_arg({-1})) == "0.0");
    CHECK(figure(hours_left_arg({-11520})) == "−3.2");
    CHECK(figure(hours_left_arg({least_long})) == "−2,562,047,788,015,215.6");
}

TEST_CASE("whole hours are cut down, below zero too", "[base][region]") {
    CHECK(figure(hours_whole_arg(hours(2400))) == "2,400");
    CHECK(figure(hours_whole_arg({2400 * 3600 - 1})) == "2,399");
    CHECK(figure(hours_whole_arg({3599})) == "0");
    CHECK(figure(hours_whole_arg({-1})) == "−1");
    CHECK(figure(hours_whole_arg({-3600})) == "−1");
    CHECK(figure(hours_whole_arg({-3601})) == "−2");
    CHECK(figure(hours_whole_arg({least_long})) == "−2,562,047,788,015,216");
}

TEST_CASE("days and months are written in the order of the region", "[base][region]") {
    const Date autumn = day("2029-09-21");
    CHECK(figure(day_arg(autumn), day_first) == "21 Sep 2029");
    CHECK(figure(day_arg(autumn), month_first) == "Sep 21, 2029");
    CHECK(figure(day_arg(autumn), year_first) == "2029 Sep 21");
    CHECK(figure(day_arg(day("2029-01-01"))) == "1 Jan 2029");
    CHECK(figure(day_arg(day("2029-12-31"))) == "31 Dec 2029");
    for (const Region& region : {day_first, month_first, comma}) {
        CHECK(figure(month_arg(autumn), region) == "Sep 2029");
    }
    CHECK(figure({ArgType::day, most_long, 0, {}}) == "31 Dec 9999");
    CHECK(figure({ArgType::month, least_long, 0, {}}) == "Jan 0");
}

TEST_CASE("every month has its own name", "[base][region]") {
    std::string all;
    for (std::int32_t month = 0; month < 12; ++month) {
        all += figure(month_arg(add_months(day("2029-01-15"), month, CalendarRule::exact))) + ' ';
    }
    CHECK(all ==
          "Jan 2029 Feb 2029 Mar 2029 Apr 2029 May 2029 Jun 2029 Jul 2029 Aug 2029 Sep 2029 "
          "Oct 2029 Nov 2029 Dec 2029 ");
}

TEST_CASE("a span is years and days, days alone under a year", "[base][region]") {
    CHECK(figure(span_arg({7, 166, false})) == "7 y 166 d");
    CHECK(figure(span_arg({7, 0, false})) == "7 y 0 d");
    CHECK(figure(span_arg({0, 166, false})) == "166 d");
    CHECK(figure(span_arg({0, 0, false})) == "0 d");
    CHECK(figure(span_arg({0, 3, true})) == "−3 d");
    CHECK(figure(span_arg({1, 3, true})) == "−1 y 3 d");
    CHECK(figure(span_arg({1, 0, true})) == "−1 y 0 d");
    CHECK(figure(span_arg({1200, 3, false})) == "1,200 y 3 d");
    CHECK(figure({ArgType::span, least_long, least_long, {}}) ==
          "−9,223,372,036,854,775,808 y 9,223,372,036,854,775,808 d");
}

TEST_CASE("a word stands inside a sentence", "[base][region]") {
    CHECK(figure(word_arg(Word::state_over)) == "over");
    CHECK(say(Word::state_over, month_first) == "over");
    CHECK(say(Word::blank, day_first) == "");
}

TEST_CASE("somebody's own words go in as they are", "[base][region]") {
    CHECK(figure(text_arg("{0} {1} 1000|x −5")) == "{0} {1} 1000|x −5");
    CHECK(say(Message{Word::source_given, {text_arg("{1}"), text_arg("B")}}, day_first) ==
          "{1}, B");
}

TEST_CASE("one is singular and every other number plural", "[base][region]") {
    struct Row {
        std::int64_t number;
        const char* text;
    };

    for (const Row& row : {Row{-1, "−1 years"},
                           Row{0, "0 years"},
                           Row{1, "1 year"},
                           Row{2, "2 years"},
                           Row{1000, "1,000 years"}}) {
        CHECK(say(Message{Word::box_years, {whole_arg(row.number)}}, day_first) == row.text);
    }
}

TEST_CASE("the first whole number decides on singular or plural", "[base][region]") {
    const Date today = day("2026-05-31");
    const auto sum = [&](std::int64_t days) {
        return say(Message{Word::why_calendar_sum,
                           {day_arg(today), day_arg(today), day_arg(today), whole_arg(days)}},
                   day_first);
    };
    CHECK(sum(1).ends_with(": 1 day left."));
    CHECK(sum(2).ends_with(": 2 days left."));
    // Without a whole number there is no telling: the plural stands.
    CHECK(say(Message{Word::box_years, {text_arg("some")}}, day_first) == "some years");
}

TEST_CASE("a missing argument shows as a dash and a spare one not at all", "[base][region]") {
    CHECK(say(Message{Word::hours_figure, {}}, day_first) == "– h");
    CHECK(say(Word::hours_figure, day_first) == "– h");
    CHECK(say(Message{Word::source_given, {text_arg("A")}}, day_first) == "A, –");
    CHECK(say(Message{Word::state_over, {text_arg("A")}}, day_first) == "over");
}

TEST_CASE("a problem says what happened and what to do about it", "[base][region]") {
    const Problem problem = parse_flight_time("1,234").problems().front();
    CHECK(say_what(problem, day_first) == "“1,234” can be read two ways.");
    CHECK(say_remedy(problem, day_first) ==
          "Leave out the thousands sign, or give fewer decimals: 1234 or 1.23.");
    CHECK(say_remedy(parse_flight_time("-5").problems().front(), day_first) ==
          "Check the sign of “-5”.");
}
