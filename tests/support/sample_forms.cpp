// Forms about an item and its limit, as the app makes them, with invented figures.
#include "tests/support/sample_screens.hpp"
#include "wasm/app/form.hpp"

#include <string_view>

#include "engine/base/message_args.hpp"
#include "engine/facts/journal.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Word;

Form form_of(FormKind kind) {
    const facts::Journal nothing;
    return make_form(kind, id_of(20), {nothing, nullptr, day_of(day_3_may_2026), {}});
}

Screen screen_of_form(const Form& made) {
    Screen screen = form();
    FormPage shown = page_of_form(made);
    shown.can_clear = true;
    screen.page = std::move(shown);
    return screen;
}

void type(Form& form, std::string_view id, std::string_view text) {
    FieldView* field = find_field(form, id);
    if (field != nullptr) field->text = text;
}

/// An inspection with a tolerance that names no document.
Form inspection() {
    Form made = form_of(FormKind::new_item);
    type(made, "name", "Main gearbox oil and filter with chip detector");
    type(made, "hours", "100");
    type(made, "first_hours", "25:30");
    type(made, "tolerance_permille", "10.5");
    FieldView* source = find_field(made, "tolerance_source");
    if (source != nullptr) source->problem = base::trouble(base::Trouble::tolerance_without_source);
    return made;
}

}  // namespace

Screen new_item() {
    return screen_of_form(form_of(FormKind::new_item));
}

Screen item_settings() {
    Form made = inspection();
    made.asks_more = true;
    put_apart(made);
    return screen_of_form(made);
}

Screen item_settings_closed() {
    Form made = inspection();
    put_apart(made);
    return screen_of_form(made);
}

Screen permit() {
    Form made = form_of(FormKind::permit);
    made.about = {Word::form_about_item,
                  {base::text_arg("Main gearbox oil and filter with chip detector"),
                   base::text_arg("ISLE-5 (training, north field)")}};
    return screen_of_form(made);
}

}  // namespace twoclocks::canvas::samples
