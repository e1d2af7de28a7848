#include "tests/support/sample_screens.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Message;
using base::Word;
using views::DueRow;
using views::Edge;
using views::Figure;
using views::State;

Message source() {
    return {Word::source_given,
            {base::text_arg("Maintenance manual"), base::text_arg("revision 5")}};
}

DueRow due(std::uint64_t number, std::string name, State state, Word word, Edge binding) {
    DueRow row;
    row.item = id_of(number);
    row.name = std::move(name);
    row.state = state;
    row.state_word = {word, {}};
    row.binding = binding;
    row.likely = figure({Word::say_about_day, {base::day_arg(day_of(day_21_sep_2029))}});
    row.source = source();
    return row;
}

std::vector<DueRow> due_rows() {
    std::vector<DueRow> rows;
    rows.push_back(due(20,
                       "Annual inspection",
                       State::before_next_flight,
                       Word::state_before_flight,
                       Edge::calendar));
    rows.back().calendar_left = figure(span(0, 0));
    rows.back().likely = figure({Word::say_on_day, {base::day_arg(day_of(day_3_may_2026))}});
    rows.push_back(due(21, "Inspection, 100 hours", State::act, Word::state_act, Edge::hours));
    rows.back().hours_left = figure(hours_left(126));
    rows.push_back(due(22,
                       "Main gearbox oil and filter with chip detector",
                       State::nothing_due,
                       Word::state_nothing_due,
                       Edge::hours));
    rows.back().hours_left = figure(hours_left(3120));
    rows.back().calendar_left = figure(span(1, 12));
    rows.back().count_left = figure({Word::count_figure, {base::whole_arg(1210)}});
    rows.back().source = {Word::source_none, {}};
    rows.push_back(due(23, "Overhaul", State::nothing_due, Word::state_nothing_due, Edge::hours));
    rows.back().hours_left = figure(hours_left(10440));
    rows.back().calendar_left = figure(span(7, 166));
    rows.back().is_overhaul = true;
    return rows;
}

views::AircraftView known() {
    views::AircraftView view;
    view.id = id_of(1);
    view.registration = "ISLE-1";
    view.type = "Skerry 300";
    view.serial = "0117";
    view.state = State::nothing_due;
    view.state_word = {Word::state_nothing_due, {}};
    view.hours_left = figure(hours_left(10440));
    view.calendar_left = figure(span(7, 166));
    view.hours_known = true;
    view.calendar_known = true;
    view.answer = figure({Word::say_hours_stop, {base::day_arg(day_of(day_21_sep_2029))}});
    view.answer_edge = Edge::hours;
    view.range =
        figure({Word::say_range,
                {base::month_arg(day_of(day_9_feb_2029)), base::month_arg(day_of(22130))}});
    view.box = hours_box();
    view.total_time = figure(
        {Word::say_total,
         {base::hours_used_arg(base::tenths(13560)), base::day_arg(day_of(day_3_may_2026))}});
    view.rate = figure({Word::say_rate, {base::hours_left_arg(base::tenths(1430))}});
    view.break_even = figure({Word::say_break_even, {base::hours_left_arg(base::tenths(1399))}});
    view.due = due_rows();
    return view;
}

Screen aircraft_screen(views::AircraftView view) {
    Screen screen;
    screen.page = std::move(view);
    screen.tab = Tab::fleet;
    screen.can_go_back = true;
    screen.status = told("no signal \xC2\xB7 saved");
    screen.revision = 2;
    return screen;
}

views::LifeBoxView box() {
    views::LifeBoxView made;
    made.known = true;
    made.hours_edge = {Word::box_hours_edge, {base::hours_whole_arg(base::hours(2400))}};
    made.calendar_edge = {Word::as_told, {base::month_arg(day_of(day_31_may_2034))}};
    made.start = {Word::as_told, {base::month_arg(day_of(19144))}};
    made.width = {Word::box_years, {base::whole_arg(12)}};
    made.hour_ticks = 24;
    made.year_ticks = 12;
    made.fan_known = true;
    made.spoken = {Word::box_spoken_hours,
                   {base::hours_used_arg(base::tenths(13560)),
                    base::hours_whole_arg(base::hours(2400)),
                    base::day_arg(day_of(day_21_sep_2029))}};
    return made;
}

}  // namespace

Figure figure(Message text) {
    Figure made;
    made.text = std::move(text);
    made.why = why_of_hours();
    return made;
}

