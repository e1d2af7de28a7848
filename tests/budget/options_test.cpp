// Which lines count: choices, serials, what needs and what excludes another.
#include "tests/budget/lines.hpp"

#include <utility>

using namespace twoclocks;
using namespace twoclocks::budget;
using namespace twoclocks::budget::by_hand;
using base::Trouble;
using facts::CostTaken;

using Codes = std::vector<Trouble>;

namespace {

facts::CostLine option(const char* key, CostTaken taken) {
    facts::CostLine out = line(key, "100 EUR");
    out.taken = taken;
    return out;
}

std::vector<timeline::CostLineState> all(std::vector<facts::CostLine> lines) {
    std::vector<timeline::CostLineState> out;
    for (facts::CostLine& one : lines)
        out.push_back(recorded(std::move(one)));
    return out;
}

}  // namespace

TEST_CASE("what is offered does not count until it is chosen", "[budget][options]") {
    const auto lines = all({line("kit", "1 EUR"),
                            option("seats", CostTaken::offered),
                            option("paint", CostTaken::chosen)});
    const Settled settled = settle(lines, {});
    CHECK(settled.counts == std::vector<bool>{true, false, true});
    CHECK(settled.faults.empty());
    CHECK(settled.why[1].empty());
}

TEST_CASE("of a choice one counts; none and two are told", "[budget][options][bad]") {
    facts::CostLine own = option("own", CostTaken::chosen);
    facts::CostLine other = option("other", CostTaken::offered);
    own.one_of = other.one_of = "Engine";
    CHECK(settle(all({own, other}), {}).faults.empty());
    other.taken = CostTaken::chosen;
    const auto both = all({own, other});
    const Settled twice = settle(both, {});
    CHECK(codes(twice.faults) == Codes{Trouble::option_twice});
    CHECK(twice.counts == std::vector<bool>{true, true});  // costs are not left out
    own.taken = other.taken = CostTaken::offered;
    CHECK(codes(settle(all({own, other}), {}).faults) == Codes{Trouble::option_unsettled});
}

TEST_CASE("an option for other serials cannot be had", "[budget][options][bad]") {
    facts::CostLine tank = option("tank", CostTaken::chosen);
    tank.serials = "1001-1234, 1240";
    CHECK(settle(all({tank}), {{}, {}, "1100"}).counts == std::vector<bool>{true});
    const auto lines = all({tank});
    const Settled wrong = settle(lines, {{}, {}, "1300"});
    CHECK(wrong.counts == std::vector<bool>{false});
    CHECK(codes(wrong.why[0]) == Codes{Trouble::option_serial});
    CHECK(codes(settle(lines, {}).why[0]) == Codes{Trouble::option_serial});  // none is known
}

TEST_CASE("what needs another falls with it, and so on", "[budget][options][bad]") {
    facts::CostLine first = option("first", CostTaken::chosen);
    facts::CostLine second = option("second", CostTaken::chosen);
    first.needs = "second";
    second.needs = "third";
    const auto lines = all({first, second, option("third", CostTaken::offered)});
    const Settled settled = settle(lines, {});
    CHECK(settled.counts == std::vector<bool>{false, false, false});
    CHECK(codes(settled.why[0]) == Codes{Trouble::option_needs});
    CHECK(codes(settled.why[1]) == Codes{Trouble::option_needs});
    const auto whole = all({first, second, option("third", CostTaken::chosen)});
    CHECK(settle(whole, {}).counts == std::vector<bool>{true, true, true});
}

TEST_CASE("of two that exclude each other one goes", "[budget][options][bad]") {
    facts::CostLine first = option("first", CostTaken::chosen);
    facts::CostLine second = option("second", CostTaken::chosen);
    first.excludes = "second";
    second.excludes = "first";
    const auto lines = all({first, second});
    const Settled settled = settle(lines, {});
    CHECK(settled.counts == std::vector<bool>{false, true});
    CHECK(codes(settled.why[0]) == Codes{Trouble::option_excludes});
}

TEST_CASE("lines of another route or another work are not part of it", "[budget][options]") {
    facts::CostLine freight = line("freight", "1 EUR");
    freight.route = "far";
    facts::CostLine kit = line("kit", "1 EUR");
    kit.work = facts::CostFor::overhaul;
    facts::CostLine check = line("check", "1 EUR");
    check.work = facts::CostFor::calendar_work;
    const auto lines = all({freight, kit, check, line("paint", "1 EUR")});
    const auto keys = [&](const EstimateFor& asked) {
        std::string out;
        for (const auto* one : settle(lines, asked).lines)
            out += one->said.line + ' ';
        return out;
    };
    CHECK(keys({}) == "kit paint ");
    CHECK(keys({"far", {}, {}}) == "freight kit paint ");
    CHECK(keys({"near", facts::PlanWork::calendar_work, {}}) == "check paint ");
}
