// Forms about an item and its limit: what they ask for, what they keep, what they write.
#include "tests/app/limit_bench.hpp"

#include <algorithm>
#include <set>

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::begin_inspection;
using canvas::support::FakeHost;
using canvas::support::Hangar;
using canvas::support::inspection;
using canvas::support::said;
using canvas::support::same;
using canvas::support::today;
using facts::LimitSet;

/// A limit with every setting that can stand beside the others.
LimitSet full_limit() {
    LimitSet limit = inspection();
    limit.landings = base::Count{400};
    limit.starts = base::Count{300};
    limit.days = 90;
    limit.rule = base::CalendarRule::month_end;
    limit.anchor = facts::Anchor::cure;
    limit.anchor_on = base::Date{20'000};
    limit.anchor_total = base::FlightTime{3'500'010};  // 972.225 h
    limit.anchor_landings = base::Count{11};
    limit.anchor_starts = base::Count{12};
    limit.source = "Manual";
    limit.revision = "7";
    limit.first = {base::hours(25), 6, {}, base::Count{50}, base::Count{60}};
    limit.once = true;
    limit.combine = facts::Combine::later;
    limit.cap = {base::hours(500), {}, 700, base::Count{800}, base::Count{900}};
    limit.tolerance = {base::hours(10),
                       5,
                       105,
                       base::hours(8),
                       4,
                       facts::CarryOver::from_due,
                       base::hours(9),
                       "Leaflet"};
    return limit;
}

}  // namespace

TEST_CASE("a simple item is asked for as shortly as before, and More settings opens the rest",
          "[app][limits]") {
    Hangar hangar;
    hangar.open(FormKind::new_item, hangar.aircraft);
    const auto ids = [&] {
        std::vector<std::string> out;
        for (const FieldView& field : hangar.form().fields)
            out.push_back(field.id);
        return out;
    };
    const std::vector<std::string> few{"name",
                                       "role",
                                       "hours",
                                       "months",
                                       "landings",
                                       "anchor_on",
                                       "anchor_total",
                                       "class",
                                       "calendar_rule",
                                       "source",
                                       "revision"};
    CHECK(ids() == few);
    CHECK(hangar.field("anchor_total").text == "1000.0");
    CHECK(hangar.form().more_at == 11);
    CHECK_FALSE(hangar.form().asks_more);
    hangar.more();
    CHECK(hangar.form().asks_more);
    CHECK(ids().size() == few.size() + 27);
    CHECK(hangar.form().fields[11].id == "chapter");
    CHECK_FALSE(hangar.form().can_clear);  // looking is not typing
    std::set<std::string> labels;
    for (const FieldView& field : hangar.form().fields) {
        CAPTURE(field.id);
        CHECK(labels.insert(said(field.label)).second);
        CHECK(said(field.label) != "Other");
    }
    hangar.more();
    CHECK(ids() == few);
}

TEST_CASE("closing More settings hides nothing that will be saved", "[app][limits]") {
    Hangar hangar;
    begin_inspection(hangar, true);
    hangar.type("cap_hours", "500");
    hangar.choose("once", "once only");
    hangar.more();
    CHECK(hangar.find("first_hours") == nullptr);
    CHECK(hangar.field("cap_hours").text == "500");
    CHECK(hangar.field("once").chosen == 1);
    // Emptied while it is on the page it stays there: nothing moves under the fingers.
    hangar.type("cap_hours", "");
    CHECK(hangar.find("cap_hours") != nullptr);
    hangar.more();
    hangar.more();
    CHECK(hangar.find("cap_hours") == nullptr);
    CHECK(hangar.find("once") != nullptr);
}

TEST_CASE("clearing closes More settings, undoing brings all of it back", "[app][limits]") {
    Hangar hangar;
    begin_inspection(hangar, true);
    hangar.type("days", "45");
    hangar.app.apply(intent::ClearEntry{});
    CHECK_FALSE(hangar.form().asks_more);
    CHECK(hangar.find("days") == nullptr);
    hangar.app.apply(intent::UndoClear{});
    CHECK(hangar.form().asks_more);
    CHECK(hangar.field("days").text == "45");
}

