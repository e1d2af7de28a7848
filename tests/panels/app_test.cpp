// The App with its real state behind it and a host that only takes notes.
#include "tests/support/phone.hpp"

using namespace twoclocks::canvas;
using twoclocks::canvas::support::NoteHost;
using twoclocks::canvas::support::Phone;

TEST_CASE("the first start shows the caution and nothing else can be tapped", "[canvas][app]") {
    NoteHost host;
    App app{host};
    CHECK_FALSE(app.frame(16));
    CHECK(app.scene().nodes().empty());
    app.loaded();
    (void)app.frame(32);
    std::vector<std::string> ids;
    for (const Node& node : app.scene().nodes()) {
        if (!node.id.empty()) ids.push_back(node.id);
    }
    CHECK(ids == std::vector<std::string>{"accept-caution"});
}

TEST_CASE("a tapped field reaches the host before the touch event returns", "[canvas][app]") {
    Phone phone;
    phone.tap("add-aircraft");
    const Node* field = phone.find("registration");
    REQUIRE(field != nullptr);
    const Rect box = field->box;
    phone.touch(PointerPhase::down, box.left + 20, box.top + 20);
    CHECK(phone.host.edits.empty());
    phone.touch(PointerPhase::up, box.left + 20, box.top + 20);
    REQUIRE(phone.host.edits.size() == 1);  // no frame was drawn in between
    CHECK(phone.host.edits[0].id == "registration");
    CHECK(phone.host.edits[0].left_px == box.left);
    CHECK(phone.host.edits[0].width_px == box.width());
    CHECK_FALSE(phone.host.edits[0].label.empty());
}

TEST_CASE("what is typed stands in the field, and Next opens the next", "[canvas][app]") {
    Phone phone;
    phone.tap("add-aircraft");
    phone.tap("registration");
    phone.app.field_text("registration", "ISLE-\xC5\x81");
    phone.draw();
    CHECK(phone.find("registration")->value == "ISLE-\xC5\x81");
    const std::string first = phone.host.edits.back().id;
    phone.app.field_closed("registration", true);
    CHECK(phone.host.edits.back().id != first);
    CHECK(phone.host.closed == 0);
}

TEST_CASE("an edited field follows a scroll, and is closed when it leaves the page",
          "[canvas][app]") {
    Phone phone;
    phone.tap("add-aircraft");
    phone.tap("registration");
    const float top = phone.host.edits.back().top_px;
    phone.app.wheel(200, 400, 0, 30);
    phone.draw();
    CHECK(phone.host.edits.back().id == "registration");
    CHECK(phone.host.edits.back().top_px == top - 30);
    CHECK(phone.host.closed == 0);
    phone.app.wheel(200, 400, 0, 600);
    phone.draw();
    CHECK(phone.host.closed == 1);
}

TEST_CASE("a form sent with something wrong shows the first problem", "[canvas][app]") {
    Phone phone;
    phone.tap("add-aircraft");
    phone.app.wheel(200, 400, 0, 5000);
    phone.draw();
    CHECK(phone.find("registration")->visible.height() <= 0);
    phone.tap("submit");
    const auto& nodes = phone.app.scene().nodes();
    const auto problem = std::find_if(
        nodes.begin(), nodes.end(), [](const Node& node) { return node.role == Role::alert; });
    REQUIRE(problem != nodes.end());
    CHECK(problem->visible.height() > 0);
    CHECK(phone.host.tokens.empty());
}

TEST_CASE("the page follows the finger, glides, and rests", "[canvas][app]") {
    Phone phone;
    phone.tap("add-aircraft");
    const float top = phone.find("registration")->box.top;
    phone.touch(PointerPhase::down, 200, 600);
    phone.touch(PointerPhase::move, 200, 585);
    phone.touch(PointerPhase::move, 200, 560);
    (void)phone.app.frame(phone.now_ms);
    CHECK(phone.find("registration")->box.top == Catch::Approx(top - 40));
    phone.touch(PointerPhase::up, 200, 560);
    CHECK(phone.host.edits.empty());
    CHECK(phone.app.frame(phone.now_ms += 16));
    phone.draw();
    CHECK(phone.find("registration")->box.top < top - 100);
    CHECK_FALSE(phone.app.frame(phone.now_ms += 16));
}

TEST_CASE("an idle page wants no frames and sends no mirror again", "[canvas][app]") {
    Phone phone;
    const int mirrors = phone.host.mirrors;
    const int woken = phone.host.woken;
    for (int i = 0; i < 10; ++i)
        CHECK_FALSE(phone.app.frame(phone.now_ms += 16));
    CHECK(phone.host.mirrors == mirrors);
    CHECK(phone.host.woken == woken);
    phone.app.pointer(PointerPhase::move, 0, 50, 60, phone.now_ms += 16, PointerKind::mouse);
    CHECK(phone.host.woken == woken);  // a mouse that only passes over changes nothing
}

TEST_CASE("keys: Tab moves the focus, Enter presses, Escape goes back", "[canvas][app]") {
    Phone phone;
    phone.app.key(Key::tab);
    CHECK(phone.app.scene().focus() == "add-aircraft");
    phone.app.key(Key::enter);
    phone.draw();
    REQUIRE(phone.find("registration") != nullptr);
    phone.app.key(Key::escape);
    CHECK(phone.host.backs == 1);
    phone.app.back();
    phone.draw();
    CHECK(phone.find("registration") == nullptr);
    CHECK(phone.find("add-aircraft") != nullptr);
}

TEST_CASE("the mirror's focus is scrolled into sight and shown", "[canvas][app]") {
    Phone phone;
    phone.tap("add-aircraft");
    REQUIRE(phone.find("submit")->visible.height() <= 0);
    phone.app.focus("submit");
    CHECK(phone.find("submit")->visible.height() > 0);
    CHECK(phone.app.scene().focus() == "submit");
    phone.app.focus("");
    CHECK(phone.app.scene().focus().empty());
}

TEST_CASE("the mirror can press what is out of sight", "[canvas][app]") {
    Phone phone;
    phone.tap("add-aircraft");
    REQUIRE(phone.find("submit")->visible.height() <= 0);
    phone.app.activate("submit");
    const auto& nodes = phone.app.scene().nodes();
    CHECK(std::any_of(
        nodes.begin(), nodes.end(), [](const Node& node) { return node.role == Role::alert; }));
    phone.app.activate("no such node");
    CHECK(phone.find("submit") != nullptr);
}

TEST_CASE("fonts are baked again when the ratio changes, and only then", "[canvas][app]") {
    Phone phone;
    CHECK(phone.app.take_font_change());
    CHECK_FALSE(phone.app.take_font_change());
    Viewport viewport;
    viewport.device_pixel_ratio = 2;
    phone.app.resize(viewport);
    phone.draw();
    CHECK(phone.app.take_font_change());
    phone.app.resize(viewport);
    phone.draw();
    CHECK_FALSE(phone.app.take_font_change());
}

TEST_CASE("bytes that are no font do not stop the page", "[canvas][app]") {
    NoteHost host;
    App app{host};
    CHECK_FALSE(app.set_font(400, "not a font"));
    CHECK_FALSE(app.set_font(600, std::string(4096, '\0')));
    app.loaded();
    (void)app.frame(16);
    CHECK_FALSE(app.scene().nodes().empty());
}
