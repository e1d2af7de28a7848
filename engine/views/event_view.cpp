#include "engine/views/event_view.hpp"

#include "engine/base/message_args.hpp"
#include "engine/views/record_care.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using timeline::EventState;
using timeline::EventSubject;

[[nodiscard]] base::Arg what_arg(const EventState& event) {
    return base::word_arg(event_word(event.event.happened));
}

[[nodiscard]] base::Arg name_arg(const EventSubject& subject) {
    return subject.name.empty() ? base::word_arg(Word::event_no_name)
                                : base::text_arg(subject.name);
}

[[nodiscard]] Message source_message(const facts::Event& event) {
    if (event.source.empty()) return {Word::event_source_none, {}};
    if (event.revision.empty())
        return {Word::event_source_no_revision, {base::text_arg(event.source)}};
    return {Word::event_source, {base::text_arg(event.source), base::text_arg(event.revision)}};
}

[[nodiscard]] const EventSubject* subject_with(const EventState& event, base::Id id) {
    for (const EventSubject& subject : event.subjects) {
        if (subject.id == id) return &subject;
    }
    return nullptr;
}

void explain_subjects(Why& why, const EventState& event) {
    bool any_part = false;
    for (const EventSubject& subject : event.subjects) {
        if (!subject.open) continue;
        any_part = any_part || subject.is_part;
        add(why,
            subject.here ? Word::why_event_open : Word::why_event_open_elsewhere,
            {name_arg(subject)});
    }
    for (const timeline::EventSigned& work : event.signed_by) {
        for (const base::Id& id : work.subjects) {
            const EventSubject* subject = subject_with(event, id);
            if (subject == nullptr) continue;
            add(why,
                Word::why_event_signed,
                {name_arg(*subject), base::day_arg(work.on)},
                work.fact);
        }
    }
    if (any_part) add(why, Word::why_event_part);
}

[[nodiscard]] Why why_event(const EventState& event) {
    Why why;
    why.title = {Word::why_event, {}};
    add(why, Word::why_event_told, {what_arg(event), base::day_arg(event.on)}, event.id);
    if (event.event.total)
        add(why, Word::why_event_total, {base::hours_used_arg(*event.event.total)}, event.id);
    if (!event.event.found.empty())
        add(why, Word::why_event_found, {base::text_arg(event.event.found)}, event.id);
    if (event.disputed) add(why, Word::event_disputed);
    const Message source = source_message(event.event);
    add(why, source.word, source.args, event.id);
    explain_subjects(why, event);
    add(why, Word::why_event_work);
    add(why, Word::why_not_approval);
    return why;
}

}  // namespace

EventView make_event_view(const EventState& event) {
    EventView view;
    view.event = event.id;
    view.title.text = {Word::event_title, {what_arg(event), base::day_arg(event.on)}};
    view.title.why = why_event(event);
    view.title.why.figure = view.title.text;
    view.total = {Word::event_no_total, {}};
    if (event.event.total)
        view.total = {Word::event_total, {base::hours_used_arg(*event.event.total)}};
    if (!event.event.found.empty())
        view.found = {Word::record_found, {base::text_arg(event.event.found)}};
    view.source = source_message(event.event);
    for (const EventSubject& subject : event.subjects) {
        if (subject.here) view.open.push_back({Word::event_open_for, {name_arg(subject)}});
    }
    if (event.disputed) view.disputed = {Word::event_disputed, {}};
    const bool shakes = event.event.happened == facts::EventKind::vibration;
    view.look = {shakes ? Word::event_land : Word::event_look, {}};
    return view;
}

std::vector<EventView> make_event_views(const std::vector<EventState>& events) {
    std::vector<EventView> out;
    for (const EventState& event : events)
        out.push_back(make_event_view(event));
    return out;
}

std::optional<Message> event_sentence(const Assessed& aircraft, Word word) {
    const std::vector<EventState>& events = aircraft.state.events;
    if (events.empty() || aircraft.overall == State::over) return std::nullopt;
    return Message{word, {what_arg(events.front()), base::day_arg(events.front().on)}};
}

void explain_events(Why& why, const Assessed& aircraft) {
    for (const EventState& event : aircraft.state.events)
        add(why, Word::why_event_told, {what_arg(event), base::day_arg(event.on)}, event.id);
}

}  // namespace twoclocks::views
