// What each page asks for when its parts are pressed.
#include "catch_amalgamated.hpp"
#include "tests/support/canvas_page.hpp"
#include "tests/support/sample_screens.hpp"
#include "wasm/widgets/list.hpp"

#include <algorithm>

using namespace twoclocks::canvas;
using twoclocks::canvas::support::CanvasPage;
using twoclocks::canvas::support::pressed;

namespace {

const std::string first_id = twoclocks::base::print_id(samples::id_of(1));

}  // namespace

TEST_CASE("a page that is not touched asks for nothing", "[canvas][panels]") {
    CanvasPage page{390, 844};
    for (const samples::Sample& sample : samples::every_screen()) {
        CAPTURE(sample.name);
        CHECK_FALSE(page.lay_out(sample.screen).has_value());
    }
}

TEST_CASE("tabs and the way back lead where they say", "[canvas][panels]") {
    (void)pressed<intent::OpenFleet>(samples::history(), "tab-fleet");
    (void)pressed<intent::OpenLog>(samples::fleet(), "tab-log");
    CHECK(pressed<intent::OpenHistory>(samples::fleet(), "tab-history").aircraft.empty());
    (void)pressed<intent::OpenFiles>(samples::fleet(), "tab-files");
    (void)pressed<intent::Back>(samples::aircraft(), "back");
}

TEST_CASE("the fleet opens aircraft, the form and the log", "[canvas][panels]") {
    CHECK(pressed<intent::OpenAircraft>(samples::fleet(), "aircraft-" + first_id).aircraft ==
          samples::id_of(1));
    (void)pressed<intent::OpenLog>(samples::fleet(), "log-reading");
    CHECK(pressed<intent::OpenForm>(samples::empty_fleet(), "add-aircraft").kind ==
          FormKind::new_aircraft);
    (void)pressed<intent::LoadDemo>(samples::empty_fleet(), "look-invented");
    (void)pressed<intent::AcceptCaution>(samples::welcome(), "accept-caution");
}

TEST_CASE("every figure of an aircraft answers why, in the shared order", "[canvas][panels]") {
    struct Row {
        const char* id;
        int why;
    };

    // 0 to 6 are the page's own; then the rows: calendar + likely; hours + likely;
    // hours, calendar, count + likely; hours, calendar + likely.
    for (const Row row : {Row{"why-answer", 0},
                          Row{"why-hours-left", 1},
                          Row{"why-calendar-left", 2},
                          Row{"why-range", 3},
                          Row{"why-total-time", 4},
                          Row{"why-rate", 5},
                          Row{"why-break-even", 6},
                          Row{"why-due-0-calendar", 7},
                          Row{"why-due-0-likely", 8},
                          Row{"why-due-1-hours", 9},
                          Row{"why-due-1-likely", 10},
                          Row{"why-due-2-hours", 11},
                          Row{"why-due-2-calendar", 12},
                          Row{"why-due-2-count", 13},
                          Row{"why-due-2-likely", 14},
                          Row{"why-due-3-hours", 15},
                          Row{"why-due-3-calendar", 16},
                          Row{"why-due-3-likely", 17}}) {
        CHECK(pressed<intent::OpenWhy>(samples::aircraft(), row.id).why == row.why);
    }
}

