// A sum of hours in a why adds up as it is printed, whatever the readings are given in.
#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"
#include "tests/support/random.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/make_views.hpp"

using namespace twoclocks;
using base::FlightTime;
using base::Word;
using facts::Fact;
using support::day;
using support::Hangar;

namespace {

/// Seconds of a printed figure: 9.9, 1,234.56, 9:54 or −0:51:36. Read here by hand, not by the
/// engine.
std::int64_t seconds_of(const std::string& printed) {
    const std::string minus = "−";
    const bool negative = printed.starts_with(minus);
    std::vector<std::string> runs{""};
    char sign = 0;
    for (const char letter : printed.substr(negative ? minus.size() : 0)) {
        if (letter == ',') continue;
        if (letter == '.' || letter == ':') {
            sign = letter;
            runs.emplace_back();
        } else {
            REQUIRE((letter >= '0' && letter <= '9'));
            runs.back() += letter;
        }
    }
    std::int64_t out = std::stoll(runs.at(0)) * 3600;
    if (sign == '.') {
        REQUIRE(runs.size() == 2);
        REQUIRE((runs[1].size() == 1 || runs[1].size() == 2));
        out += std::stoll(runs[1]) * (runs[1].size() == 1 ? 360 : 36);
    } else if (sign == ':') {
        REQUIRE((runs.size() == 2 || runs.size() == 3));
        out += std::stoll(runs[1]) * 60;
        if (runs.size() == 3) out += std::stoll(runs[2]);
    }
    return negative ? -out : out;
}

/// What stands before, between and after the marks of `a − (b − c) = d h.`
std::vector<std::string> terms_of(std::string text) {
    std::vector<std::string> out;
    for (const char* mark : {" − (", " − ", ") = ", " h."}) {
        const std::size_t place = text.find(mark);
        REQUIRE(place != std::string::npos);
        out.push_back(text.substr(0, place));
        text.erase(0, place + std::string{mark}.size());
    }
    CHECK(text.empty());
    return out;
}

struct Explained {
    std::string figure;
    std::vector<std::string> lines;
    std::string sum;
    std::string after_sum;
};

/// The check of the hangar, done at one total, limited, and read at another.
Explained hours_why(FlightTime limit, FlightTime done_at, FlightTime read) {
    Hangar h;
    facts::LimitSet limits;
    limits.hours = limit;
    facts::WorkDone work = support::renews({h.check.id}, 0);
    work.total = done_at;
    facts::Reading reading;
    reading.reads = read - base::hours(1000);
    facts::Journal journal =
        support::journal_of({h.aircraft,
                             h.meter,
                             h.overhaul,
                             h.overhaul_limit,
                             h.check,
                             h.ann.write(day("2024-01-01"), h.with(h.check), limits),
                             h.ann.write(day("2024-02-01"), {h.id()}, work),
                             h.ann.write(day("2024-06-30"), h.with(h.meter), reading)});
    const auto view = views::make_aircraft_view(
        views::assess(timeline::replay(journal, h.id(), h.today), h.today));
    Explained out;
    for (const views::DueRow& row : view.due) {
        if (row.item != h.check.id) continue;
        out.figure = base::say(row.hours_left->text, {});
        const auto& lines = row.hours_left->why.lines;
        for (std::size_t place = 0; place < lines.size(); ++place) {
            out.lines.push_back(base::say(lines[place].text, {}));
            if (lines[place].text.word != Word::why_hours_sum) continue;
            out.sum = out.lines.back();
            out.after_sum = base::say(lines.at(place + 1).text, {});
        }
    }
    REQUIRE_FALSE(out.sum.empty());
    return out;
}

FlightTime clock(std::int64_t whole_hours, std::int64_t minutes) {
    return base::hours(whole_hours) + FlightTime{minutes * 60};
}

}  // namespace

TEST_CASE("whole tenths are summed in tenths and need no word on rounding", "[views][why][sum]") {
    const Explained said = hours_why(base::hours(100), base::tenths(11'200), base::tenths(11'603));
    CHECK(said.sum == "100.0 − (1,160.3 − 1,120.0) = 59.7 h.");
    CHECK(said.after_sum == "Source not given. Check the approved maintenance data.");
}

