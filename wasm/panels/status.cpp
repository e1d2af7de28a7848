#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/due_card.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/status_card.hpp"
#include "wasm/widgets/text.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

void identity(Ui& ui, const views::StatusView& view) {
    const std::string words =
        ui.say({Word::aircraft_is, {base::text_arg(view.type), base::text_arg(view.serial)}});
    state_line(ui, view.state, ui.say(view.state_word), words);
    ui.gap(space::middle);
    paragraph(ui, Type::body_strong, Tone::ink, ui.say(view.as_of));
    paragraph(ui, Type::body, Tone::soft, ui.say(Word::status_intro));
    ui.gap(space::middle);
    pair_rows(ui,
              {{ui.say(Word::label_total_time), said(ui, view.total)},
               {ui.say(Word::label_landings), said(ui, view.landings)},
               {ui.say(Word::label_starts), said(ui, view.starts)}});
    ui.gap(space::wide);
}

void titled(Ui& ui, const base::Message& title) {
    heading(ui, 2, ui.say(title));
    ui.gap(space::small);
}

/// Every item with its clocks; the "why?" that was asked for, by its place among all, or -1.
[[nodiscard]] std::int32_t groups(Ui& ui, const views::StatusView& view) {
    std::int32_t asked = -1;
    std::int32_t index = 0;
    std::int32_t why = 0;
    for (const views::StatusGroup& group : view.groups) {
        titled(ui, group.title);
        for (const views::StatusRow& row : group.rows) {
            const std::int32_t clock = status_card(ui, index, row);
            if (clock >= 0) asked = why + clock;
            why += static_cast<std::int32_t>(row.clocks.size());
            ++index;
            ui.gap(space::middle);
        }
        ui.gap(space::small);
    }
    return asked;
}

void parts_and_missing(Ui& ui, const views::StatusView& view) {
    if (!view.parts.empty()) titled(ui, {Word::status_parts, {}});
    for (const views::StatusPart& part : view.parts) {
        status_part_card(ui, part);
        ui.gap(space::middle);
    }
    if (view.missing.empty()) return;
    titled(ui, {Word::status_missing, {}});
    for (const base::Message& missing : view.missing) {
        paragraph(ui, Type::body, Tone::ink, ui.say(missing));
        ui.gap(space::small);
    }
}

}  // namespace

Answer status_panel(Ui& ui, const Rect& area, const views::StatusView& view) {
    Answer answer;
    page_body(ui, area, {"status-" + view.registration}, [&] {
        identity(ui, view);
        const std::int32_t asked = groups(ui, view);
        if (asked >= 0) answer = intent::OpenWhy{asked};
        parts_and_missing(ui, view);
        if (Answer told = hand_over_buttons(ui, view.registration)) answer = std::move(told);
        caution_line(ui);
    });
    return answer;
}

}  // namespace twoclocks::canvas
