// What bills of an overhaul that is over leave open.
#include "engine/budget/past_bills.hpp"

#include "tests/budget/lines.hpp"
#include "tests/plan/planned.hpp"

using namespace twoclocks;
using namespace twoclocks::budget;
using namespace twoclocks::budget::by_hand;
using base::Trouble;
using support::day;

namespace {

timeline::PaymentState paid(const char* of, const char* amount, const char* on, bool back = false) {
    facts::Payment said;
    said.line = of;
    said.amount = by_hand::money(amount);
    said.back = back;
    return {said, day(on), {}};
}

/// A kit of 100,000 and labour of 30,000.01 of an overhaul that is over.
timeline::MoneyState two_bills() {
    timeline::MoneyState out;
    out.past = {recorded(line("kit", "100000 EUR")), recorded(line("labour", "30000.01 EUR"))};
    return out;
}

std::vector<PastBill> open_of(const timeline::MoneyState& money) {
    base::Problems faults;
    auto out = past_bills(money, setting(), faults);
    CHECK(faults.empty());
    return out;
}

}  // namespace

TEST_CASE("of an overhaul that is over, bills that were paid in part stay open", "[budget][past]") {
    timeline::MoneyState bills = two_bills();
    CHECK(open_of(bills).empty());  // nothing says that they were not paid
    bills.past_payments = {paid("kit", "40000 EUR", "2025-02-01"),
                           paid("kit", "500 EUR", "2025-03-01", true),
                           paid("labour", "30000.01 EUR", "2025-05-01")};
    const auto open = open_of(bills);
    REQUIRE(open.size() == 1);
    CHECK(open.front().name == name_of(line("kit", "")));
    // By hand: 40,000.00 - 500.00 = 39,500.00 of 100,000.00.
    CHECK(open.front().paid == 39'500'00);
    CHECK(open.front().whole == 100'000'00);
    bills.past_payments.push_back(paid("kit", "60500 EUR", "2025-06-01"));
    CHECK(open_of(bills).empty());
}

TEST_CASE("what is paid after the release is for the old bill, unless a new line bears its name",
          "[budget][past]") {
    timeline::MoneyState bills = two_bills();
    bills.payments = {paid("kit", "99999.99 EUR", "2026-01-01")};
    REQUIRE(open_of(bills).size() == 1);
    CHECK(open_of(bills).front().paid == 99'999'99);
    bills.lines = {recorded(line("kit", "120000 EUR"))};
    CHECK(open_of(bills).empty());
}

TEST_CASE("a past bill without a price is told as not known, one without a rate as a fault",
          "[budget][past]") {
    timeline::MoneyState bills = two_bills();
    bills.past.front().said.price.reset();
    bills.past_payments = {paid("kit", "5 EUR", "2025-02-01"),
                           paid("labour", "5 USD", "2025-02-01")};
    base::Problems faults;
    const auto open = past_bills(bills, setting(), faults);
    REQUIRE(open.size() == 1);
    CHECK(!open.front().whole);
    CHECK(open.front().paid == 5'00);
    CHECK(codes(faults) == std::vector{Trouble::rate_missing});
}

TEST_CASE("lines and payments of the overhaul before the last are of no bill any more",
          "[budget][records]") {
    support::Planned p;
    const facts::Fact item = p.pen.add(day("2010-01-01"),
                                       {p.aircraft},
                                       facts::ItemAdded{"Overhaul", facts::ItemRole::overhaul, {}});
    p.facts.push_back(item);
    const auto overhaul = [&](const char* on) {
        facts::WorkDone work;
        work.renews = {{item.id, {}}};
        p.facts.push_back(p.pen.write(day(on), {p.aircraft, item.id}, work));
    };
    p.say("2012-01-01", line("old", "1 EUR"));
    p.say("2012-01-02", facts::Payment{"old", base::Money{1, {}}, {}, {}, {}});
    overhaul("2012-06-01");
    p.say("2024-01-01", line("kit", "2 EUR"));
    p.say("2024-01-02", facts::Payment{"kit", base::Money{2, {}}, {}, {}, {}});
    const auto now = [&](const char* today) {
        return timeline::replay(support::journal_of(p.facts), p.aircraft, day(today)).money;
    };
    REQUIRE(now("2024-03-01").past.size() == 1);
    CHECK(now("2024-03-01").past.front().said.line == "old");
    CHECK(now("2024-03-01").past_payments.size() == 1);
    overhaul("2024-06-01");
    const auto money = now("2024-07-01");
    REQUIRE(money.past.size() == 1);
    CHECK(money.past.front().said.line == "kit");
    REQUIRE(money.past_payments.size() == 1);
    CHECK(money.past_payments.front().said.line == "kit");
    CHECK(money.lines.empty());
    CHECK(money.payments.empty());
}
