#include "engine/views/directive_view.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using facts::Clock;
using limits::ClockDue;
using limits::DirectiveStanding;
using limits::ItemDue;
using timeline::DirectiveState;
using timeline::DirectiveWork;

[[nodiscard]] const ItemDue& item_at(const Assessed& aircraft, std::int32_t place) {
    return aircraft.items[static_cast<std::size_t>(place)];
}

/// The directive of an item as the record has it, null when it rests on none.
[[nodiscard]] const DirectiveState* told_of(const Assessed& aircraft, const ItemDue& item) {
    const timeline::ItemState* state = item_state(aircraft, item.item);
    return state != nullptr && state->directive ? &*state->directive : nullptr;
}

[[nodiscard]] Message standing_message(const ItemDue& item, const DirectiveState& directive) {
    switch (item.directive->standing) {
        case DirectiveStanding::open:
            return {Word::standing_open, {}};
        case DirectiveStanding::before_flight:
            return {Word::standing_before_flight, {}};
        case DirectiveStanding::complied:
            return {Word::standing_complied, {}};
        case DirectiveStanding::ended:
            return {Word::standing_ended, {}};
        case DirectiveStanding::superseded:
            return {Word::standing_superseded, {base::text_arg(directive.superseded_by->name)}};
        case DirectiveStanding::not_here:
            return {Word::standing_not_here, {}};
        case DirectiveStanding::unknown:
            return {Word::standing_unknown, {}};
    }
    return {Word::standing_unknown, {}};
}

[[nodiscard]] Message last_message(const std::optional<DirectiveWork>& work) {
    if (!work) return {Word::status_no_work, {}};
    const base::Arg day = base::day_arg(work->on);
    if (!work->total) return {Word::status_last_day, {day}};
    const Word word = work->total_estimated ? Word::status_last_about : Word::status_last;
    return {word, {day, base::hours_used_arg(*work->total)}};
}

/// What was done, by which reference; the method of another way where one is in use.
[[nodiscard]] Message method_message(const DirectiveState& directive) {
    const std::optional<DirectiveWork>& work =
        directive.ended_by ? directive.ended_by : directive.last;
    if (!work) return {Word::blank, {}};
    if (work->what.empty() && work->reference.empty()) return {Word::directive_method_none, {}};
    if (work->reference.empty()) return {Word::record_method, {base::text_arg(work->what)}};
    if (work->what.empty()) return {Word::record_method, {base::text_arg(work->reference)}};
    return {Word::status_method, {base::text_arg(work->what), base::text_arg(work->reference)}};
}

[[nodiscard]] Message means_message(const ItemDue& item, const DirectiveState& directive) {
    if (!item.directive->means) return {Word::blank, {}};
    const facts::AlternativeMeans& means = directive.means.front().means;
    return {Word::directive_means, {base::text_arg(means.reference), base::text_arg(means.issuer)}};
}

[[nodiscard]] Message next_of(const ItemDue& item, const ClockDue& clock) {
    if (!clock.known) return {Word::directive_next_unknown, {}};
    switch (clock.clock) {
        case Clock::hours:
            return {item.part.id.empty() ? Word::directive_next_hours : Word::directive_next_part,
                    {base::hours_left_arg(clock.due_total)}};
        case Clock::calendar:
            return {Word::directive_next_day, {base::day_arg(clock.due_on)}};
        case Clock::landings:
        case Clock::starts:
            return {Word::directive_next_count,
                    {base::whole_arg((clock.anchor_count + clock.limit_count).value)}};
    }
    return {Word::directive_next_unknown, {}};
}

void add_new(std::vector<Message>& lines, Message line) {
    const bool stands = std::any_of(lines.begin(), lines.end(), [&](const Message& other) {
        return other.word == line.word && line.args.empty();
    });
    if (!stands) lines.push_back(std::move(line));
}

