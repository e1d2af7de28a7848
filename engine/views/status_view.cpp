#include "engine/views/status_view.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/views/directive_view.hpp"
#include "engine/views/due_row.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/record.hpp"
#include "engine/views/sentence.hpp"
#include "engine/views/status_clock.hpp"
#include "engine/views/why.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using limits::ClockDue;
using limits::ItemDue;

/// A group and what belongs into it; the first that fits takes an item.
struct Kind {
    Word title;
    bool (*takes)(const ItemDue& item);
};

constexpr Kind kinds[] = {
    {Word::status_overhauls,
     [](const ItemDue& item) { return item.role == facts::ItemRole::overhaul; }},
    {Word::status_life_limits,
     [](const ItemDue& item) {
         return item.limit_class == facts::LimitClass::airworthiness_limitation;
     }},
    {Word::status_directives,
     [](const ItemDue& item) { return item.limit_class == facts::LimitClass::directive; }},
    {Word::status_inspections,
     [](const ItemDue& item) { return item.role == facts::ItemRole::inspection; }},
    {Word::status_others, [](const ItemDue&) { return true; }},
};

/// The latest of an item's renewals, null when it has none.
[[nodiscard]] const timeline::Renewed* last_work(const timeline::ItemState& item) {
    const timeline::Renewed* out = nullptr;
    for (const std::optional<timeline::Renewed>& renewed : item.renewed) {
        if (renewed && (out == nullptr || renewed->on > out->on)) out = &*renewed;
    }
    return out;
}

/// The record of a work, as it stands in the file; null when it is gone from view.
[[nodiscard]] const facts::WorkDone* work_of(const facts::Journal& journal, base::Id id) {
    for (const facts::Fact* fact : journal.with_id(id)) {
        if (const auto* work = std::get_if<facts::WorkDone>(&fact->body.fields)) return work;
    }
    return nullptr;
}

void tell_last(const facts::Journal& journal, const timeline::ItemState& item, StatusRow& row) {
    const timeline::Renewed* last = last_work(item);
    row.method = {Word::blank, {}};
    if (last == nullptr) {
        row.last = {Word::status_no_work, {}};
        return;
    }
    const base::Arg day = base::day_arg(last->on);
    if (!last->total) {
        row.last = {Word::status_last_day, {day}};
    } else {
        const Word word = last->total_estimated ? Word::status_last_about : Word::status_last;
        row.last = {word, {day, base::hours_used_arg(*last->total)}};
    }
    const facts::WorkDone* work = work_of(journal, last->fact);
    if (work == nullptr) return;
    row.method = work->reference.empty()
                     ? Message{Word::as_told, {base::text_arg(work->what)}}
                     : Message{Word::status_method,
                               {base::text_arg(work->what), base::text_arg(work->reference)}};
}

/// What the authority asks for of a directive: method, number, revision, next time and date.
void tell_directive(const Assessed& aircraft, std::size_t place, StatusRow& row) {
    const auto view = make_directive_view(aircraft, static_cast<std::int32_t>(place));
    if (!view) return;
    row.last = view->last;
    if (view->method.word != Word::blank) row.method = view->method;
    for (const Message* line : {&view->name, &view->standing, &view->means}) {
        if (line->word != Word::blank) row.notes.push_back(*line);
    }
    row.notes.insert(row.notes.end(), view->next.begin(), view->next.end());
}

[[nodiscard]] StatusRow make_status_row(const facts::Journal& journal,
                                        const Assessed& aircraft,
                                        std::size_t place) {
    const ItemDue& item = aircraft.items[place];
    StatusRow row;
    row.item = item.item;
    row.name = item_label(item);
    row.state = aircraft.item_states[place];
    row.state_word = state_word(row.state);
    row.source = source_of(item);
    row.last = {Word::status_no_work, {}};
    row.method = {Word::blank, {}};
    for (const ClockDue& clock : item.clocks)
        row.clocks.push_back(status_clock(aircraft, item, clock));
    if (item.asleep) {
        const auto at = static_cast<std::int32_t>(place);
        row.notes.push_back(make_row(aircraft, at).likely.text);
    }
    const timeline::ItemState* state = item_state(aircraft, item.item);
    if (state == nullptr) return row;
    tell_last(journal, *state, row);
    tell_directive(aircraft, place, row);
    for (const timeline::PermitState& permit : state->permits) {
        row.notes.push_back(
            {Word::status_permit,
             {base::text_arg(permit.permit.issuer), base::text_arg(permit.permit.reference)}});
    }
    return row;
}

