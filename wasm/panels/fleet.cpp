#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/fleet_card.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/life_box.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

Answer empty_fleet(Ui& ui, const Rect& area) {
    Answer answer;
    page_body(ui, area, {"fleet"}, [&] {
        two_clocks_mark(ui);
        ui.gap(space::wide);
        heading(ui, 2, ui.say(Word::fleet_empty_title));
        ui.gap(space::small);
        paragraph(ui, Type::body, Tone::soft, ui.say(Word::fleet_empty_text));
        ui.gap(space::wide);
        if (primary_button(ui, "add-aircraft", ui.say(Word::button_add_aircraft))) {
            answer = intent::OpenForm{FormKind::new_aircraft, {}};
        }
        ui.gap(space::middle);
        if (quiet_button(ui, "look-invented", ui.say(Word::button_look_invented))) {
            answer = intent::LoadDemo{};
        }
        caution_line(ui);
    });
    return answer;
}

void cards(Ui& ui, const views::FleetView& view, ListPane pane, Answer& answer) {
    const auto at = [&](std::int32_t index) -> const views::AircraftCard& {
        return view.cards[static_cast<std::uint32_t>(index)];
    };
    const std::int32_t across = page::columns_in(ui.width());
    const std::int32_t shown =
        place_in(view.cards, [&](const auto& card) { return card.id == pane.chosen; });
    windowed_list(
        ui,
        {"fleet",
         ui.say(Word::fleet_list),
         static_cast<std::int32_t>(view.cards.size()),
         across,
         space::middle,
         shown},
        {[&](std::int32_t index, float width) { return fleet_card_height(ui, at(index), width); },
         [&](const ListItem& item, const Rect& box) {
             if (fleet_card(ui, at(item.index), item, box)) {
                 answer = intent::OpenAircraft{at(item.index).id};
             }
         }});
}

}  // namespace

Answer fleet_panel(Ui& ui, const Rect& area, const views::FleetView& view, ListPane pane) {
    if (view.cards.empty()) return empty_fleet(ui, area);
    Answer answer;
    page_body(
        ui,
        area,
        // The page beside has its own way to log a reading.
        {"fleet", pane.beside ? 0 : target::primary},
        [&] {
            cards(ui, view, pane, answer);
            if (view.has_demo) {
                ui.gap(space::middle);
                paragraph(ui, Type::small_strong, Tone::ink, ui.say(Word::fleet_invented_note));
            }
            if (view.reminder.word != Word::blank) {
                ui.gap(space::middle);
                caution_note(ui, view.reminder);
                ui.gap(space::small);
                if (quiet_button(ui, "export", ui.say(Word::button_export)))
                    answer = intent::ExportJournal{};
            }
            ui.gap(space::base);
            const std::int32_t pressed =
                button_row(ui,
                           {{"add-aircraft", ui.say(Word::button_add_aircraft)},
                            {"stagger", ui.say(Word::stagger_title)}});
            if (pressed == 0) answer = intent::OpenForm{FormKind::new_aircraft, {}};
            if (pressed == 1) answer = intent::OpenStagger{};
            if (pane.beside) return;
            if (Answer told = hand_over_buttons(ui, ui.say(Word::tab_fleet)))
                answer = std::move(told);
            caution_line(ui);
        },
        [&] {
            if (primary_button(ui, "log-reading", ui.say(Word::button_log_reading))) {
                answer = intent::OpenLog{};
            }
        });
    return answer;
}

}  // namespace twoclocks::canvas
