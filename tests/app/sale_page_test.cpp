// The pages of a sale: the buyer's rate, prices of items, the closing list, papers handed over.
#include "catch_amalgamated.hpp"
#include "tests/app/limit_bench.hpp"

#include <algorithm>
#include <string>
#include <tuple>
#include <utility>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::Hangar;
using canvas::support::said;
using views::SumsOf;

namespace {

const SumsPage& page_of(Hangar& h) {
    const auto* page = std::get_if<SumsPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

const SumsPage& open_sums(Hangar& h, SumsOf of) {
    h.app.apply(intent::OpenSums{h.aircraft, of});
    return page_of(h);
}

/// The page asks it, no form does.
void type_year(Hangar& h, const char* hours) {
    (void)page_of(h);
    h.app.field_text("buyer-year", hours);
    h.app.field_closed("buyer-year");
}

bool is_in(const base::Message& message, const std::string& part) {
    return said(message).find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("the buyer's rate moves the answer, and nothing is recorded of it", "[app][sale]") {
    Hangar h;
    const std::size_t before = h.records().size();
    REQUIRE(open_sums(h, SumsOf::sale).asked);
    type_year(h, "2000");
    const std::string fast = said(page_of(h).view.top.front().text);
    CHECK(fast.find("the hours stop it") != std::string::npos);
    type_year(h, "20");
    CHECK(is_in(page_of(h).view.top.front().text, "the calendar stops it"));
    CHECK(h.records().size() == before);
    type_year(h, "9000");
    CHECK(page_of(h).asked->problem.has_value());
}

TEST_CASE("an item gets its price, a point its place on the closing list", "[app][sale]") {
    Hangar h;
    h.open(FormKind::new_item, h.aircraft);
    h.type("name", "Annual inspection");
    h.type("months", "12");
    h.type("anchor_on", "2026-03-01");
    h.send();
    open_sums(h, SumsOf::sale);
    type_year(h, "100");
    REQUIRE(!page_of(h).view.blocks.front().rows.empty());
    const views::SumsRow row = page_of(h).view.blocks.front().rows.front();
    CHECK(is_in(row.figure, "no price"));
    h.app.apply(intent::OpenTask{FormKind::item_price, h.aircraft, row.key});
    h.type("item_price", "1500");
    h.send();
    CHECK(h.last<facts::ItemPrice>().first.about.size() == 2);
    CHECK(base::print_id(h.last<facts::ItemPrice>().first.about[1]) == row.key);
    open_sums(h, SumsOf::sale);
    const views::SumsRow priced = page_of(h).view.blocks.front().rows.front();
    CHECK(priced.key == row.key);
    CHECK(is_in(priced.figure, ".00\u00a0EUR"));
    CHECK(is_in(priced.lines.back(), "1,500.00\u00a0EUR each"));
    h.open(FormKind::closing, h.aircraft);
    h.choose("closing_topic", "liens");
    h.type("point_text", "Bank of the example");
    h.send();
    const views::SumsView& list = open_sums(h, SumsOf::closing).view;
    CHECK(said(list.blocks.front().rows.front().name) == "Bank of the example");
    CHECK(open_sums(h, SumsOf::compare).view.blocks.front().rows.size() == 1);
}

TEST_CASE("pages are handed over as papers and tables, the plan as days", "[app][paper]") {
    Hangar h;
    const auto handed = [&](intent::HandOver::As as) {
        h.app.apply(intent::HandOver{as});
        return std::pair{h.host.file_name, h.host.file};
    };
    open_sums(h, SumsOf::sale);
    auto [name, bytes] = handed(intent::HandOver::As::paper);
    CHECK(name.find("-sale-2026-11-25.html") != std::string::npos);
    CHECK(bytes.find("<!doctype html>") == 0);
    CHECK(bytes.find("<svg") != std::string::npos);
    std::tie(name, bytes) = handed(intent::HandOver::As::table);
    CHECK(name.ends_with(".csv"));
    h.app.apply(intent::OpenPlan{h.aircraft});
    (void)h.app.screen();
    std::tie(name, bytes) = handed(intent::HandOver::As::calendar);
    CHECK(name.ends_with("-days-2026-11-25.ics"));
    CHECK(bytes.find("BEGIN:VCALENDAR\r\n") == 0);
    h.app.apply(intent::OpenStatus{h.aircraft});
    (void)h.app.screen();
    std::tie(name, bytes) = handed(intent::HandOver::As::paper);
    CHECK(name.find("-status-") != std::string::npos);
    h.app.apply(intent::OpenMoney{h.aircraft});
    (void)h.app.screen();
    std::tie(name, bytes) = handed(intent::HandOver::As::paper);
    CHECK(name.find("-money-") != std::string::npos);
}
