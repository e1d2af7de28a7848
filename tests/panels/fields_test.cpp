// Fields on a page: what each asks for, what stands beside it, and what is spoken with it.
#include "catch_amalgamated.hpp"
#include "tests/support/canvas_page.hpp"
#include "tests/support/sample_screens.hpp"
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/pad.hpp"
#include "wasm/app/written.hpp"
#include "wasm/widgets/pad.hpp"

#include <algorithm>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::CanvasPage;
using canvas::support::pressed;

namespace {

Screen page_with(FieldView field) {
    Screen screen = samples::form();
    understand(field);
    std::get<FormPage>(screen.page).fields = {std::move(field)};
    return screen;
}

Screen money_page(const char* text, bool open, std::string filter = {}) {
    FieldView field = make_money("price", base::Word::specimen_amount, text, {}, Need::needed);
    field.open = open;
    field.filter = std::move(filter);
    field.problem = problem_of(field);
    return page_with(field);
}

FieldView days() {
    FieldView field =
        make_field("on", base::Word::field_date, FieldKind::date, "2026-05-31", Need::needed);
    field.quick = quick_days(samples::day_of(samples::day_3_may_2026));
    return field;
}

bool drawn(const CanvasPage& page, const std::string& text) {
    return std::any_of(page.texts().begin(), page.texts().end(), [&](const DrawnText& each) {
        return each.text == text;
    });
}

}  // namespace

TEST_CASE("an amount edits, opens its currencies, searches and chooses", "[canvas][fields]") {
    CHECK(pressed<intent::EditField>(money_page("5", false), "price").field == "price");
    CHECK(pressed<intent::ToggleChoice>(money_page("5", false), "choose-price").field == "price");
    const Screen open = money_page("5", true, "usd");
    CHECK(pressed<intent::EditField>(open, "find-price").field == "find-price");
    const auto clear = pressed<intent::FillField>(open, "clear-find-price");
    CHECK(clear.field == "find-price");
    CHECK(clear.text.empty());
    const auto& field = std::get<FormPage>(open.page).fields[0];
    REQUIRE(field.shown.size() == 1);
    const std::string row = "option-price-" + std::to_string(field.shown[0]);
    CHECK(pressed<intent::ChooseOption>(open, row).option == field.shown[0]);
    CanvasPage page{390, 844};
    (void)page.lay_out(money_page("5", true));
    CHECK(page.find("clear-find-price") == nullptr);  // nothing to clear yet
}

TEST_CASE("a day is filled by one tap, and shown as people say it", "[canvas][fields]") {
    const Screen screen = page_with(days());
    CHECK(pressed<intent::FillField>(screen, "quick-on-0").text == "2026-05-03");
    CHECK(pressed<intent::FillField>(screen, "quick-on-1").text == "2026-05-02");
    CHECK(pressed<intent::EditField>(screen, "on").field == "on");
    CanvasPage page{390, 844};
    (void)page.lay_out(screen);
    CHECK(page.find("on")->value == "31 May 2026");
    CHECK(page.memory().boxes["on"].text == "2026-05-31");
}

