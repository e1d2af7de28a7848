// One function a page: draws a plain view, gives back what the person wants. Panels compute nothing
// and hold no colour, size or sentence of their own.
#pragma once

#include "wasm/screen.hpp"
#include "wasm/widgets/ui.hpp"

#include <optional>

namespace twoclocks::canvas {

using Answer = std::optional<Intent>;

[[nodiscard]] Answer welcome_panel(Ui& ui, const Rect& area);
[[nodiscard]] Answer fleet_panel(Ui& ui, const Rect& area, const views::FleetView& view);
[[nodiscard]] Answer aircraft_panel(Ui& ui, const Rect& area, const views::AircraftView& view);
[[nodiscard]] Answer log_panel(Ui& ui, const Rect& area, const LogPage& view);
[[nodiscard]] Answer history_panel(Ui& ui, const Rect& area, const views::HistoryView& view);
[[nodiscard]] Answer files_panel(Ui& ui, const Rect& area, const FilesPage& view);
[[nodiscard]] Answer form_panel(Ui& ui, const Rect& area, const FormPage& view);
[[nodiscard]] Answer why_sheet(Ui& ui, const views::Why& why);
[[nodiscard]] Answer record_sheet(Ui& ui, const RecordSheet& record);

}  // namespace twoclocks::canvas
