#include "engine/views/wear_view.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/views/record_care.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using forecast::TrendKind;
using forecast::WearTrend;
using timeline::WearFinding;
using timeline::WearPoint;
using timeline::WearVerdict;

[[nodiscard]] const ItemWear* wear_at(const Assessed& aircraft, std::int32_t place) {
    const auto at = static_cast<std::size_t>(place);
    return at < aircraft.wear.size() && aircraft.wear[at] ? &*aircraft.wear[at] : nullptr;
}

[[nodiscard]] base::Arg value_arg(std::int32_t thousandths) {
    return base::text_arg(thousandths_text(thousandths));
}

[[nodiscard]] std::vector<base::Arg> limit_args(const facts::WearLimit& limit) {
    return {base::word_arg(sense_word(limit.sense)),
            value_arg(limit.limit_thousandths),
            base::text_arg(limit.unit)};
}

[[nodiscard]] Message wear_message(const WearFinding& finding) {
    if (!finding.point || finding.verdict == WearVerdict::unmeasured)
        return {Word::say_wear_unmeasured, {}};
    std::vector<base::Arg> args{value_arg(finding.point->value_thousandths),
                                base::text_arg(finding.point->unit)};
    if (!finding.bound) return {Word::say_wear_no_limit, std::move(args)};
    if (finding.verdict == WearVerdict::other_unit) {
        args.push_back(base::text_arg(finding.bound->limit.unit));
        return {Word::say_wear_other_unit, std::move(args)};
    }
    for (base::Arg& arg : limit_args(finding.bound->limit))
        args.push_back(std::move(arg));
    return {Word::say_wear, std::move(args)};
}

void explain_points(Why& why, const timeline::WearState& wear) {
    for (const WearPoint& point : wear.points) {
        std::vector<base::Arg> args{base::day_arg(point.on),
                                    value_arg(point.value_thousandths),
                                    base::text_arg(point.unit)};
        if (point.total) args.push_back(base::hours_used_arg(*point.total));
        add(why,
            point.total ? Word::why_wear_point : Word::why_wear_point_no_total,
            std::move(args),
            point.fact);
    }
}

void explain_bound(Why& why, const WearFinding& finding) {
    if (!finding.bound) {
        add(why, Word::why_wear_no_limit);
        return;
    }
    const facts::WearLimit& limit = finding.bound->limit;
    add(why, Word::why_wear_limit, limit_args(limit), finding.bound->fact);
    if (limit.source.empty()) {
        add(why, Word::why_source_none, {}, finding.bound->fact);
    } else if (limit.revision.empty()) {
        add(why, Word::why_source_no_revision, {base::text_arg(limit.source)}, finding.bound->fact);
    } else {
        add(why,
            Word::why_source,
            {base::text_arg(limit.source), base::text_arg(limit.revision)},
            finding.bound->fact);
    }
}

void explain_finding(Why& why, const WearFinding& finding) {
    if (!finding.point || finding.verdict == WearVerdict::unmeasured) {
        add(why, Word::why_wear_unmeasured);
        return;
    }
    add_sum(why,
            finding.disputed ? Word::why_wear_disputed : Word::why_wear_counts,
            {value_arg(finding.point->value_thousandths), base::text_arg(finding.point->unit)},
            finding.point->fact);
    if (finding.verdict == WearVerdict::past) add(why, Word::why_wear_past);
    if (finding.verdict == WearVerdict::other_unit)
        add(why, Word::why_wear_unit, {base::text_arg(finding.bound->limit.unit)});
}

/// The line that the trend was taken from.
void explain_line(Why& why, const WearTrend& trend) {
    std::vector<base::Arg> args{value_arg(trend.from.value_thousandths),
                                base::text_arg(trend.to.unit),
                                value_arg(trend.to.value_thousandths)};
    if (trend.by_hours) {
        args.push_back(base::hours_used_arg(trend.hours_between));
        args.push_back(base::hours_left_arg(trend.hours_left));
        add_sum(why, Word::why_trend_hours, std::move(args), trend.to.fact);
    } else {
        args.push_back(base::whole_arg(trend.days_between));
        args.push_back(base::whole_arg(trend.days_left));
        add_sum(why, Word::why_trend_days, std::move(args), trend.to.fact);
    }
    add(why, Word::why_trend_steepest);
}

[[nodiscard]] std::optional<Message> said_of(const WearTrend& trend) {
    switch (trend.kind) {
        case TrendKind::none:
            return std::nullopt;
        case TrendKind::one:
            return Message{Word::say_trend_one, {}};
        case TrendKind::flat:
            return Message{Word::say_trend_flat, {}};
        case TrendKind::no_rate:
            return Message{Word::say_trend_rate, {}};
        case TrendKind::far:
            return Message{Word::say_trend_far, {}};
        case TrendKind::on_a_day:
            return Message{Word::say_trend_day, {base::day_arg(*trend.likely)}};
    }
    return std::nullopt;
}

}  // namespace