TEST_CASE("a draft brings back what was typed under More settings, and shows it",
          "[app][limits][drafts]") {
    Hangar hangar;
    begin_inspection(hangar, true);
    hangar.type("tolerance_permille", "10.5");
    hangar.choose("carry_over", "the due point");
    FakeHost next_host;
    AppState next{next_host};
    for (const std::string& segment : hangar.host.stored)
        CHECK(next.stored(StoredKind::segment, segment));
    next.set_setting("caution", "accepted");
    next.set_device("test-device");
    next.refresh({20'782, 1'795'600'000'000, 0x4321U, 0x8765U});
    next.stored_draft(hangar.host.draft);
    next.loaded();
    const auto* page = std::get_if<FormPage>(&next.screen().page);
    REQUIRE(page != nullptr);
    CHECK_FALSE(page->asks_more);
    const auto shown = [&](std::string_view id) {
        return std::any_of(page->fields.begin(), page->fields.end(), [&](const FieldView& each) {
            return each.id == id;
        });
    };
    CHECK(shown("tolerance_permille"));
    CHECK(shown("carry_over"));
    CHECK_FALSE(shown("tolerance_hours"));
}

TEST_CASE("a limit is changed from a day on: a new record, the old one stays", "[app][limits]") {
    Hangar hangar;
    hangar.open(FormKind::change_limit, hangar.overhaul);
    CHECK(said(hangar.form().title) == "Change this limit");
    CHECK(said(hangar.form().about) == "Overhaul, TEST-1");
    CHECK(hangar.field("date").text == "2026-11-25");
    CHECK(hangar.field("hours").text == "2200.0");
    CHECK(hangar.field("months").text == "144");
    CHECK(hangar.field("anchor_on").text == "2016-06-15");
    CHECK(hangar.field("class").chosen == 0);
    CHECK(hangar.field("anchor").chosen == 0);  // manufacture is not the usual: it is seen
    CHECK_FALSE(hangar.form().can_clear);
    const LimitSet before = hangar.last<LimitSet>().second;
    hangar.open(FormKind::change_limit, hangar.overhaul);
    hangar.type("hours", "2400");
    hangar.type("revision", "8");
    hangar.type("date", "2026-11-24");  // the limit before it was written down on the 25th
    hangar.send();
    CHECK(hangar.problem("date") == base::Trouble::form_limit_before);
    hangar.type("date", "2026-11-25");
    hangar.send();
    LimitSet expected = before;
    expected.hours = base::hours(2400);
    expected.revision = "8";
    const auto [body, after] = hangar.last<LimitSet>();
    CHECK(same(after, expected));
    CHECK(base::print_date(body.on) == "2026-11-25");
    CHECK(body.about == std::vector<base::Id>{hangar.aircraft, hangar.overhaul});
    const std::vector<facts::Fact> all = hangar.records();
    CHECK(std::count_if(all.begin(), all.end(), [](const facts::Fact& fact) {
              return std::holds_alternative<LimitSet>(fact.body.fields);
          }) == 2);
    CHECK(said(hangar.due("Overhaul").hours_left->text) == "1,400.0 h");
}

TEST_CASE("a limit that is opened and saved again says the same, to the second", "[app][limits]") {
    Hangar hangar;
    begin_inspection(hangar, false);
    hangar.send();
    const base::Id item = hangar.due("Inspection").item;
    const LimitSet full = full_limit();
    facts::Fact fact;
    fact.id = {0x0190000000007000ULL, 0x8000000000000077ULL};
    fact.stamp = {1'795'600'100'000, 0, "other"};
    fact.body = {today, {hangar.aircraft, item}, full, {}};
    hangar.app.file_chosen("more.jsonl",
                           facts::print_header() + '\n' + facts::print_fact(fact) + '\n');
    hangar.app.apply(intent::AcceptImport{});
    hangar.host.answer(hangar.app);
    for (const bool corrects : {false, true}) {
        CAPTURE(corrects);
        hangar.open(corrects ? FormKind::correct : FormKind::change_limit,
                    corrects ? fact.id : item);
        CHECK(hangar.find("first_days") == nullptr);
        CHECK(hangar.field("tolerance_permille").text == "10.5");
        if (corrects) {
            hangar.type("why", "a slip");
        } else {
            hangar.send();
            CHECK(hangar.problem("date") == base::Trouble::form_same_as_before);
            hangar.type("revision", "8");
        }
        hangar.send();
        if (corrects) {
            const auto correction = hangar.last<facts::Correction>().second;
            CHECK(same(std::get<LimitSet>(correction.instead->fields), full));
        } else {
            LimitSet revised = full;
            revised.revision = "8";
            CHECK(same(hangar.last<LimitSet>().second, revised));
        }
    }
}

TEST_CASE("a permit is recorded with its item, and asks for what a permit needs", "[app][limits]") {
    Hangar hangar;
    hangar.open(FormKind::permit, hangar.overhaul);
    CHECK(said(hangar.form().about) == "Overhaul, TEST-1");
    CHECK(said(hangar.form().intro).find("renews nothing") != std::string::npos);
    hangar.send();
    CHECK(hangar.problem("issuer") == base::Trouble::form_needed);
    hangar.type("issuer", "The authority");
    hangar.send();
    CHECK(hangar.problem("hours") == base::Trouble::permit_without_any);
    hangar.type("hours", "5");
    hangar.type("until", "2026-11-24");
    hangar.send();
    CHECK(hangar.problem("until") == base::Trouble::form_ends_before_start);
    hangar.type("until", "2026-11-25");  // its last day may be its first
    hangar.type("reference", "P-7");
    hangar.type("route", "Field to hangar");
    hangar.send();
    const auto [body, permit] = hangar.last<facts::Permit>();
    CHECK(body.about == std::vector<base::Id>{hangar.aircraft, hangar.overhaul});
    CHECK(body.on == today);
    CHECK(permit.issuer == "The authority");
    CHECK(permit.reference == "P-7");
    CHECK(permit.route == "Field to hangar");
    CHECK(permit.hours == base::hours(5));
    CHECK(permit.until == today);
    CHECK(said(hangar.due("Overhaul").hours_left->text) == "1,200.0 h");
}

TEST_CASE("the last day of a permit is called so when it is corrected", "[app][limits]") {
    Hangar hangar;
    hangar.open(FormKind::permit, hangar.overhaul);
    hangar.type("issuer", "The authority");
    hangar.type("until", "2026-12-01");
    const base::Word asked = hangar.field("until").label.word;
    hangar.send();
    const std::vector<facts::Fact> all = hangar.records();
    const auto permit = std::find_if(all.begin(), all.end(), [](const facts::Fact& fact) {
        return std::holds_alternative<facts::Permit>(fact.body.fields);
    });
    REQUIRE(permit != all.end());
    hangar.open(FormKind::correct, permit->id);
    CHECK(hangar.field("until").label.word == asked);
    CHECK(hangar.field("until").text == "2026-12-01");
}

TEST_CASE("an item gets another name, and keeps its limit", "[app][limits]") {
    Hangar hangar;
    hangar.open(FormKind::rename_item, hangar.overhaul);
    CHECK(hangar.field("name").text == "Overhaul");
    hangar.send();
    CHECK(hangar.problem("name") == base::Trouble::form_same_as_before);
    hangar.type("name", "");
    hangar.send();
    CHECK(hangar.problem("name") == base::Trouble::form_needed);
    hangar.type("name", "Main overhaul");
    hangar.type("why", "as the manual says");
    hangar.send();
    const auto [body, changed] = hangar.last<facts::ItemChanged>();
    CHECK(changed.name == "Main overhaul");
    CHECK(changed.why == "as the manual says");
    CHECK(body.about == std::vector<base::Id>{hangar.aircraft, hangar.overhaul});
    CHECK(said(hangar.due("Main overhaul").hours_left->text) == "1,200.0 h");
}
