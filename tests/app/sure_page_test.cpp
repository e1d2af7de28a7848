// "How sure": what is tried is never recorded, and is kept as the plan only when that is wanted.
#include "catch_amalgamated.hpp"
#include "tests/app/limit_bench.hpp"
#include "tests/support/phone.hpp"

#include <string>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::Hangar;
using canvas::support::Phone;
using canvas::support::said;

namespace {

const SurePage& sure_page(Hangar& h) {
    const auto* page = std::get_if<SurePage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

/// The handle at the end of the line: it is dragged, not pressed.
const Node* line_end(Phone& phone) {
    const auto& nodes = phone.app.scene().nodes();
    const std::string name = base::say(base::Word::sure_handle, {});
    const auto found = std::find_if(
        nodes.begin(), nodes.end(), [&](const Node& node) { return node.name == name; });
    return found == nodes.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("a rate is typed, stepped and set aside, and nothing is recorded", "[app][sure]") {
    Hangar h;
    const std::size_t recorded = h.records().size();
    h.app.apply(intent::OpenSure{h.aircraft});
    CHECK(sure_page(h).view.tried.word == base::Word::blank);
    h.app.field_text("try-month", "12.5");
    CHECK(said(sure_page(h).view.tried) == "Tried, not recorded: 12.5 h a month.");
    CHECK(sure_page(h).view.month == base::tenths(125));
    CHECK(sure_page(h).less == base::hours(12));
    CHECK(sure_page(h).more == base::hours(13));
    h.app.apply(intent::TryMonth{base::hours(20)});
    CHECK(sure_page(h).less == base::hours(19));
    CHECK(sure_page(h).more == base::hours(25));
    h.app.field_text("try-month", "745");
    CHECK(sure_page(h).view.tried.word == base::Word::blank);
    REQUIRE(sure_page(h).month.problem);
    CHECK(sure_page(h).month.problem->code == base::Trouble::form_month_absurd);
    h.app.field_text("try-month", "0");
    CHECK(sure_page(h).less == base::hours(0));
    h.app.apply(intent::StopTrying{});
    CHECK(sure_page(h).view.tried.word == base::Word::blank);
    CHECK(h.records().size() == recorded);
}

TEST_CASE("what was tried is kept as the plan through its form", "[app][sure]") {
    Hangar h;
    h.app.apply(intent::OpenSure{h.aircraft});
    h.app.apply(intent::KeepTried{});  // nothing is tried
    CHECK(std::holds_alternative<SurePage>(h.app.screen().page));
    h.app.apply(intent::TryMonth{base::tenths(155)});
    h.app.apply(intent::KeepTried{});
    h.type("why", "A contract");
    h.more();
    h.type("july", "40");
    h.send();
    const auto [body, plan] = h.last<facts::UsagePlanned>();
    CHECK(plan.month == base::tenths(155));
    CHECK(plan.why == "A contract");
    CHECK(plan.by_month[6] == base::hours(40));
    CHECK_FALSE(plan.by_month[5]);
}

TEST_CASE("a month of more hours than it has is refused", "[app][sure]") {
    Hangar h;
    h.open(FormKind::usage_plan, h.aircraft);
    h.type("month", "10");
    h.more();
    h.type("february", "800");
    h.send();
    CHECK(h.problem("february") == base::Trouble::form_month_absurd);
}

TEST_CASE("the end of the line is dragged, and the page does not scroll under it",
          "[canvas][app][sure]") {
    Phone phone;
    phone.tap("tab-files");
    phone.app.file_chosen("fleet.jsonl",
                          canvas::support::bytes_of(HOUSE_ROOT "/demo/bound_by_hours.jsonl"));
    phone.draw();
    phone.tap("accept-import");
    phone.app.committed(phone.host.tokens.back(), true, {});
    phone.draw();
    phone.tap("tab-fleet");
    const auto& nodes = phone.app.scene().nodes();
    const auto card = std::find_if(nodes.begin(), nodes.end(), [](const Node& node) {
        return node.id.rfind("aircraft-", 0) == 0;
    });
    REQUIRE(card != nodes.end());
    phone.tap(std::string{card->id});
    phone.tap("sure");
    const Node* end = line_end(phone);
    REQUIRE(end != nullptr);
    const Rect before = end->box;
    CHECK(phone.find("keep-tried") == nullptr);
    const float x = before.left + before.width() / 2;
    const float y = before.top + before.height() / 2;
    phone.touch(PointerPhase::down, x, y);
    phone.touch(PointerPhase::move, x + 5, y + 60);
    phone.draw();
    phone.touch(PointerPhase::up, x + 5, y + 60);
    phone.draw();
    REQUIRE(phone.find("keep-tried") != nullptr);
    const Node* after = line_end(phone);
    REQUIRE(after != nullptr);
    CHECK(after->box.left > before.left);  // flown less: later
    // Let go, it stays: a finger that moves elsewhere scrolls.
    const Rect kept = after->box;
    phone.touch(PointerPhase::down, 100, 700);
    phone.touch(PointerPhase::move, 100, 660);
    phone.touch(PointerPhase::up, 100, 660);
    phone.draw();
    CHECK(line_end(phone)->box.left == kept.left);
    CHECK(line_end(phone)->box.top < kept.top);
    phone.app.activate("stop-trying");
    phone.draw();
    CHECK(phone.find("keep-tried") == nullptr);
}
