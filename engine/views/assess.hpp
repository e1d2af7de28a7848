// One aircraft worked out once: every view and every state is made from this.
#pragma once

#include <vector>

#include "engine/forecast/projection.hpp"
#include "engine/forecast/wear_trend.hpp"
#include "engine/views/views.hpp"

namespace twoclocks::views {

/// How long before the early date of the overhaul its plan is looked at for what should begin.
/// Two years: a kit takes 21 to 24 weeks and a shop has a queue; common practice, no source.
inline constexpr std::int32_t farthest_lead_days = 731;

/// How near a limit is called due. Our choice.
inline constexpr std::int32_t due_days = 30;

/// How old a reading may be before it is mentioned. Our choice.
inline constexpr std::int32_t old_reading_days = 45;

/// The wear of one item: what is recorded, what it comes to, where it leads.
struct ItemWear {
    timeline::WearState state;
    timeline::WearFinding finding;
    forecast::WearTrend trend;
};

/// State, limits, rate and dates of one aircraft on a day.
struct Assessed {
    timeline::AircraftState state;
    std::vector<timeline::PartState> parts;         // aboard, also by way of an assembly
    std::vector<limits::ItemDue> items;             // its own, then those of its parts
    std::vector<forecast::Projection> projections;  // one an item
    std::vector<State> item_states;                 // one an item
    std::vector<std::optional<ItemWear>> wear;      // one an item
    forecast::FlyingAhead ahead;
    std::optional<forecast::FirstStop> first;
    std::int32_t overhaul{-1};  // place of the overhaul in items, -1 if none
    std::int32_t worst{-1};     // place of the item that sets the state, -1 if none
    State overall{State::unknown};
    std::optional<base::Date> core_due;  // the first deadline of a core that must go now
    base::Date today;
    std::vector<Assessed> otherwise{};  // for ways in which its open questions may be answered
    bool has_more_ways{false};          // than those
};

/// Works one aircraft out, with the parts that are on it.
/// Units: as the rooms before. Errors: none; what is not known is State::unknown.
/// Source: design of the states, our choice.
[[nodiscard]] Assessed assess(timeline::AircraftState state,
                              base::Date today,
                              std::vector<timeline::PartState> parts = {});

/// The state of an item, on the aircraft or on a part of it; null when there is none.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const timeline::ItemState* item_state(const Assessed& aircraft, base::Id item);

/// The part that an item hangs on; null when it hangs on the aircraft.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const timeline::PartState* part_of(const Assessed& aircraft,
                                                 const limits::ItemDue& item);

/// Open questions of the aircraft, then those of its parts; one that both ask stands once.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<timeline::Question> open_questions(const Assessed& aircraft);

/// Whether a core asks for something that no item does.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool only_core_asks(const Assessed& aircraft);

/// That a core must go now, or should be gone.
/// Units: days. Range: where `core_due` is known. Errors: none. Source: our choice.
[[nodiscard]] base::Message core_caution(const Assessed& aircraft);

/// What people call an item: "Inspection", or "Main gearbox 7: Inspection" when it hangs on a part.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::string item_label(const limits::ItemDue& item);

/// The word of a state.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] base::Message state_word(State state);

/// The overhaul of an aircraft, null when it has none.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const limits::ItemDue* overhaul_of(const Assessed& aircraft);

}  // namespace twoclocks::views
