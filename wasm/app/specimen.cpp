#include "wasm/app/specimen.hpp"

#include "wasm/app/specimen_fields.hpp"

#include <array>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using views::Edge;
using views::State;

constexpr std::int32_t day_some = 20'782;  // 2026-11-25
constexpr std::int32_t box_side = 1000;

struct NamedState {
    State state;
    Word word;
};

constexpr std::array<NamedState, 6> states{{{State::nothing_due, Word::state_nothing_due},
                                            {State::act, Word::state_act},
                                            {State::unknown, Word::state_unknown},
                                            {State::due, Word::state_due},
                                            {State::before_next_flight, Word::state_before_flight},
                                            {State::over, Word::state_over}}};

Message day_words(Word word, std::int32_t days_on) {
    return {word, {base::day_arg(base::Date{day_some + days_on})}};
}

Message hours_left(std::int64_t tenths) {
    return {Word::hours_figure, {base::hours_left_arg(base::tenths(tenths))}};
}

Message span(std::int32_t years, std::int32_t days) {
    return {Word::span_figure, {base::span_arg({years, days, false})}};
}

base::Id id_of(std::uint32_t number) {
    return {1, number};
}

/// A life flown evenly to a point, with what may come of it.
views::LifeBoxView life_box(std::int32_t across, std::int32_t up, Edge meets) {
    views::LifeBoxView box;
    box.known = true;
    box.hours_edge = {Word::box_hours_edge, {base::hours_whole_arg(base::hours(2400))}};
    box.calendar_edge = {Word::day_figure, {base::month_arg(base::Date{day_some + 2750})}};
    box.start = {Word::day_figure, {base::month_arg(base::Date{day_some - 1633})}};
    box.width = {Word::box_years, {base::whole_arg(12)}};
    box.hour_ticks = 24;
    box.year_ticks = 12;
    for (std::int32_t step = 0; step <= 8; ++step) {
        const std::int32_t season = step % 2 == 0 ? 0 : up / 40;
        box.line.push_back({across * step / 8, up * step / 8 + season});
    }
    box.fan_known = meets != Edge::none;
    box.meets = meets;
    if (meets == Edge::hours) {
        box.early = {across + (box_side - across) / 3, box_side};
        box.likely = {across + (box_side - across) / 2, box_side};
        box.late = {across + (box_side - across) * 2 / 3, box_side};
        box.marks = {{Edge::calendar, across + (box_side - across) / 4, {Word::specimen_mark, {}}}};
    } else if (meets == Edge::calendar) {
        box.early = {box_side, up + (box_side - up) / 3};
        box.likely = {box_side, up + (box_side - up) / 4};
        box.late = {box_side, up + (box_side - up) / 6};
    }
    box.spoken = {Word::specimen_box, {}};
    return box;
}

std::vector<views::LifeBoxView> boxes() {
    views::LifeBoxView missing;
    missing.missing = {Word::box_missing_limit, {}};
    return {life_box(380, 565, Edge::hours),
            life_box(680, 300, Edge::calendar),
            life_box(740, 1014, Edge::none),
            missing};
}

