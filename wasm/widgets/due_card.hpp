// What one aircraft must have done, and what its records disagree about, as cards.
#pragma once

#include "wasm/intent.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/ui.hpp"

#include <optional>
#include <string>
#include <vector>

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

struct DuePress {
    std::int32_t figure{-1};         // which of its figures was tapped: those present, likely last
    std::optional<FormKind> form{};  // about its item
};

/// What can be recorded about an item beside work on it. `all`: where one looks through items.
[[nodiscard]] std::optional<FormKind> item_buttons(Ui& ui,
                                                   std::int32_t index,
                                                   const views::DueRow& row,
                                                   bool all);

/// The directive that an item rests on: number, standing, what was done, what comes next.
void directive_lines(Ui& ui, const views::DueRow& row);

[[nodiscard]] DuePress due_card(Ui& ui, std::int32_t index, const views::DueRow& row);

/// How many cards and whys of a page come before the next card.
struct DuePlace {
    std::int32_t index{0};
    std::int32_t why{0};
};

/// A card for each row, and what was pressed on any.
[[nodiscard]] std::optional<Intent> due_cards(Ui& ui,
                                              const std::vector<views::DueRow>& rows,
                                              DuePlace& place);
/// How many figures a row shows.
[[nodiscard]] std::int32_t figures_in(const views::DueRow& row);

/// Words with the state of what they name at the right, or below where there is no room.
struct Named {
    Type type{Type::body};
    std::int32_t level{0};  // of the heading it is, 0 for none
    std::string words;
    views::State state{};
    std::string state_word;
};

void name_and_state(Ui& ui, const Named& named);

/// What an aircraft is, with its state at the right.
void state_line(Ui& ui,
                views::State state,
                const std::string& state_word,
                const std::string& words);

/// Figures as rows: label left, figure right, each a finger high. Returns the index tapped, -1 for
/// none.
[[nodiscard]] std::int32_t figure_rows(Ui& ui, const std::vector<FigureSpec>& figures);

}  // namespace twoclocks::canvas
