// Text size, two panes and shortcut keys, with the whole App behind them.
#include "tests/support/phone.hpp"

using namespace twoclocks::canvas;
using twoclocks::canvas::support::Phone;

namespace {

/// The boxes the mirror was told, by node id, CSS pixels.
std::vector<double> mirrored_box(const Phone& phone, const std::string& id) {
    const std::string& json = phone.host.last_mirror;
    const std::size_t at = json.find("\"id\":\"" + id + "\"");
    REQUIRE(at != std::string::npos);
    const std::size_t from = json.find("\"b\":[", at) + 5;
    std::vector<double> box;
    std::istringstream numbers{json.substr(from, json.find(']', from) - from)};
    for (std::string number; std::getline(numbers, number, ',');)
        box.push_back(std::stod(number));
    REQUIRE(box.size() == 4);
    return box;
}

/// Two fingers on the page that go from 100 px apart to `apart`.
void pinch(Phone& phone, float apart) {
    phone.app.pointer(PointerPhase::down, 1, 150, 400, phone.now_ms += 10, PointerKind::touch);
    phone.app.pointer(PointerPhase::down, 2, 250, 400, phone.now_ms += 10, PointerKind::touch);
    for (float way = 0.1F; way < 1.05F; way += 0.1F) {
        const float half = (50 + (apart / 2 - 50) * way);
        const double now = phone.now_ms += 10;
        phone.app.pointer(PointerPhase::move, 2, 200 + half, 400, now, PointerKind::touch);
        phone.app.pointer(PointerPhase::move, 1, 200 - half, 400, now, PointerKind::touch);
        phone.draw();
    }
    phone.app.pointer(PointerPhase::up, 2, 200, 400, phone.now_ms += 10, PointerKind::touch);
    phone.app.pointer(PointerPhase::up, 1, 200, 400, phone.now_ms += 10, PointerKind::touch);
    phone.draw();
}

float tab_height(const Phone& phone) {
    return static_cast<float>(mirrored_box(phone, "tab-files")[3]);
}

}  // namespace

TEST_CASE("a text size scales everything, and taps and the mirror follow", "[canvas][size]") {
    Phone phone;
    const float usual = tab_height(phone);
    phone.app.set_setting("text_size", "150");
    phone.draw();
    CHECK(tab_height(phone) == Catch::Approx(usual * 1.5F).margin(1));
    // The page is as wide as before in the pixels of the mirror, narrower in those of its layout.
    const std::vector<double> files = mirrored_box(phone, "tab-files");
    CHECK(files[0] + files[2] <= 390);
    CHECK(files[0] + files[2] > 370);
    CHECK(phone.find("tab-files")->box.right <= 390 / 1.5F + 0.5F);
    // A finger on the middle of what the mirror says lands on it.
    const auto x = static_cast<float>(files[0] + files[2] / 2);
    const auto y = static_cast<float>(files[1] + files[3] / 2);
    phone.touch(PointerPhase::down, x, y);
    phone.touch(PointerPhase::up, x, y);
    phone.draw();
    CHECK(phone.find("export") != nullptr);
}

TEST_CASE("a page too narrow for a size takes the largest it can show", "[canvas][size]") {
    struct Row {
        float width_px;
        const char* setting;
        float scale;
    };

    for (const Row row : {Row{390, "100", 1},
                          Row{390, "115", 1.15F},
                          Row{390, "200", 390.0F / 240},
                          Row{320, "200", 320.0F / 240},
                          Row{480, "200", 2},
                          Row{1280, "200", 2},
                          Row{390, "much", 1},
                          Row{390, "-50", 1},
                          Row{390, "99999", 1.625F}}) {
        CAPTURE(row.width_px, row.setting);
        Phone phone{row.width_px};
        const float usual = phone.find("tab-files")->box.height();
        phone.app.set_setting("text_size", row.setting);
        phone.draw();
        CHECK(phone.find("tab-files")->box.height() == Catch::Approx(usual));
        CHECK(tab_height(phone) == Catch::Approx(usual * row.scale).margin(1));
    }
}

TEST_CASE("a field being edited is laid over where the larger page shows it", "[canvas][size]") {
    Phone phone;
    phone.tap("add-aircraft");
    phone.app.set_setting("text_size", "130");
    phone.draw();
    phone.app.activate("registration");
    REQUIRE_FALSE(phone.host.edits.empty());
    const std::vector<double> box = mirrored_box(phone, "registration");
    const FieldRequest& field = phone.host.edits.back();
    CHECK(field.left_px == Catch::Approx(box[0]).margin(1));
    CHECK(field.top_px == Catch::Approx(box[1]).margin(1));
    CHECK(field.width_px == Catch::Approx(box[2]).margin(1));
    CHECK(field.height_px == Catch::Approx(box[3]).margin(1));
}

TEST_CASE("two fingers choose a size, a step at a time", "[canvas][size]") {
    Phone phone;
    const float usual = tab_height(phone);
    pinch(phone, 104);  // less than half a step
    CHECK(tab_height(phone) == Catch::Approx(usual).margin(1));
    pinch(phone, 132);
    CHECK(tab_height(phone) == Catch::Approx(usual * 1.3F).margin(1));
    pinch(phone, 40);
    CHECK(tab_height(phone) == Catch::Approx(usual).margin(1));
}

TEST_CASE("sizes step up and down and stop at the ends", "[canvas][size]") {
    CHECK(text_size_beside(100, -1) == 100);
    CHECK(text_size_beside(100, 1) == 115);
    CHECK(text_size_beside(175, 1) == 200);
    CHECK(text_size_beside(200, 1) == 200);
    CHECK(text_size_near(107.2) == 100);  // the geometric middle of 100 and 115 is 107.24
    CHECK(text_size_near(107.3) == 115);
    CHECK(text_size_near(0) == 100);
    CHECK(text_size_near(1e9) == 200);
}

TEST_CASE("two panes from 900 px of layout, one below", "[canvas][panes]") {
    struct Row {
        float width_px;
        const char* text_size;
        bool rail;
    };

    for (const Row row : {Row{899, "100", false},
                          Row{900, "100", true},
                          Row{1169, "130", false},
                          Row{1170, "130", true}}) {
        CAPTURE(row.width_px, row.text_size);
        Phone phone{row.width_px, 800};
        phone.app.set_setting("text_size", row.text_size);
        phone.draw();
        // The tabs go down the left, one under the other.
        const bool rail =
            phone.find("tab-log")->box.top > phone.find("tab-fleet")->box.top + target::least;
        CHECK(rail == row.rail);
    }
}

TEST_CASE("typed letters open pages, and can be switched off", "[canvas][keys]") {
    Phone phone;
    phone.app.typed('4');
    phone.draw();
    CHECK(phone.find("export") != nullptr);
    phone.app.typed('?');
    phone.draw();
    REQUIRE(phone.find("single-keys") != nullptr);
    phone.app.typed('1');  // a sheet lies on top: pages wait
    phone.draw();
    CHECK(phone.find("single-keys") != nullptr);
    phone.tap("single-keys");
    phone.tap("sheet-close");
    phone.app.back();
    phone.draw();
    phone.app.typed('1');
    phone.draw();
    CHECK(phone.find("export") != nullptr);
    phone.app.activate("keys");
    phone.tap("single-keys");
    phone.app.back();
    phone.draw();
    phone.app.typed('1');
    phone.draw();
    CHECK(phone.find("add-aircraft") != nullptr);
}
