#include "tests/support/sample_screens.hpp"

#include <iterator>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Message;
using base::Word;
using views::AircraftCard;
using views::State;

AircraftCard card(std::uint64_t number,
                  std::string registration,
                  State state,
                  Word state_word,
                  Message sentence) {
    AircraftCard made;
    // One in two has records that disagree.
    if (number % 2 == 0) made.questions = {base::Word::card_questions, {base::whole_arg(2)}};
    made.id = id_of(number);
    made.registration = std::move(registration);
    made.state = state;
    made.state_word = {state_word, {}};
    made.sentence = std::move(sentence);
    return made;
}

views::ClockView clock(Message left, std::int32_t permille, bool over = false) {
    return {true, std::move(left), permille, over};
}

views::ClockView unknown_clock() {
    return {false, {Word::unknown_figure, {}}, 0, false};
}

std::vector<AircraftCard> cards() {
    std::vector<AircraftCard> made;
    made.push_back(card(4,
                        "ISLE-4",
                        State::over,
                        Word::state_over,
                        {Word::say_over_card, {base::text_arg("Overhaul")}}));
    made.back().hours = clock(hours_left(-32), 0, true);
    made.back().calendar = clock(span(3, 307), 320);
    made.back().box = late_box();
    made.push_back(
        card(2,
             "ISLE-2",
             State::before_next_flight,
             Word::state_before_flight,
             {Word::say_lapsed_card,
              {base::text_arg("Annual inspection"), base::day_arg(day_of(day_3_may_2026))}}));
    made.back().hours = clock(hours_left(16800), 700);
    made.back().calendar = clock(span(3, 307), 320);
    made.back().box = calendar_box();
    made.push_back(card(3,
                        "ISLE-3",
                        State::act,
                        Word::state_act,
                        {Word::say_hours_stop_card, {base::month_arg(day_of(20620))}}));
    made.back().hours = clock(hours_left(1440), 65);
    made.back().calendar = clock(span(2, 146), 200);
    made.back().box = hours_box();
    made.push_back(card(1,
                        "ISLE-1",
                        State::nothing_due,
                        Word::state_nothing_due,
                        {Word::say_hours_stop_card, {base::month_arg(day_of(day_21_sep_2029))}}));
    made.back().hours = clock(hours_left(10440), 440);
    made.back().calendar = clock(span(7, 166), 620);
    made.back().box = hours_box();
    made.push_back(card(5,
                        "ISLE-5 (training)",
                        State::unknown,
                        Word::state_unknown,
                        {Word::say_no_limit_card, {}}));
    made.back().hours = unknown_clock();
    made.back().calendar = unknown_clock();
    made.back().box = missing_box();
    return made;
}

Screen page_without_signal(Page shown, Tab tab, bool can_go_back) {
    Screen screen;
    screen.page = std::move(shown);
    screen.tab = tab;
    screen.can_go_back = can_go_back;
    screen.status = told("no signal \xC2\xB7 saved");
    screen.revision = 1;
    return screen;
}

views::LogView log_of(const AircraftCard& card) {
    views::LogView view;
    view.aircraft = card.id;
    view.registration = card.registration;
    view.meter_name = {Word::drive_collective, {}};
    view.has_meter = true;
    view.last_reads = base::tenths(12345);
    view.last_on = day_of(day_3_may_2026);
    view.last = {
        Word::log_last,
        {base::hours_left_arg(base::tenths(12345)), base::day_arg(day_of(day_3_may_2026))}};
    return view;
}

LogPage::Pad pad_of(std::string digits) {
    LogPage::Pad made;
    made.view = log_of(cards()[3]);
    made.digits = std::move(digits);
    made.date_text = "2026-05-20";
    made.date = {Word::day_figure, {base::day_arg(day_of(day_3_may_2026 + 17))}};
    made.difference = told("+2.3 h since 3 May 2026");
    made.can_save = true;
    return made;
}

}  // namespace

Message told(std::string words) {
    return {Word::as_told, {base::text_arg(std::move(words))}};
}

Message hours_left(std::int64_t tenths) {
    return {Word::hours_figure, {base::hours_left_arg(base::tenths(tenths))}};
}

Message span(std::int32_t years, std::int32_t days) {
    return {Word::span_figure, {base::span_arg({years, days, false})}};
}

base::Id id_of(std::uint64_t number) {
    return {0x0190000000007000ULL, 0x8000000000000000ULL + number};
}

base::Date day_of(std::int32_t day_number) {
    return {day_number};
}

Screen welcome() {
    Screen screen = page_without_signal(WelcomePage{}, Tab::none, false);
    screen.status = {Word::blank, {}};
    return screen;
}