std::optional<ItemWear> work_out_wear(const Assessed& aircraft, base::Id id) {
    const timeline::ItemState* item = item_state(aircraft, id);
    if (item == nullptr || !item->wear) return std::nullopt;
    return ItemWear{
        *item->wear,
        timeline::judge_wear(*item->wear),
        forecast::wear_trend(*item->wear, aircraft.state, aircraft.ahead, aircraft.today)};
}

State with_wear(State by_interval,
                const limits::ItemDue& item,
                const std::optional<ItemWear>& wear,
                base::Date today) {
    if (!wear || wear->finding.verdict == WearVerdict::no_limit) return by_interval;
    if (wear->finding.verdict == WearVerdict::past) return State::over;
    State by_wear = State::nothing_due;
    if (wear->finding.verdict != WearVerdict::sound) by_wear = State::unknown;
    const std::optional<base::Date>& likely = wear->trend.likely;
    if (likely && base::days_between(today, *likely) <= due_days) by_wear = State::act;
    const bool has_interval = !item.clocks.empty() || item.complied;
    return has_interval ? std::max(by_interval, by_wear) : by_wear;
}

std::optional<Figure> wear_figure(const Assessed& aircraft, std::int32_t place) {
    const ItemWear* wear = wear_at(aircraft, place);
    if (wear == nullptr) return std::nullopt;
    const limits::ItemDue& item = aircraft.items[static_cast<std::size_t>(place)];
    Figure out;
    out.text = wear_message(wear->finding);
    out.why.title = {Word::why_wear_left, {base::text_arg(item.name)}};
    out.why.figure = out.text;
    explain_bound(out.why, wear->finding);
    explain_points(out.why, wear->state);
    explain_finding(out.why, wear->finding);
    explain_trend(out.why, aircraft, place);
    add(out.why, Word::why_not_approval);
    return out;
}

std::optional<base::Date> wear_first(const Assessed& aircraft, std::int32_t place) {
    const ItemWear* wear = wear_at(aircraft, place);
    if (wear == nullptr) return std::nullopt;
    const bool past = wear->finding.verdict == WearVerdict::past;
    const std::optional<base::Date> day = past ? wear->finding.point->on : wear->trend.likely;
    if (!day) return std::nullopt;
    const forecast::Projection& interval = aircraft.projections[static_cast<std::size_t>(place)];
    const bool first = !interval.known || !interval.likely || *day < *interval.likely;
    return first ? day : std::nullopt;
}

std::optional<Message> wear_likely(const Assessed& aircraft, std::int32_t place) {
    const ItemWear* wear = wear_at(aircraft, place);
    if (wear == nullptr) return std::nullopt;
    const limits::ItemDue& item = aircraft.items[static_cast<std::size_t>(place)];
    const bool by_wear_alone = item.clocks.empty() && !item.complied;
    const std::optional<base::Date> first = wear_first(aircraft, place);
    if (!by_wear_alone && !first) return std::nullopt;
    if (first && wear->finding.verdict == WearVerdict::past)
        return Message{Word::say_on_day, {base::day_arg(*first)}};
    return said_of(wear->trend);
}

void explain_trend(Why& why, const Assessed& aircraft, std::int32_t place) {
    const ItemWear* wear = wear_at(aircraft, place);
    if (wear == nullptr) return;
    const WearTrend& trend = wear->trend;
    if (trend.kind == TrendKind::none) return;
    if (trend.kind == TrendKind::one) {
        add(why, Word::why_trend_one);
        return;
    }
    if (trend.kind == TrendKind::flat) {
        add(why, Word::why_trend_flat);
        return;
    }
    explain_line(why, trend);
    if (trend.kind == TrendKind::no_rate) add(why, Word::why_trend_rate);
    if (trend.kind == TrendKind::far) add(why, Word::why_trend_far);
    if (trend.likely) add(why, Word::why_trend_day, {base::day_arg(*trend.likely)});
    add(why, Word::why_trend_not_limit);
}

std::vector<Message> wear_cautions(const Assessed& aircraft) {
    std::vector<Message> out;
    for (std::size_t place = 0; place < aircraft.wear.size(); ++place) {
        const std::optional<ItemWear>& wear = aircraft.wear[place];
        if (!wear || wear->finding.verdict != WearVerdict::other_unit) continue;
        out.push_back({Word::caution_wear_unit,
                       {base::text_arg(item_label(aircraft.items[place])),
                        base::text_arg(wear->finding.point->unit),
                        base::text_arg(wear->finding.bound->limit.unit)}});
    }
    return out;
}

bool is_worn_past(const Assessed& aircraft, std::int32_t place) {
    const ItemWear* wear = wear_at(aircraft, place);
    return wear != nullptr && wear->finding.verdict == WearVerdict::past;
}

}  // namespace twoclocks::views
