#include "engine/views/why_hung.hpp"

#include "engine/base/message_args.hpp"
#include "engine/views/why_limits.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::FlightTime;
using base::HoursForm;
using base::Word;
using limits::ClockDue;
using limits::CountsFrom;
using limits::HoursIn;
using limits::ItemDue;
using timeline::PartSpell;
using timeline::PartState;

[[nodiscard]] Word anchor_word(facts::Anchor anchor) {
    switch (anchor) {
        case facts::Anchor::manufacture:
            return Word::anchor_manufacture;
        case facts::Anchor::cure:
            return Word::anchor_cure;
        case facts::Anchor::shipment:
            return Word::anchor_shipment;
        case facts::Anchor::first_airworthiness:
            return Word::anchor_first_airworthiness;
        case facts::Anchor::first_fit:
            return Word::anchor_first_fit;
        case facts::Anchor::release:
            return Word::anchor_release;
        case facts::Anchor::overhaul:
            return Word::anchor_overhaul;
        case facts::Anchor::unknown:
            break;
    }
    return Word::anchor_unknown;
}

/// Every term of the sums, for one form that loses nothing.
[[nodiscard]] HoursForm form_of(const PartState& part, const ClockDue& clock) {
    std::vector<FlightTime> terms{clock.limit_hours};
    if (clock.known) {
        terms.push_back(clock.anchor_total);
        terms.push_back(clock.anchor_total + clock.used);
    }
    if (clock.hours_in == HoursIn::since_new && part.tsn) {
        terms.push_back(part.by_papers);
        for (const PartSpell& spell : part.spells)
            terms.push_back(spell.gained.value_or(FlightTime{0}));
    }
    return base::exact_form(terms);
}

void add_spell(Why& why, const PartSpell& spell, HoursForm form) {
    if (!spell.gained || spell.gained->seconds == 0) return;
    const base::Arg gained = base::hours_exact_arg(*spell.gained, form);
    if (spell.until) {
        add(why,
            Word::why_part_spell,
            {base::day_arg(spell.from), base::day_arg(*spell.until), gained},
            spell.removal);
    } else {
        add(why, Word::why_part_spell_open, {base::day_arg(spell.from), gained}, spell.fit);
    }
}

/// How time since new is made: papers and what the spells gained, exactly.
void add_since_new(Why& why, const PartState& part, HoursForm form) {
    const FlightTime papers = part.by_papers;
    if (papers.seconds < 0) {
        const FlightTime off = FlightTime{0} - papers;
        add(why, Word::why_part_rebuilt, {base::hours_exact_arg(off, form)}, part.id);
    } else {
        add(why, Word::why_part_papers, {base::hours_exact_arg(papers, form)}, part.id);
    }
    for (const PartSpell& spell : part.spells)
        add_spell(why, spell, form);
    add_sum(why,
            Word::why_part_sum,
            {base::hours_exact_arg(papers, form),
             base::hours_exact_arg(*part.tsn - papers, form),
             base::hours_exact_arg(*part.tsn, form)});
}

/// What the part has now, in what the clock counts in.
void add_now(Why& why, const PartState& part, const ClockDue& clock, HoursForm form) {
    const bool is_estimate = clock.part_estimated;
    if (clock.hours_in == HoursIn::since_overhaul) {
        const base::Arg now = base::hours_exact_arg(clock.anchor_total + clock.used, form);
        add(why,
            is_estimate ? Word::why_part_overhaul_now_estimate : Word::why_part_overhaul_now,
            {now},
            part.id);
    } else if (part.tsn) {
        add_since_new(why, part, form);
        add(why,
            is_estimate ? Word::why_part_now_estimate : Word::why_part_now,
            {base::hours_exact_arg(*part.tsn, form)},
            part.id);
    } else if (clock.known && clock.hours_in == HoursIn::recorded && !clock.no_life_left) {
        const base::Arg now = base::hours_exact_arg(clock.anchor_total + clock.used, form);
        add(why, Word::why_part_now_recorded, {now}, part.id);
    } else {
        const bool asked = !part.questions.empty();
        add(why, asked ? Word::why_part_now_disputed : Word::why_part_now_none, {}, part.id);
    }
}

