#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/timeline/storage.hpp"
#include "engine/views/clock_view.hpp"
#include "engine/views/due_row.hpp"
#include "engine/views/event_view.hpp"
#include "engine/views/life_box.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/return_view.hpp"
#include "engine/views/sentence.hpp"
#include "engine/views/wear_view.hpp"
#include "engine/views/why.hpp"
#include "engine/views/why_ahead.hpp"
#include "engine/views/why_limits.hpp"
#include "engine/views/why_use.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using facts::Clock;
using forecast::RateBasis;

/// The figure of one overhaul clock, with its why; unknown when there is none.
[[nodiscard]] Figure overhaul_clock(const Assessed& aircraft, Clock which, Word title) {
    const limits::ItemDue* overhaul = overhaul_of(aircraft);
    const limits::ClockDue* clock =
        overhaul == nullptr ? nullptr : limits::clock_of(*overhaul, which);
    if (clock == nullptr) return figure({Word::unknown_figure, {}}, {{title, {}}, {}, {}});
    return figure(left_message(*clock, aircraft.today),
                  why_clock(aircraft, *overhaul, *clock, {title, {}}));
}

[[nodiscard]] Why why_overhaul_date(const Assessed& aircraft, Word title) {
    Why why{{title, {}}, {}, {}};
    if (aircraft.overhaul >= 0) why = why_date(aircraft, aircraft.overhaul, {title, {}});
    if (title == Word::why_answer) explain_events(why, aircraft);
    if (aircraft.overhaul < 0) return why;
    if (title == Word::why_answer) why.lines.push_back({{Word::why_all_mandatory, {}}, {}});
    if (title == Word::why_range) explain_ways(why, aircraft);
    return why;
}

[[nodiscard]] Figure answer_figure(const Assessed& aircraft) {
    return figure(answer_sentence(aircraft), why_overhaul_date(aircraft, Word::why_answer));
}

[[nodiscard]] Figure range_figure(const Assessed& aircraft) {
    return figure(range_sentence(aircraft), why_overhaul_date(aircraft, Word::why_range));
}

[[nodiscard]] Figure hours_figure(const Assessed& aircraft) {
    return overhaul_clock(aircraft, Clock::hours, Word::why_hours_left);
}

[[nodiscard]] Figure calendar_figure(const Assessed& aircraft) {
    return overhaul_clock(aircraft, Clock::calendar, Word::why_calendar_left);
}

[[nodiscard]] Figure total_figure(const Assessed& aircraft) {
    if (aircraft.state.usage.empty())
        return figure({Word::say_no_reading_card, {}}, why_total(aircraft));
    const timeline::UsagePoint& last = aircraft.state.usage.back();
    return figure({Word::say_total, {base::hours_used_arg(last.total), base::day_arg(last.on)}},
                  why_total(aircraft));
}

[[nodiscard]] Figure rate_figure(const Assessed& aircraft) {
    const forecast::FlyingAhead& ahead = aircraft.ahead;
    if (ahead.basis == RateBasis::unknown)
        return figure({Word::say_no_rate_card, {}}, why_rate(aircraft));
    const bool as_measured = ahead.basis == RateBasis::measured || ahead.plan_gives_way;
    const Word word = as_measured ? Word::say_rate : Word::say_rate_stated;
    return figure({word, {base::hours_used_arg(forecast::a_year(ahead))}}, why_rate(aircraft));
}

[[nodiscard]] Figure break_even_figure(const Assessed& aircraft) {
    const limits::ItemDue* overhaul = overhaul_of(aircraft);
    const auto rate =
        overhaul == nullptr ? std::nullopt : forecast::break_even(*overhaul, aircraft.today);
    if (!rate) return figure({Word::say_break_even_none, {}}, why_break_even(aircraft));
    return figure({Word::say_break_even, {base::hours_left_arg(*rate)}}, why_break_even(aircraft));
}

