#include "engine/views/checks_view.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/views/clock_view.hpp"
#include "engine/views/due_row.hpp"
#include "engine/views/sentence.hpp"

namespace twoclocks::views {
namespace {

using base::Word;
using facts::Clock;
using limits::ClockDue;

/// Small letters of ASCII; others are compared as they are.
[[nodiscard]] std::string lower(std::string text) {
    for (char& sign : text) {
        if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
    }
    return text;
}

[[nodiscard]] std::string chapter_of(const Assessed& aircraft, base::Id item) {
    const timeline::ItemState* state = item_state(aircraft, item);
    return state == nullptr ? std::string{} : state->chapter;
}

[[nodiscard]] bool found(const limits::ItemDue& item,
                         const std::string& chapter,
                         const std::string& search) {
    if (search.empty()) return true;
    const std::string words = item_label(item) + ' ' + chapter + ' ' + item.source;
    return lower(words).find(lower(search)) != std::string::npos;
}

/// Whether an item falls due by the day or within the hours that were asked for.
[[nodiscard]] bool falls_due(const Assessed& aircraft,
                             std::int32_t place,
                             const ChecksAsked& asked) {
    if (!asked.until && !asked.within) return true;
    const auto at = static_cast<std::size_t>(place);
    const forecast::Projection& projection = aircraft.projections[at];
    const bool by_day = asked.until && (!projection.known ||
                                        (projection.early && *projection.early <= *asked.until));
    const ClockDue* hours = limits::clock_of(aircraft.items[at], Clock::hours);
    const bool by_hours =
        asked.within && hours != nullptr && (!hours->known || hours->left <= *asked.within);
    return by_day || by_hours || aircraft.item_states[at] >= State::before_next_flight;
}

/// Thousandths left of the clock that binds; of several, the least. What is not known comes first.
[[nodiscard]] std::int32_t least_permille(const Assessed& aircraft, std::int32_t place) {
    std::int32_t least = 1001;
    for (const ClockDue& clock : aircraft.items[static_cast<std::size_t>(place)].clocks) {
        const ClockView view = clock_view(&clock, aircraft.today);
        least = std::min(least, view.known ? view.left_permille : -1);
    }
    return least;
}

[[nodiscard]] CheckRow make_check(const Assessed& aircraft, std::int32_t place) {
    const limits::ItemDue& item = aircraft.items[static_cast<std::size_t>(place)];
    CheckRow row{make_row(aircraft, place), chapter_of(aircraft, item.item), {}, {}};
    if (const ClockDue* clock = limits::clock_of(item, Clock::hours))
        row.hours = clock_view(clock, aircraft.today);
    if (const ClockDue* clock = limits::clock_of(item, Clock::calendar))
        row.calendar = clock_view(clock, aircraft.today);
    return row;
}

void add_to_group(ChecksView& view, CheckRow row, bool by_chapter) {
    base::Message title{Word::blank, {}};
    if (by_chapter && row.chapter.empty()) title = {Word::checks_no_chapter, {}};
    if (by_chapter && !row.chapter.empty())
        title = {Word::checks_chapter, {base::text_arg(row.chapter)}};
    const bool same = !view.groups.empty() &&
                      (!by_chapter || view.groups.back().rows.back().chapter == row.chapter);
    if (!same) view.groups.push_back({std::move(title), {}});
    view.groups.back().rows.push_back(std::move(row));
}

}  // namespace

ChecksView make_checks_view(const Assessed& aircraft, const ChecksAsked& asked) {
    ChecksView view;
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    std::vector<std::int32_t> order = soonest_first(aircraft);
    if (asked.order == CheckOrder::least_left) {
        base::sort_stably(order, [&](std::int32_t left, std::int32_t right) {
            return least_permille(aircraft, left) < least_permille(aircraft, right);
        });
    }
    const auto chapter = [&](std::int32_t place) {
        return chapter_of(aircraft, aircraft.items[static_cast<std::size_t>(place)].item);
    };
    if (asked.order == CheckOrder::chapter) {
        base::sort_stably(order, [&](std::int32_t left, std::int32_t right) {
            const std::string first = chapter(left);
            const std::string second = chapter(right);
            if (first.empty() != second.empty()) return second.empty();  // no chapter: last
            return first < second;
        });
    }
    std::int64_t shown = 0;
    for (const std::int32_t place : order) {
        const limits::ItemDue& item = aircraft.items[static_cast<std::size_t>(place)];
        if (!found(item, chapter(place), asked.search) || !falls_due(aircraft, place, asked))
            continue;
        add_to_group(view, make_check(aircraft, place), asked.order == CheckOrder::chapter);
        ++shown;
    }
    view.summary = {Word::checks_summary,
                    {base::whole_arg(shown),
                     base::whole_arg(static_cast<std::int64_t>(aircraft.items.size()))}};
    return view;
}

std::vector<Why> whys_of(const ChecksView& view) {
    std::vector<Why> out;
    for (const ChecksGroup& group : view.groups) {
        for (const CheckRow& row : group.rows)
            add_whys(out, row.due);
    }
    return out;
}

}  // namespace twoclocks::views
