// A part of the record as a file, locked where a person wants it, and files that are locked.
#pragma once

#include "wasm/app/inside.hpp"

namespace twoclocks::canvas {

/// What the form that is open does where it saves nothing; false where it is none of those.
[[nodiscard]] bool act_on_form(AppState::Inside& in);

/// Asks for the password of a locked file; false where the file is none.
[[nodiscard]] bool take_locked(AppState::Inside& in, std::string_view name, std::string_view bytes);

/// Leads to what a file holds that was chosen; what was locked takes the place of the page that
/// asked for its password.
void show_import(AppState::Inside& in);

/// Says what became of a lock: done, wrong, damaged, or missing where the browser has none.
void tell_lock(AppState::Inside& in, std::string_view code, std::string_view name);

/// Letters and digits of any name; the rest would be no name of a file.
[[nodiscard]] std::string file_name(const AppState::Inside& in,
                                    const std::string& of,
                                    const std::string& kind,
                                    const char* ending);

}  // namespace twoclocks::canvas