[[nodiscard]] std::vector<Message> make_cautions(const Assessed& aircraft) {
    std::vector<Message> out;
    const timeline::AircraftState& state = aircraft.state;
    if (state.invented) out.push_back({Word::caution_invented, {}});
    if (state.unknown_records > 0)
        out.push_back({Word::caution_newer, {base::whole_arg(state.unknown_records)}});
    if (!state.usage.empty()) {
        const std::int32_t age_days = base::days_between(state.usage.back().on, aircraft.today);
        if (age_days > old_reading_days)
            out.push_back({Word::caution_old_reading, {base::whole_arg(age_days)}});
    }
    bool no_source = false;
    for (const limits::ItemDue& item : aircraft.items) {
        no_source = no_source || (!item.clocks.empty() && item.source.empty());
        for (const limits::ClockDue& clock : item.clocks) {
            const base::Arg name = base::text_arg(item_label(item));
            if (!item.part.id.empty() && (clock.estimated || clock.part_estimated)) {
                out.push_back({Word::caution_part_estimate, {name}});
            } else if (clock.estimated) {
                out.push_back({Word::caution_estimate, {name}});
            }
        }
    }
    if (aircraft.core_due) out.push_back(core_caution(aircraft));
    for (base::Message& caution : limit_cautions(aircraft))
        out.push_back(std::move(caution));
    for (base::Message& caution : wear_cautions(aircraft))
        out.push_back(std::move(caution));
    for (base::Message& caution : use_cautions(aircraft))
        out.push_back(std::move(caution));
    if (no_source) out.push_back({Word::caution_no_source, {}});
    return out;
}

/// What does not add up about a part aboard is the aircraft's to look at.
void add_troubles(const timeline::PartState& part, AircraftView& view) {
    for (const timeline::Caution& caution : part.cautions)
        view.troubles.push_back({caution.code, caution.args, base::Severity::caution, 0, {}});
    for (const timeline::PartProblem& problem : part.problems)
        view.troubles.push_back({problem.code, problem.args, problem.severity, 0, {}});
}

}  // namespace

AircraftView make_aircraft_view(const Assessed& aircraft) {
    AircraftView view;
    for (const timeline::Caution& caution : aircraft.state.cautions) {
        view.troubles.push_back({caution.code, caution.args, base::Severity::caution, 0, {}});
    }
    for (const timeline::PartState& part : aircraft.parts)
        add_troubles(part, view);
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    view.type = aircraft.state.type;
    view.serial = aircraft.state.serial;
    view.state = aircraft.overall;
    view.state_word = state_word(aircraft.overall);
    view.hours_left = marked(aircraft, &hours_figure);
    view.calendar_left = marked(aircraft, &calendar_figure);
    view.hours_known = view.hours_left.text.word != Word::unknown_figure;
    view.calendar_known = view.calendar_left.text.word != Word::unknown_figure;
    view.answer = marked(aircraft, &answer_figure);
    view.answer_edge = answer_edge(aircraft);
    view.range = marked(aircraft, &range_figure);
    view.box = life_box(aircraft);
    view.total_time = marked(aircraft, &total_figure);
    view.rate = marked(aircraft, &rate_figure);
    view.break_even = marked(aircraft, &break_even_figure);
    for (const std::int32_t place : soonest_first(aircraft)) {
        if (!aircraft.items[static_cast<std::size_t>(place)].asleep)
            view.due.push_back(make_row(aircraft, place));
    }
    view.storage = storage_lines(aircraft);
    view.can_return = timeline::storage_on(aircraft.state.storage, aircraft.today) != nullptr;
    view.events = make_event_views(aircraft.state.events);
    view.questions = make_questions(open_questions(aircraft));
    view.cautions = make_cautions(aircraft);
    return view;
}

std::vector<Why> whys_of(const AircraftView& view) {
    std::vector<Why> out{view.answer.why,
                         view.hours_left.why,
                         view.calendar_left.why,
                         view.range.why,
                         view.total_time.why,
                         view.rate.why,
                         view.break_even.why};
    for (const EventView& event : view.events)
        out.push_back(event.title.why);
    for (const DueRow& row : view.due)
        add_whys(out, row);
    return out;
}

}  // namespace twoclocks::views
