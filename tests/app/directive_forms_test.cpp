// "Add a directive", "Does it apply here?", "Another approved way": what they ask, what they
// refuse, what is saved.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/app/parts_hangar.hpp"
#include "tests/app/shown.hpp"
#include "tests/support/directed.hpp"
#include "wasm/app/form.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::choose;
using canvas::support::field;
using twoclocks::support::day;
using twoclocks::support::Directed;
using twoclocks::support::directed;
using twoclocks::support::effective;

/// Forms on the invented journal, without a page around them.
struct DirectiveDesk : Directed {
    DirectiveDesk() { signer.refresh({19'905, 1'719'800'000'000, 0x1234U, 0x5678U}); }

    [[nodiscard]] FormContext context() {
        state = timeline::replay(journal, first, today);
        parts = timeline::replay_parts(journal, today);
        return {journal, &state, today, {}, nullptr, &parts};
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
    std::vector<timeline::PartState> parts;
};

void fill_in(Form& form) {
    field(form, "number").text = "D 9";
    field(form, "name").text = "Mast check";
    field(form, "effective_on").text = "2024-03-01";
    field(form, "hours").text = "100";
    choose(form, "applies", "yes");
    field(form, "applies_why").text = "Ann, by the parts list";
}

}  // namespace

TEST_CASE("a directive becomes an item, its limit and what it rests on", "[app][directives]") {
    DirectiveDesk desk;
    Form form = desk.open(FormKind::directive, desk.first);
    fill_in(form);
    field(form, "revision").text = "2";
    field(form, "issuer").text = "Authority";
    field(form, "serials").text = "1001-1234";
    REQUIRE(desk.save(form));
    const views::Assessed now = desk.assessed(desk.first);
    REQUIRE(now.items.size() == 1);
    CHECK(Directed::told_of(now.items[0]) == "open 400");
    const timeline::ItemState& item = now.state.items.at(0);
    CHECK(item.name == "Mast check");
    CHECK(item.limit->limit_class == facts::LimitClass::directive);
    CHECK(item.limit->source == "D 9");
    CHECK(item.limit->revision == "2");
    CHECK(item.directive->directive.issuer == "Authority");
    CHECK(item.directive->directive.revision == "2");
    CHECK(item.directive->directive.serials == "1001-1234");
    CHECK(item.directive->directive.effective_on == day("2024-03-01"));
    CHECK(item.directive->directive.applies_why == "Ann, by the parts list");
}

TEST_CASE("what a directive needs is asked for beside its field", "[app][directives]") {
    struct Row {
        const char* field;
        const char* text;
        const char* wrong;
        base::Trouble code;
    };

    for (const Row& row :
         {Row{"number", "", "number", base::Trouble::form_needed},
          Row{"name", "", "name", base::Trouble::form_needed},
          Row{"applies_why", "", "applies_why", base::Trouble::form_needed},
          Row{"hours", "", "hours", base::Trouble::form_directive_empty},
          Row{"hours", "0", "hours", base::Trouble::limit_zero},
          Row{"effective_on", "2024-02-30", "effective_on", base::Trouble::date_impossible}}) {
        CAPTURE(row.field, row.text);
        DirectiveDesk desk;
        Form form = desk.open(FormKind::directive, desk.first);
        fill_in(form);
        field(form, row.field).text = row.text;
        CHECK_FALSE(desk.save(form));
        REQUIRE(field(form, row.wrong).problem.has_value());
        CHECK(field(form, row.wrong).problem->code == row.code);
    }
}

TEST_CASE("before further flight needs no interval, and nobody need have decided",
          "[app][directives]") {
    DirectiveDesk desk;
    Form form = desk.open(FormKind::directive, desk.first);
    fill_in(form);
    field(form, "hours").text = "";
    choose(form, "applies", "not known yet");
    field(form, "applies_why").text = "";
    choose(form, "before_flight", "yes");
    REQUIRE(desk.save(form));
    const views::Assessed now = desk.assessed(desk.first);
    CHECK(Directed::told_of(now.items.at(0)) == "unknown");
    CHECK_FALSE(now.state.items.at(0).limit.has_value());
}

TEST_CASE("a directive names what it supersedes and what ends it", "[app][directives]") {
    DirectiveDesk desk;
    const auto old = desk.rests(desk.first, effective("D 1", "2024-01-01"), directed(100));
    const auto end = desk.asks(desk.first, "New mast");
    desk.work(old, {desk.first}, "2024-02-15", 10'700);
    Form form = desk.open(FormKind::directive, desk.first);
    fill_in(form);
    choose(form, "replaces", "D 1");
    choose(form, "credit", "yes");
    choose(form, "ended_by", "New mast");
    REQUIRE(desk.save(form));
    const views::Assessed now = desk.assessed(desk.first);
    CHECK(desk.stands(old) == "superseded");
    CHECK(Directed::told_of(now.items.back()) == "open 100");
    CHECK(now.state.items.back().directive->directive.ended_by == std::vector{end.id});
    // On an aircraft without items there is nothing to choose from.
    DirectiveDesk bare;
    Form none = bare.open(FormKind::directive, bare.first);
    CHECK(find_field(none, "replaces") == nullptr);
    CHECK(find_field(none, "ended_by") == nullptr);
}

TEST_CASE("a directive of a part hangs on the part", "[app][directives]") {
    DirectiveDesk desk;
    desk.fit(desk.gearbox, desk.first, "2024-02-01", 10'500);
    Form form = desk.open(FormKind::directive, desk.gearbox.id);
    fill_in(form);
    REQUIRE(desk.save(form));
    const timeline::PartState part = desk.Stores::state(desk.gearbox);
    REQUIRE(part.items.size() == 1);
    CHECK(part.items.front().directive->told);
    Form decide = desk.open(FormKind::decide, part.items.front().id);
    choose(decide, "applies", "no");
    field(decide, "applies_why").text = "Ann, by the serial of the mast";
    REQUIRE(desk.save(decide));
    CHECK_FALSE(desk.Stores::state(desk.gearbox).items.front().directive->counts);
}

TEST_CASE("a decision takes the place of the one before and says who made it",
          "[app][directives]") {
    DirectiveDesk desk;
    const auto item = desk.asks(desk.first, "Mast check", directed(100));
    facts::Directive told = effective("D 9", "2024-03-01");
    told.applies = facts::Applicability::unknown;
    told.serials = "1001-1234";
    const auto record = desk.told(desk.first, item, told);
    CHECK(desk.stands(item) == "unknown ?");
    Form form = desk.open(FormKind::decide, item.id);
    CHECK(base::say(form.about, {}) == "Directive D 9, revision not given");
    CHECK(field(form, "applies").chosen == 0);
    CHECK(base::say(field(form, "applies").hint, {}) ==
          "Its serials, 1001-1234, say nothing of this one.");
    choose(form, "applies", "yes");
    CHECK_FALSE(desk.save(form));
    CHECK(field(form, "applies_why").problem.has_value());
    field(form, "applies_why").text = "Ann, by the parts list";
    REQUIRE(desk.save(form));
    CHECK(desk.stands(item) == "open 400");
    const auto now = *desk.assessed(desk.first).state.items.at(0).directive;
    CHECK(now.fact == record.id);
    CHECK(now.directive.applies_why == "Ann, by the parts list");
    CHECK(now.directive.serials == "1001-1234");
}

TEST_CASE("one decision settles what people disagreed about", "[app][directives]") {
    DirectiveDesk desk;
    const auto item = desk.asks(desk.first, "Mast check", directed(100));
    const facts::Directive told = effective("D 9", "2024-03-01");
    facts::Directive other = told;
    other.applies = facts::Applicability::not_applicable;
    desk.disagree(desk.told(desk.first, item, told), other, effective("D 9", "2024-03-02"));
    CHECK(desk.context().aircraft->questions.size() == 1);
    Form form = desk.open(FormKind::decide, item.id);
    choose(form, "applies", "no");
    field(form, "applies_why").text = "Ann";
    REQUIRE(desk.save(form));
    CHECK(desk.context().aircraft->questions.empty());
    CHECK(desk.stands(item) == "not here");
}

TEST_CASE("another approved way is kept with its interval, grace and last day",
          "[app][directives]") {
    DirectiveDesk desk;
    const auto item = desk.rests(desk.first, effective("D 9", "2024-03-01"), directed(100));
    desk.work(item, {desk.first}, "2024-03-02", 11'000);
    Form form = desk.open(FormKind::means, item.id);
    field(form, "issuer").text = "Authority";
    field(form, "reference").text = "M 3";
    field(form, "method").text = "Eddy current";
    field(form, "valid_until").text = "2025-03-01";
    field(form, "hours").text = "150";
    field(form, "grace_hours").text = "2.5";
    field(form, "grace_days").text = "10";
    REQUIRE(desk.save(form));
    CHECK(desk.stands(item) == "open 900");
    const auto means = desk.assessed(desk.first).state.items.at(0).directive->means.at(0).means;
    CHECK(means.method == "Eddy current");
    CHECK(means.grace_hours == base::tenths(25));
    CHECK(means.grace_days == 10);
    CHECK(means.until == day("2025-03-01"));
}

TEST_CASE("what another approved way cannot be is refused", "[app][directives]") {
    struct Row {
        const char* field;
        const char* text;
        const char* wrong;
    };

    for (const Row& row : {Row{"issuer", "", "issuer"},
                           Row{"reference", "", "reference"},
                           Row{"valid_until", "2024-06-30", "valid_until"},
                           Row{"grace_days", "1201", "grace_days"},
                           Row{"hours", "0", "hours"}}) {
        CAPTURE(row.field, row.text);
        DirectiveDesk desk;
        const auto item = desk.rests(desk.first, effective("D 9", "2024-03-01"), directed(100));
        Form form = desk.open(FormKind::means, item.id);
        field(form, "issuer").text = "Authority";
        field(form, "reference").text = "M 3";
        field(form, row.field).text = row.text;
        CHECK_FALSE(desk.save(form));
        CHECK(field(form, row.wrong).problem.has_value());
    }
}

TEST_CASE("the app opens, keeps and saves the forms of a directive on a part",
          "[app][directives][parts]") {
    using canvas::support::PartsHangar;
    PartsHangar h;
    const std::string typed = "Mast check";
    h.enter(FormKind::directive,
            h.gearbox.id,
            {{"number", "D 9"},
             {"name", typed},
             {"hours", "100"},
             {"applies", "yes"},
             {"applies_why", "Ann"}});
    const auto saved = h.saved();
    REQUIRE(saved.size() == 3);
    const base::Id item = saved.front().id;
    CHECK(saved.front().body.about == std::vector{h.gearbox.id, item});
    h.enter(FormKind::part_work,
            h.gearbox.id,
            {{"kind", typed}, {"what", "Dye penetrant"}, {"reference", "W 12"}});
    const auto work = h.saved();
    REQUIRE(work.size() == 1);
    const auto* done = std::get_if<facts::WorkDone>(&work.front().body.fields);
    REQUIRE(done != nullptr);
    REQUIRE(done->renews.size() == 1);
    CHECK(done->renews.front().item == item);
    h.enter(FormKind::decide, item, {{"applies", "no"}, {"applies_why", "Ben"}});
    CHECK(h.saved().size() == 1);
    CHECK_FALSE(h.state(h.gearbox.id).items.front().directive->counts);
}
