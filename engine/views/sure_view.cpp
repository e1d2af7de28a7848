#include "engine/views/sure_view.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/forecast/back_test.hpp"
#include "engine/forecast/hours_first.hpp"
#include "engine/forecast/months.hpp"
#include "engine/forecast/rate.hpp"
#include "engine/views/both_paths.hpp"
#include "engine/views/due_row.hpp"
#include "engine/views/life_box.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/months_chart.hpp"
#include "engine/views/sentence.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using base::FlightTime;
using base::Message;
using base::Word;
using forecast::Projection;

constexpr std::int64_t months_a_year = 12;

[[nodiscard]] Message day_or_never(const std::optional<Date>& day) {
    return day ? Message{Word::say_on_day, {base::day_arg(*day)}}
               : Message{Word::say_not_at_this_rate, {}};
}

[[nodiscard]] Message range_of(const Projection& projection) {
    if (!projection.early) return {Word::blank, {}};
    if (!projection.late) return {Word::sure_range_open, {base::day_arg(*projection.early)}};
    if (*projection.early == *projection.late) return {Word::sure_range_fixed, {}};
    return {Word::sure_range, {base::day_arg(*projection.early), base::day_arg(*projection.late)}};
}

/// Rows of the items that stop it, soonest first; `recorded` is without what is tried.
[[nodiscard]] std::vector<SureRow> rows_of(const Assessed& shown, const Assessed& recorded) {
    std::vector<SureRow> out;
    for (const std::int32_t place : soonest_first(shown)) {
        const auto here = static_cast<std::size_t>(place);
        const limits::ItemDue& item = shown.items[here];
        const Projection& projection = shown.projections[here];
        if (!item.mandatory() || item.asleep || item.complied || !projection.known) continue;
        SureRow row;
        row.name = item_label(item);
        row.edge = edge_of(projection.binds);
        row.likely = day_or_never(projection.likely);
        row.range = range_of(projection);
        const std::optional<Date>& before = recorded.projections[here].likely;
        if (projection.likely != before)
            row.before = before ? Message{Word::sure_before, {base::day_arg(*before)}}
                                : Message{Word::sure_before_never, {}};
        out.push_back(std::move(row));
    }
    return out;
}

[[nodiscard]] Message chance_of(const Assessed& aircraft) {
    const limits::ItemDue* overhaul = overhaul_of(aircraft);
    if (overhaul == nullptr) return {Word::blank, {}};
    if (overhaul->passed()) return {Word::blank, {}};
    const auto permille = forecast::hours_first_permille(*overhaul, aircraft.state, aircraft.ahead);
    if (!permille) return {Word::blank, {}};
    constexpr std::int32_t all = 1000;
    const bool planned = aircraft.state.plan.has_value() && !aircraft.ahead.plan_gives_way;
    const auto one_of = [&](Word as_planned, Word as_measured) {
        return planned ? as_planned : as_measured;
    };
    if (*permille == all)
        return {one_of(Word::sure_chance_planned_always, Word::sure_chance_always), {}};
    if (*permille == 0)
        return {one_of(Word::sure_chance_planned_never, Word::sure_chance_never), {}};
    // Not certain is not said to be: 1 to 99.
    const std::int32_t percent = std::clamp((*permille + 5) / 10, 1, 99);
    return {one_of(Word::sure_chance_planned, Word::sure_chance), {base::whole_arg(percent)}};
}

[[nodiscard]] std::vector<Message> look_back(const timeline::AircraftState& state) {
    const auto test = forecast::back_test(state);
    if (!test) return {{Word::sure_back_none, {}}};
    const base::Arg asked = base::day_arg(test->asked_on);
    const base::Arg flown = base::hours_used_arg(test->flown);
    std::vector<Message> out{{Word::sure_back_asked, {asked, flown}}};
    const base::Arg came = base::day_arg(test->came_on);
    if (!test->said) {
        out.push_back({Word::sure_back_never, {came}});
        return out;
    }
    constexpr std::int32_t exact_days = 3;
    const base::Arg said = base::day_arg(*test->said);
    const base::Arg off = base::whole_arg(std::abs(test->days_off));
    const Word word = std::abs(test->days_off) <= exact_days ? Word::sure_back_right
                      : test->days_off > 0                   ? Word::sure_back_late
                                                             : Word::sure_back_early;
    out.push_back({word, {said, came, off}});
    out.push_back({test->inside ? Word::sure_back_inside : Word::sure_back_outside, {}});
    return out;
}

