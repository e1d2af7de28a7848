// One field of a form: label, what is in it, a hint, how it was understood, and a problem beside
// it.
#pragma once

#include "wasm/screen.hpp"
#include "wasm/widgets/ui.hpp"

#include <optional>

namespace twoclocks::canvas {

/// A field of any kind with everything that belongs to it. Gives what it was told, if anything.
[[nodiscard]] std::optional<Intent> form_field(Ui& ui, const FieldView& field);

/// A box of text that is edited by a real input laid over it. True when tapped.
[[nodiscard]] bool text_box(Ui& ui, const FieldView& field);

/// A day in one line: its label, the day as people say it, and the day that is one tap away.
[[nodiscard]] std::optional<Intent> date_row(Ui& ui,
                                             const FieldView& field,
                                             const std::string& said);

/// What happened and what to do, with a mark of its own shape. `field`: the field it stands beside.
void problem_note(Ui& ui, const base::Problem& problem, const std::string& field = {});

/// A caution: the same mark, one sentence.
void caution_note(Ui& ui, const base::Message& caution);

/// What is back after a reload, and the way to discard it.
[[nodiscard]] std::optional<Intent> draft_note(Ui& ui, const base::Message& note);

}  // namespace twoclocks::canvas
