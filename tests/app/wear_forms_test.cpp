// "Wear limit" and "Measure wear": what they ask, what they refuse, what is saved.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/app/shown.hpp"
#include "tests/support/worn.hpp"
#include "wasm/app/form.hpp"

#include <string>

#include "engine/base/region.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::field;
using twoclocks::support::Worn;

/// A form on the invented journal, without a page around it.
struct WearDesk : Worn {
    WearDesk() { signer.refresh({19'905, 1'719'800'000'000, 0x1234U, 0x5678U}); }

    [[nodiscard]] FormContext context() {
        state = timeline::replay(journal, id(), today);
        return {journal, &state, today, {}};
    }

    [[nodiscard]] Form open(FormKind kind, base::Id subject) {
        return make_form(kind, subject, context());
    }

    bool save(Form& form) {
        const auto facts = submit_form(form, context(), signer);
        for (const facts::Fact& fact : facts)
            keep(fact);
        return !facts.empty();
    }

    Signer signer;
    timeline::AircraftState state;
};

}  // namespace

TEST_CASE("a limit and a measurement are kept to the thousandth", "[app][wear]") {
    WearDesk desk;
    Form limit = desk.open(FormKind::wear_limit, desk.check.id);
    CHECK(find_field(limit, "item") == nullptr);
    field(limit, "sense").chosen = 1;
    field(limit, "limit").text = "0.125";
    field(limit, "unit").text = "mm";
    REQUIRE(desk.save(limit));
    Form wear = desk.open(FormKind::measure_wear, desk.check.id);
    CHECK(field(wear, "unit").text == "mm");
    CHECK(field(wear, "total").text == "1160.0");
    field(wear, "value").text = "0.124";
    REQUIRE(desk.save(wear));
    const timeline::WearFinding finding = desk.finding();
    CHECK(finding.verdict == timeline::WearVerdict::past);
    CHECK(finding.bound->limit.limit_thousandths == 125);
    CHECK(finding.point->value_thousandths == 124);
    CHECK(finding.point->total == base::hours(1160));
    // The form of a limit opens with the one in force.
    Form again = desk.open(FormKind::wear_limit, desk.check.id);
    CHECK(field(again, "limit").text == "0.125");
    CHECK(field(again, "sense").chosen == 1);
}

TEST_CASE("what a record cannot hold is refused", "[app][wear]") {
    struct Row {
        const char* value;
        const char* unit;
        const char* date;
        const char* wrong;  // the field
    };

    for (const Row& row : {Row{"", "mm", "2024-07-01", "value"},
                           Row{"3", "", "2024-07-01", "unit"},
                           Row{"3.1234", "mm", "2024-07-01", "value"},
                           Row{"2000000.001", "mm", "2024-07-01", "value"},
                           Row{"3", "mm", "2024-07-02", "date"}}) {
        CAPTURE(row.value, row.unit, row.date);
        WearDesk desk;
        Form form = desk.open(FormKind::measure_wear, desk.check.id);
        field(form, "value").text = row.value;
        field(form, "unit").text = row.unit;
        field(form, "date").text = row.date;
        CHECK_FALSE(desk.save(form));
        CHECK(field(form, row.wrong).problem.has_value());
    }
    WearDesk desk;
    Form most = desk.open(FormKind::measure_wear, desk.check.id);
    field(most, "value").text = "2000000";
    field(most, "unit").text = "mm";
    CHECK(desk.save(most));
}

TEST_CASE("from the aircraft a limit is for an item of the list, or for a new one", "[app][wear]") {
    WearDesk desk;
    Form form = desk.open(FormKind::wear_limit, desk.id());
    REQUIRE(field(form, "item").options.size() == 3);
    field(form, "limit").text = "4";
    field(form, "unit").text = "mm";
    CHECK_FALSE(desk.save(form));
    CHECK(field(form, "name").problem.has_value());
    field(form, "name").text = "Brake pads";
    REQUIRE(desk.save(form));
    const auto items = timeline::replay(desk.journal, desk.id(), desk.today).items;
    REQUIRE(items.size() == 3);
    CHECK(items.back().name == "Brake pads");
    CHECK(items.back().wear.has_value());
    Form known = desk.open(FormKind::wear_limit, desk.id());
    field(known, "item").chosen = 2;  // the check
    field(known, "limit").text = "4";
    field(known, "unit").text = "mm";
    REQUIRE(desk.save(known));
    CHECK(desk.wear().has_value());
    CHECK(timeline::replay(desk.journal, desk.id(), desk.today).items.size() == 3);
}
