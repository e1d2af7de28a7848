// Papers, tables and days for a calendar, as text.
#include "engine/views/paper.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"

#include <string>

#include "engine/base/csv.hpp"
#include "engine/base/message_args.hpp"
#include "engine/views/calendar.hpp"
#include "engine/views/cores_view.hpp"
#include "engine/views/sale_view.hpp"

using namespace twoclocks;
using support::add_item;
using support::hand_state;
using support::hand_today;

namespace {

constexpr const char* nasty = "=1+1 \"A\", <b>&amp;</b>; \\ ü\nnext";

timeline::AircraftState with_core() {
    timeline::AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, base::hours(400), 900);
    facts::Core core = support::core("g");
    core.name = nasty;
    core.return_by = base::add_days(hand_today, 40);
    core.best_credit = support::euro(900);
    core.nothing_permille = 0;
    state.money.cores.push_back({core, hand_today, {}});
    return state;
}

views::Paper cores_paper() {
    const views::Assessed aircraft = views::assess(with_core(), hand_today);
    const auto view =
        views::make_cores_view(aircraft, views::live(aircraft, aircraft.state.campaign, 50));
    return views::paper_of(view, views::paper_head(aircraft, "0123456789abcdef0123"), {});
}

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t out = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++out;
    return out;
}

}  // namespace

TEST_CASE("a paper says what the page says, with every sign escaped", "[views][paper]") {
    const std::string html = views::print_html(cores_paper(), {});
    CHECK(html.starts_with("<!doctype html>"));
    CHECK(html.find("<b>") == std::string::npos);
    CHECK(html.find("=1+1 &quot;A&quot;, &lt;b&gt;&amp;amp;&lt;/b&gt;; \\ ü") != std::string::npos);
    CHECK(html.find("As of ") != std::string::npos);
    CHECK(html.find("record 0123456789abcdef<") != std::string::npos);
    CHECK(html.find("A licensed person decides airworthiness.") != std::string::npos);
    CHECK(html.find("<script") == std::string::npos);
    CHECK(html.find("http") == std::string::npos);
    CHECK(count_of(html, "<td") == count_of(html, "</td>"));
    views::Paper invented = cores_paper();
    CHECK(html.find("Invented example") == std::string::npos);
    invented.is_invented = true;
    CHECK(views::print_html(invented, {}).find("Invented example") != std::string::npos);
}

TEST_CASE("a table is read back cell by cell, and no cell is a formula", "[views][paper]") {
    // Source: RFC 4180 for quotes; OWASP ASVS for the signs that begin a formula, from memory.
    const views::Paper paper = cores_paper();
    const std::string csv = views::print_csv(paper, {});
    CHECK(csv.ends_with("\r\n"));
    const auto rows = base::split_csv(csv, ',');
    std::size_t place = 3;  // what it is, of which aircraft, of which day
    for (const views::PaperBlock& block : paper.blocks) {
        place += block.lines.size() + (block.title.word == base::Word::blank ? 0 : 1);
        for (const auto& row : block.rows) {
            REQUIRE(place < rows.size());
            REQUIRE(rows[place].size() == row.size());
            CHECK(rows[place].front() == '\'' + row.front());
            CHECK(rows[place].back() == row.back());
            ++place;
        }
    }
    CHECK(place + paper.notes.size() == rows.size());
    CHECK(rows.back().front() == "Planning aid. A licensed person decides airworthiness.");
    views::Paper plain;
    plain.blocks.push_back({{base::Word::blank, {}}, {}, {{"-5.25", "+7", "-5 EUR", "@x", "a;b"}}});
    plain.blocks.push_back(
        {{base::Word::blank, {}},
         {},
         {{"-5,000.00\u00a0EUR", "-1\u00a0eur", "-A1\u00a0EUR", "-", "+\u00a0EUR"}}});
    plain.blocks.push_back(
        {{base::Word::blank, {}}, {}, {{"-5\u00a0000,00\u00a0EUR", "-1\u2019000", "-1\u2019A"}}});
    CHECK(views::print_csv(plain, {}) ==
          "-5.25,+7,'-5 EUR,'@x,\"a;b\"\r\n"
          "\"-5,000.00\u00a0EUR\",'-1\u00a0eur,'-A1\u00a0EUR,'-,'+\u00a0EUR\r\n"
          "\"-5\u00a0000,00\u00a0EUR\",-1\u2019000,'-1\u2019A\r\n");
}

