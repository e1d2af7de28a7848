// Things to press. All are at least a finger high and return true once when they were pressed.
#pragma once

#include "wasm/widgets/list.hpp"
#include "wasm/widgets/ui.hpp"

#include <string>
#include <vector>

namespace twoclocks::canvas {

/// The one thing a page is for: inverted, 56 px.
[[nodiscard]] bool primary_button(Ui& ui,
                                  const std::string& id,
                                  const std::string& label,
                                  bool enabled = true);

/// A button; of several that say the same, what each is for is spoken after its label.
struct ButtonSpec {
    std::string id;
    std::string label;
    bool enabled{true};
    std::string about{};  // empty where the label says it all
};

/// Everything else: outlined, 48 px, as wide as the column.
[[nodiscard]] bool quiet_button(Ui& ui, const ButtonSpec& button);
[[nodiscard]] bool quiet_button(Ui& ui,
                                const std::string& id,
                                const std::string& label,
                                bool enabled = true);

/// Quiet buttons that share lines as they fit. Returns the index pressed, -1 for none.
[[nodiscard]] std::int32_t button_row(Ui& ui, const std::vector<ButtonSpec>& buttons);

/// One of several, each a row with a mark. Returns the index chosen, -1 for none.
struct ChoiceSpec {
    std::string id;
    std::string label;
    bool chosen{false};
    std::string about{};  // spoken after the label, where several are labelled the same
};

/// What is spoken of a choice.
[[nodiscard]] std::string spoken(Ui& ui, const ChoiceSpec& choice);

[[nodiscard]] std::int32_t choice_list(Ui& ui, const std::vector<ChoiceSpec>& choices);

/// A row that opens something: title, its figure at the right, details below, an arrow.
struct RowSpec {
    std::string id;
    std::string title;
    std::vector<std::string> details;  // a line each
    ListItem item;
    std::string figure{};  // empty: none
};

[[nodiscard]] float open_row_height(Ui& ui, const RowSpec& row, float width);
/// True when tapped.
[[nodiscard]] bool open_row(Ui& ui, const RowSpec& row, const Rect& box);

}  // namespace twoclocks::canvas
