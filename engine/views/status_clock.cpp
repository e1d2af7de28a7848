#include "engine/views/status_clock.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/views/clock_view.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/sentence.hpp"
#include "engine/views/why.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using facts::Clock;
using limits::ClockDue;
using limits::ItemDue;

[[nodiscard]] Message limit_message(const ClockDue& clock) {
    switch (clock.clock) {
        case Clock::hours:
            return {Word::hours_figure, {base::hours_left_arg(clock.limit_hours)}};
        case Clock::calendar:
            if (clock.limit_months > 0)
                return {Word::status_months, {base::whole_arg(clock.limit_months)}};
            return {Word::status_days, {base::whole_arg(clock.limit_days)}};
        case Clock::landings:
        case Clock::starts:
            return count_figure(clock.limit_count.value);
    }
    return unknown_figure();
}

[[nodiscard]] Message used_message(const ClockDue& clock, base::Date today) {
    if (!clock.known) return unknown_figure();
    switch (clock.clock) {
        case Clock::hours:
            return {Word::hours_figure, {base::hours_used_arg(clock.used)}};
        case Clock::calendar:
            return {Word::span_figure,
                    {base::span_arg(base::span_between(clock.anchor_on, today))}};
        case Clock::landings:
        case Clock::starts:
            return count_figure(clock.limit_count.value - clock.left_count.value);
    }
    return unknown_figure();
}

[[nodiscard]] Message next_message(const ItemDue& item, const ClockDue& clock) {
    if (!clock.known) return unknown_figure();
    switch (clock.clock) {
        case Clock::hours:
            return {item.part.id.empty() ? Word::status_at_hours : Word::status_at_part_hours,
                    {base::hours_left_arg(clock.due_total)}};
        case Clock::calendar:
            return {Word::status_on_day, {base::day_arg(clock.due_on)}};
        case Clock::landings:
        case Clock::starts:
            return {Word::status_at_count,
                    {base::whole_arg((clock.anchor_count + clock.limit_count).value)}};
    }
    return unknown_figure();
}

[[nodiscard]] StatusClock clock_row(const Assessed& aircraft,
                                    const ItemDue& item,
                                    const ClockDue& clock) {
    const Message title{Word::why_item_left, {base::text_arg(item_label(item))}};
    Why why = why_clock(aircraft, item, clock, title);
    why.figure = left_message(clock, aircraft.today);
    return {edge_of(clock.clock),
            limit_message(clock),
            used_message(clock, aircraft.today),
            left_message(clock, aircraft.today),
            next_message(item, clock),
            clock.passed(),
            std::move(why),
            false};
}

[[nodiscard]] bool reads_alike(const StatusClock& left, const StatusClock& right) {
    return views::reads_alike(left.limit, right.limit) &&
           views::reads_alike(left.used, right.used) && views::reads_alike(left.left, right.left) &&
           views::reads_alike(left.next, right.next);
}

/// True when an item says something else of a clock with one of the other answers.
[[nodiscard]] bool differs(const Assessed& aircraft, base::Id item, const StatusClock& clock) {
    const auto same = [&](const Assessed& other) {
        for (const ItemDue& one : other.items) {
            for (const ClockDue& due : one.clocks) {
                const bool asked = one.item == item && edge_of(due.clock) == clock.edge;
                if (asked && reads_alike(clock_row(other, one, due), clock)) return true;
            }
        }
        return false;
    };
    return !std::all_of(aircraft.otherwise.begin(), aircraft.otherwise.end(), same);
}

}  // namespace

Message count_figure(std::int64_t number) {
    return {Word::count_figure, {base::whole_arg(number)}};
}

Message unknown_figure() {
    return {Word::unknown_figure, {}};
}

StatusClock status_clock(const Assessed& aircraft, const ItemDue& item, const ClockDue& clock) {
    StatusClock out = clock_row(aircraft, item, clock);
    out.questioned = mark(aircraft, out.why, differs(aircraft, item.item, out));
    return out;
}

}  // namespace twoclocks::views
