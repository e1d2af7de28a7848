#include "catch_amalgamated.hpp"
#include "tests/support/said.hpp"
#include "tests/support/stores.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/views/make_views.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/record.hpp"

using namespace twoclocks;
using facts::Fact;
using support::day;
using support::said;
using support::Stores;
using views::PartHistoryView;
using Ids = std::vector<base::Id>;

TEST_CASE("the history of a serial lists every host, newest first", "[views][parts]") {
    Stores s;
    const Fact on = s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    const Fact off = s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    const Fact again = s.fit(s.gearbox, s.second, "2024-04-01", -1);
    const PartHistoryView view = views::part_history(s.journal, s.gearbox.id, s.today);
    CHECK(said(view.name) == "Main gearbox, serial 7");
    CHECK(said(view.where) == "Fitted to ISLE-2: Main");
    CHECK(said(view.since_new.text) == "About 450.0 h since new, an estimate");
    CHECK(said(view.since_overhaul.text) == "About 250.0 h since overhaul, an estimate");
    REQUIRE(view.rows.size() == 2);
    CHECK(said(view.rows[0].host_name) == "ISLE-2");
    CHECK(said(view.rows[0].days) == "Since 1 Apr 2024");
    CHECK(said(view.rows[0].gained) == "about 70.0 h, an estimate");
    CHECK(view.rows[0].facts == Ids{again.id});
    CHECK(said(view.rows[1].host_name) == "ISLE-1");
    CHECK(said(view.rows[1].position) == "Main");
    CHECK(said(view.rows[1].days) == "10 Jan 2024 to 1 Mar 2024");
    CHECK(said(view.rows[1].gained) == "80.0 h");
    CHECK(view.rows[1].facts == Ids{on.id, off.id});
    CHECK(view.troubles.empty());
    CHECK_FALSE(view.unknown);
}

TEST_CASE("the history says where a part is that is on no aircraft", "[views][parts]") {
    Stores s;
    CHECK(said(views::part_history(s.journal, s.gearbox.id, s.today).where) == "On the shelf");
    s.keep(s.ann.write(
        day("2024-02-01"), {s.gearbox.id}, facts::PartMoved{"Shelf 3", {}, {}, {}, {}}));
    CHECK(said(views::part_history(s.journal, s.gearbox.id, s.today).where) ==
          "On the shelf: Shelf 3");
    s.keep(s.ann.write(day("2024-02-02"), {s.gearbox.id}, facts::PartMoved{{}, {}, "Ben", {}, {}}));
    CHECK(said(views::part_history(s.journal, s.gearbox.id, s.today).where) == "Lent to Ben");
    s.keep(s.ann.write(day("2024-02-03"), {s.gearbox.id}, facts::PartScrapped{"Cut in two"}));
    CHECK(said(views::part_history(s.journal, s.gearbox.id, s.today).where) ==
          "Scrapped on 3 Feb 2024");
}

TEST_CASE("the history names the records of a trouble, and what nobody knows", "[views][parts]") {
    Stores s;
    const Fact inside = s.add(Stores::plate("8"));
    s.fit(inside, s.gearbox.id, "2024-02-01", 3'000);
    const Fact lost = s.fit(inside, support::id_of(77), "2024-02-02", 0);
    const PartHistoryView view = views::part_history(s.journal, inside.id, s.today);
    REQUIRE(view.rows.size() == 2);
    CHECK(said(view.rows[0].host_name) == "something not recorded");
    CHECK(said(view.rows[0].gained) == "hours unknown");
    CHECK(said(view.rows[1].host_name) == "Main gearbox 7");
    CHECK(view.rows[1].aircraft.empty());
    CHECK(said(view.since_new.text) == "Time since new unknown");
    REQUIRE(view.troubles.size() == 2);
    CHECK(view.trouble_facts[1] == Ids{lost.id});
}

TEST_CASE("the history says on which aircraft an assembly carried a part", "[views][parts]") {
    Stores s;
    const Fact inside = s.add(Stores::plate("8"));
    s.fit(inside, s.gearbox.id, "2024-01-20", 3'000);
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    s.fit(s.gearbox, s.second, "2024-04-01", 5'800);
    s.remove(inside, s.gearbox.id, "2024-05-01", -1);
    const PartHistoryView view = views::part_history(s.journal, inside.id, s.today);
    REQUIRE(view.rows.size() == 1);
    REQUIRE(view.rows[0].aboard.size() == 2);
    CHECK(said(view.rows[0].aboard[0].aircraft_name) == "ISLE-1");
    CHECK(said(view.rows[0].aboard[0].days) == "20 Jan 2024 to 1 Mar 2024");
    CHECK(view.rows[0].aboard[1].aircraft == s.second);
    CHECK(said(view.rows[0].aboard[1].days) == "1 Apr 2024 to 1 May 2024");
}

TEST_CASE("the sides of a question about a part are told apart by the fields that differ",
          "[views][parts]") {
    Stores s;
    facts::PartAdded one = Stores::plate("7");
    one.tsn = base::hours(310);
    facts::PartAdded other = Stores::plate("7");
    other.tsn = base::hours(320);
    other.papers = "Tag 9";
    s.keep(s.ann.correct(s.gearbox, one));
    s.keep(s.ben.correct(s.gearbox, other));
    const PartHistoryView view = views::part_history(s.journal, s.gearbox.id, s.today);
    REQUIRE(view.questions.size() == 1);
    std::vector<std::string> told;
    for (const auto& side : view.questions[0].sides) {
        CHECK(said(side.value) == "Part added: Main gearbox");
        std::string lines;
        for (const base::Message& line : side.differs)
            lines += said(line) + '/';
        told.push_back(lines);
    }
    std::sort(told.begin(), told.end());
    CHECK(told ==
          std::vector<std::string>{"310.0 h since new/", "320.0 h since new/Papers: Tag 9/"});
}

TEST_CASE("a record of a part names what it was fitted to, also after a correction",
          "[views][parts]") {
    Stores s;
    const Fact fit = s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    facts::PartFitted later;
    later.host_total = base::tenths(10'210);
    const Fact corrected = s.keep(s.ben.correct(fit, later));
    CHECK(said(views::make_history_row(s.journal, fit).detail) == "Main gearbox 7, ISLE-1");
    std::string lines;
    for (const base::Message& line : views::record_lines(corrected))
        lines += said(line) + '/';
    CHECK(lines.find("at 1,021.0 h of what it is fitted to/") != std::string::npos);
}

TEST_CASE("records of parts are told in words", "[views][parts]") {
    Stores s;
    const Fact fit = s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    const Fact off = s.remove(s.gearbox, s.first, "2024-03-01", -1, true);
    CHECK(said(views::record_what(s.gearbox.body)) == "Part added: Main gearbox");
    CHECK(said(views::record_detail(s.gearbox.body)) == "number GB-1, serial 7");
    CHECK(said(views::record_what(fit.body)) == "Part fitted: Main");
    CHECK(said(views::record_detail(fit.body)) == "at 1,020.0 h of what it is fitted to");
    CHECK(said(views::record_what(off.body)) == "Part taken off for a time");
    CHECK(said(views::record_detail(off.body)) == "hours of what it is fitted to not given");
    std::string lines;
    for (const base::Message& line : views::record_lines(s.gearbox))
        lines += said(line) + '/';
    CHECK(lines.find("300.0 h since new/100.0 h since overhaul/Overhauls 1/") != std::string::npos);
}
