// One field of a form: label, what is in it, a hint, and a problem beside it.
#pragma once

#include "wasm/screen.hpp"
#include "wasm/widgets/ui.hpp"

#include <optional>

namespace twoclocks::canvas {

/// What a field was told.
struct FieldPress {
    bool edit{false};         // its text is to be edited
    std::int32_t option{-1};  // a choice was made
};

[[nodiscard]] FieldPress form_field(Ui& ui, const FieldView& field);

/// A box of text that is edited by a real input laid over it. True when tapped.
[[nodiscard]] bool text_box(Ui& ui, const FieldView& field, bool wrong);

/// A field in one line: its label, and what is in it as people say it. True when tapped.
[[nodiscard]] bool date_row(Ui& ui, const FieldView& field, const std::string& said);

/// What happened and what to do, with a mark of its own shape.
void problem_note(Ui& ui, const base::Problem& problem);

/// A caution: the same mark, one sentence.
void caution_note(Ui& ui, const base::Message& caution);

}  // namespace twoclocks::canvas
