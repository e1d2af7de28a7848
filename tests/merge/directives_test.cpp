// The book goes on: directives that two people tell in different ways. In each the hours left are
// no more than by either.
#include "catch_amalgamated.hpp"
#include "tests/support/directed.hpp"

using namespace twoclocks;
using facts::Applicability;
using facts::Directive;
using facts::Fact;
using support::Directed;
using support::directed;
using support::effective;
using support::instead_of;

namespace {

struct DirectiveCase {
    const char* name;
    std::string (*tell)(Directed&);
    const char* stands;
};

Directive decided(Applicability applies, const char* on = "2024-03-01") {
    Directive out = effective("D 1", on);
    out.applies = applies;
    return out;
}

/// One directive that both change.
std::string changed(Directed& s, const Directive& ann, const Directive& ben) {
    const Fact item = s.asks(s.first, "D 1", directed(100));
    s.disagree(s.told(s.first, item, decided(Applicability::applies)), ann, ben);
    return s.stands(item);
}

/// One that is superseded by another that both change.
std::string replaced(Directed& s, const Directive& ann, const Directive& ben) {
    const Fact item = s.rests(s.first, effective("D 1", "2024-03-01"), directed(100));
    const Fact next = s.asks(s.first, "D 2", directed(90));
    const Fact told = s.told(s.first, next, instead_of(item, effective("D 2", "2024-03-01")));
    s.disagree(told, instead_of(item, ann), instead_of(item, ben));
    return s.stands(item);
}

constexpr auto applies_here = Applicability::applies;
constexpr auto not_here = Applicability::not_applicable;
constexpr auto unknown_here = Applicability::unknown;

const DirectiveCase directive_cases[] = {
    {"two days it took effect: the earlier",
     [](Directed& s) {
         return changed(
             s, decided(applies_here, "2024-02-01"), decided(applies_here, "2024-06-01"));
     },
     "open -600"},
    {"one without a day: as the limit has it",
     [](Directed& s) {
         Directive bare = decided(applies_here);
         bare.effective_on.reset();
         return changed(s, bare, decided(applies_here));
     },
     "open -10600"},
    {"it applies by one: it counts",
     [](Directed& s) { return changed(s, decided(not_here), decided(applies_here, "2024-06-01")); },
     "open 1000"},
    {"nobody decided by one, not here by the other: not known",
     [](Directed& s) { return changed(s, decided(not_here), decided(unknown_here)); },
     "unknown ?"},
    {"taken back by one: the limit alone counts too",
     [](Directed& s) {
         const Fact item = s.asks(s.first, "D 1", directed(100));
         const Fact told = s.told(s.first, item, decided(applies_here));
         s.keep(s.ann.withdraw(told));
         s.keep(s.ben.correct(told, decided(not_here)));
         return s.stands(item);
     },
     "open -10600"},
    {"its successor applies by one only: it stays",
     [](Directed& s) {
         return replaced(s, decided(applies_here, "2024-02-01"), decided(not_here, "2024-02-01"));
     },
     "open 400"},
    {"its successor applies by both: it is ended",
     [](Directed& s) {
         return replaced(
             s, decided(applies_here, "2024-02-01"), decided(applies_here, "2024-02-02"));
     },
     "superseded"},
    {"credit by one only: the lesser of both",
     [](Directed& s) {
         const Fact item = s.rests(s.first, effective("D 1", "2024-01-01"), directed(100));
         s.work(item, {s.first}, "2024-02-15", 10'700);
         const Fact next = s.asks(s.first, "D 2", directed(200));
         const Directive told = effective("D 2", "2024-03-01");
         s.disagree(s.told(s.first, next, told),
                    instead_of(item, told, true),
                    instead_of(item, told, false));
         return s.stands(next);
     },
     "open 1100"},  // from 1,070.0 h, not from 1,100.0 h
    {"work that is credited is taken back by one: the lesser of both",
     [](Directed& s) {
         const Fact item = s.rests(s.first, effective("D 1", "2024-01-01"), directed(100));
         const Fact work = s.work(item, {s.first}, "2024-02-15", 10'700);
         s.keep(s.ann.withdraw(work));
         s.keep(s.ben.correct(work, support::renews({item.id}, 10'800)));
         const Fact next = s.rests(
             s.first, instead_of(item, effective("D 2", "2024-01-01"), true), directed(200));
         return s.stands(next);
     },
     "open 400"},
    {"a terminating action named by one only ends nothing",
     [](Directed& s) {
         const Fact end = s.asks(s.first, "New mast");
         s.work(end, {s.first}, "2024-05-01", 11'300);
         Directive ended = decided(applies_here);
         ended.ended_by = {end.id};
         return changed(s, ended, decided(applies_here));
     },
     "open 400"},
    {"another way with two intervals: the lesser, and what is printed where that is less",
     [](Directed& s) {
         const Fact item = s.rests(s.first, effective("D 1", "2024-01-01"), directed(100));
         s.work(item, {s.first}, "2024-03-01", 11'000);
         facts::AlternativeMeans way;
         way.interval.hours = base::hours(150);
         const Fact told = s.means(s.first, item, way);
         way.issuer = "Authority";
         way.reference = "M 3";
         facts::AlternativeMeans other = way;
         other.interval.hours = base::hours(200);
         s.disagree(told, way, other);
         return s.stands(item);
     },
     "open 400"},
};

}  // namespace

TEST_CASE("of directives that people disagree about nothing gives more than either would",
          "[merge][directives]") {
    for (const DirectiveCase& one : directive_cases) {
        CAPTURE(one.name);
        Directed s;
        CHECK(one.tell(s) == one.stands);
    }
}

TEST_CASE("before further flight by one of two stops it", "[merge][directives]") {
    Directed s;
    const Fact item = s.asks(s.first, "D 1", directed(5000));
    Directive stops = decided(applies_here);
    stops.before_flight = true;
    s.disagree(s.told(s.first, item, decided(applies_here)), stops, decided(not_here));
    CHECK(s.state_of(item) == views::State::before_next_flight);
}

TEST_CASE("applies by one and nobody decided by the other: figures, and no better than unknown",
          "[merge][directives]") {
    Directed s;
    const Fact item = s.asks(s.first, "D 1", directed(5000));
    s.disagree(s.told(s.first, item, decided(applies_here)),
               decided(applies_here, "2024-03-02"),
               decided(unknown_here));
    CHECK(s.state_of(item) == views::State::unknown);
    CHECK(s.here(item).clocks.front().known);
}

TEST_CASE("the order in which the files are joined changes nothing", "[merge][directives]") {
    Directed s;
    const Fact item = s.asks(s.first, "D 1", directed(100));
    const Fact told = s.told(s.first, item, decided(applies_here));
    facts::Journal ann = s.journal;
    facts::Journal ben = s.journal;
    ann.add(s.ann.correct(told, decided(not_here)));
    ben.add(s.ben.correct(told, decided(applies_here, "2024-06-01")));
    Directed left = s;
    Directed right = s;
    left.journal = facts::merge(ann, ben);
    right.journal = facts::merge(ben, ann);
    CHECK(left.stands(item) == "open 1000");
    CHECK(right.stands(item) == "open 1000");
}
