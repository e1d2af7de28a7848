// The status of an aircraft as an authority asks for it: what is limited, how much is used, what is
// left, in every parameter; what was done last and what comes next; and what papers are missing.
#pragma once

#include "engine/views/views.hpp"

namespace twoclocks::views {

/// One clock of a limit.
struct StatusClock {
    Edge edge{Edge::none};
    base::Message limit;  // "2,200.0 h"
    base::Message used;
    base::Message left;
    base::Message next;  // "at 3,462.5 h", "4 May 2031"
    bool over{false};
    Why why;
    bool questioned{false};  // with another answer to an open question it would be another
};

/// One limited item.
struct StatusRow {
    base::Id item;
    std::string name;
    State state{State::unknown};
    base::Message state_word;
    base::Message source;
    base::Message last;    // "11 Apr 2019 at 1,262.5 h", "no work recorded"
    base::Message method;  // what was done, by which reference; word `blank` when none
    std::vector<StatusClock> clocks;
    std::vector<base::Message> notes;  // permits, approved other ways
};

/// Items of one class.
struct StatusGroup {
    base::Message title;
    std::vector<StatusRow> rows;
};

/// One part with a serial number.
struct StatusPart {
    base::Id part;
    std::string name;
    base::Message plate;  // "number 12, serial 7, main"
    Told since_new;
    Told since_overhaul;
    base::Message papers;  // what they are, or that none are recorded
    bool papers_missing{false};
};

/// Everything on one page.
struct StatusView {
    base::Id id;
    std::string registration;
    std::string type;
    std::string serial;
    State state{State::unknown};
    base::Message state_word;
    base::Message as_of;  // "Status on 25 Nov 2026"
    Told total;
    Told landings;
    Told starts;
    std::vector<StatusGroup> groups;
    std::vector<StatusPart> parts;
    std::vector<base::Message> missing;  // papers and figures that are not on record
};

}  // namespace twoclocks::views
