// One record of the history as a row.
#pragma once

#include "wasm/widgets/list.hpp"
#include "wasm/widgets/ui.hpp"

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

[[nodiscard]] float history_row_height(Ui& ui, const views::HistoryRow& row, float width);
/// True when tapped.
[[nodiscard]] bool history_row(Ui& ui,
                               const views::HistoryRow& row,
                               const ListItem& item,
                               const Rect& box);
/// What happened to a record since, in words; empty when nothing did.
[[nodiscard]] std::string record_flags(Ui& ui, const views::HistoryRow& row);

}  // namespace twoclocks::canvas