TEST_CASE("an aircraft's buttons name what they are about", "[canvas][panels]") {
    const Screen screen = samples::aircraft();
    CHECK(pressed<intent::OpenPad>(screen, "log-reading").aircraft == samples::id_of(1));
    CHECK(pressed<intent::OpenHistory>(screen, "history").aircraft == samples::id_of(1));
    const auto work = pressed<intent::OpenForm>(screen, "work-done-1");
    CHECK(work.kind == FormKind::work_done);
    CHECK(work.subject == samples::id_of(21));

    struct Row {
        const char* id;
        FormKind kind;
    };

    for (const Row row : {Row{"new-item", FormKind::new_item},
                          Row{"meter-change", FormKind::meter_change},
                          Row{"usage-plan", FormKind::usage_plan},
                          Row{"parked", FormKind::parked},
                          Row{"storage", FormKind::storage},
                          Row{"adjust", FormKind::meter_adjusted},
                          Row{"flown-as", FormKind::flown_as},
                          Row{"factor", FormKind::hours_factor}}) {
        const auto form = pressed<intent::OpenForm>(screen, row.id);
        CHECK(form.kind == row.kind);
        CHECK(form.subject == samples::id_of(1));
    }
    const auto answer = pressed<intent::AnswerQuestion>(samples::troubled_aircraft(), "use-0-1");
    CHECK(answer.question == 0);
    CHECK(answer.side == 1);
}

TEST_CASE("a stored aircraft leads to its return", "[canvas][panels][storage]") {
    const Screen stored = samples::stored_aircraft();
    CHECK(pressed<intent::OpenReturn>(stored, "on-return").aircraft == samples::id_of(1));
    CHECK(pressed<intent::OpenForm>(stored, "return").kind == FormKind::return_to_service);
    const Screen back = samples::on_return();
    CHECK(pressed<intent::OpenForm>(back, "return").kind == FormKind::return_to_service);
    CHECK(pressed<intent::EditField>(back, "return-on").field == "return-on");
    CHECK(pressed<intent::OpenWhy>(back, "why-due-0-calendar").why == 0);
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::aircraft());
    CHECK(page.find("on-return") == nullptr);
    CHECK(page.find("return") == nullptr);
}

TEST_CASE("the pad gives its keys and saves", "[canvas][panels]") {
    for (const char key : {'0', '1', '5', '9'}) {
        CHECK(pressed<intent::PadKey>(samples::pad(), std::string{"key-"} + key).key == key);
    }
    CHECK(pressed<intent::PadKey>(samples::pad(), "key-d").key == '.');
    CHECK(pressed<intent::PadKey>(samples::pad(), "key-e").key == '<');
    (void)pressed<intent::SaveReading>(samples::pad(), "save-reading");
    CHECK(pressed<intent::EditField>(samples::pad(), "date").field == "date");
    CHECK(pressed<intent::OpenForm>(samples::falling_pad(), "other-meter").kind ==
          FormKind::meter_change);
    CHECK(pressed<intent::OpenForm>(samples::falling_pad(), "other-hours").kind ==
          FormKind::meter_adjusted);
    CanvasPage page{390, 844};
    CHECK_FALSE(page.press(samples::falling_pad(), "save-reading").has_value());
    CHECK(pressed<intent::OpenPad>(samples::log_choices(), "log-" + first_id).aircraft ==
          samples::id_of(1));
}

TEST_CASE("forms edit, choose and submit", "[canvas][panels]") {
    CHECK(pressed<intent::EditField>(samples::form(), "registration").field == "registration");
    const auto choice = pressed<intent::ChooseOption>(samples::form(), "option-drive-2");
    CHECK(choice.field == "drive");
    CHECK(choice.option == 2);
    (void)pressed<intent::SubmitForm>(samples::form(), "submit");
}

TEST_CASE("a tapped field tells where its input goes", "[canvas][panels]") {
    CanvasPage page{390, 844};
    (void)page.press(samples::form(), "hours_limit");
    const auto box = page.memory().boxes.find("hours_limit");
    REQUIRE(box != page.memory().boxes.end());
    const Node* node = page.find("hours_limit");
    REQUIRE(node != nullptr);
    CHECK(box->second.text == "2400");
    CHECK(box->second.kind == FieldKind::decimal);
    CHECK(box->second.left_px == node->box.left);
    CHECK(box->second.top_px == node->box.top);
    CHECK(box->second.width_px == node->box.width());
    CHECK(box->second.height_px == node->box.height());
}

