// Plans and spells that people disagree about, and spells that were flown in.
#include "tests/merge/book.hpp"
#include "tests/support/no_more.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/forecast/projection.hpp"
#include "engine/views/make_views.hpp"

using namespace twoclocks;
using namespace twoclocks::book;
using base::Word;
using forecast::FlyingAhead;
using forecast::Projection;
using support::not_later;

namespace {

AircraftState state_of(const Hangar& h, const std::vector<Fact>& more) {
    Journal journal = h.journal;
    for (const Fact& fact : more)
        journal.add(fact);
    return timeline::replay(journal, h.id(), h.today);
}

Fact plan_hours(Hangar& h, const char* on, std::int64_t hours_a_month) {
    return h.ann.write(day(on), {h.id()}, facts::UsagePlanned{base::hours(hours_a_month), {}});
}

facts::UsagePlanned hours_planned(std::int64_t hours_a_month) {
    return {base::hours(hours_a_month), {}};
}

Fact spell(Hangar& h, const char* from, const char* until) {
    facts::OutOfService out;
    if (until != nullptr) out.until = day(until);
    return h.ann.write(day(from), {h.id()}, out);
}

Projection overhaul_of(const AircraftState& state, const FlyingAhead& ahead) {
    const auto items = limits::due_items(state, day("2024-07-01"));
    return forecast::project(items.front(), state, ahead, day("2024-07-01"));
}

std::string whys(const AircraftState& state) {
    std::string out;
    const auto view = views::make_aircraft_view(views::assess(state, day("2024-07-01")));
    for (const views::Why& why : views::whys_of(view)) {
        for (const views::WhyLine& line : why.lines)
            out += base::say(line.text, {}) + '\n';
    }
    return out;
}

}  // namespace

TEST_CASE("a disputed plan never slows the forecast below any way of answering it",
          "[merge][plan]") {
    struct Row {
        const char* name;
        std::int64_t before;  // hours a month planned and settled earlier; 0 is none
        std::int64_t first;   // in dispute
        std::int64_t second;  // 0: withdrawn instead
        bool disputed_first;  // the disputed plan begins before the settled one
    };

    for (const Row& row : {Row{"below what is measured, or withdrawn", 0, 5, 0, false},
                           Row{"above what is measured, or withdrawn", 0, 90, 0, false},
                           Row{"below and above", 0, 5, 90, false},
                           Row{"both below", 0, 5, 10, false},
                           Row{"less than the plan before it, or withdrawn", 60, 5, 0, false},
                           Row{"more than the plan before it, or withdrawn", 20, 40, 0, false},
                           Row{"superseded anyway", 20, 90, 5, true}}) {
        CAPTURE(row.name);
        Hangar h;
        std::vector<Fact> facts;
        if (row.before > 0)
            facts.push_back(
                plan_hours(h, row.disputed_first ? "2024-06-20" : "2024-05-01", row.before));
        const Fact base_plan = plan_hours(h, "2024-06-10", 33);
        const Fact first = h.ann.correct(base_plan, hours_planned(row.first));
        const Fact second = row.second > 0 ? h.ben.correct(base_plan, hours_planned(row.second))
                                           : h.ben.withdraw(base_plan);
        facts.insert(facts.end(), {base_plan, first, second});
        const AircraftState open = state_of(h, facts);
        REQUIRE(open.questions.size() == 1);
        const FlyingAhead ahead = forecast::flying_ahead(open);
        const Projection now = overhaul_of(open, ahead);
        const std::vector<Ref> sides{{first.id, 0}, {second.id, 0}};
        for (const Ref& kept : sides) {
            std::vector<Fact> answered = facts;
            answered.push_back(h.ann.answer(h.id(), sides, {kept}));
            const AircraftState settled = state_of(h, answered);
            REQUIRE(settled.questions.empty());
            const FlyingAhead after = forecast::flying_ahead(settled);
            for (std::int32_t days = 10; days < 4000; days += 10) {
                REQUIRE(forecast::flown_by(ahead.likely, days) >=
                        forecast::flown_by(after.likely, days) - 1e-6);
                REQUIRE(forecast::flown_by(ahead.early, days) >=
                        forecast::flown_by(after.early, days) - 1e-6);
            }
            const Projection then = overhaul_of(settled, after);
            CHECK(not_later(now.early, then.early));
            CHECK(not_later(now.likely, then.likely));
            CHECK(not_later(now.late, then.late));
        }
        CHECK(open.plan->disputed != row.disputed_first);
    }
}

TEST_CASE("a disputed plan says so where it gives the rate and where it gives way",
          "[merge][plan][why]") {
    Hangar h;
    // Measured: 160 h from January to June, about 32 h a month.
    const auto year_of = [](const AircraftState& state) {
        return forecast::flying_ahead(state).model.pattern.year_seconds;
    };
    const double measured = year_of(state_of(h, {}));
    const Fact slow = plan_hours(h, "2024-06-10", 5);
    const auto disputed = [&](std::int64_t first, std::int64_t second) {
        return state_of(h,
                        {slow,
                         h.ann.correct(slow, hours_planned(first)),
                         h.ben.correct(slow, hours_planned(second))});
    };
    const AircraftState below = disputed(4, 6);
    CHECK(year_of(below) == Catch::Approx(measured));
    CHECK(forecast::flying_ahead(below).plan_gives_way);
    const auto view = views::make_aircraft_view(views::assess(below, h.today));
    CHECK(view.rate.text.word == Word::say_rate);
    const std::string said =
        "Records disagree about the plan. Until you choose, the most of it counts, 6.0 h a month, "
        "or the measured rate where that is more.";
    CHECK(whys(below).find(said) != std::string::npos);
    const AircraftState above = disputed(4, 60);
    CHECK(year_of(above) == Catch::Approx(60 * 12 * 3600));
    CHECK_FALSE(forecast::flying_ahead(above).plan_gives_way);
    const auto faster = views::make_aircraft_view(views::assess(above, h.today));
    CHECK(faster.rate.text.word == Word::say_rate_stated);
    CHECK(whys(state_of(h, {slow})).find("Records disagree about the plan") == std::string::npos);
    // Without enough readings there is nothing but the plan.
    AircraftState bare = disputed(4, 6);
    bare.usage.resize(1);
    CHECK(year_of(bare) == Catch::Approx(6 * 12 * 3600));
}

