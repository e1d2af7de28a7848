// Cores: standing, deadlines, what they may bring, and what cannot be.
#include "engine/budget/cores.hpp"

#include "tests/budget/lines.hpp"

using namespace twoclocks;
using namespace twoclocks::budget;
using namespace twoclocks::budget::by_hand;
using base::Trouble;
using facts::CoreStage;
using support::day;

using Codes = std::vector<Trouble>;

namespace {

/// A gearbox of a kit: 20,000 charged, 16,000 at the best, 9,000 for a part of it.
timeline::CoreState gearbox() {
    timeline::CoreState out;
    out.said.core = "gearbox";
    out.said.charge = money("20000 EUR");
    out.said.best_credit = money("16000 EUR");
    out.said.part_credit = money("9000 EUR");
    out.said.bill = money("1500 EUR");
    out.said.part_permille = 300;
    out.said.nothing_permille = 150;
    out.said.billed_permille = 50;
    out.said.return_by = day("2026-06-01");
    out.said.tax = facts::TaxCase::none;
    out.on = day("2026-01-01");
    return out;
}

void step(timeline::CoreState& core, CoreStage stage, const char* on) {
    facts::CoreStep said;
    said.core = core.said.core;
    said.stage = stage;
    core.steps.push_back({said, day(on), {}});
}

CoreWorked worked_core(const timeline::CoreState& core, const char* today = "2026-01-01") {
    Setting with = setting();
    with.today = day(today);
    return core_of(core, with);
}

}  // namespace

TEST_CASE("what can be counted on is every outcome by its chance, rounded down",
          "[budget][cores]") {
    // By hand: 0.5 x 16,000 + 0.3 x 9,000 - 0.05 x 1,500 = 8,000 + 2,700 - 75 = 10,625.
    const CoreWorked out = worked_core(gearbox());
    CHECK(out.known);
    CHECK(out.credit == Points{-1'500'00, 10'625'00, 16'000'00});
    CHECK(out.notes.empty());
    timeline::CoreState odd = gearbox();
    odd.said.best_credit = money("0.01 EUR");
    odd.said.part_credit = money("0.01 EUR");
    odd.said.bill = money("0.01 EUR");
    // By hand: a cent, by 0.5 + 0.3 - 0.05 = 0.75 of it; less than a cent is none.
    CHECK(worked_core(odd).credit.likely == 0);
    odd.said.part_permille = 0;
    odd.said.nothing_permille = 0;
    odd.said.billed_permille = 1'000;
    CHECK(worked_core(odd).credit.likely == -1);
}

TEST_CASE("without chances nothing is counted on, and the most is told", "[budget][cores]") {
    timeline::CoreState core = gearbox();
    core.said.part_permille.reset();
    core.said.nothing_permille.reset();
    core.said.billed_permille.reset();
    const CoreWorked out = worked_core(core);
    CHECK(out.credit == Points{-1'500'00, 0, 16'000'00});
    CHECK(codes(out.notes) == Codes{Trouble::core_chances_missing});
}

TEST_CASE("a grade leaves nothing to chance, and a settlement is what came", "[budget][cores]") {
    timeline::CoreState core = gearbox();
    step(core, CoreStage::off, "2026-02-01");
    step(core, CoreStage::sent, "2026-02-10");
    step(core, CoreStage::graded, "2026-03-01");
    core.steps.back().said.grade = facts::CoreGrade::billed;
    CoreWorked out = worked_core(core, "2026-03-02");
    CHECK(out.standing == CoreStanding::graded);
    CHECK(out.credit == Points{-1'500'00, -1'500'00, -1'500'00});
    step(core, CoreStage::settled, "2026-04-01");
    core.steps.back().said.credit = money("8123.45 EUR");
    out = worked_core(core, "2026-04-02");
    CHECK(out.standing == CoreStanding::settled);
    CHECK(out.credit.likely == 8'123'45);
    CHECK(out.credit_on == day("2026-04-01"));
}

