// Records of cores, payments and the reserve, folded: which holds, what an overhaul ends, and what
// people who disagree come to.
#include "tests/plan/planned.hpp"

using namespace twoclocks;
using support::day;
using support::Planned;

namespace {

timeline::MoneyState cash_of(const Planned& p, const char* today) {
    return timeline::replay(support::journal_of(p.facts), p.aircraft, day(today)).money;
}

facts::CoreStep core_step(const char* key, facts::CoreStage stage) {
    facts::CoreStep out;
    out.core = key;
    out.stage = stage;
    return out;
}

/// An overhaul done on a day.
void overhaul(Planned& p, const char* on) {
    const facts::Fact item = p.pen.add(day("2026-01-01"),
                                       {p.aircraft},
                                       facts::ItemAdded{"Overhaul", facts::ItemRole::overhaul, {}});
    p.facts.push_back(item);
    facts::WorkDone work;
    work.renews = {{item.id, {}}};
    p.facts.push_back(p.pen.write(day(on), {p.aircraft, item.id}, work));
}

}  // namespace

TEST_CASE("of a core the last record holds, and every step of it stands", "[budget][records]") {
    Planned p;
    p.say("2026-05-03", core_step("gearbox", facts::CoreStage::sent));  // before the core itself
    facts::Core core = support::core("gearbox");
    p.say("2026-05-01", core);
    core.serial = "0117";
    p.say("2026-05-02", core);
    p.say("2026-05-02", core_step("gearbox", facts::CoreStage::off));
    const auto state = cash_of(p, "2026-06-01");
    REQUIRE(state.cores.size() == 1);
    CHECK(state.cores.front().said.serial == "0117");
    REQUIRE(state.cores.front().steps.size() == 2);
    CHECK(state.cores.front().steps.front().said.stage == facts::CoreStage::off);
    core.left_out = true;
    p.say("2026-05-04", core);
    CHECK(cash_of(p, "2026-06-01").cores.empty());
    CHECK(cash_of(p, "2026-05-03").cores.size() == 1);
}

TEST_CASE("an overhaul ends payments up to its day; its cores go on until they are settled",
          "[budget][records]") {
    Planned p;
    p.say("2026-02-01", support::core("gearbox"));
    p.say("2026-02-01", support::core("clutch"));
    p.say("2026-02-02", facts::Payment{"kit", base::Money{5, {}}, {}, {}, {}});
    p.say("2026-02-02", facts::Balance{"Reserve", base::Money{7, {}}, {}});
    p.say("2026-03-01", core_step("clutch", facts::CoreStage::settled));
    overhaul(p, "2026-04-01");
    p.say("2026-04-02", facts::Payment{"kit", base::Money{6, {}}, {}, {}, {}});
    p.say("2026-04-02", support::core("servo"));
    const auto state = cash_of(p, "2026-06-01");
    REQUIRE(state.cores.size() == 2);
    CHECK(state.cores[0].said.core == "gearbox");
    CHECK(state.cores[0].released == day("2026-04-01"));
    CHECK(!state.cores[1].released);
    REQUIRE(state.payments.size() == 1);
    CHECK(state.payments.front().said.amount->minor_units == 6);
    REQUIRE(state.past_payments.size() == 1);
    CHECK(state.past_payments.front().said.amount->minor_units == 5);
    CHECK(state.balances.size() == 1);
    p.say("2026-07-01", core_step("gearbox", facts::CoreStage::settled));
    CHECK(cash_of(p, "2026-07-02").cores.size() == 2);  // settled after it, still told
}

TEST_CASE("a core said anew after the release still belongs to the overhaul before it",
          "[budget][records]") {
    Planned p;
    facts::Core core = support::core("gearbox");
    p.say("2026-02-01", core);
    overhaul(p, "2026-04-01");
    core.serial = "0117";
    p.say("2026-05-01", core);
    facts::Core late = support::core("clutch");
    late.shipped_on = day("2026-02-15");
    p.say("2026-05-01", late);
    const auto state = cash_of(p, "2026-06-01");
    REQUIRE(state.cores.size() == 2);
    CHECK(state.cores[0].said.serial == "0117");
    CHECK(state.cores[0].released == day("2026-04-01"));
    CHECK(state.cores[1].released == day("2026-04-01"));
}

TEST_CASE("people who disagree about a core: less comes back, and sooner", "[budget][records]") {
    Planned p;
    facts::Core said = support::core("gearbox");
    said.best_credit = base::Money{16'000, {}};
    said.part_permille = 300;
    said.return_by = day("2026-08-01");
    p.say("2026-05-01", said);
    const facts::Fact first = p.facts.back();
    support::Pen ben{"ben"};
    said.best_credit = base::Money{15'000, {}};
    p.facts.push_back(p.pen.correct(first, said));
    said.best_credit = base::Money{17'000, {}};
    said.part_permille = 200;
    said.return_by = day("2026-07-01");
    p.facts.push_back(ben.correct(first, said));
    const auto state = cash_of(p, "2026-06-01");
    REQUIRE(state.cores.size() == 1);
    CHECK(state.cores.front().said.best_credit->minor_units == 15'000);
    CHECK(!state.cores.front().said.part_permille);
    CHECK(state.cores.front().said.return_by == day("2026-07-01"));
}

TEST_CASE("people who disagree about the reserve: the smaller of what is there",
          "[budget][records]") {
    Planned p;
    p.say("2026-05-01", facts::Balance{"Reserve", base::Money{900, {}}, {}});
    const facts::Fact first = p.facts.back();
    support::Pen ben{"ben"};
    p.facts.push_back(p.pen.correct(first, facts::Balance{"Reserve", base::Money{800, {}}, {}}));
    p.facts.push_back(ben.correct(first, facts::Balance{"Reserve", base::Money{850, {}}, {}}));
    CHECK(cash_of(p, "2026-06-01").balances.front().said.amount->minor_units == 800);
}
