#include "engine/forecast/hours_first.hpp"

#include <algorithm>

namespace twoclocks::forecast {
namespace {

using facts::Clock;
using limits::ClockDue;

/// The clock of a kind that the item waits for.
[[nodiscard]] const ClockDue* clock_that_counts(const limits::ItemDue& item, Clock kind) {
    const bool later = item.combine == facts::Combine::later;
    const ClockDue* out = nullptr;
    for (const ClockDue& clock : item.clocks) {
        if (clock.clock != kind) continue;
        const bool less =
            out == nullptr || clock.left < out->left || clock.days_left < out->days_left;
        if (out == nullptr || less != later) out = &clock;
    }
    return out;
}

}  // namespace

std::optional<std::int32_t> hours_first_permille(const limits::ItemDue& item,
                                                 const timeline::AircraftState& state,
                                                 const FlyingAhead& ahead) {
    constexpr std::int32_t all = 1000;
    const ClockDue* hours = clock_that_counts(item, Clock::hours);
    const ClockDue* calendar = clock_that_counts(item, Clock::calendar);
    if (item.complied || item.asleep || (hours == nullptr && calendar == nullptr))
        return std::nullopt;
    if (hours == nullptr) return calendar->known ? std::optional{0} : std::nullopt;
    if (!hours->known || ahead.basis == RateBasis::unknown) return std::nullopt;
    if (calendar == nullptr) return all;
    if (!calendar->known) return std::nullopt;
    const bool later = item.combine == facts::Combine::later;
    const timeline::UsagePoint& last = state.usage.back();
    const std::int32_t day = base::days_between(last.on, calendar->due_on);
    const base::FlightTime left = met_at(*hours, state) - last.total;
    const std::vector<double> flown =
        flown_on_paths(ahead.model, days_ahead(ahead.model, last.on, state.spells), day);
    const auto met = std::count_if(flown.begin(), flown.end(), [&](double seconds) {
        return seconds >= static_cast<double>(left.seconds);
    });
    const auto permille =
        static_cast<std::int32_t>(met * all / static_cast<std::ptrdiff_t>(flown.size()));
    return later ? all - permille : permille;
}

}  // namespace twoclocks::forecast