std::vector<views::AircraftCard> cards() {
    std::vector<views::AircraftCard> made;
    const std::vector<views::LifeBoxView> pictures = boxes();
    for (std::uint32_t i = 0; i < states.size(); ++i) {
        views::AircraftCard card;
        card.id = id_of(i + 1);
        card.registration = "ISLE-" + std::to_string(i + 1);
        card.state = states[i].state;
        card.state_word = {states[i].word, {}};
        card.sentence = day_words(Word::say_hours_stop, 400);
        const bool over = card.state == State::over;
        const bool known = card.state != State::unknown;
        card.hours = {known, hours_left(over ? -32 : 10'440), over ? 0 : 435, over};
        if (!known) card.hours.left = {Word::unknown_figure, {}};
        card.calendar = {true, span(7, 166), 621, false};
        card.box = pictures[i % pictures.size()];
        made.push_back(std::move(card));
    }
    return made;
}

views::DueRow due_row(std::uint32_t number) {
    views::DueRow row;
    row.item = id_of(20 + number);
    row.name = "B-" + std::to_string(number + 1);
    row.state = states[number].state;
    row.state_word = {states[number].word, {}};
    row.binding = Edge::hours;
    row.hours_left = views::Figure{hours_left(row.state == State::over ? -32 : 440), {}};
    row.calendar_left = views::Figure{span(0, 126), {}};
    row.likely = {day_words(Word::day_figure, 126), {}};
    row.source = {Word::source_none, {}};
    return row;
}

views::QuestionView question() {
    views::QuestionView made;
    made.what = {Word::question_falling, {}};
    made.in_use = {Word::question_in_use_higher, {}};
    for (const std::int64_t tenths : {12'345, 12'245}) {
        made.sides.push_back({id_of(40),
                              {Word::record_reading, {base::hours_left_arg(base::tenths(tenths))}},
                              day_words(Word::day_figure, 0)});
    }
    return made;
}

std::vector<views::HistoryRow> rows() {
    std::vector<views::HistoryRow> made(4);
    for (std::uint32_t i = 0; i < made.size(); ++i) {
        made[i].fact = id_of(60 + i);
        made[i].date = day_words(Word::day_figure, -static_cast<std::int32_t>(i));
        made[i].what = {Word::record_reading, {base::hours_left_arg(base::tenths(12'368))}};
        made[i].detail = {Word::blank, {}};
        made[i].told_by = day_words(Word::day_figure, 0);
    }
    made[1].corrected = true;
    made[2].withdrawn = true;
    made[3].questioned = true;
    return made;
}

/// An assembly, a part in it, and one of which little is known in that.
std::vector<views::PartRow> parts() {
    std::vector<views::PartRow> made(3);
    for (std::uint32_t i = 0; i < made.size(); ++i) {
        views::PartRow& row = made[i];
        row.part = id_of(80 + i);
        row.depth = static_cast<std::int32_t>(i);
        row.name = {Word::field_part_name, {}};
        row.plate = {Word::record_part_detail,
                     {base::text_arg("00-00"), base::text_arg(std::to_string(i))}};
        row.position = {Word::field_position, {}};
        row.since_new = {i == 1 ? Word::part_about : Word::part_gained,
                         {base::hours_used_arg(base::tenths(12'368))}};
        row.since_overhaul = {Word::unknown_figure, {}};
        row.condition = {Word::condition_as_removed, {}};
    }
    made[1].marks = {{Word::part_flag_estimate, {}}};
    made[2].since_new = {Word::unknown_figure, {}};
    made[2].marks = {{Word::part_flag_history, {}}, {Word::flag_questioned, {}}};
    return made;
}

/// A task that is done, one that decides the end, one that does not.
std::vector<views::PlanTaskRow> tasks() {
    const auto day = [](std::int32_t days) { return base::day_arg(base::Date{day_some + days}); };
    std::vector<views::PlanTaskRow> made(3);
    constexpr std::array names{Word::task_quotes, Word::task_kit, Word::task_queue};
    for (std::uint32_t i = 0; i < made.size(); ++i) {
        const auto start = static_cast<std::int32_t>(i) * 150;
        made[i].key = "specimen-" + std::to_string(i);
        made[i].name = {names[i], {}};
        made[i].days = {Word::plan_task_days, {day(start), day(start + 250)}};
        made[i].from_permille = start;
        made[i].to_permille = start + 250;
        made[i].late_permille = start + 400;
    }
    made[0].done = true;
    made[0].days = {Word::plan_task_done, {day(250)}};
    made[1].decides_often = true;
    made[1].decides = {Word::plan_decides_always, {}};
    made[2].decides = {Word::plan_decides_never, {}};
    return made;
}

views::ChartView chart() {
    constexpr std::array<std::int32_t, 12> flown{
        120, 90, 260, 430, 700, 910, 1000, 820, 560, 300, 140, 60};
    views::ChartView made;
    made.title = {Word::specimen_chart, {}};
    made.greatest = hours_left(412);
    made.edge = Edge::hours;
    for (std::uint32_t i = 0; i < flown.size(); ++i) {
        const auto month = static_cast<std::int32_t>(i) * 30;
        made.bars.push_back(
            {{Word::day_figure, {base::month_arg(base::Date{day_some - 330 + month})}},
             flown[i],
             i > 8});
    }
    made.spoken = {Word::specimen_chart, {}};
    return made;
}

}  // namespace

SpecimenPage make_specimen(base::Date today) {
    SpecimenPage page;
    page.cards = cards();
    page.boxes = boxes();
    for (std::uint32_t i = 0; i < states.size(); ++i)
        page.due.push_back(due_row(i));
    page.question = question();
    page.rows = rows();
    page.parts = parts();
    page.tasks = tasks();
    page.fields = specimen_fields(today);
    page.chart = chart();
    page.digits = "1236.8";
    page.problem = base::trouble(base::Trouble::hours_ambiguous, {base::text_arg("1,234")});
    page.why.title = {Word::why_hours_left, {}};
    page.why.figure = hours_left(10'440);
    page.why.lines = {
        {{Word::why_limit_hours, {base::hours_whole_arg(base::hours(2400))}}, id_of(1)},
        {{Word::why_source_none, {}}, {}}};
    return page;
}

}  // namespace twoclocks::canvas
