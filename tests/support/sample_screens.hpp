// Screens made by hand, for tests of the canvas and for looking at it. Every aircraft is invented.
#pragma once

#include "wasm/screen.hpp"

#include <string>
#include <vector>

namespace twoclocks::canvas::samples {

struct Sample {
    std::string name;
    Screen screen;
};

[[nodiscard]] Screen welcome();
[[nodiscard]] Screen empty_fleet();
[[nodiscard]] Screen fleet();
[[nodiscard]] Screen large_fleet(std::int32_t aircraft);
[[nodiscard]] Screen aircraft();
[[nodiscard]] Screen troubled_aircraft();
[[nodiscard]] Screen new_aircraft();
[[nodiscard]] Screen struck_aircraft();
[[nodiscard]] Screen sign_form();
[[nodiscard]] Screen log_choices();
[[nodiscard]] Screen pad();
[[nodiscard]] Screen falling_pad();
[[nodiscard]] Screen history();
[[nodiscard]] Screen long_history(std::int32_t records);
[[nodiscard]] Screen files();
[[nodiscard]] Screen preview();
[[nodiscard]] Screen form();
[[nodiscard]] Screen wrong_form();
[[nodiscard]] Screen fields();
[[nodiscard]] Screen new_item();
[[nodiscard]] Screen item_settings();         // "More settings" open
[[nodiscard]] Screen item_settings_closed();  // what says something stays
[[nodiscard]] Screen permit();
[[nodiscard]] Screen directives();  // cards of checks
[[nodiscard]] Screen directive_aircraft();
[[nodiscard]] Screen directive_form();
[[nodiscard]] Screen decide_form();
[[nodiscard]] Screen means_form();
[[nodiscard]] Screen returned_draft();
[[nodiscard]] Screen returned_pad();
[[nodiscard]] Screen saved_notice();
[[nodiscard]] Screen why();
[[nodiscard]] Screen record();
[[nodiscard]] Screen notices();
[[nodiscard]] Screen keys();
[[nodiscard]] Screen checks();
[[nodiscard]] Screen status();
[[nodiscard]] Screen parts();
[[nodiscard]] Screen no_parts();
[[nodiscard]] Screen part();
[[nodiscard]] Screen part_form();
[[nodiscard]] Screen specimen();
[[nodiscard]] Screen template_form();
[[nodiscard]] Screen work_by_rule();
[[nodiscard]] Screen stored_aircraft();
[[nodiscard]] Screen on_return();
[[nodiscard]] Screen nothing_on_return();
[[nodiscard]] Screen storage_form();
[[nodiscard]] Screen adjust_form();
[[nodiscard]] Screen plan();
[[nodiscard]] Screen unplanned();
[[nodiscard]] Screen routes();
[[nodiscard]] Screen stagger();
[[nodiscard]] Screen money();
[[nodiscard]] Screen no_money();
[[nodiscard]] Screen cores();
[[nodiscard]] Screen cash();
[[nodiscard]] Screen reserve();
[[nodiscard]] Screen no_cores();
[[nodiscard]] Screen sale();
[[nodiscard]] Screen closing();
[[nodiscard]] Screen compare();

/// One of each, with its name.
[[nodiscard]] std::vector<Sample> every_screen();
/// What a page of two panes shows.
[[nodiscard]] std::vector<Sample> every_pair();

// Parts, shared by the files that make the screens.
[[nodiscard]] base::Message told(std::string words);
[[nodiscard]] base::Message hours_left(std::int64_t tenths);
[[nodiscard]] base::Message span(std::int32_t years, std::int32_t days);
[[nodiscard]] base::Id id_of(std::uint64_t number);
[[nodiscard]] base::Date day_of(std::int32_t day_number);
[[nodiscard]] views::LifeBoxView hours_box();
[[nodiscard]] views::LifeBoxView calendar_box();
[[nodiscard]] views::LifeBoxView late_box();
[[nodiscard]] views::LifeBoxView missing_box();
[[nodiscard]] views::Why why_of_hours();
/// With the why of hours behind it.
[[nodiscard]] views::Figure figure(base::Message text);

inline constexpr std::int32_t day_21_sep_2029 = 21813;
inline constexpr std::int32_t day_3_may_2026 = 20576;
inline constexpr std::int32_t day_9_feb_2029 = 21589;
inline constexpr std::int32_t day_31_may_2034 = 23526;

}  // namespace twoclocks::canvas::samples
