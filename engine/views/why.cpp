#include "engine/views/why.hpp"

#include "engine/base/message_args.hpp"
#include "engine/views/wear_view.hpp"
#include "engine/views/why_ahead.hpp"
#include "engine/views/why_directive.hpp"
#include "engine/views/why_hung.hpp"
#include "engine/views/why_limits.hpp"
#include "engine/views/why_parts.hpp"
#include "engine/views/why_use.hpp"

namespace twoclocks::views {
namespace {

using base::Word;
using facts::Clock;
using limits::ClockDue;
using limits::CountsFrom;
using limits::ItemDue;

void add_source(Why& why, const ItemDue& item) {
    if (item.source.empty()) {
        add(why, Word::why_source_none, {}, item.limit_fact);
    } else if (item.revision.empty()) {
        add(why, Word::why_source_no_revision, {base::text_arg(item.source)}, item.limit_fact);
    } else {
        add(why,
            Word::why_source,
            {base::text_arg(item.source), base::text_arg(item.revision)},
            item.limit_fact);
    }
}

void add_day_sum(Why& why, const Assessed& aircraft, const ClockDue& clock) {
    add_sum(why,
            Word::why_calendar_sum,
            {base::day_arg(clock.anchor_on),
             base::day_arg(clock.due_on),
             base::day_arg(aircraft.today),
             base::whole_arg(clock.days_left)});
}

void add_day_rule(Why& why, const Assessed& aircraft, const ItemDue& item, const ClockDue& clock) {
    const timeline::ItemState* state = item_state(aircraft, item.item);
    if (state == nullptr || !state->limit || clock.limit_months == 0) return;
    const bool exact = state->limit->rule == base::CalendarRule::exact;
    add(why, exact ? Word::why_rule_exact : Word::why_rule_month_end);
}

void explain_calendar(Why& why,
                      const Assessed& aircraft,
                      const ItemDue& item,
                      const ClockDue& clock) {
    if (clock.limit_months > 0)
        add(why, Word::why_limit_months, {base::whole_arg(clock.limit_months)}, item.limit_fact);
    if (clock.limit_days > 0)
        add(why, Word::why_limit_days, {base::whole_arg(clock.limit_days)}, item.limit_fact);
    if (!item.part.id.empty()) {
        explain_part_day(why, item, clock);
        if (!clock.known || clock.no_life_left) return;
        add_day_sum(why, aircraft, clock);
        add_day_rule(why, aircraft, item, clock);
        return;
    }
    if (explain_storage_day(why, clock)) {
        add_day_sum(why, aircraft, clock);
        return;
    }
    switch (clock.counts_from) {
        case CountsFrom::work:
            if (explain_carried_day(why, clock)) break;
            add(why, Word::why_from_work_day, {base::day_arg(clock.anchor_on)}, clock.anchor_fact);
            break;
        case CountsFrom::anchor:
            add(why,
                Word::why_from_anchor_day,
                {base::day_arg(clock.anchor_on)},
                clock.anchor_fact);
            break;
        case CountsFrom::assumed:
            add(why,
                Word::why_from_assumed_day,
                {base::day_arg(clock.anchor_on)},
                clock.anchor_fact);
            break;
        case CountsFrom::unknown:
            add(why, Word::why_from_unknown_day);
            return;
    }
    add_day_sum(why, aircraft, clock);
    add_day_rule(why, aircraft, item, clock);
}

void explain_count(Why& why, const ItemDue& item, const ClockDue& clock) {
    add(why, Word::why_limit_count, {base::whole_arg(clock.limit_count.value)}, item.limit_fact);
    explain_part(why, item);
    if (clock.no_life_left) {
        add(why, Word::why_part_no_history, {}, item.part.id);
        return;
    }
    if (!clock.known) {
        add(why, Word::why_counts_unknown);
        return;
    }
    const base::Count now = clock.anchor_count + clock.limit_count - clock.left_count;
    add_sum(why,
            Word::why_count_sum,
            {base::whole_arg(clock.limit_count.value),
             base::whole_arg(now.value),
             base::whole_arg(clock.anchor_count.value),
             base::whole_arg(clock.left_count.value)},
            clock.anchor_fact);
}

void explain_spells(Why& why, const Assessed& aircraft) {
    for (const timeline::Spell& spell : aircraft.state.spells) {
        const bool is_flown = spell.flown_by && *spell.flown_by > spell.from;
        if (is_flown) {
            add(why,
                Word::why_parked_flown,
                {base::day_arg(spell.from), base::day_arg(*spell.flown_by)},
                spell.fact);
        }
        if (spell.flown_by || (spell.until && *spell.until <= aircraft.today)) continue;
        if (spell.until) {
            add(why,
                Word::why_parked,
                {base::day_arg(spell.from), base::day_arg(*spell.until)},
                spell.fact);
        } else {
            add(why, Word::why_parked_open, {base::day_arg(spell.from)}, spell.fact);
        }
    }
}

void explain_hours_day(Why& why, const Assessed& aircraft, const ClockDue& clock) {
    const bool is_hung = clock.hours_in != limits::HoursIn::total_time;
    if (is_hung && aircraft.state.id.empty()) {
        add(why, Word::why_part_stands);
        return;
    }
    if (aircraft.ahead.basis == forecast::RateBasis::unknown || aircraft.state.usage.empty()) {
        add(why, Word::why_rate_none);
        return;
    }
    if (is_hung) add(why, Word::why_part_gains);
    add(why,
        Word::why_start_last,
        {base::day_arg(aircraft.state.usage.back().on)},
        aircraft.state.usage.back().fact);
    explain_months_to(why, aircraft, clock);
}

}  // namespace

base::Message source_of(const ItemDue& item) {
    if (item.source.empty()) return {Word::source_none, {}};
    if (item.revision.empty()) return {Word::source_no_revision, {base::text_arg(item.source)}};
    return {Word::source_given, {base::text_arg(item.source), base::text_arg(item.revision)}};
}

Why why_clock(const Assessed& aircraft,
              const ItemDue& item,
              const ClockDue& clock,
              base::Message title) {
    Why why;
    why.title = std::move(title);
    switch (clock.clock) {
        case Clock::hours:
            explain_hours(why, aircraft, item, clock);
            break;
        case Clock::calendar:
            explain_calendar(why, aircraft, item, clock);
            break;
        case Clock::landings:
        case Clock::starts:
            explain_count(why, item, clock);
            break;
    }
    explain_settings(why, aircraft, item, clock);
    explain_in_force(why, item);
    explain_directive(why, aircraft, item);
    add_source(why, item);
    add(why, Word::why_not_approval);
    return why;
}

Why why_date(const Assessed& aircraft, std::int32_t place, base::Message title) {
    Why why;
    why.title = std::move(title);
    const ItemDue& item = aircraft.items[static_cast<std::size_t>(place)];
    for (const ClockDue& clock : item.clocks) {
        if (clock.clock == Clock::hours && clock.known) explain_hours_day(why, aircraft, clock);
        if (clock.clock == Clock::calendar && clock.known) {
            add(why, Word::why_calendar_day, {base::day_arg(clock.due_on)}, clock.anchor_fact);
        }
    }
    explain_combination(why, item);
    explain_in_force(why, item);
    explain_directive(why, aircraft, item);
    explain_trend(why, aircraft, place);
    explain_spells(why, aircraft);
    add_source(why, item);
    add(why, Word::why_not_approval);
    return why;
}

Why why_break_even(const Assessed& aircraft) {
    Why why;
    why.title = {Word::why_break_even, {}};
    const ItemDue* overhaul = overhaul_of(aircraft);
    const auto rate =
        overhaul == nullptr ? std::nullopt : forecast::break_even(*overhaul, aircraft.today);
    if (!rate) return why;
    const ClockDue* hours = limits::clock_of(*overhaul, Clock::hours);
    const ClockDue* calendar = limits::clock_of(*overhaul, Clock::calendar);
    const base::Span span = base::span_between(aircraft.today, calendar->due_on);
    const base::FlightTime total = hours->anchor_total + hours->used - hours->extra;
    const base::HoursForm form = base::exact_form({hours->left, total});
    const base::Arg left = base::hours_exact_arg(hours->left, form);
    if (!aircraft.state.usage.empty()) {
        const timeline::UsagePoint& last = aircraft.state.usage.back();
        add(why,
            Word::why_total_now,
            {base::hours_exact_arg(total, form), base::day_arg(last.on)},
            last.fact);
    }
    add(why, Word::why_calendar_day, {base::day_arg(calendar->due_on)}, overhaul->limit_fact);
    add_sum(why, Word::why_break_even_sum, {left, base::span_arg(span)});
    add(why, Word::why_break_even_use);
    return why;
}

}  // namespace twoclocks::views
