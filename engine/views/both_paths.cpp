#include "engine/views/both_paths.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/forecast/rate.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using base::FlightTime;
using base::Message;
using base::Word;
using facts::Clock;
using facts::Renewal;
using limits::ClockDue;
using limits::ItemDue;

using Renewals = std::vector<Renewal>;

[[nodiscard]] bool renews(const Renewals& renewals, base::Id item, Clock clock) {
    return std::any_of(renewals.begin(), renewals.end(), [&](const Renewal& one) {
        const bool all = one.clocks.empty();
        const bool named =
            std::find(one.clocks.begin(), one.clocks.end(), clock) != one.clocks.end();
        return one.item == item && (all || named);
    });
}

/// One way of getting on.
struct Work {
    std::string name;  // empty: no rule is recorded
    Message source;
    Renewals renewals;
};

[[nodiscard]] Message source_of(const timeline::WorkRuleState& rule) {
    if (rule.source.empty()) return {Word::source_none, {}};
    if (rule.revision.empty()) return {Word::source_no_revision, {base::text_arg(rule.source)}};
    return {Word::source_given, {base::text_arg(rule.source), base::text_arg(rule.revision)}};
}

/// The last rule that renews the calendar of the overhaul, and its hours or not.
[[nodiscard]] std::optional<Work> work_of(const Assessed& aircraft, base::Id overhaul, bool hours) {
    std::optional<Work> out;
    for (const timeline::WorkRuleState& rule : aircraft.state.work_rules) {
        const bool fits = renews(rule.renews, overhaul, Clock::calendar) &&
                          renews(rule.renews, overhaul, Clock::hours) == hours;
        if (fits) out = Work{rule.name, source_of(rule), rule.renews};
    }
    return out;
}

/// The day the choice is due and the total expected then.
struct Choice {
    Date on;
    FlightTime total;
};

/// The items as they stand after the work, and the state they stand in.
class After {
  public:
    After(const Assessed& aircraft, const Choice& choice, const Renewals& renewals)
        : aircraft_(aircraft), choice_(choice), renewals_(renewals), state_(aircraft.state) {
        state_.usage.push_back({choice.on, choice.total, {}});
        state_.certain = state_.usage;
        for (timeline::ItemState& item : state_.items) {
            for (const Clock clock :
                 {Clock::hours, Clock::calendar, Clock::landings, Clock::starts}) {
                if (!renews(renewals, item.id, clock)) continue;
                const auto place = static_cast<std::size_t>(clock);
                if (item.renewed[place]) item.earlier[place].push_back(*item.renewed[place]);
                item.renewed[place] = timeline::Renewed{
                    choice.on, choice.total, false, state_.landings, state_.starts, {}};
            }
        }
        items_ = limits::due_items(state_, choice.on);
    }

    [[nodiscard]] bool touches(const ItemDue& item) const {
        return std::any_of(renewals_.begin(), renewals_.end(), [&](const Renewal& one) {
            return one.item == item.item;
        });
    }

    /// When an item stops it next; what is not renewed stops it when it would have anyway.
    [[nodiscard]] forecast::Projection next(std::int32_t place) const {
        const ItemDue& now = aircraft_.items[static_cast<std::size_t>(place)];
        if (!touches(now)) return aircraft_.projections[static_cast<std::size_t>(place)];
        if (!now.part.id.empty()) return project(renewed_part(now));
        const auto found = std::find_if(
            items_.begin(), items_.end(), [&](const ItemDue& one) { return one.item == now.item; });
        return found == items_.end() ? forecast::Projection{} : project(*found);
    }

    /// Hours expected from the work to a day.
    [[nodiscard]] FlightTime flown_by(Date on) const {
        return forecast::totals_to_come(aircraft_.state, aircraft_.ahead, on).likely -
               choice_.total;
    }

  private:
    [[nodiscard]] forecast::Projection project(const ItemDue& item) const {
        return forecast::project(item, state_, aircraft_.ahead, choice_.on);
    }

    /// On a part the whole interval begins again; how much the part has gained by then is the same
    /// on both paths.
    [[nodiscard]] ItemDue renewed_part(ItemDue item) const {
        for (ClockDue& clock : item.clocks) {
            if (!renews(renewals_, item.item, clock.clock)) continue;
            clock.hours_in = limits::HoursIn::total_time;
            clock.due_total = choice_.total + clock.limit_hours;
            clock.left = clock.limit_hours;
            if (clock.clock != Clock::calendar) continue;
            clock.due_on =
                clock.limit_months > 0
                    ? base::add_months(choice_.on, clock.limit_months, base::CalendarRule::exact)
                    : base::add_days(choice_.on, clock.limit_days);
        }
        return item;
    }

    const Assessed& aircraft_;
    Choice choice_;
    Renewals renewals_;
    timeline::AircraftState state_;
    std::vector<ItemDue> items_;
};

[[nodiscard]] Message day_of(const forecast::Projection& projection, bool renewed) {
    if (!projection.known || !projection.likely)
        return {renewed ? Word::path_renewed_open : Word::path_stays_open, {}};
    return {renewed ? Word::path_renewed : Word::path_stays, {base::day_arg(*projection.likely)}};
}

[[nodiscard]] std::optional<Choice> choice_of(const Assessed& aircraft) {
    const auto place = static_cast<std::size_t>(aircraft.overhaul);
    const std::optional<Date> likely = aircraft.projections[place].likely;
    if (!aircraft.projections[place].known || !likely || aircraft.state.usage.empty())
        return std::nullopt;
    const Date on = std::max(*likely, aircraft.today);
    return Choice{on, forecast::totals_to_come(aircraft.state, aircraft.ahead, on).likely};
}

