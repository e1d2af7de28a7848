// What the page of the routes shows: each way of having the work done, side by side.
#pragma once

#include "engine/views/views.hpp"

namespace twoclocks::views {

/// One route.
struct RouteRow {
    std::string key;
    base::Message name;
    base::Message who;    // "maker's works, flown, before the limit"
    base::Message mark;   // chosen, ruled out, to be asked; word `blank`: none
    base::Message days;   // out of service; word `blank`: not known
    base::Message late;   // chance of being kept waiting
    base::Message hours;  // of its life, on the way
    base::Message cost;
    std::vector<base::Message> praise;  // where it is the best of those that are open
    std::vector<base::Message> lines;   // when to order, price, tax, warranty, gate, who said so
    bool ruled_out{false};
    bool chosen{false};
};

/// Every route of one aircraft.
struct RoutesView {
    base::Id id;
    std::string registration;
    base::Message missing{base::Word::blank, {}};  // why nothing can be compared
    std::vector<RouteRow> rows;
    std::vector<base::Message> notes;
};

}  // namespace twoclocks::views
