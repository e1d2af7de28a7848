// One part of a list: what it is, where it sits, its hours in columns, and what is unknown of it.
#pragma once

#include "wasm/widgets/list.hpp"
#include "wasm/widgets/ui.hpp"

#include "engine/views/part_list_view.hpp"

namespace twoclocks::canvas {

[[nodiscard]] float part_row_height(Ui& ui, const views::PartRow& row, float width);
/// True when tapped.
[[nodiscard]] bool part_row(Ui& ui,
                            const views::PartRow& row,
                            const ListItem& item,
                            const Rect& box);

}  // namespace twoclocks::canvas
