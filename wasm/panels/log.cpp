#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/pad.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

std::string detail_of(Ui& ui, const views::LogView& view) {
    return ui.say({Word::log_meter,
                   {base::text_arg(ui.say(view.meter_name)), base::text_arg(ui.say(view.last))}});
}

Answer choose(Ui& ui, const Rect& area, const std::vector<views::LogView>& choices) {
    Answer answer;
    const auto at = [&](std::int32_t index) -> const views::LogView& {
        return choices[static_cast<std::uint32_t>(index)];
    };
    page_body(ui, area, {"log"}, [&] {
        if (choices.empty()) {
            paragraph(ui, Type::body, Tone::soft, ui.say(Word::fleet_empty_title));
            ui.gap(space::base);
            if (primary_button(ui, "add-aircraft", ui.say(Word::button_add_aircraft))) {
                answer = intent::OpenForm{FormKind::new_aircraft, {}};
            }
        } else {
            paragraph(ui, Type::body, Tone::soft, ui.say(Word::log_choose));
            ui.gap(space::middle);
        }
        windowed_list(ui,
                      {"log",
                       ui.say(Word::log_choose),
                       static_cast<std::int32_t>(choices.size()),
                       1,
                       target::apart},
                      {[&](std::int32_t index, float width) {
                           return open_row_height(
                               ui, at(index).registration, detail_of(ui, at(index)), width);
                       },
                       [&](const ListItem& item, const Rect& box) {
                           const views::LogView& view = at(item.index);
                           const RowSpec row{"log-" + base::print_id(view.aircraft),
                                             view.registration,
                                             detail_of(ui, view),
                                             item};
                           if (open_row(ui, row, box)) answer = intent::OpenPad{view.aircraft};
                       }});
        caution_line(ui);
    });
    return answer;
}

/// What is being typed and what it means.
void reading(Ui& ui, const LogPage::Pad& pad, Answer& answer) {
    paragraph(ui, Type::body, Tone::soft, ui.say(pad.view.meter_name));
    typed_figure(ui, ui.say(Word::log_typed), pad.digits, ui.say(Word::log_unit));
    if (pad.problem) {
        problem_note(ui, *pad.problem);
        ui.gap(space::small);
    }
    if (pad.offer_meter_change) {
        if (quiet_button(ui, "other-meter", ui.say(Word::button_other_meter))) {
            answer = intent::OpenForm{FormKind::meter_change, pad.view.aircraft};
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
    if (date_row(ui, date, ui.say(pad.date))) answer = intent::EditField{"date"};
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
    const float foot = pad_height() + space::middle + target::primary;
    if (area.width() - 2 * space::base >= page::two_columns_from) {
        page_body(ui, area, {"pad"}, [&] {
            ui.side_by_side(
                0.5F,
                space::block,
                [&] { reading(ui, pad, answer); },
                [&] { keys(ui, pad, answer); });
            caution_line(ui);
        });
        return answer;
    }
    page_body(
        ui,
        area,
        {"pad", foot},
        [&] {
            reading(ui, pad, answer);
            caution_line(ui);
        },
        [&] { keys(ui, pad, answer); });
    return answer;
}

}  // namespace

Answer log_panel(Ui& ui, const Rect& area, const LogPage& view) {
    return view.pad ? type_in(ui, area, *view.pad) : choose(ui, area, view.choices);
}

}  // namespace twoclocks::canvas