TEST_CASE("the deadline runs from the shipment or the release, and a customs day may be sooner",
          "[budget][cores]") {
    timeline::CoreState core = gearbox();
    core.said.return_by.reset();
    core.said.return_days = 60;
    CHECK(!recorded_deadline(core));
    core.said.shipped_on = day("2026-03-01");
    CHECK(recorded_deadline(core) == day("2026-04-30"));
    core.said.relief = facts::DutyRelief::processing;
    core.said.export_by = day("2026-04-15");
    CHECK(recorded_deadline(core) == day("2026-04-15"));
    core.said.relief = facts::DutyRelief::none;
    core.said.returns_from = facts::CoreFrom::release;
    CHECK(!recorded_deadline(core));
    core.released = day("2026-05-01");
    CHECK(recorded_deadline(core) == day("2026-06-30"));
    // From the plan it is only expected.
    core.released.reset();
    Setting with = setting();
    with.days.back = day("2026-07-01");
    const CoreWorked out = core_of(core, with);
    CHECK(out.deadline == day("2026-08-30"));
    CHECK(!out.is_deadline_known);
    CHECK(!out.is_late);
}

TEST_CASE("late is not counted on, near must go now, and what is sent is neither",
          "[budget][cores]") {
    timeline::CoreState core = gearbox();
    step(core, CoreStage::off, "2026-02-01");
    CHECK(!must_go_now(core, day("2026-05-01")));
    CHECK(must_go_now(core, day("2026-05-02")));  // thirty days before
    CoreWorked out = worked_core(core, "2026-05-02");
    CHECK(out.is_at_risk);
    CHECK(out.credit.likely == 10'625'00);
    out = worked_core(core, "2026-06-02");
    CHECK(out.is_late);
    CHECK(out.credit.likely == 0);
    CHECK(out.credit.high == 16'000'00);
    CHECK(codes(out.notes) == Codes{Trouble::core_late});
    step(core, CoreStage::sent, "2026-05-20");
    CHECK(!must_go_now(core, day("2026-06-02")));
    out = worked_core(core, "2026-06-02");
    CHECK(!out.is_late);
    CHECK(out.credit.likely == 10'625'00);
    // About three months after it was sent: common practice, no source.
    CHECK(out.credit_on == day("2026-08-19"));
    CHECK(worked_core(core, "2026-08-20").is_overdue);
}

TEST_CASE("sent after its day nothing is counted on until it is graded", "[budget][cores]") {
    timeline::CoreState core = gearbox();
    step(core, CoreStage::sent, "2026-06-02");
    CoreWorked out = worked_core(core, "2026-06-03");
    CHECK(out.is_late);
    CHECK(out.credit.likely == 0);
    CHECK(codes(out.notes) == Codes{Trouble::core_late});
    step(core, CoreStage::graded, "2026-06-20");
    core.steps.back().said.grade = facts::CoreGrade::part;
    out = worked_core(core, "2026-06-21");
    CHECK(!out.is_late);
    CHECK(out.credit.likely == 9'000'00);
}

