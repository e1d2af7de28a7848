// Whys that are sums of hours. A figure is cut to the tenth where it is shown; here nothing is cut:
// terms that are cut one by one need not add up on paper.
#include "engine/base/message_args.hpp"
#include "engine/views/why.hpp"
#include "engine/views/why_hung.hpp"
#include "engine/views/why_limits.hpp"
#include "engine/views/why_parts.hpp"
#include "engine/views/why_use.hpp"

namespace twoclocks::views {
namespace {

using base::FlightTime;
using base::HoursForm;
using base::Word;
using limits::ClockDue;
using limits::CountsFrom;

void add_total(Why& why, const Assessed& aircraft, HoursForm form) {
    if (aircraft.state.usage.empty()) {
        add(why, Word::why_no_total);
        return;
    }
    const timeline::UsagePoint& last = aircraft.state.usage.back();
    add(why,
        Word::why_total_now,
        {base::hours_exact_arg(last.total, form), base::day_arg(last.on)},
        last.fact);
}

void add_hours_anchor(Why& why, const ClockDue& clock, HoursForm form) {
    const base::Arg anchor = base::hours_exact_arg(clock.anchor_total, form);
    if (explain_carried_hours(why, clock, form)) return;
    if (clock.estimated) {
        add(why, Word::why_from_estimate_hours, {anchor}, clock.anchor_fact);
    } else if (clock.counts_from == CountsFrom::work) {
        add(why, Word::why_from_work_hours, {anchor}, clock.anchor_fact);
    } else if (clock.counts_from == CountsFrom::anchor) {
        add(why, Word::why_from_anchor_hours, {anchor}, clock.anchor_fact);
    } else {
        add(why, Word::why_from_assumed_hours);
    }
}

}  // namespace

void add_rounding(Why& why, FlightTime exact, HoursForm form, base::Arg shown, Word rounded) {
    if (form == HoursForm::tenths) return;
    const bool is_whole = base::exact_form({exact}) == HoursForm::tenths;
    add(why, is_whole ? Word::why_shown : rounded, {std::move(shown)});
}

void explain_hours(Why& why,
                   const Assessed& aircraft,
                   const limits::ItemDue& item,
                   const ClockDue& clock) {
    if (!item.part.id.empty()) {
        explain_part_hours(why, aircraft, item, clock);
        return;
    }
    const FlightTime total = clock.anchor_total + clock.used - clock.extra;
    std::vector<FlightTime> terms = adjusted_hours(aircraft);
    terms.push_back(clock.limit_hours);
    if (clock.known) terms.insert(terms.end(), {total, clock.anchor_total, clock.extra});
    const HoursForm form = base::exact_form(terms);
    const base::Arg limit = base::hours_exact_arg(clock.limit_hours, form);
    add(why, Word::why_limit_hours, {limit}, item.limit_fact);
    add_total(why, aircraft, form);
    explain_adjusted(why, aircraft, form);
    if (!clock.known) return;
    add_hours_anchor(why, clock, form);
    explain_factors(why, aircraft, item, clock, form);
    std::vector<base::Arg> sum{
        limit, base::hours_exact_arg(total, form), base::hours_exact_arg(clock.anchor_total, form)};
    const bool is_more = clock.extra.seconds > 0;
    if (is_more) sum.push_back(base::hours_exact_arg(clock.extra, form));
    sum.push_back(base::hours_exact_arg(clock.left, form));
    add_sum(why, is_more ? Word::why_factor_sum : Word::why_hours_sum, std::move(sum));
    add_rounding(why, clock.left, form, base::hours_left_arg(clock.left), Word::why_shown_down);
}

Why why_total(const Assessed& aircraft) {
    Why why;
    why.title = {Word::why_total, {}};
    const auto& usage = aircraft.state.usage;
    const FlightTime total = usage.empty() ? FlightTime{0} : usage.back().total;
    std::vector<FlightTime> terms{total};
    for (const timeline::MeterState& meter : aircraft.state.meters) {
        terms.push_back(meter.reads);
        terms.push_back(meter.total);
    }
    for (const FlightTime hours : adjusted_hours(aircraft))
        terms.push_back(hours);
    const HoursForm form = base::exact_form(terms);
    add_total(why, aircraft, form);
    for (const timeline::MeterState& meter : aircraft.state.meters) {
        add(why,
            Word::why_meter,
            {base::text_arg(meter.name),
             base::hours_exact_arg(meter.reads, form),
             base::hours_exact_arg(meter.total, form)},
            meter.id);
    }
    explain_adjusted(why, aircraft, form);
    if (!usage.empty())
        add_rounding(why, total, form, base::hours_used_arg(total), Word::why_shown_up);
    if (!aircraft.state.questions.empty()) add(why, Word::why_highest);
    return why;
}

}  // namespace twoclocks::views
