#include "engine/views/sentence.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/views/directive_view.hpp"
#include "engine/views/event_view.hpp"
#include "engine/views/wear_view.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using facts::Clock;
using limits::ClockDue;
using limits::ItemDue;

[[nodiscard]] const ItemDue& item_at(const Assessed& aircraft, std::int32_t place) {
    return aircraft.items[static_cast<std::size_t>(place)];
}

/// The clock of a passed item that tells the most: hours flown past, then counts, before a date.
[[nodiscard]] const ClockDue* passed_clock(const ItemDue& item) {
    const ClockDue* out = nullptr;
    for (const auto* clocks : {&item.clocks, &item.caps}) {
        for (const ClockDue& clock : *clocks) {
            const bool tells_more = out == nullptr || out->clock == Clock::calendar;
            if (clock.passed() && tells_more) out = &clock;
        }
    }
    return out;
}

struct PassedWords {
    Word over_wear;
    Word over_hours;
    Word over_counts;
    Word over_calendar;
    Word before_flight;
    Word over_storage;
    Word over_return;
    Word before_return;
};

[[nodiscard]] bool is_on_return(const ClockDue& clock) {
    return clock.by_storage == limits::ByStorage::stored ||
           clock.by_storage == limits::ByStorage::back;
}

[[nodiscard]] Message passed_sentence(const Assessed& aircraft, const PassedWords& words) {
    const ItemDue& item = item_at(aircraft, aircraft.worst);
    const ClockDue* clock = passed_clock(item);
    const base::Arg name = base::text_arg(item_label(item));
    if (clock == nullptr && is_worn_past(aircraft, aircraft.worst))
        return {words.over_wear, {name}};
    if (clock == nullptr || clock->clock == Clock::hours) return {words.over_hours, {name}};
    if (clock->clock != Clock::calendar) return {words.over_counts, {name}};
    const base::Arg day = base::day_arg(clock->due_on);
    if (item.may_be_stored) return {words.over_storage, {name, day}};
    if (is_on_return(*clock)) {
        const bool flown = aircraft.overall == State::over;
        return {flown ? words.over_return : words.before_return, {name}};
    }
    if (aircraft.overall == State::before_next_flight) return {words.before_flight, {name, day}};
    return {words.over_calendar, {name, day}};
}

struct UnknownWords {
    Word newer;
    Word question;
    Word reading;
    Word limit;
    Word rate;
};

/// Why there is no answer; nothing when there is one.
[[nodiscard]] std::optional<Message> unknown_sentence(const Assessed& aircraft,
                                                      const UnknownWords& words) {
    const auto is_newer = [](const auto& state) { return state.unknown_records > 0; };
    const auto& parts = aircraft.parts;
    if (is_newer(aircraft.state) || std::any_of(parts.begin(), parts.end(), is_newer))
        return Message{words.newer, {}};
    for (const timeline::Question& question : open_questions(aircraft)) {
        if (question.no_safe_side) return Message{words.question, {}};
    }
    const ItemDue* overhaul = overhaul_of(aircraft);
    if (overhaul == nullptr || overhaul->clocks.empty()) return Message{words.limit, {}};
    if (aircraft.state.usage.empty()) return Message{words.reading, {}};
    const forecast::Projection& projection =
        aircraft.projections[static_cast<std::size_t>(aircraft.overhaul)];
    if (!projection.known) return Message{words.rate, {}};
    return std::nullopt;
}

[[nodiscard]] bool is_passed(State state) {
    return state == State::over || state == State::before_next_flight;
}

/// The first mandatory stop when it is not the overhaul itself.
[[nodiscard]] const forecast::FirstStop* stop_before_overhaul(const Assessed& aircraft) {
    if (!aircraft.first || aircraft.first->item == aircraft.overhaul) return nullptr;
    return &*aircraft.first;
}

/// The item that the card speaks of: the one that asks for something, else the first that stops it.
[[nodiscard]] std::int32_t card_subject(const Assessed& aircraft) {
    const bool is_act = aircraft.overall == State::act && !only_core_asks(aircraft);
    const bool asks = is_act || aircraft.overall == State::due;
    if (asks && aircraft.worst >= 0) return aircraft.worst;
    const forecast::FirstStop* stop = stop_before_overhaul(aircraft);
    return stop == nullptr ? aircraft.overhaul : stop->item;
}

}  // namespace

Edge edge_of(Clock clock) {
    switch (clock) {
        case Clock::hours:
            return Edge::hours;
        case Clock::calendar:
            return Edge::calendar;
        case Clock::landings:
        case Clock::starts:
            return Edge::count;
    }
    return Edge::none;
}

