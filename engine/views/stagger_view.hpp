// Which aircraft of a fleet goes in when, in words.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/plan_lived.hpp"

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

/// Proposes who goes in when, of what each came to when it was lived through, in their order.
/// Units: days, money. Errors: `missing`. Source: plan/stagger.hpp.
[[nodiscard]] StaggerView make_stagger_view(const std::vector<const Assessed*>& fleet,
                                            const std::vector<const Living*>& lives);

/// The same, each lived through at once.
/// Units: days, money. Errors: `missing`. Source: plan/stagger.hpp.
[[nodiscard]] StaggerView make_stagger_view(const std::vector<const Assessed*>& fleet);

}  // namespace twoclocks::views
