// Parts to look through: those on one aircraft by assembly, or all of the record by where they are.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/timeline/parts.hpp"
#include "engine/views/views.hpp"

namespace twoclocks::views {

/// What a person asked to see.
struct PartsAsked {
    std::string search;      // of name, number, serial, position, place; empty for all
    bool everywhere{false};  // also what is on no aircraft or on another
};

struct PartRow {
    base::Id part;
    std::int32_t depth{0};  // 0 not in an assembly, 1 in one, 2 in one that is in one
    base::Message name;
    base::Message plate;     // part number and serial
    base::Message position;  // blank when not recorded
    base::Message since_new;
    base::Message since_overhaul;
    base::Message condition;
    std::vector<base::Message> marks;  // "history unknown", "hours estimated", "open question"
};

struct PartGroup {
    base::Message title;
    std::vector<PartRow> rows;
};

struct PartListView {
    base::Id aircraft;         // empty: of no aircraft more than of another
    std::string registration;  // empty with it
    base::Message summary;     // "3 of 8 parts"
    std::vector<PartGroup> groups;
};

/// The parts that answer. What is in an assembly follows it; of a search, what does not answer is
/// left out and what is in it still says how deep it is and in what.
/// Units: hours. Errors: none; a part in itself is listed where nothing recorded holds it.
/// Source: our choice.
[[nodiscard]] PartListView make_part_list(const std::vector<timeline::PartState>& parts,
                                          const std::map<base::Id, std::string>& registrations,
                                          base::Id aircraft,
                                          const PartsAsked& asked);

/// Hours of a part as a figure: unknown where they are, "about" where they are an estimate.
/// Units: hours. Errors: none. Source: our choice.
[[nodiscard]] base::Message part_hours(const std::optional<base::FlightTime>& hours,
                                       bool estimated);

}  // namespace twoclocks::views
