// What it costs to reach a fresh overhaul at a rate of flying, and what life left is worth.
#include "engine/budget/sale.hpp"

#include "tests/budget/lines.hpp"

using namespace twoclocks;
using namespace twoclocks::budget;
using facts::Clock;
using limits::ClockDue;
using limits::ItemDue;

namespace {

constexpr base::Date sale_day{20'454};  // 2026-01-01

ClockDue hours_clock(std::int64_t limit, std::int64_t left) {
    ClockDue out;
    out.known = true;
    out.limit_hours = base::hours(limit);
    out.left = base::hours(left);
    out.used = base::hours(limit - left);
    return out;
}

ClockDue calendar_clock(std::int32_t months, std::int32_t days_left) {
    ClockDue out;
    out.clock = Clock::calendar;
    out.known = true;
    out.limit_months = months;
    out.days_left = days_left;
    out.due_on = base::add_days(sale_day, days_left);
    out.anchor_on = base::add_months(out.due_on, -months, base::CalendarRule::exact);
    return out;
}

ItemDue item_of(std::vector<ClockDue> clocks) {
    ItemDue out;
    out.clocks = std::move(clocks);
    return out;
}

/// 736.3 h and three years left of 2,200 h and twelve years.
SaleAsked used(std::int64_t rate) {
    SaleAsked out;
    out.today = sale_day;
    out.year = base::hours(rate);
    ClockDue hours = hours_clock(2'200, 0);
    hours.left = {736 * 3'600 + 1'080};
    out.overhaul = item_of({hours, calendar_clock(144, 3 * 365)});
    out.overhaul_now = 220'000'00;
    out.overhaul_then = 240'000'00;
    return out;
}

}  // namespace

TEST_CASE("the clock that stops it depends on the buyer's rate", "[budget][sale]") {
    // Common practice, no source: 736.3 h over three years are 245.4 h a year.
    SaleWorked out = work_out_sale(used(245));
    CHECK(out.met->clock == Clock::calendar);
    CHECK(out.usable == base::hours(735));
    out = work_out_sale(used(246));
    CHECK(out.met->clock == Clock::hours);
    CHECK(out.usable.seconds == 736 * 3'600 + 1'080);
    REQUIRE(out.rates.size() == 8);
    CHECK(out.rates[3].met->clock == Clock::calendar);  // 200
    CHECK(out.rates[4].met->clock == Clock::hours);     // 250
    CHECK(out.rates.front().usable == base::hours(150));
    CHECK(work_out_sale(used(0)).met->clock == Clock::calendar);
}

TEST_CASE("every item comes round as often as its interval says", "[budget][sale]") {
    // By hand: 100 h at 200 h a year are 182 days; 30 h left are 54 days.
    const ItemDue inspection = item_of({hours_clock(100, 30)});
    const auto days = due_days_at_rate(inspection, base::hours(200), sale_day, 1'095);
    REQUIRE(days.size() == 6);
    CHECK(days[0] == 54);
    CHECK(days[1] == 236);
    CHECK(days[5] == 964);
    // The calendar of a year from the work on.
    const auto annual =
        due_days_at_rate(item_of({calendar_clock(12, 100)}), base::hours(200), sale_day, 1'095);
    CHECK(annual == std::vector<std::int32_t>{100, 465, 831});
    // Whichever is sooner, from each work on.
    const auto both = due_days_at_rate(
        item_of({hours_clock(100, 30), calendar_clock(6, 10)}), base::hours(100), sale_day, 400);
    CHECK(both == std::vector<std::int32_t>{10, 191, 375});
    ItemDue once = item_of({hours_clock(100, 30)});
    once.once = true;
    CHECK(due_days_at_rate(once, base::hours(200), sale_day, 1'095).size() == 1);
    CHECK(due_days_at_rate(item_of({}), base::hours(200), sale_day, 1'095).empty());
    // Without an interval of its own it does not come round.
    CHECK(due_days_at_rate(item_of({hours_clock(0, 0)}), base::hours(200), sale_day, 1'000) ==
          std::vector<std::int32_t>{0});
    // Flying that uses twice as much: 30 h left are 15 h, then 50 h each.
    ClockDue factor = hours_clock(100, 30);
    factor.most_thousandths = 2'000;
    const auto twice = due_days_at_rate(item_of({factor}), base::hours(200), sale_day, 300);
    CHECK(twice == std::vector<std::int32_t>{27, 118, 209, 300});
}

TEST_CASE("to a fresh overhaul: everything on the way and the overhaul", "[budget][sale]") {
    SaleAsked in = used(200);
    in.items = {item_of({hours_clock(100, 30)}), item_of({calendar_clock(12, 100)})};
    in.price = {1'500'00, std::nullopt};
    SaleWorked out = work_out_sale(in);
    REQUIRE(out.items.size() == 2);
    CHECK(*out.items[0].sum == 9'000'00);
    CHECK(out.unpriced == 1);
    CHECK(out.first->days == 54);
    CHECK(out.first_item == 0);
    CHECK(*out.now == 229'000'00);
    // By hand: 229,000 over 600 h that can be flown in three years.
    CHECK(*out.usable_hour == 381'67);
    CHECK(*out.risen == 249'000'00);
    CHECK(!out.present);
    in.interest_permille = 100;
    out = work_out_sale(in);
    // By hand: 240,000 / 1.1^3 = 180,315.55, and six inspections discounted by their days:
    // 1,500 x (1.1^-(54/365) + ... + 1.1^-(964/365)) = 7,905.86.
    CHECK(*out.present == 188'221'42);  // 188,221.4105..., up
    in.overhaul_now.reset();
    CHECK(!work_out_sale(in).now);
    CHECK(!work_out_sale(in).by_lesser);
}

TEST_CASE("life left is worth the smaller share, or the hours less calendar work",
          "[budget][sale]") {
    SaleAsked in = used(200);
    // By hand: hours 736.3 / 2,200 of 220,000 = 73,630; calendar 1,095 of 4,383 days = 54,962.35.
    SaleWorked out = work_out_sale(in);
    CHECK(*out.by_lesser == 54'962'35);
    CHECK(!out.by_hours);
    in.calendar_work = 10'000'00;
    CHECK(*work_out_sale(in).by_hours == 63'630'00);
    in.calendar_work = 80'000'00;
    CHECK(*work_out_sale(in).by_hours == 0);
    in.overhaul.clocks[0].left = base::hours(-5);
    CHECK(*work_out_sale(in).by_lesser == 0);
    in.overhaul.clocks[1].known = false;
    CHECK(!work_out_sale(in).by_lesser);
}

TEST_CASE("a first interval counts once, its repeat from the work on", "[budget][sale]") {
    // 2,200 h first, then every 600 h; 100 h a year for twelve years are 1,200 h.
    ItemDue item = item_of({hours_clock(2'200, 300)});
    item.clocks.front().is_first = true;
    item.again.hours = base::hours(600);
    const auto days = due_days_at_rate(item, base::hours(100), sale_day, 12 * 365);
    CHECK(days == std::vector<std::int32_t>{3 * 365, 9 * 365});
    // Months that come only with the repeat count from the work on.
    item.again.hours.reset();
    item.again.months = 24;
    const auto by_months = due_days_at_rate(item, base::hours(100), sale_day, 6 * 365);
    REQUIRE(by_months.size() == 2);
    CHECK(by_months[0] == 3 * 365);
    CHECK(base::print_date(base::add_days(sale_day, by_months[1])) == "2030-12-31");
    // And what has a first interval alone does not come round.
    item.again = {};
    CHECK(due_days_at_rate(item, base::hours(100), sale_day, 40 * 365).size() == 1);
}

TEST_CASE("an item that comes round often is counted to the end", "[budget][sale]") {
    // 5 h at 400 h a year are less than five days: 4,000 h in ten years are 800 times or more.
    const auto days =
        due_days_at_rate(item_of({hours_clock(5, 5)}), base::hours(400), sale_day, 10 * 365);
    CHECK(days.size() >= 800);
    CHECK(days.size() < 1'000);
    CHECK(days.back() > 10 * 365 - 6);
}
