// Which work renews what: rules on record, and what people who disagree leave of one.
#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <vector>

#include "engine/facts/names.hpp"
#include "engine/timeline/state.hpp"

using namespace twoclocks;
using facts::Clock;
using facts::Fact;
using facts::Journal;
using facts::Renewal;
using support::day;
using support::Hangar;

namespace {

facts::WorkRule rule(const std::string& name, std::vector<Renewal> renews) {
    return {name, std::move(renews), "Manual", "3"};
}

/// "Overhaul(all) Calendar inspection(calendar)", a question mark behind one that is disputed.
std::string rules_told(const Hangar& h, const Journal& journal) {
    std::string out;
    const timeline::AircraftState state = timeline::replay(journal, h.id(), h.today);
    for (const timeline::WorkRuleState& each : state.work_rules) {
        out += (out.empty() ? "" : " ") + each.name + '(';
        for (const Renewal& renewal : each.renews) {
            if (renewal.clocks.empty()) out += "all;";
            for (const Clock clock : renewal.clocks)
                out += std::string{facts::word_of(facts::Choices::clock,
                                                  static_cast<std::uint8_t>(clock))} +
                       ';';
        }
        out += each.disputed ? ")?" : ")";
    }
    return out;
}

}  // namespace

TEST_CASE("rules that are true by today are on record, of one name the last", "[timeline][rules]") {
    Hangar h;
    const base::Id check = h.check.id;
    Journal journal = h.journal;
    CHECK(rules_told(h, journal).empty());
    journal.add(h.ann.write(day("2024-02-01"), {h.id()}, rule("Overhaul", {{check, {}}})));
    journal.add(
        h.ann.write(day("2024-01-01"), {h.id()}, rule("Calendar", {{check, {Clock::calendar}}})));
    CHECK(rules_told(h, journal) == "Calendar(calendar;) Overhaul(all;)");
    const Fact later =
        h.ann.write(day("2024-03-01"), {h.id()}, rule("Calendar", {{check, {Clock::hours}}}));
    journal.add(later);
    CHECK(rules_told(h, journal) == "Calendar(hours;) Overhaul(all;)");
    journal.add(h.ann.write(day("2024-07-02"), {h.id()}, rule("Tomorrow", {{check, {}}})));
    CHECK(rules_told(h, journal) == "Calendar(hours;) Overhaul(all;)");
    journal.add(h.ann.withdraw(later));
    CHECK(rules_told(h, journal) == "Calendar(calendar;) Overhaul(all;)");
}

TEST_CASE("a rule says where it stands, and which fact says so", "[timeline][rules]") {
    Hangar h;
    Journal journal = h.journal;
    const Fact first =
        h.ann.write(day("2024-02-01"), {h.id()}, rule("Overhaul", {{h.check.id, {}}}));
    const Fact second = h.ann.correct(first, rule("Overhaul", {{h.check.id, {Clock::hours}}}));
    journal.add(first);
    journal.add(second);
    const timeline::AircraftState state = timeline::replay(journal, h.id(), h.today);
    REQUIRE(state.work_rules.size() == 1);
    CHECK(state.work_rules.front().id == first.id);
    CHECK(state.work_rules.front().version == second.id);
    CHECK(state.work_rules.front().source == "Manual");
    CHECK(state.work_rules.front().revision == "3");
}

TEST_CASE("while two people disagree a rule renews what both of them say",
          "[timeline][rules][merge]") {
    struct Row {
        const char* name;
        std::vector<Clock> ann;
        std::vector<Clock> ben;
        const char* told;
    };

    const Row rows[] = {
        {"the same", {Clock::hours}, {Clock::hours}, "Overhaul(hours;)"},
        {"all, and the calendar", {}, {Clock::calendar}, "Overhaul(calendar;)?"},
        {"two, of which one",
         {Clock::hours, Clock::calendar},
         {Clock::calendar},
         "Overhaul(calendar;)?"},
        {"nothing in common", {Clock::hours}, {Clock::calendar}, "Overhaul()?"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.name);
        Hangar h;
        const base::Id check = h.check.id;
        const Fact first = h.ann.write(day("2024-02-01"), {h.id()}, rule("Overhaul", {}));
        Journal ann = h.journal;
        ann.add(first);
        Journal ben = ann;
        ann.add(h.ann.correct(first, rule("Overhaul", {{check, row.ann}})));
        ben.add(h.ben.correct(first, rule("Overhaul", {{check, row.ben}})));
        const Journal joined = facts::merge(ann, ben);
        CHECK(rules_told(h, joined) == row.told);
        CHECK(rules_told(h, facts::merge(ben, ann)) == row.told);
        const bool agree = row.ann == row.ben;
        const timeline::AircraftState state = timeline::replay(joined, h.id(), h.today);
        CHECK(state.questions.size() == (agree ? 0U : 1U));
        for (const timeline::Question& question : state.questions)
            CHECK_FALSE(question.no_safe_side);
    }
}

TEST_CASE("a rule that one of two takes back is not offered", "[timeline][rules][merge]") {
    Hangar h;
    const Fact first =
        h.ann.write(day("2024-02-01"), {h.id()}, rule("Overhaul", {{h.check.id, {}}}));
    Journal ann = h.journal;
    ann.add(first);
    Journal ben = ann;
    ann.add(h.ann.correct(first, rule("Overhaul", {{h.check.id, {Clock::hours}}})));
    ben.add(h.ben.withdraw(first));
    CHECK(rules_told(h, facts::merge(ann, ben)).empty());
}
