// One task of a plan: what it is, when, and where that lies on the time line.
#pragma once

#include "wasm/widgets/list.hpp"
#include "wasm/widgets/ui.hpp"

#include "engine/views/plan.hpp"

namespace twoclocks::canvas {

/// What all rows of a time line share: where today and the limit lie on it.
struct TimeLine {
    std::int32_t today_permille{0};  // -1: before it
    std::int32_t limit_permille{0};
};

[[nodiscard]] float plan_row_height(Ui& ui, const views::PlanTaskRow& row, float width);
/// True when tapped.
[[nodiscard]] bool plan_row(Ui& ui,
                            const views::PlanTaskRow& row,
                            const TimeLine& line,
                            const ListItem& item,
                            const Rect& box);

}  // namespace twoclocks::canvas
