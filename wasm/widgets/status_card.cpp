#include "wasm/widgets/status_card.hpp"

#include "wasm/widgets/due_card.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr std::uint32_t cell_count = 4;

/// One figure of a clock and what it is called.
struct Cell {
    std::string label;
    std::string text;
    Tone tone{Tone::ink};
    bool label_links{false};
};

using Cells = std::array<Cell, cell_count>;

[[nodiscard]] Cells cells_of(Ui& ui, const views::StatusClock& clock) {
    const Tone own = tone_of(clock.edge);
    return {Cell{ui.say(Word::label_limit), ui.say(clock.limit), Tone::ink, false},
            Cell{ui.say(Word::label_used), ui.say(clock.used), Tone::ink, false},
            Cell{ui.say(Word::label_left), ui.say(clock.left), own, true},
            Cell{ui.say(Word::label_next), ui.say(clock.next), own, true}};
}

/// How many cells share a line: all, or half where they would not fit.
[[nodiscard]] std::uint32_t a_line(Ui& ui, const Cells& cells) {
    float widest = 0;
    for (const Cell& cell : cells)
        widest = std::max(widest, ui.pen().width(Type::body_strong, cell.text));
    const bool all = (widest + space::base) * static_cast<float>(cell_count) <= ui.width();
    return all ? cell_count : cell_count / 2;
}

/// One clock: its figures in columns, all of it answering "why?".
[[nodiscard]] bool clock_cells(Ui& ui,
                               const std::string& id,
                               const std::string& about,
                               const views::StatusClock& clock) {
    Pen& pen = ui.pen();
    const Cells cells = cells_of(ui, clock);
    const std::uint32_t columns = a_line(ui, cells);
    const float each = ui.width() / static_cast<float>(columns);
    const float line = pen.line(Type::small) + pen.line(Type::body_strong);
    const float lines = static_cast<float>(cell_count / columns);
    const float height = lines * line + (lines - 1) * space::small + 2 * space::small;
    const Rect box = ui.take(std::max(target::least, height));
    ui.press_mark(id, box, shape::tight_radius);
    pen.line({box.left, box.top}, {box.right, box.top}, Tone::line, shape::stroke);
    std::string spoken = about;
    for (std::uint32_t at = 0; at < cell_count; ++at) {
        const Cell& cell = cells[at];
        const float x = box.left + each * static_cast<float>(at % columns);
        const float y =
            box.top + space::small + (line + space::small) * static_cast<float>(at / columns);
        if (cell.label_links)
            figure_label(pen, Type::small, {x, y}, cell.label, clock.questioned);
        else
            pen.text(Type::small, Tone::soft, {x, y}, cell.label);
        pen.text(Type::body_strong, cell.tone, {x, y + pen.line(Type::small)}, cell.text);
        const std::string one =
            ui.say({Word::spoken_figure, {base::text_arg(cell.label), base::text_arg(cell.text)}});
        spoken = ui.say({Word::spoken_pair, {base::text_arg(spoken), base::text_arg(one)}});
    }
    return ui.active(Role::link, id, in_words(ui, {spoken, clock.questioned}), box);
}

}  // namespace

std::int32_t status_card(Ui& ui, std::int32_t index, const views::StatusRow& row) {
    std::int32_t tapped = -1;
    card(ui, [&] {
        name_and_state(ui, {Type::answer, 3, row.name, row.state, ui.say(row.state_word)});
        paragraph(ui, Type::small, Tone::soft, ui.say(row.source));
        paragraph(ui, Type::small, Tone::soft, ui.say(row.last));
        if (row.method.word != Word::blank)
            paragraph(ui, Type::small, Tone::soft, ui.say(row.method));
        for (const base::Message& note : row.notes)
            paragraph(ui, Type::small, Tone::ink, ui.say(note));
        ui.gap(space::small);
        for (std::uint32_t at = 0; at < row.clocks.size(); ++at) {
            const std::string id = "status-" + std::to_string(index) + "-" + std::to_string(at);
            if (clock_cells(ui, id, row.name, row.clocks[at]))
                tapped = static_cast<std::int32_t>(at);
        }
    });
    return tapped;
}

void status_part_card(Ui& ui, const views::StatusPart& part) {
    card(ui, [&] {
        paragraph(ui, Type::body_strong, Tone::ink, part.name);
        paragraph(ui, Type::small, Tone::soft, ui.say(part.plate));
        paragraph(ui, Type::body, Tone::ink, in_words(ui, said(ui, part.since_new)));
        paragraph(ui, Type::body, Tone::ink, in_words(ui, said(ui, part.since_overhaul)));
        const Tone tone = part.papers_missing ? Tone::ink : Tone::soft;
        paragraph(ui, Type::small, tone, ui.say(part.papers));
    });
}

}  // namespace twoclocks::canvas
