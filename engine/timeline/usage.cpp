#include "engine/timeline/usage.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/timeline/question.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;
using base::Trouble;

constexpr std::int64_t seconds_per_day = 24 * base::seconds_per_hour;

/// A total before the series is made to never fall.
struct Sample {
    UsagePoint point;
    const Record* record{nullptr};
    bool is_reading{false};
    bool is_certain{true};
};

[[nodiscard]] const facts::Fact& head_of(const Sample& sample) {
    return *sample.record->heads.front().fact;
}

[[nodiscard]] MeterState* find_meter(AircraftState& state, base::Id id) {
    const auto found = std::find_if(state.meters.begin(),
                                    state.meters.end(),
                                    [&](const MeterState& meter) { return meter.id == id; });
    return found == state.meters.end() ? nullptr : &*found;
}

/// Fills the meters; `open` takes those that records disagree about.
void fold_meters(const std::vector<Record>& records,
                 AircraftState& state,
                 std::vector<Sample>& samples,
                 std::vector<base::Id>& open) {
    for (const Record& record : records) {
        const auto* meter = std::get_if<facts::MeterFitted>(&record.in_use.fields);
        if (record.withdrawn || meter == nullptr) continue;
        state.meters.push_back({record.root,
                                meter->name,
                                meter->drive,
                                record.in_use.on,
                                meter->reads,
                                meter->total,
                                std::nullopt,
                                std::nullopt});
        if (record.open) open.push_back(record.root);
        samples.push_back(
            {{record.in_use.on, meter->total, record.root}, &record, false, !record.open});
        state.recorded.push_back(samples.back().point);
    }
    base::sort_stably(state.meters, [](const auto& left, const auto& right) {
        return left.fitted_on < right.fitted_on;
    });
}

void note_last(MeterState& meter, Date on, FlightTime reads) {
    if (meter.last_on &&
        (*meter.last_on > on || (*meter.last_on == on && *meter.last_reads > reads)))
        return;
    meter.last_on = on;
    meter.last_reads = reads;
}

template <class T>
void raise_to(std::optional<T>& into, const std::optional<T>& value) {
    if (value && (!into || *value > *into)) into = value;
}

void fold_reading(const Record& record,
                  const facts::Reading& reading,
                  Date today,
                  AircraftState& state,
                  std::vector<Sample>& samples,
                  std::vector<Sample>& versions,
                  const std::vector<base::Id>& open) {
    const facts::Body& body = record.in_use;
    MeterState* meter = body.about.size() > 1 ? find_meter(state, body.about[1]) : nullptr;
    raise_to(state.landings, reading.landings);
    raise_to(state.starts, reading.starts);
    if (meter == nullptr) {
        state.cautions.push_back(
            {Trouble::reading_without_meter, {base::day_arg(body.on)}, record.root});
        return;
    }
    if (body.on < meter->fitted_on) {
        state.cautions.push_back({Trouble::reading_before_meter,
                                  {base::day_arg(body.on), base::day_arg(meter->fitted_on)},
                                  record.root});
    }
    if (body.on > today) {
        state.cautions.push_back({Trouble::reading_ahead, {base::day_arg(body.on)}, record.root});
    }
    note_last(*meter, body.on, reading.reads);
    const FlightTime total = reading.reads - meter->reads + meter->total;
    const bool meter_is_open = std::find(open.begin(), open.end(), meter->id) != open.end();
    samples.push_back(
        {{body.on, total, record.root}, &record, true, !record.open && !meter_is_open});
    for (const Head& head : record.heads) {
        const auto* one =
            head.body == nullptr ? nullptr : std::get_if<facts::Reading>(&head.body->fields);
        if (one == nullptr) continue;
        const FlightTime recorded = one->reads - meter->reads + meter->total;
        state.recorded.push_back({head.body->on, recorded, record.root});
        if (record.open)
            versions.push_back({{head.body->on, recorded, record.root}, &record, true, false});
    }
}

/// What a record says that the aircraft itself had: work, and fits and removals of its parts.
struct Named {
    std::optional<FlightTime> total;
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
};

[[nodiscard]] std::optional<Named> named_in(const facts::Body& body, base::Id aircraft) {
    if (const auto* work = std::get_if<facts::WorkDone>(&body.fields))
        return Named{work->total, work->landings, work->starts};
    if (body.about.size() < 2 || body.about[1] != aircraft) return std::nullopt;
    if (const auto* fitted = std::get_if<facts::PartFitted>(&body.fields))
        return Named{fitted->host_total, fitted->host_landings, fitted->host_starts};
    if (const auto* removed = std::get_if<facts::PartRemoved>(&body.fields))
        return Named{removed->host_total, removed->host_landings, removed->host_starts};
    return std::nullopt;
}

