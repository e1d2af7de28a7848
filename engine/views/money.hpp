// What the page "Money" shows: plain structs of words and figures, nothing left to compute.
#pragma once

#include "engine/views/views.hpp"

namespace twoclocks::views {

/// One line of the estimate.
struct MoneyRow {
    std::string key;         // its own, or that of the route
    bool is_recorded{true};  // else it is the price of a route, changed there
    base::Message name;
    base::Message group;  // word `blank`: as the row before
    base::Message sum;    // in the home currency, as expected; "not in the sum"
    base::Message range{base::Word::blank, {}};  // least to most
    std::vector<base::Message> lines;            // quantity, price, what is to choose
    std::vector<base::Message> workings;         // rise, duty, tax, rate, who said so
    std::vector<base::Problem> notes;
    bool counts{true};
};

/// How much one line moves the total.
struct MoverRow {
    base::Message name;
    base::Message swing;
    std::int32_t permille{0};  // of the greatest
};

/// What one route, or one kind of work, comes to.
struct MoneyPath {
    base::Message name;
    base::Message net;
    base::Message hour;  // of each hour regained; word `blank`: not known
    std::vector<base::Message> lines;
};

/// The estimate of one aircraft.
struct MoneyView {
    base::Id id;
    std::string registration;
    base::Message missing{base::Word::blank, {}};  // nothing is recorded yet
    base::Message route{base::Word::blank, {}};    // by which it is estimated
    Figure gross;
    Figure back;
    Figure net;
    base::Message range{base::Word::blank, {}};
    base::Message not_whole{base::Word::blank, {}};
    std::vector<base::Problem> faults;
    std::vector<MoneyRow> rows;
    std::vector<MoverRow> movers;
    std::vector<base::Message> currencies;
    std::vector<base::Message> rates;
    std::vector<MoneyPath> paths;
    std::vector<base::Message> changes;  // by new price lists
    std::vector<base::Message> effects;  // of what was chosen
    std::vector<base::Message> notes;
    std::int32_t past_lines{0};  // of the last campaign, that could be taken over
};

}  // namespace twoclocks::views
