// Long lists: only rows in sight are drawn, and past 200 rows only those near sight are spoken,
// each with its place in the whole.
#pragma once

#include "wasm/widgets/ui.hpp"

#include <algorithm>
#include <cstdint>
#include <string>

#include "engine/base/function_ref.hpp"

namespace twoclocks::canvas {

inline constexpr std::int32_t spoken_rows_most = 200;

struct ListSpec {
    std::string key;   // what is measured is kept under this name
    std::string name;  // spoken
    std::int32_t items{0};
    std::int32_t across{1};  // items side by side
    float between{0};
    std::int32_t chosen{-1};  // the item shown in the pane beside, -1 for none
};

struct ListItem {
    std::int32_t index{0};
    std::int32_t set_size{0};  // 0 in a short list
    std::int32_t position{0};
    bool chosen{false};
};

/// Border of an item, and its node with what it says.
[[nodiscard]] bool list_item(
    Ui& ui, const ListItem& item, std::string id, std::string name, const Rect& box);
/// What stands under an item: a card, and the mark of a finger.
void list_item_ground(Ui& ui, const ListItem& item, std::string_view id, const Rect& box);

/// Made where it is passed: it refers to what draws.
struct ListRows {
    base::FunctionRef<float(std::int32_t index, float width)> height;
    /// Draws one item into its box and adds its nodes.
    base::FunctionRef<void(const ListItem& item, const Rect& box)> draw;
};

void windowed_list(Ui& ui, const ListSpec& spec, const ListRows& rows);

/// Where in a list something stands, -1 when it does not.
template <class Rows, class Is>
[[nodiscard]] std::int32_t place_in(const Rows& rows, Is is) {
    const auto found = std::find_if(rows.begin(), rows.end(), is);
    return found == rows.end() ? -1 : static_cast<std::int32_t>(found - rows.begin());
}

}  // namespace twoclocks::canvas
