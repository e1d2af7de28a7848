// One function a page: draws a plain view, gives back what the person wants. Panels compute nothing
// and hold no colour, size or sentence of their own.
#pragma once

#include "wasm/screen.hpp"
#include "wasm/widgets/ui.hpp"

#include <optional>

namespace twoclocks::canvas {

using Answer = std::optional<Intent>;

/// How a list stands on the page: alone, or beside the page of what was chosen from it.
struct ListPane {
    bool beside{false};
    base::Id chosen;  // empty: none
};

[[nodiscard]] Answer welcome_panel(Ui& ui, const Rect& area);
[[nodiscard]] Answer fleet_panel(Ui& ui,
                                 const Rect& area,
                                 const views::FleetView& view,
                                 ListPane pane = {});
[[nodiscard]] Answer aircraft_panel(Ui& ui, const Rect& area, const views::AircraftView& view);
[[nodiscard]] Answer log_panel(Ui& ui, const Rect& area, const LogPage& view, ListPane pane = {});
[[nodiscard]] Answer history_panel(Ui& ui,
                                   const Rect& area,
                                   const views::HistoryView& view,
                                   ListPane pane = {});
[[nodiscard]] Answer files_panel(Ui& ui, const Rect& area, const FilesPage& view);
[[nodiscard]] Answer form_panel(Ui& ui, const Rect& area, const FormPage& view);
[[nodiscard]] Answer status_panel(Ui& ui, const Rect& area, const views::StatusView& view);
[[nodiscard]] Answer sure_panel(Ui& ui, const Rect& area, const SurePage& page);
[[nodiscard]] Answer plan_panel(Ui& ui, const Rect& area, const PlanPage& page);
[[nodiscard]] Answer working_panel(Ui& ui, const Rect& area, const WorkingPage& page);
[[nodiscard]] Answer routes_panel(Ui& ui, const Rect& area, const RoutesPage& page);
[[nodiscard]] Answer stagger_panel(Ui& ui, const Rect& area, const StaggerPage& page);
[[nodiscard]] Answer sums_panel(Ui& ui, const Rect& area, const SumsPage& page);
[[nodiscard]] Answer money_panel(Ui& ui, const Rect& area, const MoneyPage& page);
[[nodiscard]] Answer return_panel(Ui& ui, const Rect& area, const ReturnPage& page);
[[nodiscard]] Answer checks_panel(Ui& ui, const Rect& area, const ChecksPage& page);
[[nodiscard]] Answer parts_panel(Ui& ui, const Rect& area, const PartsPage& page);
[[nodiscard]] Answer part_panel(Ui& ui, const Rect& area, const PartPage& page);
[[nodiscard]] Answer specimen_panel(Ui& ui, const Rect& area, const SpecimenPage& page);
[[nodiscard]] Answer record_panel(Ui& ui, const Rect& area, const RecordSheet& record);
[[nodiscard]] Answer nothing_chosen_panel(Ui& ui, const Rect& area, const NothingChosenPage& page);
[[nodiscard]] Answer why_sheet(Ui& ui, const views::Why& why);
[[nodiscard]] Answer keys_sheet(Ui& ui, const KeysSheet& keys);
[[nodiscard]] Answer record_sheet(Ui& ui, const RecordSheet& record);

}  // namespace twoclocks::canvas