views::LifeBoxView hours_box() {
    views::LifeBoxView made = box();
    made.line = {{0, 0},
                 {50, 70},
                 {90, 110},
                 {130, 200},
                 {180, 250},
                 {220, 340},
                 {260, 380},
                 {310, 470},
                 {350, 500},
                 {380, 565}};
    made.early = {621, 1000};
    made.likely = {680, 1000};
    made.late = {758, 1000};
    made.meets = Edge::hours;
    made.marks = {{Edge::calendar, 452, told("100 h")}, {Edge::calendar, 590, told("Annual")}};
    return made;
}

views::LifeBoxView calendar_box() {
    views::LifeBoxView made = box();
    made.line = {
        {0, 0}, {100, 40}, {200, 100}, {300, 130}, {400, 190}, {520, 230}, {600, 280}, {680, 300}};
    made.early = {1000, 476};
    made.likely = {1000, 422};
    made.late = {1000, 380};
    made.meets = Edge::calendar;
    return made;
}

views::LifeBoxView late_box() {
    views::LifeBoxView made = box();
    made.line = {{0, 0},
                 {120, 130},
                 {250, 300},
                 {370, 420},
                 {500, 600},
                 {620, 780},
                 {700, 960},
                 {740, 1014}};
    made.fan_known = false;
    return made;
}

views::LifeBoxView missing_box() {
    views::LifeBoxView made;
    made.missing = {Word::box_missing_limit, {}};
    return made;
}

views::Why why_of_hours() {
    views::Why why;
    why.title = {Word::why_hours_left, {}};
    why.figure = hours_left(10440);
    why.lines = {
        {{Word::why_limit_hours, {base::hours_whole_arg(base::hours(2400))}}, id_of(30)},
        {{Word::why_total_now,
          {base::hours_used_arg(base::tenths(13560)), base::day_arg(day_of(day_3_may_2026))}},
         id_of(31)},
        {{Word::why_highest, {}}, {}},
        {{Word::why_source, {base::text_arg("Maintenance manual"), base::text_arg("revision 5")}},
         {}},
        {{Word::why_not_approval, {}}, {}}};
    return why;
}

Screen aircraft() {
    return aircraft_screen(known());
}

Screen troubled_aircraft() {
    views::AircraftView view = known();
    view.state = State::over;
    view.state_word = {Word::state_over, {}};
    view.hours_left = figure(hours_left(-32));
    view.answer = figure({Word::say_over_hours, {base::text_arg("Overhaul")}});
    view.box = late_box();
    view.cautions = {{Word::caution_old_reading, {base::whole_arg(94)}},
                     {Word::caution_no_source, {}}};
    views::QuestionView question;
    question.what = {Word::question_falling, {}};
    question.in_use = {Word::question_in_use_higher, {}};
    question.sides = {{id_of(40),
                       {Word::record_reading, {base::hours_left_arg(base::tenths(12345))}},
                       told("Ann, written 3 May 2026"),
                       {told("Landings 4,711"), told("Dated 3 May 2026")}},
                      {id_of(41),
                       {Word::record_reading, {base::hours_left_arg(base::tenths(12245))}},
                       told("Ben, written 4 May 2026")}};
    view.questions = {question};
    view.due[1].state = State::over;
    view.due[1].state_word = {Word::state_over, {}};
    view.due[1].hours_left = figure(hours_left(-32));
    view.due[3].state = State::over;
    view.due[3].state_word = {Word::state_over, {}};
    view.due[3].hours_left = figure(hours_left(-32));
    for (Figure* each : {&view.hours_left,
                         &view.answer,
                         &view.range,
                         &view.total_time,
                         &view.rate,
                         &*view.due[1].hours_left,
                         &view.due[1].likely})
        each->questioned = true;
    return aircraft_screen(std::move(view));
}

Screen new_aircraft() {
    views::AircraftView view;
    view.id = id_of(5);
    view.registration = "ISLE-5 (training, north field)";
    view.type = "Skerry 300";
    view.serial = "0244";
    view.state = State::unknown;
    view.state_word = {Word::state_unknown, {}};
    for (Figure* each : {&view.hours_left, &view.calendar_left, &view.total_time, &view.rate}) {
        *each = figure({Word::unknown_figure, {}});
    }
    view.answer = figure({Word::say_unknown_limit, {}});
    view.range = figure({Word::say_range_unknown, {}});
    view.break_even = figure({Word::unknown_figure, {}});
    view.box = missing_box();
    return aircraft_screen(std::move(view));
}

Screen why() {
    Screen screen = aircraft();
    screen.sheet = why_of_hours();
    return screen;
}

}  // namespace twoclocks::canvas::samples
