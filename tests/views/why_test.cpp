// Every figure answers "why?": the facts it rests on, and a sum that a person can check.
#include "engine/views/why.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/hangar_view.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/make_views.hpp"

using namespace twoclocks;
using base::Word;
using facts::Fact;
using support::check_row;
using support::day;
using support::Hangar;
using support::view_of;
using views::AircraftView;
using views::Why;
using views::WhyLine;

namespace {

const WhyLine* line_of(const Why& why, Word word) {
    for (const WhyLine& line : why.lines) {
        if (line.text.word == word) return &line;
    }
    return nullptr;
}

std::string line_said(const Why& why, Word word) {
    const WhyLine* line = line_of(why, word);
    return line == nullptr ? "" : base::say(line->text, {});
}

base::Id fact_of(const Why& why, Word word) {
    const WhyLine* line = line_of(why, word);
    return line == nullptr || !line->fact ? base::Id{} : *line->fact;
}

}  // namespace

TEST_CASE("hours left: the limit, the total, where it counts from, and the sum", "[views][why]") {
    const Hangar h;
    const AircraftView view = view_of(h);
    const Why why = check_row(view, h).hours_left->why;
    CHECK(base::say(why.figure, {}) == "60.0 h");
    CHECK(line_said(why, Word::why_limit_hours) == "The limit is 100.0 h.");
    CHECK(fact_of(why, Word::why_limit_hours) == h.check_limit.id);
    CHECK(line_said(why, Word::why_total_now) ==
          "Total time is 1,160.0 h, recorded on 1 Jun 2024.");
    CHECK(fact_of(why, Word::why_total_now) == h.reading.id);
    CHECK(fact_of(why, Word::why_from_work_hours) == h.work.id);
    CHECK(line_said(why, Word::why_hours_sum) == "100.0 − (1,160.0 − 1,120.0) = 60.0 h.");
    CHECK(line_said(why, Word::why_source_no_revision) == "Source: Manual, revision not given.");
    CHECK(fact_of(why, Word::why_source_no_revision) == h.check_limit.id);
    CHECK(why.lines.back().text.word == Word::why_not_approval);
}

TEST_CASE("calendar left: the anchor, the end, today, and the rule", "[views][why]") {
    const Hangar h;
    const AircraftView view = view_of(h);
    const Why why = check_row(view, h).calendar_left->why;
    CHECK(line_said(why, Word::why_calendar_sum) ==
          "1 Apr 2024 plus the limit is 1 Apr 2025. Today is 1 Jul 2024: 274 days left.");
    CHECK(fact_of(why, Word::why_from_work_day) == h.work.id);
    CHECK(line_of(why, Word::why_rule_exact) != nullptr);
    const Why& overhaul = view.calendar_left.why;
    CHECK(fact_of(overhaul, Word::why_from_anchor_day) == h.overhaul_limit.id);
    CHECK(line_said(overhaul, Word::why_source) == "Source: Manual, revision 7.");
}

TEST_CASE("an estimate and an assumption call themselves so", "[views][why]") {
    Hangar h;
    const Fact work = h.ann.write(day("2024-06-10"), {h.id()}, support::renews({h.check.id}, -1));
    const AircraftView estimated = view_of(h, {work});
    const Why why = check_row(estimated, h).hours_left->why;
    CHECK(line_said(why, Word::why_from_estimate_hours) ==
          "The work names no total time. 1,160.0 h is an estimate for planning only.");
    CHECK(fact_of(why, Word::why_from_estimate_hours) == work.id);
    const Fact bare = h.ann.correct(h.overhaul_limit, support::limit(2200, 144));
    const AircraftView assumed = view_of(h, {bare});
    CHECK(line_of(assumed.hours_left.why, Word::why_from_assumed_hours) != nullptr);
    CHECK(fact_of(assumed.calendar_left.why, Word::why_from_assumed_day) == h.aircraft.id);
    CHECK(line_of(assumed.hours_left.why, Word::why_source_none) != nullptr);
}

TEST_CASE("every why has a title, the figure it explains and a last word", "[views][why]") {
    for (const std::string& file : support::demo_files()) {
        CAPTURE(file);
        const facts::Journal journal = support::journal_from(support::file_text(file));
        const base::Date today = day("2026-11-21");
        for (const auto& state : timeline::replay_fleet(journal, today)) {
            const AircraftView view = views::make_aircraft_view(views::assess(state, today));
            for (const Why& why : views::whys_of(view)) {
                CAPTURE(base::say(why.title, {}));
                CHECK_FALSE(base::say(why.title, {}).empty());
                CHECK_FALSE(base::say(why.figure, {}).empty());
                CHECK_FALSE(why.lines.empty());
                for (const WhyLine& line : why.lines) {
                    CHECK(base::say(line.text, {}).find("{") == std::string::npos);
                    if (line.fact) CHECK(journal.with_id(*line.fact).size() == 1);
                }
            }
        }
    }
}

TEST_CASE("every sum of hours and of counts adds up as it is shown", "[views][why]") {
    std::int32_t sums = 0;
    for (const std::string& file : support::demo_files()) {
        const facts::Journal journal = support::journal_from(support::file_text(file));
        for (const char* today : {"2022-06-30", "2024-06-03", "2026-11-21", "2031-08-31"}) {
            for (const auto& state : timeline::replay_fleet(journal, day(today))) {
                const AircraftView view =
                    views::make_aircraft_view(views::assess(state, day(today)));
                for (const Why& why : views::whys_of(view)) {
                    for (const WhyLine& line : why.lines) {
                        const bool sum = line.text.word == Word::why_hours_sum ||
                                         line.text.word == Word::why_count_sum;
                        if (!sum) continue;
                        ++sums;
                        const auto& args = line.text.args;
                        CAPTURE(file, today, base::say(line.text, {}));
                        CHECK(args[0].first - (args[1].first - args[2].first) == args[3].first);
                    }
                }
            }
        }
    }
    CHECK(sums > 20);
}

TEST_CASE("total time and rate name the meter, the readings and the plan", "[views][why]") {
    Hangar h;
    const Fact plan =
        h.ann.write(day("2024-06-10"), {h.id()}, facts::UsagePlanned{base::hours(20), {}});
    const AircraftView view = view_of(h, {plan});
    CHECK(fact_of(view.total_time.why, Word::why_total_now) == h.reading.id);
    CHECK(fact_of(view.total_time.why, Word::why_meter) == h.meter.id);
    CHECK(line_said(view.total_time.why, Word::why_meter) ==
          "Total = meter + offset: Collective meter read 0.0 h when the total was 1,000.0 h.");
    CHECK(fact_of(view.rate.why, Word::why_rate_plan) == plan.id);
    CHECK(base::say(view.rate.text, {}) == "240.0 h a year, as planned");
    CHECK(line_said(view.rate.why, Word::why_level_days) ==
          "160.0 h were flown on 152 days in service.");
    CHECK(line_said(view.rate.why, Word::why_level_per_year) == "That is 384.5 h in 365.25 days.");
    CHECK(line_of(view.rate.why, Word::why_season_none) != nullptr);
}

TEST_CASE("break-even is shown with what it was made of", "[views][why]") {
    const Hangar h;
    const AircraftView view = view_of(h);
    // 1040 / (7 + 184/365) = 138.59 h a year, cut down.
    CHECK(line_said(view.break_even.why, Word::why_break_even_sum) == "1,040.0 h over 7 y 184 d.");
    CHECK(base::say(view.break_even.text, {}) == "138.5 h a year meets both at once");
}