Screen empty_fleet() {
    return page_without_signal(views::FleetView{}, Tab::fleet, false);
}

Screen fleet() {
    views::FleetView view;
    view.cards = cards();
    view.has_demo = true;
    return page_without_signal(std::move(view), Tab::fleet, false);
}

Screen large_fleet(std::int32_t aircraft) {
    views::FleetView view;
    const std::vector<AircraftCard> some = cards();
    for (std::int32_t i = 0; i < aircraft; ++i) {
        view.cards.push_back(some[static_cast<std::size_t>(i) % some.size()]);
        view.cards.back().id = id_of(static_cast<std::uint64_t>(100 + i));
    }
    return page_without_signal(std::move(view), Tab::fleet, false);
}

Screen log_choices() {
    LogPage log;
    for (const AircraftCard& each : cards())
        log.choices.push_back(log_of(each));
    return page_without_signal(std::move(log), Tab::log, false);
}

Screen pad() {
    LogPage log;
    log.pad = pad_of("1236.8");
    return page_without_signal(std::move(log), Tab::log, true);
}

Screen falling_pad() {
    LogPage log;
    log.pad = pad_of("234.5");
    log.pad->can_save = false;
    log.pad->offer_meter_change = true;
    log.pad->problem = base::Problem{base::Trouble::total_falls,
                                     {base::hours_left_arg(base::tenths(2345)),
                                      base::day_arg(day_of(day_3_may_2026 + 17)),
                                      base::hours_left_arg(base::tenths(12345)),
                                      base::day_arg(day_of(day_3_may_2026))},
                                     base::Severity::refused,
                                     0,
                                     "digits"};
    return page_without_signal(std::move(log), Tab::log, true);
}

Screen notices() {
    Screen screen = fleet();
    Notice saved;
    saved.text = told("Saved: reading 1,236.8 h of ISLE-1.");
    Notice version;
    version.text = told("A new version is ready.");
    version.urgent = true;
    version.action = intent::StartNewVersion{};
    version.action_label = told("Start it");
    screen.notices = {saved, version};
    screen.read_only = true;
    return screen;
}

namespace {

/// Pages of money and of a sale.
std::vector<Sample> money_screens() {
    return {{"money", money()},
            {"no_money", no_money()},
            {"cores", cores()},
            {"cash", cash()},
            {"reserve", reserve()},
            {"no_cores", no_cores()},
            {"sale", sale()},
            {"closing", closing()},
            {"compare", compare()}};
}

}  // namespace

std::vector<Sample> every_screen() {
    std::vector<Sample> out = money_screens();
    std::vector<Sample> more{{"welcome", welcome()},
                             {"empty_fleet", empty_fleet()},
                             {"fleet", fleet()},
                             {"aircraft", aircraft()},
                             {"troubled_aircraft", troubled_aircraft()},
                             {"new_aircraft", new_aircraft()},
                             {"struck_aircraft", struck_aircraft()},
                             {"sign_form", sign_form()},
                             {"log_choices", log_choices()},
                             {"pad", pad()},
                             {"falling_pad", falling_pad()},
                             {"history", history()},
                             {"files", files()},
                             {"preview", preview()},
                             {"form", form()},
                             {"wrong_form", wrong_form()},
                             {"fields", fields()},
                             {"new_item", new_item()},
                             {"item_settings", item_settings()},
                             {"item_settings_closed", item_settings_closed()},
                             {"permit", permit()},
                             {"directives", directives()},
                             {"directive_aircraft", directive_aircraft()},
                             {"directive_form", directive_form()},
                             {"decide_form", decide_form()},
                             {"means_form", means_form()},
                             {"returned_draft", returned_draft()},
                             {"returned_pad", returned_pad()},
                             {"saved_notice", saved_notice()},
                             {"why", why()},
                             {"record", record()},
                             {"keys", keys()},
                             {"checks", checks()},
                             {"status", status()},
                             {"parts", parts()},
                             {"no_parts", no_parts()},
                             {"part", part()},
                             {"part_form", part_form()},
                             {"specimen", specimen()},
                             {"template_form", template_form()},
                             {"work_by_rule", work_by_rule()},
                             {"plan", plan()},
                             {"unplanned", unplanned()},
                             {"routes", routes()},
                             {"stagger", stagger()},
                             {"stored_aircraft", stored_aircraft()},
                             {"on_return", on_return()},
                             {"nothing_on_return", nothing_on_return()},
                             {"storage_form", storage_form()},
                             {"adjust_form", adjust_form()},
                             {"notices", notices()}};
    out.insert(
        out.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
    return out;
}

}  // namespace twoclocks::canvas::samples