/// Hours and day of what is required next; where only hours count, about the day they end.
[[nodiscard]] std::vector<Message> next_lines(const Assessed& aircraft, std::int32_t place) {
    const ItemDue& item = item_at(aircraft, place);
    std::vector<Message> out;
    if (item.directive->standing == DirectiveStanding::before_flight)
        out.push_back({Word::directive_next_flight, {}});
    if (item.complied) out.push_back({Word::directive_next_none, {}});
    if (item.directive->standing == DirectiveStanding::unknown)
        out.push_back({Word::directive_next_unknown, {}});
    for (const auto* clocks : {&item.clocks, &item.caps}) {
        for (const ClockDue& clock : *clocks)
            add_new(out, next_of(item, clock));
    }
    const bool is_later = item.combine == facts::Combine::later && item.clocks.size() > 1;
    if (is_later) out.push_back({Word::directive_next_later, {}});
    const auto& projection = aircraft.projections[static_cast<std::size_t>(place)];
    const bool by_hours = projection.known && projection.binds == Clock::hours;
    if (by_hours && projection.likely && !item.complied)
        out.push_back({Word::directive_next_about, {base::day_arg(*projection.likely)}});
    return out;
}

}  // namespace

State with_directive(State by_clocks, const ItemDue& item) {
    if (!item.directive) return by_clocks;
    const limits::DirectiveDue& directive = *item.directive;
    State out = by_clocks;
    if (directive.standing == DirectiveStanding::before_flight) {
        // Without clocks of its own there is nothing that is not known.
        if (item.clocks.empty()) out = State::nothing_due;
        const State stops = directive.stops_now ? State::before_next_flight : State::due;
        out = std::max(out, item.mandatory() ? stops : State::act);
    }
    return directive.unsure ? std::max(out, State::unknown) : out;
}

Message directive_name(const facts::Directive& directive) {
    const base::Arg number = base::text_arg(directive.number);
    const base::Arg revision = base::text_arg(directive.revision);
    const base::Arg issuer = base::text_arg(directive.issuer);
    if (directive.revision.empty() && directive.issuer.empty())
        return {Word::directive_plain, {number}};
    if (directive.revision.empty()) return {Word::directive_no_revision, {number, issuer}};
    if (directive.issuer.empty()) return {Word::directive_no_issuer, {number, revision}};
    return {Word::directive_full, {number, revision, issuer}};
}

std::optional<DirectiveView> make_directive_view(const Assessed& aircraft, std::int32_t place) {
    const ItemDue& item = item_at(aircraft, place);
    const DirectiveState* directive = told_of(aircraft, item);
    if (directive == nullptr || !item.directive) return std::nullopt;
    DirectiveView out;
    out.name = directive->told ? directive_name(directive->directive) : Message{Word::blank, {}};
    const Message standing = standing_message(item, *directive);
    out.standing = standing;
    out.last = last_message(directive->last);
    out.method = method_message(*directive);
    out.next = next_lines(aircraft, place);
    out.means = means_message(item, *directive);
    out.can_decide = directive->told;
    return out;
}

std::optional<Message> standing_instead(const Assessed& aircraft, std::int32_t place) {
    const ItemDue& item = item_at(aircraft, place);
    const DirectiveState* directive = told_of(aircraft, item);
    if (directive == nullptr || !item.directive) return std::nullopt;
    const bool by_day =
        item.directive->standing == DirectiveStanding::open ||
        (item.directive->standing == DirectiveStanding::before_flight && item.passed());
    if (by_day) return std::nullopt;
    return standing_message(item, *directive);
}

std::optional<Message> directive_sentence(const Assessed& aircraft, Word word) {
    if (aircraft.worst < 0 || aircraft.overall != State::before_next_flight) return std::nullopt;
    const ItemDue& item = item_at(aircraft, aircraft.worst);
    if (!item.directive || !item.directive->stops_now) return std::nullopt;
    return Message{word, {base::text_arg(item_label(item))}};
}

}  // namespace twoclocks::views
