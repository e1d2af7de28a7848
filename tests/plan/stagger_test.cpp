// Who goes in when: by hand, and against every day tried.
#include "engine/plan/stagger.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/random.hpp"

#include <algorithm>
#include <optional>

using namespace twoclocks;
using plan::Capacity;
using plan::Reason;
using plan::Stagger;
using plan::Visit;
using Begins = std::vector<std::int32_t>;
using Places = std::vector<std::int32_t>;

namespace {

constexpr std::int32_t no_bound = 0;

std::int32_t due(const Visit& visit) {
    return std::max(visit.limit_on, 0);
}

/// Day by day: no more out than may be. Counts by itself, not as the search does.
bool holds(const std::vector<Visit>& visits, const Begins& begins, const Capacity& capacity) {
    const auto out_on = [&](std::size_t place, std::int32_t day) {
        return begins[place] <= day && day < begins[place] + visits[place].out_days;
    };
    std::int32_t end = 0;
    for (std::size_t place = 0; place < visits.size(); ++place)
        end = std::max(end, begins[place] + visits[place].out_days);
    for (std::int32_t day = 0; day < end; ++day) {
        std::int32_t all = 0;
        for (std::size_t one = 0; one < visits.size(); ++one) {
            if (!out_on(one, day)) continue;
            ++all;
            std::int32_t here = 1;
            for (std::size_t other = 0; other < visits.size(); ++other)
                if (other != one && out_on(other, day) && !visits[one].shop.empty() &&
                    visits[one].shop == visits[other].shop)
                    ++here;
            if (capacity.shop_takes > 0 && here > capacity.shop_takes) return false;
        }
        if (capacity.out_at_once > 0 && all > capacity.out_at_once) return false;
    }
    return true;
}

std::int64_t cost_on(const Visit& visit, std::int32_t begin) {
    return begin < due(visit) ? visit.early_cost * (due(visit) - begin)
                              : visit.standing_cost * (begin - due(visit));
}

/// The least cost over every day up to the last one worth a look.
std::int64_t least_cost(const std::vector<Visit>& visits, const Capacity& capacity) {
    std::int32_t last = 0;
    std::int32_t all = 0;
    for (const Visit& visit : visits) {
        last = std::max({last, visit.ready_on, visit.limit_on});
        all += visit.out_days;
    }
    last += all;
    std::optional<std::int64_t> least;
    Begins begins;
    for (const Visit& visit : visits)
        begins.push_back(std::max(visit.ready_on, 0));
    const Begins first = begins;
    for (std::size_t place = 0; place < visits.size();) {
        std::int64_t cost = 0;
        for (std::size_t one = 0; one < visits.size(); ++one)
            cost += cost_on(visits[one], begins[one]);
        if ((!least || cost < *least) && holds(visits, begins, capacity)) least = cost;
        for (place = 0; place < visits.size() && begins[place] == last; ++place)
            begins[place] = first[place];
        if (place < visits.size()) ++begins[place];
    }
    REQUIRE(least);
    return *least;
}

struct Sizes {
    std::int64_t days;     // limits and kits lie within
    std::int64_t longest;  // days out
    std::int64_t costliest;
};

std::vector<Visit> random_visits(support::Random& random, std::int64_t count, Sizes sizes) {
    std::vector<Visit> out;
    for (std::int64_t place = 0; place < count; ++place) {
        Visit visit;
        visit.limit_on = static_cast<std::int32_t>(random.between(-sizes.days / 4, sizes.days));
        visit.ready_on = static_cast<std::int32_t>(random.between(-sizes.days, sizes.days));
        visit.out_days = static_cast<std::int32_t>(random.between(1, sizes.longest));
        visit.early_cost = random.between(0, sizes.costliest);
        visit.standing_cost = random.between(0, 3 * sizes.costliest);
        const std::int64_t shop = random.between(0, 2);
        if (shop > 0) visit.shop = shop == 1 ? "north" : "south";
        if (random.once_in(6) && !out.empty()) out.back() = visit;  // two alike in everything
        out.push_back(visit);
    }
    return out;
}

Begins begins_of(const Stagger& plan) {
    Begins out;
    for (const plan::Placement& one : plan.placements)
        out.push_back(one.begin_on);
    return out;
}

/// What holds of every plan, whatever was asked.
void check_sound(const std::vector<Visit>& visits, const Capacity& capacity, const Stagger& plan) {
    REQUIRE(plan.placements.size() == visits.size());
    CHECK(holds(visits, begins_of(plan), capacity));
    std::int64_t cost = 0;
    Places unmet;
    for (std::size_t place = 0; place < visits.size(); ++place) {
        const plan::Placement& one = plan.placements[place];
        const Visit& visit = visits[place];
        const std::int32_t own = std::max(due(visit), visit.ready_on);
        CAPTURE(place, one.begin_on, own);
        CHECK(one.begin_on >= std::max(0, visit.ready_on));
        CHECK(one.back_on == one.begin_on + visit.out_days);
        CHECK(one.early_days == std::max(due(visit) - one.begin_on, 0));
        CHECK(one.standing_days == std::max(one.begin_on - due(visit), 0));
        CHECK(one.cost == cost_on(visit, one.begin_on));
        CHECK((one.reason == Reason::moved_earlier) == (one.begin_on < own));
        CHECK((one.reason == Reason::moved_later) == (one.begin_on > own));
        CHECK(one.because_of.empty() == (one.begin_on == own));
        CHECK(std::count(one.because_of.begin(), one.because_of.end(), place) == 0);
        cost += one.cost;
        if (one.begin_on > visit.limit_on) unmet.push_back(static_cast<std::int32_t>(place));
    }
    CHECK(plan.cost == cost);
    CHECK(plan.unmet == unmet);
    CHECK(plan.alone_cost <= plan.cost);
}

}  // namespace

