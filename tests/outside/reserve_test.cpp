// Deposits, growth and present values against printed tables and general-purpose libraries.
#include "engine/budget/reserve.hpp"

#include "tests/budget/lines.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

#include "engine/budget/cash.hpp"
#include "engine/budget/growth.hpp"

using namespace twoclocks;
using namespace twoclocks::budget;
using support::day;

TEST_CASE("the sinking fund factors of printed tables", "[outside][reserve]") {
    // Source: interest tables as engineering economy handbooks print them, A/F to five decimals.
    struct Row {
        double rate;
        std::int32_t months;
        double factor;
    };

    for (const Row& row : {Row{0.0025, 12, 0.08219},
                           Row{0.0025, 24, 0.04048},
                           Row{0.005, 12, 0.08107},
                           Row{0.005, 24, 0.03932},
                           Row{0.005, 60, 0.01433}}) {
        CAPTURE(row.rate, row.months);
        const auto deposit = monthly_deposit(1'000'000'000, 0, row.rate, row.months);
        REQUIRE(deposit);
        CHECK(std::abs(static_cast<double>(*deposit) / 1e9 - row.factor) <= 0.000005);
    }
}

TEST_CASE("payment and future value of two spreadsheet-style libraries", "[outside][reserve]") {
    // Source: npm financial and @formulajs/formulajs, which agree: PMT(7.5 %/12, 180, 200,000) is
    // -1,854.02472; FV(5 %/12, 120, -100, -100) is 15,692.928894.
    const auto rate = 0.075 / 12;
    // A loan paid off is a fund that reaches what the loan has grown to.
    const auto owed = grown_to(200'000'00, 0, rate, 180);
    REQUIRE(owed);
    CHECK(*monthly_deposit(*owed, 0, rate, 180) == 1'854'03);  // up to a cent
    CHECK(*grown_to(100'00, 100'00, 0.05 / 12, 120) == 15'692'92);
    // NPV(10 %, -10,000, 3,000, 4,200, 6,800) is 1,188.443412 where the first is discounted too;
    // spreadsheets do so, ours never discounts what moves today. Source: as above.
    CashCourse course;
    std::int32_t year = 0;
    for (const std::int64_t amount : {-10'000'00, 3'000'00, 4'200'00, 6'800'00}) {
        Flow flow;
        flow.amount = amount;
        flow.on = base::add_days(day("2026-01-01"), 365 * year++);
        course.flows.push_back(flow);
    }
    // 1,188.443412 x 1.1 = 1,307.287753: a gain, so a cost below nothing, rounded up.
    CHECK(*present_cost(course, day("2026-01-01"), 100) == -1'307'28);
}

TEST_CASE("400 deposits, sums and present values of two finance libraries", "[outside][reserve]") {
    // Source: deposits.csv, npm financial 0.2.4 and npm @formulajs/formulajs 4.6.1.
    std::ifstream file{HOUSE_ROOT "/tests/outside/deposits.csv"};
    std::int32_t rows = 0;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') continue;
        std::replace(line.begin(), line.end(), ',', ' ');
        std::istringstream cells{line};
        double goal = 0;
        double hand = 0;
        double rate = 0;
        std::int32_t months = 0;
        double deposit = 0;
        double grown = 0;
        double worth = 0;
        cells >> goal >> hand >> rate >> months >> deposit >> grown >> worth;
        REQUIRE_FALSE(cells.fail());
        const auto cents = [](double sum) { return std::llround(sum * 100); };
        CAPTURE(line);
        // Ours are whole cents: deposits and needs rounded up, what comes together down.
        const auto is_up = [&](std::int64_t ours, double theirs) {
            return static_cast<double>(ours) - theirs * 100 > -0.001 &&
                   static_cast<double>(ours) - theirs * 100 < 1.001;
        };
        REQUIRE(is_up(*monthly_deposit(cents(goal), cents(hand), rate, months),
                      std::max(0.0, deposit)));
        REQUIRE(is_up(-*grown_to(cents(hand), 100'00, rate, months), -grown));
        REQUIRE(is_up(*needed_today(cents(goal), rate, months), worth));
        ++rows;
    }
    CHECK(rows == 400);
}

TEST_CASE("the reserve case of a goal that rises", "[outside][reserve]") {
    // Source: worked with npm financial: 250,000 at 4 % a year for eight years is 342,142.26;
    // with 60,000 in hand and 0.3 % a month, 96 months, the deposit is 2,360.43.
    CHECK(std::abs(250'000.0 * growth(40, 8 * 365) - 342'142.26) < 0.005);
    CHECK(*monthly_deposit(342'142'26, 60'000'00, 0.003, 96) == 2'360'44);  // 2,360.4307, up
    // Common practice, no source: spread over 2,200 h it is 113.636 an hour; up to a cent.
    ReserveAsked asked;
    asked.today = day("2026-01-01");
    asked.due = day("2034-01-01");
    asked.goal = 250'000'00;
    asked.life = base::hours(2'200);
    CHECK(*work_out(asked).linear_hour == 113'64);
}
