// The plan: its page, and what is recorded of it through four forms.
#include "catch_amalgamated.hpp"
#include "tests/app/limit_bench.hpp"
#include "tests/support/phone.hpp"

#include <string>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::Hangar;
using canvas::support::said;

namespace {

const views::PlanView& plan_of(Hangar& h) {
    const auto* page = std::get_if<PlanPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    return page->view;
}

const views::PlanTaskRow& row_of(Hangar& h, const std::string& key) {
    for (const views::PlanTaskRow& row : plan_of(h).rows)
        if (row.key == key) return row;
    FAIL("no row " << key);
    return plan_of(h).rows.front();
}

const FieldView& field_shown(Hangar& h, const std::string& id) {
    const auto* page = std::get_if<FormPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    for (const FieldView& one : page->fields)
        if (one.id == id) return one;
    FAIL("no field " << id);
    return page->fields.front();
}

}  // namespace

TEST_CASE("a task is tapped, its days are changed, and the plan is shown again", "[app][plan]") {
    Hangar h;
    h.app.apply(intent::OpenPlan{h.aircraft});
    CHECK(said(row_of(h, "kit").estimate).starts_with("Our estimate of 29 Nov 2026"));
    h.app.apply(intent::OpenTask{FormKind::plan_task, h.aircraft, "kit"});
    CHECK(field_shown(h, "likely").text == "154");
    h.type("low", "190");
    h.type("likely", "200");
    h.type("high", "210");
    h.type("said_by", "Works of the example");
    h.send();
    const auto [body, task] = h.last<facts::PlanTask>();
    CHECK(task.task == "kit");
    CHECK(task.low_days == 190);
    CHECK(task.high_days == 210);
    CHECK(task.said_by == "Works of the example");
    h.app.apply(intent::OpenPlan{h.aircraft});
    CHECK(said(row_of(h, "kit").estimate).ends_with("190 to 210 days, expected 200"));
}

TEST_CASE("days in the wrong order, too many, or only some are complained of", "[app][plan][bad]") {
    Hangar h;
    const std::size_t recorded = h.records().size();
    h.app.apply(intent::OpenTask{FormKind::plan_task, h.aircraft, "kit"});
    h.type("low", "300");
    h.send();
    CHECK(field_shown(h, "likely").problem->code == base::Trouble::task_out_of_order);
    h.type("low", "");
    h.send();
    CHECK(field_shown(h, "low").problem->code == base::Trouble::plan_task_days_missing);
    h.type("low", "1");
    h.type("high", "3654");
    h.send();
    CHECK(field_shown(h, "high").problem->code == base::Trouble::form_too_large);
    CHECK(h.records().size() == recorded);
}

TEST_CASE("another task needs a name and its days, and joins where it is put", "[app][plan]") {
    Hangar h;
    h.app.apply(intent::OpenForm{FormKind::plan_task, h.aircraft});
    h.app.apply(intent::ChooseOption{"task", 27});
    CHECK(field_shown(h, "likely").text.empty());
    h.send();
    CHECK(field_shown(h, "likely").problem->code == base::Trouble::form_needed);
    h.type("low", "1");
    h.type("likely", "2");
    h.type("high", "3");
    h.more();
    h.type("name", "Hire a crane");
    h.app.apply(intent::ChooseOption{"after", 12});   // after the strip
    h.app.apply(intent::ChooseOption{"before", 17});  // before the rebuild
    h.send();
    h.app.apply(intent::OpenPlan{h.aircraft});
    CHECK(plan_of(h).rows.size() == 28);
    CHECK(plan_of(h).faults.empty());
    for (const base::Message& note : plan_of(h).notes)
        CHECK(note.word != base::Word::plan_loose);
}

TEST_CASE("how far a task is: begun, promised for a day, done", "[app][plan]") {
    Hangar h;
    h.app.apply(intent::OpenTask{FormKind::plan_step, h.aircraft, "kit"});
    h.app.apply(intent::ChooseOption{"step", 1});
    h.send();
    CHECK(field_shown(h, "promised").problem->code == base::Trouble::form_needed);
    h.type("promised", "2027-03-01");
    h.type("reference", "Order 7");
    h.send();
    const auto [body, step] = h.last<facts::PlanStep>();
    CHECK(step.step == facts::TaskStep::promised);
    CHECK(base::print_date(*step.promised) == "2027-03-01");
    h.app.apply(intent::OpenTask{FormKind::plan_step, h.aircraft, "quotes"});
    h.type("date", "2199-01-01");
    h.send();
    CHECK(field_shown(h, "date").problem->code == base::Trouble::form_day_ahead);
}

TEST_CASE("how sure to be goes from 50 to 99", "[app][plan]") {
    Hangar h;
    h.app.apply(intent::OpenForm{FormKind::plan_terms, h.aircraft});
    CHECK(field_shown(h, "confidence").text == "90");
    for (const char* wrong : {"49", "100"}) {
        h.type("confidence", wrong);
        h.send();
        CHECK(field_shown(h, "confidence").problem->code == base::Trouble::plan_confidence_range);
    }
    h.type("confidence", "80");
    h.type("cores", "120");
    h.send();
    const auto [body, terms] = h.last<facts::PlanTerms>();
    CHECK(terms.confidence_percent == 80);
    CHECK(terms.core_days == 120);
    CHECK(!terms.margin_days);
    h.app.apply(intent::OpenPlan{h.aircraft});
    if (plan_of(h).missing.word == base::Word::blank)
        CHECK(said(plan_of(h).confidence) == "These days hold in 80 of 100 ways it may go.");
}

TEST_CASE("closed days end on or after the day they begin", "[app][plan]") {
    Hangar h;
    h.app.apply(intent::OpenForm{FormKind::closed_days, h.aircraft});
    h.type("first", "2026-12-24");
    h.type("last", "2026-12-23");
    h.send();
    CHECK(field_shown(h, "last").problem->code == base::Trouble::closed_backwards);
    h.type("last", "2027-01-06");
    h.send();
    const auto [body, closed] = h.last<facts::Closed>();
    CHECK(base::print_date(body.on) == "2026-12-24");
    CHECK(base::print_date(*closed.last) == "2027-01-06");
}

TEST_CASE("the plan is worked out once, and again when something is recorded", "[app][plan]") {
    Hangar h;
    h.app.apply(intent::OpenPlan{h.aircraft});
    const base::Message before = plan_of(h).back.text;
    h.app.apply(intent::OpenWhy{3});
    h.app.apply(intent::CloseSheet{});
    CHECK(plan_of(h).back.text == before);
    h.app.apply(intent::OpenTask{FormKind::plan_task, h.aircraft, "findings"});
    h.type("high", "300");
    h.send();
    h.app.apply(intent::OpenPlan{h.aircraft});
    CHECK(!(plan_of(h).back.text == before));
}
