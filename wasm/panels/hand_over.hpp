// What a page can be taken away as.
#pragma once

#include "wasm/panels/panels.hpp"
#include "wasm/widgets/buttons.hpp"

namespace twoclocks::canvas {

/// Buttons that hand the page over as a paper or a table, where there is a calendar as that too.
[[nodiscard]] inline Answer hand_over_buttons(Ui& ui,
                                              const std::string& registration,
                                              bool has_calendar = false) {
    using base::Word;
    std::vector<ButtonSpec> buttons{{"as-paper", ui.say(Word::button_paper), true, registration},
                                    {"as-table", ui.say(Word::button_table), true, registration}};
    if (has_calendar)
        buttons.push_back({"as-calendar", ui.say(Word::button_calendar), true, registration});
    ui.gap(space::base);
    const std::int32_t pressed = button_row(ui, buttons);
    if (pressed == 0) return intent::HandOver{intent::HandOver::As::paper};
    if (pressed == 1) return intent::HandOver{intent::HandOver::As::table};
    if (pressed == 2) return intent::HandOver{intent::HandOver::As::calendar};
    return {};
}

}  // namespace twoclocks::canvas
