#include "wasm/panels/panels.hpp"
#include "wasm/shortcuts.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/chrome.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/history_row.hpp"
#include "wasm/widgets/text.hpp"
#include "wasm/widgets/why_lines.hpp"

namespace twoclocks::canvas {

using base::Word;

namespace {

/// A record in full, and what can be done about it.
void record_body(Ui& ui, const RecordSheet& record, Answer& answer) {
    paragraph(ui, Type::body_strong, Tone::ink, record_flags(ui, record.row));
    paragraph(ui, Type::body, Tone::soft, ui.say(record.row.detail));
    for (const base::Message& line : record.lines) {
        ui.gap(space::small);
        paragraph(ui, Type::body, Tone::ink, ui.say(line));
    }
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
    if (pressed < 0) return;
    answer = intent::OpenForm{kinds[static_cast<std::uint32_t>(pressed)], record.row.fact};
}

}  // namespace

Answer why_sheet(Ui& ui, const views::Why& why) {
    Answer answer;
    const bool closed = sheet(ui, ui.say(why.title), [&] {
        const std::int32_t line = why_lines(ui, why);
        if (line >= 0) {
            answer = intent::OpenRecord{*why.lines[static_cast<std::uint32_t>(line)].fact};
        }
        caution_line(ui);
    });
    if (closed) answer = intent::CloseSheet{};
    return answer;
}

Answer keys_sheet(Ui& ui, const KeysSheet& keys) {
    Answer answer;
    const bool closed = sheet(ui, ui.say(Word::keys_title), [&] {
        std::vector<PairSpec> rows;
        for (const Shortcut& key : shortcuts())
            rows.push_back({ui.say(key.key), {ui.say(key.what), false}});
        pair_rows(ui, rows);
        ui.gap(space::base);
        const Word turn = keys.single_keys ? Word::keys_off : Word::keys_on;
        if (quiet_button(ui, "single-keys", ui.say(turn))) {
            answer = intent::SetSingleKeys{!keys.single_keys};
        }
    });
    if (closed) answer = intent::CloseSheet{};
    return answer;
}

Answer record_sheet(Ui& ui, const RecordSheet& record) {
    Answer answer;
    const bool closed =
        sheet(ui, ui.say(record.row.what), [&] { record_body(ui, record, answer); });
    if (closed) answer = intent::CloseSheet{};
    return answer;
}

Answer record_panel(Ui& ui, const Rect& area, const RecordSheet& record) {
    Answer answer;
    page_body(ui, area, {"record"}, [&] {
        record_body(ui, record, answer);
        caution_line(ui);
    });
    return answer;
}

Answer nothing_chosen_panel(Ui& ui, const Rect& area, const NothingChosenPage& page) {
    page_body(ui, area, {"nothing-chosen"}, [&] {
        paragraph(ui, Type::body, Tone::soft, ui.say(page.what));
        caution_line(ui);
    });
    return {};
}

}  // namespace twoclocks::canvas
