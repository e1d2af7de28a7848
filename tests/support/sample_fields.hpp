// Screens with every kind of field in every state. In a header, because they come from the canvas
// and the engine's tests do without it.
#pragma once

#include "tests/support/sample_screens.hpp"
#include "wasm/app/specimen_fields.hpp"

#include <string>
#include <utility>
#include <vector>

namespace twoclocks::canvas::samples {

/// All of them on one page, as the specimen page shows them.
inline Screen fields() {
    Screen screen = form();
    auto& page = std::get<FormPage>(screen.page);
    page.title = {base::Word::specimen_fields, {}};
    page.intro = {base::Word::specimen_fields_intro, {}};
    page.fields = specimen_fields(day_of(day_3_may_2026));
    page.can_clear = true;
    return screen;
}

/// Every screen there is.
inline std::vector<Sample> every_screen_and_field() {
    std::vector<Sample> all = every_screen();
    all.push_back({"fields", fields()});
    return all;
}

}  // namespace twoclocks::canvas::samples
