// Records of money, folded: which holds, which belong to the overhaul that is over, and what people
// who disagree come to.
#include "tests/plan/planned.hpp"

using namespace twoclocks;
using support::day;
using support::Planned;

namespace {

timeline::MoneyState money(const Planned& p, const char* today) {
    return timeline::replay(support::journal_of(p.facts), p.aircraft, day(today)).money;
}

facts::CostLine priced(const std::string& key, std::int64_t minor_units) {
    facts::CostLine out = support::cost_line(key);
    out.price = base::Money{minor_units, {}};
    return out;
}

}  // namespace

TEST_CASE("of a line the last record holds, and one left out is gone", "[budget][records]") {
    Planned p;
    p.say("2026-05-01", priced("kit", 100));
    p.say("2026-05-01", priced("kit", 90));  // said anew on the day
    p.say("2026-05-02", priced("paint", 5));
    CHECK(money(p, "2026-04-30").lines.empty());
    REQUIRE(money(p, "2026-06-01").lines.size() == 2);
    CHECK(money(p, "2026-06-01").lines.front().said.price->minor_units == 90);
    facts::CostLine gone = priced("kit", 90);
    gone.left_out = true;
    p.say("2026-05-03", gone);
    const auto left = money(p, "2026-06-01");
    REQUIRE(left.lines.size() == 1);
    CHECK(left.lines.front().said.line == "paint");
}

TEST_CASE("a list recorded in pieces is one version, and versions are in order",
          "[budget][records]") {
    Planned p;
    p.say("2026-05-02", facts::PriceList{"Kits", "A\t2.00 EUR\t\n", {}});
    p.say("2026-05-01", facts::PriceList{"Kits", "A\t1.00 EUR\t\nB\t5.00 EUR\t\n", {}});
    p.say("2026-05-02", facts::PriceList{"Kits", "B\t6.00 EUR\t\nA\t3.00 EUR\t\n", "Ann"});
    const auto state = money(p, "2026-06-01");
    REQUIRE(state.lists.size() == 2);
    CHECK(state.lists[0].on == day("2026-05-01"));
    REQUIRE(state.lists[1].rows.size() == 2);
    CHECK(state.lists[1].rows[0].price.minor_units == 300);  // said last
    CHECK(state.lists[1].rows[1].price.minor_units == 600);
    CHECK(state.lists[1].said_by == "Ann");
}

TEST_CASE("lines of days before the overhaul are those of the last campaign", "[budget][records]") {
    Planned p;
    p.say("2026-03-01", priced("kit", 100));
    p.say("2026-03-01", facts::ExchangeRate{"USD", "EUR", "0.9", {}});
    const facts::Fact item = p.pen.add(day("2026-01-01"),
                                       {p.aircraft},
                                       facts::ItemAdded{"Overhaul", facts::ItemRole::overhaul, {}});
    p.facts.push_back(item);
    facts::WorkDone work;
    work.renews = {{item.id, {}}};
    p.facts.push_back(p.pen.write(day("2026-04-01"), {p.aircraft, item.id}, work));
    p.say("2026-04-01", priced("paint", 5));
    const auto state = money(p, "2026-06-01");
    REQUIRE(state.lines.size() == 1);
    CHECK(state.lines.front().said.line == "paint");
    REQUIRE(state.past.size() == 1);
    CHECK(state.past.front().said.line == "kit");
    CHECK(state.rates.size() == 1);
}

TEST_CASE("people who disagree about a line: the dearer, and no relief", "[budget][records]") {
    Planned p;
    facts::CostLine said = priced("kit", 10'000);
    said.relief = facts::DutyRelief::processing;
    said.tax = facts::TaxCase::none;
    p.say("2026-05-01", said);
    const facts::Fact first = p.facts.back();
    support::Pen ben{"ben"};
    said.price = base::Money{12'000, {}};
    said.tax = facts::TaxCase::borne;
    p.facts.push_back(p.pen.correct(first, said));
    said.price = base::Money{9'000, {}};
    said.tax = facts::TaxCase::recoverable;
    said.relief = facts::DutyRelief::none;
    p.facts.push_back(ben.correct(first, said));
    const auto state = money(p, "2026-06-01");
    REQUIRE(state.lines.size() == 1);
    CHECK(state.lines.front().said.price->minor_units == 12'000);
    CHECK(state.lines.front().said.tax == facts::TaxCase::unknown);
    CHECK(state.lines.front().said.relief == facts::DutyRelief::none);
}
