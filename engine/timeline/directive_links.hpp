// How directives of one bearer act on each other: supersedure, credit, terminating action.
#pragma once

#include "engine/timeline/directive_told.hpp"

namespace twoclocks::timeline {

/// The items of a bearer, and what is told of the directive of each, in the same order.
struct Directives {
    std::vector<ItemState>& items;
    std::vector<AllTold<facts::Directive>> told;
};

/// What is recorded of a bearer of directives.
struct Recorded {
    const std::vector<Record>& records;
    base::Id bearer;
    bool is_part{false};
    const UsageSeries& hours;  // that were surely flown by each day
    base::Date today;
};

/// True when a version of any directive says that it replaces an item.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_named(base::Id item, const Directives& all);

/// True when a version of the directive of an item names one that hangs elsewhere, or on nothing.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool names_elsewhere(base::Id item, const Directives& all);

/// The number of the directive of an item, or what the item is called.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::string name_of_directive(const ItemState& item);

/// Fills in what each directive of a bearer is superseded and ended by, and what counts as
/// compliance with it.
/// Units: as state.hpp. Errors: none. Source: directives.hpp.
void link(const Recorded& recorded, Directives& all);

}  // namespace twoclocks::timeline
