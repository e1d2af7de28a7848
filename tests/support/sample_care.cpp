// Screens of what happened and is not signed for, and of measured wear. Every aircraft is invented.
#include "tests/support/sample_screens.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Message;
using base::Word;
using views::EventView;
using views::State;

Message open_for(const char* name) {
    return {Word::event_open_for, {base::text_arg(name)}};
}

EventView hard_landing() {
    EventView event;
    event.event = id_of(60);
    event.title =
        figure({Word::event_title,
                {base::word_arg(Word::event_hard_landing), base::day_arg(day_of(day_3_may_2026))}});
    event.total = {Word::event_total, {base::hours_used_arg(base::tenths(13560))}};
    event.found = {Word::record_found,
                   {base::text_arg("Skids spread, engine running, no horn before it")}};
    event.source = {
        Word::event_source,
        {base::text_arg("Maintenance manual, chapter 5-50"), base::text_arg("revision 5")}};
    event.open = {open_for("ISLE-1"), open_for("Main gearbox with mast A-100417")};
    event.look = {Word::event_look, {}};
    return event;
}

EventView vibration() {
    EventView event;
    event.event = id_of(61);
    event.title = figure(
        {Word::event_title,
         {base::word_arg(Word::event_vibration), base::day_arg(day_of(day_3_may_2026 + 9))}});
    event.total = {Word::event_no_total, {}};
    event.source = {Word::event_source_none, {}};
    event.open = {open_for("ISLE-1")};
    event.disputed = {Word::event_disputed, {}};
    event.look = {Word::event_land, {}};
    return event;
}

Message choice_of(const char* name) {
    return {Word::as_told, {base::text_arg(name)}};
}

FieldView field(std::string id, Word label, FieldKind kind, std::string text) {
    FieldView made;
    made.id = std::move(id);
    made.label = {label, {}};
    made.hint = {Word::blank, {}};
    made.kind = kind;
    made.text = std::move(text);
    return made;
}

}  // namespace

Screen struck_aircraft() {
    Screen screen = aircraft();
    auto& view = std::get<views::AircraftView>(screen.page);
    view.state = State::before_next_flight;
    view.state_word = {Word::state_before_flight, {}};
    view.answer =
        figure({Word::say_event,
                {base::word_arg(Word::event_hard_landing), base::day_arg(day_of(day_3_may_2026))}});
    view.events = {hard_landing(), vibration()};
    views::DueRow& worn = view.due[1];
    worn.wear = figure({Word::say_wear,
                        {base::text_arg("3.25"),
                         base::text_arg("mm"),
                         base::word_arg(Word::sense_at_most),
                         base::text_arg("4"),
                         base::text_arg("mm")}});
    worn.likely = figure({Word::say_trend_day, {base::day_arg(day_of(day_21_sep_2029))}});
    return screen;
}

Screen sign_form() {
    FormPage form;
    form.title = {Word::form_sign_event, {}};
    form.intro = {Word::form_sign_event_intro, {}};
    FieldView inspected = field("inspected", Word::field_inspected, FieldKind::choice, {});
    inspected.options = {
        {Word::signs_all, {}}, choice_of("ISLE-1"), choice_of("Main gearbox with mast A-100417")};
    form.fields = {
        inspected,
        field("what", Word::field_what, FieldKind::text, "Conditional inspection: hard landing"),
        field("date", Word::field_date, FieldKind::date, "2026-05-02"),
        field("done_by", Word::field_done_by, FieldKind::text, {})};
    form.fields[2].problem =
        base::trouble(base::Trouble::form_before_event, {base::day_arg(day_of(day_3_may_2026))});
    form.submit = {Word::form_save, {}};
    Screen screen = samples::form();
    screen.page = std::move(form);
    return screen;
}

}  // namespace twoclocks::canvas::samples
