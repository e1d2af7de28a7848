#include "engine/limits/bearer.hpp"

#include "engine/limits/due.hpp"

namespace twoclocks::limits {
namespace {

using base::Date;
using base::FlightTime;
using facts::Anchor;

/// The day of the part that an anchor names.
[[nodiscard]] std::optional<Date> day_of(const BornOn& born, Anchor anchor) {
    switch (anchor) {
        case Anchor::manufacture:
            return born.manufactured;
        case Anchor::cure:
            return born.cured;
        case Anchor::shipment:
            return born.shipped;
        case Anchor::first_fit:
            return born.first_fitted;
        case Anchor::overhaul:
            return born.overhauled;
        case Anchor::first_airworthiness:
        case Anchor::release:
        case Anchor::unknown:
            break;
    }
    return std::nullopt;
}

[[nodiscard]] AnchorDay earliest(const BornOn& born) {
    if (born.manufactured) return {born.manufactured, Anchor::manufacture, true, false};
    return {born.cured, Anchor::cure, true, false};
}

}  // namespace

Bearer bearer_of(const timeline::AircraftState& state) {
    Bearer out;
    out.id = state.id;
    out.hours = total_time(state);
    out.landings = state.landings;
    out.starts = state.starts;
    out.born.manufactured = state.manufactured;
    out.is_asked_about = !state.questions.empty();
    out.storage = state.storage;
    out.use = state.use;
    return out;
}

Bearer bearer_of(const timeline::PartState& part) {
    Bearer out;
    out.id = part.id;
    out.is_part = true;
    out.hours = timeline::hours_of(part);
    const bool is_recorded = part.hours_in == timeline::PartHours::recorded;
    out.hours_in = is_recorded ? HoursIn::recorded : HoursIn::since_new;
    out.since_overhaul = part.tso;
    out.is_estimated = part.tsn_estimated;
    out.since_overhaul_estimated = part.tso_estimated;
    out.landings = part.landings;
    out.starts = part.starts;
    out.born = {
        part.manufactured, part.cured, part.shipped, {}, part.overhauled_on, part.rebuilt_on};
    const bool flew_before = !part.tsn || part.by_papers.seconds != 0 || part.history_unknown;
    if (!flew_before) out.born.first_fitted = part.first_fitted;
    out.is_asked_about = !part.questions.empty();
    out.history_unknown = part.history_unknown && !part.rebuilt_on;
    out.most_told = part.most_told;
    for (const timeline::PartSpell& spell : part.spells)
        out.recorded = out.recorded + spell.gained.value_or(FlightTime{0});
    if (!part.flown.empty()) out.recorded_on = part.flown.front().on;
    return out;
}

AnchorDay anchor_day(const Bearer& bearer, const facts::LimitSet& limit) {
    if (limit.anchor_on) return {limit.anchor_on, limit.anchor, false, false};
    if (!bearer.is_part) return {bearer.born.manufactured, Anchor::manufacture, true, false};
    if (bearer.born.rebuilt) return {bearer.born.rebuilt, Anchor::unknown, false, true};
    const std::optional<Date> named = day_of(bearer.born, limit.anchor);
    return named ? AnchorDay{named, limit.anchor, false, false} : earliest(bearer.born);
}

bool has_no_life_left(const Bearer& bearer, const timeline::ItemState& item, facts::Clock clock) {
    const bool is_life = bearer.is_part && item.limit &&
                         item.limit->limit_class == facts::LimitClass::airworthiness_limitation &&
                         !item.renewed[static_cast<std::size_t>(clock)];
    const bool is_hours = clock == facts::Clock::hours;
    const bool by_papers = item.role == facts::ItemRole::overhaul && bearer.since_overhaul;
    if (!is_life || (is_hours && by_papers)) return false;
    if (bearer.history_unknown) return true;
    const bool hours_known = bearer.hours && bearer.hours_in == HoursIn::since_new;
    return is_hours && !hours_known && !bearer.is_asked_about;
}

}  // namespace twoclocks::limits
