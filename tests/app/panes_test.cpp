// What stands beside a page where there is room for two.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;

/// A wide page with the invented aircraft of the tests on it.
struct TwoPanes {
    TwoPanes() {
        canvas::support::start(app);
        app.set_two_panes(true);
        canvas::support::add_aircraft(app);
        host.answer(app);
        host.pushed = 0;
    }

    void add_another(std::string_view registration) {
        app.apply(intent::OpenForm{FormKind::new_aircraft, {}});
        for (const auto& [field, text] : std::vector<std::pair<std::string, std::string>>{
                 {"registration", std::string{registration}},
                 {"limit_hours", "2200"},
                 {"limit_years", "12"},
                 {"anchor_on", "2020-06-15"},
                 {"reads", "100.0"},
                 {"plan", "100"}}) {
            app.field_text(field, text);
        }
        app.apply(intent::SubmitForm{});
        host.answer(app);
    }

    [[nodiscard]] const views::FleetView& list() {
        REQUIRE(app.screen().beside);
        return std::get<views::FleetView>(app.screen().beside->list);
    }

    [[nodiscard]] std::string shown() {
        return std::get<views::AircraftView>(app.screen().page).registration;
    }

    FakeHost host;
    AppState app{host};
};

}  // namespace

TEST_CASE("beside the fleet stands the aircraft that needs me first", "[app][panes]") {
    TwoPanes desk;
    desk.add_another("TEST-2");
    desk.app.apply(intent::OpenFleet{});
    REQUIRE(desk.list().cards.size() == 2);
    CHECK(desk.app.screen().beside->chosen == desk.list().cards.front().id);
    CHECK(desk.shown() == desk.list().cards.front().registration);
    CHECK(desk.app.screen().tab == Tab::fleet);
}

TEST_CASE("choosing another aircraft takes the place of the last: one Back leads out",
          "[app][panes]") {
    TwoPanes desk;
    desk.add_another("TEST-2");
    desk.app.apply(intent::OpenFleet{});
    const base::Id first = desk.list().cards[0].id;
    const base::Id second = desk.list().cards[1].id;
    desk.host.pushed = 0;
    for (const base::Id each : {second, first, second}) {
        desk.app.apply(intent::OpenAircraft{each});
        CHECK(desk.app.screen().beside->chosen == each);
    }
    CHECK(desk.host.pushed == 1);
    desk.app.back();
    CHECK(desk.app.screen().beside->chosen == first);
}

TEST_CASE("beside the history stands the record that was chosen, and no sheet", "[app][panes]") {
    TwoPanes desk;
    desk.app.apply(intent::OpenHistory{});
    CHECK(std::holds_alternative<NothingChosenPage>(desk.app.screen().page));
    const auto& history = std::get<views::HistoryView>(desk.app.screen().beside->list);
    REQUIRE_FALSE(history.rows.empty());
    const base::Id record = history.rows.front().fact;
    desk.app.apply(intent::OpenRecord{record});
    REQUIRE(std::holds_alternative<RecordSheet>(desk.app.screen().page));
    CHECK(std::get<RecordSheet>(desk.app.screen().page).row.fact == record);
    CHECK(std::holds_alternative<std::monostate>(desk.app.screen().sheet));
    CHECK(desk.app.screen().beside->chosen == record);
    desk.app.back();
    CHECK(std::holds_alternative<NothingChosenPage>(desk.app.screen().page));
}

TEST_CASE("a record opened from a why lies on top of the aircraft, wide or not", "[app][panes]") {
    for (const bool two : {true, false}) {
        TwoPanes desk;
        desk.app.set_two_panes(two);
        desk.app.apply(intent::OpenHistory{});
        const Screen& wide = desk.app.screen();
        const Page& list = wide.beside ? wide.beside->list : wide.page;
        const base::Id record = std::get<views::HistoryView>(list).rows.front().fact;
        desk.app.apply(intent::OpenFleet{});
        desk.app.apply(intent::OpenRecord{record});
        CHECK(std::holds_alternative<RecordSheet>(desk.app.screen().sheet));
    }
}

TEST_CASE("a form keeps the list it came from beside it", "[app][panes]") {
    TwoPanes desk;
    desk.app.apply(intent::OpenHistory{});
    const auto& history = std::get<views::HistoryView>(desk.app.screen().beside->list);
    const base::Id record = history.rows.front().fact;
    desk.app.apply(intent::OpenRecord{record});
    desk.app.apply(intent::OpenForm{FormKind::withdraw, record});
    REQUIRE(desk.app.screen().beside);
    CHECK(std::holds_alternative<views::HistoryView>(desk.app.screen().beside->list));
    CHECK(desk.app.screen().beside->chosen == record);
    CHECK(desk.app.screen().tab == Tab::history);
}

TEST_CASE("a narrow page has nothing beside it", "[app][panes]") {
    TwoPanes desk;
    desk.app.set_two_panes(false);
    desk.app.apply(intent::OpenFleet{});
    CHECK_FALSE(desk.app.screen().beside);
    CHECK(std::holds_alternative<views::FleetView>(desk.app.screen().page));
}