TEST_CASE("days for a calendar: whole days, folded, escaped, and the same names again",
          "[views][calendar]") {
    const views::Assessed aircraft = views::assess(with_core(), hand_today);
    const auto days =
        views::calendar_days(aircraft, views::live(aircraft, aircraft.state.campaign, 50));
    REQUIRE(days.size() >= 2);
    const std::string first = views::print_calendar(days, 1'764'460'800'000, 7, {});
    const std::string second = views::print_calendar(days, 1'764'460'860'000, 8, {});
    // Source: RFC 5545, 3.1: no line is longer than 75 octets, and each ends with CRLF.
    std::size_t begin = 0;
    while (begin < first.size()) {
        const std::size_t end = first.find("\r\n", begin);
        REQUIRE(end != std::string::npos);
        CHECK(end - begin <= 75);
        begin = end + 2;
    }
    CHECK(count_of(first, "\n") == count_of(first, "\r\n"));
    CHECK(first.find("DTSTAMP:20251130T000000Z") != std::string::npos);
    CHECK(second.find("DTSTAMP:20251130T000100Z") != std::string::npos);
    CHECK(count_of(first, "SEQUENCE:7") == days.size());
    CHECK(count_of(second, "SEQUENCE:8") == days.size());
    for (const views::CalendarDay& day : days) {
        CHECK(first.find(day.key.substr(0, 30)) != std::string::npos);
        CHECK(second.find(day.key.substr(0, 30)) != std::string::npos);
    }
    CHECK(first.find("\\, <b>") != std::string::npos);
    CHECK(first.find("<b>&amp\\;") != std::string::npos);
    CHECK(views::print_calendar({}, 0, 0, {}).find("BEGIN:VEVENT") == std::string::npos);
}

TEST_CASE("the closing list counts what the record does not say", "[views][sale]") {
    timeline::AircraftState state = with_core();
    const auto view = [&] { return views::make_closing_view(views::assess(state, hand_today)); };
    const auto untold = [&] {
        std::size_t out = 0;
        const views::SumsView now = view();
        for (const base::Message& line : now.blocks.back().lines)
            out += line.word == base::Word::closing_untold ? 1 : 0;
        return out;
    };
    CHECK(untold() == 8);
    facts::ClosingPoint lien = support::closing("p");
    lien.topic = facts::ClosingTopic::lien;
    lien.cost = support::euro(1'200);
    lien.payer = facts::ClosingPayer::seller;
    lien.until = base::add_days(hand_today, -1);
    state.money.closing.push_back({lien, hand_today, {}});
    CHECK(untold() == 7);
    REQUIRE(view().told.size() == 2);
    CHECK(base::say(view().told[1], {}) == "Open, paid by the seller: 1,200.00\u00a0EUR");
    CHECK(view().blocks.front().rows.front().lines.front().word == base::Word::closing_over);
    state.money.closing.front().said.settled = true;
    CHECK(view().told.size() == 1);
}

TEST_CASE("side by side the one that is missing least stands first, and what ties the others",
          "[views][sale]") {
    const auto made = [](const char* registration, std::int64_t left) {
        timeline::AircraftState state = hand_state();
        state.registration = registration;
        state.id = base::Id{};
        add_item(state, facts::ItemRole::overhaul, base::hours(left), {});
        state.campaign.costs.sum = support::euro(220'000);
        return views::assess(state, hand_today);
    };
    const views::Assessed low = made("LOW", 200);
    const views::Assessed high = made("HIGH", 600);
    const auto view = views::make_compare_view({&low, &high}, base::hours(100));
    REQUIRE(view.blocks.front().rows.size() == 2);
    CHECK(base::say(view.blocks.front().rows.front().name, {}) == "HIGH");
    const auto& behind = view.blocks.front().rows.back();
    CHECK(behind.lines.back().word == base::Word::compare_tie);
    // By hand: 200 h of 500 h are left; 2/5 of 220,000 is 88,000, and 132,000 are missing.
    CHECK(base::say(behind.lines.front(), {}) == "An overhaul today: 220,000\u00a0EUR");
    CHECK(base::say(behind.figure, {}) == "132,000\u00a0EUR");
    CHECK(views::make_compare_view({}, std::nullopt).missing.word == base::Word::compare_nothing);
    // Without a sum nothing is ranked, and it says so.
    views::Assessed bare = made("BARE", 300);
    bare.state.campaign.costs.sum.reset();
    const auto both = views::make_compare_view({&bare, &low}, base::hours(100));
    CHECK(base::say(both.blocks.front().rows.back().name, {}) == "BARE");
}