TEST_CASE("a spell without an end has ended by the first reading that shows flying",
          "[merge][spell]") {
    struct Row {
        const char* name;
        const char* from;
        std::vector<std::pair<const char*, std::int64_t>> readings;  // tenths
        const char* flown_by;
    };

    for (const Row& row :
         {Row{"no reading since", "2024-06-10", {}, "never"},
          Row{"a reading that shows none", "2024-06-10", {{"2024-06-20", 1600}}, "never"},
          Row{"a reading that shows some",
              "2024-06-10",
              {{"2024-06-20", 1600}, {"2024-06-25", 1601}, {"2024-06-28", 1650}},
              "2024-06-25"},
          Row{"a reading of its first day shows what was before",
              "2024-06-10",
              {{"2024-06-10", 1610}},
              "never"},
          Row{"and a higher one the day after",
              "2024-06-10",
              {{"2024-06-10", 1610}, {"2024-06-11", 1611}},
              "2024-06-11"},
          Row{"it begins ahead of every reading", "2024-08-01", {{"2024-06-20", 1650}}, "never"},
          Row{"it began before the meter was fitted", "2023-12-01", {}, "2024-03-01"}}) {
        CAPTURE(row.name);
        Hangar h;
        std::vector<Fact> facts{spell(h, row.from, nullptr)};
        for (const auto& [on, tenths] : row.readings)
            facts.push_back(h.read(h.ben, on, tenths));
        const AircraftState state = state_of(h, facts);
        REQUIRE(state.spells.size() == 1);
        const timeline::Spell& one = state.spells.front();
        CHECK((one.flown_by ? base::print_date(*one.flown_by) : "never") == row.flown_by);
        CHECK(one.until == one.flown_by);
        CHECK(state.cautions.size() == (one.flown_by ? 1 : 0));
        const Projection due = overhaul_of(state, forecast::flying_ahead(state));
        // The calendar of the overhaul ends in 2032; only the hours can come before it.
        CHECK((due.binds == facts::Clock::hours) == one.flown_by.has_value());
    }
}

TEST_CASE("a spell that was flown in is told in the caution and in the why", "[merge][spell]") {
    Hangar h;
    const Fact parked = spell(h, "2024-06-10", nullptr);
    const AircraftState state = state_of(h, {parked, h.read(h.ben, "2024-06-25", 1650)});
    REQUIRE(state.cautions.size() == 1);
    CHECK(state.cautions.front().code == base::Trouble::spell_flown);
    CHECK(state.cautions.front().fact == parked.id);
    const std::string said = whys(state);
    CHECK(said.find("Out of service from 10 Jun 2024 with no end, yet flying was recorded by "
                    "25 Jun 2024: it counts as ended that day.") != std::string::npos);
    CHECK(said.find("the hours stand still") == std::string::npos);
    const AircraftState still = state_of(h, {parked});
    CHECK(whys(still).find("the hours stand still") != std::string::npos);
}

TEST_CASE("a spell with an end keeps it, flown in or not", "[merge][spell]") {
    Hangar h;
    const AircraftState state =
        state_of(h, {spell(h, "2024-06-10", "2024-09-01"), h.read(h.ben, "2024-06-25", 1650)});
    REQUIRE(state.spells.size() == 1);
    CHECK(state.spells.front().until == day("2024-09-01"));
    CHECK_FALSE(state.spells.front().flown_by);
    CHECK(state.cautions.empty());
}

TEST_CASE("while records disagree a spell ends no later than any answer would have it",
          "[merge][spell]") {
    Hangar h;
    const Fact parked = spell(h, "2024-05-01", nullptr);
    facts::Body later = parked.body;
    later.on = day("2024-06-20");
    facts::Body ends = parked.body;
    ends.fields = facts::OutOfService{day("2024-12-01"), {}};
    const Fact first = h.ann.correct(parked, later);
    const Fact second = h.ben.correct(parked, ends);
    // Flying on 1 June: if the spell began in May it is over; if in June, it may not be.
    const AircraftState open = state_of(h, {parked, first, second});
    REQUIRE(open.questions.size() == 1);
    REQUIRE(open.spells.size() == 1);
    CHECK(open.spells.front().until == day("2024-12-01"));
    const AircraftState flown =
        state_of(h, {parked, first, second, h.read(h.ben, "2024-06-28", 1650)});
    CHECK(flown.spells.front().until == day("2024-06-28"));
    // Without an end in either: if it began in May, the flying of 1 June ended it.
    facts::Body sooner = parked.body;
    sooner.on = day("2024-05-10");
    const AircraftState unended = state_of(h, {parked, first, h.ben.correct(parked, sooner)});
    CHECK(unended.spells.front().until == day("2024-06-01"));
    // A reading in doubt that shows flying ends it, though the total in use hides the reading.
    const AircraftState doubted = state_of(h,
                                           {spell(h, "2024-06-10", nullptr),
                                            h.read(h.ben, "2024-06-05", 2000),
                                            h.read(h.ben, "2024-06-25", 1650)});
    REQUIRE(doubted.questions.size() >= 1);
    CHECK(doubted.spells.front().until == day("2024-06-25"));
}
