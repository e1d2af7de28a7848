#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/pad.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>

namespace twoclocks::canvas {
namespace {

using base::Word;

RowSpec row_of(Ui& ui, const views::LogView& view, const ListItem& item) {
    return {"log-" + base::print_id(view.aircraft),
            view.registration,
            {ui.say(view.meter_name), ui.say(view.last)},
            item};
}

/// Without an aircraft there is nothing to log for: the way to add one.
void no_choice(Ui& ui, Answer& answer) {
    paragraph(ui, Type::body, Tone::soft, ui.say(Word::fleet_empty_title));
    ui.gap(space::base);
    if (primary_button(ui, "add-aircraft", ui.say(Word::button_add_aircraft))) {
        answer = intent::OpenForm{FormKind::new_aircraft, {}};
    }
}

void choices_list(Ui& ui,
                  const std::vector<views::LogView>& choices,
                  ListPane pane,
                  Answer& answer) {
    const auto at = [&](std::int32_t index) -> const views::LogView& {
        return choices[static_cast<std::uint32_t>(index)];
    };
    const auto height = [&](std::int32_t index, float width) {
        return open_row_height(ui, row_of(ui, at(index), {}), width);
    };
    const auto draw = [&](const ListItem& item, const Rect& box) {
        const bool pressed = open_row(ui, row_of(ui, at(item.index), item), box);
        if (pressed) answer = intent::OpenPad{at(item.index).aircraft};
    };
    const auto count = static_cast<std::int32_t>(choices.size());
    const std::int32_t shown =
        place_in(choices, [&](const auto& view) { return view.aircraft == pane.chosen; });
    if (!pane.beside) {
        paragraph(ui, Type::body, Tone::soft, ui.say(Word::log_choose));
        ui.gap(space::middle);
    }
    const std::string name = ui.say(Word::log_choose);
    windowed_list(ui, {"log", name, count, 1, target::apart, shown}, {height, draw});
}

Answer choose(Ui& ui, const Rect& area, const std::vector<views::LogView>& choices, ListPane pane) {
    Answer answer;
    page_body(ui, area, {"log"}, [&] {
        if (choices.empty())
            no_choice(ui, answer);
        else
            choices_list(ui, choices, pane, answer);
        if (!pane.beside) caution_line(ui);
    });
    return answer;
}

/// What is being typed and what it means.
void reading(Ui& ui, const LogPage::Pad& pad, Answer& answer) {
    const Answer discarded = draft_note(ui, pad.draft_note);
    if (discarded) answer = discarded;
    paragraph(ui, Type::body, Tone::soft, ui.say(pad.view.meter_name));
    const char cleared = typed_figure(ui,
                                      {ui.say(Word::log_typed),
                                       pad.digits,
                                       ui.say(Word::log_unit),
                                       pad.can_clear,
                                       pad.can_undo_clear});
    if (cleared != 0) answer = intent::PadKey{cleared};
    if (pad.problem) {
        problem_note(ui, *pad.problem);
        ui.gap(space::small);
    }
    if (pad.offer_meter_change) {
        if (quiet_button(ui, "other-meter", ui.say(Word::button_other_meter))) {
            answer = intent::OpenForm{FormKind::meter_change, pad.view.aircraft};
        }
        ui.gap(target::apart);
        if (quiet_button(ui, "other-hours", ui.say(Word::button_other_hours))) {
            answer = intent::OpenForm{FormKind::meter_adjusted, pad.view.aircraft};
        }
        ui.gap(target::apart);
    }
    paragraph(ui, Type::body_strong, Tone::ink, ui.say(pad.difference));
    paragraph(ui, Type::body, Tone::soft, ui.say(pad.view.last));
    ui.gap(space::small);
    FieldView date;
    date.id = "date";
    date.label = {Word::label_date, {}};
    date.kind = FieldKind::date;
    date.text = pad.date_text;
    date.quick = pad.days;
    const Answer dated = date_row(ui, date, ui.say(pad.date));
    if (dated) answer = dated;
}

void keys(Ui& ui, const LogPage::Pad& pad, Answer& answer) {
    const char key = number_pad(ui);
    if (key != 0) answer = intent::PadKey{key};
    ui.gap(space::middle);
    if (primary_button(ui, "save-reading", ui.say(Word::button_save_reading), pad.can_save)) {
        answer = intent::SaveReading{};
    }
}

Answer type_in(Ui& ui, const Rect& area, const LogPage::Pad& pad) {
    Answer answer;
    const auto left = [&] { reading(ui, pad, answer); };
    const auto right = [&] { keys(ui, pad, answer); };
    if (std::min(area.width() - 2 * space::base, ui.page_width()) >= page::two_columns_from) {
        page_body(ui, area, {"pad"}, [&] {
            ui.side_by_side(page::half, space::block, left, right);
            caution_line(ui);
        });
        return answer;
    }
    const auto above = [&] {
        left();
        caution_line(ui);
    };
    page_body(ui, area, {"pad", pad_height() + space::middle + target::primary}, above, right);
    return answer;
}

}  // namespace

Answer log_panel(Ui& ui, const Rect& area, const LogPage& view, ListPane pane) {
    return view.pad ? type_in(ui, area, *view.pad) : choose(ui, area, view.choices, pane);
}

}  // namespace twoclocks::canvas
