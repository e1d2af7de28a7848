#include "catch_amalgamated.hpp"
#include "tests/support/canvas_page.hpp"
#include "tests/support/sample_screens.hpp"
#include "wasm/widgets/label_placer.hpp"
#include "wasm/widgets/life_box_words.hpp"

#include <string>

using namespace twoclocks::canvas;
using twoclocks::canvas::support::CanvasPage;

namespace {

/// A pen on a page of its own, for measuring.
class Measure {
  public:
    Measure() : page_(390, 844) {
        fonts_.set(400,
                   twoclocks::canvas::support::bytes_of(HOUSE_ROOT "/build/fonts/inter_400.otf"));
        fonts_.set(600,
                   twoclocks::canvas::support::bytes_of(HOUSE_ROOT "/build/fonts/inter_600.otf"));
        fonts_.build(1);
        ImGui::GetIO().DisplaySize = {390, 844};
        ImGui::GetIO().DeltaTime = 0.016F;
        ImGui::NewFrame();
    }

    ~Measure() { ImGui::EndFrame(); }

    Measure(const Measure&) = delete;
    Measure& operator=(const Measure&) = delete;

    [[nodiscard]] Pen pen() const {
        return {*ImGui::GetBackgroundDrawList(), fonts_, Look::paper, 1};
    }

  private:
    CanvasPage page_;
    Fonts fonts_;
};

}  // namespace

TEST_CASE("wrapped lines fit, and together they are the text", "[canvas][widgets]") {
    const Measure measure;
    const Pen pen = measure.pen();
    const std::string text =
        "One counts hours in service, the other the calendar; Donaudampfschifffahrtsgesellschaft "
        "too.";
    for (const float width : {60.0F, 120.0F, 288.0F, 2000.0F}) {
        std::string joined;
        for (const std::string_view line : pen.wrap(Type::body, text, width)) {
            CAPTURE(width, std::string{line});
            CHECK(pen.width(Type::body, line) <= width);
            joined += line;
        }
        std::string bare = text;
        std::erase(bare, ' ');
        std::erase(joined, ' ');
        CHECK(joined == bare);
    }
}

TEST_CASE("a figure is never parted from its unit, nor a day from its month and year",
          "[canvas][widgets]") {
    const Measure measure;
    const Pen pen = measure.pen();

    struct Row {
        const char* text;
        const char* kept;
    };

    for (const Row row : {Row{"and then 1,044.0 h are left", "1,044.0 h"},
                          Row{"so it has 7 y 166 d to run", "7 y 166 d"},
                          Row{"it was read on 3 May 2026.", "3 May 2026."}}) {
        const float least = pen.width(Type::body, row.kept);
        for (float width = least + 1; width < 260; width += 7) {
            bool whole = false;
            for (const std::string_view line : pen.wrap(Type::body, row.text, width)) {
                whole = whole || line.find(row.kept) != std::string_view::npos;
            }
            CAPTURE(row.text, width);
            CHECK(whole);
        }
    }
}

TEST_CASE("a long name is cut with an ellipsis that fits, a short one is left",
          "[canvas][widgets]") {
    const Measure measure;
    const Pen pen = measure.pen();
    CHECK(pen.shorten(Type::name, "ISLE-1", 300) == "ISLE-1");
    const std::string cut =
        pen.shorten(Type::name, "ISLE-5 \xC3\xA9\xC3\xA9\xC3\xA9 training", 110);
    CHECK(cut.ends_with("\xE2\x80\xA6"));
    CHECK(cut.starts_with("ISLE"));
    CHECK(pen.width(Type::name, cut) <= 110);
}

TEST_CASE("tabular digits: every digit is as wide as every other", "[canvas][widgets]") {
    const Measure measure;
    const Pen pen = measure.pen();
    for (const Type type : {Type::body_strong, Type::name, Type::figure, Type::digits}) {
        for (char digit = '1'; digit <= '9'; ++digit) {
            CHECK(pen.width(type, std::string(4, digit)) ==
                  Catch::Approx(pen.width(type, "0000")).margin(0.5));
        }
    }
}

TEST_CASE("a line crosses a box only when it does", "[canvas][widgets]") {
    const Rect box{10, 10, 20, 20};
    CHECK(crosses({0, 15}, {30, 15}, box));
    CHECK(crosses({12, 12}, {13, 13}, box));
    CHECK(crosses({0, 0}, {30, 30}, box));
    CHECK_FALSE(crosses({0, 5}, {30, 5}, box));
    CHECK_FALSE(crosses({0, 15}, {9, 15}, box));
    CHECK_FALSE(crosses({0, 25}, {25, 50}, box));
    CHECK_FALSE(crosses({25, 0}, {25, 30}, box));
}

TEST_CASE("a label takes the first free place, and none when all are taken", "[canvas][widgets]") {
    LabelPlacer placer{{0, 0, 100, 100}};
    placer.add_line({0, 50}, {100, 50});
    const Rect on_line{10, 40, 40, 60};
    const Rect outside{80, 10, 120, 30};
    const Rect open{10, 10, 40, 30};
    CHECK(placer.place({on_line, outside, open}).top == 10);
    CHECK(placer.place({open}).width() == 0);
}

TEST_CASE("the life box is drawn to scale", "[canvas][widgets]") {
    const BoxPlot plot{{100, 200, 500, 400}};
    const Point middle = plot.at(twoclocks::views::BoxPoint{500, 250});
    CHECK(middle.x == 300);
    CHECK(middle.y == 350);
    CHECK(plot.corner().x == 500);
    CHECK(plot.corner().y == 200);
    CHECK(plot.at(twoclocks::views::BoxPoint{0, 0}).y == 400);
    // A life flown past its box stands a little beyond the edge, never off the page.
    CHECK(plot.at(twoclocks::views::BoxPoint{500, 1500}).y == Catch::Approx(192));
}

TEST_CASE("a mark whose words find no room keeps the others apart", "[canvas][widgets]") {
    Screen screen = samples::aircraft();
    auto& view = std::get<twoclocks::views::AircraftView>(screen.page);
    for (int i = 0; i < 12; ++i) {
        view.box.marks.push_back({twoclocks::views::Edge::calendar,
                                  400 + i * 10,
                                  samples::told("mark number " + std::to_string(i))});
        view.box.marks.push_back({twoclocks::views::Edge::hours,
                                  600 + i * 10,
                                  samples::told("total number " + std::to_string(i))});
    }
    CanvasPage page{390, 844};
    (void)page.lay_out(screen);
    std::vector<DrawnText> marks;
    for (const DrawnText& text : page.texts()) {
        if (text.text.find(" number ") != std::string::npos) marks.push_back(text);
    }
    CHECK(marks.size() >= 2);
    CHECK(marks.size() < 24);
    for (std::size_t i = 0; i < marks.size(); ++i) {
        for (std::size_t k = i + 1; k < marks.size(); ++k) {
            const Rect shared = cut(marks[i].box, marks[k].box);
            CHECK(shared.width() * shared.height() == 0);
        }
    }
}