/// Totals that a record names. Of versions that disagree the highest on the earliest day stands for
/// the
/// aircraft, even where the work itself counts as not done.
void fold_named_total(const Record& record,
                      Date today,
                      AircraftState& state,
                      std::vector<Sample>& samples) {
    std::optional<FlightTime> total;
    Date on = today;
    for (const Head& head : record.heads) {
        if (head.body == nullptr || head.body->on > today) continue;
        const std::optional<Named> named = named_in(*head.body, state.id);
        if (!named) continue;
        raise_to(state.landings, named->landings);
        raise_to(state.starts, named->starts);
        if (named->total) {
            on = std::min(on, head.body->on);
            state.recorded.push_back({head.body->on, *named->total, record.root});
        }
        raise_to(total, named->total);
    }
    if (total) samples.push_back({{on, *total, record.root}, &record, false, !record.open});
}

void fold_samples(const std::vector<Record>& records,
                  Date today,
                  AircraftState& state,
                  std::vector<Sample>& samples,
                  std::vector<Sample>& versions,
                  const std::vector<base::Id>& open) {
    for (const Record& record : records) {
        fold_named_total(record, today, state, samples);
        if (record.withdrawn) continue;
        if (const auto* reading = std::get_if<facts::Reading>(&record.in_use.fields)) {
            fold_reading(record, *reading, today, state, samples, versions, open);
        }
    }
    base::sort_stably(samples, [](const Sample& left, const Sample& right) {
        if (left.point.on != right.point.on) return left.point.on < right.point.on;
        if (left.point.total != right.point.total) return left.point.total < right.point.total;
        return comes_before(head_of(left), head_of(right));
    });
    base::sort_stably(state.recorded, [](const auto& left, const auto& right) {
        return left.on != right.on ? left.on < right.on : left.total < right.total;
    });
}

/// Two samples that cannot both be right: a question between readings, else a caution.
void disagree(QuestionKind kind, const Sample& earlier, const Sample& later, AircraftState& state) {
    if (earlier.is_reading && later.is_reading) {
        state.questions.push_back({kind,
                                   {},
                                   {side_of(*earlier.record, 0), side_of(*later.record, 0)},
                                   std::nullopt,
                                   false});
        return;
    }
    const Trouble code =
        kind == QuestionKind::falling ? Trouble::total_falls : Trouble::total_jumps;
    state.cautions.push_back({code,
                              {base::hours_used_arg(earlier.point.total),
                               base::day_arg(earlier.point.on),
                               base::hours_used_arg(later.point.total),
                               base::day_arg(later.point.on)},
                              later.point.fact});
}

[[nodiscard]] bool too_fast(const Sample& from, const Sample& to) {
    const std::int64_t days = base::days_between(from.point.on, to.point.on) + 1;
    return (to.point.total - from.point.total).seconds > days * seconds_per_day;
}

/// Makes the series that never falls: the highest total so far stands. A total that falls does not
/// extend it: it does not show that nothing was flown until its day.
void fold_series(const std::vector<Sample>& samples, AircraftState& state) {
    const Sample* highest = nullptr;
    for (const Sample& sample : samples) {
        if (highest != nullptr && sample.point.total < highest->point.total) {
            disagree(QuestionKind::falling, *highest, sample, state);
            continue;
        }
        if (highest != nullptr && too_fast(*highest, sample)) {
            disagree(QuestionKind::too_fast, *highest, sample, state);
        }
        highest = &sample;
        state.usage.push_back(sample.point);
    }
}

/// Seconds of total above a line that climbs 24 hours a day.
[[nodiscard]] std::int64_t above_the_clock(const Sample& sample) {
    return sample.point.total.seconds - sample.point.on.day_number * seconds_per_day;
}

/// The most and the least that the readings on one side of another come to.
struct Extremes {
    std::optional<FlightTime> total;
    std::optional<std::int64_t> above;
};

/// Marks every reading that contradicts any other, not only its neighbour, or any version of one
/// that is disputed: whichever of them an answer drops or keeps, the others that it contradicts may
/// be dropped next.
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
        raise_to(before.total, std::optional{sample->point.total});
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
        raise_to(after.above, std::optional{above});
    }
}

/// Makes the series of totals that nobody disputes.
void fold_certain(std::vector<Sample>& samples,
                  std::vector<Sample>& versions,
                  AircraftState& state) {
    doubt_contradicted(samples, versions);
    for (const Sample& sample : samples) {
        const bool falls =
            !state.certain.empty() && sample.point.total < state.certain.back().total;
        if (sample.is_certain && !falls) state.certain.push_back(sample.point);
    }
}

}  // namespace

void fold_usage(const std::vector<Record>& records, Date today, AircraftState& state) {
    std::vector<Sample> samples;
    std::vector<Sample> versions;  // of readings that are disputed, each that is not withdrawn
    std::vector<base::Id> open_meters;
    fold_meters(records, state, samples, open_meters);
    fold_samples(records, today, state, samples, versions, open_meters);
    fold_series(samples, state);
    fold_certain(samples, versions, state);
}

}  // namespace twoclocks::timeline