TEST_CASE("a file is chosen, shown with its size, and removed", "[canvas][fields]") {
    FieldView field =
        make_field("plate", base::Word::specimen_file, FieldKind::file, {}, Need::optional);
    CHECK(pressed<intent::ChooseFieldFile>(page_with(field), "file-plate").field == "plate");
    field.text = "plate.jpg";
    for (const auto& [bytes, said] :
         std::vector<std::pair<std::int64_t, std::string>>{{1, "1 byte"},
                                                           {999, "999 bytes"},
                                                           {1000, "1 kB"},
                                                           {1001, "2 kB"},
                                                           {999'999, "1,000 kB"},
                                                           {1'000'000, "1.0 MB"},
                                                           {1'000'001, "1.1 MB"}}) {
        field.size_bytes = bytes;
        CanvasPage page{390, 844};
        (void)page.lay_out(page_with(field));
        CAPTURE(said);
        CHECK(drawn(page, said));
        CHECK(drawn(page, "plate.jpg"));
    }
    CHECK(pressed<intent::FillField>(page_with(field), "drop-plate").text.empty());
}

TEST_CASE(
    "a few short choices stand side by side, long ones below each other, many behind a search",
    "[canvas][fields]") {
    const auto box = [](const CanvasPage& page, const char* id) {
        const Node* node = page.find(id);
        REQUIRE(node != nullptr);
        return node->box;
    };
    CanvasPage page{390, 844};
    (void)page.lay_out(page_with(make_choice(
        "it", base::Word::field_rule, {base::Word::role_other, base::Word::role_component}, 0)));
    CHECK(box(page, "option-it-0").top == box(page, "option-it-1").top);
    CHECK(box(page, "option-it-1").left - box(page, "option-it-0").right >= 8);
    (void)page.lay_out(page_with(make_choice("it", base::Word::field_class, class_words(), 0)));
    CHECK(box(page, "option-it-0").left == box(page, "option-it-1").left);
    CHECK(box(page, "option-it-1").top - box(page, "option-it-0").bottom >= 8);
    std::vector<base::Word> seven = class_words();
    const std::vector<base::Word> more = drive_words();
    seven.insert(seven.end(), more.begin(), more.begin() + 2);
    (void)page.lay_out(page_with(make_choice("it", base::Word::field_class, seven, 0)));
    CHECK(page.find("option-it-0") != nullptr);  // six
    seven.push_back(more[2]);
    (void)page.lay_out(page_with(make_choice("it", base::Word::field_class, seven, 0)));
    CHECK(page.find("option-it-0") == nullptr);
    CHECK(page.find("choose-it") != nullptr);
}

TEST_CASE("a problem and a hint are tied to their field, and the field says it is wrong",
          "[canvas][fields]") {
    CanvasPage page{390, 844};
    (void)page.lay_out(money_page("1,234", false));
    CHECK(page.find("price")->wrong);
    const auto& nodes = page.scene().nodes();
    const auto about = [&](Role role) {
        return std::count_if(nodes.begin(), nodes.end(), [&](const Node& node) {
            return node.role == role && node.describes == "price";
        });
    };
    CHECK(about(Role::alert) == 1);
    CHECK(about(Role::text) == 1);
    const std::string json = page.scene().json();
    CHECK(json.find("\"d\":\"price\"") != std::string::npos);
    CHECK(json.find("\"w\":1") != std::string::npos);
    (void)page.lay_out(money_page("1234", false));
    CHECK_FALSE(page.find("price")->wrong);
}

TEST_CASE("what was understood takes the place of the hint, so that nothing moves",
          "[canvas][fields]") {
    const auto height = [](const char* text) {
        CanvasPage page{390, 844};
        const Screen screen = page_with(
            make_field("it", base::Word::field_hours, FieldKind::hours, text, Need::needed));
        (void)page.lay_out(screen);
        CHECK(drawn(page, *text == '\0' ? "Such as 12.3 or 12:18" : "12.3 h = 12 h 18 min"));
        return page.find("submit")->box.top;
    };
    CHECK(height("") == height("12:18"));
}

TEST_CASE("a note grows with its text and stops growing", "[canvas][fields]") {
    const auto height = [](std::size_t words) {
        std::string text;
        for (std::size_t word = 0; word < words; ++word)
            text += "words ";
        CanvasPage page{390, 844};
        (void)page.lay_out(page_with(
            make_field("it", base::Word::field_note, FieldKind::note, text, Need::needed)));
        return page.find("it")->box.height();
    };
    CHECK(height(0) == height(10));
    CHECK(height(60) > height(10));
    CHECK(height(1000) == height(2000));
    CHECK(height(2000) <= 320);
}

TEST_CASE("a focused field is framed strongly, and its text is left to the real input",
          "[canvas][fields]") {
    CanvasPage page{390, 844};
    const Screen screen = page_with(
        make_field("it", base::Word::field_place, FieldKind::text, "Hangar", Need::needed));
    (void)page.lay_out(screen);
    CHECK(drawn(page, "Hangar"));
    page.memory().editing = "it";
    (void)page.lay_out(screen);
    CHECK_FALSE(drawn(page, "Hangar"));
    CHECK(page.find("it")->value == "Hangar");
}

TEST_CASE("the pad's second button clears, and then brings back", "[canvas][fields]") {
    Screen screen = samples::pad();
    auto& pad = *std::get<LogPage>(screen.page).pad;
    CanvasPage page{390, 844};
    (void)page.lay_out(screen);
    CHECK(page.find("pad-clear") == nullptr);
    pad.can_clear = true;
    CHECK(pressed<intent::PadKey>(screen, "pad-clear").key == 'c');
    pad.can_clear = false;
    pad.can_undo_clear = true;
    CHECK(pressed<intent::PadKey>(screen, "pad-clear").key == 'u');
}

TEST_CASE("a returned entry says so and can be discarded", "[canvas][fields]") {
    (void)pressed<intent::ClearEntry>(samples::returned_draft(), "discard-draft");
    (void)pressed<intent::ClearEntry>(samples::returned_pad(), "discard-draft");
    (void)pressed<intent::ClearEntry>(samples::returned_draft(), "clear-form");
    CHECK(pressed<intent::WithdrawSaved>(samples::saved_notice(), "notice-action-0").facts ==
          std::vector<base::Id>{samples::id_of(31)});
}

TEST_CASE("pads of whole numbers, decimals and minutes take what makes a number",
          "[canvas][fields]") {
    struct Row {
        const char* keys;
        PadSign sign;
        const char* digits;
    };

    for (const Row& row : {Row{"0012..3.456", PadSign::decimal, "12.34"},
                           Row{"12:18", PadSign::decimal, "1218"},
                           Row{"12:18", PadSign::minutes, "12:18"},
                           Row{"12:189", PadSign::minutes, "12:18"},
                           Row{"12:618", PadSign::minutes, "12:18"},
                           Row{"12:59", PadSign::minutes, "12:59"},
                           Row{":5", PadSign::minutes, "5"},
                           Row{"1.2", PadSign::minutes, "12"},
                           Row{"1.2", PadSign::none, "12"},
                           Row{"12<<<", PadSign::none, ""},
                           Row{"cux-1", PadSign::none, "1"},
                           Row{"1234567890", PadSign::none, "123456789"}}) {
        std::string digits;
        for (const char* key = row.keys; *key != '\0'; ++key)
            press_key(digits, *key, row.sign);
        CAPTURE(row.keys);
        CHECK(digits == row.digits);
    }
}
