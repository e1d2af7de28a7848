#include "engine/forecast/back_test.hpp"

#include <algorithm>

#include "engine/forecast/flying_ahead.hpp"
#include "engine/forecast/rate.hpp"

namespace twoclocks::forecast {

std::optional<BackTest> back_test(const timeline::AircraftState& state) {
    if (state.usage.empty()) return std::nullopt;
    const timeline::UsagePoint& last = state.usage.back();
    const base::Date year_before = base::add_days(last.on, -year_days);
    timeline::UsageSeries known;
    for (const timeline::UsagePoint& point : state.usage) {
        if (point.on <= year_before) known.push_back(point);
    }
    if (known.empty()) return std::nullopt;
    BackTest out;
    out.asked_on = known.back().on;
    out.came_on = last.on;
    out.flown = last.total - known.back().total;
    if (out.flown.seconds <= 0) return std::nullopt;
    timeline::AircraftState then;
    then.usage = then.certain = std::move(known);
    for (const timeline::Spell& spell : state.spells) {
        if (spell.from <= out.asked_on) then.spells.push_back(spell);
    }
    const FlyingAhead ahead = flying_ahead(then);
    if (ahead.basis == RateBasis::unknown) return std::nullopt;
    const auto when = [&](const HoursCurve& curve) {
        return day_when(curve, 0, static_cast<double>(out.flown.seconds));
    };
    const std::int32_t came = base::days_between(out.asked_on, out.came_on);
    const auto early = when(ahead.early);
    const auto late = when(ahead.late);
    out.late_held = !late || came <= *late;
    out.inside = early && *early <= came && out.late_held;
    const auto likely = when(ahead.likely);
    if (!likely) return out;
    out.said = base::add_days(out.asked_on, *likely);
    out.days_off = *likely - came;
    return out;
}

}  // namespace twoclocks::forecast
