#include "engine/views/life_box.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/permille.hpp"
#include "engine/views/sentence.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using base::Word;
using facts::Clock;
using limits::ClockDue;
using limits::ItemDue;

using base::whole_permille;
constexpr std::int32_t most_points = 240;
constexpr std::int32_t fan_pieces = 24;

/// The two clocks that make the box.
struct Sides {
    const ClockDue* hours;
    const ClockDue* calendar;

    [[nodiscard]] std::int32_t across(Date on) const {
        const std::int64_t days = base::days_between(calendar->anchor_on, on);
        const std::int64_t all =
            std::max(1, base::days_between(calendar->anchor_on, calendar->due_on));
        return bounded(days * whole_permille / all);
    }

    [[nodiscard]] std::int32_t up(base::FlightTime total) const {
        const std::int64_t used = (total - hours->anchor_total).seconds;
        return bounded(used * whole_permille / hours->limit_hours.seconds);
    }

    [[nodiscard]] static std::int32_t bounded(std::int64_t permille) {
        return static_cast<std::int32_t>(
            std::clamp<std::int64_t>(permille, -whole_permille, 3 * whole_permille));
    }
};

/// The life so far from the anchor on, thinned so that a phone draws it in one go.
[[nodiscard]] std::vector<BoxPoint> line_of(const Assessed& aircraft, const Sides& sides) {
    const timeline::UsageSeries& usage = aircraft.state.usage;
    std::vector<BoxPoint> all;
    // At its anchor a clock reads zero; when both count from one moment, so does the line.
    // Otherwise it
    // starts at the hours used by then.
    const base::FlightTime then = forecast::total_then(aircraft.state, sides.calendar->anchor_on);
    const bool one_moment = sides.hours->anchor_fact == sides.calendar->anchor_fact;
    all.push_back({0, one_moment ? 0 : std::max(0, sides.up(then))});
    for (const timeline::UsagePoint& point : usage) {
        if (point.on > sides.calendar->anchor_on)
            all.push_back({sides.across(point.on), sides.up(point.total)});
    }
    const BoxPoint last{sides.across(std::max(aircraft.today, usage.back().on)),
                        sides.up(usage.back().total)};
    std::vector<BoxPoint> out;
    const std::size_t step = all.size() / most_points + 1;
    for (std::size_t i = 0; i < all.size(); i += step)
        out.push_back(all[i]);
    out.push_back(last);
    return out;
}

/// Where a line meets an edge: on top on the day its hours are met, else on the right at the hours
/// it has
/// by then.
[[nodiscard]] BoxPoint meeting(const Sides& sides,
                               const std::optional<Date>& hours_day,
                               base::FlightTime at_end) {
    if (hours_day && *hours_day <= sides.calendar->due_on)
        return {sides.across(*hours_day), whole_permille};
    return {whole_permille, std::min(sides.up(at_end), whole_permille)};
}

/// The days the fan is drawn on: evenly spread, and those on which a line meets the top.
[[nodiscard]] std::vector<BoxSpread> fan_of(const Assessed& aircraft,
                                            const Sides& sides,
                                            const std::vector<std::optional<Date>>& meetings) {
    const Date today = std::max(aircraft.today, aircraft.state.usage.back().on);
    const Date end = sides.calendar->due_on;
    const std::int32_t all_days = base::days_between(today, end);
    std::vector<Date> days;
    for (std::int32_t piece = 1; piece <= fan_pieces; ++piece)
        days.push_back(base::add_days(today, all_days * piece / fan_pieces));
    for (const auto& day : meetings) {
        if (day && *day > today && *day < end) days.push_back(*day);
    }
    std::sort(days.begin(), days.end());
    const std::int32_t now = sides.up(aircraft.state.usage.back().total);
    std::vector<BoxSpread> out{{sides.across(today), now, now, now}};
    const auto inside = [&](base::FlightTime total) {
        return std::min(sides.up(total), whole_permille);
    };
    for (const Date day : days) {
        const forecast::TotalsToCome then =
            forecast::totals_to_come(aircraft.state, aircraft.ahead, day);
        out.push_back(
            {sides.across(day), inside(then.early), inside(then.likely), inside(then.late)});
    }
    return out;
}

void add_fan(LifeBoxView& box, const Assessed& aircraft, const Sides& sides) {
    const forecast::Projection hours =
        forecast::project(*sides.hours, aircraft.state, aircraft.ahead, aircraft.today);
    const bool inside = sides.hours->left.seconds > 0 && sides.calendar->days_left > 0;
    box.meets = answer_edge(aircraft);
    box.fan_known = hours.known && inside && aircraft.ahead.basis != forecast::RateBasis::unknown;
    if (!box.fan_known) return;
    const forecast::TotalsToCome then =
        forecast::totals_to_come(aircraft.state, aircraft.ahead, sides.calendar->due_on);
    box.early = meeting(sides, hours.early, then.early);
    box.likely = meeting(sides, hours.likely, then.likely);
    box.late = meeting(sides, hours.late, then.late);
    box.fan = fan_of(aircraft, sides, {hours.early, hours.likely, hours.late});
}

