// Options that were chosen lengthen the stay by the days they add.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/said.hpp"
#include "tests/views/planned.hpp"

#include <algorithm>
#include <string>

using namespace twoclocks;
using support::day;
using support::ends_in;
using support::hand_today;
using support::planned;
using support::said;
using timeline::AircraftState;

namespace {

facts::CostLine option(const char* key, std::int32_t days) {
    facts::CostLine out = support::cost_line(key);
    out.name = key;
    out.taken = facts::CostTaken::chosen;
    out.added_days = days;
    return out;
}

bool has_options(const views::PlanView& view) {
    return std::any_of(view.rows.begin(), view.rows.end(), [](const views::PlanTaskRow& row) {
        return said(row.name) == "What the chosen options add";
    });
}

std::int32_t back_of(const AircraftState& state) {
    return planned(state).as_it_stands.back_on.value().day_number;
}

}  // namespace

TEST_CASE("the days of chosen options make the stay longer, those of others do not",
          "[views][plan][money]") {
    AircraftState state = ends_in(600);
    const std::int32_t before = back_of(state);
    CHECK(!has_options(planned(state)));
    state.money.lines.push_back({option("Interior", 10), hand_today, {}});
    CHECK(has_options(planned(state)));
    // Ten working days are two weeks.
    CHECK(back_of(state) >= before + 12);
    CHECK(back_of(state) <= before + 16);
    // Offered, of another work, or not fit for the serial: nothing is added.
    state.money.lines.front().said.taken = facts::CostTaken::offered;
    CHECK(back_of(state) == before);
    state.money.lines.front().said = option("Interior", 10);
    state.money.lines.front().said.work = facts::CostFor::calendar_work;
    CHECK(back_of(state) == before);
    state.money.lines.front().said = option("Interior", 10);
    state.money.lines.front().said.serials = "1-2";
    state.serial = "7";
    CHECK(back_of(state) == before);
}
