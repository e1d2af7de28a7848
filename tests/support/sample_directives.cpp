// Screens of directives: cards, and the forms as the app makes them. Every figure is invented.
#include "tests/support/sample_screens.hpp"
#include "wasm/app/form.hpp"

#include <string_view>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/facts/journal.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Message;
using base::Word;

Screen form_screen(FormKind kind, std::string_view problem) {
    const facts::Journal nothing;
    Form made = make_form(kind, id_of(20), {nothing, nullptr, day_of(day_3_may_2026), {}});
    FieldView* field = find_field(made, problem);
    if (field != nullptr) field->problem = base::trouble(base::Trouble::form_directive_empty);
    made.about = {Word::directive_full,
                  {base::text_arg("2026-05-51 (emergency)"),
                   base::text_arg("R1 of 3 May 2026"),
                   base::text_arg("an authority with a long name")}};
    Screen screen = form();
    FormPage shown = page_of_form(made);
    shown.can_clear = true;
    screen.page = std::move(shown);
    return screen;
}

views::DirectiveView directive_of(Message standing) {
    views::DirectiveView view;
    view.name = {Word::directive_full,
                 {base::text_arg("2026-05-51 (emergency)"),
                  base::text_arg("R1 of 3 May 2026"),
                  base::text_arg("an authority with a long name")}};
    view.standing = std::move(standing);
    view.last = {Word::status_no_work, {}};
    view.method = {Word::status_method,
                   {base::text_arg("Paragraph (b)(2), dye penetrant"),
                    base::text_arg("work order 1234567890")}};
    view.next = {{Word::directive_next_hours, {base::hours_left_arg(base::tenths(123'456))}},
                 {Word::directive_next_day, {base::day_arg(day_of(day_3_may_2026 + 400))}}};
    view.means = {Word::directive_means,
                  {base::text_arg("M 3/2026"), base::text_arg("an authority with a long name")}};
    view.can_decide = true;
    return view;
}

}  // namespace

Screen directives() {
    Screen screen = checks();
    auto& page = std::get<ChecksPage>(screen.page);
    std::int32_t place = 0;
    for (views::ChecksGroup& group : page.view.groups) {
        for (views::CheckRow& row : group.rows) {
            const bool first = place++ == 0;
            row.due.directive = directive_of(
                first ? Message{Word::standing_superseded, {base::text_arg("2026-05-52")}}
                      : Message{Word::standing_before_flight, {}});
        }
    }
    return screen;
}

Screen directive_aircraft() {
    Screen screen = aircraft();
    auto& view = std::get<views::AircraftView>(screen.page);
    for (views::DueRow& row : view.due)
        row.directive = directive_of({Word::standing_unknown, {}});
    return screen;
}

Screen directive_form() {
    return form_screen(FormKind::directive, "hours");
}

Screen decide_form() {
    return form_screen(FormKind::decide, {});
}

Screen means_form() {
    return form_screen(FormKind::means, {});
}

}  // namespace twoclocks::canvas::samples
