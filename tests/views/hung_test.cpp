// Limits that hang on a part, as people see them: on the aircraft the part is on, and on the shelf.
#include "tests/support/hung.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/said.hpp"

#include <string>
#include <vector>

#include "engine/views/checks_view.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/part_views.hpp"

using namespace twoclocks;
using base::hours;
using facts::Fact;
using facts::ItemRole;
using support::day;
using support::Hung;
using support::life;
using support::limit;
using support::said;
using support::Stores;
using views::Assessed;
using views::DueRow;
using views::State;

namespace {

Assessed assessed(const Hung& s, base::Id aircraft) {
    return views::assess(timeline::replay(s.journal, aircraft, s.today),
                         s.today,
                         timeline::parts_of(s.journal, aircraft, s.today));
}

std::vector<DueRow> due(const Hung& s, base::Id aircraft) {
    return views::make_aircraft_view(assessed(s, aircraft)).due;
}

/// A why, line by line, without the two lines that every limit ends with.
std::string lines(const views::Why& why) {
    std::string out;
    for (std::size_t at = 0; at + 2 < why.lines.size(); ++at)
        out += said(why.lines[at].text) + '\n';
    return out;
}

/// Flown one hour a day: 30.4375 h a month.
void plan_flying(Hung& s, base::Id aircraft) {
    s.keep(s.ann.write(
        day("2024-01-01"), {aircraft}, facts::UsagePlanned{base::FlightTime{109'575}, {}}));
}

}  // namespace

TEST_CASE("a hung limit shows on the aircraft that the part is on, and names the part",
          "[views][hung]") {
    Hung s;
    const Fact item = s.item(s.gearbox, ItemRole::component, life(1000));
    CHECK(due(s, s.first).empty());
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    const std::vector<DueRow> rows = due(s, s.first);
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].item == item.id);
    CHECK(rows[0].name == "Main gearbox 7: Limit");
    CHECK(rows[0].part == s.gearbox.id);
    CHECK(said(rows[0].part_name) == "Main gearbox, serial 7: Main");
    CHECK(said(rows[0].hours_left->text) == "560.0 h");
    CHECK(due(s, s.second).empty());
    s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    s.fit(s.gearbox, s.second, "2024-04-01", 5'700);
    CHECK(due(s, s.first).empty());
    CHECK(said(due(s, s.second).front().hours_left->text) == "570.0 h");
    s.remove(s.gearbox, s.second, "2024-06-10", 6'200);
    CHECK(due(s, s.second).empty());
}

TEST_CASE("a limit on a part inside an assembly shows on the aircraft", "[views][hung]") {
    Hung s;
    facts::PartAdded plate = Stores::plate("8");
    plate.tsn = hours(50);
    plate.name = "Magneto";
    const Fact inside = s.add(plate);
    s.item(inside, ItemRole::inspection, limit(500, 0));
    s.fit(inside, s.gearbox.id, "2024-01-05", 3'000);
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    const std::vector<DueRow> rows = due(s, s.first);
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].name == "Magneto 8: Limit");
    CHECK(said(rows[0].hours_left->text) == "310.0 h");
    views::ChecksAsked asked;
    asked.search = "magneto";
    const auto checks = views::make_checks_view(assessed(s, s.first), asked);
    REQUIRE(checks.groups.size() == 1);
    CHECK(checks.groups[0].rows[0].due.part == inside.id);
}

TEST_CASE("why of a life that hangs on a part adds up as it is printed", "[views][why][hung]") {
    Hung s;
    s.item(s.gearbox, ItemRole::component, life(1000));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    s.fit(s.gearbox, s.second, "2024-04-01", 5'700);
    CHECK(lines(due(s, s.second).front().hours_left->why) ==
          "The limit is 1,000.0 h.\n"
          "It hangs on Main gearbox, serial 7, fitted now as Main, and goes where the part goes.\n"
          "Its papers account for 300.0 h.\n"
          "From 10 Jan 2024 to 1 Mar 2024 it gained 80.0 h.\n"
          "Since 1 Apr 2024 it has gained 50.0 h.\n"
          "300.0 + 130.0 = 430.0 h since new.\n"
          "The part has 430.0 h since new.\n"
          "It counts from new. Only the maker’s rebuild starts it again.\n"
          "1,000.0 − (430.0 − 0.0) = 570.0 h.\n");
}

TEST_CASE("why of a check that hangs on a part names the part's hours at its work",
          "[views][why][hung]") {
    Hung s;
    const Fact item = s.item(s.gearbox, ItemRole::inspection, limit(100, 0));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    s.work(item, {s.first, s.gearbox.id, item.id}, "2024-03-10", 11'200);
    s.keep(s.ann.write(day("2024-06-20"), {s.first, s.first_meter}, [] {
        facts::Reading reading;
        reading.reads = base::FlightTime{165 * 3600 + 60};
        return reading;
    }()));
    const DueRow row = due(s, s.first).front();
    CHECK(lines(row.hours_left->why) ==
          "The limit is 100:00 h.\n"
          "It hangs on Main gearbox, serial 7, fitted now as Main, and goes where the part goes.\n"
          "Its papers account for 300:00 h.\n"
          "Since 10 Jan 2024 it has gained 145:01 h.\n"
          "300:00 + 145:01 = 445:01 h since new.\n"
          "The part has 445:01 h since new.\n"
          "It counts from 400:00 h of the part, when the work was done.\n"
          "100:00 − (445:01 − 400:00) = 54:59 h.\n"
          "Shown as 54.9 h, rounded down.\n");
    CHECK(said(row.hours_left->text) == "54.9 h");
}

TEST_CASE("why of an overhaul by papers, of no life, and of what is disputed",
          "[views][why][hung]") {
    Hung s;
    s.item(s.gearbox, ItemRole::overhaul, limit(2000, 0));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    CHECK(lines(due(s, s.first).front().hours_left->why) ==
          "The limit is 2,000.0 h.\n"
          "It hangs on Main gearbox, serial 7, fitted now as Main, and goes where the part goes.\n"
          "The part has 240.0 h since overhaul.\n"
          "No overhaul is recorded here: the papers’ time since overhaul counts.\n"
          "2,000.0 − (240.0 − 0.0) = 1,760.0 h.\n");
    Hung lost;
    facts::PartAdded plate = Stores::plate("9");
    const Fact part = lost.add(plate);
    lost.item(part, ItemRole::component, life(1000));
    lost.fit(part, lost.first, "2024-01-10", 10'200);
    CHECK(lines(due(lost, lost.first).front().hours_left->why) ==
          "The limit is 1,000.0 h.\n"
          "It hangs on Main gearbox, serial 9, fitted now as Main, and goes where the part goes.\n"
          "Time since new of the part is not known.\n"
          "Its history is not known, so no life was left of it when its records here begin.\n"
          "By what is recorded of it, it is 140.0 h past its limit.\n");
    plate.tsn = hours(400);
    lost.keep(lost.ben.correct(part, plate));
    plate.tsn.reset();
    plate.owner = "Ann";
    lost.keep(lost.ann.correct(part, plate));
    CHECK(lines(due(lost, lost.first).front().hours_left->why) ==
          "The limit is 1,000.0 h.\n"
          "It hangs on Main gearbox, serial 9, fitted now as Main, and goes where the part goes.\n"
          "Records of the part disagree, so its hours are not known until you choose.\n");
}

TEST_CASE("why of a calendar says which day of the part it counts from", "[views][why][hung]") {
    Hung s;
    facts::PartAdded plate = Stores::plate("9");
    plate.tsn = hours(0);
    plate.cured = day("2020-01-10");
    const Fact part = s.add(plate);
    facts::LimitSet years = life(0, 120);
    years.anchor = facts::Anchor::cure;
    s.item(part, ItemRole::component, years);
    years.anchor = facts::Anchor::shipment;
    s.item(part, ItemRole::component, years);
    s.fit(part, s.first, "2024-01-10", 10'200);
    const std::vector<DueRow> rows = due(s, s.first);
    REQUIRE(rows.size() == 2);
    const std::string cured = lines(rows[0].calendar_left->why);
    CHECK(cured.find("It counts from 10 Jan 2020: cure.\n") != std::string::npos);
    CHECK(cured.find("10 Jan 2020 plus the limit is 10 Jan 2030.") != std::string::npos);
    CHECK(lines(rows[1].calendar_left->why)
              .find("Where it counts from is not known. The day of cure, 10 Jan 2020, is taken.") !=
          std::string::npos);
}

TEST_CASE("a hung limit is met when the aircraft has flown what the part has left",
          "[views][hung][forecast]") {
    Hung s;
    plan_flying(s, s.first);
    s.item(s.gearbox, ItemRole::component, life(450));  // 10.0 h left at the last reading
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    const Assessed aircraft = assessed(s, s.first);
    REQUIRE(aircraft.projections.front().likely);
    CHECK(base::print_date(*aircraft.projections.front().likely) == "2024-07-01");
    CHECK(forecast::met_at(aircraft.items.front().clocks.front(), aircraft.state) == hours(1170));
    REQUIRE(aircraft.first);
    CHECK(aircraft.first->item == 0);
    CHECK(aircraft.overhaul == -1);
}

TEST_CASE("a hung limit sets the state of the aircraft the moment it passes",
          "[views][hung][state]") {
    struct Row {
        std::int64_t life_hours;
        State state;
    };

    // The part has 440 h; the aircraft's own overhaul is far away.
    for (const Row& row :
         {Row{439, State::over}, Row{440, State::due}, Row{5000, State::nothing_due}}) {
        CAPTURE(row.life_hours);
        Hung s;
        plan_flying(s, s.first);
        const Fact own = s.keep(s.ann.add(
            day("2024-01-01"), {s.first}, facts::ItemAdded{"Own", ItemRole::overhaul, {}}));
        s.keep(s.ann.write(day("2024-01-01"), {s.first, own.id}, limit(9000, 0)));
        s.item(s.gearbox, ItemRole::component, life(row.life_hours));
        s.item(s.gearbox, ItemRole::overhaul, limit(8000, 0));
        s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
        const Assessed aircraft = assessed(s, s.first);
        CHECK(aircraft.overall == row.state);
        // The overhaul of a part is not the overhaul of the aircraft.
        CHECK(views::overhaul_of(aircraft)->item == own.id);
        const auto card = views::make_fleet_view({aircraft}).cards.front();
        CHECK(card.state == row.state);
        if (row.state == State::over)
            CHECK(said(card.sentence).find("Main gearbox 7: Limit") != std::string::npos);
    }
}

TEST_CASE("on a shelf a hung limit shows in the part's own view alone", "[views][hung]") {
    Hung s;
    facts::LimitSet ends = life(1000, 120);
    ends.anchor_on = day("2020-01-10");
    const Fact item = s.item(s.gearbox, ItemRole::component, ends);
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    const auto aboard = views::part_history(s.journal, s.gearbox.id, s.today);
    REQUIRE(aboard.due.size() == 1);
    CHECK(said(aboard.due[0].hours_left->text) == "560.0 h");
    s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    const auto shelf = views::part_history(s.journal, s.gearbox.id, s.today);
    REQUIRE(shelf.due.size() == 1);
    CHECK(shelf.due[0].item == item.id);
    CHECK(said(shelf.due[0].hours_left->text) == "620.0 h");
    CHECK(said(shelf.due[0].part_name) == "Main gearbox, serial 7");
    CHECK(said(shelf.due[0].calendar_left->text) == "5 y 193 d");
    CHECK(lines(shelf.due[0].likely.why).find("On no aircraft its hours stand still") == 0);
    CHECK(due(s, s.first).empty());
    CHECK(due(s, s.second).empty());
}

TEST_CASE("open questions of a part aboard are the aircraft's to show, each once",
          "[views][hung][question]") {
    Hung s;
    const Fact item = s.item(s.gearbox, ItemRole::component, life(1000));
    const Fact fit = s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    facts::PartFitted other;
    other.host_total = base::tenths(10'100);
    s.keep(s.ann.correct(fit, other));
    other.host_total = base::tenths(10'300);
    s.keep(s.ben.correct(fit, other));
    facts::PartAdded papers = Stores::plate("7");
    papers.tsn = hours(310);
    s.keep(s.ann.correct(s.gearbox, papers));
    papers.tsn = hours(320);
    s.keep(s.ben.correct(s.gearbox, papers));
    const Assessed aircraft = assessed(s, s.first);
    CHECK(aircraft.state.questions.size() == 1);  // the fit is about the aircraft too
    CHECK(views::open_questions(aircraft).size() == 2);
    CHECK(views::make_aircraft_view(aircraft).questions.size() == 2);
    // The most that any answer gives the part: 320 + 1,160 - 1,010.
    CHECK(s.hours(s.gearbox, item).used == hours(470));
    CHECK(views::open_questions(assessed(s, s.second)).empty());
}

TEST_CASE("a question without a safe side about a part hides the answer of its aircraft",
          "[views][hung][question]") {
    Hung s;
    const Fact item = s.item(s.gearbox, ItemRole::component, life(9000));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    const auto renamed = [&](const char* name) {
        return facts::ItemAdded{name, ItemRole::component, {}};
    };
    s.keep(s.ann.correct(item, renamed("One")));
    s.keep(s.ben.correct(item, renamed("Other")));
    CHECK(assessed(s, s.first).overall == State::unknown);
}
