#include "engine/forecast/flight_paths.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/base/order.hpp"
#include "engine/base/real.hpp"

namespace twoclocks::forecast {
namespace {

using base::Date;

constexpr std::size_t months_in_a_row = 3;
constexpr double two_pi = 6.28318530717958647692;

}  // namespace

FlightPaths::FlightPaths(PathsAsked asked)
    : asked_(std::move(asked)),
      months_(months_ahead()),
      met_(asked_.targets.size()),
      random_(asked_.seed) {
    for (std::size_t place = 0; place < asked_.targets.size(); ++place)
        by_hours_.push_back(place);
    base::sort_stably(by_hours_, [&](std::size_t left, std::size_t right) {
        return asked_.targets[left] < asked_.targets[right];
    });
}

std::vector<FlightPaths::MonthAhead> FlightPaths::months_ahead() const {
    std::vector<MonthAhead> out;
    std::int32_t day = 1;
    for (std::int32_t count = 0; count < path_months; ++count) {
        const Date first = base::add_days(asked_.from, day);
        const std::int32_t month = month_of(first);
        const std::int32_t ahead = days_in_month_from(first);
        MonthAhead one;
        one.from_day = day;
        one.days = ahead;
        for (std::int32_t place = 0; place < ahead; ++place) {
            if (!is_out(asked_.spells, base::add_days(first, place))) one.served.push_back(place);
        }
        const std::int32_t before = base::civil(first).day - 1;
        one.expected = expected_in(asked_.model.pattern, month) *
                       static_cast<double>(one.served.size()) / (before + ahead);
        out.push_back(std::move(one));
        day += ahead;
    }
    return out;
}

bool FlightPaths::draw(std::int32_t count) {
    const std::int32_t end = std::min(path_count, drawn_ + count);
    for (; drawn_ < end; ++drawn_)
        draw_path();
    return drawn_ == path_count;
}

void FlightPaths::draw_path() {
    for (std::vector<std::int32_t>& days : met_)
        days.push_back(never_days);
    const double month_spread = asked_.model.year_spread / std::sqrt(12.0);
    double level = asked_.model.level_spread * normal();
    double total = 0;
    std::size_t next = 0;
    shares_.clear();
    const auto here = static_cast<std::size_t>(drawn_);
    const auto target = [&] {
        return static_cast<double>(asked_.targets[by_hours_[next]].seconds);
    };
    while (next < by_hours_.size() && target() <= 0)
        met_[by_hours_[next++]][here] = 0;
    for (const MonthAhead& month : months_) {
        if (next == by_hours_.size()) return;
        if (shares_.empty()) draw_shares();
        level += month_spread * normal();
        const double flown = month.expected * shares_.back() * base::exp_fixed(level);
        shares_.pop_back();
        const auto days = static_cast<double>(month.served.size());
        while (next < by_hours_.size() && target() <= total + flown) {
            // Of the days that it takes the last is a part of one: the day before.
            const double part = (target() - total) * days / flown;
            const auto whole = std::min(static_cast<std::size_t>(part), month.served.size() - 1);
            met_[by_hours_[next++]][here] = month.from_day + month.served[whole] - 1;
        }
        total += flown;
    }
}

/// Three months in a row as they came; the last of them is taken first from the back.
void FlightPaths::draw_shares() {
    const std::vector<double>& ratios = asked_.model.ratios;
    const std::size_t row = std::min(months_in_a_row, ratios.size());
    const std::size_t from =
        static_cast<std::size_t>(uniform() * static_cast<double>(ratios.size()));
    for (std::size_t place = row; place > 0; --place)
        shares_.push_back(ratios[(from + place - 1) % ratios.size()]);
}

/// From 0, not included, to 1.
double FlightPaths::uniform() {
    constexpr double step = 1.0 / 9'007'199'254'740'992.0;  // 2 to the 53
    return (static_cast<double>(random_() >> 11U) + 0.5) * step;
}

double FlightPaths::normal() {
    const double radius = std::sqrt(-2 * base::log_fixed(uniform()));
    return radius * base::cos_fixed(two_pi * uniform());
}

DaysBy days_by(std::vector<std::int32_t> days) {
    DaysBy out;
    if (days.empty()) return out;
    std::sort(days.begin(), days.end());
    const auto at = [&](std::size_t tenths) { return days[(days.size() - 1) * tenths / 10]; };
    out.early = at(1);
    out.likely = at(5);
    out.late = at(9);
    return out;
}

}  // namespace twoclocks::forecast
