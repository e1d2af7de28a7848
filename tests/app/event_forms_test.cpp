// "Something happened" and "Sign the inspection": what they ask, what they refuse, what is saved.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/app/shown.hpp"
#include "tests/support/happened.hpp"
#include "tests/support/said.hpp"
#include "wasm/app/form.hpp"

#include <string>

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::choose;
using canvas::support::FakeHost;
using twoclocks::support::day;
using twoclocks::support::Happened;
using twoclocks::support::said;

/// An app with one aircraft, on its page.
struct OpenedAircraft {
    OpenedAircraft() {
        canvas::support::start(app);
        canvas::support::add_aircraft(app);
        host.answer(app);
        aircraft = view().id;
    }

    [[nodiscard]] const views::AircraftView& view() {
        const auto* shown = std::get_if<views::AircraftView>(&app.screen().page);
        REQUIRE(shown != nullptr);
        return *shown;
    }

    [[nodiscard]] const FieldView& field(std::string_view id) {
        const auto* shown = std::get_if<FormPage>(&app.screen().page);
        REQUIRE(shown != nullptr);
        for (const FieldView& each : shown->fields) {
            if (each.id == id) return each;
        }
        FAIL("no such field");
        return shown->fields.front();
    }

    void submit() {
        app.apply(intent::SubmitForm{});
        host.answer(app);
    }

    FakeHost host;
    AppState app{host};
    base::Id aircraft;
};

/// A form on the invented journal, without a page around it.
struct EventDesk : Happened {
    EventDesk() { signer.refresh({19'905, 1'719'800'000'000, 0x1234U, 0x5678U}); }

    [[nodiscard]] FormContext context(base::Id aircraft) {
        state = timeline::replay(journal, aircraft, today);
        return {journal, &state, today, {}};
    }

    void save(Form& form, base::Id aircraft) {
        for (const facts::Fact& fact : submit_form(form, context(aircraft), signer))
            keep(fact);
    }

    Signer signer;
    timeline::AircraftState state;
};

void type_into(Form& form, std::string_view id, const char* text) {
    FieldView* field = find_field(form, id);
    REQUIRE(field != nullptr);
    field->text = text;
}

}  // namespace

TEST_CASE("what happened is recorded, shown, signed and gone", "[app][events]") {
    OpenedAircraft page;
    page.app.apply(intent::OpenForm{FormKind::event, page.aircraft});
    CHECK(page.field("date").text == "2026-11-25");
    CHECK(page.field("total").text == "1000.0");
    CHECK(page.field("happened").options.size() == 8);
    page.app.apply(intent::ChooseOption{"happened", 3});
    page.app.field_text("found", "104 % for 3 s");
    page.submit();
    REQUIRE(page.view().events.size() == 1);
    CHECK(said(page.view().events.front().title.text) == "Event: overtorque on 25 Nov 2026");
    CHECK(said(page.view().state_word) == "before next flight");
    CHECK(said(page.view().answer.text) ==
          "Before next flight: overtorque on 25 Nov 2026 is not signed for.");

    page.app.apply(intent::OpenForm{FormKind::sign_event, page.view().events.front().event});
    CHECK(page.field("what").text == "Conditional inspection: overtorque");
    page.submit();
    REQUIRE(page.field("done_by").problem);
    page.app.field_text("done_by", "Ann");
    page.app.field_text("date", "2026-11-24");
    page.submit();
    REQUIRE(page.field("date").problem);
    CHECK(page.field("date").problem->code == base::Trouble::form_before_event);
    page.app.field_text("date", "2026-11-25");
    page.submit();
    CHECK(page.view().events.empty());
    CHECK(page.view().state != views::State::before_next_flight);
}

TEST_CASE("a day to come is refused for what happened and for what signs it", "[app][events]") {
    OpenedAircraft page;
    page.app.apply(intent::OpenForm{FormKind::event, page.aircraft});
    page.app.field_text("date", "2026-11-26");
    page.submit();
    REQUIRE(page.field("date").problem);
    CHECK(page.field("date").problem->code == base::Trouble::entry_day_ahead);
}

TEST_CASE("an event that was signed meanwhile leaves nothing to sign", "[app][events]") {
    EventDesk desk;
    const facts::Fact event = desk.happens("2024-05-03", {desk.first});
    Form form = make_form(FormKind::sign_event, event.id, desk.context(desk.first));
    type_into(form, "done_by", "Ann");
    desk.sign(event.id, "2024-05-04", {desk.first});
    const auto facts = submit_form(form, desk.context(desk.first), desk.signer);
    CHECK(facts.empty());
    REQUIRE(form.problems.size() == 1);
    CHECK(form.problems.front().code == base::Trouble::form_nothing_open);
}

TEST_CASE("parts aboard may be named, each once", "[app][events]") {
    EventDesk desk;
    desk.fit(desk.gearbox, desk.first, "2024-02-01", 10'500);
    const facts::Fact other = desk.add(Happened::plate("8"));
    desk.fit(other, desk.first, "2024-02-01", 10'500);
    desk.add(Happened::plate("9"));  // on the shelf
    Form form = make_form(FormKind::event, desk.first, desk.context(desk.first));
    REQUIRE(find_field(form, "part-1") != nullptr);
    CHECK(find_field(form, "part-1")->options.size() == 3);
    CHECK(find_field(form, "part-3") == nullptr);
    choose(form, "part-1", "Main gearbox 7");
    choose(form, "part-2", "Main gearbox 7");
    desk.save(form, desk.first);
    CHECK(desk.stops(desk.first) == "ISLE-1* Main gearbox 7*");
}

TEST_CASE("one inspection signs for what was chosen and nothing else", "[app][events]") {
    struct Row {
        const char* inspected;
        const char* left;
    };

    for (const Row& row : {Row{"All that is not signed for", ""},
                           Row{"ISLE-1", "Main gearbox 7*"},
                           Row{"Main gearbox 7", "ISLE-1*"}}) {
        CAPTURE(row.inspected);
        EventDesk desk;
        desk.fit(desk.gearbox, desk.first, "2024-02-01", 10'500);
        const facts::Fact event = desk.happens("2024-05-03", {desk.first, desk.gearbox.id});
        Form form = make_form(FormKind::sign_event, event.id, desk.context(desk.first));
        choose(form, "inspected", row.inspected);
        type_into(form, "done_by", "Ann");
        desk.save(form, desk.first);
        CHECK(desk.stops(desk.first) == row.left);
    }
}

TEST_CASE("a part that moved is signed for on the aircraft it is on now", "[app][events]") {
    EventDesk desk;
    desk.fit(desk.gearbox, desk.first, "2024-02-01", 10'500);
    const facts::Fact event = desk.happens("2024-05-03", {desk.first, desk.gearbox.id});
    desk.sign(event.id, "2024-05-04", {desk.first});
    desk.remove(desk.gearbox, desk.first, "2024-05-05", 11'500);
    desk.fit(desk.gearbox, desk.second, "2024-05-06", 6'000);
    Form form = make_form(FormKind::sign_event, event.id, desk.context(desk.first));
    CHECK(form.aircraft == desk.second);
    CHECK(find_field(form, "inspected") == nullptr);  // nothing else is open
    CHECK(find_field(form, "total")->text == "620.0");
    type_into(form, "done_by", "Ann");
    const auto facts = submit_form(form, desk.context(desk.second), desk.signer);
    REQUIRE(facts.size() == 1);
    CHECK(facts.front().body.about == std::vector<base::Id>{desk.second, desk.gearbox.id});
    desk.keep(facts.front());
    CHECK(desk.stops(desk.second).empty());
}