void add_anchor(Why& why, const ItemDue& item, const ClockDue& clock, HoursForm form) {
    const base::Arg from = base::hours_exact_arg(clock.anchor_total, form);
    if (clock.hours_in == HoursIn::since_overhaul) {
        add(why, Word::why_part_from_papers, {}, clock.anchor_fact);
        return;
    }
    if (explain_carried_hours(why, clock, form)) return;
    switch (clock.counts_from) {
        case CountsFrom::work:
            add(why,
                clock.estimated ? Word::why_part_from_estimate : Word::why_part_from_work,
                {from},
                clock.anchor_fact);
            return;
        case CountsFrom::anchor:
            add(why, Word::why_part_from_anchor, {from}, clock.anchor_fact);
            return;
        case CountsFrom::assumed:
        case CountsFrom::unknown:
            break;
    }
    const bool is_overhaul = item.role == facts::ItemRole::overhaul;
    add(why, is_overhaul ? Word::why_part_from_new_safer : Word::why_part_from_new);
}

/// No life was left, and what was flown since is past the limit.
void add_no_life(Why& why, const PartState& part, const ClockDue& clock) {
    add(why, Word::why_part_no_history, {}, part.id);
    const FlightTime past = FlightTime{0} - clock.left;
    if (past.seconds <= 0) return;
    const HoursForm form = base::exact_form({past});
    add(why, Word::why_part_no_history_flown, {base::hours_exact_arg(past, form)}, part.id);
}

}  // namespace

void explain_part(Why& why, const ItemDue& item) {
    const limits::OnPart& part = item.part;
    if (part.id.empty()) return;
    std::vector<base::Arg> args{base::text_arg(part.name), base::text_arg(part.serial)};
    if (!part.position.empty()) args.push_back(base::text_arg(part.position));
    add(why, part.position.empty() ? Word::why_part : Word::why_part_at, std::move(args), part.id);
}

void explain_part_hours(Why& why,
                        const Assessed& aircraft,
                        const ItemDue& item,
                        const ClockDue& clock) {
    const PartState* part = part_of(aircraft, item);
    if (part == nullptr) return;
    const HoursForm form = form_of(*part, clock);
    const base::Arg limit = base::hours_exact_arg(clock.limit_hours, form);
    add(why, Word::why_limit_hours, {limit}, item.limit_fact);
    explain_part(why, item);
    add_now(why, *part, clock, form);
    if (clock.no_life_left) add_no_life(why, *part, clock);
    if (!clock.known || clock.no_life_left) return;
    add_anchor(why, item, clock, form);
    add_sum(why,
            Word::why_hours_sum,
            {limit,
             base::hours_exact_arg(clock.anchor_total + clock.used, form),
             base::hours_exact_arg(clock.anchor_total, form),
             base::hours_exact_arg(clock.left, form)});
    add_rounding(why, clock.left, form, base::hours_left_arg(clock.left), Word::why_shown_down);
}

void explain_part_day(Why& why, const ItemDue& item, const ClockDue& clock) {
    explain_part(why, item);
    const base::Arg from = base::day_arg(clock.anchor_on);
    if (clock.no_life_left) {
        add(why, Word::why_part_no_history, {}, item.part.id);
        add(why, Word::why_part_no_history_day, {base::day_arg(clock.due_on)}, item.part.id);
        return;
    }
    if (!clock.known) {
        add(why, Word::why_from_unknown_day);
        return;
    }
    if (clock.from_rebuild) {
        add(why, Word::why_part_rebuilt_day, {from}, clock.anchor_fact);
        return;
    }
    switch (clock.counts_from) {
        case CountsFrom::work:
            if (!explain_carried_day(why, clock))
                add(why, Word::why_from_work_day, {from}, clock.anchor_fact);
            return;
        case CountsFrom::anchor:
            if (clock.anchor == facts::Anchor::unknown) {
                add(why, Word::why_from_anchor_day, {from}, clock.anchor_fact);
                return;
            }
            add(why,
                Word::why_part_from_day,
                {from, base::word_arg(anchor_word(clock.anchor))},
                clock.anchor_fact);
            return;
        case CountsFrom::assumed:
        case CountsFrom::unknown:
            break;
    }
    const bool is_cure = clock.anchor == facts::Anchor::cure;
    add(why,
        is_cure ? Word::why_part_assumed_cure : Word::why_from_assumed_day,
        {from},
        clock.anchor_fact);
}

}  // namespace twoclocks::views
