// What happened and is not signed for, in words.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// One event for its banner, with its why.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] EventView make_event_view(const timeline::EventState& event);

/// The events of a state or of a part, oldest first.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<EventView> make_event_views(
    const std::vector<timeline::EventState>& events);

/// "Not signed for: hard landing on 3 May 2026", where an event is what sets the state: nothing
/// while there is none, or while a limit was flown past, which says more.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::optional<base::Message> event_sentence(const Assessed& aircraft,
                                                          base::Word word);

/// Adds the events to a why, oldest first, each with its record.
/// Units: none. Errors: none. Source: our choice.
void explain_events(Why& why, const Assessed& aircraft);

}  // namespace twoclocks::views
