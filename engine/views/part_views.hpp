// Parts for people: the history of one serial across aircraft.
#pragma once

#include "engine/timeline/parts.hpp"
#include "engine/views/views.hpp"

namespace twoclocks::views {

/// The days that a part spent on an aircraft by way of an assembly.
struct Aboard {
    base::Id aircraft;
    base::Date from;
    std::optional<base::Date> until;
    base::Message aircraft_name;
    base::Message days;
};

/// A part on one host, newest first in its history.
struct PartHistoryRow {
    base::Id host;
    base::Id aircraft;  // the host, or empty when the host is a part
    base::Date from;
    std::optional<base::Date> until;
    base::Message days;       // "3 May 2026 to 1 Jun 2026", "Since 3 May 2026"
    base::Message host_name;  // registration, or name and serial of the part it is in
    base::Message position;   // blank when not recorded
    base::Message gained;     // "70.0 h", "about 70.0 h, an estimate", "hours unknown"
    bool estimated{false};
    bool keeps_status{false};
    std::vector<Aboard> aboard;   // oldest first; empty when the host is an aircraft
    std::vector<base::Id> facts;  // the fit, and the removal
};

/// Everything about one serial.
struct PartHistoryView {
    base::Id part;
    base::Message name;  // "Main gearbox, serial 7"
    base::Message part_number;
    base::Message where;  // "Fitted to ISLE-1: main"
    Told since_new;
    Told since_overhaul;
    base::Message condition;
    Told hours_new;         // since new as a figure, "about 70.0 h, an estimate"
    Told hours_overhaul;    // since overhaul as a figure
    base::Message owner;    // blank when not recorded
    base::Message returns;  // the day it goes back; blank when there is none
    base::Message papers;   // blank when not recorded
    bool history_unknown{false};
    bool unknown{false};      // a question without a safe side, or a record of a newer version
    std::vector<DueRow> due;  // limits that hang on it, soonest first
    std::vector<PartHistoryRow> rows;
    std::vector<EventView> events;  // not signed for, oldest first
    std::vector<QuestionView> questions;
    std::vector<base::Problem> troubles;
    std::vector<std::vector<base::Id>> trouble_facts;  // for each trouble, the records it names
};

/// What people call an aircraft or a part: its registration, or its name and serial.
/// Units: none. Errors: none, empty when neither is recorded. Source: our choice.
[[nodiscard]] std::string name_of_host(const facts::Journal& journal, base::Id host);

/// How much a part has flown since new, and since its overhaul; an estimate says so.
/// Units: hours. Errors: none; what is not known says so. Source: our choice.
[[nodiscard]] base::Message since_new(const timeline::PartState& part);
[[nodiscard]] base::Message since_overhaul(const timeline::PartState& part);

/// Every why of a part: of what happened, then of the limits that hang on it.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Why> whys_of(const PartHistoryView& view);

/// The full history of one serial, across aircraft.
/// Units: as views.hpp. Errors: none. Source: our choice.
[[nodiscard]] PartHistoryView part_history(const facts::Journal& journal,
                                           base::Id part,
                                           base::Date today);

/// The same of a part that has been worked out already.
/// Units: as views.hpp. Errors: none. Source: our choice.
[[nodiscard]] PartHistoryView part_history(const facts::Journal& journal,
                                           const timeline::PartState& part,
                                           base::Date today);

}  // namespace twoclocks::views
