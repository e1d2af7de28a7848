// Type templates: what a file must be, what is shipped, and what a template becomes.
#include "engine/facts/type_template.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/first_trouble.hpp"
#include "tests/support/pen.hpp"

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include "engine/facts/check.hpp"

using namespace twoclocks;
using facts::Clock;
using facts::TypeTemplate;
using support::day;

namespace {

std::string with_item(const std::string& figures) {
    return R"({"name": "Sample", "invented": true, "note": "Invented.", "items": [)"
           R"({"key": "belts", "name": "Belts", "role": "component", "class": "programme", )" +
           figures + R"(}], "works": []})";
}

std::vector<std::string> shipped_files() {
    std::vector<std::string> out;
    const std::filesystem::path folder{std::string{HOUSE_ROOT} + "/assets/templates"};
    for (const auto& entry : std::filesystem::directory_iterator{folder}) {
        if (entry.path().extension() == ".json") out.push_back(entry.path().filename().string());
    }
    std::sort(out.begin(), out.end());
    return out;
}

TypeTemplate shipped(const std::string& name) {
    const auto read = facts::parse_template(support::file_text("assets/templates/" + name));
    CAPTURE(name, support::first_trouble(read));
    REQUIRE(read.ok());
    return read.value();
}

const facts::TemplateItem& item_of(const TypeTemplate& type, const std::string& key) {
    const auto found = std::find_if(
        type.items.begin(), type.items.end(), [&](const auto& item) { return item.key == key; });
    REQUIRE(found != type.items.end());
    return *found;
}

std::vector<Clock> clocks_of(const TypeTemplate& type,
                             const std::string& work,
                             const std::string& key) {
    for (const facts::TemplateWork& each : type.works) {
        for (const facts::TemplateRenewal& renewal : each.renews) {
            if (each.name == work && renewal.item == key) return renewal.clocks;
        }
    }
    FAIL("the work does not renew the item");
    return {};
}

bool work_renews(const TypeTemplate& type, const std::string& work, const std::string& key) {
    for (const facts::TemplateWork& each : type.works) {
        for (const facts::TemplateRenewal& renewal : each.renews) {
            if (each.name == work && renewal.item == key) return true;
        }
    }
    return false;
}

}  // namespace

TEST_CASE("a template is read as it is written, hours as whole hours", "[facts][templates]") {
    const auto read = facts::parse_template(with_item(
        R"("chapter": "63 Drive", "hours": 500, "months": 24, "landings": 900, "starts": 70,)"
        R"("first_hours": 100, "once": true, "combine": "later", "cap_days": 800,)"
        R"("calendar_rule": "month_end", "anchor": "cure", "in_force": "on_return")"));
    REQUIRE(read.ok());
    const facts::TemplateItem& item = read.value().items.front();
    CHECK(item.key == "belts");
    CHECK(item.item.name == "Belts");
    CHECK(item.item.role == facts::ItemRole::component);
    CHECK(item.item.chapter == "63 Drive");
    CHECK(item.limit.limit_class == facts::LimitClass::programme);
    CHECK(item.limit.hours == base::hours(500));
    CHECK(item.limit.months == 24);
    CHECK(item.limit.landings == base::Count{900});
    CHECK(item.limit.starts == base::Count{70});
    CHECK(item.limit.first.hours == base::hours(100));
    CHECK(item.limit.once);
    CHECK(item.limit.combine == facts::Combine::later);
    CHECK(item.limit.cap.days == 800);
    CHECK(item.limit.rule == base::CalendarRule::month_end);
    CHECK(item.limit.anchor == facts::Anchor::cure);
    CHECK(item.limit.in_force == facts::InForce::on_return);
}

TEST_CASE("what cannot be a limit, or is not for a template, is refused", "[facts][templates]") {
    struct Row {
        const char* figures;
        const char* code;
        const char* field;
    };

    const Row rows[] = {
        {R"("hours": 500)", "accepted", ""},
        {R"("hours": 0)", "limit_zero", "items.belts.hours"},
        {R"("hours": -1)", "hours_negative", "items.belts.hours"},
        {R"("hours": 200000)", "accepted", ""},
        {R"("hours": 200001)", "hours_absurd", "items.belts.hours"},
        {R"("hours": 9007199254740992)", "hours_absurd", "items.belts.hours"},
        {R"("hours": 500.5)", "line_number_not_whole", ""},
        {R"("hours": "500")", "fact_field_wrong", "items.belts.hours"},
        {R"("months": 1200)", "accepted", ""},
        {R"("months": 1201)", "months_absurd", "items.belts.months"},
        {R"("months": 1, "days": 1)", "limit_two_calendars", "items.belts.days"},
        {R"("once": true)", "limit_without_any", "items.belts.hours"},
        {R"("hours": 5, "anchor": "birth")", "fact_field_wrong", "items.belts.anchor"},
        {R"("hours": 5, "anchor_on": "2026-01-01")",
         "template_field_unknown",
         "items.belts.anchor_on"},
        {R"("hours": 5, "anchor_total": 7)", "template_field_unknown", "items.belts.anchor_total"},
        {R"("hours": 5, "revision": "B")", "template_field_unknown", "items.belts.revision"},
        {R"("hours": 5, "tolerance_hours": 5)",
         "tolerance_without_source",
         "items.belts.tolerance_source"},
        {R"("hourz": 5, "hours": 5)", "template_field_unknown", "items.belts.hourz"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.figures);
        const auto read = facts::parse_template(with_item(row.figures));
        CHECK(support::first_trouble(read) == row.code);
        if (!read.ok()) CHECK(read.problems().front().field == row.field);
    }
}

