// Every page at every width: what can be tapped is large enough and apart, words stand inside the
// page and on nothing else.
#include "catch_amalgamated.hpp"
#include "tests/support/canvas_page.hpp"
#include "tests/support/sample_screens.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

using namespace twoclocks::canvas;
using twoclocks::canvas::support::CanvasPage;

namespace {

struct Size {
    float width;
    float height;
};

// The first two are phones of 320 and 390 px with the largest text they can show.
constexpr Size sizes[] = {{240, 427},
                          {240, 519},
                          {320, 568},
                          {390, 844},
                          {844, 390},
                          {900, 700},
                          {1280, 800},
                          {1600, 900}};
constexpr float pixel_rounding = 0.01F;  // a pixel is a pixel to within float rounding

bool overlap(const Rect& one, const Rect& other, float slack) {
    return one.left + slack < other.right && other.left + slack < one.right &&
           one.top + slack < other.bottom && other.top + slack < one.bottom;
}

std::vector<Node> tappable(const Scene& scene) {
    std::vector<Node> found;
    for (const Node& node : scene.nodes()) {
        if (!node.id.empty()) found.push_back(node);
    }
    return found;
}

Rect seen(const DrawnText& text) {
    return cut(text.box, text.clip);
}

/// Lays every sample out at every size and hands it on.
template <class Check>
void on_every_page(Check check) {
    for (const Size size : sizes) {
        CanvasPage page{size.width, size.height};
        std::vector<samples::Sample> every = samples::every_screen();
        if (size.width >= page::wide_from) {
            for (samples::Sample& pair : samples::every_pair())
                every.push_back(std::move(pair));
        }
        for (const samples::Sample& sample : every) {
            for (const Look look : {Look::paper, Look::sun}) {
                page.memory().offsets.clear();
                (void)page.lay_out(sample.screen, look);
                CAPTURE(sample.name, size.width, size.height, static_cast<int>(look));
                check(page, size);
            }
        }
    }
}

}  // namespace

TEST_CASE("everything that can be tapped is at least 48 px high and wide", "[canvas][layout]") {
    on_every_page([](CanvasPage& page, Size) {
        for (const Node& node : tappable(page.scene())) {
            CAPTURE(node.id);
            CHECK(node.box.width() >= target::least - pixel_rounding);
            CHECK(node.box.height() >= target::least - pixel_rounding);
        }
    });
}

TEST_CASE("nothing that can be tapped lies on another", "[canvas][layout]") {
    on_every_page([](CanvasPage& page, Size) {
        const std::vector<Node> nodes = tappable(page.scene());
        for (std::size_t i = 0; i < nodes.size(); ++i) {
            for (std::size_t k = i + 1; k < nodes.size(); ++k) {
                if (nodes[i].layer != nodes[k].layer) continue;
                CAPTURE(nodes[i].id, nodes[k].id);
                CHECK_FALSE(overlap(nodes[i].visible, nodes[k].visible, pixel_rounding));
            }
        }
    });
}

TEST_CASE("names of what can be tapped are unique and spoken", "[canvas][layout]") {
    on_every_page([](CanvasPage& page, Size) {
        std::set<std::string> ids;
        for (const Node& node : tappable(page.scene())) {
            CAPTURE(node.id);
            CHECK(ids.insert(node.id).second);
            CHECK_FALSE(node.name.empty());
        }
    });
}

TEST_CASE("nothing stands outside the page", "[canvas][layout]") {
    on_every_page([](CanvasPage& page, Size size) {
        for (const Node& node : page.scene().nodes()) {
            CAPTURE(node.id, node.name);
            CHECK(node.box.left >= -pixel_rounding);
            CHECK(node.box.right <= size.width + pixel_rounding);
        }
        const ImDrawData& drawn = *ImGui::GetDrawData();
        float left = 0;
        float right = 0;
        for (const ImDrawVert& corner : drawn.CmdLists[0]->VtxBuffer) {
            left = std::min(left, corner.pos.x);
            right = std::max(right, corner.pos.x);
        }
        CHECK(drawn.CmdListsCount == 1);
        CHECK(left >= -1.0F);
        CHECK(right <= size.width + 1.0F);
    });
}