[[nodiscard]] BothPathsView::Path path_of(const Work& work,
                                          const After& after,
                                          std::int32_t overhaul,
                                          Word untold) {
    BothPathsView::Path out;
    out.title = work.name.empty() ? Message{untold, {}}
                                  : Message{Word::record_of, {base::text_arg(work.name)}};
    out.source = work.source;
    const forecast::Projection next = after.next(overhaul);
    if (!next.likely) {
        out.next_stop = {Word::path_never, {}};
        return out;
    }
    out.gained = after.flown_by(*next.likely);
    const Word word = next.binds == Clock::hours ? Word::path_next_hours : Word::path_next_calendar;
    out.next_stop = {word,
                     {base::day_arg(*next.likely),
                      base::hours_used_arg(forecast::nearest_tenth(after.flown_by(*next.likely)))}};
    return out;
}

/// What each path says of the day on which the other one stops.
void compare(BothPathsView& view,
             const std::vector<After>& after,
             std::int32_t overhaul,
             Date chosen_on) {
    const auto first = after[0].next(overhaul).likely;
    const auto second = after[1].next(overhaul).likely;
    if (!first || !second) return;
    const bool shorter_first = *first < *second;
    const Date until = std::max(*first, *second);
    view.horizon = {chosen_on,
                    until,
                    after[shorter_first ? 1 : 0].flown_by(until),
                    -1,
                    std::min(*first, *second)};
    if (*first == *second) return;
    view.horizon->sooner = shorter_first ? 0 : 1;
    BothPathsView::Path& shorter = view.paths[shorter_first ? 0 : 1];
    shorter.after = {
        Word::path_once_more,
        {base::day_arg(std::min(*first, *second)), base::day_arg(std::max(*first, *second))}};
}

void add_items(BothPathsView& view, const std::vector<After>& after, const Assessed& aircraft) {
    std::int32_t others = 0;
    for (std::size_t place = 0; place < aircraft.items.size(); ++place) {
        const ItemDue& item = aircraft.items[place];
        if (!item.mandatory() || item.is_stored || item.complied || item.asleep) continue;
        const auto here = static_cast<std::int32_t>(place);
        const bool touched = std::any_of(
            after.begin(), after.end(), [&](const After& one) { return one.touches(item); });
        if (!touched) {
            ++others;
            continue;
        }
        PathItem row;
        row.name = item_label(item);
        row.full_path = day_of(after.back().next(here), after.back().touches(item));
        row.calendar_path = after.size() < 2
                                ? Message{Word::blank, {}}
                                : day_of(after.front().next(here), after.front().touches(item));
        view.items.push_back(std::move(row));
    }
    if (others > 0) view.others = {Word::path_others, {base::whole_arg(others)}};
}

void add_given_up(BothPathsView& view, const ItemDue& overhaul, const Choice& choice) {
    const ClockDue* hours = limits::clock_of(overhaul, Clock::hours);
    const ClockDue* calendar = limits::clock_of(overhaul, Clock::calendar);
    const FlightTime left = hours->due_total - choice.total;
    if (calendar->due_on > choice.on) {
        const base::Span span = base::span_between(choice.on, calendar->due_on);
        view.given_up = {Word::path_gives_up_calendar, {base::span_arg(span)}};
    } else if (left.seconds > 0) {
        view.given_up = {Word::path_gives_up_hours, {base::hours_left_arg(left)}};
    }
}

}  // namespace

BothPathsView both_paths(const Assessed& aircraft) {
    BothPathsView out;
    const ItemDue* overhaul = overhaul_of(aircraft);
    const bool has_both = overhaul != nullptr &&
                          limits::clock_of(*overhaul, Clock::hours) != nullptr &&
                          limits::clock_of(*overhaul, Clock::calendar) != nullptr;
    if (!has_both) {
        out.missing = {Word::path_no_limit, {}};
        return out;
    }
    const std::optional<Choice> choice = choice_of(aircraft);
    if (!choice || !overhaul->all_known()) {
        out.missing = {Word::path_no_date, {}};
        return out;
    }
    out.when = {
        Word::path_when,
        {base::day_arg(choice->on), base::hours_used_arg(forecast::nearest_tenth(choice->total))}};
    add_given_up(out, *overhaul, *choice);
    if (const auto rate = forecast::break_even(*overhaul, aircraft.today)) {
        constexpr std::int64_t months_a_year = 12;
        out.meet = {Word::path_meet, {base::hours_left_arg({rate->seconds / months_a_year})}};
    }
    const std::optional<Work> calendar_work = work_of(aircraft, overhaul->item, false);
    const Work full =
        work_of(aircraft, overhaul->item, true)
            .value_or(Work{{}, {Word::source_none, {}}, {Renewal{overhaul->item, {}}}});
    std::vector<After> after;
    if (calendar_work) {
        after.emplace_back(aircraft, *choice, calendar_work->renewals);
        out.paths.push_back(
            path_of(*calendar_work, after.back(), aircraft.overhaul, Word::path_calendar_work));
    } else {
        out.missing = {Word::path_no_rule, {}};
    }
    after.emplace_back(aircraft, *choice, full.renewals);
    out.paths.push_back(path_of(full, after.back(), aircraft.overhaul, Word::path_full_untold));
    if (calendar_work) compare(out, after, aircraft.overhaul, choice->on);
    add_items(out, after, aircraft);
    return out;
}

}  // namespace twoclocks::views