TEST_CASE("problems of a template are collected", "[facts][templates]") {
    const auto read = facts::parse_template(
        R"({"name": "Sample", "note": "None.", "items": [{"key": "a", "hours": 0}],)"
        R"("works": [{"name": "W", "renews": [{"item": "b"}]}], "more": 1})");
    REQUIRE_FALSE(read.ok());
    std::set<std::string> codes;
    for (const base::Problem& problem : read.problems())
        codes.insert(std::string{base::name_of(problem.code)});
    CHECK(codes == std::set<std::string>{"template_not_invented",
                                         "fact_field_missing",
                                         "limit_zero",
                                         "template_item_unknown",
                                         "template_field_unknown"});
}

TEST_CASE("every shipped template reads, is invented, and has one overhaul", "[facts][templates]") {
    REQUIRE(shipped_files().size() == 3);
    std::set<std::string> names;
    for (const std::string& file : shipped_files()) {
        CAPTURE(file);
        const TypeTemplate type = shipped(file);
        names.insert(type.name);
        CHECK(type.note.starts_with("Invented."));
        CHECK(type.items.size() >= 20);
        CHECK(type.works.size() >= 5);
        const auto overhauls =
            std::count_if(type.items.begin(), type.items.end(), [](const auto& item) {
                return item.item.role == facts::ItemRole::overhaul;
            });
        CHECK(overhauls == 1);
        CHECK(type.items.front().item.role == facts::ItemRole::overhaul);
        REQUIRE(type.items.front().limit.months.has_value());
        CHECK(*type.items.front().limit.months % 12 == 0);  // the form asks for years
        for (const facts::TemplateItem& item : type.items) {
            CAPTURE(item.key);
            CHECK_FALSE(item.item.chapter.empty());
            // A part that is replaced has a successor with a life of its own.
            CHECK_FALSE((item.limit.once && item.item.role == facts::ItemRole::component));
        }
    }
    CHECK(names.size() == 3);
}

// checks.md, facts of the trade 1 [T]: 2,200 h or 12 years; design, "What renews what".
TEST_CASE("the hours overhaul renews both clocks, the calendar inspection one of them",
          "[facts][templates]") {
    const TypeTemplate type = shipped("light_piston.json");
    CHECK(item_of(type, "overhaul").limit.hours == base::hours(2200));
    CHECK(item_of(type, "overhaul").limit.months == 144);
    CHECK(clocks_of(type, "Overhaul", "overhaul").empty());
    CHECK(clocks_of(type, "Calendar inspection", "overhaul") == std::vector{Clock::calendar});
    CHECK(clocks_of(type, "Calendar inspection", "hoses").empty());
    for (const char* kept : {"engine", "magnetos", "tail_blades", "beacon_battery"}) {
        CAPTURE(kept);
        CHECK_FALSE(work_renews(type, "Overhaul", kept));
        CHECK_FALSE(work_renews(type, "Calendar inspection", kept));
    }
    CHECK_FALSE(work_renews(type, "Calendar inspection", "hub_bolts"));
    CHECK(work_renews(type, "Annual inspection", "inspection_100"));
}

TEST_CASE("a template becomes records that are sound, under ids that the caller made",
          "[facts][templates]") {
    const base::Id aircraft = support::id_of(1);
    const facts::TakenOver taken{day("2026-11-25"), aircraft, "Manual", "3"};
    const facts::LastOverhaul last{facts::Anchor::overhaul, day("2020-02-01"), base::hours(2187)};
    for (const std::string& file : shipped_files()) {
        const TypeTemplate type = shipped(file);
        std::vector<std::pair<std::string, base::Id>> ids;
        for (const facts::TemplateItem& item : type.items) {
            CAPTURE(file, item.key);
            const base::Id id = support::id_of(100 + ids.size());
            ids.emplace_back(item.key, id);
            const auto bodies = facts::item_bodies(item, item.limit, taken, last, id);
            REQUIRE(bodies.size() == 2);
            for (const facts::Body& body : bodies) {
                CHECK(facts::check(body).empty());
                CHECK(body.about == std::vector{aircraft, id});
                CHECK(body.on == taken.on);
            }
            const auto& limit = std::get<facts::LimitSet>(bodies[1].fields);
            CHECK(limit.source == "Manual");
            CHECK(limit.revision == "3");
            const bool from_overhaul = item.limit.anchor == facts::Anchor::overhaul;
            CHECK(limit.anchor_on == (from_overhaul ? last.on : std::nullopt));
            CHECK(limit.anchor_total == (from_overhaul ? last.total : std::nullopt));
        }
        for (const facts::TemplateWork& work : type.works) {
            CAPTURE(file, work.name);
            const facts::Body body = facts::rule_body(work, ids, taken);
            CHECK(facts::check(body).empty());
            CHECK(body.about == std::vector{aircraft});
            const auto& rule = std::get<facts::WorkRule>(body.fields);
            CHECK(rule.name == work.name);
            CHECK(rule.source == "Manual");
            CHECK(rule.renews.size() == work.renews.size());
        }
        const auto some = facts::renewals_of(type.works.front(), {ids.front()});
        REQUIRE(some.size() == 1);
        CHECK(some.front().item == ids.front().second);
    }
}
