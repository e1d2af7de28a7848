// The book goes on: two people set one limit in two ways beside its interval.
#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <vector>

#include "engine/facts/interval.hpp"
#include "engine/timeline/safer.hpp"
#include "engine/timeline/state.hpp"

using namespace twoclocks;
using facts::Combine;
using facts::LimitSet;
using support::day;
using support::Hangar;
using support::limit;

namespace {

LimitSet joined(const LimitSet& left, const LimitSet& right) {
    const facts::Body one = support::body({100}, {}, left);
    const facts::Body other = support::body({100}, {}, right);
    return *std::get_if<LimitSet>(&timeline::safer({&one, &other}, false)->fields);
}

LimitSet later(std::int64_t whole_hours, std::int32_t months) {
    LimitSet out = limit(whole_hours, months);
    out.combine = Combine::later;
    return out;
}

}  // namespace

TEST_CASE("later stands only where both say so of the same clocks", "[merge][limits]") {
    CHECK(joined(later(100, 12), later(90, 13)).combine == Combine::later);
    CHECK(joined(later(100, 12), later(90, 13)).hours == base::hours(90));
    CHECK_FALSE(joined(later(100, 12), limit(100, 12)).combine);
    CHECK_FALSE(joined(limit(100, 12), later(100, 12)).combine);
    CHECK_FALSE(joined(later(100, 12), later(100, 0)).combine);
    LimitSet first = later(100, 12);
    first.first.hours = base::hours(50);
    CHECK_FALSE(joined(later(100, 12), first).combine);
}

TEST_CASE("first interval, cap and days: the lesser; once: only where both say so",
          "[merge][limits]") {
    LimitSet first = limit(100, 0);
    first.first.hours = base::hours(300);
    first.once = true;
    first.cap.hours = base::hours(400);
    LimitSet second = limit(150, 0);
    second.cap.months = 9;
    second.days = 40;
    for (const LimitSet& both : {joined(first, second), joined(second, first)}) {
        CHECK(both.hours == base::hours(100));
        CHECK(both.first.hours == base::hours(150));
        CHECK(both.first.days == 40);
        CHECK_FALSE(both.once);
        CHECK((both.cap.hours == base::hours(400) && both.cap.months == 9));
        CHECK(both.days == 40);
    }
    CHECK(joined(first, first).once);
    CHECK(facts::is_empty(joined(second, limit(90, 0)).first));
}

TEST_CASE("a tolerance that one of them lacks is none", "[merge][limits]") {
    LimitSet first = limit(100, 0);
    first.tolerance = {base::hours(10), 30, 100, {}, 20, {}, base::hours(9), "A"};
    LimitSet second = limit(100, 0);
    second.tolerance = {base::hours(5), {}, 50, base::hours(7), {}, {}, {}, "B"};
    for (const LimitSet& both : {joined(first, second), joined(second, first)}) {
        CHECK(both.tolerance.hours == base::hours(5));
        CHECK_FALSE(both.tolerance.days);
        CHECK(both.tolerance.permille == 50);
        CHECK((both.tolerance.cap_hours == base::hours(7) && both.tolerance.cap_days == 20));
        CHECK_FALSE(both.tolerance.overfly_hours);
    }
}

TEST_CASE("a permit in dispute allows the least, and none while one takes it back",
          "[merge][permit]") {
    Hangar h;
    const facts::Fact permit = h.ann.write(
        day("2024-06-02"), h.with(h.check), facts::Permit{"Authority", {}, {}, base::hours(9), {}});
    const facts::Fact from_ann =
        h.ann.correct(permit, facts::Permit{"Authority", {}, {}, base::hours(8), {}});
    facts::Journal journal = h.journal;
    for (const facts::Fact& fact : {permit, from_ann})
        journal.add(fact);
    facts::Journal less = journal;
    less.add(h.ben.correct(permit,
                           facts::Permit{"Authority", {}, {}, base::hours(7), day("2024-07-01")}));
    const auto permits = [&](const facts::Journal& all) {
        for (const auto& item : timeline::replay(all, h.id(), h.today).items) {
            if (item.id == h.check.id) return item.permits;
        }
        return std::vector<timeline::PermitState>{};
    };
    REQUIRE(permits(less).size() == 1);
    CHECK(permits(less).front().permit.hours == base::hours(7));
    CHECK(permits(less).front().permit.until == day("2024-07-01"));
    REQUIRE(permits(journal).size() == 1);
    CHECK(permits(journal).front().permit.hours == base::hours(8));
    facts::Journal undone = journal;
    undone.add(h.ben.withdraw(permit));
    CHECK(permits(undone).empty());
    // One for tomorrow does not hold today.
    facts::Journal ahead = h.journal;
    ahead.add(h.ann.write(day("2024-07-02"), h.with(h.check), permit.body.fields));
    CHECK(permits(ahead).empty());
}
