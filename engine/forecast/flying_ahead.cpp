#include "engine/forecast/flying_ahead.hpp"

#include <algorithm>
#include <array>

#include "engine/forecast/months.hpp"
#include "engine/forecast/rate.hpp"

namespace twoclocks::forecast {
namespace {

using base::Date;
using timeline::AircraftState;
using timeline::UsagePoint;

constexpr std::size_t least_tenth = 1;
constexpr std::size_t greatest_tenth = 9;

/// The first day of a reading that may be the last: while records disagree an answer may leave any
/// of those after the last certain one.
[[nodiscard]] Date first_start(const AircraftState& state) {
    Date out = state.usage.back().on;
    for (const UsagePoint& point : state.usage) {
        if (may_be_last(state, point)) out = std::min(out, point.on);
    }
    return out;
}

/// Months after which the ways are looked at: near ones all, far ones as often as they bend.
[[nodiscard]] bool is_looked_at(std::size_t month) {
    const std::size_t count = month + 1;
    if (count <= 2 * 12) return true;
    return count <= 5 * 12 ? count % 3 == 0 : count % 6 == 0;
}

/// How far the ways have gone from what is expected, after one month.
struct Band {
    std::int32_t day{0};
    double most{1};    // of what is expected always in service
    double fewest{1};  // of what is expected in service as known
};

struct Expected {
    double always{0};
    double served{0};
};

struct MonthsExpected {
    std::array<Expected, months_ahead> of{};
    std::array<std::int32_t, months_ahead> end_day{};
};

[[nodiscard]] MonthsExpected expected_by_month(const std::vector<Run>& runs) {
    MonthsExpected out;
    for (const Run& run : runs) {
        const auto month = static_cast<std::size_t>(run.month);
        out.of[month].always += run.day_seconds * run.days;
        if (!run.out) out.of[month].served += run.day_seconds * run.days;
        out.end_day[month] = run.to_day;
    }
    return out;
}

[[nodiscard]] double share_of(double part, double whole) {
    return whole > 0 ? part / whole : 1;
}

[[nodiscard]] std::vector<Band> bands_of(const FlyingModel& model, const std::vector<Run>& runs) {
    const MonthsExpected expected = expected_by_month(runs);
    const bool waits =
        std::any_of(runs.begin(), runs.end(), [](const Run& run) { return run.out; });
    std::vector<std::vector<double>> always(months_ahead);
    std::vector<std::vector<double>> served(months_ahead);
    const FlightPaths paths{model};
    for (std::int32_t path = 0; path < path_count; ++path) {
        const Factors factors = paths.follow(path);
        Expected flown;
        for (std::size_t month = 0; month < months_ahead; ++month) {
            flown.always += expected.of[month].always * factors[month];
            flown.served += expected.of[month].served * factors[month];
            if (!is_looked_at(month)) continue;
            always[month].push_back(flown.always);
            if (waits) served[month].push_back(flown.served);
        }
    }
    std::vector<Band> out;
    Expected all;
    for (std::size_t month = 0; month < months_ahead; ++month) {
        all.always += expected.of[month].always;
        all.served += expected.of[month].served;
        if (!is_looked_at(month)) continue;
        const double fewest = tenth_of(waits ? served[month] : always[month], least_tenth);
        const double most = tenth_of(std::move(always[month]), greatest_tenth);
        out.push_back({expected.end_day[month],
                       std::max(1.0, share_of(most, all.always)),
                       std::min(1.0, share_of(fewest, all.served))});
    }
    return out;
}

/// The band on a day: straight between those looked at, before the first as on it.
[[nodiscard]] Band band_on(const std::vector<Band>& bands, std::int32_t day) {
    const auto next =
        std::find_if(bands.begin(), bands.end(), [&](const Band& band) { return band.day >= day; });
    if (next == bands.end()) return bands.back();
    if (next == bands.begin()) return *next;
    const Band& before = *(next - 1);
    const double part =
        static_cast<double>(day - before.day) / static_cast<double>(next->day - before.day);
    return {day,
            before.most + (next->most - before.most) * part,
            before.fewest + (next->fewest - before.fewest) * part};
}

/// After the last point as in the year before it.
void set_tail(HoursCurve& curve) {
    const HoursCurve::Point& last = curve.points.back();
    curve.tail = (last.seconds - flown_by(curve, last.day - year_days)) / year_days;
}

/// What is expected as measured goes on, always and as known.
struct Bounds {
    HoursCurve always;
    HoursCurve served;
};

[[nodiscard]] Bounds bounds_of(const std::vector<Run>& runs) {
    Bounds out;
    Expected flown;
    for (const Run& run : runs) {
        flown.always += run.day_seconds * run.days;
        if (!run.out) flown.served += run.day_seconds * run.days;
        out.always.add(run.to_day, flown.always);
        out.served.add(run.to_day, flown.served);
    }
    return out;
}

/// `bounds` are of what was measured, where a plan is the level of likely.
void draw_curves(const std::vector<Run>& runs,
                 const std::optional<Bounds>& bounds,
                 FlyingAhead& out) {
    const std::vector<Band> bands = bands_of(out.model, runs);
    Expected flown;
    for (const Run& run : runs) {
        flown.always += run.day_seconds * run.days;
        if (!run.out) flown.served += run.day_seconds * run.days;
        const Band band = band_on(bands, run.to_day);
        double most = flown.always * band.most;
        double fewest = flown.served * band.fewest;
        if (bounds) {
            most = std::max(most, flown_by(bounds->always, run.to_day));
            fewest = std::min(fewest, flown_by(bounds->served, run.to_day));
        }
        out.early.add(run.to_day, most);
        out.likely.add(run.to_day, flown.served);
        out.late.add(run.to_day, fewest);
    }
    for (HoursCurve* curve : {&out.early, &out.likely, &out.late})
        set_tail(*curve);
}

/// An even rate, flat where it is out of service.
[[nodiscard]] HoursCurve even_curve(const AircraftState& state, Date from, double rate) {
    HoursCurve out;
    out.tail = rate;
    double flown = 0;
    std::int32_t day = 0;
    std::vector<std::int32_t> changes;
    for (const timeline::Spell& spell : state.spells) {
        changes.push_back(base::days_between(from, spell.from) - 1);
        if (spell.until) changes.push_back(base::days_between(from, *spell.until) - 1);
    }
    std::sort(changes.begin(), changes.end());
    for (const std::int32_t change : changes) {
        if (change <= day) continue;
        const bool out_then = is_out(state.spells, base::add_days(from, day + 1));
        flown += out_then ? 0 : rate * (change - day);
        out.add(change, flown);
        day = change;
    }
    if (is_out(state.spells, base::add_days(from, day + 1))) out.tail = 0;
    return out;
}

}  // namespace

bool may_be_last(const AircraftState& state, const UsagePoint& point) {
    if (state.certain.empty()) return true;
    const UsagePoint& sure = state.certain.back();
    return point.on >= sure.on || point.total > sure.total;
}

FlyingAhead flying_ahead(const AircraftState& state) {
    FlyingAhead out;
    if (state.usage.empty()) return out;
    out.from = first_start(state);
    const FlyingModel measured = measured_model(state);
    out.model = planned_model(measured, state.plan);
    const bool is_measured = measured.pattern.basis != PatternBasis::none;
    if (out.model.pattern.basis == PatternBasis::none) return out;
    out.basis = !state.plan   ? RateBasis::measured
                : is_measured ? RateBasis::stated_and_measured
                              : RateBasis::stated;
    const bool disputed = state.plan && state.plan->disputed;
    constexpr double rounding = 1 + 1e-9;
    out.plan_gives_way = disputed && is_measured &&
                         out.model.pattern.year_seconds <= measured.pattern.year_seconds * rounding;
    std::optional<Bounds> bounds;
    if (state.plan && is_measured) bounds = bounds_of(days_ahead(measured, out.from, state.spells));
    draw_curves(days_ahead(out.model, out.from, state.spells), bounds, out);
    return out;
}

FlyingAhead even_ahead(const AircraftState& state, double least, double likely, double greatest) {
    FlyingAhead out;
    if (state.usage.empty()) return out;
    out.basis = RateBasis::stated;
    out.from = first_start(state);
    out.early.tail = greatest;
    out.likely = even_curve(state, out.from, likely);
    out.late = even_curve(state, out.from, least);
    return out;
}

std::optional<base::FlightTime> planned_since(const AircraftState& state) {
    if (!state.plan || state.usage.empty()) return std::nullopt;
    const Date from = state.plan->on;
    const std::int32_t days = base::days_between(from, state.usage.back().on);
    if (days < fewest_days) return std::nullopt;
    const FlyingModel model = planned_model(measured_model(state), state.plan);
    const Bounds planned = bounds_of(days_ahead(model, from, state.spells));
    return base::FlightTime{static_cast<std::int64_t>(flown_by(planned.served, days))};
}

base::FlightTime a_year(const FlyingAhead& ahead) {
    return a_year(ahead.model.pattern.year_seconds / days_a_year);
}

}  // namespace twoclocks::forecast
