#include "wasm/widgets/event_card.hpp"

#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {

using base::Word;

EventPress event_card(Ui& ui, std::int32_t index, const views::EventView& event) {
    EventPress press;
    card(ui, [&] {
        const std::string number = std::to_string(index);
        const std::string title = ui.say(event.title.text);
        press.why = answer_link(ui, "why-event-" + number, Type::answer, Tone::ink, {title, false});
        ui.gap(target::apart);
        paragraph(ui, Type::body_strong, Tone::ink, ui.say(event.look));
        ui.gap(space::small);
        for (const base::Message* line : {&event.total, &event.found, &event.source}) {
            if (line->word != Word::blank) paragraph(ui, Type::body, Tone::soft, ui.say(*line));
        }
        ui.gap(space::small);
        for (const base::Message& open : event.open)
            paragraph(ui, Type::body, Tone::ink, ui.say(open));
        if (event.disputed.word != Word::blank)
            paragraph(ui, Type::body, Tone::ink, ui.say(event.disputed));
        ui.gap(space::middle);
        press.sign =
            button_row(
                ui, {{"sign-event-" + number, ui.say(Word::button_sign_event), true, title}}) == 0;
    });
    return press;
}

}  // namespace twoclocks::canvas
