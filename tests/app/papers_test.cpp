// Every list and page that can be taken away, as a file with a name that says of what and when.
#include "tests/app/parts_hangar.hpp"

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::PartsHangar;
using As = intent::HandOver::As;

namespace {

/// Hands over what is open; the name of the file, and that it holds these words.
std::string handed(PartsHangar& h, As as, const std::string& words) {
    (void)h.app.screen();
    h.host.file_name.clear();
    h.app.apply(intent::HandOver{as});
    CAPTURE(h.host.file_name);
    CHECK(h.host.file.find(words) != std::string::npos);
    return h.host.file_name;
}

}  // namespace

TEST_CASE("lists are taken away as papers and as tables", "[app][paper]") {
    PartsHangar h;
    const base::Id first = h.first.id;
    h.app.apply(intent::OpenFleet{});
    CHECK(handed(h, As::table, "TEST-2,") == "fleet-fleet-2026-11-25.csv");
    h.app.apply(intent::OpenParts{});
    CHECK(handed(h, As::paper, "<h1>Parts</h1>") == "fleet-parts-2026-11-25.html");
    h.app.apply(intent::OpenHistory{first});
    CHECK(handed(h, As::table, "Records, newest first") == "TEST-1-history-2026-11-25.csv");
    h.app.apply(intent::OpenChecks{first});
    CHECK(handed(h, As::paper, "<h1>Due list, TEST-1</h1>") == "TEST-1-due-2026-11-25.html");
    h.app.apply(intent::OpenStagger{});
    CHECK(handed(h, As::table, "Who goes in when") == "fleet-order-2026-11-25.csv");
    h.app.apply(intent::OpenPart{h.gearbox.id});
    CHECK(handed(h, As::paper, "History of a part: Gearbox") ==
          "Gearbox__serial_7-part-2026-11-25.html");
    CHECK(h.host.file.find("300.0") != std::string::npos);
}

TEST_CASE("a page goes to the printer as the paper that it is taken away as", "[app][paper]") {
    PartsHangar h;
    h.app.apply(intent::OpenStatus{h.first.id});
    CHECK(handed(h, As::paper, "TEST-1") == "TEST-1-status-2026-11-25.html");
    CHECK(handed(h, As::print, "TEST-1").empty());  // no file is made
    CHECK(h.host.printed == h.host.file);
    CHECK(h.host.printed_name == "TEST-1-status-2026-11-25");
}

TEST_CASE("the plan is taken away as a list to work by", "[app][paper]") {
    PartsHangar h;
    h.app.apply(intent::OpenPlan{h.first.id});
    CHECK(handed(h, As::work_list, "<h1>Work list, TEST-1</h1>") == "TEST-1-work-2026-11-25.html");
    CHECK(h.host.file.find("No work order and no release") != std::string::npos);
}
