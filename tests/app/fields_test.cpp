// Fields of a form while they are filled in: tried on the specimen form, which has all kinds.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "wasm/app/form_fields.hpp"

#include <string>

#include "engine/base/region.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;

/// The specimen form, open.
struct SpecimenForm {
    SpecimenForm() {
        canvas::support::start(app);
        app.apply(intent::OpenForm{FormKind::specimen, {}});
    }

    const FieldView& field(std::string_view id) {
        const auto* page = std::get_if<FormPage>(&app.screen().page);
        REQUIRE(page != nullptr);
        for (const FieldView& each : page->fields)
            if (each.id == id) return each;
        FAIL("no such field");
        return page->fields.front();
    }

    /// The first field of a kind that is empty, or has a text.
    std::string id_of(FieldKind kind) {
        const auto* page = std::get_if<FormPage>(&app.screen().page);
        REQUIRE(page != nullptr);
        for (const FieldView& each : page->fields)
            if (each.kind == kind) return each.id;
        FAIL("no such kind");
        return {};
    }

    std::string chosen(std::string_view id) {
        const FieldView& it = field(id);
        return base::say(it.options[static_cast<std::size_t>(it.chosen)], {});
    }

    FakeHost host;
    AppState app{host};
};

}  // namespace

TEST_CASE("what is wrong shows when the field is left, and goes with the next key",
          "[app][fields]") {
    SpecimenForm bench;
    const std::string hours = bench.id_of(FieldKind::hours);
    bench.app.field_text(hours, "1,234");
    CHECK_FALSE(bench.field(hours).problem);
    bench.app.field_closed(hours);
    REQUIRE(bench.field(hours).problem);
    CHECK(bench.field(hours).problem->code == base::Trouble::hours_ambiguous);
    bench.app.field_text(hours, "1,234.0");
    CHECK_FALSE(bench.field(hours).problem);
    bench.app.field_closed(hours);
    CHECK_FALSE(bench.field(hours).problem);
    bench.app.field_text(hours, "");
    bench.app.field_closed(hours);
    CHECK_FALSE(bench.field(hours).problem);  // empty is missed when the form is sent, not before
}

TEST_CASE("an amount that brings its currency along chooses it", "[app][fields]") {
    SpecimenForm bench;
    const std::string money = bench.id_of(FieldKind::money);
    CHECK(bench.chosen(money) == "EUR");
    bench.app.field_text(money, "CHF 1\u202F234,50");
    CHECK(base::say(bench.field(money).understood, {}) == "1,234.50 CHF");
    bench.app.field_closed(money);
    CHECK(bench.chosen(money) == "CHF");
    bench.app.field_text(money, "12.5");
    CHECK(base::say(bench.field(money).understood, {}) == "12.50 CHF");
}

TEST_CASE("one list is open at a time, searched on its own, and closed by a choice",
          "[app][fields]") {
    SpecimenForm bench;
    bench.app.apply(intent::ToggleChoice{"choice-many"});
    CHECK(bench.field("choice-many").open);
    CHECK_FALSE(bench.field("choice-open").open);
    bench.app.field_text("find-choice-many", "OVER");
    CHECK(bench.field("choice-many").shown == std::vector<std::int32_t>{6});
    CHECK(bench.field("choice-many").text.empty());
    bench.app.apply(intent::FillField{"find-choice-many", {}});
    CHECK(bench.field("choice-many").shown.size() == 8);
    bench.app.apply(intent::ChooseOption{"choice-many", 6});
    CHECK(bench.chosen("choice-many") == "last overhaul");
    CHECK_FALSE(bench.field("choice-many").open);
    bench.app.apply(intent::ChooseOption{"choice-many", 99});
    CHECK(bench.chosen("choice-many") == "last overhaul");
    bench.app.apply(intent::ToggleChoice{"choice-many"});
    bench.app.apply(intent::ToggleChoice{"choice-many"});
    CHECK_FALSE(bench.field("choice-many").open);
}

TEST_CASE("a file goes to the field that asked for it, and to no other page", "[app][fields]") {
    SpecimenForm bench;
    bench.app.apply(intent::ChooseFieldFile{"file-empty"});
    CHECK(bench.host.files_asked == 1);
    bench.app.file_chosen("plate.jpg", "0123456789");
    CHECK(bench.field("file-empty").text == "plate.jpg");
    CHECK(base::say(bench.field("file-empty").understood, {}) == "10 bytes");
    bench.app.apply(intent::FillField{"file-empty", {}});
    CHECK(bench.field("file-empty").text.empty());
    // Put away without a choice, then a journal is imported.
    bench.app.apply(intent::ChooseFieldFile{"file-empty"});
    bench.app.apply(intent::OpenFiles{});
    bench.app.apply(intent::ChooseFile{});
    bench.app.file_chosen("journal.jsonl", "nothing of ours");
    CHECK(std::holds_alternative<FilesPage>(bench.app.screen().page));
}

TEST_CASE("nothing of the specimen form is ever saved", "[app][fields]") {
    SpecimenForm bench;
    bench.app.apply(intent::SubmitForm{});
    CHECK(bench.host.asked.empty());
}

TEST_CASE("the readers take what was understood, and note a problem beside each field",
          "[app][fields]") {
    Form form;
    form.fields = {
        make_money("price", base::Word::specimen_amount, "1 234,50", {}, Need::needed),
        make_field("arm", base::Word::field_other, FieldKind::decimal, "-0,5", Need::needed),
        make_field("count", base::Word::field_landings, FieldKind::whole, "1 240", Need::needed),
        make_field("time", base::Word::field_total, FieldKind::hours, "1 234:30", Need::needed),
        make_field("none", base::Word::field_total, FieldKind::hours, " ", Need::optional)};
    FieldReader reader{form};
    CHECK(reader.money("price") == base::Money{123'450, {}});
    CHECK(reader.decimal("arm", 3) == -500);
    CHECK(reader.whole("count") == 1240);
    CHECK(reader.hours("time") == base::FlightTime{1234 * 3600 + 1800});
    CHECK_FALSE(reader.hours("none"));
    CHECK(reader.sound());
    for (FieldView& field : form.fields)
        field.text = "1,234";
    FieldReader again{form};
    CHECK_FALSE(again.money("price"));
    CHECK_FALSE(again.decimal("arm", 3));
    CHECK(again.whole("count") == 1234);
    CHECK_FALSE(again.hours("time"));
    CHECK_FALSE(again.sound());
    CHECK(form.fields[0].problem->code == base::Trouble::money_ambiguous);
    CHECK(form.fields[1].problem->code == base::Trouble::form_figure_ambiguous);
    CHECK_FALSE(form.fields[2].problem);
    CHECK(form.fields[3].problem->code == base::Trouble::hours_ambiguous);
}
