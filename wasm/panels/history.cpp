#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/history_row.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/text.hpp"

#include <utility>

namespace twoclocks::canvas {

Answer history_panel(Ui& ui, const Rect& area, const views::HistoryView& view, ListPane pane) {
    Answer answer;
    const auto at = [&](std::int32_t index) -> const views::HistoryRow& {
        return view.rows[static_cast<std::uint32_t>(index)];
    };
    const auto height = [&](std::int32_t index, float width) {
        return history_row_height(ui, at(index), width);
    };
    const auto draw = [&](const ListItem& item, const Rect& box) {
        const bool pressed = history_row(ui, at(item.index), item, box);
        if (pressed) answer = intent::OpenRecord{at(item.index).fact};
    };
    const auto count = static_cast<std::int32_t>(view.rows.size());
    const std::string name = ui.say(base::Word::history_list);
    const std::int32_t shown =
        place_in(view.rows, [&](const auto& row) { return row.fact == pane.chosen; });
    page_body(ui, area, {"history-" + view.registration}, [&] {
        if (view.rows.empty()) {
            ui.gap(space::base);
            paragraph(ui, Type::body, Tone::soft, ui.say(base::Word::history_empty));
        }
        windowed_list(ui, {"history", name, count, 1, target::apart, shown}, {height, draw});
        if (pane.beside) return;
        if (!view.rows.empty())
            if (Answer told = hand_over_buttons(ui, view.registration)) answer = std::move(told);
        caution_line(ui);
    });
    return answer;
}

}  // namespace twoclocks::canvas
