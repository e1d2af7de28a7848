#include "engine/views/why_limits.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/limits/permit.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::FlightTime;
using base::HoursForm;
using base::Word;
using facts::Clock;
using limits::Carried;
using limits::ClockDue;
using limits::ItemDue;

void explain_cap(Why& why, const ItemDue& item, const ClockDue& cap) {
    if (!cap.known) {
        add(why, Word::why_cap_unknown, {}, item.limit_fact);
        return;
    }
    switch (cap.clock) {
        case Clock::hours: {
            const HoursForm form = base::exact_form({cap.due_total, cap.left});
            add(why,
                item.part.id.empty() ? Word::why_cap_hours : Word::why_cap_part,
                {base::hours_exact_arg(cap.due_total, form), base::hours_exact_arg(cap.left, form)},
                item.limit_fact);
            return;
        }
        case Clock::calendar:
            add(why, Word::why_cap_day, {base::day_arg(cap.due_on)}, item.limit_fact);
            return;
        case Clock::landings:
        case Clock::starts:
            add(why,
                Word::why_cap_count,
                {base::whole_arg((cap.anchor_count + cap.limit_count).value),
                 base::whole_arg(cap.left_count.value)},
                item.limit_fact);
            return;
    }
}

void explain_tolerance(Why& why, const ItemDue& item, const ClockDue& clock) {
    const base::Arg source = base::text_arg(item.tolerance_source);
    if (clock.tolerance.seconds > 0) {
        const FlightTime end = clock.due_total + clock.tolerance;
        add(why,
            Word::why_tolerance_hours,
            {base::hours_exact_arg(end, base::exact_form({end})), source},
            item.limit_fact);
    }
    if (clock.tolerance_days > 0) {
        const base::Date end = base::add_days(clock.due_on, clock.tolerance_days);
        add(why, Word::why_tolerance_day, {base::day_arg(end), source}, item.limit_fact);
    }
    if (clock.overfly.seconds > 0) {
        const FlightTime end = clock.due_total + clock.overfly;
        add(why,
            Word::why_overfly,
            {base::hours_exact_arg(end, base::exact_form({end})), source},
            item.limit_fact);
    }
}

void explain_permit(Why& why, const limits::PermitUse& use) {
    const facts::Permit& permit = use.permit;
    const base::Arg issuer = base::text_arg(permit.issuer);
    if (permit.reference.empty() || permit.route.empty()) {
        add(why, Word::why_permit_plain, {issuer}, use.fact);
    } else {
        add(why,
            Word::why_permit,
            {issuer, base::text_arg(permit.reference), base::text_arg(permit.route)},
            use.fact);
    }
    if (permit.hours) {
        const HoursForm form = base::exact_form({*permit.hours, use.past});
        add(why,
            Word::why_permit_hours,
            {base::hours_exact_arg(*permit.hours, form), base::hours_exact_arg(use.past, form)},
            use.fact);
    }
    if (permit.until) add(why, Word::why_permit_until, {base::day_arg(*permit.until)}, use.fact);
}

void caution_permit(std::vector<base::Message>& out,
                    const ItemDue& item,
                    const limits::PermitUse& use) {
    const base::Arg name = base::text_arg(item_label(item));
    if (use.expired)
        out.push_back({Word::caution_permit_expired, {name, base::day_arg(*use.permit.until)}});
    if (use.exceeded) {
        out.push_back(
            {Word::caution_permit_exceeded,
             {name, base::hours_used_arg(use.past), base::hours_left_arg(*use.permit.hours)}});
    }
}

}  // namespace

void explain_settings(Why& why,
                      const Assessed& aircraft,
                      const ItemDue& item,
                      const ClockDue& clock) {
    if (clock.is_first) add(why, Word::why_first, {}, item.limit_fact);
    if (item.once) add(why, Word::why_once, {}, item.limit_fact);
    if (item.combine == facts::Combine::later) add(why, Word::why_later, {}, item.limit_fact);
    for (const ClockDue& cap : item.caps)
        explain_cap(why, item, cap);
    if (clock.known) explain_tolerance(why, item, clock);
    const timeline::ItemState* state = item_state(aircraft, item.item);
    if (state == nullptr || state->permits.empty()) return;
    for (const limits::PermitUse& use : limits::permit_uses(*state, item, aircraft.today))
        explain_permit(why, use);
    add(why, Word::why_permit_stays);
}

void explain_combination(Why& why, const ItemDue& item) {
    if (item.clocks.size() > 1) {
        const bool later = item.combine == facts::Combine::later;
        add(why, later ? Word::why_later : Word::why_sooner);
    }
    for (const ClockDue& cap : item.caps)
        explain_cap(why, item, cap);
}

bool explain_carried_hours(Why& why, const ClockDue& clock, HoursForm form) {
    const base::Arg from = base::hours_exact_arg(clock.anchor_total, form);
    const base::Arg done =
        base::hours_exact_arg(clock.done_total, base::exact_form({clock.done_total}));
    switch (clock.carried) {
        case Carried::none:
            return false;
        case Carried::due_point:
            add(why, Word::why_due_hours, {done, from}, clock.anchor_fact);
            return true;
        case Carried::excess:
            add(why, Word::why_excess_hours, {done, from}, clock.anchor_fact);
            return true;
        case Carried::doubt:
            add(why, Word::why_doubt_hours, {from}, clock.anchor_fact);
            return true;
    }
    return false;
}

bool explain_carried_day(Why& why, const ClockDue& clock) {
    const base::Arg from = base::day_arg(clock.anchor_on);
    if (clock.carried == Carried::due_point) {
        add(why, Word::why_due_day, {base::day_arg(clock.done_on), from}, clock.anchor_fact);
        return true;
    }
    if (clock.carried != Carried::doubt) return false;
    add(why, Word::why_doubt_day, {from}, clock.anchor_fact);
    return true;
}

std::vector<base::Message> limit_cautions(const Assessed& aircraft) {
    std::vector<base::Message> out;
    for (const ItemDue& item : aircraft.items) {
        for (const ClockDue& clock : item.clocks) {
            if (!limits::overflown(clock)) continue;
            const FlightTime now = FlightTime{0} - clock.left;
            const FlightTime past = std::max(clock.past_at_work, now);
            out.push_back({Word::caution_overfly_passed,
                           {base::text_arg(item_label(item)),
                            base::hours_used_arg(past),
                            base::hours_left_arg(clock.overfly)}});
        }
        const timeline::ItemState* state = item_state(aircraft, item.item);
        if (state == nullptr) continue;
        for (const limits::PermitUse& use : limits::permit_uses(*state, item, aircraft.today))
            caution_permit(out, item, use);
    }
    return out;
}

}  // namespace twoclocks::views
