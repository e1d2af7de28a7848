// "How sure": the page, and the hours a month that are tried on it.
#pragma once

#include "wasm/app/inside.hpp"

namespace twoclocks::canvas {

/// The one field of the page, empty: as recorded.
[[nodiscard]] Form make_tried();

/// The page for what stands in the field.
[[nodiscard]] SurePage sure_page(Form& form, const views::Assessed& aircraft);

/// What the page asks for.
void try_out(AppState::Inside& in, const intent::OpenSure& intent);
void try_out(AppState::Inside& in, const intent::TryMonth& intent);
void try_out(AppState::Inside& in, const intent::TryThrough& intent);
void try_out(AppState::Inside& in, const intent::StopTrying& intent);
void try_out(AppState::Inside& in, const intent::KeepTried& intent);

}  // namespace twoclocks::canvas
