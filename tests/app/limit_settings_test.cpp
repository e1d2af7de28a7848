// Every setting of a limit ends in its own field of the record, and what cannot be stands beside
// it.
#include "tests/app/limit_bench.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::begin_inspection;
using canvas::support::Hangar;
using canvas::support::inspection;
using canvas::support::same;
using facts::LimitSet;

}  // namespace

TEST_CASE("every setting that few limits have ends in its own field", "[app][limits]") {
    struct Row {
        const char* id;
        const char* told;  // typed, or the words of the option
        void (*expect)(LimitSet&);
    };

    const Row rows[] = {
        {"starts", "250", [](LimitSet& it) { it.starts = base::Count{250}; }},
        {"days", "45", [](LimitSet& it) { it.days = 45; }},
        {"first_hours", "25:30", [](LimitSet& it) { it.first.hours = base::tenths(255); }},
        {"first_months", "3", [](LimitSet& it) { it.first.months = 3; }},
        {"first_days", "30", [](LimitSet& it) { it.first.days = 30; }},
        {"first_landings", "40", [](LimitSet& it) { it.first.landings = base::Count{40}; }},
        {"first_starts", "41", [](LimitSet& it) { it.first.starts = base::Count{41}; }},
        {"once", "once only", [](LimitSet& it) { it.once = true; }},
        {"combine", "the later clock", [](LimitSet& it) { it.combine = facts::Combine::later; }},
        {"anchor", "cure", [](LimitSet& it) { it.anchor = facts::Anchor::cure; }},
        {"anchor", "unknown", [](LimitSet& it) { it.anchor = facts::Anchor::unknown; }},
        {"anchor_landings", "7", [](LimitSet& it) { it.anchor_landings = base::Count{7}; }},
        {"anchor_starts", "8", [](LimitSet& it) { it.anchor_starts = base::Count{8}; }},
        {"cap_hours", "500", [](LimitSet& it) { it.cap.hours = base::hours(500); }},
        {"cap_months", "24", [](LimitSet& it) { it.cap.months = 24; }},
        {"cap_days", "700", [](LimitSet& it) { it.cap.days = 700; }},
        {"cap_landings", "600", [](LimitSet& it) { it.cap.landings = base::Count{600}; }},
        {"cap_starts", "601", [](LimitSet& it) { it.cap.starts = base::Count{601}; }},
        {"tolerance_hours", "10", [](LimitSet& it) { it.tolerance.hours = base::hours(10); }},
        {"tolerance_days", "5", [](LimitSet& it) { it.tolerance.days = 5; }},
        {"tolerance_permille", "10.5", [](LimitSet& it) { it.tolerance.permille = 105; }},
        {"tolerance_permille", "10", [](LimitSet& it) { it.tolerance.permille = 100; }},
        {"carry_over",
         "the due point",
         [](LimitSet& it) { it.tolerance.carry_over = facts::CarryOver::from_due; }},
        {"overfly_hours", "10", [](LimitSet& it) { it.tolerance.overfly_hours = base::hours(10); }},
    };
    for (const Row& row : rows) {
        CAPTURE(row.id, row.told);
        Hangar hangar;
        begin_inspection(hangar, true);
        if (hangar.field(row.id).options.empty())
            hangar.type(row.id, row.told);
        else
            hangar.choose(row.id, row.told);
        hangar.type("tolerance_source", "Leaflet");
        hangar.send();
        LimitSet expected = inspection();
        row.expect(expected);
        expected.tolerance.source = "Leaflet";
        const LimitSet limit = hangar.last<LimitSet>().second;
        CHECK(same(limit, expected));
    }
}

TEST_CASE("a percentage and its caps end in their fields, and the chapter at the item",
          "[app][limits]") {
    Hangar hangar;
    begin_inspection(hangar, true);
    hangar.type("chapter", "62");
    hangar.type("tolerance_permille", "10");
    hangar.type("tolerance_cap_hours", "8");
    hangar.type("tolerance_cap_days", "4");
    hangar.type("tolerance_source", "Leaflet");
    hangar.send();
    LimitSet expected = inspection();
    expected.tolerance = {{}, {}, 100, base::hours(8), 4, {}, {}, "Leaflet"};
    CHECK(same(hangar.last<LimitSet>().second, expected));
    const auto [body, item] = hangar.last<facts::ItemAdded>();
    CHECK(item.chapter == "62");
    CHECK(item.role == facts::ItemRole::inspection);
    CHECK(body.about.size() == 2);
    CHECK(body.about.front() == hangar.aircraft);
    CHECK(hangar.due("Inspection").hours_left.has_value());
}

