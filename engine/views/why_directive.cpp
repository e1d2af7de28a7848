#include "engine/views/why_directive.hpp"

#include "engine/base/message_args.hpp"
#include "engine/views/directive_view.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Word;
using facts::Applicability;
using limits::ItemDue;
using timeline::DirectiveState;
using timeline::Says;

struct SaysWords {
    Word nothing;
    Word names_this;
    Word names_others;
};

[[nodiscard]] Word word_of(Says says, const SaysWords& words) {
    switch (says) {
        case Says::nothing:
            return words.nothing;
        case Says::names_this:
            return words.names_this;
        case Says::names_others:
            return words.names_others;
    }
    return words.nothing;
}

[[nodiscard]] Word decision_word(Applicability applies) {
    switch (applies) {
        case Applicability::unknown:
            return Word::why_decided_none;
        case Applicability::applies:
            return Word::why_decided_here;
        case Applicability::not_applicable:
            return Word::why_decided_not;
    }
    return Word::why_decided_none;
}

void explain_decision(Why& why, const DirectiveState& directive, const std::string& serial) {
    const facts::Directive& told = directive.directive;
    const base::Id fact = directive.fact;
    if (directive.disputed) {
        add(why, Word::why_decided_disputed, {}, fact);
    } else {
        add(why, decision_word(told.applies), {}, fact);
    }
    if (!told.applies_why.empty())
        add(why, Word::why_decided_by, {base::text_arg(told.applies_why)}, fact);
    for (const base::Message& line : evidence_of(directive, serial))
        add(why, line.word, line.args, fact);
    if (directive.doubted) add(why, Word::why_decision_doubted);
}

/// What the first interval counts from, where all agree on it.
void explain_start(Why& why, const DirectiveState& directive, const ItemDue& item) {
    const timeline::DirectiveStart& start = directive.starts.front();
    if (directive.starts.size() != 1 || !start.on) return;
    const bool ahead = item.directive->ahead.has_value();
    add(why,
        ahead ? Word::why_effective_ahead : Word::why_effective_day,
        {base::day_arg(*start.on)},
        directive.fact);
    if (limits::clock_of(item, facts::Clock::hours) == nullptr) return;
    if (!start.hours) {
        add(why, Word::why_effective_no_hours);
        return;
    }
    add(why,
        Word::why_effective_hours,
        {base::hours_exact_arg(*start.hours, base::exact_form({*start.hours}))});
}

void explain_links(Why& why, const DirectiveState& directive) {
    if (!directive.directive.replaces.empty())
        add(why, directive.credited ? Word::why_credit : Word::why_credit_none, {}, directive.fact);
    if (directive.superseded_by) {
        const timeline::OtherDirective& by = *directive.superseded_by;
        add(why, Word::why_superseded, {base::text_arg(by.name)}, by.item);
    }
    for (const timeline::OtherDirective& by : directive.claimed_by)
        add(why, Word::why_not_superseded, {base::text_arg(by.name)}, by.item);
    if (directive.in_ring) add(why, Word::why_ring);
    if (directive.ended_by) {
        const timeline::DirectiveWork& work = *directive.ended_by;
        add(why, Word::why_ended, {base::day_arg(work.on), base::text_arg(work.what)}, work.fact);
    }
    if (directive.end_disputed && !directive.ended_by) add(why, Word::why_ended_disputed);
}

void explain_means(Why& why, const DirectiveState& directive) {
    if (directive.means_in_doubt) {
        add(why, Word::why_means_disputed);
    } else if (directive.means_over) {
        const timeline::MeansState& over = *directive.means_over;
        add(why,
            Word::why_means_over,
            {base::text_arg(over.means.reference), base::day_arg(*over.means.until)},
            over.fact);
    } else if (!directive.means.empty()) {
        const timeline::MeansState& used = directive.means.front();
        const facts::AlternativeMeans& means = used.means;
        add(why,
            Word::why_means,
            {base::text_arg(means.reference), base::text_arg(means.issuer)},
            used.fact);
        if (!means.method.empty())
            add(why, Word::record_method, {base::text_arg(means.method)}, used.fact);
        const facts::Interval& interval = means.interval;
        const bool any = interval.hours || interval.months || interval.days || interval.landings ||
                         interval.starts;
        if (any) add(why, Word::why_means_interval, {}, used.fact);
        if (means.until) add(why, Word::why_means_until, {base::day_arg(*means.until)}, used.fact);
    }
}

}  // namespace

std::vector<base::Message> evidence_of(const DirectiveState& directive, const std::string& serial) {
    const facts::Directive& told = directive.directive;
    std::vector<base::Message> out;
    if (!told.serials.empty()) {
        std::vector<base::Arg> args{base::text_arg(told.serials)};
        if (directive.serials != Says::nothing) args.push_back(base::text_arg(serial));
        const Word word =
            word_of(directive.serials,
                    {Word::why_serials_silent, Word::why_serials_in, Word::why_serials_out});
        out.push_back({word, std::move(args)});
    }
    if (!told.part_number.empty()) {
        const Word word = word_of(
            directive.number, {Word::why_number_silent, Word::why_number_in, Word::why_number_out});
        out.push_back({word, {base::text_arg(told.part_number)}});
    }
    return out;
}

void explain_directive(Why& why, const Assessed& aircraft, const ItemDue& item) {
    const timeline::ItemState* state = item_state(aircraft, item.item);
    if (state == nullptr || !state->directive || !item.directive) return;
    const DirectiveState& directive = *state->directive;
    if (directive.told) {
        const base::Message name = directive_name(directive.directive);
        add(why, name.word, name.args, directive.fact);
        const bool on_part = !item.part.id.empty();
        explain_decision(why, directive, on_part ? item.part.serial : aircraft.state.serial);
        explain_start(why, directive, item);
        if (directive.before_flight) add(why, Word::why_directive_flight, {}, directive.fact);
        if (state->limit && !state->limit->once) add(why, Word::why_directive_repeat);
    }
    explain_links(why, directive);
    explain_means(why, directive);
}

}  // namespace twoclocks::views
