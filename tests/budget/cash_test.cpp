// When money moves: shares, rests, payments, months, the lowest point, a week later.
#include "engine/budget/cash.hpp"

#include "tests/budget/lines.hpp"

#include <cmath>
#include <random>

using namespace twoclocks;
using namespace twoclocks::budget;
using namespace twoclocks::budget::by_hand;
using base::Trouble;
using facts::CostGroup;
using facts::PaidAt;
using support::day;

using Codes = std::vector<Trouble>;

namespace {

/// What is recorded of cash, and the plan's days.
struct Recorded {
    std::vector<timeline::CostLineState> lines;
    std::vector<timeline::PayTermState> terms{};
    std::vector<timeline::PaymentState> payments{};
    std::vector<timeline::CoreState> cores{};
    Setting with{setting()};
    base::Problems faults{};

    Recorded() {
        with.days.ordered = day("2026-02-01");
        with.days.booked = day("2026-02-10");
        with.days.shipped = day("2026-07-01");
        with.days.stopped = day("2026-08-01");
        with.days.back = day("2026-10-01");
        facts::CostLine kit = line("kit", "100000 EUR");
        kit.group = CostGroup::kit;
        facts::CostLine labour = line("labour", "30000.01 EUR");
        labour.group = CostGroup::labour;
        lines = {recorded(kit), recorded(labour)};
    }

    void term(const char* key, const char* of, std::int32_t permille, PaidAt at) {
        facts::PayTerm said;
        said.term = key;
        said.line = of;
        said.permille = permille;
        said.at = at;
        terms.push_back({said, day("2026-01-01"), {}});
    }

    void paid(const char* of, const char* amount, const char* on) {
        facts::Payment said;
        said.line = of;
        said.amount = money(amount);
        payments.push_back({said, day(on), {}});
    }

    [[nodiscard]] Estimate costs() const { return estimate(lines, {}, with, 0); }

    [[nodiscard]] CashCourse course(std::int64_t in_hand = 0) {
        faults.clear();
        return cash_course(costs(), state(), with, in_hand, faults);
    }

    [[nodiscard]] timeline::MoneyState state() const {
        timeline::MoneyState out;
        out.pay_terms = terms;
        out.payments = payments;
        out.cores = cores;
        return out;
    }
};

std::vector<std::int64_t> amounts(const CashCourse& course) {
    std::vector<std::int64_t> out;
    for (const Flow& flow : course.flows)
        out.push_back(flow.amount);
    return out;
}

using Amounts = std::vector<std::int64_t>;

}  // namespace

TEST_CASE("without terms a line is paid with its group", "[budget][cash]") {
    Recorded r;
    const CashCourse out = r.course();
    CHECK(amounts(out) == Amounts{-100'000'00, -30'000'01});
    CHECK(out.flows[0].on == day("2026-07-01"));
    CHECK(out.flows[1].on == day("2026-10-01"));
    CHECK(out.lowest == -130'000'01);
    CHECK(out.lowest_on == day("2026-10-01"));
    CHECK(r.faults.empty());
}

TEST_CASE("shares of a line, of a group and of all: the nearest counts, and nothing is lost",
          "[budget][cash]") {
    Recorded r;
    r.term("all", "", 100, PaidAt::booking);
    CHECK(amounts(r.course()) == Amounts{-10'000'00, -3'000'01, -90'000'00, -27'000'00});
    facts::PayTerm of_kits;
    of_kits.term = "kits";
    of_kits.group = CostGroup::kit;
    of_kits.permille = 500;
    r.terms.push_back({of_kits, day("2026-01-01"), {}});
    CHECK(amounts(r.course()) == Amounts{-50'000'00, -3'000'01, -50'000'00, -27'000'00});
    r.term("own", "kit", 300, PaidAt::order);
    r.term("own2", "kit", 700, PaidAt::release);
    r.terms.back().said.after_days = 30;
    const CashCourse out = r.course();
    CHECK(amounts(out) == Amounts{-30'000'00, -3'000'01, -27'000'00, -70'000'00});
    CHECK(out.flows.back().on == day("2026-10-31"));
    CHECK(r.faults.empty());
    r.term("own3", "kit", 1, PaidAt::stop);
    CHECK(amounts(r.course()) == Amounts{-30'000'00, -3'000'01, -27'000'00, -70'000'00});
    CHECK(codes(r.faults) == Codes{Trouble::terms_over_whole});
}

