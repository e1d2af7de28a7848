// Directives in words: rows, whys, sentences, and the status of an aircraft.
#include "catch_amalgamated.hpp"
#include "tests/support/directed.hpp"
#include "tests/support/said.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/views/checks_view.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/status_view.hpp"

using namespace twoclocks;
using facts::Directive;
using facts::Fact;
using support::day;
using support::Directed;
using support::directed;
using support::effective;
using support::instead_of;
using support::said;
using Lines = std::vector<std::string>;

namespace {

views::DueRow row_of(const Directed& s, const Fact& item) {
    const auto view = views::make_aircraft_view(s.assessed(s.first));
    for (const views::DueRow& row : view.due) {
        if (row.item == item.id) return row;
    }
    FAIL("the row is not there");
    return {};
}

Lines why_of(const views::Figure& figure) {
    Lines out;
    for (const views::WhyLine& line : figure.why.lines)
        out.push_back(said(line.text));
    return out;
}

bool says(const Lines& lines, const std::string& line) {
    return std::find(lines.begin(), lines.end(), line) != lines.end();
}

Directive printed() {
    Directive out = effective("D 7", "2024-03-01");
    out.revision = "2";
    out.issuer = "Authority";
    out.applies_why = "Ann, by the parts list";
    return out;
}

}  // namespace

