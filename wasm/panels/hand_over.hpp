// What a page can be taken away as.
#pragma once

#include "wasm/panels/panels.hpp"
#include "wasm/widgets/buttons.hpp"

namespace twoclocks::canvas {

/// Buttons that hand the page over as a paper or a table, or to the printer; of a plan, also its
/// days and the list to work by.
[[nodiscard]] inline Answer hand_over_buttons(Ui& ui,
                                              const std::string& name,
                                              bool is_plan = false) {
    using base::Word;
    using As = intent::HandOver::As;
    std::vector<ButtonSpec> buttons{{"as-paper", ui.say(Word::button_paper), true, name},
                                    {"as-table", ui.say(Word::button_table), true, name},
                                    {"as-print", ui.say(Word::button_print), true, name}};
    if (is_plan) {
        buttons.push_back({"as-calendar", ui.say(Word::button_calendar), true, name});
        buttons.push_back({"as-work-list", ui.say(Word::button_work_list), true, name});
    }
    ui.gap(space::base);
    const std::int32_t pressed = button_row(ui, buttons);
    if (pressed < 0) return {};
    return intent::HandOver{static_cast<As>(pressed)};
}

}  // namespace twoclocks::canvas
