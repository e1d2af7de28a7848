// The box of a field: its frame, its node, and what lies in it. Shared by the widgets of fields.
#pragma once

#include "wasm/screen.hpp"
#include "wasm/widgets/ui.hpp"

#include <string>

namespace twoclocks::canvas {

/// Height of a box with one line in it.
inline constexpr float field_height = target::primary;

[[nodiscard]] std::string label_of(Ui& ui, const FieldView& field);

void field_frame(Ui& ui, const std::string& id, const Rect& box, bool wrong);

/// Speaks a field that is typed into, and leaves word where it lies. True when tapped.
[[nodiscard]] bool field_node(Ui& ui,
                              const FieldView& field,
                              const Rect& box,
                              const std::string& value);

/// One line in a box, cut with an ellipsis when it is too long: no figure that can be taken is.
void line_in_box(Ui& ui, Type type, Tone tone, const Rect& inner, const std::string& text);

/// The inside of a box.
[[nodiscard]] Rect inner_of(const Rect& box);

}  // namespace twoclocks::canvas
