#include "engine/forecast/months.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::forecast {
namespace {

using base::Date;
using timeline::Spell;
using timeline::UsagePoint;

constexpr std::int32_t year_months = 12;

/// Days after one reading up to the next.
[[nodiscard]] std::vector<Date> days_between_readings(const UsagePoint& from,
                                                      const UsagePoint& to) {
    std::vector<Date> out;
    for (Date on = base::add_days(from.on, 1); on <= to.on; on = base::add_days(on, 1))
        out.push_back(on);
    return out;
}

/// Days of the month that a day lies in.
[[nodiscard]] std::int32_t whole_month(Date on) {
    return base::civil(on).day - 1 + days_in_month_from(on);
}

/// The months while they are filled, day by day.
class MonthsFilled {
  public:
    void add(Date on, std::int64_t seconds, bool out_of_service) {
        const std::int32_t month = month_of(on);
        if (months_.empty() || months_.back().month != month)
            months_.push_back({month, {}, whole_month(on), 0, 0});
        MonthFlown& here = months_.back();
        here.flown = here.flown + base::FlightTime{seconds};
        ++here.covered_days;
        if (out_of_service) ++here.out_days;
    }

    /// More on the last day; before any day there is nothing that it could be part of.
    void add_flown(base::FlightTime more) {
        if (!months_.empty()) months_.back().flown = months_.back().flown + more;
    }

    [[nodiscard]] std::vector<MonthFlown> take() { return std::move(months_); }

  private:
    std::vector<MonthFlown> months_;
};

void spread(const UsagePoint& from,
            const UsagePoint& to,
            const std::vector<Spell>& spells,
            MonthsFilled& months) {
    const std::vector<Date> days = days_between_readings(from, to);
    std::int64_t in_service = 0;
    for (const Date on : days)
        in_service += is_out(spells, on) ? 0 : 1;
    const std::int64_t flown = (to.total - from.total).seconds;
    const bool on_all = in_service == 0;
    const std::int64_t shares = on_all ? static_cast<std::int64_t>(days.size()) : in_service;
    std::int64_t taken = 0;
    for (const Date on : days) {
        const bool out = is_out(spells, on);
        const std::int64_t before = flown * taken / shares;
        if (on_all || !out) ++taken;
        months.add(on, flown * taken / shares - before, out);
    }
}

}  // namespace

std::int32_t days_in_month_from(Date on) {
    constexpr std::int32_t into_the_next = 31;
    const Date first = base::add_days(on, 1 - base::civil(on).day);
    const Date later = base::add_days(first, into_the_next);
    return base::days_between(on, later) - base::civil(later).day + 1;
}

bool is_out(const std::vector<Spell>& spells, Date on) {
    return std::any_of(spells.begin(), spells.end(), [&](const Spell& spell) {
        return spell.from <= on && (!spell.until || on < *spell.until);
    });
}

std::int32_t month_of(Date on) {
    constexpr std::int32_t first_year = 1970;
    const base::CivilDay civil = base::civil(on);
    return (civil.year - first_year) * year_months + civil.month - 1;
}

std::int32_t season_of(std::int32_t month) {
    return ((month % year_months) + year_months) % year_months;
}

std::vector<MonthFlown> monthly_hours(const timeline::UsageSeries& usage,
                                      const std::vector<Spell>& spells) {
    MonthsFilled months;
    for (std::size_t place = 1; place < usage.size(); ++place) {
        // Several readings of one day: what was flown between them was flown on that day.
        if (usage[place].on > usage[place - 1].on)
            spread(usage[place - 1], usage[place], spells, months);
        else
            months.add_flown(usage[place].total - usage[place - 1].total);
    }
    return months.take();
}

}  // namespace twoclocks::forecast
