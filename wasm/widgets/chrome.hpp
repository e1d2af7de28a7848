// What frames every page: the header, the bar of tabs (a rail on a wide page), notices, sheets.
#pragma once

#include "wasm/screen.hpp"
#include "wasm/widgets/ui.hpp"

#include <optional>
#include <string>
#include <vector>

#include "engine/base/function_ref.hpp"

namespace twoclocks::canvas {

struct HeaderSpec {
    std::string title;
    std::string status;
    bool can_go_back{false};
    std::int32_t level{1};  // of its heading
};

/// Title with a way back; fills the top of the column. True when Back was pressed.
[[nodiscard]] bool page_header(Ui& ui, const HeaderSpec& header);

/// The tabs, along the bottom or, on a wide page, down the left. Gives the tab that was pressed.
[[nodiscard]] std::optional<Tab> tab_bar(Ui& ui, const Rect& box, Tab current);
[[nodiscard]] std::optional<Tab> tab_rail(Ui& ui, const Rect& box, Tab current);

/// Notices, stacked upwards from the bottom of `area`. Returns the height they take.
struct NoticePress {
    float height{0};
    std::int32_t action{-1};  // its action was pressed
    bool dismissed{false};
};

[[nodiscard]] NoticePress notice_stack(Ui& ui,
                                       const std::vector<Notice>& notices,
                                       const Rect& area);

/// A sheet from below over the whole page; `draw` fills it. True when Close was pressed.
[[nodiscard]] bool sheet(Ui& ui, const std::string& title, base::FunctionRef<void()> draw);

/// An arrow back, drawn in a finger's size.
void back_arrow(Pen& pen, const Rect& box, Tone tone);

}  // namespace twoclocks::canvas