TEST_CASE("the deposit of a line is its share where it has no terms", "[budget][cash]") {
    Recorded r;
    r.lines.front().said.deposit_permille = 300;
    const CashCourse out = r.course();
    CHECK(amounts(out) == Amounts{-30'000'00, -70'000'00, -30'000'01});
    CHECK(out.flows.front().on == day("2026-02-01"));
}

TEST_CASE("what was paid takes the earliest shares, and too much is told", "[budget][cash]") {
    Recorded r;
    r.with.today = day("2026-03-01");
    r.term("own", "kit", 300, PaidAt::order);
    // Not paid yet though the day is over: owed today.
    CHECK(r.course().flows.front().on == day("2026-03-01"));
    CHECK(r.course().flows.front().was_due == day("2026-02-01"));
    r.paid("kit", "40000 EUR", "2026-02-02");
    CashCourse out = r.course();
    CHECK(amounts(out) == Amounts{-40'000'00, -60'000'00, -30'000'01});
    CHECK(out.flows.front().kind == FlowKind::paid);
    CHECK(out.lowest == -90'000'01);                     // what was paid is no longer in hand
    r.payments.back().said.amount = money("30000 EUR");  // the first share, to the cent
    CHECK(amounts(r.course()) == Amounts{-30'000'00, -70'000'00, -30'000'01});
    r.payments.back().said.amount = money("40000 EUR");
    r.paid("kit", "60000.02 EUR", "2026-02-20");
    out = r.course();
    CHECK(codes(r.faults) == Codes{Trouble::paid_too_much});
    CHECK(out.lowest == -30'000'01);
    r.paid("paint", "1 EUR", "2026-02-21");
    (void)r.course();
    CHECK(codes(r.faults) == Codes{Trouble::paid_too_much, Trouble::payment_unplaced});
    r.payments.clear();
    r.paid("kit", "1 USD", "2026-02-02");
    CHECK(amounts(r.course()).size() == 3);
    CHECK(codes(r.faults) == Codes{Trouble::rate_missing});
}

TEST_CASE("a payment takes the earliest share whatever was recorded first, a refund is owed again",
          "[budget][cash]") {
    Recorded r;
    r.term("later", "kit", 700, PaidAt::release);
    r.term("sooner", "kit", 300, PaidAt::order);
    r.paid("kit", "30000 EUR", "2026-01-01");
    CashCourse out = r.course();
    CHECK(out.lowest == -100'000'01);
    REQUIRE(out.flows.size() == 3);
    CHECK(out.flows[1].on == day("2026-10-01"));
    CHECK(out.flows[2].on == day("2026-10-01"));
    r.paid("kit", "10000 EUR", "2026-01-01");
    r.payments.back().said.back = true;
    CHECK(r.course().last == -110'000'01);
}

TEST_CASE("tax that comes back comes after it was paid", "[budget][cash]") {
    Recorded r;
    r.lines.front().said.tax = facts::TaxCase::recoverable;
    r.lines.front().said.tax_permille = 200;
    CashCourse out = r.course();
    CHECK(amounts(out) == Amounts{-120'000'00, 20'000'00, -30'000'01});
    CHECK(out.flows[1].on == day("2026-08-30"));  // 60 days: our estimate
    r.with.terms.tax_back_days = 10;
    out = r.course();
    CHECK(out.flows[1].on == day("2026-07-11"));
    CHECK(out.lowest == -130'000'01);
    CHECK(out.last == -130'000'01);
    // On one day money goes before it comes.
    r.with.terms.tax_back_days = 0;
    CHECK(r.course(0).months[6].lowest == -120'000'00);
}

