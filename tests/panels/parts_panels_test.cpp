// What the pages of parts ask for when their parts are pressed.
#include "catch_amalgamated.hpp"
#include "tests/support/canvas_page.hpp"
#include "tests/support/sample_screens.hpp"

#include <string>

using namespace twoclocks::canvas;
using twoclocks::canvas::support::CanvasPage;
using twoclocks::canvas::support::pressed;

namespace {

std::string row_id(std::uint64_t number) {
    return "part-" + twoclocks::base::print_id(samples::id_of(number));
}

}  // namespace

TEST_CASE("the parts of an aircraft are one press away, by its registration", "[canvas][parts]") {
    const Screen screen = samples::aircraft();
    (void)pressed<intent::OpenParts>(screen, "parts");
    CanvasPage page{390, 844};
    (void)page.lay_out(screen);
    const Node* node = page.find("parts");
    REQUIRE(node != nullptr);
    const auto& view = std::get<twoclocks::views::AircraftView>(screen.page);
    CHECK(node->name.find(view.registration) != std::string::npos);
}

TEST_CASE("the list of parts is searched, widened, added to, and opens each part",
          "[canvas][parts]") {
    CHECK(pressed<intent::EditField>(samples::parts(), "parts-search").field == "parts-search");
    CHECK(pressed<intent::FillField>(samples::parts(), "clear-parts-search").text.empty());
    CHECK(pressed<intent::ChooseOption>(samples::parts(), "option-parts-which-1").option == 1);
    CHECK(pressed<intent::OpenPart>(samples::parts(), row_id(201)).part == samples::id_of(201));
    CHECK(pressed<intent::OpenPart>(samples::parts(), row_id(203)).part == samples::id_of(203));
    const auto add = pressed<intent::OpenForm>(samples::no_parts(), "new-part");
    CHECK(add.kind == FormKind::new_part);
    CHECK(add.subject == samples::id_of(1));
}

TEST_CASE("what is in an assembly stands further to the right", "[canvas][parts]") {
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::parts());
    const Node* outer = page.find(row_id(201));
    const Node* inner = page.find(row_id(202));
    const Node* deepest = page.find(row_id(203));
    REQUIRE(outer != nullptr);
    REQUIRE(inner != nullptr);
    REQUIRE(deepest != nullptr);
    CHECK(outer->box.left < inner->box.left);
    CHECK(inner->box.left < deepest->box.left);
    CHECK(outer->box.right == deepest->box.right);
    CHECK(deepest->name.find("Since new: unknown") != std::string::npos);
    CHECK(deepest->name.find("history unknown") != std::string::npos);
}

TEST_CASE("a part's page opens its forms, its records and its questions", "[canvas][parts]") {
    struct Row {
        const char* id;
        FormKind kind;
    };

    for (const Row row : {Row{"part-remove", FormKind::part_remove},
                          Row{"part-work", FormKind::part_work},
                          Row{"part-rebuild", FormKind::part_rebuild},
                          Row{"part-fit", FormKind::part_fit},
                          Row{"part-move", FormKind::part_move},
                          Row{"part-scrap", FormKind::part_scrap}}) {
        const auto form = pressed<intent::OpenForm>(samples::part(), row.id);
        CHECK(form.kind == row.kind);
        CHECK(form.subject == samples::id_of(201));
    }
    CHECK(pressed<intent::OpenHistory>(samples::part(), "part-records").aircraft ==
          samples::id_of(201));
    CHECK(pressed<intent::OpenRecord>(samples::part(), "spell-0-fit").fact == samples::id_of(301));
    CHECK(pressed<intent::OpenRecord>(samples::part(), "spell-1-removal").fact ==
          samples::id_of(302));
    CHECK(pressed<intent::OpenRecord>(samples::part(), "trouble-0-1").fact == samples::id_of(302));
    const auto answer = pressed<intent::AnswerQuestion>(samples::part(), "use-0-1");
    CHECK(answer.question == 0);
    CHECK(answer.side == 1);
}