TEST_CASE("no visits, no plan, and nothing better", "[plan][stagger]") {
    const Stagger plan = plan::stagger({}, {1, 1});
    CHECK(plan.placements.empty());
    CHECK(plan.cost == 0);
    CHECK(plan.proven);
}

TEST_CASE("alone, each goes in on its limit, or when it is ready", "[plan][stagger]") {
    // Limits on days 10, 10, -3 and -3; kits today, on 14, before today, and on 5.
    // The second stands 4 days, the fourth 5 from today on: 4 * 7 + 5 * 7 = 63.
    const std::vector<Visit> visits{
        {0, 10, 6, 1, 7, {}}, {14, 10, 6, 1, 7, {}}, {-2, -3, 6, 1, 7, {}}, {5, -3, 6, 1, 7, {}}};
    const Stagger plan = plan::stagger(visits, {});
    check_sound(visits, {}, plan);
    CHECK(begins_of(plan) == Begins{10, 14, 0, 5});
    CHECK(plan.placements[0].back_on == 16);
    CHECK(plan.placements[0].reason == Reason::on_limit);
    CHECK(plan.placements[1].reason == Reason::not_ready);
    CHECK(plan.placements[2].reason == Reason::limit_past);
    CHECK(plan.placements[2].standing_days == 0);
    CHECK(plan.placements[3].reason == Reason::not_ready);
    CHECK(plan.placements[3].standing_days == 5);
    CHECK(plan.cost == 63);
    CHECK(plan.alone_cost == 63);
    CHECK(plan.unmet == Places{1, 2, 3});
    CHECK(plan.proven);
}

TEST_CASE("two limits together: the cheaper days are given up", "[plan][stagger]") {
    // Both out 10 days from day 30; one at a time. Days given up cost 3 (first) or 2 (second), days
    // of standing 9: the second goes in 10 days earlier, 10 * 2 = 20.
    std::vector<Visit> visits{{0, 30, 10, 3, 9, {}}, {0, 30, 10, 2, 9, {}}};
    Stagger plan = plan::stagger(visits, {1, 1});
    CHECK(begins_of(plan) == Begins{30, 20});
    CHECK(plan.cost == 20);
    CHECK(plan.placements[1].reason == Reason::moved_earlier);
    CHECK(plan.placements[1].because_of == Places{0});
    CHECK(plan.unmet.empty());
    // Its kit comes on day 26: 4 days earlier is as far as it goes, and then the first stands 6,
    // 4 * 2 + 6 * 9 = 62. The first 10 days earlier costs 30.
    visits[1].ready_on = 26;
    plan = plan::stagger(visits, {1, 1});
    CHECK(begins_of(plan) == Begins{20, 30});
    CHECK(plan.cost == 30);
    // The kits of both come on day 26: the second 4 days earlier and the first 6 later (62), or the
    // first 4 earlier and the second 6 later, 4 * 3 + 6 * 9 = 66.
    visits[0].ready_on = 26;
    plan = plan::stagger(visits, {1, 1});
    CHECK(begins_of(plan) == Begins{36, 26});
    CHECK(plan.cost == 62);
    CHECK(plan.placements[0].reason == Reason::moved_later);
    CHECK(plan.placements[0].because_of == Places{1});
    CHECK(plan.placements[0].standing_days == 6);
    CHECK(plan.unmet == Places{0});
    CHECK(plan.alone_cost == 0);
}

TEST_CASE("three in a row move together", "[plan][stagger]") {
    // Limits on 40, 42 and 44, 10 days each, one at a time, a day given up 1, a day standing 5.
    // The last on 44, the one before on 34, the first on 24: 8 + 16 = 24 days given up. A day later
    // for all saves 2 and costs 5.
    const std::vector<Visit> visits{
        {0, 40, 10, 1, 5, {}}, {0, 42, 10, 1, 5, {}}, {0, 44, 10, 1, 5, {}}};
    const Stagger plan = plan::stagger(visits, {1, 1});
    CHECK(begins_of(plan) == Begins{24, 34, 44});
    CHECK(plan.cost == 24);
    CHECK(plan.proven);
    // At 1 a day of standing it pays to have the middle one on its day: 32, 42, 52.
    std::vector<Visit> cheap = visits;
    for (Visit& one : cheap)
        one.standing_cost = 1;
    CHECK(begins_of(plan::stagger(cheap, {1, 1})) == Begins{32, 42, 52});
}

