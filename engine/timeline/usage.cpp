#include "engine/timeline/usage.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/timeline/meter_adjust.hpp"
#include "engine/timeline/question.hpp"
#include "engine/timeline/safer_values.hpp"
#include "engine/timeline/usage_sample.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;
using base::Trouble;

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
    const bool is_after = !meter.last_on || *meter.last_on < on ||
                          (*meter.last_on == on &&
                           total_of(meter, *meter.last_reads, on) <= total_of(meter, reads, on));
    if (!is_after) return;
    meter.last_on = on;
    meter.last_reads = reads;
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
    state.landings = greatest(state.landings, reading.landings);
    state.starts = greatest(state.starts, reading.starts);
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
    const FlightTime total = total_of(*meter, reading.reads, body.on);
    const bool meter_is_open = std::find(open.begin(), open.end(), meter->id) != open.end() ||
                               adds_in_dispute(*meter, body.on);
    samples.push_back(
        {{body.on, total, record.root}, &record, true, !record.open && !meter_is_open});
    for (const Head& head : record.heads) {
        const auto* one =
            head.body == nullptr ? nullptr : std::get_if<facts::Reading>(&head.body->fields);
        if (one == nullptr) continue;
        const FlightTime recorded = total_of(*meter, one->reads, head.body->on);
        state.recorded.push_back({head.body->on, recorded, record.root});
        if (record.open)
            versions.push_back({{head.body->on, recorded, record.root}, &record, true, false});
    }
}

/// What each meter did not count, from its day on.
void fold_adjusted(const std::vector<Record>& records,
                   AircraftState& state,
                   std::vector<Sample>& samples) {
    for (MeterState& meter : state.meters) {
        for (const MeterAdjustment& adjusted : meter.adjusted) {
            if (adjusted.on < meter.fitted_on) continue;
            const auto record =
                std::find_if(records.begin(), records.end(), [&](const Record& one) {
                    return one.root == adjusted.fact;
                });
            const FlightTime total = total_of(meter, adjusted.reads, adjusted.on);
            samples.push_back(
                {{adjusted.on, total, adjusted.fact}, &*record, false, !adjusted.disputed});
            state.recorded.push_back(samples.back().point);
            note_last(meter, adjusted.on, adjusted.reads);
        }
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
        state.landings = greatest(state.landings, named->landings);
        state.starts = greatest(state.starts, named->starts);
        if (named->total) {
            on = std::min(on, head.body->on);
            state.recorded.push_back({head.body->on, *named->total, record.root});
        }
        total = greatest(total, named->total);
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
    fold_adjusted(records, state, samples);
    for (std::vector<Sample>* const list : {&samples, &versions}) {
        for (Sample& sample : *list) {
            sample.uncounted = uncounted_by(state.meters, sample.point.on);
            sample.uncounted_before =
                uncounted_by(state.meters, base::add_days(sample.point.on, -1));
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
    fold_adjustments(records, today, state);
    fold_samples(records, today, state, samples, versions, open_meters);
    fold_series(samples, state);
    fold_certain(samples, versions, state);
}

}  // namespace twoclocks::timeline
