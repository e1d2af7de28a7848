#include "engine/budget/sale.hpp"

#include <algorithm>

#include "engine/base/money.hpp"
#include "engine/base/scaled.hpp"
#include "engine/budget/growth.hpp"
#include "engine/facts/interval.hpp"
#include "engine/plan/moment.hpp"

namespace twoclocks::budget {
namespace {

using base::Date;
using base::FlightTime;
using facts::Clock;
using limits::ClockDue;
using limits::ItemDue;

constexpr std::int64_t year_days = 365;
constexpr std::size_t most_times = 8'000;

/// Hours that can be flown on what a clock has left: some flying uses it faster.
[[nodiscard]] FlightTime flyable(const ClockDue& clock) {
    constexpr std::int64_t thousand = 1'000;
    return {clock.left.seconds * thousand / std::max(clock.most_thousandths, 1'000)};
}

/// When one clock is met; nothing where a rate of hours does not say.
[[nodiscard]] std::optional<std::int32_t> clock_met(const ClockDue& clock, FlightTime year) {
    if (!clock.known) return std::nullopt;
    if (clock.clock == Clock::calendar) return std::max(0, clock.days_left);
    if (clock.clock != Clock::hours)
        return clock.left_count.value <= 0 ? std::optional{0} : std::nullopt;
    if (clock.left.seconds <= 0) return 0;
    if (year.seconds <= 0) return std::nullopt;
    const std::int64_t days = flyable(clock).seconds * year_days / year.seconds;
    return static_cast<std::int32_t>(std::min<std::int64_t>(days, 100'000));
}

/// The sooner of several, or the later of all.
[[nodiscard]] std::optional<MetAt> met_of(const std::vector<ClockDue>& clocks,
                                          FlightTime year,
                                          bool later) {
    std::optional<MetAt> out;
    for (const ClockDue& clock : clocks) {
        const auto days = clock_met(clock, year);
        if (!days && later) return std::nullopt;
        if (!days) continue;
        if (!out || (later ? *days > out->days : *days < out->days))
            out = MetAt{*days, clock.clock};
    }
    return out;
}

/// The clock of that kind, made where the item has none.
[[nodiscard]] ClockDue& clock_in(ItemDue& item, Clock kind) {
    for (ClockDue& clock : item.clocks)
        if (clock.clock == kind) return clock;
    ClockDue made;
    made.clock = kind;
    made.known = true;
    return item.clocks.emplace_back(made);
}

/// A first interval counts once: from the work on the repeat does, by its own clocks.
void count_repeat(ItemDue& item) {
    const facts::Interval& again = item.again;
    const bool has_calendar = again.months || again.days;
    if (facts::is_empty(again)) {
        std::erase_if(item.clocks, [](const ClockDue& clock) { return clock.is_first; });
        return;
    }
    std::erase_if(item.clocks, [&](const ClockDue& clock) {
        return clock.clock == Clock::calendar ? !has_calendar : !again.hours;
    });
    if (again.hours) clock_in(item, Clock::hours).limit_hours = *again.hours;
    if (!has_calendar) return;
    ClockDue& calendar = clock_in(item, Clock::calendar);
    calendar.limit_months = again.months.value_or(0);
    calendar.limit_days = again.days.value_or(0);
}

/// The item as it stands after it was done on a day: its clocks begin again.
void begin_again(ItemDue& item, Date today, std::int32_t days, FlightTime year) {
    const Date on = base::add_days(today, days);
    count_repeat(item);
    for (auto* const clocks : {&item.clocks, &item.caps}) {
        // What has no interval of its own does not come round.
        std::erase_if(*clocks, [](const ClockDue& clock) {
            const bool by_calendar = clock.clock == Clock::calendar;
            return by_calendar ? clock.limit_months <= 0 && clock.limit_days <= 0
                               : clock.clock != Clock::hours || clock.limit_hours.seconds <= 0;
        });
        for (ClockDue& clock : *clocks) {
            // What is left today of the interval that begins then.
            constexpr std::int64_t thousand = 1'000;
            const std::int64_t used =
                flown_in(year, days).seconds * clock.most_thousandths / thousand;
            clock.left = FlightTime{used} + clock.limit_hours;
            if (clock.clock != Clock::calendar) continue;
            const Date next =
                clock.limit_months > 0
                    ? base::add_months(on, clock.limit_months, base::CalendarRule::exact)
                    : base::add_days(on, clock.limit_days);
            clock.days_left = base::days_between(today, next);
        }
    }
}

void find_items(const SaleAsked& asked, SaleWorked& out) {
    const std::int32_t last = out.met ? out.met->days : 0;
    for (std::size_t place = 0; place < asked.items.size(); ++place) {
        const ItemDue& item = asked.items[place];
        if (item.complied || item.asleep) continue;
        const auto met = met_at_rate(item, asked.year);
        SaleItem one;
        one.item = static_cast<std::int32_t>(place);
        one.is_open = !met;
        if (met && (!out.first || met->days < out.first->days)) {
            out.first = met;
            out.first_item = one.item;
        }
        if (met && out.met) one.days = due_days_at_rate(item, asked.year, asked.today, last);
        if (!one.is_open && one.days.empty()) continue;
        const auto count = static_cast<std::int64_t>(one.days.size());
        if (asked.price[place] && count > 0) {
            const auto sum =
                base::scaled({*asked.price[place], {}}, count, 1, base::MoneyRound::up);
            if (sum) one.sum = sum->minor_units;
        }
        if (!asked.price[place]) ++out.unpriced;
        out.items.push_back(std::move(one));
    }
}

/// Every amount on its day, grown or discounted.
template <class Worth>
[[nodiscard]] std::int64_t sum_of(const SaleAsked& asked, const SaleWorked& sale, Worth worth) {
    double out = 0;
    for (const SaleItem& item : sale.items) {
        const auto& price = asked.price[static_cast<std::size_t>(item.item)];
        if (!price) continue;
        for (const std::int32_t day : item.days)
            out += worth(static_cast<double>(*price) * growth(asked.rise_permille, day), day);
    }
    out += worth(static_cast<double>(*asked.overhaul_then), sale.met->days);
    return plan::whole_from(out);
}

void find_sums(const SaleAsked& asked, SaleWorked& out) {
    if (!out.met || !asked.overhaul_now) return;
    std::int64_t now = *asked.overhaul_now;
    for (const SaleItem& item : out.items)
        now += item.sum.value_or(0);
    out.now = now;
    if (out.usable.seconds > 0) {
        const auto hour = base::scaled(
            {now, {}}, base::seconds_per_hour, out.usable.seconds, base::MoneyRound::up);
        if (hour) out.usable_hour = hour->minor_units;
    }
    if (!asked.overhaul_then) return;
    out.risen = sum_of(asked, out, [](double amount, std::int32_t) { return amount; });
    if (!asked.interest_permille) return;
    out.present = sum_of(asked, out, [&](double amount, std::int32_t day) {
        return amount * growth(*asked.interest_permille, -day);
    });
}

/// The sum by a share of life left, rounded down.
[[nodiscard]] std::int64_t share_of(std::int64_t sum, std::int64_t left, std::int64_t whole) {
    if (whole <= 0 || left <= 0) return 0;
    const auto out = base::scaled({sum, {}}, std::min(left, whole), whole, base::MoneyRound::down);
    return out ? out->minor_units : 0;
}

void find_life(const SaleAsked& asked, SaleWorked& out) {
    if (!asked.overhaul_now) return;
    std::optional<std::int64_t> hours;
    std::optional<std::int64_t> calendar;
    for (const ClockDue& clock : asked.overhaul.clocks) {
        if (!clock.known) return;
        if (clock.clock == Clock::hours)
            hours = share_of(*asked.overhaul_now, clock.left.seconds, clock.limit_hours.seconds);
        if (clock.clock == Clock::calendar)
            calendar = share_of(*asked.overhaul_now,
                                clock.days_left,
                                base::days_between(clock.anchor_on, clock.due_on));
    }
    if (!hours && !calendar) return;
    out.by_lesser =
        std::min(hours.value_or(*asked.overhaul_now), calendar.value_or(*asked.overhaul_now));
    if (hours && calendar && asked.calendar_work)
        out.by_hours = std::max<std::int64_t>(0, *hours - *asked.calendar_work);
}

}  // namespace

base::FlightTime flown_in(FlightTime year, std::int32_t days) {
    return {year.seconds * days / year_days};
}

std::optional<MetAt> met_at_rate(const ItemDue& item, FlightTime year) {
    if (!item.all_known()) return std::nullopt;
    auto out = met_of(item.clocks, year, item.combine == facts::Combine::later);
    const auto cap = met_of(item.caps, year, false);
    if (cap && (!out || cap->days < out->days)) out = cap;
    return out;
}

std::vector<std::int32_t> due_days_at_rate(const ItemDue& item,
                                           FlightTime year,
                                           Date today,
                                           std::int32_t last_day) {
    std::vector<std::int32_t> out;
    ItemDue now = item;
    while (out.size() < most_times) {
        const auto met = met_at_rate(now, year);
        if (!met || met->days > last_day) break;
        // Whatever its interval, it is done once a day at the most.
        const std::int32_t day = out.empty() ? met->days : std::max(met->days, out.back() + 1);
        if (day > last_day) break;
        out.push_back(day);
        if (item.once) break;
        begin_again(now, today, day, year);
    }
    return out;
}

SaleWorked work_out_sale(const SaleAsked& asked) {
    SaleWorked out;
    out.met = met_at_rate(asked.overhaul, asked.year);
    if (out.met) {
        const ItemDue& item = asked.overhaul;
        out.usable = flown_in(asked.year, out.met->days);
        // By hours it is what is left of them, to the second.
        for (const ClockDue& clock : item.clocks)
            if (clock.clock == Clock::hours && out.met->clock == Clock::hours && clock.known)
                out.usable = clock.left.seconds > 0 ? flyable(clock) : FlightTime{};
        out.first = out.met;
    }
    find_items(asked, out);
    find_sums(asked, out);
    find_life(asked, out);
    for (std::int32_t rate = least_sale_rate; rate <= most_sale_rate; rate += sale_rate_step) {
        SaleAsked beside = asked;
        beside.year = base::hours(rate);
        const auto met = met_at_rate(beside.overhaul, beside.year);
        out.rates.push_back(
            {beside.year, met, met ? flown_in(beside.year, met->days) : FlightTime{}});
    }
    return out;
}

}  // namespace twoclocks::budget
