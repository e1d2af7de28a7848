// Which aircraft of a fleet goes in when, in words.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// One aircraft that goes in.
struct StaggerRow {
    base::Id id;
    base::Message name;
    base::Message days;
    base::Message reason;
    bool stands{false};  // past its limit
};

/// The whole fleet.
struct StaggerView {
    base::Message missing{base::Word::blank, {}};  // why there is nothing to stagger
    std::vector<base::Message> bounds;
    std::vector<StaggerRow> rows;  // soonest first
    std::vector<base::Message> notes;
};

/// Proposes who goes in when. Each aircraft is lived through: keep it while nothing changes.
/// Units: days, money. Errors: `missing`. Source: plan/stagger.hpp.
[[nodiscard]] StaggerView make_stagger_view(const std::vector<const Assessed*>& fleet);

}  // namespace twoclocks::views
