#include "wasm/panels/panels.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/chrome.hpp"
#include "wasm/widgets/history_row.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {

using base::Word;

namespace {

/// One line of an explanation; a line that rests on a record leads to it.
void why_line(Ui& ui, std::uint32_t index, const views::WhyLine& line, Answer& answer) {
    const std::string words = ui.say(line.text);
    ui.gap(target::apart);
    if (!line.fact) {
        paragraph(ui, Type::body, Tone::ink, words);
        return;
    }
    const std::string id = "why-line-" + std::to_string(index);
    if (line_link(ui, id, Type::body, Tone::ink, words)) answer = intent::OpenRecord{*line.fact};
}

}  // namespace

Answer why_sheet(Ui& ui, const views::Why& why) {
    Answer answer;
    const bool closed = sheet(ui, ui.say(why.title), [&] {
        paragraph(ui, Type::name, Tone::ink, ui.say(why.figure));
        for (std::uint32_t i = 0; i < why.lines.size(); ++i)
            why_line(ui, i, why.lines[i], answer);
        caution_line(ui);
    });
    if (closed) answer = intent::CloseSheet{};
    return answer;
}

Answer record_sheet(Ui& ui, const RecordSheet& record) {
    Answer answer;
    const bool closed = sheet(ui, ui.say(record.row.what), [&] {
        const std::string flags = record_flags(ui, record.row);
        paragraph(ui, Type::body_strong, Tone::ink, flags);
        paragraph(ui, Type::body, Tone::ink, ui.say(record.row.date));
        paragraph(ui, Type::body, Tone::ink, ui.say(record.row.detail));
        for (const base::Message& line : record.lines) {
            ui.gap(space::small);
            paragraph(ui, Type::body, Tone::ink, ui.say(line));
        }
        ui.gap(space::small);
        paragraph(ui, Type::body, Tone::soft, ui.say(record.row.told_by));
        ui.gap(space::base);
        std::vector<ButtonSpec> buttons;
        std::vector<FormKind> kinds;
        if (record.row.can_correct) {
            buttons.push_back({"correct", ui.say(Word::button_correct)});
            kinds.push_back(FormKind::correct);
        }
        if (record.row.can_withdraw) {
            buttons.push_back({"withdraw", ui.say(Word::button_withdraw)});
            kinds.push_back(FormKind::withdraw);
        }
        const std::int32_t pressed = button_row(ui, buttons);
        if (pressed >= 0) {
            answer = intent::OpenForm{kinds[static_cast<std::uint32_t>(pressed)], record.row.fact};
        }
    });
    if (closed) answer = intent::CloseSheet{};
    return answer;
}

}  // namespace twoclocks::canvas
