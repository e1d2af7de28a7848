// What the page "How sure" shows: plain structs of words and figures, nothing left to compute.
#pragma once

#include "engine/views/views.hpp"

namespace twoclocks::views {

/// One mandatory item on both paths.
struct PathItem {
    std::string name;
    base::Message calendar_path;  // "renewed, next about 3 May 2041" or "stays, 5 Jun 2031"
    base::Message full_path;
};

/// Calendar work and the hours kept, or the full overhaul: what each brings.
/// From the choice to the day on which the later of the two ways stops next.
struct PathHorizon {
    base::Date from;
    base::Date until;
    base::FlightTime flown;   // expected from one to the other
    std::int32_t sooner{-1};  // place of the path that stops before then; -1: neither
    base::Date sooner_stop;
};

struct BothPathsView {
    base::Message missing{base::Word::blank, {}};   // why there are not two; then some may be empty
    base::Message when;                             // the day the choice is due, and the hours then
    base::Message given_up{base::Word::blank, {}};  // by the full overhaul then
    base::Message meet{base::Word::blank, {}};      // the rate at which nothing is given up

    struct Path {
        base::FlightTime gained;  // hours expected from the work to its next stop
        base::Message title;
        base::Message source;
        base::Message next_stop;  // of the overhaul, and what is flown until then
        base::Message after{base::Word::blank, {}};  // to the day on which the later path stops
    };

    std::vector<Path> paths;             // calendar work first
    std::optional<PathHorizon> horizon;  // when both stop again
    std::vector<PathItem> items;         // that one of them renews
    base::Message others{base::Word::blank, {}};
};

/// One item with its days as expected, and as before something was tried.
struct SureRow {
    std::string name;
    Edge edge{Edge::none};
    base::Message likely;
    base::Message range{base::Word::blank, {}};  // "15 Jan 2027 to 3 Apr 2027"
    base::Message before{base::Word::blank,
                         {}};  // word `blank`: nothing is tried, or it changes nothing
};

/// How sure the date is: what is expected, how far it may stray, what it would have said.
struct SureView {
    base::Id id;
    std::string registration;
    Figure answer;
    Figure range;
    Figure rate;
    base::Message chance;
    LifeBoxView box;
    base::FlightTime month;  // expected in a month, in the mean
    base::Message tried{base::Word::blank, {}};
    std::vector<SureRow> rows;             // soonest first
    std::optional<ChartView> months;       // flown and expected
    std::vector<base::Message> look_back;  // what would have been said a year ago
    std::vector<base::Message> plan;       // planned against flown
    BothPathsView paths;
};

}  // namespace twoclocks::views
