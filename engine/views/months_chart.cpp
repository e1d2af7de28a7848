#include "engine/views/months_chart.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/permille.hpp"
#include "engine/base/region.hpp"
#include "engine/forecast/months.hpp"
#include "engine/forecast/projection.hpp"

namespace twoclocks::views {
namespace {

using base::FlightTime;
using base::Message;
using base::Word;

constexpr std::int32_t months_back = 24;
constexpr std::int32_t months_ahead = 12;
constexpr std::int32_t months_a_year = 12;

struct Month {
    std::int32_t month{0};
    FlightTime hours;
    bool planned{false};
};

/// What was flown; the last month may be read to a day in it.
[[nodiscard]] std::vector<Month> flown(const timeline::AircraftState& state) {
    std::vector<Month> out;
    for (const forecast::MonthFlown& one : forecast::monthly_hours(state.usage, state.spells))
        out.push_back({one.month, one.flown, false});
    if (out.size() > months_back) out.erase(out.begin(), out.end() - months_back);
    return out;
}

/// Expected months after those flown; what is left of the month of the last reading is added to
/// what was flown of it, and then the bar is no record.
void add_expected(const Assessed& aircraft, std::vector<Month>& months) {
    const forecast::FlyingAhead& ahead = aircraft.ahead;
    base::Date from = aircraft.state.usage.back().on;
    for (std::int32_t count = 0; count < months_ahead; ++count) {
        const base::Date first = base::add_days(from, 1);
        const base::Date end = base::add_days(first, forecast::days_in_month_from(first) - 1);
        const FlightTime hours = forecast::totals_to_come(aircraft.state, ahead, end).likely -
                                 forecast::totals_to_come(aircraft.state, ahead, from).likely;
        const std::int32_t month = forecast::month_of(first);
        if (months.empty() || months.back().month != month) months.push_back({month, {}, true});
        months.back().planned = true;
        months.back().hours = months.back().hours + hours;
        from = end;
    }
}

/// Twice a year is as often as words fit under the bars.
[[nodiscard]] Message label_of(std::int32_t month) {
    constexpr std::int32_t first_year = 1970;
    constexpr std::int32_t july = 6;
    const std::int32_t season = forecast::season_of(month);
    if (season == 0) {
        const std::int32_t year = first_year + month / months_a_year;
        return {Word::record_of, {base::text_arg(std::to_string(year))}};
    }
    return {season == july ? base::month_word(july) : Word::blank, {}};
}

}  // namespace

std::optional<ChartView> months_chart(const Assessed& aircraft) {
    const timeline::AircraftState& state = aircraft.state;
    if (state.usage.empty()) return std::nullopt;
    std::vector<Month> months = flown(state);
    if (aircraft.ahead.basis != forecast::RateBasis::unknown) {
        add_expected(aircraft, months);
    } else if (!months.empty() && forecast::days_in_month_from(state.usage.back().on) > 1) {
        months.pop_back();  // a part of a month would look like a quiet one
    }
    if (months.empty()) return std::nullopt;
    const auto greatest =
        std::max_element(months.begin(), months.end(), [](const Month& one, const Month& other) {
            return one.hours < other.hours;
        });
    const std::int64_t most = std::max<std::int64_t>(1, greatest->hours.seconds);
    ChartView out;
    out.title = {Word::chart_months, {}};
    out.greatest = {Word::chart_greatest, {base::hours_used_arg(greatest->hours)}};
    out.edge = Edge::hours;
    for (const Month& one : months) {
        out.bars.push_back(
            {label_of(one.month),
             static_cast<std::int32_t>(one.hours.seconds * base::whole_permille / most),
             one.planned});
    }
    const auto expected =
        std::count_if(months.begin(), months.end(), [](const Month& one) { return one.planned; });
    out.spoken = {Word::chart_months_spoken,
                  {base::whole_arg(static_cast<std::int64_t>(months.size()) - expected),
                   base::whole_arg(expected),
                   base::hours_used_arg(greatest->hours),
                   base::word_arg(base::month_word(
                       static_cast<std::size_t>(forecast::season_of(greatest->month))))}};
    return out;
}

}  // namespace twoclocks::views
