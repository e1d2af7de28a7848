// What happens to an aircraft, and wear, against sources from outside. [S] was read in the source
// named, [T] is common practice without a source.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/happened.hpp"

#include <array>
#include <cmath>

#include "engine/forecast/wear_trend.hpp"
#include "engine/views/assess.hpp"

using namespace twoclocks;
using support::day;
using support::Happened;

// [T] After a hard landing, an overspeed, an overtemperature, an overtorque, a sudden stoppage,
// unusual vibration or a lightning strike a conditional inspection is due before the next flight.
TEST_CASE("every kind of event asks for an inspection before the next flight",
          "[outside][events]") {
    for (const facts::EventKind kind : {facts::EventKind::hard_landing,
                                        facts::EventKind::overspeed,
                                        facts::EventKind::overtemperature,
                                        facts::EventKind::overtorque,
                                        facts::EventKind::sudden_stoppage,
                                        facts::EventKind::vibration,
                                        facts::EventKind::lightning,
                                        facts::EventKind::other}) {
        Happened s;
        const facts::Fact event = s.happens("2024-05-03", {s.first}, kind);
        const auto state = [&] {
            return views::assess(timeline::replay(s.journal, s.first, s.today), s.today).overall;
        };
        CHECK(state() == views::State::before_next_flight);
        s.sign(event.id, "2024-05-04", {s.first});
        CHECK(state() == views::State::unknown);  // it has no limits: nothing else is known of it
    }
}

// [T] A part keeps its history when it moves: the next aircraft has what happened to it before.
TEST_CASE("a part that was never looked at stops the next aircraft it is fitted to",
          "[outside][events]") {
    Happened s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const facts::Fact event =
        s.happens("2024-05-03", {s.first, s.gearbox.id}, facts::EventKind::overtorque);
    s.remove(s.gearbox, s.first, "2024-05-04", 11'400);
    s.fit(s.gearbox, s.second, "2024-05-05", 6'000);
    s.sign(event.id, "2024-05-06", {s.first});
    CHECK(s.stops(s.first).empty());
    CHECK(s.stops(s.second) == "Main gearbox 7*");
}

namespace {

/// The day a straight line through two measurements meets the limit, by ratio of long doubles: the
/// closed form of interpolation, not our code.
[[nodiscard]] std::int32_t day_by_ratio(
    std::int32_t first_day, double first, std::int32_t last_day, double last, double limit) {
    const double pace = (last - first) / (last_day - first_day);
    return last_day + static_cast<std::int32_t>(std::floor((limit - last) / pace + 1e-9));
}

}  // namespace

// [S] NIST StRD Norris: least squares through 36 certified points has slope 1.00211681802045 and
// intercept -0.262323073774029. On points of that certified line a trend through two of them must
// follow it; the line of least squares through two points is the line through them.
TEST_CASE("points of a certified line are followed to where that line meets the limit",
          "[outside][wear]") {
    constexpr double slope = 1.00211681802045;
    constexpr double intercept = -0.262323073774029;
    const auto at = [&](std::int32_t x) {
        return static_cast<std::int32_t>(std::lround(1000 * (intercept + slope * x)));
    };
    for (const std::int32_t gap : {10, 100, 337}) {
        for (const std::int32_t limit_x : {400, 500, 901}) {
            CAPTURE(gap, limit_x);
            const std::int32_t now = gap + 1;
            timeline::WearState wear;
            wear.points = {{base::add_days(support::hand_today, -gap),
                            at(1),
                            "mm",
                            std::nullopt,
                            support::id_of(5),
                            timeline::Standing::settled},
                           {support::hand_today,
                            at(now),
                            "mm",
                            std::nullopt,
                            support::id_of(6),
                            timeline::Standing::settled}};
            wear.last = {wear.points.back()};
            wear.bounds = {{support::hand_today,
                            {at(limit_x), "mm", facts::WearSense::at_most, "NIST", {}},
                            support::id_of(7),
                            timeline::Standing::settled}};
            const timeline::AircraftState state = support::hand_state();
            const auto trend = forecast::wear_trend(
                wear, state, forecast::flying_ahead(state), support::hand_today);
            REQUIRE(trend.likely.has_value());
            const std::int32_t days = base::days_between(support::hand_today, *trend.likely);
            CHECK(days == day_by_ratio(1, at(1), now, at(now), at(limit_x)) - now);
            // Values are kept to a thousandth: over the gap that moves the day by one at most.
            CHECK(std::abs(days - (limit_x - now)) <= 1);
        }
    }
}
