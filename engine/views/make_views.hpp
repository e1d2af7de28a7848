// The views, made from assessed aircraft and the journal.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Every aircraft, what needs me first on top: by state, then by the likely day of the first stop,
/// then by
/// registration.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] FleetView make_fleet_view(const std::vector<Assessed>& fleet);

/// One aircraft.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] AircraftView make_aircraft_view(const Assessed& aircraft);

/// Every "why?" of an aircraft, in the order of AircraftView: answer, hours left, calendar left,
/// range,
/// total time, rate, break-even; then each event; then for each due row what is left by hours,
/// calendar, count and wear, and likely.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Why> whys_of(const AircraftView& view);

/// Records about one aircraft, or about all when the id is empty; newest day first.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] HistoryView make_history_view(const facts::Journal& journal,
                                            base::Id aircraft,
                                            std::string registration);

/// One record as a row of the history.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] HistoryRow make_history_row(const facts::Journal& journal, const facts::Fact& fact);

/// What the reading pad needs to know.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] LogView make_log_view(const Assessed& aircraft);

/// Open questions for people, in their order.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<QuestionView> make_questions(
    const std::vector<timeline::Question>& questions);

}  // namespace twoclocks::views
