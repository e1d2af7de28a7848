// Work done by a rule on record: an hours overhaul against a calendar inspection.
#include "catch_amalgamated.hpp"
#include "tests/app/template_bench.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using namespace twoclocks::canvas::bench;

constexpr const char* overhaul = "Overhaul of the helicopter";

/// The aircraft at 1,100.0 h with everything of its template.
timeline::AircraftState at_1100(AppState& app, FakeHost& host) {
    add_from_template(app, host, "1100.0");
    choose(app, "part", "all that is left");
    submit(app, host);
    (void)take_all(app, host);
    const timeline::AircraftState out = state(app, host);
    CHECK(left(out, overhaul) == "1100.0 h, 2028-06-15");
    return out;
}

}  // namespace

// checks.md, facts of the trade 9 [T], and design, "What renews what": an aircraft that meets the
// calendar may do the calendar work and keep its hours, or take the full overhaul.
TEST_CASE(
    "the calendar inspection renews the calendar and keeps the hours; the overhaul renews both",
    "[app][rules]") {
    struct Row {
        const char* work;
        const char* overhaul;
        const char* gearbox;
        const char* belts;
        const char* engine;
    };

    const Row rows[] = {
        {"Calendar inspection",
         "1100.0 h, 2038-11-25",
         "1100.0 h, 2038-11-25",
         "1100.0 h, 2032-11-25",
         "1100.0 h, 2028-06-15"},
        {"Overhaul",
         "2200.0 h, 2038-11-25",
         "2200.0 h, 2038-11-25",
         "1100.0 h, 2032-11-25",
         "1100.0 h, 2028-06-15"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.work);
        FakeHost host;
        AppState app{host};
        const timeline::AircraftState before = at_1100(app, host);
        app.apply(intent::OpenForm{FormKind::work_done, item(before, overhaul)});
        choose(app, "rule", row.work);
        CHECK(text_of(app, "what") == row.work);
        CHECK(text_of(app, "total") == "1100.0");
        submit(app, host);
        const timeline::AircraftState after = state(app, host);
        CHECK(left(after, overhaul) == row.overhaul);
        CHECK(left(after, "Main gearbox") == row.gearbox);
        CHECK(left(after, "Drive belts") == row.belts);
        CHECK(left(after, "Engine overhaul") == row.engine);
        CHECK(after.questions.empty());
    }
}

TEST_CASE("the form says what is renewed and what is kept before it is saved", "[app][rules]") {
    FakeHost host;
    AppState app{host};
    const timeline::AircraftState before = at_1100(app, host);
    app.apply(intent::OpenForm{FormKind::work_done, item(before, overhaul)});
    CHECK(told(app, "rule").empty());
    CHECK(text_of(app, "what") == overhaul);
    choose(app, "rule", "Calendar inspection");
    const std::string words = told(app, "rule");
    CAPTURE(words);
    CHECK(words.starts_with("Renews 50 h check with oil and filter, 100 h inspection"));
    CHECK(words.find("Renews Overhaul of the helicopter: calendar\n"
                     "Keeps Overhaul of the helicopter: hours\n") != std::string::npos);
    CHECK(words.find("Keeps Main gearbox: hours\n") != std::string::npos);
    CHECK(words.ends_with("18 other items keep their clocks\n"));
    choose(app, "rule", "one item only");
    CHECK(told(app, "rule").empty());
    CHECK(text_of(app, "what") == overhaul);
    app.field_text("what", "Blade tracking");
    choose(app, "rule", "Overhaul");
    CHECK(text_of(app, "what") == "Blade tracking");
}

TEST_CASE("work on one item stays as it was, and offers the works that renew it", "[app][rules]") {
    FakeHost host;
    AppState app{host};
    const timeline::AircraftState before = at_1100(app, host);
    app.apply(intent::OpenForm{FormKind::work_done, item(before, "Magnetos")});
    REQUIRE(field(app, "rule") != nullptr);
    CHECK(field(app, "rule")->options.size() == 2);
    CHECK(said(field(app, "rule")->options[1]) == "Engine overhaul or exchange");
    submit(app, host);
    const timeline::AircraftState after = state(app, host);
    CHECK(left(after, "Magnetos") == "500.0 h, 2030-11-25");
    CHECK(left(after, "Engine overhaul") == "1100.0 h, 2028-06-15");
    app.apply(intent::OpenForm{FormKind::work_done, item(before, "Compass swing")});
    CHECK(field(app, "rule") == nullptr);
    app.apply(intent::OpenForm{FormKind::work_done, before.id});
    CHECK(field(app, "rule")->options.size() == before.work_rules.size() + 1);
    CHECK(field(app, "item") != nullptr);
    choose(app, "rule", "100 h inspection");
    CHECK(field(app, "item") == nullptr);
    choose(app, "rule", "one item only");
    CHECK(field(app, "item") != nullptr);
}

TEST_CASE("the record of work stands alone: a rule that changes later renews nothing more",
          "[app][rules]") {
    FakeHost host;
    AppState app{host};
    const timeline::AircraftState before = at_1100(app, host);
    app.apply(intent::OpenForm{FormKind::work_done, item(before, "100 h inspection")});
    choose(app, "rule", "100 h inspection");
    submit(app, host);
    const std::string renewed = left(state(app, host), "50 h check with oil and filter");
    for (const timeline::WorkRuleState& rule : before.work_rules) {
        if (rule.name != "100 h inspection") continue;
        app.apply(intent::OpenForm{FormKind::withdraw, rule.id});
        app.field_text("why", "not ours");
        submit(app, host);
    }
    const timeline::AircraftState after = state(app, host);
    CHECK(after.work_rules.size() + 1 == before.work_rules.size());
    CHECK(left(after, "50 h check with oil and filter") == renewed);
    CHECK(renewed == "50.0 h, 2027-03-25");
}