TEST_CASE("a row says number, revision, issuer, method, last and next in hours and by day",
          "[views][directives]") {
    Directed s;
    const Fact item = s.rests(s.first, printed(), directed(100, 12));
    facts::WorkDone work = support::renews({item.id}, 11'200);
    work.what = "Dye penetrant";
    work.reference = "W 12";
    s.keep(s.ann.write(day("2024-04-01"), {s.first}, work));
    const views::DueRow row = row_of(s, item);
    REQUIRE(row.directive.has_value());
    CHECK(said(row.directive->name) == "Directive D 7, revision 2, by Authority");
    CHECK(said(row.directive->standing) == "in force");
    CHECK(said(row.directive->last) == "Last done 1 Apr 2024 at 1,120.0 h");
    CHECK(said(row.directive->method) == "Dye penetrant (W 12)");
    CHECK(said(row.directive->next).at(0) == "Next at 1,220.0 h");
    CHECK(said(row.directive->next).at(1) == "Next by 1 Apr 2025");
    CHECK(row.directive->can_decide);
    CHECK(said(row.source) == "D 7, 2");
}

TEST_CASE("a directive in hours alone says about which day they end", "[views][directives]") {
    Directed s;
    const Fact item = s.rests(s.first, printed(), directed(100));
    const Lines next = said(row_of(s, item).directive->next);
    REQUIRE(next.size() == 2);
    CHECK(next[0] == "Next at 1,200.0 h");
    CHECK(next[1].starts_with("Next about "));
}

TEST_CASE("where it stands is said where no day says more", "[views][directives]") {
    Directed s;
    const Fact old = s.rests(s.first, effective("D 6", "2024-01-01"), directed(100));
    const Fact end = s.asks(s.first, "New mast");
    Directive told = instead_of(old, printed());
    told.ended_by = {end.id};
    const Fact item = s.asks(s.first, "Mast check", directed(100));
    const Fact record = s.told(s.first, item, told);
    CHECK(said(row_of(s, old).likely.text) == "superseded by D 7");
    told.applies = facts::Applicability::unknown;
    s.keep(s.ann.correct(record, told));
    CHECK(said(row_of(s, item).likely.text) == "not known whether it applies");
    CHECK(said(row_of(s, item).directive->next) == Lines{"Next: unknown"});
    told.applies = facts::Applicability::not_applicable;
    s.told(s.first, item, told, "2024-02-01");
    CHECK(said(row_of(s, item).likely.text) == "does not apply here");
    told.applies = facts::Applicability::applies;
    s.told(s.first, item, told, "2024-02-02");
    facts::WorkDone work = support::renews({end.id}, 11'300);
    work.what = "Mast changed";
    s.keep(s.ann.write(day("2024-05-01"), {s.first}, work));
    const views::DueRow row = row_of(s, item);
    CHECK(said(row.likely.text) == "ended by its terminating action");
    CHECK(said(row.directive->method) == "Method: Mast changed");
    CHECK(said(row.directive->next) == Lines{"Next: nothing left to do"});
    CHECK(says(why_of(row.likely), "Its terminating action was done on 1 May 2024: Mast changed"));
}

TEST_CASE("why tells every step from the decision to what acts on it", "[views][directives]") {
    Directed s;
    Directive told = printed();
    told.serials = "1001-1234";
    told.part_number = "GB-1";
    told.before_flight = true;
    const Fact old = s.rests(s.first, effective("D 6", "2024-03-01"), directed(100));
    told.replaces = {old.id};
    const Fact item = s.rests(s.first, told, directed(100));
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const views::DueRow row = row_of(s, item);
    REQUIRE(row.hours_left.has_value());
    const Lines lines = why_of(*row.hours_left);
    for (const char* line : {"Directive D 7, revision 2, by Authority",
                             "A person decided that it applies here.",
                             "Decided: Ann, by the parts list",
                             "Its serials, 1001-1234, say nothing of this one.",
                             "A part of the number GB-1 is here.",
                             "It took effect on 1 Mar 2024: its first interval counts from there.",
                             "By the records no less than 1,100.0 h were flown by then.",
                             "It is to be complied with before further flight.",
                             "It repeats from each compliance, never from the point it was due.",
                             "Earlier work on what it supersedes does not count."}) {
        CAPTURE(line);
        CHECK(says(lines, line));
    }
    CHECK(says(why_of(row_of(s, old).likely), "D 7 supersedes it, applies here and is in effect."));
}

TEST_CASE("why tells of another approved way while it holds and after", "[views][directives]") {
    Directed s;
    const Fact item = s.rests(s.first, printed(), directed(100));
    s.work(item, {s.first}, "2024-03-02", 11'000);
    facts::AlternativeMeans way;
    way.method = "Eddy current";
    way.interval.hours = base::hours(150);
    way.until = day("2024-07-01");
    s.means(s.first, item, way);
    const views::DueRow row = row_of(s, item);
    CHECK(said(row.directive->means) == "Approved other way in use: M 3 of Authority");
    const Lines lines = why_of(*row.hours_left);
    CHECK(says(lines, "An approved other way is in use: M 3 of Authority."));
    CHECK(says(lines, "Method: Eddy current"));
    CHECK(says(lines, "Its interval counts instead of the repeat."));
    CHECK(says(lines, "It holds until 1 Jul 2024. From then on the directive counts as printed."));
    s.today = day("2024-07-02");
    CHECK(row_of(s, item).directive->means.word == base::Word::blank);
    CHECK(says(why_of(*row_of(s, item).hours_left),
               "Approval M 3 ended on 1 Jul 2024: the directive counts as printed."));
}

TEST_CASE("what is to be complied with before flight is the answer of the aircraft",
          "[views][directives]") {
    Directed s;
    Directive told = printed();
    told.before_flight = true;
    const Fact item = s.asks(s.first, "Mast check");
    s.told(s.first, item, told);
    const views::Assessed now = s.assessed(s.first);
    CHECK(now.overall == views::State::before_next_flight);
    const auto view = views::make_aircraft_view(now);
    CHECK(said(view.answer.text) == "Before next flight: Mast check is to be complied with.");
    CHECK(said(views::make_fleet_view({now}).cards.front().sentence) ==
          "Mast check not complied with");
    CHECK(said(row_of(s, item).directive->next) == Lines{"Next: before further flight"});
}

TEST_CASE("the status lists each directive with number, method and what comes next",
          "[views][directives][status]") {
    Directed s;
    const Fact item = s.rests(s.first, printed(), directed(100, 12));
    const Fact old = s.rests(s.first, effective("D 6", "2024-01-01"), directed(50));
    s.told(s.first, item, instead_of(old, printed(), true), "2024-03-02");
    facts::WorkDone work = support::renews({old.id}, 10'500);
    work.what = "Visual check";
    work.reference = "W 3";
    s.keep(s.ann.write(day("2024-02-01"), {s.first}, work));
    const auto status = views::make_status_view(s.journal, s.assessed(s.first));
    const auto group =
        std::find_if(status.groups.begin(), status.groups.end(), [](const views::StatusGroup& one) {
            return said(one.title) == "Directives";
        });
    REQUIRE(group != status.groups.end());
    REQUIRE(group->rows.size() == 2);
    for (const views::StatusRow& row : group->rows) {
        if (row.item == old.id) {
            CHECK(said(row.notes.at(1)) == "superseded by D 7");
            CHECK(row.clocks.empty());
            continue;
        }
        CHECK(said(row.last) == "Last done 1 Feb 2024 at 1,050.0 h");  // credited
        CHECK(said(row.method) == "Visual check (W 3)");
        CHECK(said(row.notes.at(0)) == "Directive D 7, revision 2, by Authority");
        CHECK(said(row.notes.at(2)) == "Next at 1,150.0 h");
        CHECK(said(row.notes.at(3)) == "Next by 1 Feb 2025");
    }
}
