// What a limit says beside its interval stands in its why, in its record and in the cautions.
#include "engine/views/why_limits.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/hangar_view.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/record.hpp"

using namespace twoclocks;
using facts::CarryOver;
using facts::Fact;
using facts::LimitSet;
using support::check_row;
using support::day;
using support::Hangar;
using support::renews;
using support::view_of;
using views::AircraftView;
using views::DueRow;

namespace {

bool has(const views::Why& why, const std::string& text) {
    return std::any_of(why.lines.begin(), why.lines.end(), [&](const views::WhyLine& line) {
        return base::say(line.text, {}) == text;
    });
}

bool cautioned(const AircraftView& view, const std::string& text) {
    return std::any_of(view.cautions.begin(), view.cautions.end(), [&](const auto& caution) {
        return base::say(caution, {}) == text;
    });
}

Fact new_limit(Hangar& h, const LimitSet& limit) {
    return h.ann.write(day("2024-01-02"), h.with(h.check), limit);
}

/// 50 h or 12 months; done at 1,120.0 h on 1 April 2024, now 1,160.0 h on 1 July.
LimitSet settings() {
    LimitSet out = support::limit(50, 12);
    out.anchor_total = base::tenths(10'650);
    out.anchor_on = day("2023-04-10");
    out.tolerance.source = "Programme 3";
    out.source = "Manual";
    return out;
}

}  // namespace

TEST_CASE("a tolerance is told with its source and never counted", "[views][why][limits]") {
    Hangar h;
    LimitSet limit = settings();
    limit.tolerance.hours = base::hours(5);
    limit.tolerance.days = 30;
    const DueRow row = check_row(view_of(h, {new_limit(h, limit)}), h);
    CHECK(base::say(row.hours_left->text, {}) == "10.0 h");
    CHECK(has(row.hours_left->why,
              "It may be flown to 1,175.0 h under tolerance (Programme 3). What is left does not "
              "count that."));
    CHECK(has(row.calendar_left->why,
              "It may be flown until 1 May 2025 under tolerance (Programme 3). What is left does "
              "not count that."));
}

TEST_CASE("the due point is told where an interval counts from it", "[views][why][limits]") {
    Hangar h;
    LimitSet limit = settings();
    limit.tolerance.hours = base::hours(5);
    limit.tolerance.days = 30;
    limit.tolerance.carry_over = CarryOver::from_due;
    const DueRow row = check_row(view_of(h, {new_limit(h, limit)}), h);
    CHECK(has(row.hours_left->why,
              "The work at 1,120.0 h lay within the tolerance: it counts from the due point, "
              "1,115.0 h."));
    CHECK(has(row.hours_left->why, "50.0 − (1,160.0 − 1,115.0) = 5.0 h."));
    CHECK(has(row.calendar_left->why,
              "The work of 1 Apr 2024 lay within the tolerance: it counts from the due point, "
              "10 Apr 2024."));
}

TEST_CASE("records that disagree are told where an interval might carry over",
          "[views][why][limits]") {
    Hangar h;
    LimitSet limit = settings();
    limit.tolerance.hours = base::hours(5);
    limit.tolerance.days = 30;
    limit.tolerance.carry_over = CarryOver::from_due;
    const DueRow row = check_row(view_of(h,
                                         {new_limit(h, limit),
                                          h.ann.correct(h.work, renews({h.check.id}, 11'190)),
                                          h.ben.correct(h.work, renews({h.check.id}, 11'180))}),
                                 h);
    CHECK(has(row.hours_left->why,
              "Records disagree. Until you choose, it counts from the earliest it could, "
              "1,113.0 h."));
    CHECK(has(row.calendar_left->why,
              "Records disagree. Until you choose, it counts from the earliest it could, "
              "2 Mar 2024."));
}

TEST_CASE("excess, overfly and its violation", "[views][why][limits]") {
    Hangar h;
    LimitSet limit = settings();
    limit.tolerance.overfly_hours = base::hours(10);
    const Fact set = new_limit(h, limit);
    const AircraftView within = view_of(h, {set});
    const DueRow row = check_row(within, h);
    CHECK(has(row.hours_left->why,
              "The work at 1,120.0 h was late. The excess counts: this interval runs from "
              "1,115.0 h."));
    CHECK(has(row.hours_left->why,
              "To reach the place of inspection it may be flown to 1,175.0 h (Programme 3). The "
              "excess counts in the next interval."));
    CHECK(within.cautions.empty());
    const AircraftView past = view_of(h, {set, h.read(h.ann, "2024-06-10", 1751)});
    CHECK(check_row(past, h).state == views::State::over);
    CHECK(cautioned(past,
                    "Check: flown 10.1 h past. On the way to the inspection 10.0 h are allowed at "
                    "most."));
}

TEST_CASE("a permit is named, the state stays over, and its end is a caution",
          "[views][why][permit]") {
    Hangar h;
    LimitSet limit = settings();
    limit.hours = base::hours(30);
    facts::Permit permit{"Authority", "P 7", "Home to works", base::hours(15), day("2024-07-01")};
    const Fact set = new_limit(h, limit);
    const auto with = [&](const facts::Permit& one) {
        return view_of(h, {set, h.ann.write(day("2024-06-02"), h.with(h.check), one)});
    };
    const AircraftView covered = with(permit);
    const DueRow row = check_row(covered, h);
    CHECK(row.state == views::State::over);
    CHECK(base::say(row.hours_left->text, {}) == "−10.0 h");
    CHECK(has(row.hours_left->why, "Permit P 7 of Authority for Home to works."));
    CHECK(has(row.hours_left->why,
              "The permit allows 15.0 h past the limit; 10.0 h were flown past it."));
    CHECK(has(row.hours_left->why, "The permit ends on 1 Jul 2024."));
    CHECK(has(row.hours_left->why,
              "A permit renews nothing: past the limit the state stays over, and the hours "
              "count."));
    CHECK_FALSE(cautioned(covered, "Check: the permit ended on 1 Jul 2024."));
    permit.until = day("2024-06-30");
    permit.hours = base::hours(9);
    const AircraftView ended = with(permit);
    CHECK(cautioned(ended, "Check: the permit ended on 30 Jun 2024."));
    CHECK(cautioned(ended, "Check: flown 10.0 h past the limit. The permit allows 9.0 h."));
    permit.route.clear();
    CHECK(has(check_row(with(permit), h).hours_left->why, "Permit of Authority."));
}

TEST_CASE("first, once, later and cap are told", "[views][why][limits]") {
    Hangar h;
    LimitSet limit = settings();
    limit.combine = facts::Combine::later;
    limit.once = true;
    limit.first.hours = base::hours(500);
    limit.first.days = 2000;
    limit.cap = {base::hours(600), {}, 2500, base::Count{700}, {}};
    const AircraftView view = view_of(h, {new_limit(h, limit), h.ann.withdraw(h.work)});
    const DueRow row = check_row(view, h);
    const views::Why& hours = row.hours_left->why;
    CHECK(has(hours, "This is the first interval. After it the repeat counts."));
    CHECK(has(hours, "Once it is done, nothing is left to do."));
    CHECK(has(hours, "The later of its clocks stops it."));
    CHECK(has(hours, "But not after 1,665.0 h total time: 505.0 h left."));
    CHECK(has(hours, "But not after 12 Feb 2030."));
    CHECK(has(hours,
              "It has one more end that nothing is allowed past, and where that counts from is "
              "not known."));
    CHECK(has(row.calendar_left->why, "The limit is 2,000 days."));
    CHECK(has(row.likely.why, "The later of its clocks stops it."));
    CHECK(has(row.likely.why, "But not after 12 Feb 2030."));
    const DueRow done = check_row(view_of(h, {new_limit(h, limit)}), h);
    CHECK(base::say(done.likely.text, {}) == "nothing left to do");
    CHECK(done.state == views::State::nothing_due);
}

TEST_CASE("a record tells every setting", "[views][record][limits]") {
    Hangar h;
    LimitSet limit = settings();
    limit.combine = facts::Combine::later;
    limit.once = true;
    limit.first = {base::hours(500), 24, {}, base::Count{5}, base::Count{6}};
    limit.cap = {base::hours(600), {}, 90, base::Count{7}, base::Count{1}};
    limit.tolerance = {
        base::hours(5), 30, 105, base::hours(9), 8, CarryOver::from_due, base::hours(10), "P 3"};
    std::string said;
    for (const base::Message& line : views::record_lines(new_limit(h, limit)))
        said += base::say(line, {}) + '\n';
    for (const char* text : {"First after 500.0 h",
                             "First after 24 months",
                             "First after 5 landings",
                             "First after 6 engine starts",
                             "Once, no repeat",
                             "The later of its clocks",
                             "Not after 600.0 h",
                             "Not after 90 days",
                             "Not after 7 landings",
                             "Not after 1 engine start",
                             "Tolerance 5.0 h",
                             "Tolerance 30 days",
                             "Tolerance 10.5 %",
                             "At most 9.0 h of tolerance",
                             "At most 8 days of tolerance",
                             "Within the tolerance the next counts from the due point",
                             "En route to the inspection 10.0 h past",
                             "Tolerance by: P 3"}) {
        CAPTURE(text, said);
        CHECK(said.find(std::string{text} + '\n') != std::string::npos);
    }
    const Fact permit = h.ann.write(
        day("2024-06-02"),
        h.with(h.check),
        facts::Permit{"Authority", "P 7", "Home to works", base::hours(5), day("2024-07-01")});
    CHECK(base::say(views::record_what(permit.body), {}) == "Permit past a limit: Authority");
    std::string lines;
    for (const base::Message& line : views::record_lines(permit))
        lines += base::say(line, {}) + '\n';
    CHECK(lines.find("Reference: P 7\nRoute: Home to works\nAllows 5.0 h past the limit\n"
                     "Last day 1 Jul 2024\n") == 0);
}

TEST_CASE("a life box of days, and hours that count from a due point still to come",
          "[views][box][limits]") {
    Hangar h;
    LimitSet life = support::limit(170, 0);
    life.days = 4000;
    life.anchor_total = base::hours(1000);
    life.anchor_on = day("2020-01-01");
    life.source = "Manual";
    life.tolerance = {base::hours(20), {}, {}, {}, {}, CarryOver::from_due, {}, "Programme 3"};
    const Fact set = h.ann.write(day("2024-01-02"), h.with(h.overhaul), life);
    const Fact done = h.ann.write(day("2024-06-01"), {h.id()}, renews({h.overhaul.id}, 11'600));
    const AircraftView before = view_of(h, {set});
    CHECK(base::say(before.box.width, {}) == "4,000 days");
    CHECK(base::say(before.box.spoken, {}).find("160.0 h used of 170 h") != std::string::npos);
    // Due at 1,170.0 h, done at 1,160.0 h: the next is due at 1,340.0 h, 180.0 h away.
    const AircraftView after = view_of(h, {set, done});
    CHECK(base::say(after.hours_left.text, {}) == "180.0 h");
    CHECK(has(after.hours_left.why, "170.0 − (1,160.0 − 1,170.0) = 180.0 h."));
    CHECK(base::say(after.box.spoken, {}).find(": 0.0 h used of 170 h") != std::string::npos);
}

TEST_CASE("a passed cap is what the sentence speaks of", "[views][limits]") {
    Hangar h;
    LimitSet limit = settings();
    limit.combine = facts::Combine::later;
    limit.cap.days = 60;
    const AircraftView view = view_of(h, {new_limit(h, limit)});
    CHECK(check_row(view, h).state == views::State::over);
    CHECK(base::say(view.answer.text, {}) ==
          "Over: Check ended on 31 May 2024 and it has flown since.");
}
