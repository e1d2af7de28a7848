// Directives against sources from outside. [S] was read in the source named, [M] is from memory,
// [T] is common practice without a source.
#include "catch_amalgamated.hpp"
#include "tests/support/directed.hpp"

#include <string>

#include "engine/base/region.hpp"
#include "engine/views/status_view.hpp"

using namespace twoclocks;
using facts::Directive;
using facts::Fact;
using limits::DirectiveStanding;
using support::day;
using support::Directed;
using support::directed;
using support::effective;
using views::State;

// [S, rule text] 14 CFR 91.417(a)(2)(v): the current status of each directive with the method of
// compliance, its number and revision date, and where it recurs the time and date when the next
// action is required.
TEST_CASE("the record of a directive holds what 91.417 asks for", "[outside][directives]") {
    Directed s;
    Directive told = effective("2024-05-51", "2024-03-01");
    told.revision = "R1 of 5 Mar 2024";
    const Fact item = s.rests(s.first, told, directed(100, 12));
    facts::WorkDone work = support::renews({item.id}, 11'000);
    work.what = "Paragraph (b), dye penetrant";
    work.reference = "W 12";
    s.keep(s.ann.write(day("2024-03-10"), {s.first}, work));
    const auto status = views::make_status_view(s.journal, s.assessed(s.first));
    std::string all;
    for (const views::StatusGroup& group : status.groups) {
        for (const views::StatusRow& row : group.rows) {
            all += base::say(row.method, {}) + '\n';
            for (const base::Message& note : row.notes)
                all += base::say(note, {}) + '\n';
        }
    }
    for (const char* part : {"Paragraph (b), dye penetrant (W 12)",
                             "2024-05-51",
                             "R1 of 5 Mar 2024",
                             "1,200.0 h",
                             "10 Mar 2025"}) {
        CAPTURE(part);
        CHECK(all.find(part) != std::string::npos);
    }
}

// [M] 14 CFR 91.403(a) makes the owner or operator responsible for compliance with part 39; 39.7
// says that whoever operates a product that does not meet a directive violates it: past it is over,
// with no tolerance but what is printed.
TEST_CASE("a directive flown past its hours is over, whatever a permit or a tolerance says",
          "[outside][directives]") {
    struct Row {
        std::int64_t hours;
        State state;
    };

    for (const Row& row : {Row{59, State::over}, Row{60, State::due}, Row{61, State::due}}) {
        CAPTURE(row.hours);
        Directed s;  // 1,160.0 h now, 1,100.0 h when it took effect
        const Fact item = s.rests(s.first, effective("D 1", "2024-03-01"), directed(row.hours));
        CHECK(s.state_of(item) == row.state);
    }
}

// [M] 14 CFR 39.11: a directive says what action it asks for: inspections, repairs, operating
// limits. [M] 39.27 and the usual wording "before further flight": no flight until then.
TEST_CASE("before further flight stops it however far its clocks are", "[outside][directives]") {
    Directed s;
    Directive told = effective("D 1", "2024-03-01");
    told.before_flight = true;
    const Fact item = s.rests(s.first, told, directed(5000, 120));
    CHECK(s.state_of(item) == State::before_next_flight);
}

// [M] 14 CFR 39.19: another method of compliance holds once it is approved, as it was approved.
TEST_CASE("another method of compliance changes the repeat and not the first time",
          "[outside][directives]") {
    Directed s;
    const Fact item = s.rests(s.first, effective("D 1", "2024-03-01"), directed(100));
    facts::AlternativeMeans way;
    way.interval.hours = base::hours(300);
    s.means(s.first, item, way);
    CHECK(s.stands(item) == "open 400");
    s.work(item, {s.first}, "2024-05-01", 11'200);
    CHECK(s.stands(item) == "open 2600");
}

// [T] The usual wording "unless already accomplished": work that was done before the day it took
// effect complies with it, and its repeats run from there.
TEST_CASE("work done before a directive took effect complies with it", "[outside][directives]") {
    Directed s;
    facts::LimitSet limit = directed(500);
    limit.once = true;
    const Fact item = s.rests(s.first, effective("D 1", "2024-03-01"), limit);
    CHECK(s.stands(item) == "open 4400");
    s.work(item, {s.first}, "2024-02-01", 10'500);
    CHECK(s.stands(item) == "complied");
}

// [T] A directive of a part is checked when the part is fitted, and goes with its records.
TEST_CASE("a part brings what is due of it to the next aircraft", "[outside][directives]") {
    Directed s;
    const Fact item = s.rests(s.gearbox.id, effective("D 1", "2024-03-01"), directed(50));
    s.fit(s.gearbox, s.second, "2024-02-01", 5'200);
    const views::Assessed now = s.assessed(s.second);
    const std::size_t place = s.place_of(now, item);
    CHECK(now.items.at(place).directive->standing == DirectiveStanding::open);
    CHECK(now.item_states.at(place) == State::over);  // 70.0 h flown since it took effect
    CHECK(s.assessed(s.first).items.empty());
}
