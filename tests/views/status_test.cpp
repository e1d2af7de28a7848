// The status of an aircraft: what 14 CFR 91.417(a)(2) [S, rule text] asks for, clock by clock, and
// what is missing.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/said.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/timeline/parts.hpp"
#include "engine/views/status_view.hpp"

using namespace twoclocks;
using support::day;
using support::Pen;
using support::said;
using views::StatusView;

namespace {

facts::LimitSet sourced(std::int64_t hours, std::int32_t months) {
    facts::LimitSet out = support::limit(hours, months);
    out.source = "Manual";
    return out;
}

/// An aircraft of 2019 with an overhaul limit, a directive, a permit past it and a gearbox.
struct StatusHangar {
    StatusHangar() {
        facts::AircraftAdded added;
        added.registration = "ISLE-1";
        aircraft = keep(pen.add(day("2019-04-11"), {}, added));
        facts::MeterFitted meter;
        const base::Id fitted = keep(pen.add(day("2019-04-11"), {aircraft}, meter));
        overhaul = item("Whole overhaul", facts::ItemRole::overhaul, sourced(2200, 144));
        keep(pen.write(day("2019-04-11"), {aircraft, overhaul}, done()));
        facts::LimitSet limit = support::limit(100, 0);
        limit.limit_class = facts::LimitClass::directive;
        limit.source.clear();
        directive = item("Tail boom crack check", facts::ItemRole::other, limit);
        keep(pen.write(day("2026-01-05"),
                       {aircraft, directive},
                       facts::Permit{"Authority", "P 7", {}, base::hours(5), {}}));
        facts::PartAdded gearbox;
        gearbox.part_number = "GB-1";
        gearbox.serial = "7";
        gearbox.name = "Main gearbox";
        gearbox.tsn = base::hours(900);
        part = keep(pen.add(day("2019-04-11"), {}, gearbox));
        keep(pen.write(day("2019-04-11"),
                       {part, aircraft},
                       facts::PartFitted{"main", base::hours(0), {}, {}, {}, {}}));
        keep(pen.write(day("2026-11-20"), {aircraft, fitted}, support::reads(8066)));
    }

    base::Id keep(facts::Fact fact) {
        facts.push_back(fact);
        return fact.id;
    }

    base::Id item(const char* name, facts::ItemRole role, const facts::LimitSet& limit) {
        const base::Id id =
            keep(pen.add(day("2019-04-11"), {aircraft}, facts::ItemAdded{name, role, {}}));
        keep(pen.write(day("2019-04-11"), {aircraft, id}, limit));
        return id;
    }

    [[nodiscard]] facts::WorkDone done() const {
        facts::WorkDone work = support::renews({overhaul}, 0);
        work.what = "Overhauled";
        work.reference = "W 12";
        return work;
    }

    [[nodiscard]] StatusView status() const {
        const facts::Journal journal = support::journal_of(facts);
        const base::Date today = day("2026-11-25");
        return make_status_view(journal,
                                views::assess(timeline::replay(journal, aircraft, today),
                                              today,
                                              timeline::parts_of(journal, aircraft, today)));
    }

    Pen pen{"one"};
    std::vector<facts::Fact> facts;
    base::Id aircraft;
    base::Id overhaul;
    base::Id directive;
    base::Id part;
};

}  // namespace

TEST_CASE("limit, used, left and next stand for each clock", "[views][status]") {
    const StatusView view = StatusHangar{}.status();
    REQUIRE(view.groups.size() == 2);
    CHECK(said(view.groups[0].title) == "Overhaul");
    const views::StatusRow& row = view.groups[0].rows.at(0);
    CHECK(said(row.last) == "Last done 11 Apr 2019 at 0.0 h");
    CHECK(said(row.method) == "Overhauled (W 12)");
    REQUIRE(row.clocks.size() == 2);
    CHECK(said(row.clocks[0].limit) == "2,200.0 h");
    CHECK(said(row.clocks[0].used) == "806.6 h");
    CHECK(said(row.clocks[0].left) == "1,393.4 h");
    CHECK(said(row.clocks[0].next) == "at 2,200.0 h");
    // From 11 April 2019: 7 years to 11 April 2026, then 228 days to 25 November.
    CHECK(said(row.clocks[1].limit) == "144 months");
    CHECK(said(row.clocks[1].used) == "7 y 228 d");
    CHECK(said(row.clocks[1].left) == "4 y 137 d");
    CHECK(said(row.clocks[1].next) == "11 Apr 2031");
    CHECK(row.clocks[0].edge == views::Edge::hours);
    CHECK(row.clocks[1].edge == views::Edge::calendar);
}

TEST_CASE("a directive stands by itself with its permit, and a passed clock says so",
          "[views][status]") {
    const StatusView view = StatusHangar{}.status();
    CHECK(said(view.groups[1].title) == "Directives");
    const views::StatusRow& row = view.groups[1].rows.at(0);
    CHECK(row.clocks.at(0).over);
    CHECK(said(row.last) == "No work recorded");
    CHECK(row.method.word == base::Word::blank);
    REQUIRE(row.notes.size() == 1);
    CHECK(said(row.notes[0]) == "Permit to fly past it: Authority P 7");
}

TEST_CASE("what is not on record is listed, and nothing else", "[views][status]") {
    StatusHangar hangar;
    const auto missing = [&] {
        std::vector<std::string> out;
        for (const base::Message& one : hangar.status().missing)
            out.push_back(said(one));
        return out;
    };
    CHECK(missing() ==
          std::vector<std::string>{"Day of manufacture",
                                   "Tail boom crack check: source of the limit",
                                   "Main gearbox: release certificate or other papers"});
    hangar.item("Seat belts", facts::ItemRole::inspection, sourced(0, 12));
    const base::Id bare = hangar.keep(
        hangar.pen.add(day("2020-01-01"),
                       {hangar.aircraft},
                       facts::ItemAdded{"Fire extinguisher", facts::ItemRole::inspection, {}}));
    CHECK_FALSE(bare.empty());
    CHECK(missing().size() == 5);
    const std::vector<std::string> now = missing();
    for (const char* added :
         {"Seat belts: figures to work it out from", "Fire extinguisher: no limit"}) {
        CAPTURE(added);
        CHECK(std::count(now.begin(), now.end(), added) == 1);
    }
}

TEST_CASE("parts stand with their hours and papers", "[views][status]") {
    const StatusView view = StatusHangar{}.status();
    REQUIRE(view.parts.size() == 1);
    CHECK(said(view.parts[0].plate) == "Number GB-1, serial 7, main");
    CHECK(said(view.parts[0].since_new.text) == "1,706.6 h since new");
    CHECK(view.parts[0].papers_missing);
}

TEST_CASE("every clock of the status answers why", "[views][status]") {
    const StatusView view = StatusHangar{}.status();
    const std::vector<views::Why> whys = whys_of(view);
    REQUIRE(whys.size() == 3);
    for (const views::Why& why : whys)
        CHECK(why.lines.size() > 1);
    CHECK(said(whys[0].figure) == "1,393.4 h");
}
