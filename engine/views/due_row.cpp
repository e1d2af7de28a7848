#include "engine/views/due_row.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/views/clock_view.hpp"
#include "engine/views/directive_view.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/sentence.hpp"
#include "engine/views/wear_view.hpp"
#include "engine/views/why.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using facts::Clock;

[[nodiscard]] Message likely_message(const forecast::Projection& projection) {
    if (!projection.known) return {Word::unknown_figure, {}};
    if (!projection.likely) return {Word::say_not_at_this_rate, {}};
    const Word word = projection.binds == Clock::hours ? Word::say_about_day : Word::say_on_day;
    return {word, {base::day_arg(*projection.likely)}};
}

/// When a limit that asks for nothing now counts.
[[nodiscard]] Message asleep_message(const limits::ItemDue& item) {
    const bool in_storage = item.in_force == facts::InForce::in_storage;
    return {in_storage ? Word::say_when_stored : Word::say_when_back, {}};
}

/// Name, serial and position of the part that an item hangs on.
[[nodiscard]] Message part_name(const limits::OnPart& part) {
    if (part.id.empty()) return {Word::blank, {}};
    std::vector<base::Arg> args{base::text_arg(part.name), base::text_arg(part.serial)};
    if (part.position.empty()) return {Word::part_named, std::move(args)};
    args.push_back(base::text_arg(part.position));
    return {Word::part_named_at, std::move(args)};
}

/// The row without marks.
[[nodiscard]] DueRow plain_row(const Assessed& aircraft, std::int32_t place) {
    const auto at = static_cast<std::size_t>(place);
    const limits::ItemDue& item = aircraft.items[at];
    const forecast::Projection& projection = aircraft.projections[at];
    const base::Arg name = base::text_arg(item_label(item));
    DueRow row;
    row.item = item.item;
    row.name = item_label(item);
    row.part = item.part.id;
    row.part_name = part_name(item.part);
    row.state = aircraft.item_states[at];
    row.state_word = state_word(row.state);
    row.binding = projection.known ? edge_of(projection.binds) : Edge::none;
    row.source = source_of(item);
    row.is_overhaul = item.role == facts::ItemRole::overhaul;
    const limits::ClockDue* shown_count = nullptr;
    for (const limits::ClockDue& clock : item.clocks) {
        Figure left = figure(left_message(clock, aircraft.today),
                             why_clock(aircraft, item, clock, {Word::why_item_left, {name}}));
        if (clock.clock == Clock::hours) row.hours_left = std::move(left);
        if (clock.clock == Clock::calendar) row.calendar_left = std::move(left);
        // Of landings and starts the one that is nearer, and one that is not known before any.
        const bool nearer = shown_count == nullptr || !clock.known ||
                            (shown_count->known && clock.left_count < shown_count->left_count);
        if (edge_of(clock.clock) != Edge::count || !nearer) continue;
        row.count_left = std::move(left);
        shown_count = &clock;
    }
    row.wear = wear_figure(aircraft, place);
    const Message by_interval = item.complied ? Message{Word::say_nothing_left, {}}
                                : item.asleep ? asleep_message(item)
                                              : likely_message(projection);
    row.directive = make_directive_view(aircraft, place);
    const Message by_standing = standing_instead(aircraft, place).value_or(by_interval);
    const Message likely = wear_likely(aircraft, place).value_or(by_standing);
    row.likely = figure(likely, why_date(aircraft, place, {Word::why_item_date, {name}}));
    return row;
}

/// What a row says of one figure; nothing when it does not have it.
using Member = base::FunctionRef<const Figure*(const DueRow&)>;

/// True when one of the other rows says something else.
[[nodiscard]] bool differs(const std::vector<DueRow>& others, const Figure& figure, Member of) {
    return std::any_of(others.begin(), others.end(), [&](const DueRow& other) {
        const Figure* one = of(other);
        return one == nullptr || !reads_alike(one->text, figure.text);
    });
}

void mark_row(const Assessed& aircraft, DueRow& row) {
    std::vector<DueRow> others;
    for (const Assessed& other : aircraft.otherwise) {
        const auto found = std::find_if(other.items.begin(),
                                        other.items.end(),
                                        [&](const auto& item) { return item.item == row.item; });
        // With that answer it is not on the aircraft: a row that says nothing.
        if (found == other.items.end())
            others.emplace_back();
        else
            others.push_back(
                plain_row(other, static_cast<std::int32_t>(found - other.items.begin())));
    }
    for (std::optional<Figure> DueRow::*member :
         {&DueRow::hours_left, &DueRow::calendar_left, &DueRow::count_left, &DueRow::wear}) {
        std::optional<Figure>& own = row.*member;
        if (!own) continue;
        const bool questioned = differs(others, *own, [&](const DueRow& other) {
            return other.*member ? &*(other.*member) : nullptr;
        });
        mark(aircraft, *own, questioned);
    }
    const bool questioned =
        differs(others, row.likely, [](const DueRow& other) { return &other.likely; });
    mark(aircraft, row.likely, questioned);
}

}  // namespace

Figure figure(Message text, Why why) {
    why.figure = text;
    return {std::move(text), std::move(why), false};
}

DueRow make_row(const Assessed& aircraft, std::int32_t place) {
    DueRow row = plain_row(aircraft, place);
    mark_row(aircraft, row);
    return row;
}

std::vector<std::int32_t> soonest_first(const Assessed& aircraft) {
    std::vector<std::int32_t> order;
    for (std::size_t place = 0; place < aircraft.items.size(); ++place)
        order.push_back(static_cast<std::int32_t>(place));
    const auto day = [&](std::int32_t place) {
        constexpr base::Date never{100'000};
        if (const std::optional<base::Date> trend = wear_first(aircraft, place)) return *trend;
        return aircraft.projections[static_cast<std::size_t>(place)].likely.value_or(never);
    };
    base::sort_stably(order, [&](std::int32_t left, std::int32_t right) {
        const State left_state = aircraft.item_states[static_cast<std::size_t>(left)];
        const State right_state = aircraft.item_states[static_cast<std::size_t>(right)];
        const bool passed = std::max(left_state, right_state) >= State::before_next_flight;
        if (passed && left_state != right_state) return left_state > right_state;
        return day(left) < day(right);
    });
    return order;
}

void add_whys(std::vector<Why>& whys, const DueRow& row) {
    for (const auto* left : {&row.hours_left, &row.calendar_left, &row.count_left, &row.wear}) {
        if (*left) whys.push_back((*left)->why);
    }
    whys.push_back(row.likely.why);
}

}  // namespace twoclocks::views
