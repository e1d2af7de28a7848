#include "engine/timeline/usage.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;
using base::Trouble;

constexpr std::int64_t seconds_per_day = 24 * base::seconds_per_hour;

/// A total before the series is made to never fall.
struct Sample {
    UsagePoint point;
    const facts::Fact* fact{nullptr};
    bool is_reading{false};
};

[[nodiscard]] const facts::Fact* head_of(const Record& record) { return record.heads.front().fact; }

[[nodiscard]] MeterState* find_meter(AircraftState& state, base::Id id) {
    const auto found = std::find_if(state.meters.begin(), state.meters.end(),
                                    [&](const MeterState& meter) { return meter.id == id; });
    return found == state.meters.end() ? nullptr : &*found;
}

void fold_meters(const std::vector<Record>& records, AircraftState& state, std::vector<Sample>& samples) {
    for (const Record& record : records) {
        const auto* meter = std::get_if<facts::MeterFitted>(&record.in_use.fields);
        if (record.withdrawn || meter == nullptr) continue;
        state.meters.push_back({record.root, meter->name, meter->drive, record.in_use.on, meter->reads,
                                meter->total, std::nullopt, std::nullopt});
        samples.push_back({{record.in_use.on, meter->total, record.root}, head_of(record), false});
    }
    std::stable_sort(state.meters.begin(), state.meters.end(), [](const auto& left, const auto& right) {
        return left.fitted_on < right.fitted_on;
    });
}

void note_last(MeterState& meter, Date on, FlightTime reads) {
    if (meter.last_on && (*meter.last_on > on || (*meter.last_on == on && *meter.last_reads > reads))) return;
    meter.last_on = on;
    meter.last_reads = reads;
}

template <class T>
void raise_to(std::optional<T>& into, const std::optional<T>& value) {
    if (value && (!into || *value > *into)) into = value;
}

void fold_reading(const Record& record, const facts::Reading& reading, Date today, AircraftState& state,
                  std::vector<Sample>& samples) {
    const facts::Body& body = record.in_use;
    MeterState* meter = body.about.size() > 1 ? find_meter(state, body.about[1]) : nullptr;
    raise_to(state.landings, reading.landings);
    raise_to(state.starts, reading.starts);
    if (meter == nullptr) {
        state.cautions.push_back({Trouble::reading_without_meter, {base::day_arg(body.on)}, record.root});
        return;
    }
    if (body.on < meter->fitted_on) {
        state.cautions.push_back(
            {Trouble::reading_before_meter, {base::day_arg(body.on), base::day_arg(meter->fitted_on)}, record.root});
    }
    if (body.on > today) {
        state.cautions.push_back({Trouble::reading_ahead, {base::day_arg(body.on)}, record.root});
    }
    note_last(*meter, body.on, reading.reads);
    const FlightTime total = reading.reads - meter->reads + meter->total;
    samples.push_back({{body.on, total, record.root}, head_of(record), true});
}

void fold_samples(const std::vector<Record>& records, Date today, AircraftState& state,
                  std::vector<Sample>& samples) {
    for (const Record& record : records) {
        if (record.withdrawn) continue;
        if (const auto* reading = std::get_if<facts::Reading>(&record.in_use.fields)) {
            fold_reading(record, *reading, today, state, samples);
        }
        const auto* work = std::get_if<facts::WorkDone>(&record.in_use.fields);
        if (work != nullptr && work->total && record.in_use.on <= today) {
            samples.push_back({{record.in_use.on, *work->total, record.root}, head_of(record), false});
            raise_to(state.landings, work->landings);
            raise_to(state.starts, work->starts);
        }
    }
    std::stable_sort(samples.begin(), samples.end(), [](const Sample& left, const Sample& right) {
        if (left.point.on != right.point.on) return left.point.on < right.point.on;
        if (left.point.total != right.point.total) return left.point.total < right.point.total;
        return comes_before(*left.fact, *right.fact);
    });
}

/// Two samples that cannot both be right: a question between readings, else a caution.
void disagree(QuestionKind kind, const Sample& earlier, const Sample& later, AircraftState& state) {
    if (earlier.is_reading && later.is_reading) {
        state.questions.push_back({kind, {}, {earlier.fact, later.fact}, std::nullopt, false});
        return;
    }
    const Trouble code = kind == QuestionKind::falling ? Trouble::total_falls : Trouble::total_jumps;
    state.cautions.push_back({code,
                              {base::hours_used_arg(earlier.point.total), base::day_arg(earlier.point.on),
                               base::hours_used_arg(later.point.total), base::day_arg(later.point.on)},
                              later.point.fact});
}

[[nodiscard]] bool too_fast(const Sample& from, const Sample& to) {
    const std::int64_t days = base::days_between(from.point.on, to.point.on) + 1;
    return (to.point.total - from.point.total).seconds > days * seconds_per_day;
}

/// Makes the series that never falls: the highest total so far stands.
void fold_series(const std::vector<Sample>& samples, AircraftState& state) {
    const Sample* highest = nullptr;
    const Sample* previous = nullptr;
    for (const Sample& sample : samples) {
        if (highest != nullptr && sample.point.total < highest->point.total) {
            disagree(QuestionKind::falling, *highest, sample, state);
        } else if (previous != nullptr && too_fast(*previous, sample)) {
            disagree(QuestionKind::too_fast, *previous, sample, state);
        }
        if (highest == nullptr || sample.point.total >= highest->point.total) highest = &sample;
        previous = &sample;
        state.usage.push_back({sample.point.on, highest->point.total, highest->point.fact});
    }
}

}  // namespace

void fold_usage(const std::vector<Record>& records, Date today, AircraftState& state) {
    std::vector<Sample> samples;
    fold_meters(records, state, samples);
    fold_samples(records, today, state, samples);
    fold_series(samples, state);
}

}  // namespace twoclocks::timeline
