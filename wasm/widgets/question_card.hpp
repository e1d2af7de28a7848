// Records that disagree: both values, who wrote them, when and on which device.
#pragma once

#include "wasm/intent.hpp"
#include "wasm/widgets/ui.hpp"

#include <optional>
#include <vector>

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

/// An open question with its sides. Returns the side chosen, -1 for none.
[[nodiscard]] std::int32_t question_card(Ui& ui,
                                         std::int32_t index,
                                         const views::QuestionView& question);

/// All open questions of a page, with what the sign on its figures says; nothing when none are.
[[nodiscard]] std::optional<Intent> question_cards(
    Ui& ui, const std::vector<views::QuestionView>& questions);

/// A question that a file would bring: nothing is to be chosen yet.
void question_ahead(Ui& ui, const views::QuestionView& question);

}  // namespace twoclocks::canvas
