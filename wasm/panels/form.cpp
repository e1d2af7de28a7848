#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {

using base::Word;

Answer form_panel(Ui& ui, const Rect& area, const FormPage& view) {
    Answer answer;
    page_body(ui, area, {"form"}, [&] {
        const std::string intro = ui.say(view.intro);
        if (!intro.empty()) {
            paragraph(ui, Type::body, Tone::soft, intro);
            ui.gap(space::base);
        }
        const Answer discarded = draft_note(ui, view.draft_note);
        if (discarded) answer = discarded;
        for (const FieldView& field : view.fields) {
            const Answer press = form_field(ui, field);
            if (press) answer = press;
            ui.gap(space::wide);
        }
        for (const base::Problem& problem : view.problems) {
            problem_note(ui, problem);
            ui.gap(space::middle);
        }
        if (primary_button(ui, "submit", ui.say(view.submit))) answer = intent::SubmitForm{};
        if (view.can_clear) {
            ui.gap(target::apart);
            if (quiet_button(ui, "clear-form", ui.say(Word::button_clear_form)))
                answer = intent::ClearEntry{};
        }
        caution_line(ui);
    });
    return answer;
}

}  // namespace twoclocks::canvas
