// The page of the aircraft that every named case starts from.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <vector>

#include "engine/views/make_views.hpp"

namespace twoclocks::support {

/// With more records than the hangar has.
[[nodiscard]] inline views::AircraftView view_of(const Hangar& hangar,
                                                 const std::vector<facts::Fact>& more = {}) {
    facts::Journal journal = hangar.journal;
    for (const facts::Fact& fact : more)
        journal.add(fact);
    return views::make_aircraft_view(
        views::assess(timeline::replay(journal, hangar.id(), hangar.today), hangar.today));
}

/// The due row of the check.
[[nodiscard]] inline views::DueRow check_row(const views::AircraftView& view,
                                             const Hangar& hangar) {
    for (const views::DueRow& row : view.due) {
        if (row.item == hangar.check.id) return row;
    }
    FAIL("the check is not there");
    return {};
}

}  // namespace twoclocks::support
