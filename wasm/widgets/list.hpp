// Long lists: only rows in sight are drawn, and past 200 rows only those near sight are spoken,
// each with its place in the whole.
#pragma once

#include "wasm/widgets/ui.hpp"

#include <functional>
#include <string>

namespace twoclocks::canvas {

inline constexpr std::int32_t spoken_rows_most = 200;

struct ListSpec {
    std::string key;   // what is measured is kept under this name
    std::string name;  // spoken
    std::int32_t items{0};
    std::int32_t across{1};  // items side by side
    float between{0};
};

struct ListItem {
    std::int32_t index{0};
    std::int32_t set_size{0};  // 0 in a short list
    std::int32_t position{0};
};

struct ListRows {
    std::function<float(std::int32_t index, float width)> height;
    /// Draws one item into its box and adds its nodes.
    std::function<void(const ListItem& item, const Rect& box)> draw;
};

void windowed_list(Ui& ui, const ListSpec& spec, const ListRows& rows);

}  // namespace twoclocks::canvas