[[nodiscard]] Message total_of(const Assessed& aircraft) {
    if (aircraft.state.usage.empty()) return unknown_figure();
    const timeline::UsagePoint& last = aircraft.state.usage.back();
    return {Word::say_total, {base::hours_used_arg(last.total), base::day_arg(last.on)}};
}

[[nodiscard]] Message landings_of(const Assessed& aircraft) {
    const auto& landings = aircraft.state.landings;
    return landings ? count_figure(landings->value) : unknown_figure();
}

[[nodiscard]] Message starts_of(const Assessed& aircraft) {
    const auto& starts = aircraft.state.starts;
    return starts ? count_figure(starts->value) : unknown_figure();
}

[[nodiscard]] StatusPart make_status_part(const Assessed& aircraft,
                                          const timeline::PartState& part) {
    StatusPart row;
    row.part = part.id;
    row.name = part.name.empty() ? part.part_number : part.name;
    row.plate = {part.position.empty() ? Word::status_plate : Word::status_plate_at,
                 {base::text_arg(part.part_number),
                  base::text_arg(part.serial),
                  base::text_arg(part.position)}};
    row.since_new = told_of_part(aircraft, part, &since_new);
    row.since_overhaul = told_of_part(aircraft, part, &since_overhaul);
    row.papers_missing = part.papers.empty();
    row.papers = row.papers_missing ? Message{Word::status_papers_none, {}}
                                    : Message{Word::record_papers, {base::text_arg(part.papers)}};
    return row;
}

/// What a person who asks for the status would miss.
[[nodiscard]] std::vector<Message> missing_of(const Assessed& aircraft, const StatusView& view) {
    std::vector<Message> out;
    if (aircraft.state.usage.empty()) out.push_back({Word::status_missing_total, {}});
    if (!aircraft.state.manufactured) out.push_back({Word::status_missing_made, {}});
    for (const ItemDue& item : aircraft.items) {
        const base::Arg name = base::text_arg(item_label(item));
        const bool stops =
            item.directive && item.directive->standing == limits::DirectiveStanding::before_flight;
        if (item.clocks.empty() && !item.complied && !item.asleep && !stops) {
            out.push_back({Word::status_missing_limit, {name}});
        } else if (item.source.empty()) {
            out.push_back({Word::status_missing_source, {name}});
        } else if (!item.all_known()) {
            out.push_back({Word::status_missing_figures, {name}});
        }
    }
    for (const StatusPart& part : view.parts) {
        if (part.papers_missing)
            out.push_back({Word::status_missing_papers, {base::text_arg(part.name)}});
    }
    return out;
}

void take_groups(const facts::Journal& journal, const Assessed& aircraft, StatusView& view) {
    std::vector<std::int32_t> left = soonest_first(aircraft);
    for (const Kind& kind : kinds) {
        StatusGroup group{{kind.title, {}}, {}};
        std::vector<std::int32_t> others;
        for (const std::int32_t place : left) {
            const auto at = static_cast<std::size_t>(place);
            if (kind.takes(aircraft.items[at])) {
                group.rows.push_back(make_status_row(journal, aircraft, at));
            } else {
                others.push_back(place);
            }
        }
        left = std::move(others);
        if (!group.rows.empty()) view.groups.push_back(std::move(group));
    }
}

}  // namespace

StatusView make_status_view(const facts::Journal& journal, const Assessed& aircraft) {
    const timeline::AircraftState& state = aircraft.state;
    StatusView view;
    view.id = state.id;
    view.registration = state.registration;
    view.type = state.type;
    view.serial = state.serial;
    view.state = aircraft.overall;
    view.state_word = state_word(aircraft.overall);
    view.as_of = {Word::status_as_of, {base::day_arg(aircraft.today)}};
    view.total = told(aircraft, &total_of);
    view.landings = told(aircraft, &landings_of);
    view.starts = told(aircraft, &starts_of);
    take_groups(journal, aircraft, view);
    for (const timeline::PartState& part : aircraft.parts)
        view.parts.push_back(make_status_part(aircraft, part));
    view.missing = missing_of(aircraft, view);
    return view;
}

std::vector<Why> whys_of(const StatusView& view) {
    std::vector<Why> out;
    for (const StatusGroup& group : view.groups) {
        for (const StatusRow& row : group.rows) {
            for (const StatusClock& clock : row.clocks)
                out.push_back(clock.why);
        }
    }
    return out;
}

}  // namespace twoclocks::views