TEST_CASE("readings in minutes are summed in minutes, and what is shown is said",
          "[views][why][sum]") {
    // Cut one by one these terms are 10.0 − (1,001.2 − 1,000.8) and the figure is 9.6.
    const Explained said = hours_why(base::hours(10), clock(1000, 49), clock(1001, 8));
    CHECK(said.sum == "10:00 − (1,001:08 − 1,000:49) = 9:41 h.");
    CHECK(said.after_sum == "Shown as 9.6 h, rounded down.");
    CHECK(said.figure == "9.6 h");
    CHECK(said.lines.at(0) == "The limit is 10:00 h.");
    CHECK(said.lines.at(1) == "Total time is 1,001:08 h, recorded on 30 Jun 2024.");
    CHECK(said.lines.at(2) == "It counts from 1,000:49 h, when the work was done.");
    const Explained even = hours_why(base::hours(10), clock(1000, 49), clock(1001, 1));
    CHECK(even.sum == "10:00 − (1,001:01 − 1,000:49) = 9:48 h.");
    CHECK(even.after_sum == "Shown as 9.8 h.");
    const Explained over = hours_why(base::hours(10), base::hours(1000), clock(1010, 1));
    CHECK(over.sum == "10:00 − (1,010:01 − 1,000:00) = −0:01 h.");
    CHECK(over.after_sum == "Shown as −0.1 h, rounded down.");
}

TEST_CASE("hundredths are summed in hundredths, and a mixture in seconds", "[views][why][sum]") {
    const FlightTime hundredth{36};
    CHECK(hours_why(base::hours(10), base::hours(1000), base::hours(1001) + hundredth).sum ==
          "10.00 − (1,001.01 − 1,000.00) = 8.99 h.");
    CHECK(hours_why(base::hours(10), clock(1000, 1), base::hours(1001) + hundredth).sum ==
          "10:00:00 − (1,001:00:36 − 1,000:01:00) = 9:00:24 h.");
}

TEST_CASE("total time says what is rounded up", "[views][why][sum]") {
    Hangar h;
    facts::Reading reading;
    reading.reads = clock(165, 1);
    facts::Journal journal = h.journal;
    journal.add(h.ann.write(day("2024-06-20"), h.with(h.meter), reading));
    const auto view = views::make_aircraft_view(
        views::assess(timeline::replay(journal, h.id(), h.today), h.today));
    std::string lines;
    for (const views::WhyLine& line : view.total_time.why.lines)
        lines += base::say(line.text, {}) + '\n';
    CHECK(lines ==
          "Total time is 1,165:01 h, recorded on 20 Jun 2024.\n"
          "Total = meter + offset: Collective meter read 0:00 h when the total was 1,000:00 h.\n"
          "Shown as 1,165.1 h, rounded up.\n");
    CHECK(base::say(view.total_time.text, {}) == "1,165.1 h total, read 20 Jun 2024");
}

TEST_CASE("sums of random readings add up exactly as they are printed",
          "[views][why][sum][properties]") {
    constexpr std::int32_t cases = 400;
    support::Random random{1};
    for (std::int32_t left = cases; left > 0; --left) {
        // Minutes, hundredths, seconds, or each term its own.
        const auto unit = [&]() -> std::int64_t {
            constexpr std::int64_t units[] = {60, 60, 36, 1};
            return units[random.between(0, 3)];
        };
        const std::int64_t shared = unit();
        const bool mixed = random.once_in(4);
        const auto time = [&](std::int64_t least, std::int64_t most) {
            const std::int64_t step = mixed ? unit() : shared;
            return FlightTime{random.between(least * 3600 / step, most * 3600 / step) * step};
        };
        const Explained said = hours_why(time(1, 300), time(1000, 1100), time(1100, 1500));
        CAPTURE(said.sum, said.after_sum, said.figure);
        const std::vector<std::string> terms = terms_of(said.sum);
        const std::int64_t shown = seconds_of(terms[3]);
        REQUIRE(seconds_of(terms[0]) - (seconds_of(terms[1]) - seconds_of(terms[2])) == shown);
        // The figure is the sum, cut down to the tenth: never more, and less than a tenth below.
        const std::int64_t figure = seconds_of(said.figure.substr(0, said.figure.size() - 2));
        REQUIRE(figure <= shown);
        REQUIRE(shown - figure < 360);
        const bool says_it = said.after_sum.starts_with("Shown as " + said.figure);
        REQUIRE((says_it || terms[0].find(':') == std::string::npos));
        REQUIRE(said.after_sum.ends_with("rounded down.") == (figure != shown));
    }
}
