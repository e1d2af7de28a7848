// What a form and the pad show; the test fails when it is not there.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/support/said.hpp"
#include "wasm/app/form.hpp"
#include "wasm/app_state.hpp"

#include <string_view>

namespace twoclocks::canvas::support {

[[nodiscard]] inline FieldView& field(Form& form, std::string_view id) {
    FieldView* found = find_field(form, id);
    CAPTURE(id);
    REQUIRE(found != nullptr);
    return *found;
}

inline void choose(Form& form, std::string_view id, std::string_view option) {
    FieldView& list = field(form, id);
    for (std::size_t at = 0; at < list.options.size(); ++at) {
        if (twoclocks::support::said(list.options[at]) != option) continue;
        list.chosen = static_cast<std::int32_t>(at);
        return;
    }
    FAIL("no such option");
}

[[nodiscard]] inline const LogPage::Pad& pad(AppState& app) {
    const auto* page = std::get_if<LogPage>(&app.screen().page);
    REQUIRE(page != nullptr);
    REQUIRE(page->pad);
    return *page->pad;
}

}  // namespace twoclocks::canvas::support
