#include "engine/timeline/meter_adjust.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;
using base::Trouble;

[[nodiscard]] bool rolled_over(const MeterAdjustment& adjusted) {
    return adjusted.reason == facts::AdjustReason::rolled_over;
}

/// The meter that a record is about, null when it is not recorded.
[[nodiscard]] MeterState* meter_of(AircraftState& state, const facts::Body& body) {
    if (body.about.size() < 2) return nullptr;
    const auto found = std::find_if(state.meters.begin(),
                                    state.meters.end(),
                                    [&](const auto& meter) { return meter.id == body.about[1]; });
    return found == state.meters.end() ? nullptr : &*found;
}

void fold_one(const Record& record,
              const facts::MeterAdjusted& adjusted,
              Date today,
              AircraftState& state) {
    const Date on = record.in_use.on;
    MeterState* meter = meter_of(state, record.in_use);
    if (meter == nullptr) {
        state.cautions.push_back({Trouble::adjust_without_meter, {base::day_arg(on)}, record.root});
        return;
    }
    if (on < meter->fitted_on) {
        state.cautions.push_back({Trouble::adjust_before_meter,
                                  {base::day_arg(on), base::day_arg(meter->fitted_on)},
                                  record.root});
    }
    if (on > today)
        state.cautions.push_back({Trouble::adjust_ahead, {base::day_arg(on)}, record.root});
    meter->adjusted.push_back({on,
                               adjusted.hours,
                               adjusted.reads,
                               adjusted.reason,
                               adjusted.source,
                               record.root,
                               record.open});
}

}  // namespace

void fold_adjustments(const std::vector<Record>& records, Date today, AircraftState& state) {
    for (const Record& record : records) {
        if (record.withdrawn) continue;
        const auto* adjusted = std::get_if<facts::MeterAdjusted>(&record.in_use.fields);
        if (adjusted != nullptr) fold_one(record, *adjusted, today, state);
    }
    for (MeterState& meter : state.meters) {
        base::sort_stably(meter.adjusted,
                          [](const auto& left, const auto& right) { return left.on < right.on; });
    }
}

FlightTime total_of(const MeterState& meter, FlightTime reads, Date on) {
    FlightTime out = reads - meter.reads + meter.total;
    for (const MeterAdjustment& adjusted : meter.adjusted) {
        // Twice what is shown above its first reading against what it counts: which half it is in.
        const FlightTime above = reads - adjusted.reads;
        const bool before =
            adjusted.on == on && rolled_over(adjusted) && (above + above) > adjusted.hours;
        if (adjusted.on <= on && !before) out = out + adjusted.hours;
    }
    return out;
}

FlightTime shown_at(const MeterState& meter, FlightTime total, Date on) {
    FlightTime out = total - meter.total + meter.reads;
    for (const MeterAdjustment& adjusted : meter.adjusted) {
        const FlightTime after = out - adjusted.hours;
        const bool before = adjusted.on == on && rolled_over(adjusted) && after < adjusted.reads;
        if (adjusted.on <= on && !before) out = after;
    }
    return out;
}

bool adds_in_dispute(const MeterState& meter, Date on) {
    return std::any_of(
        meter.adjusted.begin(), meter.adjusted.end(), [&](const MeterAdjustment& adjusted) {
            return adjusted.disputed && adjusted.on <= on;
        });
}

FlightTime uncounted_by(const std::vector<MeterState>& meters, Date on) {
    FlightTime out;
    for (const MeterState& meter : meters) {
        for (const MeterAdjustment& adjusted : meter.adjusted) {
            if (adjusted.on <= on && !rolled_over(adjusted)) out = out + adjusted.hours;
        }
    }
    return out;
}

}  // namespace twoclocks::timeline