TEST_CASE("one shop takes one at a time while another is free", "[plan][stagger]") {
    // Both of the north on day 20, 8 days each: one gives up 8 days at 2. The one of the south and
    // the one without a shop keep their day.
    const std::vector<Visit> visits{{0, 20, 8, 2, 9, "north"},
                                    {0, 20, 8, 3, 9, "north"},
                                    {0, 20, 8, 2, 9, "south"},
                                    {0, 20, 8, 2, 9, {}}};
    CHECK(begins_of(plan::stagger(visits, {no_bound, 1})) == Begins{12, 20, 20, 20});
    CHECK(plan::stagger(visits, {no_bound, 1}).cost == 16);
    CHECK(plan::stagger(visits, {no_bound, 2}).cost == 0);
    CHECK(plan::stagger(visits, {no_bound, no_bound}).cost == 0);
    // Two out at once: two on day 20 and two 8 days earlier, one of them the second of the north:
    // the dear one stays, so 16 + 16.
    const Stagger plan = plan::stagger(visits, {2, 1});
    CHECK(plan.cost == 32);
    CHECK(plan.placements[1].begin_on == 20);
}

TEST_CASE("a limit already past goes in first, and nobody moves for nothing", "[plan][stagger]") {
    // One stands since day -5 at 4 a day; the other has its limit on day 3 and a day given up or
    // standing costs it nothing. 6 days each: it waits 3 days rather than going in today.
    const std::vector<Visit> visits{{0, 3, 6, 0, 0, {}}, {0, -5, 6, 1, 4, {}}};
    const Stagger plan = plan::stagger(visits, {1, 1});
    CHECK(begins_of(plan) == Begins{6, 0});
    CHECK(plan.cost == 0);
    CHECK(plan.placements[1].reason == Reason::limit_past);
    CHECK(plan.placements[0].reason == Reason::moved_later);
    CHECK(plan.unmet == Places{0, 1});
}

TEST_CASE("of two alike in everything the first goes first", "[plan][stagger]") {
    const Visit one{0, 50, 10, 1, 1, {}};
    CHECK(begins_of(plan::stagger({one, one, one}, {1, 1})) == Begins{40, 50, 60});
}

TEST_CASE("no day that was tried costs less", "[plan][stagger][property]") {
    for (std::uint64_t seed = 1; seed <= 600; ++seed) {
        support::Random random{seed};
        const std::int64_t count = random.between(1, 4);
        const Sizes sizes{count < 4 ? 12 : 6, count < 4 ? 6 : 3, 5};
        const auto visits = random_visits(random, count, sizes);
        const Capacity capacity{static_cast<std::int32_t>(random.between(0, 3)),
                                static_cast<std::int32_t>(random.between(0, 2))};
        const Stagger plan = plan::stagger(visits, capacity);
        CAPTURE(seed, count, capacity.out_at_once, capacity.shop_takes);
        check_sound(visits, capacity, plan);
        CHECK(plan.proven);
        CHECK(plan.cost == least_cost(visits, capacity));
    }
}

TEST_CASE("more room never costs more", "[plan][stagger][property]") {
    std::int32_t dearer = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        support::Random random{seed};
        const auto visits = random_visits(random, 6, {100, 80, 900});
        const Stagger one = plan::stagger(visits, {1, 1});
        const Stagger two = plan::stagger(visits, {2, 1});
        const Stagger any = plan::stagger(visits, {no_bound, 1});
        const Stagger free = plan::stagger(visits, {no_bound, no_bound});
        CAPTURE(seed);
        CHECK((one.proven && two.proven && any.proven && free.proven));
        CHECK(one.cost >= two.cost);
        CHECK(two.cost >= any.cost);
        CHECK(any.cost >= free.cost);
        CHECK(free.cost == free.alone_cost);
        if (one.cost > two.cost && two.cost > any.cost) ++dearer;
    }
    CHECK(dearer > 30);  // the bounds did bind
}

TEST_CASE("forty aircraft: every bound holds, whatever is proven", "[plan][stagger][property]") {
    // At 10 and 21 the search is cut off where one could go nearer its own day at once.
    for (const std::uint64_t seed : {1U, 2U, 10U, 21U}) {
        support::Random random{seed};
        const auto visits = random_visits(random, 40, {1'500, 150, 90'000});
        const Capacity capacity{static_cast<std::int32_t>(seed % 4 + 1),
                                static_cast<std::int32_t>(seed % 3)};
        CAPTURE(seed);
        const Stagger plan = plan::stagger(visits, capacity);
        check_sound(visits, capacity, plan);
    }
}