TEST_CASE("a grade without an amount is not known, and the last end of a core counts",
          "[budget][cores]") {
    timeline::CoreState core = gearbox();
    core.said.bill.reset();
    step(core, CoreStage::graded, "2026-03-01");
    core.steps.back().said.grade = facts::CoreGrade::billed;
    CoreWorked out = worked_core(core, "2026-03-02");
    CHECK(!out.known);
    CHECK(codes(out.notes) == Codes{Trouble::core_worth_missing});
    step(core, CoreStage::forfeited, "2026-03-03");
    core.steps.back().said.billed = money("800 EUR");
    out = worked_core(core, "2026-03-04");
    CHECK(out.standing == CoreStanding::forfeited);
    CHECK(out.credit.likely == -800'00);
    step(core, CoreStage::settled, "2026-04-01");
    core.steps.back().said.credit = money("500 EUR");
    out = worked_core(core, "2026-04-02");
    CHECK(out.standing == CoreStanding::settled);
    CHECK(out.credit.likely == 500'00);
    core = gearbox();
    core.said.best_credit.reset();
    core.said.part_credit.reset();
    core.said.bill.reset();
    CHECK(!worked_core(core).known);
}

TEST_CASE("a deadline before the part can come off is told before the kit is ordered",
          "[budget][cores]") {
    Setting with = setting();
    with.days.off = day("2026-05-25");
    const CoreWorked out = core_of(gearbox(), with);
    CHECK(out.is_at_risk);
    CHECK(codes(out.notes) == Codes{Trouble::core_short});
}

TEST_CASE("what cannot be of a core is told", "[budget][cores]") {
    timeline::CoreState core = gearbox();
    step(core, CoreStage::sent, "2026-02-01");
    step(core, CoreStage::off, "2026-02-02");
    CHECK(codes(core_faults(core)) == Codes{Trouble::core_sent_early});
    core.steps.front().on = day("2026-02-02");
    CHECK(core_faults(core).empty());
    step(core, CoreStage::settled, "2026-05-01");
    core.steps.back().said.credit = money("20000.01 EUR");
    CHECK(codes(core_faults(core)) == Codes{Trouble::core_credit_over});
    core.steps.back().said.credit = money("20000 EUR");
    CHECK(core_faults(core).empty());
    step(core, CoreStage::settled, "2026-05-02");
    core.steps.back().said.credit = money("1 EUR");
    CHECK(codes(core_faults(core)) == Codes{Trouble::core_settled_twice});
    core.said.lien = "Bank of the example";
    core.steps.clear();
    CHECK(codes(worked_core(core).notes) == Codes{Trouble::core_lien});
    core.said.lien.clear();
    core.said.return_by.reset();
    CHECK(codes(worked_core(core).notes) == Codes{Trouble::core_no_deadline});
}

TEST_CASE("tax comes back with the credit only where the owner bore it", "[budget][cores]") {
    timeline::CoreState core = gearbox();
    core.said.tax = facts::TaxCase::borne;
    core.said.tax_permille = 200;
    CHECK(worked_core(core).credit.high == 19'200'00);
    CHECK(worked_core(core).credit.low == -1'800'00);
    core.said.tax = facts::TaxCase::recoverable;
    CHECK(worked_core(core).credit.high == 16'000'00);
    core.said.tax = facts::TaxCase::unknown;
    CHECK(codes(worked_core(core).notes) == Codes{Trouble::tax_unknown});
}

TEST_CASE("a credit in another currency needs a rate, and is never rounded up", "[budget][cores]") {
    timeline::CoreState core = gearbox();
    for (auto* const amount :
         {&core.said.charge, &core.said.best_credit, &core.said.part_credit, &core.said.bill})
        (*amount)->currency = currency("USD");
    CHECK(!worked_core(core).known);
    CHECK(codes(worked_core(core).notes) == Codes{Trouble::rate_missing});
    Setting with = setting();
    with.rates.push_back(rate("USD", "EUR", "0.91733", "2026-01-01"));
    core.said.best_credit = money("100.01 USD");
    core.said.part_credit = money("100.01 USD");
    core.said.bill = money("100.01 USD");
    const CoreWorked out = core_of(core, with);
    // By hand: 100.01 x 0.91733 = 91.7421733; a credit is cut, a bill is rounded up.
    CHECK(out.credit.high == 91'74);
    CHECK(out.credit.low == -91'75);
}

TEST_CASE("a part whose life is over brings nothing and needs its proof", "[budget][cores]") {
    timeline::CoreState core = gearbox();
    core.said.destroy = true;
    step(core, CoreStage::off, "2026-02-01");
    CoreWorked out = worked_core(core, "2026-02-02");
    CHECK(out.standing == CoreStanding::to_send);
    CHECK(out.credit == Points{0, 0, 0});
    step(core, CoreStage::destroyed, "2026-02-03");
    out = worked_core(core, "2026-02-04");
    CHECK(out.standing == CoreStanding::destroyed);
    CHECK(!is_open(out.standing));
}

TEST_CASE("credits lower the net of an overhaul, not of calendar work", "[budget][cores]") {
    Setting with = setting();
    with.cores.push_back(gearbox());
    const std::vector<timeline::CostLineState> lines{recorded(line("kit", "182000 EUR"))};
    const Estimate overhaul = estimate(lines, {}, with);
    CHECK(overhaul.gross.likely == 182'000'00);
    CHECK(overhaul.back == Points{16'000'00, 10'625'00, -1'500'00});
    CHECK(overhaul.net == Points{166'000'00, 171'375'00, 183'500'00});
    CHECK(overhaul.movers.size() == 1);
    CHECK(overhaul.movers.front().core == 0);
    CHECK(overhaul.movers.front().swing == 17'500'00);
    CHECK(overhaul.net_shares.tenth == 166'000'00);  // the best is more likely than one of ten
    CHECK(overhaul.net_shares.ninth >= overhaul.net_shares.half);
    const Estimate calendar = estimate(lines, {{}, facts::PlanWork::calendar_work, {}}, with);
    CHECK(calendar.net.likely == 182'000'00);
    CHECK(calendar.cores.empty());
    with.cores.front().released = day("2025-12-01");
    CHECK(estimate(lines, {}, with).net.likely == 182'000'00);  // of an overhaul that is over
}
