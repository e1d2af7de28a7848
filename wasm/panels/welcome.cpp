#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/life_box.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

void caution(Ui& ui) {
    card(ui, [&] {
        paragraph(ui, Type::body_strong, Tone::ink, ui.say(Word::caution_full_1));
        ui.gap(space::small);
        paragraph(ui, Type::body, Tone::ink, ui.say(Word::caution_full_2));
        ui.gap(space::small);
        paragraph(ui, Type::body, Tone::ink, ui.say(Word::caution_full_3));
    });
}

void words(Ui& ui) {
    heading(ui, 1, ui.say(Word::product_name));
    ui.gap(space::small);
    two_clocks_mark(ui);
    ui.gap(space::base);
    paragraph(ui, Type::answer, Tone::ink, ui.say(Word::welcome_heading));
    ui.gap(space::small);
    paragraph(ui, Type::body, Tone::ink, ui.say(Word::welcome_text));
    ui.gap(space::small);
    paragraph(ui, Type::body, Tone::soft, ui.say(Word::welcome_keeps));
    ui.gap(space::wide);
    caution(ui);
}

}  // namespace

Answer welcome_panel(Ui& ui, const Rect& area) {
    Answer answer;
    page_body(
        ui,
        area,
        {"welcome", target::primary},
        [&] {
            ui.gap(space::wide);
            words(ui);
        },
        [&] {
            if (primary_button(ui, "accept-caution", ui.say(Word::button_accept_caution))) {
                answer = intent::AcceptCaution{};
            }
        });
    return answer;
}

}  // namespace twoclocks::canvas
