// Screens as a wide page shows them: a list, and beside it what was chosen from it.
#include "tests/support/sample_screens.hpp"
#include "wasm/app/checks.hpp"
#include "wasm/app/specimen.hpp"

#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/views/status_view.hpp"

namespace twoclocks::canvas::samples {
namespace {

Screen beside(const Screen& list, base::Id chosen, Screen page) {
    page.beside = Beside{list.page, chosen};
    page.tab = list.tab;
    return page;
}

Screen nothing_chosen(const Screen& list) {
    Screen screen = list;
    screen.page = NothingChosenPage{{base::Word::history_choose, {}}};
    return beside(list, {}, std::move(screen));
}

Screen record_page() {
    Screen screen = record();
    screen.page = std::get<RecordSheet>(screen.sheet);
    screen.sheet = std::monostate{};
    return screen;
}

Screen noticed() {
    Screen screen = aircraft();
    screen.notices = notices().notices;
    return screen;
}

}  // namespace

Screen keys() {
    Screen screen = fleet();
    screen.sheet = KeysSheet{true};
    return screen;
}

Screen checks() {
    Screen screen = aircraft();
    const auto& view = std::get<views::AircraftView>(screen.page);
    ChecksPage page;
    page.view.registration = view.registration;
    page.view.summary = {base::Word::checks_summary, {base::whole_arg(4), base::whole_arg(9)}};
    page.view.groups = {{{base::Word::checks_chapter, {base::text_arg("62")}}, {}},
                        {{base::Word::checks_no_chapter, {}}, {}}};
    for (const views::DueRow& due : view.due) {
        views::CheckRow row{due, "62", {}, {}};
        if (due.hours_left) row.hours = views::ClockView{true, due.hours_left->text, 435, false};
        if (due.calendar_left)
            row.calendar = views::ClockView{true, due.calendar_left->text, 0, true};
        page.view.groups[page.view.groups[0].rows.size() < 2 ? 0 : 1].rows.push_back(row);
    }
    page.fields = make_checks_form().fields;
    page.asks_more = true;
    screen.page = std::move(page);
    return screen;
}

Screen status() {
    Screen screen = aircraft();
    const auto view = std::get<views::AircraftView>(screen.page);
    views::StatusView page;
    page.registration = view.registration;
    page.type = view.type;
    page.serial = view.serial;
    page.state = view.state;
    page.state_word = view.state_word;
    page.as_of = {base::Word::status_as_of, {base::day_arg(day_of(day_3_may_2026))}};
    page.total = {view.total_time.text, true};
    page.landings = page.starts = {{base::Word::unknown_figure, {}}, false};
    page.groups = {{{base::Word::status_overhauls, {}}, {}},
                   {{base::Word::status_directives, {}}, {}}};
    for (const views::DueRow& due : view.due) {
        views::StatusRow row;
        row.item = due.item;
        row.name = due.name;
        row.state = due.state;
        row.state_word = due.state_word;
        row.source = due.source;
        row.last = {base::Word::status_no_work, {}};
        row.method = told("Inspected and adjusted (work order 1234567890)");
        row.notes = {told("Permit to fly past it: an authority with a long name")};
        for (const auto* figure : {&due.hours_left, &due.calendar_left, &due.count_left}) {
            if (!*figure) continue;
            const views::Edge edge =
                figure == &due.hours_left ? views::Edge::hours : views::Edge::calendar;
            row.clocks.push_back({edge,
                                  told("2,200.0 h"),
                                  told("1,356.7 h"),
                                  (*figure)->text,
                                  told("at 12,345.6 h"),
                                  false,
                                  (*figure)->why,
                                  edge == views::Edge::hours});
        }
        page.groups[page.groups[0].rows.empty() ? 0 : 1].rows.push_back(row);
    }
    page.parts = {{{},
                   "Main gearbox",
                   told("Number GB-1, serial 7, main"),
                   {told("900.0 h since new"), true},
                   {told("Time since overhaul unknown"), false},
                   told("No papers recorded"),
                   true}};
    page.missing = {told("Main gearbox: release certificate or other papers")};
    screen.whys = views::whys_of(page);
    screen.page = std::move(page);
    return screen;
}

Screen specimen() {
    Screen screen;
    screen.page = make_specimen(day_of(day_3_may_2026));
    screen.status = told("saved");
    screen.revision = 9;
    return screen;
}

std::vector<Sample> every_pair() {
    const Screen cards = fleet();
    const Screen rows = history();
    const Screen log = log_choices();
    const base::Id card = std::get<views::FleetView>(cards.page).cards.front().id;
    const base::Id row = std::get<views::HistoryView>(rows.page).rows.front().fact;
    const base::Id meter = std::get<LogPage>(log.page).choices.front().aircraft;
    return {{"aircraft beside the fleet", beside(cards, card, aircraft())},
            {"trouble beside the fleet", beside(cards, card, troubled_aircraft())},
            {"checks beside the fleet", beside(cards, card, checks())},
            {"status beside the fleet", beside(cards, card, status())},
            {"on return beside the fleet", beside(cards, card, on_return())},
            {"parts beside the fleet", beside(cards, card, parts())},
            {"part beside the fleet", beside(cards, card, part())},
            {"form beside the fleet", beside(cards, card, form())},
            {"pad beside the choices", beside(log, meter, falling_pad())},
            {"record beside the history", beside(rows, row, record_page())},
            {"history with nothing chosen", nothing_chosen(rows)},
            {"why beside the fleet", beside(cards, card, why())},
            {"notices beside the fleet", beside(cards, card, noticed())}};
}

}  // namespace twoclocks::canvas::samples
