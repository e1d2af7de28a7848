// An item with a limit on a part, from its page to the aircraft that the part is on.
#include "tests/app/parts_hangar.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::PartsHangar;
using Facts = std::vector<facts::Fact>;

template <class T>
const facts::Fact& only(const Facts& all) {
    const auto is = [](const facts::Fact& fact) {
        return std::holds_alternative<T>(fact.body.fields);
    };
    REQUIRE(std::count_if(all.begin(), all.end(), is) == 1);
    return *std::find_if(all.begin(), all.end(), is);
}

/// What is due on the page of the first aircraft, by its name there.
const views::DueRow& due(PartsHangar& h, const std::string& name) {
    h.app.apply(intent::OpenAircraft{h.first.id});
    const auto* view = std::get_if<views::AircraftView>(&h.app.screen().page);
    REQUIRE(view != nullptr);
    const auto found = std::find_if(view->due.begin(),
                                    view->due.end(),
                                    [&](const views::DueRow& row) { return row.name == name; });
    CAPTURE(name);
    REQUIRE(found != view->due.end());
    return *found;
}

}  // namespace

TEST_CASE("an item hung on a part counts in the hours of the part", "[app][parts][limits]") {
    PartsHangar h;
    h.app.apply(intent::OpenForm{FormKind::new_item, h.gearbox.id});
    CHECK(base::say(h.form().about, {}) == "Gearbox 7");
    CHECK(h.form_field("anchor_total").text == "300.0");
    CHECK(h.form_field("anchor_total").label.word == base::Word::field_last_since_new);
    CHECK(h.form_field("role").chosen == 1);  // an inspection
    h.put("name", "Mesh check");
    h.put("hours", "100");
    h.app.apply(intent::SubmitForm{});
    const Facts saved = h.saved();
    const facts::Fact& item = only<facts::ItemAdded>(saved);
    const facts::Fact& limit = only<facts::LimitSet>(saved);
    CHECK(item.body.about == std::vector<base::Id>{h.gearbox.id, item.id});
    CHECK(limit.body.about == std::vector<base::Id>{h.gearbox.id, item.id});
    CHECK(std::get<facts::LimitSet>(limit.body.fields).anchor_total == base::hours(300));
    const PartPage& page = h.part_page(h.gearbox.id);
    REQUIRE(page.view.due.size() == 1);
    CHECK(base::say(page.view.due.front().hours_left->text, {}) == "100.0 h");
}

TEST_CASE("work on what hangs on a part is recorded from the aircraft that the part is on",
          "[app][parts][limits]") {
    PartsHangar h;
    h.enter(FormKind::new_item, h.gearbox.id, {{"name", "Mesh check"}, {"hours", "100"}});
    const Facts hung = h.saved();
    h.enter(FormKind::part_fit, h.gearbox.id, {{"date", "2026-11-01"}, {"host", "TEST-1"}});
    CHECK(h.saved().size() == 1);
    // 1,000.0 h when it was fitted, 1,050.0 h read since.
    const views::DueRow& before = due(h, "Gearbox 7: Mesh check");
    CHECK(base::say(before.hours_left->text, {}) == "50.0 h");
    h.app.apply(intent::OpenForm{FormKind::work_done, before.item});
    CHECK(base::say(h.form().title, {}) == "Work on a part");
    CHECK(h.form_field("what").text == "Mesh check");
    CHECK(h.form_field("kind").chosen == 2);
    h.put("date", "2026-11-20");
    h.put("reference", "W-1");
    h.app.apply(intent::SubmitForm{});
    const Facts done = h.saved();
    const facts::Fact& work = only<facts::WorkDone>(done);
    CHECK(work.body.about == std::vector<base::Id>{h.first.id, h.gearbox.id});
    const auto& renews = std::get<facts::WorkDone>(work.body.fields).renews;
    REQUIRE(renews.size() == 1);
    CHECK(renews.front().item == only<facts::ItemAdded>(hung).id);
    CHECK(std::get<facts::WorkDone>(work.body.fields).total == base::hours(1050));
    CHECK(base::say(due(h, "Gearbox 7: Mesh check").hours_left->text, {}) == "100.0 h");
}

TEST_CASE("the limit of what hangs on a part is changed from the aircraft",
          "[app][parts][limits]") {
    PartsHangar h;
    h.enter(FormKind::new_item, h.gearbox.id, {{"name", "Mesh check"}, {"hours", "100"}});
    const Facts hung = h.saved();
    h.enter(FormKind::part_fit, h.gearbox.id, {{"date", "2026-11-01"}, {"host", "TEST-1"}});
    CHECK(h.saved().size() == 1);
    h.enter(FormKind::change_limit, due(h, "Gearbox 7: Mesh check").item, {{"hours", "80"}});
    const Facts changed = h.saved();
    const facts::Fact& limit = only<facts::LimitSet>(changed);
    CHECK(limit.body.about == std::vector<base::Id>{h.gearbox.id, only<facts::ItemAdded>(hung).id});
    CHECK(base::say(due(h, "Gearbox 7: Mesh check").hours_left->text, {}) == "30.0 h");
}
