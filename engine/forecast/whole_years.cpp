#include "engine/forecast/whole_years.hpp"

#include <optional>

namespace twoclocks::forecast {
namespace {

/// A month as if it had been in service for all of it; nothing when it says nothing.
[[nodiscard]] std::optional<double> in_full(const MonthFlown& month) {
    const std::int32_t served = month.covered_days - month.out_days;
    if (served < fewest_service_days) return std::nullopt;
    return static_cast<double>(month.flown.seconds) * month.covered_days / served;
}

/// Nothing when none of its months says anything.
[[nodiscard]] std::optional<Year> year_from(const MonthFlown* first) {
    Year out;
    out.first_month = first->month;
    double sum = 0;
    std::int32_t said = 0;
    for (std::size_t place = 0; place < months_a_year; ++place) {
        if (const auto seconds = in_full(first[place])) {
            sum += *seconds;
            ++said;
        }
    }
    if (said == 0) return std::nullopt;
    for (std::size_t place = 0; place < months_a_year; ++place) {
        out.seconds[place] = in_full(first[place]).value_or(sum / said);
        out.all += out.seconds[place];
    }
    return out;
}

}  // namespace

std::vector<Year> last_years(const std::vector<MonthFlown>& months) {
    std::vector<MonthFlown> whole;
    for (const MonthFlown& month : months) {
        if (month.whole()) whole.push_back(month);
    }
    std::vector<Year> out;
    std::size_t end = whole.size();
    while (end >= months_a_year && out.size() < most_years) {
        end -= months_a_year;
        const auto year = year_from(&whole[end]);
        if (!year) break;
        out.push_back(*year);
    }
    return out;
}

}  // namespace twoclocks::forecast
