// Lines and settings for the tests of the budget.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <string>

#include "engine/budget/from_records.hpp"

namespace twoclocks::budget::by_hand {

using twoclocks::support::day;

inline base::Money money(const char* text) {
    const auto money = base::parse_money(text, {});
    REQUIRE(money);
    return money.value();
}

inline base::Currency currency(const char* text) {
    const auto code = base::parse_currency(text);
    REQUIRE(code);
    return code.value();
}

inline facts::CostLine line(const char* key, const char* price) {
    facts::CostLine out;
    out.line = key;
    out.tax = facts::TaxCase::none;
    if (*price != '\0') out.price = money(price);
    return out;
}

inline timeline::CostLineState recorded(facts::CostLine said, const char* on = "2026-01-01") {
    return {std::move(said), day(on), {}};
}

inline Rate rate(const char* from, const char* to, const char* figure, const char* on) {
    const auto parsed = base::parse_rate(figure);
    REQUIRE(parsed);
    return {currency(from), currency(to), parsed.value(), day(on), {}};
}

/// In euro, on the first of January 2026, without rates, lists or days.
inline Setting setting() {
    Setting out;
    out.today = day("2026-01-01");
    return out;
}

/// The codes of what is noted at a line.
inline std::vector<base::Trouble> codes(const base::Problems& problems) {
    std::vector<base::Trouble> out;
    for (const base::Problem& problem : problems)
        out.push_back(problem.code);
    return out;
}

}  // namespace twoclocks::budget::by_hand
