#include "engine/forecast/days_ahead.hpp"

#include <algorithm>

namespace twoclocks::forecast {
namespace {

using base::Date;
using timeline::Spell;

constexpr double most_seconds_a_day = 86'400;

/// The last day before a spell begins or ends, no later than `last`.
[[nodiscard]] Date until_change(const std::vector<Spell>& spells, Date first, Date last) {
    Date out = last;
    for (const Spell& spell : spells) {
        if (spell.from > first) out = std::min(out, base::add_days(spell.from, -1));
        if (spell.until && *spell.until > first)
            out = std::min(out, base::add_days(*spell.until, -1));
    }
    return out;
}

}  // namespace

std::vector<Run> days_ahead(const FlyingModel& model, Date from, const std::vector<Spell>& spells) {
    std::vector<Run> out;
    Date first = base::add_days(from, 1);
    for (std::int32_t month = 0; month < months_ahead; ++month) {
        const std::int32_t ahead = days_in_month_from(first);
        const Date last = base::add_days(first, ahead - 1);
        const std::int32_t month_days = base::civil(last).day;
        const double even = expected_in(model.pattern, month_of(first)) / month_days;
        while (first <= last) {
            const std::int32_t so_far = base::days_between(from, first) - 1;
            const bool by_day = model.week && so_far < week_counts_days;
            const Date end = by_day ? first : until_change(spells, first, last);
            const double weight =
                by_day ? (*model.week)[static_cast<std::size_t>(weekday_of(first))] : 1;
            const std::int32_t days = base::days_between(first, end) + 1;
            out.push_back({so_far + days,
                           days,
                           std::clamp(even * weight, 0.0, most_seconds_a_day),
                           is_out(spells, first),
                           month});
            first = base::add_days(end, 1);
        }
    }
    return out;
}

}  // namespace twoclocks::forecast
