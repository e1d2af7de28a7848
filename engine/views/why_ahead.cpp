#include "engine/views/why_ahead.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/forecast/months.hpp"
#include "engine/forecast/rate.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using base::Word;
using forecast::FlyingPattern;
using forecast::PatternBasis;

constexpr std::int32_t few_readings = 4;
constexpr std::int32_t long_gap_days = 180;
constexpr std::int32_t looked_back_days = 5 * forecast::year_days;

[[nodiscard]] base::Arg expected(auto seconds) {
    return base::hours_used_arg(forecast::nearest_tenth(seconds));
}

/// The longest time without a reading in the last years.
void explain_gap(Why& why, const timeline::UsageSeries& usage) {
    const Date since = base::add_days(usage.back().on, -looked_back_days);
    std::int32_t longest = long_gap_days;
    std::size_t place = 0;
    for (std::size_t next = 1; next < usage.size(); ++next) {
        const std::int32_t days = base::days_between(usage[next - 1].on, usage[next].on);
        if (usage[next].on <= since || days <= longest) continue;
        longest = days;
        place = next;
    }
    if (place == 0) return;
    add(why,
        Word::why_long_gap,
        {base::day_arg(usage[place - 1].on), base::day_arg(usage[place].on)});
}

void explain_level(Why& why, const FlyingPattern& pattern) {
    if (pattern.basis == PatternBasis::level) {
        add(why,
            Word::why_level_days,
            {expected(pattern.flown), base::whole_arg(pattern.served_days)});
        add_sum(why,
                Word::why_level_per_year,
                {expected(pattern.flown / pattern.served_days * forecast::days_a_year)});
        add(why, Word::why_season_none);
        return;
    }
    if (pattern.year_before > 0) {
        add_sum(why,
                Word::why_level_years,
                {expected(pattern.last_year),
                 expected(pattern.year_before),
                 expected(pattern.year_seconds)});
    } else {
        add_sum(why, Word::why_level_year, {expected(pattern.last_year)});
    }
    if (pattern.years > 1) {
        add(why, Word::why_season_years, {base::whole_arg(pattern.years)});
    } else {
        add(why, Word::why_season_year);
    }
}

void explain_measured(Why& why, const Assessed& aircraft) {
    const forecast::FlyingModel measured = forecast::measured_model(aircraft.state);
    if (measured.pattern.basis == PatternBasis::none) {
        add(why, Word::why_rate_none);
        return;
    }
    explain_level(why, measured.pattern);
    if (!aircraft.state.spells.empty()) add(why, Word::why_level_service);
    if (measured.week) add(why, Word::why_week);
    const auto readings = static_cast<std::int32_t>(aircraft.state.usage.size());
    if (readings < few_readings) add(why, Word::why_few_readings, {base::whole_arg(readings)});
    explain_gap(why, aircraft.state.usage);
    add(why, Word::why_rate_even);
}

[[nodiscard]] Word plan_word(const timeline::StatedPlan& plan) {
    if (plan.disputed) return Word::why_rate_plan_disputed;
    return plan.by_month ? Word::why_rate_plan_months : Word::why_rate_plan;
}

}  // namespace

Why why_rate(const Assessed& aircraft) {
    Why why;
    why.title = {Word::why_rate, {}};
    explain_measured(why, aircraft);
    if (!aircraft.state.plan) return why;
    const timeline::StatedPlan& plan = *aircraft.state.plan;
    base::FlightTime month = plan.month;
    if (plan.disputed && plan.by_month)
        month = forecast::nearest_tenth(aircraft.ahead.model.pattern.year_seconds / 12);
    add(why, plan_word(plan), {base::hours_exact_arg(month, base::exact_form({month}))}, plan.fact);
    if (!plan.why.empty()) add(why, Word::why_rate_plan_why, {base::text_arg(plan.why)}, plan.fact);
    return why;
}

void explain_ways(Why& why, const Assessed& aircraft) {
    const forecast::FlyingAhead& ahead = aircraft.ahead;
    if (ahead.basis == forecast::RateBasis::unknown) return;
    add(why,
        Word::why_ways,
        {base::whole_arg(forecast::path_count),
         base::day_arg(ahead.from),
         expected(forecast::flown_by(ahead.late, forecast::year_days)),
         expected(forecast::flown_by(ahead.early, forecast::year_days))});
    if (ahead.model.assumed) add(why, Word::why_ways_assumed);
    add(why, Word::why_ways_early);
}

void explain_months_to(Why& why, const Assessed& aircraft, const limits::ClockDue& clock) {
    const forecast::FlyingAhead& ahead = aircraft.ahead;
    const timeline::UsagePoint& last = aircraft.state.usage.back();
    const base::FlightTime left = forecast::met_at(clock, aircraft.state) - last.total;
    const forecast::Projection hours =
        forecast::project(clock, aircraft.state, ahead, aircraft.today);
    if (!hours.likely) {
        add(why, Word::why_hours_never, {base::hours_used_arg(forecast::a_year(ahead))});
        return;
    }
    // A day that is already behind is shown as today: no sum ends on it.
    if (left.seconds <= 0 || *hours.likely <= aircraft.today) return;
    const Date first = base::add_days(*hours.likely, 1 - base::civil(*hours.likely).day);
    const Date end = base::add_days(first, forecast::days_in_month_from(first) - 1);
    const auto flown = [&](Date from, Date to) {
        return forecast::flown_by(ahead.likely, base::days_between(ahead.from, to)) -
               forecast::flown_by(ahead.likely, base::days_between(ahead.from, from));
    };
    const base::Arg left_arg = base::hours_exact_arg(left, base::exact_form({left}));
    const Date before = base::add_days(first, -1);
    const base::Arg month = base::month_arg(first);
    const base::Arg day = base::day_arg(*hours.likely);
    if (before <= last.on) {
        add_sum(
            why, Word::why_hours_day_month, {left_arg, expected(flown(last.on, end)), month, day});
        return;
    }
    add_sum(why,
            Word::why_hours_day,
            {left_arg,
             expected(flown(last.on, before)),
             base::month_arg(before),
             expected(flown(before, end)),
             month,
             day});
}

}  // namespace twoclocks::views
