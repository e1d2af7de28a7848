// Ten thousand campaigns: dates to act by, waiting, and what decides the end.
#include "engine/plan/campaign.hpp"

#include "tests/plan/networks.hpp"
#include "tests/support/pen.hpp"

#include "engine/plan/default_tasks.hpp"
#include "engine/plan/pert.hpp"

using namespace twoclocks;
using Catch::Matchers::WithinAbs;
using plan::DayKind;
using plan::Estimate;
using plan::Outcome;
using plan::Role;
using plan::RunOut;
using plan::Stage;
using plan::Terms;
using plan::WorkDays;
using support::at;
using support::day;
using support::network;

namespace {

constexpr base::Date monday{20'787};  // 30 November 2026

plan::Task with_role(plan::Task task, Stage stage, Role role) {
    task.stage = stage;
    task.role = role;
    return task;
}

/// Order, wait for the kit, stop, work: everything takes just so long, in calendar days.
plan::Tasks plain_tasks() {
    using support::task;
    return {with_role(task("o", {2, 2, 2}), Stage::ahead, Role::order),
            with_role(task("k", {168, 168, 168}, "o"), Stage::ahead, Role::kit_here),
            with_role(task("s", {0, 0, 0}), Stage::grounded, Role::stop),
            with_role(task("f", {30, 30, 30}, "sk"), Stage::grounded, Role::fit),
            with_role(task("r", {1, 1, 1}, "f"), Stage::grounded, Role::release),
            with_role(task("c", {5, 5, 5}, "s"), Stage::after, Role::send_cores),
            with_role(task("b", {90, 90, 90}, "c"), Stage::after, Role::credit)};
}

Outcome lived(const plan::Tasks& tasks, const RunOut& run_out, const Terms& terms = {}) {
    return plan::live_through(network(tasks), WorkDays{monday, {}}, run_out, terms);
}

constexpr RunOut sure_in_300{300, 300, 300, {}};

}  // namespace

TEST_CASE("without chance every date can be counted on the fingers", "[plan][campaign]") {
    const Outcome out = lived(plain_tasks(), sure_in_300);
    // The limit comes on day 300; the kit takes 168 days and ordering it 2: day 130 is the last.
    CHECK(out.order_by == 130);
    CHECK(out.stop_on == 300);
    // Ordered today, the kit is here when day 169 ends; nobody waits, work takes 31 days from 300.
    CHECK(out.kit_here.early == 169);
    CHECK(out.kit_here.late == 169);
    CHECK(out.waiting_permille == 0);
    CHECK(out.back_on == 330);
    CHECK(out.out_days == 31);
    // Cores go 5 days after the stop and are worth money 90 days later.
    CHECK(out.credit.middle == 394);
    CHECK(!out.not_before);
    CHECK(!out.book_by);
}

TEST_CASE("24 weeks and two weeks kept free before 30 June is 30 December", "[plan][outside]") {
    // Common practice, no source: the kit takes 21 to 24 weeks.
    plan::Tasks tasks = plain_tasks();
    tasks[0].days = {0, 0, 0};
    const base::Date limit = day("2027-06-30");
    const std::int32_t ahead = limit.day_number - monday.day_number;
    const Outcome out = lived(tasks, {ahead, ahead, ahead, {}}, {90, 14, {}, {}});
    REQUIRE(out.order_by);
    CHECK(base::print_date({monday.day_number + *out.order_by}) == "2026-12-30");
}

TEST_CASE("ordered too late the aircraft waits, and the rest follows", "[plan][campaign]") {
    const Outcome out = lived(plain_tasks(), {100, 100, 100, {}});
    CHECK(out.order_by == -70);
    CHECK(out.waiting_permille == 1'000);
    CHECK(out.waiting_days == 70);
    CHECK(out.waiting_bad == 70);
    CHECK(out.back_on == 200);
    CHECK(out.out_days == 101);
}

TEST_CASE("a limit that is behind is one that comes today", "[plan][campaign][bad]") {
    const Outcome out = lived(plain_tasks(), {-40, -40, -40, {}});
    CHECK(out.stop_on == -40);
    CHECK(out.back_on == 200);
    CHECK(out.waiting_days == 170);
}

TEST_CASE("a kit must not wait longer than its cores allow", "[plan][campaign]") {
    // Cores are sent when day 305 begins; 120 days from the kit's arrival: it comes on day 185 at
    // the soonest, so it is ordered on day 15 at the soonest.
    CHECK(lived(plain_tasks(), sure_in_300, {90, 0, 120, {}}).not_before == 15);
    // It must be in use 100 days after it came, and is from day 300 on.
    CHECK(lived(plain_tasks(), sure_in_300, {90, 0, {}, 100}).not_before == 30);
    CHECK(lived(plain_tasks(), sure_in_300, {90, 0, 120, 100}).not_before == 30);
}

TEST_CASE("what is ordered has no last day for it", "[plan][campaign]") {
    plan::Tasks tasks = plain_tasks();
    tasks[0].progress.begun = -10;
    tasks[0].progress.finished = -8;
    CHECK(!lived(tasks, sure_in_300).order_by);
    tasks[1].progress.promised = 200;
    const Outcome out = lived(tasks, {100, 100, 100, {}});
    CHECK(out.kit_here.middle == 199);
    CHECK(out.waiting_days == 100);
}

TEST_CASE("to be surer is to act earlier", "[plan][campaign]") {
    const plan::Tasks tasks = plan::default_tasks(plan::Work::overhaul);
    const RunOut run_out{250, 300, 420, 600};
    std::int32_t order = 10'000;
    std::int32_t stop = 10'000;
    std::int32_t back = 0;
    for (const std::int32_t percent : {50, 70, 80, 90, 95, 99}) {
        const Outcome out = lived(tasks, run_out, {percent, 0, {}, {}});
        REQUIRE(out.order_by);
        CHECK(*out.order_by < order);
        CHECK(out.stop_on < stop);
        CHECK(out.back_on > back);
        order = *out.order_by;
        stop = out.stop_on;
        back = out.back_on;
    }
}

TEST_CASE("the limit is as likely as the forecast has it", "[plan][campaign]") {
    const auto days = plan::run_out_days({100, 200, 400, {}});
    const auto by = [&](double day) {
        std::int32_t sooner = 0;
        for (const double one : days)
            sooner += one <= day ? 1 : 0;
        return static_cast<double>(sooner) / static_cast<double>(days.size());
    };
    CHECK_THAT(by(100), WithinAbs(0.1, 0.004));
    CHECK_THAT(by(200), WithinAbs(0.5, 0.004));
    CHECK_THAT(by(400), WithinAbs(0.9, 0.004));
    for (const double one : plan::run_out_days({100, 200, 400, 250}))
        CHECK(one <= 250);
    // Perhaps never, and still never after the calendar.
    CHECK(plan::run_out_days({100, 200, {}, 500}).back() == 500);
}

TEST_CASE("two paths alike are over later than either: the last decides", "[plan][campaign]") {
    using support::task;
    const auto pair =
        network({with_role(task("s", {0, 0, 0}), Stage::grounded, Role::stop),
                 task("a", {20, 40, 60}, "s"),
                 task("b", {20, 40, 60}, "s"),
                 with_role(task("r", {0, 0, 0}, "ab"), Stage::grounded, Role::release)});
    const plan::Pert pert = plan::pert_of(pair);
    CHECK(plan::pert_chance(pert, pert.mean) == 0.5);
    const Outcome out = plan::live_through(pair, WorkDays{monday, {}}, {0, 0, 0, {}}, {});
    CHECK(out.handbook_day == 39);
    // Both over by their middle: one of four.
    CHECK_THAT(out.handbook_permille, WithinAbs(250, 15));
    // Each decides in half of the ways, and where it ends less than a day sooner: two draws from
    // this triangle lie within a day in 2 / 3 / 20 * 2 of the ways.
    CHECK_THAT(out.critical_permille[at(pair, "a")], WithinAbs(533, 15));
    CHECK_THAT(out.critical_permille[at(pair, "b")], WithinAbs(533, 15));
}

TEST_CASE("slices make no difference", "[plan][campaign]") {
    const auto net = network(plan::default_tasks(plan::Work::overhaul));
    const RunOut run_out{150, 220, 300, 400};
    const Outcome at_once = plan::live_through(net, WorkDays{monday, {}}, run_out, {});
    plan::Campaign campaign{net, WorkDays{monday, {}}, run_out, {}};
    std::int32_t slices = 1;
    while (!campaign.go_on(777))
        ++slices;
    CHECK(slices == 13);
    const Outcome sliced = campaign.outcome();
    CHECK(sliced.order_by == at_once.order_by);
    CHECK(sliced.back_by_share == at_once.back_by_share);
    CHECK(sliced.critical_permille == at_once.critical_permille);
}

TEST_CASE("the same campaign on every build", "[plan][campaign]") {
    // Natively and as wasm: these figures are ours, and the same bits make them.
    const Outcome out =
        lived(plan::default_tasks(plan::Work::overhaul), {150, 220, 300, 400}, {90, 14, 120, 365});
    std::string figures = std::to_string(*out.order_by) + ' ' + std::to_string(*out.book_by) + ' ' +
                          std::to_string(out.back_on) + ' ' + std::to_string(out.waiting_permille);
    for (const std::int32_t share : out.back_by_share)
        figures += ' ' + std::to_string(share);
    for (const std::int32_t often : out.critical_permille)
        figures += ' ' + std::to_string(often);
    CHECK(figures ==
          "-21 81 373 338 260 263 267 270 274 276 280 283 288 294 301 309 317 325 336 346 359 373 "
          "394 313 0 306 307 300 300 0 0 575 663 999 999 15 993 751 377 993 999 1000 1000 0 1000 "
          "1000 1000 1000 0 0");
}