TEST_CASE("files export, import, join, leave out, set aside and take back", "[canvas][panels]") {
    (void)pressed<intent::ExportJournal>(samples::files(), "export");
    (void)pressed<intent::ChooseFile>(samples::files(), "import");
    (void)pressed<intent::AcceptImport>(samples::preview(), "accept-import");
    (void)pressed<intent::DropImport>(samples::preview(), "drop-import");
    CHECK(pressed<intent::SetAside>(samples::files(), "batch-1").batch == 1);
    CHECK(pressed<intent::TakeBack>(samples::files(), "batch-2").batch == 2);
    CHECK(pressed<intent::SetTheme>(samples::files(), "look-sun").theme == ThemeChoice::sun);
    CHECK(pressed<intent::OpenForm>(samples::files(), "signature").kind == FormKind::author);
}

TEST_CASE("sheets close, and lead to the records they rest on", "[canvas][panels]") {
    (void)pressed<intent::CloseSheet>(samples::why(), "sheet-close");
    CHECK(pressed<intent::OpenRecord>(samples::why(), "why-line-1").fact == samples::id_of(31));
    const auto correct = pressed<intent::OpenForm>(samples::record(), "correct");
    CHECK(correct.kind == FormKind::correct);
    CHECK(correct.subject == samples::id_of(31));
    CHECK(pressed<intent::OpenForm>(samples::record(), "withdraw").kind == FormKind::withdraw);
    CHECK(pressed<intent::OpenRecord>(samples::history(),
                                      "record-" + twoclocks::base::print_id(samples::id_of(32)))
              .fact == samples::id_of(32));
}

TEST_CASE("a notice's button does what the notice says", "[canvas][panels]") {
    (void)pressed<intent::StartNewVersion>(samples::notices(), "notice-action-1");
    (void)pressed<intent::DismissNotice>(samples::notices(), "notice-close-1");
}

TEST_CASE("a long list speaks a window of itself with its size and places", "[canvas][panels]") {
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::long_history(5000));
    const auto items = [&] {
        std::vector<Node> found;
        for (const Node& node : page.scene().nodes()) {
            if (node.role == Role::list_item) found.push_back(node);
        }
        return found;
    };
    const std::vector<Node> top = items();
    REQUIRE_FALSE(top.empty());
    CHECK(top.size() < 40);
    CHECK(top.front().position == 1);
    CHECK(top.front().set_size == 5000);

    page.memory().offsets[page.memory().regions.back().key] = page.memory().regions.back().most / 2;
    (void)page.lay_out(samples::long_history(5000));
    const std::vector<Node> middle = items();
    REQUIRE(middle.size() > 2);
    CHECK(middle.front().position > 2400);
    CHECK(middle.back().position < 2600);
    for (std::size_t i = 1; i < middle.size(); ++i) {
        CHECK(middle[i].position == middle[i - 1].position + 1);
        CHECK(middle[i].box.top >= middle[i - 1].box.bottom);
    }
}

TEST_CASE("a short list is spoken whole, drawn or not", "[canvas][panels]") {
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::large_fleet(spoken_rows_most));
    const auto& nodes = page.scene().nodes();
    CHECK(std::count_if(nodes.begin(), nodes.end(), [](const Node& node) {
              return node.role == Role::list_item && node.set_size == 0;
          }) == spoken_rows_most);
    const std::size_t drawn = page.texts().size();
    CHECK(drawn < 100);
}

TEST_CASE("a fleet of a thousand is few draw calls", "[canvas][panels]") {
    CanvasPage page{390, 844};
    (void)page.lay_out(samples::large_fleet(1000));
    const ImDrawData& drawn = *ImGui::GetDrawData();
    int calls = 0;
    for (int i = 0; i < drawn.CmdListsCount; ++i)
        calls += drawn.CmdLists[i]->CmdBuffer.Size;
    CHECK(calls <= 60);
    CHECK(drawn.TotalVtxCount < 65536);  // WebGL 2 draws with 16-bit indices
}