/// What the plan had for the days since it was made, and what was flown.
[[nodiscard]] std::vector<Message> plan_against_flown(const timeline::AircraftState& state) {
    if (!state.plan) return {{Word::sure_plan_none, {}}};
    std::vector<Message> out;
    if (!state.plan->why.empty())
        out.push_back({Word::sure_plan_why, {base::text_arg(state.plan->why)}});
    const Date since = state.plan->on;
    const auto planned = forecast::planned_since(state);
    if (!planned) {
        out.push_back({Word::sure_plan_young, {base::day_arg(since)}});
        return out;
    }
    const FlightTime flown = state.usage.back().total - forecast::total_then(state, since);
    out.push_back({Word::sure_plan_since,
                   {base::day_arg(since),
                    base::hours_used_arg(forecast::nearest_tenth(*planned)),
                    base::hours_used_arg(forecast::nearest_tenth(flown))}});
    constexpr std::int64_t percent = 100;
    if (planned->seconds > 0)
        out.push_back(
            {Word::sure_plan_share, {base::whole_arg(flown.seconds * percent / planned->seconds)}});
    return out;
}

[[nodiscard]] Assessed with_month(const Assessed& aircraft, FlightTime month) {
    timeline::AircraftState state = aircraft.state;
    timeline::StatedPlan plan;
    plan.month = month;
    plan.on = aircraft.today;
    state.plan = plan;
    return assess(std::move(state), aircraft.today, aircraft.parts);
}

}  // namespace

SureView make_sure_view(const Assessed& aircraft, std::optional<FlightTime> month) {
    const Assessed tried = month ? with_month(aircraft, *month) : Assessed{};
    const Assessed& shown = month ? tried : aircraft;
    const AircraftView page = make_aircraft_view(shown);
    SureView out;
    out.id = aircraft.state.id;
    out.registration = aircraft.state.registration;
    out.answer = page.answer;
    out.range = page.range;
    out.rate = page.rate;
    out.chance = chance_of(shown);
    out.box = page.box;
    out.month = month.value_or(FlightTime{forecast::a_year(shown.ahead).seconds / months_a_year});
    if (month) {
        out.tried = {Word::sure_tried, {base::hours_used_arg(*month)}};
        out.rate.text = out.rate.why.figure = {
            Word::say_rate_tried, {base::hours_used_arg(forecast::a_year(shown.ahead))}};
    }
    out.rows = rows_of(shown, aircraft);
    out.months = months_chart(shown);
    out.look_back = look_back(aircraft.state);
    out.plan = plan_against_flown(aircraft.state);
    out.paths = both_paths(shown);
    return out;
}

std::optional<FlightTime> month_through(const Assessed& aircraft, BoxPoint point) {
    const LifeBoxView box = life_box(aircraft);
    if (!box.known || box.line.empty()) return std::nullopt;
    const BoxPoint today = box.line.back();
    const std::int32_t across = point.across_permille - today.across_permille;
    const std::int32_t up = std::max(0, point.up_permille - today.up_permille);
    const limits::ItemDue* overhaul = overhaul_of(aircraft);
    if (across <= 0 || overhaul == nullptr) return std::nullopt;
    const limits::ClockDue* hours = limits::clock_of(*overhaul, facts::Clock::hours);
    const limits::ClockDue* calendar = limits::clock_of(*overhaul, facts::Clock::calendar);
    // Thousandths of the hours over thousandths of the days; 146,097 days are 4,800 months.
    const std::int64_t days = base::days_between(calendar->anchor_on, calendar->due_on);
    const std::int64_t month = hours->limit_hours.seconds / across * up * 146'097 / (days * 4'800);
    constexpr std::int64_t step = base::seconds_per_hour / 2;
    constexpr std::int64_t most = 744 * base::seconds_per_hour;
    return FlightTime{std::min(most, (month + step / 2) / step * step)};
}

std::vector<Why> whys_of(const SureView& view) {
    return {view.answer.why, view.range.why, view.rate.why};
}

}  // namespace twoclocks::views
