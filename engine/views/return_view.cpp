#include "engine/views/return_view.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/timeline/storage.hpp"
#include "engine/views/due_row.hpp"
#include "engine/views/record_care.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using base::Word;
using timeline::StorageSpell;

/// A storage that lasts or is to come, null when there is none.
[[nodiscard]] const StorageSpell* next_storage(const Assessed& aircraft) {
    const timeline::StorageState& storage = aircraft.state.storage;
    if (const StorageSpell* now = timeline::storage_on(storage, aircraft.today)) return now;
    for (const StorageSpell& spell : storage.spells) {
        if (spell.from > aircraft.today) return &spell;
    }
    return storage.in_question.empty() ? nullptr : &storage.in_question.front();
}

[[nodiscard]] Assessed returned(const Assessed& aircraft, Date on) {
    return assess(timeline::returned_on(aircraft.state, on), on, aircraft.parts);
}

[[nodiscard]] ReturnGroup group_of(const Assessed& back, State state, Word title) {
    ReturnGroup out{{title, {}}, {}};
    for (const std::int32_t place : soonest_first(back)) {
        const auto at = static_cast<std::size_t>(place);
        const State one = back.item_states[at];
        const bool stops = one >= State::before_next_flight;
        if (stops ? state != State::before_next_flight : one != state) continue;
        if (!stops && !back.items[at].mandatory()) continue;
        out.rows.push_back(make_row(back, place));
    }
    return out;
}

}  // namespace

Date usual_return(const Assessed& aircraft) {
    const StorageSpell* spell = next_storage(aircraft);
    const Date today = aircraft.today;
    return spell != nullptr && spell->until ? std::max(*spell->until, today) : today;
}

ReturnView make_return_view(const Assessed& aircraft, Date asked) {
    const Date on = std::max(asked, aircraft.today);
    Assessed back = returned(aircraft, on);
    for (const Assessed& other : aircraft.otherwise)
        back.otherwise.push_back(returned(other, on));
    back.has_more_ways = aircraft.has_more_ways;
    ReturnView view;
    view.id = back.state.id;
    view.registration = back.state.registration;
    view.storage = storage_lines(aircraft);
    for (const timeline::EventState& event : back.state.events) {
        view.events.push_back(
            {Word::return_event,
             {base::word_arg(event_word(event.event.happened)), base::day_arg(event.on)}});
    }
    ReturnGroup before = group_of(back, State::before_next_flight, Word::return_before);
    view.summary = {
        Word::return_summary,
        {base::day_arg(on), base::whole_arg(static_cast<std::int64_t>(before.rows.size()))}};
    view.is_empty = before.rows.empty() && view.events.empty();
    for (ReturnGroup& group :
         std::vector<ReturnGroup>{std::move(before),
                                  group_of(back, State::due, Word::return_soon),
                                  group_of(back, State::unknown, Word::return_unknown)}) {
        if (!group.rows.empty()) view.groups.push_back(std::move(group));
    }
    return view;
}

std::vector<base::Message> storage_lines(const Assessed& aircraft) {
    std::vector<base::Message> out;
    const StorageSpell* spell = next_storage(aircraft);
    if (spell == nullptr) return out;
    if (!aircraft.state.storage.in_question.empty()) {
        out.push_back({Word::caution_storage_doubt, {}});
        return out;
    }
    if (spell->from > aircraft.today) {
        out.push_back({Word::storage_ahead, {base::day_arg(spell->from)}});
    } else if (spell->source.empty()) {
        out.push_back({Word::storage_since_no_source, {base::day_arg(spell->from)}});
    } else {
        out.push_back(
            {Word::storage_since, {base::day_arg(spell->from), base::text_arg(spell->source)}});
    }
    if (spell->until) out.push_back({Word::storage_back, {base::day_arg(*spell->until)}});
    return out;
}

std::vector<Why> whys_of(const ReturnView& view) {
    std::vector<Why> out;
    for (const ReturnGroup& group : view.groups) {
        for (const DueRow& row : group.rows)
            add_whys(out, row);
    }
    return out;
}

}  // namespace twoclocks::views
