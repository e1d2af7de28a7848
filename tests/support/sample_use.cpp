// Screens of storage, of what is due on return, and of hours not counted. Every aircraft is
// invented.
#include "tests/support/sample_screens.hpp"
#include "wasm/app/form_fields.hpp"

#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/views/return_view.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Word;

std::vector<base::Message> storage() {
    return {{Word::storage_since,
             {base::day_arg(day_of(day_3_may_2026)),
              base::text_arg("Maintenance manual, chapter 10, storage of up to two years")}},
            {Word::storage_back, {base::day_arg(day_of(day_3_may_2026 + 90))}}};
}

Screen form_of(Word title, Word intro, std::vector<FieldView> fields) {
    Screen screen = samples::form();
    FormPage page;
    page.title = {title, {}};
    page.intro = {intro, {}};
    page.fields = std::move(fields);
    page.submit = {Word::form_save, {}};
    screen.page = std::move(page);
    return screen;
}

}  // namespace

Screen stored_aircraft() {
    Screen screen = aircraft();
    auto& view = std::get<views::AircraftView>(screen.page);
    view.storage = storage();
    view.can_return = true;
    view.due.back().likely.text = {Word::say_when_back, {}};
    return screen;
}

Screen on_return() {
    Screen screen = aircraft();
    const auto view = std::get<views::AircraftView>(screen.page);
    ReturnPage page;
    page.view.registration = view.registration;
    page.view.storage = storage();
    page.view.summary = {Word::return_summary,
                         {base::day_arg(day_of(day_3_may_2026 + 90)), base::whole_arg(2)}};
    page.view.events = {
        {Word::return_event,
         {base::word_arg(Word::event_hard_landing), base::day_arg(day_of(day_3_may_2026))}}};
    page.view.groups = {{{Word::return_before, {}}, {}}, {{Word::return_soon, {}}, {}}};
    for (const views::DueRow& due : view.due)
        page.view.groups[page.view.groups[0].rows.size() < 2 ? 0 : 1].rows.push_back(due);
    page.fields = {make_field(
        "return-on", Word::field_return_on, FieldKind::date, "2026-08-01", Need::optional)};
    screen.whys = views::whys_of(page.view);
    screen.page = std::move(page);
    return screen;
}

Screen nothing_on_return() {
    Screen screen = on_return();
    auto& page = std::get<ReturnPage>(screen.page);
    page.view.groups.clear();
    page.view.events.clear();
    page.view.is_empty = true;
    page.fields.front().text = "next spring";
    page.fields.front().problem =
        base::trouble(base::Trouble::date_malformed, {base::text_arg("next spring")});
    return screen;
}

Screen storage_form() {
    return form_of(
        Word::form_storage,
        Word::form_storage_intro,
        {make_field("date", Word::field_from, FieldKind::date, "2026-05-03", Need::needed),
         make_field("source", Word::field_storage_source, FieldKind::text, {}, Need::optional)});
}

Screen adjust_form() {
    FieldView hours = with_hint(
        make_field("hours", Word::field_added_hours, FieldKind::hours, "99999", Need::needed),
        Word::hint_adjust);
    hours.problem = base::trouble(base::Trouble::form_adjust_absurd,
                                  {base::whole_arg(4392), base::day_arg(day_of(day_3_may_2026))});
    return form_of(
        Word::form_adjust,
        Word::form_adjust_intro,
        {make_choice("reason",
                     Word::field_reason,
                     {Word::adjust_dead, Word::adjust_rolled_over, Word::adjust_other},
                     1),
         std::move(hours),
         make_field("source", Word::field_adjust_source, FieldKind::text, {}, Need::needed)});
}

}  // namespace twoclocks::canvas::samples
