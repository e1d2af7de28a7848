#include "engine/timeline/part_host.hpp"

#include <algorithm>

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;

/// What turns the count into time since new on a day; nothing while that is unknown.
[[nodiscard]] std::optional<FlightTime> offset_on(const HostLine& line, Date on) {
    if (!line.is_part) return FlightTime{0};
    std::optional<FlightTime> out;
    for (const PartOffset& offset : line.offsets) {
        if (offset.on <= on) out = offset.tsn_less_count;
    }
    return out;
}

[[nodiscard]] std::optional<FlightTime> count_of(const HostLine& line,
                                                 const std::optional<FlightTime>& recorded,
                                                 Date on) {
    const std::optional<FlightTime> offset = offset_on(line, on);
    if (!recorded || !offset) return std::nullopt;
    return *recorded - *offset;
}

/// The last count on or before a day: not more than the true one.
[[nodiscard]] std::optional<FlightTime> at_least(const HostLine& line, Date on) {
    std::optional<FlightTime> out;
    for (const UsagePoint& point : line.series) {
        if (point.on <= on) out = point.total;
    }
    return out;
}

/// The count of the day itself, else the next, else what there is now: not less than the true one.
[[nodiscard]] FlightTime at_most(const HostLine& line, Date on) {
    std::optional<FlightTime> of_the_day;
    for (const UsagePoint& point : line.series) {
        if (point.on == on) of_the_day = point.total;
        if (point.on > on) return of_the_day.value_or(point.total);
    }
    return of_the_day.value_or(line.now);
}

}  // namespace

HostLine line_of(const AircraftState& aircraft) {
    HostLine out;
    out.series = aircraft.certain;
    out.is_whole = !aircraft.usage.empty();
    if (out.is_whole) out.now = aircraft.usage.back().total;
    out.landings = aircraft.landings;
    out.starts = aircraft.starts;
    return out;
}

HostLine line_of(const PartState& part) {
    HostLine out;
    out.is_part = true;
    out.is_whole = part.flown_is_whole && !part.flown.empty();
    out.is_estimated = std::any_of(part.spells.begin(), part.spells.end(), [](const auto& spell) {
        return spell.from_estimated || spell.to_estimated;
    });
    out.series = part.flown;
    if (out.is_whole) out.now = part.flown.back().total;
    out.landings = part.landings;
    out.starts = part.starts;
    out.offsets = part.offsets;
    out.is_disputed = !part.questions.empty();
    for (const PartSpell& spell : part.spells) {
        const bool is_exact = !spell.from_estimated && !spell.to_estimated && !spell.host_is_part;
        if (is_exact && spell.from_total && spell.gained && spell.count)
            out.stretches.push_back({spell.host, *spell.from_total, *spell.gained, *spell.count});
    }
    return out;
}

HostTotal least_total(const HostLine& line,
                      const std::optional<FlightTime>& recorded,
                      bool one_lacks_it,
                      Date on) {
    if (!line.is_whole) return {};
    const std::optional<FlightTime> count = count_of(line, recorded, on);
    if (count && !one_lacks_it) return {count, false};
    const std::optional<FlightTime> estimate = at_least(line, on);
    if (!estimate) return {};
    if (!count || *estimate < *count) return {estimate, true};
    return {count, false};
}

std::optional<FlightTime> count_on(const HostLine& line, base::Id aircraft, FlightTime total) {
    if (!line.is_whole || line.is_disputed) return std::nullopt;
    for (const HostStretch& stretch : line.stretches) {
        const bool is_then = stretch.aircraft == aircraft && total >= stretch.from &&
                             total <= stretch.from + stretch.gained;
        if (is_then) return stretch.count + (total - stretch.from);
    }
    return std::nullopt;
}

HostTotal greatest_total(const HostLine& line,
                         const std::optional<FlightTime>& recorded,
                         bool one_lacks_it,
                         Date on) {
    if (!line.is_whole) return {};
    const std::optional<FlightTime> count = count_of(line, recorded, on);
    if (count && !one_lacks_it) return {count, false};
    const FlightTime estimate = at_most(line, on);
    if (!count || estimate > *count) return {estimate, true};
    return {count, false};
}

std::optional<FlightTime> own_total(const HostLine& line,
                                    const std::optional<FlightTime>& count,
                                    Date on) {
    const std::optional<FlightTime> offset = offset_on(line, on);
    if (!count || !offset) return std::nullopt;
    return *count + *offset;
}

}  // namespace twoclocks::timeline
