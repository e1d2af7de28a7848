// Forms about an item on the page: how "More settings" opens in place, and what leads to them.
#include "catch_amalgamated.hpp"
#include "tests/support/canvas_page.hpp"
#include "tests/support/sample_screens.hpp"

#include <algorithm>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::CanvasPage;
using canvas::support::pressed;

namespace {

/// Place of a node in the order in which it is spoken and comes under the Tab key.
std::ptrdiff_t place_of(CanvasPage& page, const std::string& id) {
    const auto& nodes = page.scene().nodes();
    const auto found =
        std::find_if(nodes.begin(), nodes.end(), [&](const Node& each) { return each.id == id; });
    CAPTURE(id);
    REQUIRE(found != nodes.end());
    return found - nodes.begin();
}

std::vector<std::string> headings(CanvasPage& page) {
    std::vector<std::string> out;
    for (const Node& node : page.scene().nodes()) {
        if (node.role == Role::heading && node.level == 2) out.push_back(node.name);
    }
    return out;
}

}  // namespace

TEST_CASE("More settings stands after what most need, and what it opens follows it",
          "[canvas][limits]") {
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::new_item());
    CHECK(page.find("more-settings")->name == "More settings");
    CHECK(page.find("cap_hours") == nullptr);
    CHECK(headings(page).empty());
    CHECK(place_of(page, "revision") < place_of(page, "more-settings"));
    CHECK(place_of(page, "more-settings") < place_of(page, "submit"));
    const float closed_top = page.find("more-settings")->box.top;
    (void)page.lay_out(samples::item_settings());
    CHECK(page.find("more-settings")->name == "Fewer settings");
    CHECK(headings(page) == std::vector<std::string>{"Other intervals",
                                                     "The first time, where it differs",
                                                     "How it counts",
                                                     "But not after",
                                                     "Where a document allows a tolerance"});
    CHECK(place_of(page, "revision") < place_of(page, "more-settings"));
    CHECK(place_of(page, "more-settings") < place_of(page, "chapter"));
    CHECK(place_of(page, "chapter") < place_of(page, "tolerance_source"));
    CHECK(place_of(page, "tolerance_source") < place_of(page, "submit"));
    // It opens below: what was pressed stays where it is.
    CHECK(page.find("more-settings")->box.top >= closed_top);
    (void)pressed<intent::ToggleMore>(samples::new_item(), "more-settings");
    (void)pressed<intent::ToggleMore>(samples::item_settings(), "more-settings");
}

TEST_CASE("what says something stays on the page with its heading when the rest is closed",
          "[canvas][limits]") {
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::item_settings_closed());
    CHECK(page.find("more-settings")->name == "More settings");
    CHECK(headings(page) == std::vector<std::string>{"The first time, where it differs",
                                                     "Where a document allows a tolerance"});
    CHECK(page.find("first_hours")->value == "25:30");
    CHECK(page.find("tolerance_permille")->value == "10.5");
    CHECK(page.find("tolerance_source")->wrong);
    CHECK(page.find("first_months") == nullptr);
}

TEST_CASE("the limit of an item is changed from its card, and a permit is offered past it",
          "[canvas][limits]") {
    const auto change = pressed<intent::OpenForm>(samples::aircraft(), "change-limit-1");
    CHECK(change.kind == FormKind::change_limit);
    CHECK(change.subject == samples::id_of(21));
    const auto permit = pressed<intent::OpenForm>(samples::aircraft(), "permit-0");
    CHECK(permit.kind == FormKind::permit);
    CHECK(permit.subject == samples::id_of(20));
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::aircraft());
    CHECK(page.find("permit-1") == nullptr);  // act
    CHECK(page.find("permit-2") == nullptr);  // nothing due
    CHECK(page.find("rename-0") == nullptr);
    (void)page.lay_out(samples::troubled_aircraft());
    CHECK(page.find("permit-1")->name == "Permit past it: Inspection, 100 hours");  // over
    CHECK(pressed<intent::OpenForm>(samples::checks(), "change-limit-0").kind ==
          FormKind::change_limit);
    CHECK(pressed<intent::OpenForm>(samples::checks(), "rename-0").kind == FormKind::rename_item);
}
