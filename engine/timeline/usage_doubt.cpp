#include <algorithm>

#include "engine/base/order.hpp"
#include "engine/timeline/safer_values.hpp"
#include "engine/timeline/usage_sample.hpp"

namespace twoclocks::timeline {
namespace {

using base::FlightTime;

constexpr std::int64_t seconds_per_day = 24 * base::seconds_per_hour;

/// Seconds of total above a line that climbs 24 hours a day.
[[nodiscard]] std::int64_t above_the_clock(const Sample& sample) {
    return sample.point.total.seconds - sample.uncounted.seconds -
           sample.point.on.day_number * seconds_per_day;
}

/// The most and the least that the readings on one side of another come to.
struct Extremes {
    std::optional<FlightTime> total;
    std::optional<std::int64_t> above;
};

}  // namespace

bool too_fast(const Sample& from, const Sample& to) {
    const std::int64_t days = base::days_between(from.point.on, to.point.on) + 1;
    const FlightTime before = from.point.on == to.point.on ? from.uncounted_before : from.uncounted;
    const FlightTime counted = to.point.total - from.point.total - (to.uncounted - before);
    return counted.seconds > days * seconds_per_day;
}

void doubt_contradicted(std::vector<Sample>& samples, std::vector<Sample>& versions) {
    std::vector<Sample*> all;
    for (std::vector<Sample>* const list : {&samples, &versions}) {
        for (Sample& sample : *list) {
            if (sample.is_reading) all.push_back(&sample);
        }
    }
    base::sort_stably(all, [](const Sample* left, const Sample* right) {
        if (left->point.on != right->point.on) return left->point.on < right->point.on;
        return left->point.total < right->point.total;
    });
    Extremes before;
    for (Sample* const sample : all) {
        const std::int64_t above = above_the_clock(*sample);
        const bool falls = before.total && sample->point.total < *before.total;
        if (falls || (before.above && above - *before.above > seconds_per_day)) {
            sample->is_certain = false;
        }
        before.total = greatest(before.total, std::optional{sample->point.total});
        before.above = std::min(before.above.value_or(above), above);
    }
    Extremes after;
    for (auto place = all.rbegin(); place != all.rend(); ++place) {
        Sample* const sample = *place;
        const std::int64_t above = above_the_clock(*sample);
        const bool falls = after.total && sample->point.total > *after.total;
        if (falls || (after.above && *after.above - above > seconds_per_day)) {
            sample->is_certain = false;
        }
        after.total = std::min(after.total.value_or(sample->point.total), sample->point.total);
        after.above = greatest(after.above, std::optional{above});
    }
}

}  // namespace twoclocks::timeline
