// What people read of a stored aircraft: states, sentences, what is due on return, and why.
#include "tests/support/stored.hpp"

#include <algorithm>

#include "engine/base/region.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/return_view.hpp"

using namespace twoclocks;
using facts::InForce;
using support::day;
using support::Stored;
using views::Assessed;
using views::State;

namespace {

Assessed assess(const Stored& s, const char* on = "2024-07-01") {
    return views::assess(s.state(on), day(on));
}

State state_of(const Stored& s, const facts::Fact& item, const char* on = "2024-07-01") {
    const Assessed assessed = assess(s, on);
    for (std::size_t place = 0; place < assessed.items.size(); ++place) {
        if (assessed.items[place].item == item.id) return assessed.item_states[place];
    }
    FAIL("the item is not there");
    return State::unknown;
}

std::string answer(const Stored& s, const char* on = "2024-07-01") {
    return base::say(views::make_aircraft_view(assess(s, on)).answer.text, {});
}

/// Every line of every why of an aircraft.
std::string whys(const Stored& s) {
    std::string out;
    for (const views::Why& why : views::whys_of(views::make_aircraft_view(assess(s)))) {
        for (const views::WhyLine& line : why.lines)
            out += base::say(line.text, {}) + '\n';
    }
    return out;
}

bool has(const std::string& text, const char* words) {
    return text.find(words) != std::string::npos;
}

std::vector<std::string> stops_on(const Stored& s, const char* on) {
    std::vector<std::string> out;
    const views::ReturnView view = views::make_return_view(assess(s), day(on));
    for (const views::ReturnGroup& group : view.groups) {
        if (group.title.word != base::Word::return_before) continue;
        for (const views::DueRow& row : group.rows)
            out.push_back(row.name);
    }
    return out;
}

}  // namespace

TEST_CASE("a check in storage that was not done is over where it stands", "[views][storage]") {
    Stored s;
    const facts::Fact turned = s.item(InForce::in_storage, 14);
    s.stored("2024-06-02");
    CHECK(state_of(s, turned, "2024-06-01") == State::nothing_due);
    CHECK(state_of(s, turned, "2024-06-16") == State::due);
    CHECK(state_of(s, turned, "2024-06-17") == State::over);
    CHECK(answer(s, "2024-06-17") == "Over: Told was to be done in storage by 16 Jun 2024.");
    s.work(turned, "2024-06-17");
    CHECK(state_of(s, turned, "2024-06-17") == State::due);
}

TEST_CASE("what falls due in storage is before the next flight, and over once flown",
          "[views][storage]") {
    Stored s;
    const facts::Fact always = s.item(InForce::always, 160);  // ends 2024-06-09
    s.stored("2024-06-02", "2024-06-20");
    CHECK(state_of(s, always, "2024-06-09") == State::due);
    CHECK(state_of(s, always, "2024-06-10") == State::before_next_flight);
    CHECK(state_of(s, always) == State::before_next_flight);
    s.keep(s.read(s.ann, "2024-06-21", 1601));
    CHECK(state_of(s, always) == State::over);
}

TEST_CASE("a check on return stops the first flight, and flying without it is over",
          "[views][storage]") {
    Stored s;
    const facts::Fact back = s.item(InForce::on_return, 30);
    s.stored("2024-06-02");
    CHECK(state_of(s, back) == State::before_next_flight);
    CHECK(answer(s) == "Before next flight: Told, after storage.");
    Stored flown;
    const facts::Fact done = flown.item(InForce::on_return, 30);
    flown.stored("2024-06-02", "2024-06-20");
    CHECK(state_of(flown, done) == State::before_next_flight);
    flown.keep(flown.read(flown.ann, "2024-06-20", 1601));
    CHECK(state_of(flown, done) == State::over);
    CHECK(answer(flown) == "Over: it has flown since storage without Told.");
    flown.work(done, "2024-06-19");
    CHECK(state_of(flown, done) == State::nothing_due);
}

TEST_CASE("a check in storage is no stop of flying", "[views][storage]") {
    Stored s;
    s.item(InForce::in_storage, 40);
    s.stored("2024-06-02");
    const Assessed assessed = assess(s);
    REQUIRE(assessed.first.has_value());
    CHECK(assessed.items[static_cast<std::size_t>(assessed.first->item)].name != "Told");
}

