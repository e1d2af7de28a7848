// Screens as a wide page shows them: a list, and beside it what was chosen from it.
#include "tests/support/sample_screens.hpp"
#include "wasm/app/specimen.hpp"

#include <utility>

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
            {"form beside the fleet", beside(cards, card, form())},
            {"pad beside the choices", beside(log, meter, falling_pad())},
            {"record beside the history", beside(rows, row, record_page())},
            {"history with nothing chosen", nothing_chosen(rows)},
            {"why beside the fleet", beside(cards, card, why())},
            {"notices beside the fleet", beside(cards, card, noticed())}};
}

}  // namespace twoclocks::canvas::samples