/// The clocks and caps that may stop an item: where the later counts, the one that binds.
[[nodiscard]] std::vector<const ClockDue*> ends_of(const ItemDue& item) {
    std::vector<const ClockDue*> out;
    if (item.combine == facts::Combine::later) {
        const ClockDue* binding = item.binding();
        if (binding != nullptr) out.push_back(binding);
        return out;
    }
    for (const auto* clocks : {&item.clocks, &item.caps}) {
        for (const ClockDue& clock : *clocks)
            out.push_back(&clock);
    }
    return out;
}

void add_marks(LifeBoxView& box, const Assessed& aircraft, const Sides& sides) {
    for (const ItemDue& item : aircraft.items) {
        const bool is_the_box = item.role == facts::ItemRole::overhaul && item.part.id.empty();
        if (is_the_box || !item.mandatory() || item.is_stored) continue;
        for (const ClockDue* clock : ends_of(item)) {
            if (!clock->known || clock->passed()) continue;
            const base::Message label{Word::record_of, {base::text_arg(item_label(item))}};
            if (clock->clock == Clock::hours) {
                const base::FlightTime met = forecast::met_at(*clock, aircraft.state);
                if (met < sides.hours->due_total)
                    box.marks.push_back({Edge::hours, sides.up(met), label});
            }
            if (clock->clock == Clock::calendar && clock->due_on < sides.calendar->due_on) {
                box.marks.push_back({Edge::calendar, sides.across(clock->due_on), label});
            }
        }
    }
}

void add_labels(LifeBoxView& box, const Sides& sides) {
    constexpr std::int32_t months_a_year = 12;
    constexpr std::int64_t tick_hours = 200;
    const std::int32_t months = sides.calendar->limit_months;
    const bool in_days = sides.calendar->limit_days > 0;
    const bool whole_years = months % months_a_year == 0;
    box.hours_edge = {Word::box_hours_edge, {base::hours_whole_arg(sides.hours->limit_hours)}};
    box.calendar_edge = {Word::day_figure, {base::month_arg(sides.calendar->due_on)}};
    box.start = {Word::day_figure, {base::month_arg(sides.calendar->anchor_on)}};
    box.width = {in_days       ? Word::box_days
                 : whole_years ? Word::box_years
                               : Word::box_months,
                 {base::whole_arg(
                     in_days ? base::days_between(sides.calendar->anchor_on, sides.calendar->due_on)
                     : whole_years ? months / months_a_year
                                   : months)}};
    box.year_ticks = months / months_a_year;
    box.hour_ticks = static_cast<std::int32_t>(sides.hours->limit_hours.seconds /
                                               (tick_hours * base::seconds_per_hour));
}

[[nodiscard]] base::Message spoken(const LifeBoxView& box,
                                   const Assessed& aircraft,
                                   const Sides& sides) {
    // Work done early may count from a due point that is still to come: then nothing is used yet.
    const base::FlightTime flown = std::max(base::FlightTime{0}, sides.hours->used);
    const std::vector<base::Arg> used{base::hours_used_arg(flown),
                                      base::hours_whole_arg(sides.hours->limit_hours)};
    const forecast::Projection& projection =
        aircraft.projections[static_cast<std::size_t>(aircraft.overhaul)];
    if (!box.fan_known || !projection.likely) return {Word::box_spoken, used};
    const Word word = box.meets == Edge::hours ? Word::box_spoken_hours : Word::box_spoken_calendar;
    return {word, {used[0], used[1], base::day_arg(*projection.likely)}};
}

}  // namespace

LifeBoxView life_box(const Assessed& aircraft) {
    LifeBoxView box;
    const ItemDue* overhaul = overhaul_of(aircraft);
    const ClockDue* hours =
        overhaul == nullptr ? nullptr : limits::clock_of(*overhaul, Clock::hours);
    const ClockDue* calendar =
        overhaul == nullptr ? nullptr : limits::clock_of(*overhaul, Clock::calendar);
    if (hours == nullptr || calendar == nullptr) {
        box.missing = {Word::box_missing_limit, {}};
        return box;
    }
    if (!hours->known || !calendar->known) {
        box.missing = {hours->known ? Word::box_missing_anchor : Word::box_missing_reading, {}};
        return box;
    }
    const Sides sides{hours, calendar};
    box.known = true;
    box.line = line_of(aircraft, sides);
    add_fan(box, aircraft, sides);
    add_marks(box, aircraft, sides);
    add_labels(box, sides);
    box.spoken = spoken(box, aircraft, sides);
    return box;
}

}  // namespace twoclocks::views
