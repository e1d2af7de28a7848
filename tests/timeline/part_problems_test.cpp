// Records of a part that cannot all be right.
#include "catch_amalgamated.hpp"
#include "tests/support/stores.hpp"

using namespace twoclocks;
using base::hours;
using facts::Fact;
using support::day;
using support::Stores;
using support::troubles;
using timeline::PartState;
using timeline::Whereabouts;
using Ids = std::vector<base::Id>;

TEST_CASE("in two places at once, the hours of both count", "[timeline][parts]") {
    Stores s;
    const Fact one = s.fit(s.gearbox, s.first, "2024-03-01", 11'000);
    const Fact other = s.fit(s.gearbox, s.second, "2024-03-01", 5'500);
    const PartState part = s.state(s.gearbox);
    REQUIRE(troubles(part) == "part_on_two_hosts");
    CHECK(part.problems.front().facts == Ids{one.id, other.id});
    CHECK(part.tsn == hours(300 + 60 + 70));
}

TEST_CASE("one fit that two people recorded counts once", "[timeline][parts]") {
    Stores s;
    s.fit(s.gearbox, s.first, "2024-03-01", 11'000);
    s.fit(s.gearbox, s.first, "2024-03-02", 11'020);
    const PartState part = s.state(s.gearbox);
    CHECK(troubles(part) == "part_on_two_hosts");
    CHECK(part.tsn == hours(360));
}

TEST_CASE("parts in a ring have no hours and say so, whichever is asked", "[timeline][parts]") {
    Stores s;
    const Fact other = s.add(Stores::plate("8"));
    s.fit(other, s.gearbox.id, "2024-02-01", 3'000);
    s.fit(s.gearbox, other.id, "2024-02-02", 0);
    for (const PartState& part : timeline::replay_parts(s.journal, s.today)) {
        CHECK(troubles(part) == "part_in_itself");
        CHECK_FALSE(part.tsn.has_value());
        CHECK(part.aircraft.empty());
    }
}

TEST_CASE("two parts with one plate are asked about", "[timeline][parts]") {
    Stores s;
    const Fact twin = s.add(Stores::plate("7"));
    const auto parts = timeline::replay_parts(s.journal, s.today);
    REQUIRE(parts.size() == 2);
    for (const PartState& part : parts) {
        REQUIRE(troubles(part) == "part_twice");
        CHECK(part.problems.front().severity == base::Severity::question);
        CHECK(part.problems.front().facts == Ids{s.gearbox.id, twin.id});
    }
    s.keep(s.ann.withdraw(twin));
    CHECK(timeline::replay_parts(s.journal, s.today).size() == 1);
}

TEST_CASE("versions of a fit and a removal that disagree give the part more hours",
          "[timeline][parts]") {
    Stores s;
    const Fact fit = s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const Fact removal = s.remove(s.gearbox, s.first, "2024-04-01", 11'200);
    facts::PartFitted lower;
    lower.position = "Main";
    lower.host_total = base::tenths(10'400);
    facts::PartFitted higher = lower;
    higher.host_total = base::tenths(10'600);
    s.keep(s.ann.correct(fit, lower));
    s.keep(s.ben.correct(fit, higher));
    PartState part = s.state(s.gearbox);
    CHECK(part.questions.size() == 1);
    CHECK(part.tsn == hours(380));
    facts::PartRemoved later;
    later.host_total = base::tenths(11'300);
    s.keep(s.ann.correct(removal, later));
    s.keep(s.ben.withdraw(removal));
    part = s.state(s.gearbox);
    CHECK(part.questions.size() == 2);
    CHECK(part.whereabouts == Whereabouts::fitted);
    CHECK(part.tsn == hours(420));
}

TEST_CASE("an unknown time since new stays unknown while records disagree", "[timeline][parts]") {
    Stores s;
    facts::PartAdded known = Stores::plate("7");
    known.tsn = hours(280);
    s.keep(s.ann.correct(s.gearbox, known));
    s.keep(s.ben.correct(s.gearbox, Stores::plate("7")));
    PartState part = s.state(s.gearbox);
    REQUIRE(part.questions.size() == 1);
    CHECK_FALSE(part.questions.front().no_safe_side);
    CHECK_FALSE(part.tsn.has_value());
    s.keep(s.ben.correct(s.gearbox, Stores::plate("9")));
    part = s.state(s.gearbox);
    REQUIRE(part.questions.size() == 1);
    CHECK(part.questions.front().no_safe_side);  // nobody knows which plate it bears
}
