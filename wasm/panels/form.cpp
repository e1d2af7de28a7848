#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {

Answer form_panel(Ui& ui, const Rect& area, const FormPage& view) {
    Answer answer;
    page_body(ui, area, {"form"}, [&] {
        const std::string intro = ui.say(view.intro);
        if (!intro.empty()) {
            paragraph(ui, Type::body, Tone::soft, intro);
            ui.gap(space::base);
        }
        for (const FieldView& field : view.fields) {
            const FieldPress press = form_field(ui, field);
            if (press.edit) answer = intent::EditField{field.id};
            if (press.option >= 0) answer = intent::ChooseOption{field.id, press.option};
            ui.gap(space::wide);
        }
        for (const base::Problem& problem : view.problems) {
            problem_note(ui, problem);
            ui.gap(space::middle);
        }
        if (primary_button(ui, "submit", ui.say(view.submit))) answer = intent::SubmitForm{};
        caution_line(ui);
    });
    return answer;
}

}  // namespace twoclocks::canvas
