// A figure bears a mark where another answer to an open question would make it another, and only
// there.
#include "engine/views/otherwise.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"
#include "tests/support/random_journal.hpp"
#include "tests/support/said.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/facts/related.hpp"
#include "engine/timeline/question.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/print_views.hpp"
#include "engine/views/return_view.hpp"
#include "engine/views/status_view.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using support::day;
using support::Hangar;
using support::random_today;
using support::RandomJournal;
using support::said;
using views::AircraftView;
using views::Assessed;
using views::Figure;

namespace {

Assessed recorded(const Journal& journal, base::Id aircraft, base::Date today) {
    const auto out = views::assess_recorded(journal, aircraft, today);
    REQUIRE(out);
    return *out;
}

Assessed recorded(const Hangar& h, const std::vector<Fact>& more) {
    Journal journal = h.journal;
    for (const Fact& fact : more)
        journal.add(fact);
    return recorded(journal, h.id(), h.today);
}

struct Named {
    std::string name;
    std::string text;
    bool questioned{false};
};

/// Every figure of the page, by a name that another page of the same aircraft gives it too.
std::vector<Named> figures_of(const AircraftView& view) {
    std::vector<Named> out;
    const auto add = [&](std::string name, const Figure& figure) {
        out.push_back({std::move(name), said(figure.text), figure.questioned});
    };
    add("answer", view.answer);
    add("hours", view.hours_left);
    add("calendar", view.calendar_left);
    add("range", view.range);
    add("total", view.total_time);
    add("rate", view.rate);
    add("even", view.break_even);
    for (const views::DueRow& row : view.due) {
        const std::string item = base::print_id(row.item);
        if (row.hours_left) add(item + " hours", *row.hours_left);
        if (row.calendar_left) add(item + " calendar", *row.calendar_left);
        if (row.count_left) add(item + " count", *row.count_left);
        if (row.wear) add(item + " wear", *row.wear);
        add(item + " likely", row.likely);
    }
    return out;
}

const Named& find(const std::vector<Named>& figures, const std::string& name) {
    const auto found = std::find_if(
        figures.begin(), figures.end(), [&](const Named& figure) { return figure.name == name; });
    CAPTURE(name);
    REQUIRE(found != figures.end());
    return *found;
}

}  // namespace

TEST_CASE("two corrections of a reading mark what is counted in hours, and no day of the calendar",
          "[views][otherwise]") {
    Hangar h;
    const Fact first = h.ann.correct(h.reading, support::reads(1650));
    const Fact second = h.ben.correct(h.reading, support::reads(1700));
    const auto figures = figures_of(views::make_aircraft_view(recorded(h, {first, second})));
    for (const char* name : {"hours", "total", "rate", "answer", "range"}) {
        CAPTURE(name);
        CHECK(find(figures, name).questioned);
    }
    CHECK(find(figures, "hours").text == "1,030.0 h");  // 2,200 - 1,170: the safer of both
    CHECK_FALSE(find(figures, "calendar").questioned);
    CHECK(find(figures, base::print_id(h.check.id) + " hours").questioned);
    CHECK_FALSE(find(figures, base::print_id(h.check.id) + " calendar").questioned);
    for (const auto& more : std::vector<std::vector<Fact>>{{}, {first}}) {
        for (const Named& figure : figures_of(views::make_aircraft_view(recorded(h, more))))
            CHECK_FALSE(figure.questioned);
    }
}

TEST_CASE("an answer takes the marks away, and the why of a marked figure says what it means",
          "[views][otherwise]") {
    Hangar h;
    const Fact first = h.ann.correct(h.reading, support::reads(1650));
    const Fact second = h.ben.correct(h.reading, support::reads(1700));
    const AircraftView open = views::make_aircraft_view(recorded(h, {first, second}));
    CHECK(said(open.hours_left.why.lines.front().text) ==
          "Records disagree: this figure depends on which of them is chosen.");
    const std::vector<facts::Ref> sides{{first.id, 0}, {second.id, 0}};
    const Fact answer = h.ann.answer(h.id(), sides, {sides[0]});
    const AircraftView closed = views::make_aircraft_view(recorded(h, {first, second, answer}));
    CHECK_FALSE(closed.hours_left.questioned);
    CHECK(said(closed.hours_left.text) == "1,035.0 h");
    CHECK(said(closed.hours_left.why.lines.front().text) !=
          said(open.hours_left.why.lines.front().text));
}

