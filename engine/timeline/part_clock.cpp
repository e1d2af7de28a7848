#include "engine/timeline/part_clock.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"

namespace twoclocks::timeline {

using base::Date;
using base::FlightTime;

void PartClock::advance(OpenSpell& open, const std::optional<FlightTime>& to) {
    PartSpell& spell = part_.spells[open.spell];
    if (!open.counted || !to) {
        spell.gained.reset();
        part_.tsn.reset();
        part_.tso.reset();
        part_.flown_is_whole = false;
        ++gaps_;
        open.counted = to;
        return;
    }
    const FlightTime gain = std::max(FlightTime{0}, *to - *open.counted);
    open.counted = std::max(*open.counted, *to);
    if (spell.gained) spell.gained = *spell.gained + gain;
    if (part_.tsn) part_.tsn = *part_.tsn + gain;
    if (part_.tso) part_.tso = *part_.tso + gain;
    count_ = count_ + gain;
}

FlightTime PartClock::ahead(const OpenSpell& open, const std::optional<FlightTime>& to) {
    if (!open.counted || !to) return {};
    return std::max(FlightTime{0}, *to - *open.counted);
}

void PartClock::set_tsn(FlightTime tsn, bool estimated, Date on) {
    if (part_.tsn && tsn > *part_.tsn) {
        const FlightTime more = tsn - *part_.tsn;
        steps_.push_back({on, more, {}});
        count_ = count_ + more;
        for (PartSpell& spell : part_.spells) {
            if (!spell.until) spell.count.reset();
        }
    }
    ++tells_;
    part_.tsn = tsn;
    part_.tsn_estimated = estimated;
    part_.offsets.push_back({on, tsn - count_});
}

void PartClock::tell_tsn(FlightTime tsn, bool estimated, Date on, base::Id fact) {
    const std::optional<FlightTime> before = part_.tsn;
    if (!before || part_.tsn_estimated) {
        set_tsn(tsn, estimated, on);
    } else if (tsn > *before) {
        // It flew where this record does not reach: on another operator's aircraft, say.
        if (part_.tso) part_.tso = *part_.tso + (tsn - *before);
        set_tsn(tsn, estimated, on);
    } else if (tsn < *before) {
        part_.problems.push_back({base::Trouble::part_tsn_falls,
                                  {base::text_arg(part_label(part_)),
                                   base::hours_used_arg(*before),
                                   base::hours_used_arg(tsn),
                                   base::day_arg(on)},
                                  base::Severity::caution,
                                  {part_.id, fact}});
    }
}

void PartClock::start_again(bool estimated, Date on) {
    part_.tsn.reset();
    set_tsn({0}, estimated, on);
    part_.tso = FlightTime{0};
    part_.tso_estimated = estimated;
}

void PartClock::keep_points(const OpenSpell& open, Date until) {
    if (!open.from || !open.counted || !part_.spells[open.spell].gained) return;
    const Date from = part_.spells[open.spell].from;
    FlightTime before = *open.from;
    for (const UsagePoint& point : open.line->series) {
        if (point.on < from || point.on > until) continue;
        const FlightTime total = std::min(point.total, *open.counted);
        if (total <= before) continue;
        steps_.push_back({point.on, total - before, {}});
        before = total;
    }
    if (*open.counted > before) steps_.push_back({until, *open.counted - before, {}});
}

void PartClock::finish(Date born) {
    base::sort_stably(steps_,
                      [](const auto& left, const auto& right) { return left.on < right.on; });
    part_.flown.push_back({born, {0}, part_.id});
    for (const UsagePoint& step : steps_) {
        const FlightTime total = part_.flown.back().total + step.total;
        if (part_.flown.back().on >= step.on) {
            part_.flown.back().total = total;
        } else {
            part_.flown.push_back({step.on, total, part_.id});
        }
    }
    FlightTime gained;
    for (const PartSpell& spell : part_.spells)
        gained = gained + spell.gained.value_or(FlightTime{0});
    if (part_.tsn) part_.by_papers = *part_.tsn - gained;
}

}  // namespace twoclocks::timeline
