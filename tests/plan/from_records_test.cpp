// The campaign as records have it: ours, what somebody said, what is left out, what is begun.
#include "engine/plan/from_records.hpp"

#include "tests/plan/networks.hpp"
#include "tests/plan/planned.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"

using namespace twoclocks;
using base::Date;
using facts::PlanStep;
using facts::PlanTask;
using facts::TaskStep;
using plan::Stage;
using plan::Tasks;
using support::day;
using support::in;
using support::Planned;

namespace {

PlanTask days(const char* task, std::int32_t low, std::int32_t likely, std::int32_t high) {
    PlanTask out;
    out.task = task;
    out.low_days = low;
    out.likely_days = likely;
    out.high_days = high;
    return out;
}

bool waits(const plan::Task& task, const std::string& key, std::int32_t lag = 0) {
    for (const plan::Link& link : task.after)
        if (link.key == key && link.lag == lag) return true;
    return false;
}

}  // namespace

TEST_CASE("what nobody recorded is as ours", "[plan][records]") {
    const Planned p;
    const Tasks ours = plan::default_tasks(plan::Work::overhaul);
    const Tasks tasks = p.tasks("2026-06-01");
    REQUIRE(tasks.size() == ours.size());
    for (std::size_t place = 0; place < ours.size(); ++place) {
        CHECK(tasks[place].days == ours[place].days);
        CHECK(tasks[place].after == ours[place].after);
    }
}

TEST_CASE("the last by day holds, and of one day the one said last", "[plan][records]") {
    Planned p;
    p.say("2026-05-01", days("kit", 100, 110, 120));
    p.say("2026-03-01", days("kit", 10, 11, 12));
    CHECK(in(p.tasks("2026-06-01"), "kit").days == plan::Estimate{100, 110, 120});
    CHECK(in(p.tasks("2026-04-01"), "kit").days == plan::Estimate{10, 11, 12});
    CHECK(in(p.tasks("2026-02-01"), "kit").days == plan::Estimate{147, 154, 168});
    p.say("2026-05-01", days("kit", 90, 130, 140));
    CHECK(in(p.tasks("2026-06-01"), "kit").days == plan::Estimate{90, 130, 140});
}

TEST_CASE("a record changes only what it gives", "[plan][records]") {
    Planned p;
    p.say("2026-05-01", days("build", 20, 30, 40));
    for (const char* on : {"2026-05-01", "2026-05-02"}) {
        PlanTask later;
        later.task = "build";
        later.waits_for = std::string{"findings "} + (on[9] == '1' ? "frame" : "strip");
        p.say(on, later);
        const Tasks tasks = p.tasks("2026-06-01");
        CHECK(in(tasks, "build").days == plan::Estimate{20, 30, 40});
        CHECK(waits(in(tasks, "build"), on[9] == '1' ? "frame" : "strip"));
    }
}

TEST_CASE("a task that is left out keeps nobody waiting", "[plan][records]") {
    Planned p;
    PlanTask out;
    out.task = "money";
    out.left_out = true;
    p.say("2026-05-01", out);
    const Tasks tasks = p.tasks("2026-06-01");
    CHECK(tasks.size() == 26);
    CHECK(waits(in(tasks, "order"), "quotes"));
    CHECK(!waits(in(tasks, "order"), "money"));
    CHECK(plan::make_network(tasks).ok());
}

TEST_CASE("a task of one's own joins where it says", "[plan][records]") {
    Planned p;
    PlanTask own = days("crane", 1, 2, 3);
    own.name = "Hire a crane";
    own.waits_for = "strip+4";
    own.runs = facts::TaskDays::calendar;
    p.say("2026-05-01", own);
    PlanTask later;
    later.task = "build";
    later.waits_for = "findings frame crane";
    p.say("2026-05-01", later);
    const Tasks tasks = p.tasks("2026-06-01");
    const plan::Task& crane = in(tasks, "crane");
    CHECK(crane.name.text == "Hire a crane");
    CHECK(crane.stage == Stage::grounded);
    CHECK(crane.kind == plan::DayKind::calendar);
    CHECK(waits(crane, "strip", 4));
    CHECK(waits(in(tasks, "build"), "crane"));
    // What it takes was not said of the second: it keeps our days.
    CHECK(in(tasks, "build").days == plan::Estimate{10, 14, 20});
    const auto made = plan::make_network(tasks);
    REQUIRE(made.ok());
    CHECK(plan::loose_ends(made.value()).empty());
}

TEST_CASE("what it waits for may not be there", "[plan][records][bad]") {
    Planned p;
    PlanTask own = days("crane", 1, 2, 3);
    own.waits_for = "strip+x";
    p.say("2026-05-01", own);
    const auto made = plan::make_network(p.tasks("2026-06-01"));
    REQUIRE(!made.ok());
    CHECK(made.problems().front().code == base::Trouble::task_unknown_before);
}