TEST_CASE("the fleet, the status, the checks and a day back in service bear the marks too",
          "[views][otherwise]") {
    Hangar h;
    const Assessed open = recorded(h,
                                   {h.ann.correct(h.reading, support::reads(1650)),
                                    h.ben.correct(h.reading, support::reads(1700))});
    CHECK(said(views::make_fleet_view({open}).cards.front().questions) == "1 open question");
    CHECK(views::make_fleet_view({recorded(h, {})}).cards.front().questions.word ==
          base::Word::blank);
    const views::StatusView status = views::make_status_view(h.journal, open);
    CHECK(status.total.questioned);
    CHECK_FALSE(status.landings.questioned);
    std::int32_t hours = 0;
    for (const views::StatusGroup& group : status.groups) {
        for (const views::StatusRow& row : group.rows) {
            for (const views::StatusClock& clock : row.clocks) {
                CHECK(clock.questioned == (clock.edge == views::Edge::hours));
                hours += clock.edge == views::Edge::hours ? 1 : 0;
            }
        }
    }
    CHECK(hours == 2);
    // 13 months on the check is past its calendar, and back in service it shows its hours.
    const views::ReturnView back = views::make_return_view(open, day("2025-08-01"));
    REQUIRE_FALSE(back.groups.empty());
    CHECK(back.groups.front().rows.front().hours_left->questioned);
    CHECK_FALSE(back.groups.front().rows.front().calendar_left->questioned);
}

TEST_CASE("a work that one took back marks the clocks that it renewed", "[views][otherwise]") {
    Hangar h;
    const Fact later = h.ann.correct(
        h.work, support::body(day("2024-05-01"), h.work.body.about, h.work.body.fields));
    const auto figures =
        figures_of(views::make_aircraft_view(recorded(h, {later, h.ben.withdraw(h.work)})));
    const std::string check = base::print_id(h.check.id);
    CHECK(find(figures, check + " hours").questioned);
    CHECK(find(figures, check + " calendar").questioned);
    CHECK_FALSE(find(figures, "hours").questioned);
    CHECK_FALSE(find(figures, "total").questioned);
}

TEST_CASE("no answer to one question changes a figure without a mark", "[views][otherwise]") {
    std::int32_t marked = 0;
    std::int32_t plain = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const RandomJournal random{seed, {10, false, true, true, seed % 2 == 0, seed % 4 == 0}};
        const Journal journal = random.all();
        const auto open = views::assess_recorded(journal, random.aircraft(), random_today);
        if (!open) continue;
        const auto figures = figures_of(views::make_aircraft_view(*open));
        support::Pen judge{"judge", 1'800'000'000'000};
        for (const timeline::Question& question : views::open_questions(*open)) {
            for (std::size_t side = 0; side < question.sides.size(); ++side) {
                Journal answered = journal;
                const facts::Body body = timeline::answer_to(
                    journal, question, side, random.aircraft(), day("2025-01-15"));
                answered.add(judge.write(body.on, body.about, body.fields));
                const auto other =
                    views::assess_recorded(answered, random.aircraft(), random_today);
                if (!other) continue;
                const auto others = figures_of(views::make_aircraft_view(*other));
                for (const Named& figure : figures) {
                    marked += figure.questioned ? 1 : 0;
                    if (figure.questioned) continue;
                    CAPTURE(seed, figure.name);
                    REQUIRE(find(others, figure.name).text == figure.text);
                    ++plain;
                }
            }
        }
    }
    CHECK(marked > 1000);
    CHECK(plain > 1000);
}

TEST_CASE("what bears on one aircraft tells all that the whole journal tells of it",
          "[facts][related]") {
    std::int32_t smaller = 0;
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        const RandomJournal random{seed, {14, true, true, true, true, seed % 2 == 0}};
        // A second aircraft that shares nothing with it.
        Journal whole = random.all();
        support::Pen far{"far"};
        whole.add(far.add(day("2024-01-01"), {}, facts::AircraftAdded{.registration = "FAR-1"}));
        const Journal related = facts::related_to(whole, random.aircraft());
        smaller += related.facts().size() < whole.facts().size() ? 1 : 0;
        const auto told = [&](const Journal& journal) {
            std::string text;
            const auto one = views::assess_recorded(journal, random.aircraft(), random_today);
            if (!one) return text;
            facts::print_json(views::to_json(views::make_aircraft_view(*one), {}), text);
            facts::print_json(views::to_json(views::make_status_view(journal, *one), {}), text);
            for (const timeline::PartState& part : one->parts)
                facts::print_json(
                    views::to_json(views::part_history(journal, part, random_today), {}), text);
            return text;
        };
        CAPTURE(seed);
        REQUIRE(told(related) == told(whole));
    }
    CHECK(smaller == 120);
}