TEST_CASE("what asks for nothing is not among what is due, and the checks still show it",
          "[views][storage]") {
    Stored s;
    s.item(InForce::in_storage, 14);
    const auto named = [&] {
        const auto view = views::make_aircraft_view(assess(s));
        return std::count_if(
            view.due.begin(), view.due.end(), [](const auto& row) { return row.name == "Told"; });
    };
    CHECK(named() == 0);
    CHECK(views::make_aircraft_view(assess(s)).storage.empty());
    s.stored("2024-06-25");
    CHECK(named() == 1);
    const auto view = views::make_aircraft_view(assess(s));
    REQUIRE(view.storage.size() == 1);
    CHECK(base::say(view.storage.front(), {}) ==
          "Stored since 25 Jun 2024, by Manual, chapter 10.");
    CHECK(view.can_return);
}

TEST_CASE("on return everything that has run out by that day stands before the next flight",
          "[views][storage]") {
    Stored s;
    s.item(InForce::in_storage, 14);  // ends with the storage
    const facts::Fact back = s.item(InForce::on_return, 30);
    s.stored("2024-06-02");
    // The check of 12 months from 2024-04-01 ends on 2025-04-01.
    CHECK(stops_on(s, "2025-04-01") == std::vector<std::string>{"Told"});
    CHECK(stops_on(s, "2025-04-02") == std::vector<std::string>{"Check", "Told"});
    s.work(back, "2024-06-30");
    CHECK(stops_on(s, "2024-07-30").empty());
    CHECK(stops_on(s, "2024-07-31") == std::vector<std::string>{"Told"});
    CHECK(views::make_return_view(assess(s), day("2024-07-30")).is_empty);
    // A day before today is today.
    const auto early = views::make_return_view(assess(s), day("2024-06-01"));
    CHECK(base::say(early.summary, {}) == "If back on 1 Jul 2024: 0 checks before the next flight");
}

TEST_CASE("on return stands what happened, and the day on record is asked first",
          "[views][storage]") {
    Stored s;
    s.stored("2024-06-02", "2024-09-01");
    CHECK(base::print_date(views::usual_return(assess(s))) == "2024-09-01");
    CHECK(base::print_date(views::usual_return(assess(Stored{}))) == "2024-07-01");
    s.keep(s.ann.write(day("2024-05-30"), {s.id()}, facts::Event{}));
    CHECK(views::make_return_view(assess(s), day("2024-09-01")).events.size() == 1);
}

TEST_CASE("every why names storage, hours not counted and kinds of flying with their documents",
          "[views][storage][adjust][factor]") {
    Stored s;
    s.item(InForce::in_storage, 14);
    s.item(InForce::on_return, 30);
    s.stored("2024-06-25");
    s.adjusted("2024-06-10",
               {facts::AdjustReason::dead, base::hours(12), base::tenths(1600), {}, {}});
    s.keep(s.ann.write(day("2024-06-10"),
                       {s.id()},
                       facts::FlownAs{facts::Operation::agricultural, {}, base::hours(10), {}}));
    CHECK(has(base::say(views::make_aircraft_view(assess(s)).cautions.back(), {}), "as flown"));
    s.keep(s.ann.write(day("2024-06-10"),
                       {s.id()},
                       facts::HoursFactor{facts::Operation::agricultural, 1500, "Letter 7", {}}));
    const std::string text = whys(s);
    for (const char* words :
         {"It counts from 25 Jun 2024, when storage began.",
          "It holds while stored",
          "Stored since 25 Jun 2024, and not back yet",
          "It is to be done once after each storage",
          "It holds 12.0 h that the meter did not count, added on 10 Jun 2024: meter was dead. "
          "Source: Flight log.",
          "10.0 h of agricultural flying count 1.5 times, so 5.0 h more. Source: Letter 7.",
          "100.0 − (1,172.0 − 1,120.0) − 5.0 = 43.0 h."}) {
        CAPTURE(words, text);
        CHECK(has(text, words));
    }
    s.keep(s.read(s.ann, "2024-06-24", 1600));
    CHECK(has(whys(s), "It holds 12.0 h"));
}

TEST_CASE("storage without its document says so", "[views][storage]") {
    Stored s;
    facts::OutOfService bare;
    bare.stored = true;
    s.keep(s.ann.write(day("2024-06-25"), {s.id()}, bare));
    const auto view = views::make_aircraft_view(assess(s));
    const bool told =
        std::any_of(view.cautions.begin(), view.cautions.end(), [](const auto& caution) {
            return caution.word == base::Word::caution_storage_source;
        });
    CHECK(told);
    CHECK(base::say(view.storage.front(), {}) == "Stored since 25 Jun 2024. Source not given.");
}