TEST_CASE("no words run out of the side of what they stand in", "[canvas][layout]") {
    on_every_page([](CanvasPage& page, Size) {
        REQUIRE_FALSE(page.texts().empty());
        for (const DrawnText& text : page.texts()) {
            CAPTURE(text.text);
            CHECK(text.box.left >= text.clip.left - 1);
            CHECK(text.box.right <= text.clip.right + 1);
        }
    });
}

TEST_CASE("no words stand on other words", "[canvas][layout]") {
    on_every_page([](CanvasPage& page, Size) {
        const bool sheet = std::any_of(page.scene().nodes().begin(),
                                       page.scene().nodes().end(),
                                       [](const Node& node) { return node.role == Role::dialog; });
        const std::vector<DrawnText>& texts = page.texts();
        // A sheet is drawn last, over the page, and its Close first.
        const std::string close = say(twoclocks::base::Word::close, {});
        std::size_t from = 0;
        for (std::size_t i = 0; sheet && i < texts.size(); ++i) {
            if (texts[i].text == close) from = i;
        }
        CHECK((!sheet || from > 0));
        for (std::size_t i = from; i < texts.size(); ++i) {
            for (std::size_t k = i + 1; k < texts.size(); ++k) {
                CAPTURE(texts[i].text, texts[k].text);
                CHECK_FALSE(overlap(seen(texts[i]), seen(texts[k]), 2));
            }
        }
    });
}

TEST_CASE("the caution stands on every page", "[canvas][layout]") {
    const twoclocks::base::Region region;
    const std::string caution = say(twoclocks::base::Word::caution_short, region);
    const std::string full = say(twoclocks::base::Word::caution_full_1, region);
    on_every_page([&](CanvasPage& page, Size) {
        const auto& nodes = page.scene().nodes();
        CHECK(std::any_of(nodes.begin(), nodes.end(), [&](const Node& node) {
            return node.name == caution || node.name == full;
        }));
    });
}

TEST_CASE("every page has one heading of the first level", "[canvas][layout]") {
    on_every_page([](CanvasPage& page, Size) {
        const auto& nodes = page.scene().nodes();
        CHECK(std::count_if(nodes.begin(), nodes.end(), [](const Node& node) {
                  return node.role == Role::heading && node.level == 1;
              }) == 1);
    });
}

TEST_CASE("the pad's keys are at least 56 px and stand 8 px apart", "[canvas][layout]") {
    for (const Size size : sizes) {
        CanvasPage page{size.width, size.height};
        (void)page.lay_out(samples::pad());
        const Node* one = page.find("key-1");
        const Node* two = page.find("key-2");
        const Node* four = page.find("key-4");
        REQUIRE(one != nullptr);
        REQUIRE(two != nullptr);
        REQUIRE(four != nullptr);
        CHECK(one->box.width() >= 56);
        CHECK(one->box.height() >= 56);
        CHECK(two->box.left - one->box.right >= 8 - pixel_rounding);
        CHECK(four->box.top - one->box.bottom >= 8 - pixel_rounding);
    }
}

TEST_CASE("a reading can be typed and saved on a phone without scrolling", "[canvas][layout]") {
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::pad());
    for (const char* id :
         {"key-0", "key-9", "key-d", "key-e", "save-reading", "date", "tab-fleet"}) {
        CAPTURE(id);
        const Node* node = page.find(id);
        REQUIRE(node != nullptr);
        CHECK(node->visible.height() == node->box.height());
    }
}

TEST_CASE("on a page of many limits every link and button says what it is for",
          "[canvas][layout]") {
    for (const Screen& screen : {samples::aircraft(),
                                 samples::troubled_aircraft(),
                                 samples::checks(),
                                 samples::parts(),
                                 samples::part(),
                                 samples::files(),
                                 samples::template_form()}) {
        CanvasPage page{390, 844};
        (void)page.lay_out(screen);
        std::set<std::string> names;
        for (const Node& node : tappable(page.scene())) {
            CAPTURE(node.id, node.name);
            CHECK(names.insert(node.name).second);
        }
    }
}
