// The views as JSON: for the report program, for tests, and for whoever wants the figures
// elsewhere.
#pragma once

#include <string>

#include "engine/base/region.hpp"
#include "engine/facts/json.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/money.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/plan.hpp"
#include "engine/views/routes.hpp"
#include "engine/views/stagger_view.hpp"
#include "engine/views/status.hpp"
#include "engine/views/sums.hpp"
#include "engine/views/sure.hpp"

namespace twoclocks::views {

/// The fleet list.
/// Units: text as a person reads it; thousandths for bars and the box. Errors: none. Source: our
/// choice.
[[nodiscard]] facts::Json to_json(const FleetView& view, const base::Region& region);

/// One aircraft with every why.
/// Units: as the fleet list. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const AircraftView& view, const base::Region& region);

/// Records.
/// Units: text as a person reads it. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const HistoryView& view, const base::Region& region);

/// What the reading pad knows.
/// Units: text as a person reads it. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const LogView& view, const base::Region& region);

/// The status as an authority asks for it.
/// Units: text as a person reads it. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const StatusView& view, const base::Region& region);

/// Where a part has been, and what it gained there.
/// Units: text as a person reads it. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const PartHistoryView& view, const base::Region& region);

/// How sure the date is.
/// Units: as the fleet list. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const SureView& view, const base::Region& region);

/// The plan of an overhaul, its routes, and who of the fleet goes in when.
/// Units: as the fleet list. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const PlanView& view, const base::Region& region);
[[nodiscard]] facts::Json to_json(const RoutesView& view, const base::Region& region);
[[nodiscard]] facts::Json to_json(const StaggerView& view, const base::Region& region);

/// What an overhaul costs.
/// Units: as the fleet list. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const MoneyView& view, const base::Region& region);

/// Cores, cash or the reserve.
/// Units: as the fleet list. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const SumsView& view, const base::Region& region);

/// Problems, each with its code, what happened, what to do, and its line.
/// Units: text as a person reads it. Errors: none. Source: our choice.
[[nodiscard]] facts::Json to_json(const base::Problems& problems, const base::Region& region);

/// Every view of a journal on a day, as one line of JSON with a line feed: what the report program
/// prints.
/// Units: text as a person reads it. Errors: none; problems of the file are part of it. Source:
/// our choice.
[[nodiscard]] std::string print_report(std::string_view journal_text,
                                       base::Date today,
                                       const base::Region& region);

}  // namespace twoclocks::views
