#include "engine/forecast/back_test.hpp"

#include <algorithm>

#include "engine/forecast/flight_paths.hpp"
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
    std::vector<timeline::Spell> spells;
    for (const timeline::Spell& spell : state.spells) {
        if (spell.from <= out.asked_on) spells.push_back(spell);
    }
    FlyingModel model = flying_model(monthly_hours(known, spells), std::nullopt);
    if (model.pattern.basis == PatternBasis::none) return std::nullopt;
    const auto seed = static_cast<std::uint64_t>(out.flown.seconds);
    FlightPaths paths{{std::move(model), out.asked_on, std::move(spells), {out.flown}, seed}};
    (void)paths.draw(path_count);
    const DaysBy by = days_by(paths.days_to(0));
    const std::int32_t came = base::days_between(out.asked_on, out.came_on);
    out.inside = by.early <= came && came <= by.late;
    if (by.likely == never_days) return out;
    out.said = base::add_days(out.asked_on, by.likely);
    out.days_off = by.likely - came;
    return out;
}

}  // namespace twoclocks::forecast
