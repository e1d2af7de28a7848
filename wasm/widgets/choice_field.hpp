// Choices: a few stand open, side by side or below each other; many are looked through with a
// search.
#pragma once

#include "wasm/screen.hpp"
#include "wasm/widgets/ui.hpp"

#include <optional>
#include <string>

namespace twoclocks::canvas {

/// What a search box was told.
struct SearchPress {
    bool edit{false};   // its text is to be edited
    bool clear{false};  // its text is to go
};

/// A box that filters a list as one types, with a button that clears it. For any page with a list.
[[nodiscard]] SearchPress search_box(Ui& ui, const FieldView& field);

/// A choice of few, or the box that opens the list of many.
[[nodiscard]] std::optional<Intent> choice_field(Ui& ui, const FieldView& field);

/// A search whose matches stand below it.
[[nodiscard]] std::optional<Intent> search_field(Ui& ui, const FieldView& field);

/// An amount, and the currency beside it, which opens a list of all.
[[nodiscard]] std::optional<Intent> money_field(Ui& ui, const FieldView& field);

/// The list that a field has open, its search on top; nothing while it is closed.
[[nodiscard]] std::optional<Intent> open_list(Ui& ui, const FieldView& field);

}  // namespace twoclocks::canvas