Edge answer_edge(const Assessed& aircraft) {
    if (aircraft.overhaul < 0) return Edge::none;
    const forecast::Projection& projection =
        aircraft.projections[static_cast<std::size_t>(aircraft.overhaul)];
    return projection.known ? edge_of(projection.binds) : Edge::none;
}

Message card_sentence(const Assessed& aircraft) {
    if (const auto event = event_sentence(aircraft, Word::say_event_card)) return *event;
    if (const auto directive = directive_sentence(aircraft, Word::say_directive_card))
        return *directive;
    if (only_core_asks(aircraft)) return core_caution(aircraft);
    if (is_passed(aircraft.overall) && aircraft.worst >= 0) {
        return passed_sentence(aircraft,
                               {Word::say_over_wear_card,
                                Word::say_over_card,
                                Word::say_over_card,
                                Word::say_over_calendar_card,
                                Word::say_lapsed_card,
                                Word::say_over_storage_card,
                                Word::say_over_return_card,
                                Word::say_return_card});
    }
    const auto unknown = unknown_sentence(aircraft,
                                          {Word::say_newer_card,
                                           Word::say_question_card,
                                           Word::say_no_reading_card,
                                           Word::say_no_limit_card,
                                           Word::say_no_rate_card});
    if (unknown) return *unknown;
    const std::int32_t subject = card_subject(aircraft);
    const forecast::Projection& stop = aircraft.projections[static_cast<std::size_t>(subject)];
    if (subject != aircraft.overhaul && stop.likely) {
        const bool by_hours = stop.binds == Clock::hours;
        return {
            by_hours ? Word::say_next_hours_card : Word::say_next_card,
            {base::text_arg(item_label(item_at(aircraft, subject))), base::day_arg(*stop.likely)}};
    }
    const forecast::Projection& projection =
        aircraft.projections[static_cast<std::size_t>(aircraft.overhaul)];
    if (!projection.likely) return {Word::say_never_card, {}};
    if (projection.binds == Clock::hours)
        return {Word::say_hours_stop_card, {base::month_arg(*projection.likely)}};
    return {Word::say_calendar_stops_card, {base::day_arg(*projection.likely)}};
}

Message answer_sentence(const Assessed& aircraft) {
    if (const auto event = event_sentence(aircraft, Word::say_event)) return *event;
    if (const auto directive = directive_sentence(aircraft, Word::say_directive)) return *directive;
    if (is_passed(aircraft.overall) && aircraft.worst >= 0) {
        return passed_sentence(aircraft,
                               {Word::say_over_wear,
                                Word::say_over_hours,
                                Word::say_over_counts,
                                Word::say_over_calendar,
                                Word::say_before_flight,
                                Word::say_over_storage,
                                Word::say_over_return,
                                Word::say_return});
    }
    const auto unknown = unknown_sentence(aircraft,
                                          {Word::say_unknown_newer,
                                           Word::say_unknown_question,
                                           Word::say_unknown_reading,
                                           Word::say_unknown_limit,
                                           Word::say_unknown_rate});
    if (unknown) return *unknown;
    const forecast::Projection& projection =
        aircraft.projections[static_cast<std::size_t>(aircraft.overhaul)];
    if (!projection.likely) return {Word::say_never_card, {}};
    const bool by_hours = projection.binds == Clock::hours;
    const base::Arg day = base::day_arg(*projection.likely);
    const forecast::FirstStop* stop = stop_before_overhaul(aircraft);
    if (stop == nullptr) return {by_hours ? Word::say_hours_stop : Word::say_calendar_stops, {day}};
    return {by_hours ? Word::say_hours_stop_then : Word::say_calendar_stops_then,
            {day,
             base::text_arg(item_label(item_at(aircraft, stop->item))),
             base::day_arg(*stop->projection.likely)}};
}

Message range_sentence(const Assessed& aircraft) {
    if (aircraft.overhaul < 0) return {Word::say_range_unknown, {}};
    const forecast::Projection& projection =
        aircraft.projections[static_cast<std::size_t>(aircraft.overhaul)];
    if (!projection.known || !projection.early) return {Word::say_range_unknown, {}};
    if (!projection.late) return {Word::say_range_open, {base::month_arg(*projection.early)}};
    if (*projection.early == *projection.late) {
        const bool by_hours = projection.binds == Clock::hours;
        return {by_hours ? Word::say_range_one_rate : Word::say_range_none, {}};
    }
    return {Word::say_range,
            {base::month_arg(*projection.early), base::month_arg(*projection.late)}};
}

}  // namespace twoclocks::views