TEST_CASE("steps are moments of the plan", "[plan][records]") {
    Planned p;
    p.say("2026-05-20", PlanStep{"quotes", TaskStep::begun, {}, {}});
    p.say("2026-05-25", PlanStep{"quotes", TaskStep::finished, {}, {}});
    p.say("2026-05-28", PlanStep{"kit", TaskStep::promised, day("2026-08-01"), "Order 7"});
    const Tasks tasks = p.tasks("2026-06-01");
    CHECK(in(tasks, "quotes").progress.begun == -12);
    CHECK(in(tasks, "quotes").progress.finished == -6);  // over when 25 May ends
    CHECK(in(tasks, "kit").progress.promised == 62);     // over when 1 August ends
    // Tomorrow's step is not one yet; a later promise takes the place of the first.
    p.say("2026-06-02", PlanStep{"order", TaskStep::begun, {}, {}});
    p.say("2026-05-30", PlanStep{"kit", TaskStep::promised, day("2026-09-01"), {}});
    CHECK(!in(p.tasks("2026-06-01"), "order").progress.begun);
    CHECK(in(p.tasks("2026-06-01"), "kit").progress.promised == 93);
}

TEST_CASE("people who disagree about a step have done less and promise later", "[plan][records]") {
    Planned p;
    const base::Id step =
        p.say("2026-05-20", PlanStep{"kit", TaskStep::promised, day("2026-08-01"), {}});
    support::Pen ben{"ben"};
    const facts::Fact first = p.facts.back();
    p.facts.push_back(
        p.pen.correct(first, PlanStep{"kit", TaskStep::promised, day("2026-08-10"), {}}));
    p.facts.push_back(
        ben.correct(first, PlanStep{"kit", TaskStep::promised, day("2026-09-10"), {}}));
    const auto state = p.state("2026-06-01");
    REQUIRE(state.steps.size() == 1);
    CHECK(state.steps.front().promised == day("2026-09-10"));
    CHECK(state.steps.front().fact == step);
}

TEST_CASE("terms: the last by day, of one day the ones said last", "[plan][records]") {
    Planned p;
    p.say("2026-05-01", facts::PlanTerms{facts::PlanWork::overhaul, 80, 5, 150, {}, {}});
    p.say("2026-05-01", facts::PlanTerms{facts::PlanWork::calendar_work, 95, {}, 120, 400, {}});
    const plan::Terms terms = plan::terms_of(p.state("2026-06-01"));
    CHECK(terms.confidence_percent == 95);
    CHECK(terms.margin_days == 0);  // said anew without it
    CHECK(terms.core_days == 120);
    CHECK(terms.keeps_days == 400);
    CHECK(p.tasks("2026-06-01").size() < 27);  // calendar work
    p.say("2026-05-02", facts::PlanTerms{facts::PlanWork::overhaul, 60, {}, {}, {}, {}});
    CHECK(plan::terms_of(p.state("2026-06-01")).confidence_percent == 60);
    CHECK(p.tasks("2026-06-01").size() == 27);
}

TEST_CASE("closed days ahead count before they come", "[plan][records]") {
    Planned p;
    p.say("2026-06-08", facts::Closed{day("2026-06-12"), "Yard away"});
    const auto work = plan::work_days_of(p.state("2026-06-01"), day("2026-06-01"));
    // 1 June 2026 is a Monday; the second week is closed: ten days of work take three weeks.
    CHECK(work.after(0, 10) == 19);
}

TEST_CASE("a lead time begins when its first task should, by hand", "[plan][lead]") {
    // Monday 1 July 2024, limit in 176 days on 24 December, a Tuesday: hand-over and transport take
    // three working days and end with 26 December; the kit is checked from the 25th on, was ordered
    // 154 days earlier on 24 July, 2, 5 and 10 working days before that are 1 July.
    const timeline::PlanState none;
    CHECK(plan::first_lead_day(none, 176, support::hand_today) == 0);
    CHECK(plan::first_lead_day(none, 177, support::hand_today) == 1);
    timeline::PlanState begun;
    begun.steps = {{"quotes", day("2024-06-20"), {}, {}, {}}};
    CHECK(*plan::first_lead_day(begun, 176, support::hand_today) > 0);
}

TEST_CASE("the day of a limit, as the forecast has it", "[plan][records]") {
    limits::ItemDue item;
    limits::ClockDue calendar;
    calendar.clock = facts::Clock::calendar;
    calendar.known = true;
    calendar.due_on = day("2028-01-01");
    item.clocks = {calendar};
    forecast::Projection projection;
    CHECK(!plan::run_out_of(item, projection, day("2026-06-01")));
    projection.known = true;
    projection.early = day("2026-06-11");
    projection.likely = day("2026-06-21");
    const auto run_out = plan::run_out_of(item, projection, day("2026-06-01"));
    REQUIRE(run_out);
    CHECK(run_out->early == 10);
    CHECK(run_out->likely == 20);
    CHECK(!run_out->late);
    CHECK(run_out->calendar == 579);
}
