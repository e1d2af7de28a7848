#include "engine/forecast/chance.hpp"

#include <algorithm>

#include "engine/forecast/projection.hpp"

namespace twoclocks::forecast {
namespace {

using base::Date;
using facts::Clock;
using limits::ClockDue;
using limits::ItemDue;
using timeline::AircraftState;

[[nodiscard]] bool is_count(Clock clock) {
    return clock == Clock::landings || clock == Clock::starts;
}

/// The same aircraft with the same total draws the same paths, on every device.
[[nodiscard]] std::uint64_t seed_of(const AircraftState& state) {
    constexpr std::uint64_t odd = 0x9E37'79B9'7F4A'7C15U;
    std::uint64_t seed = state.id.high ^ (state.id.low * odd);
    if (state.usage.empty()) return seed;
    const timeline::UsagePoint& last = state.usage.back();
    seed = seed * odd + static_cast<std::uint64_t>(last.total.seconds);
    return seed * odd + static_cast<std::uint64_t>(last.on.day_number);
}

}  // namespace

ChanceWork::ChanceWork(const AircraftState& state, std::vector<ItemDue> items, Date today)
    : today_(today),
      from_(state.usage.empty() ? today : state.usage.back().on),
      model_(flying_model(monthly_hours(state.usage, state.spells), state.plan)),
      paths_(ask(state, items)) {}

PathsAsked ChanceWork::ask(const AircraftState& state, const std::vector<ItemDue>& items) {
    PathsAsked asked{model_, from_, state.spells, {}, seed_of(state)};
    const UsageRate rate = measure(state);
    const bool careful =
        !state.questions.empty() ||
        std::any_of(state.spells.begin(), state.spells.end(), [&](const timeline::Spell& spell) {
            return !spell.until || *spell.until > from_;
        });
    for (const ItemDue& item : items) {
        ItemAhead one;
        one.later = item.combine == facts::Combine::later;
        one.known = !item.complied && !item.asleep;
        bool any = false;
        for (const auto& [clocks, out] :
             {std::pair{&item.clocks, &one.clocks}, std::pair{&item.caps, &one.caps}}) {
            for (const ClockDue& clock : *clocks) {
                if (is_count(clock.clock)) continue;
                out->push_back(ahead(clock, state, asked));
                one.known = one.known && (out->back().known || item.passed());
                any = true;
            }
        }
        one.known = one.known && any;
        if (careful) one.not_after = project(item, state, rate, today_).early;
        items_.push_back(std::move(one));
    }
    return asked;
}

ChanceWork::ClockAhead ChanceWork::ahead(const ClockDue& clock,
                                         const AircraftState& state,
                                         PathsAsked& asked) const {
    ClockAhead out;
    out.by_hours = clock.clock == Clock::hours;
    out.known = clock.known;
    if (!out.by_hours) {
        out.on = clock.due_on;
        return out;
    }
    const bool passed = clock.known && clock.left.seconds <= 0;
    const bool flies = model_.pattern.basis != PatternBasis::none && !state.usage.empty();
    out.known = passed || (clock.known && flies);
    if (!out.known) return out;
    const base::FlightTime left =
        state.usage.empty() ? clock.left : met_at(clock, state) - state.usage.back().total;
    out.target = out.fast_target = asked.targets.size();
    asked.targets.push_back(left);
    if (clock.most_thousandths <= 1000) return out;
    out.fast_target = asked.targets.size();
    asked.targets.push_back({left.seconds * 1000 / clock.most_thousandths});
    return out;
}

ChanceWork::Met ChanceWork::met(const ClockAhead& clock, std::size_t path, bool fast) const {
    if (!clock.known) return {};
    if (!clock.by_hours) return {base::days_between(from_, clock.on), false};
    const std::int32_t days = paths_.days_to(fast ? clock.fast_target : clock.target)[path];
    // What is not used up by the last reading is not used up before today.
    const bool ahead = days > 0;
    return {ahead ? std::max(days, base::days_between(from_, today_)) : days, true};
}

ChanceWork::Met ChanceWork::met(const ItemAhead& item, std::size_t path, bool fast) const {
    std::optional<Met> out;
    for (const ClockAhead& clock : item.clocks) {
        const Met one = met(clock, path, fast);
        const bool takes = !out || (item.later ? one.days > out->days : one.days < out->days);
        if (takes) out = one;
    }
    for (const ClockAhead& cap : item.caps) {
        const Met one = met(cap, path, fast);
        if (!out || one.days < out->days) out = one;
    }
    return out.value_or(Met{});
}

std::optional<Date> ChanceWork::day(std::int32_t days) const {
    if (days == never_days) return std::nullopt;
    return base::add_days(from_, days);
}

std::vector<ItemChance> ChanceWork::chances() const {
    std::vector<ItemChance> out;
    const auto drawn = static_cast<std::size_t>(paths_.drawn());
    for (const ItemAhead& item : items_) {
        ItemChance one;
        one.known = item.known && drawn > 0;
        if (one.known) {
            std::vector<std::int32_t> days;
            std::vector<std::int32_t> fast;
            std::int64_t hours_first = 0;
            for (std::size_t path = 0; path < drawn; ++path) {
                const Met as_flown = met(item, path, false);
                days.push_back(as_flown.days);
                fast.push_back(met(item, path, true).days);
                hours_first += as_flown.by_hours && as_flown.days != never_days ? 1 : 0;
            }
            const DaysBy by = days_by(std::move(days));
            one.early = day(std::min(by.early, days_by(std::move(fast)).early));
            if (item.not_after && (!one.early || *item.not_after < *one.early))
                one.early = item.not_after;
            one.likely = day(by.likely);
            one.late = day(by.late);
            one.hours_first_permille =
                static_cast<std::int32_t>(hours_first * 1000 / static_cast<std::int64_t>(drawn));
        }
        out.push_back(one);
    }
    return out;
}

}  // namespace twoclocks::forecast
