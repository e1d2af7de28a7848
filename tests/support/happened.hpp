// Two aircraft, a gearbox, and what happens to them. See stores.hpp.
#pragma once

#include "tests/support/stores.hpp"

#include <string>
#include <vector>

#include "engine/timeline/events.hpp"

namespace twoclocks::support {

/// The subjects of events that are not signed for, a star behind those that count here.
[[nodiscard]] inline std::string told(const std::vector<timeline::EventState>& events) {
    std::string out;
    for (const timeline::EventState& event : events) {
        for (const timeline::EventSubject& subject : event.subjects) {
            if (!subject.open) continue;
            if (!out.empty()) out += ' ';
            out += (subject.name.empty() ? std::string{"?"} : subject.name) +
                   (subject.here ? "*" : "");
        }
    }
    return out;
}

struct Happened : Stores {
    facts::Fact happens(const char* on,
                        std::vector<base::Id> about,
                        facts::EventKind kind = facts::EventKind::hard_landing) {
        facts::Event event;
        event.happened = kind;
        event.source = "Manual";
        return keep(ann.write(day(on), std::move(about), event));
    }

    facts::Fact sign(base::Id event, const char* on, std::vector<base::Id> about) {
        return keep(ann.write(day(on), std::move(about), renews({event}, -1)));
    }

    [[nodiscard]] std::string stops(base::Id aircraft) const {
        return told(timeline::replay(journal, aircraft, today).events);
    }

    [[nodiscard]] std::string of_part(const facts::Fact& part) const {
        return told(timeline::events_of_part(journal, part.id, today));
    }
};

}  // namespace twoclocks::support
