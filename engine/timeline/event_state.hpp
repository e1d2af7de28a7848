// Something that happened and is not signed for yet, as part of a state. See events.hpp.
#pragma once

#include <string>
#include <vector>

#include "engine/facts/fact.hpp"

namespace twoclocks::timeline {

/// The aircraft or a part that an event names.
struct EventSubject {
    base::Id id;
    std::string name;  // registration, or what people call the part; empty when not recorded
    bool is_part{false};
    bool open{false};  // not signed for, by at least one version
    bool here{false};  // open, and this aircraft or a part on it, or the part itself
};

/// Work that signed an event for some of its subjects.
struct EventSigned {
    base::Id fact;
    base::Date on;
    std::vector<base::Id> subjects;
};

/// An event with what is still open.
struct EventState {
    base::Id id;         // what work renews
    base::Date on;       // the earliest day that any version gives
    facts::Event event;  // the version that is shown
    bool disputed{false};
    std::vector<EventSubject> subjects;    // all that any version names, in its order
    std::vector<EventSigned> signed_by{};  // oldest first
};

}  // namespace twoclocks::timeline
