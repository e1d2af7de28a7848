// Sums, shares and what moves them.
#include "tests/budget/lines.hpp"

using namespace twoclocks;
using namespace twoclocks::budget;
using namespace twoclocks::budget::by_hand;
using base::Trouble;
using facts::CostGroup;
using facts::CostTaken;
using facts::TaxCase;

using Codes = std::vector<Trouble>;

namespace {

facts::CostLine spread(
    const char* key, CostGroup group, const char* low, const char* likely, const char* high) {
    facts::CostLine out = line(key, likely);
    out.group = group;
    out.low_price = money(low);
    out.high_price = money(high);
    return out;
}

}  // namespace

TEST_CASE("gross, what comes back, and net are sums of the lines", "[budget][estimate]") {
    facts::CostLine kit = spread("kit", CostGroup::kit, "90 EUR", "100 EUR", "130 EUR");
    kit.tax = TaxCase::recoverable;
    kit.tax_permille = 200;
    facts::CostLine work = spread("work", CostGroup::labour, "40 EUR", "50 EUR", "80 EUR");
    work.tax = TaxCase::borne;
    work.tax_permille = 200;
    const Estimate out = estimate({recorded(work), recorded(kit)}, {}, setting());
    CHECK(out.gross == Points{15'600, 18'000, 25'200});
    CHECK(out.back == Points{1'800, 2'000, 2'600});
    CHECK(out.net == Points{13'800, 16'000, 22'600});
    CHECK(out.missing == 0);
    REQUIRE(out.lines.size() == 2);
    CHECK(out.lines[0].said.line == "kit");  // in the order of the groups
    REQUIRE(out.movers.size() == 2);
    CHECK(out.movers[0].line == 1);  // 48 at the most and the least, against 40
    CHECK(out.movers[0].swing == 4'800);
    CHECK(out.movers[1].swing == 4'000);
    CHECK(out.net_shares.tenth > out.net.low);
    CHECK(out.net_shares.tenth < out.net_shares.half);
    CHECK(out.net_shares.half < out.net_shares.ninth);
    CHECK(out.net_shares.ninth < out.net.high);
}

TEST_CASE("what is missing is counted and not in the sum", "[budget][estimate][bad]") {
    facts::CostLine tank = line("tank", "30 EUR");
    tank.taken = CostTaken::chosen;
    tank.serials = "1-10";
    facts::CostLine engine = line("engine", "70 EUR");
    engine.taken = CostTaken::offered;
    engine.one_of = "Engine";
    const Estimate out = estimate({recorded(line("kit", "100 EUR")),
                                   recorded(line("paint", "")),
                                   recorded(line("crate", "5 USD")),
                                   recorded(tank),
                                   recorded(engine)},
                                  {{}, {}, "11"},
                                  setting());
    CHECK(out.gross.likely == 10'000);
    CHECK(out.missing == 4);  // no price, no rate, not this serial, no engine chosen
    CHECK(codes(out.faults) == Codes{Trouble::option_unsettled});
    CHECK(out.gross_shares.tenth == 10'000);
    CHECK(out.gross_shares.ninth == 10'000);
    CHECK(out.movers.empty());
}

TEST_CASE("every currency is summed in itself before it is turned", "[budget][estimate]") {
    Setting how = setting();
    how.rates = {rate("USD", "EUR", "0.9", "2025-12-20"),
                 rate("JPY", "EUR", "0.0061", "2025-12-20")};
    facts::CostLine crate = line("crate", "1000 JPY");
    crate.tax = TaxCase::recoverable;
    crate.tax_permille = 100;
    const Estimate out = estimate({recorded(line("a", "10.01 USD")),
                                   recorded(line("b", "10.02 USD")),
                                   recorded(crate),
                                   recorded(line("c", "1.00 EUR"))},
                                  {},
                                  how);
    REQUIRE(out.by_currency.size() == 3);
    CHECK(out.by_currency[0].currency == currency("USD"));
    CHECK(out.by_currency[0].gross.likely == 2'003);
    CHECK(out.by_currency[1].gross.likely == 1'100);
    CHECK(out.by_currency[1].back.likely == 100);
    // 9.009 and 9.018 and 6.71 and 1.00, each up; 0.61 down.
    CHECK(out.gross.likely == 901 + 902 + 671 + 100);
    CHECK(out.back.likely == 61);
}

TEST_CASE("what was chosen adds hours, days and mass", "[budget][estimate]") {
    facts::CostLine seats = line("seats", "10 EUR");
    seats.taken = CostTaken::chosen;
    seats.added_days = 3;
    seats.added_grams = 500;
    seats.removed_grams = 4'200;
    seats.added_hours = base::hours(12);
    facts::CostLine offered = seats;
    offered.line = "other";
    offered.taken = CostTaken::offered;
    const Estimate out = estimate({recorded(seats), recorded(offered)}, {}, setting());
    CHECK(out.added_days == 3);
    CHECK(out.added_grams == -3'700);
    CHECK(out.added_hours == base::hours(12));
}

TEST_CASE("lines of a group that go together spread further", "[budget][estimate]") {
    const std::vector<timeline::CostLineState> lines{
        recorded(spread("a", CostGroup::kit, "0 EUR", "100 EUR", "200 EUR")),
        recorded(spread("b", CostGroup::kit, "0 EUR", "100 EUR", "200 EUR")),
        recorded(spread("c", CostGroup::kit, "0 EUR", "100 EUR", "200 EUR"))};
    const auto width = [&](std::int32_t permille) {
        Setting how = setting();
        how.terms.linked_permille = permille;
        const Shares shares = estimate(lines, {}, how).net_shares;
        return shares.ninth - shares.tenth;
    };
    CHECK(width(0) < width(500));
    CHECK(width(500) < width(1'000));
    // All as one: three times one line, whose shares are known: 44.72 and 155.28.
    CHECK(width(1'000) > 3 * 10'850);
    CHECK(width(1'000) < 3 * 11'260);
}

TEST_CASE("sums that would grow beyond an amount leave the line out", "[budget][estimate][bad]") {
    const auto huge = recorded(line("a", "9000000000000.00 EUR"));
    auto more = huge;
    more.said.line = "b";
    const Estimate out = estimate({huge, more}, {}, setting());
    CHECK(out.missing == 1);
    CHECK(out.gross.likely == 900'000'000'000'000);
}

TEST_CASE("a route's own price and freight are lines of the estimate", "[budget][records]") {
    timeline::AircraftState aircraft;
    facts::Route route;
    route.route = "near";
    route.price = money("226000 EUR");
    route.freight = money("19500 EUR");
    route.duty_permille = 25;
    route.tax = TaxCase::borne;
    route.tax_permille = 200;
    aircraft.campaign.routes.push_back({route, day("2026-01-01"), {}});
    aircraft.money.lines.push_back(recorded(line("paint", "1000 EUR")));
    const auto sum = [&](const std::string& key) {
        const Setting how = setting_of(aircraft, day("2026-01-01"), {});
        return estimate(lines_of(aircraft, key), {key, {}, {}}, how).gross.likely;
    };
    CHECK(sum("near") == 30'138'000 + 100'000);  // 226,000 + 5,650 + 19,500, and 20 % of all
    CHECK(sum("") == 100'000);
}

TEST_CASE("the home currency is the recorded one, else that of the first price",
          "[budget][records]") {
    timeline::AircraftState aircraft;
    CHECK(home_of(aircraft) == currency("EUR"));
    facts::Route route;
    route.price = money("1 CHF");
    aircraft.campaign.routes.push_back({route, {}, {}});
    CHECK(home_of(aircraft) == currency("CHF"));
    timeline::AircraftState after;  // the last overhaul is recorded, nothing of the next one
    after.money.past.push_back(recorded(line("kit", "1 USD")));
    CHECK(home_of(after) == currency("USD"));
    aircraft.money.lines.push_back(recorded(line("kit", "1 USD")));
    CHECK(home_of(aircraft) == currency("USD"));
    aircraft.money.terms.home = "GBP";
    CHECK(home_of(aircraft) == currency("GBP"));
}

TEST_CASE("a newer list says what it changes, line by line", "[budget][records]") {
    timeline::MoneyState money_of;
    facts::CostLine kit = line("kit", "");
    kit.list = "Kits";
    kit.article = "K-1";
    facts::CostLine own = kit;
    own.line = "own";
    own.price = money("3 EUR");  // has a price of its own
    facts::CostLine same = kit;
    same.line = "same";
    same.article = "K-2";
    money_of.lines = {recorded(kit), recorded(own), recorded(same)};
    money_of.lists = {{"Kits",
                       day("2025-01-01"),
                       {{"K-1", money("90 EUR"), ""}, {"K-2", money("5 EUR"), ""}},
                       "",
                       {}}};
    CHECK(list_changes(money_of).empty());
    money_of.lists.push_back({"Kits",
                              day("2025-06-01"),
                              {{"K-1", money("99 EUR"), ""}, {"K-2", money("5 EUR"), ""}},
                              "",
                              {}});
    const auto changes = list_changes(money_of);
    REQUIRE(changes.size() == 1);
    CHECK(changes[0].line.line == "kit");
    CHECK(changes[0].before == money("90 EUR"));
    CHECK(changes[0].now == money("99 EUR"));
    CHECK(changes[0].on == day("2025-06-01"));
}

TEST_CASE("before a list is recorded it says what it would change", "[budget][records]") {
    timeline::MoneyState money_of;
    facts::CostLine kit = line("kit", "");
    kit.list = "Kits";
    kit.article = "K-1";
    facts::CostLine seal = kit;
    seal.line = "seal";
    seal.article = "K-2";
    facts::CostLine own = line("own", "3 EUR");
    own.list = "Kits";
    own.article = "K-1";
    money_of.lines = {recorded(kit), recorded(seal), recorded(own)};
    const auto said = [&](const char* on, std::vector<facts::PriceRow> rows) {
        return price_changes(money_of, {"Kits", day(on), std::move(rows), "", {}});
    };
    const auto first = said("2025-01-01", {{"K-1", money("90 EUR"), ""}});
    REQUIRE(first.size() == 1);
    CHECK(first.front().line.line == "kit");
    CHECK(!first.front().before);
    CHECK(first.front().now == money("90 EUR"));
    money_of.lists = {{"Kits",
                       day("2025-01-01"),
                       {{"K-1", money("90 EUR"), ""}, {"K-2", money("5 EUR"), ""}},
                       "",
                       {}}};
    // A newer version holds all there is: what it does not name has no price.
    const auto newer = said("2025-06-01", {{"K-1", money("99 EUR"), ""}});
    REQUIRE(newer.size() == 2);
    CHECK(newer.front().before == money("90 EUR"));
    CHECK(newer.front().now == money("99 EUR"));
    CHECK(newer.back().line.line == "seal");
    CHECK(!newer.back().now);
    // The same day is the same version, in pieces; an older one changes nothing.
    CHECK(said("2025-01-01", {{"K-1", money("99 EUR"), ""}}).size() == 1);
    CHECK(said("2024-01-01", {{"K-1", money("99 EUR"), ""}}).empty());
    CHECK(price_changes(money_of, {"Other", day("2025-06-01"), {}, "", {}}).empty());
}