TEST_CASE("what cannot be stands beside the field it is about", "[app][limits]") {
    struct Told {
        const char* id;
        const char* text;
    };

    struct Row {
        std::vector<Told> told;
        const char* field;
        base::Trouble code;
    };

    using base::Trouble;
    const Row rows[] = {
        {{{"hours", ""}}, "hours", Trouble::limit_without_any},
        {{{"hours", "0"}}, "hours", Trouble::limit_zero},
        {{{"hours", "300000"}}, "hours", Trouble::hours_absurd},
        {{{"months", "0"}}, "months", Trouble::limit_zero},
        {{{"months", "1201"}}, "months", Trouble::months_absurd},
        {{{"landings", "0"}}, "landings", Trouble::limit_zero},
        {{{"starts", "0"}}, "starts", Trouble::limit_zero},
        {{{"months", "1"}, {"days", "30"}}, "days", Trouble::limit_two_calendars},
        {{{"days", "40000"}}, "days", Trouble::number_absurd},
        {{{"first_hours", "0"}}, "first_hours", Trouble::limit_zero},
        {{{"first_months", "1"}, {"first_days", "30"}}, "first_days", Trouble::limit_two_calendars},
        {{{"cap_months", "1"}, {"cap_days", "30"}}, "cap_days", Trouble::limit_two_calendars},
        {{{"cap_starts", "20000000"}}, "cap_starts", Trouble::count_absurd},
        {{{"tolerance_hours", "10"}}, "tolerance_source", Trouble::tolerance_without_source},
        {{{"tolerance_permille", "100.1"}}, "tolerance_permille", Trouble::form_percent_absurd},
        {{{"tolerance_permille", "-1"}}, "tolerance_permille", Trouble::form_percent_absurd},
        {{{"tolerance_permille", "1.25"}}, "tolerance_permille", Trouble::form_decimals},
        {{{"tolerance_cap_days", "4"}}, "tolerance_cap_days", Trouble::tolerance_cap_alone},
        {{{"tolerance_days", "5000"}}, "tolerance_days", Trouble::number_absurd},
        {{{"anchor_on", "2026-11-26"}}, "anchor_on", Trouble::entry_day_ahead},
        {{{"first_landings", "1.5"}}, "first_landings", Trouble::form_not_whole},
    };
    for (const Row& row : rows) {
        CAPTURE(row.field, static_cast<int>(row.code));
        Hangar hangar;
        const std::size_t before = hangar.records().size();
        begin_inspection(hangar, true);
        for (const Told& told : row.told)
            hangar.type(told.id, told.text);
        hangar.more();
        hangar.send();
        CHECK(hangar.problem(row.field) == row.code);  // on the page, closed or not
        CHECK(hangar.form().problems.empty());
        CHECK(hangar.records().size() == before);
    }
}

TEST_CASE("tolerances that the class or the item has no place for are refused", "[app][limits]") {
    Hangar hangar;
    begin_inspection(hangar, true);
    hangar.type("overfly_hours", "10");
    hangar.type("tolerance_source", "Rule");
    hangar.choose("class", "airworthiness limitation");
    hangar.send();
    CHECK(hangar.problem("overfly_hours") == base::Trouble::tolerance_not_allowed);
    hangar.choose("class", "directive");
    hangar.send();
    CHECK(hangar.problem("overfly_hours") == base::Trouble::overfly_not_programme);
    hangar.choose("class", "programme");
    hangar.choose("role", "component");
    hangar.send();
    CHECK(hangar.problem("overfly_hours") == base::Trouble::form_overfly_item);
    hangar.choose("role", "inspection");
    hangar.send();
    CHECK(hangar.last<LimitSet>().second.tolerance.overfly_hours == base::hours(10));
}
