#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {

using base::Word;

namespace {

[[nodiscard]] Answer more_button(Ui& ui, bool is_open) {
    const Word word = is_open ? Word::button_fewer_settings : Word::button_more_settings;
    const std::int32_t pressed = button_row(ui, {{"more-settings", ui.say(word)}});
    ui.gap(space::wide);
    if (pressed < 0) return std::nullopt;
    return intent::ToggleMore{};
}

/// The fields in their groups, and before those that few need what opens and closes them.
[[nodiscard]] Answer fields_of(Ui& ui, const FormPage& view) {
    Answer answer;
    std::string group;
    const auto count = static_cast<std::int32_t>(view.fields.size());
    for (std::int32_t at = 0; at < count; ++at) {
        if (at == view.more_at) {
            if (const Answer press = more_button(ui, view.asks_more)) answer = press;
        }
        const FieldView& field = view.fields[static_cast<std::size_t>(at)];
        const std::string its_group = ui.say(field.group);
        if (!its_group.empty() && its_group != group) {
            ui.gap(space::small);
            heading(ui, 2, its_group);
            ui.gap(space::small);
        }
        group = its_group;
        if (const Answer press = form_field(ui, field)) answer = press;
        ui.gap(space::wide);
    }
    if (view.more_at == count) {
        if (const Answer press = more_button(ui, view.asks_more)) answer = press;
    }
    return answer;
}

}  // namespace

Answer form_panel(Ui& ui, const Rect& area, const FormPage& view) {
    Answer answer;
    page_body(ui, area, {"form"}, [&] {
        const std::string about = ui.say(view.about);
        if (!about.empty()) {
            paragraph(ui, Type::answer, Tone::ink, about);
            ui.gap(space::small);
        }
        const std::string intro = ui.say(view.intro);
        if (!intro.empty()) {
            paragraph(ui, Type::body, Tone::soft, intro);
            ui.gap(space::base);
        }
        const Answer discarded = draft_note(ui, view.draft_note);
        if (discarded) answer = discarded;
        const Answer told = fields_of(ui, view);
        if (told) answer = told;
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
