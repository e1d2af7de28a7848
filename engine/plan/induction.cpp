#include "engine/plan/induction.hpp"

#include <algorithm>

#include "engine/plan/moment.hpp"

namespace twoclocks::plan {
namespace {

constexpr double days_a_month = 365.0 / 12.0;
constexpr std::int32_t days_past_the_limit = 56;
constexpr std::int32_t most_looked_at = 200;

/// The days of a way that cost something if it is to go in on a day.
struct Way {
    double standing{0};
    double given_up{0};
};

[[nodiscard]] Way way_of(double limit, double ready, double day) {
    const double in = std::max(day, ready);
    return {std::max(in - limit, 0.0), std::max(limit - in, 0.0)};
}

}  // namespace

InductionDay induction_on(const Draws& draws,
                          const InductionCosts& costs,
                          const LifeLeft& left,
                          std::int32_t day) {
    double standing = 0;
    double hours = 0;
    double months = 0;
    double early = 0;
    for (std::size_t place = 0; place < draws.limits.size(); ++place) {
        const auto limit = static_cast<double>(draws.limits[place]);
        const auto ready = static_cast<double>(draws.readies[place]);
        const auto [stands, given_up] = way_of(limit, ready, day);
        standing += stands;
        early += given_up;
        const bool by_calendar = left.calendar_day && limit >= *left.calendar_day;
        if (by_calendar)
            months += given_up / days_a_month;
        else if (limit > 0)
            hours += left.hours * given_up / limit;
    }
    const auto ways = static_cast<double>(draws.limits.size());
    const auto mean = [&](double sum) { return whole_from(sum / ways); };
    return {day,
            mean(standing * costs.standing_day),
            mean(hours * costs.unused_hour + months * costs.unused_month),
            mean(early * costs.early_day)};
}

Induction cheapest_induction(const Draws& draws,
                             const InductionCosts& costs,
                             const LifeLeft& left) {
    const float latest = *std::max_element(draws.limits.begin(), draws.limits.end());
    const std::int32_t last =
        std::max(day_at(static_cast<double>(latest)), 0) + days_past_the_limit;
    const std::int32_t step = std::max(last / most_looked_at, 1);
    Induction out;
    for (std::int32_t day = 0; day <= last; day += step)
        out.spread.push_back(induction_on(draws, costs, left, day));
    out.best = *std::min_element(
        out.spread.begin(), out.spread.end(), [](const auto& one, const auto& other) {
            return one.cost() < other.cost();
        });
    const std::int32_t around = out.best.day;
    for (std::int32_t day = std::max(around - step, 0); day <= std::min(around + step, last);
         ++day) {
        const InductionDay one = induction_on(draws, costs, left, day);
        const bool is_sooner = one.cost() == out.best.cost() && one.day < out.best.day;
        if (one.cost() < out.best.cost() || is_sooner) out.best = one;
    }
    return out;
}

}  // namespace twoclocks::plan