TEST_CASE("months run on, with what is left at the end of each", "[budget][cash]") {
    Recorded r;
    const CashCourse out = r.course(150'000'00);
    REQUIRE(out.months.size() == 10);
    CHECK(out.months.front().first == day("2026-01-01"));
    CHECK(out.months[6].goes == 100'000'00);
    CHECK(out.months[6].left == 50'000'00);
    CHECK(out.months[8].left == 50'000'00);
    CHECK(out.months[9].left == 19'999'99);
    CHECK(out.lowest == 19'999'99);
    r.with.days.back.reset();
    const CashCourse open = r.course();
    CHECK(open.undated == -30'000'01);
    CHECK(open.last == -100'000'00);
    CHECK(!present_cost(open, r.with.today, 50));
}

TEST_CASE("a hundred thousand estimates: no minor unit is lost or made by shares",
          "[budget][cash]") {
    std::mt19937_64 random{90'210};
    const auto below = [&](std::uint64_t most) { return random() % most; };
    std::int32_t several = 0;
    for (std::int32_t way = 0; way < 100'000; ++way) {
        Estimate costs;
        CostedLine one;
        one.counts = true;
        one.known = true;
        one.said = line("kit", "");
        one.said.group = CostGroup::kit;
        one.home_gross.likely = static_cast<std::int64_t>(below(1'000'000'000'000));
        one.home_back.likely = one.home_gross.likely / static_cast<std::int64_t>(2 + below(9));
        costs.lines.push_back(one);
        Recorded r;
        for (std::uint64_t share = below(4); share > 0; --share)
            r.term(std::to_string(share).c_str(),
                   "kit",
                   static_cast<std::int32_t>(below(334)),
                   static_cast<PaidAt>(below(5)));
        base::Problems faults;
        const CashCourse out = cash_course(costs, r.state(), r.with, 0, faults);
        REQUIRE(faults.empty());
        REQUIRE(out.last == one.home_back.likely - one.home_gross.likely);
        REQUIRE(out.lowest <= out.last);
        if (out.flows.size() > 3) ++several;
    }
    CHECK(several > 10'000);
}

TEST_CASE("what a week later costs: standing, rise, less the interest kept", "[budget][cash]") {
    Recorded r;
    r.with.terms.kit_rise_permille = 52;
    facts::PlanCosts costs;
    WeekCost out = week_cost(r.costs(), r.course(), costs, r.with);
    CHECK(!out.standing);
    CHECK(!out.interest);
    costs.lost_day = money("800 EUR");
    costs.saved_day = money("150.50 EUR");
    costs.interest_permille = 30;
    r.lines.front().said.price_on = r.with.days.shipped;  // as it is paid, not risen further
    out = week_cost(r.costs(), r.course(), costs, r.with);
    CHECK(*out.standing == 4'546'50);
    // By hand: 100,000 x (1.052^(7/365) - 1) = 97.26..., rounded up to a cent.
    CHECK(out.rise == 97'27);
    // By hand: 130,000.01 x (1.03^(7/365) - 1) = 73.71..., a gain that is rounded down.
    CHECK(*out.interest == -73'71);
}

TEST_CASE("a price that holds does not rise in a week; one that lapses in it does",
          "[budget][cash]") {
    Recorded r;
    r.with.today = day("2026-01-25");
    r.with.terms.kit_rise_permille = 52;
    facts::CostLine& kit = r.lines.front().said;
    kit.price_on = day("2026-01-01");
    const auto rise = [&] { return week_cost(r.costs(), r.course(), {}, r.with).rise; };
    // Ordered on 1 February, a week later on the 8th.
    kit.price_until = day("2026-02-08");
    CHECK(rise() == 0);
    kit.price_until = day("2026-02-07");
    // By hand: held, 100,000.00; else paid on 8 July, 188 days after its day:
    // 100,000 x (1.052^(188/365) - 1) = 2,645.42..., up to a cent.
    const double grown = 100'000 * (std::pow(1.052, 188.0 / 365.0) - 1);
    CHECK(rise() == static_cast<std::int64_t>(std::ceil(grown * 100)));
    // Ordered already: a week later changes nothing of that.
    r.with.today = day("2026-02-02");
    CHECK(rise() == 0);
}
