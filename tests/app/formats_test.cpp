// Files of every format that was ever written are read for good: see tests/formats/README.md.
#include "catch_amalgamated.hpp"
#include "tests/support/canvas_page.hpp"
#include "wasm/app/ledger.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/facts/binary.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/part_views.hpp"

namespace {

using namespace twoclocks;
using canvas::Ledger;
using facts::Journal;

const std::string folder = HOUSE_ROOT "/tests/formats/";

std::string bytes_of(const std::string& name) {
    CAPTURE(name);
    std::string bytes = canvas::support::bytes_of(folder + name);
    REQUIRE_FALSE(bytes.empty());
    return bytes;
}

/// A journal file that is read whole, without a word about it.
Journal read_whole(const std::string& name) {
    const facts::Parsed parsed = facts::parse_journal(bytes_of(name));
    CAPTURE(name);
    CHECK(parsed.problems.empty());
    CHECK_FALSE(parsed.newer);
    Journal journal;
    for (const facts::Fact& fact : parsed.facts)
        journal.add(fact);
    CHECK(journal.facts().size() == parsed.facts.size());
    return journal;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> out;
    std::size_t from = 0;
    for (std::size_t end = text.find('\n'); end != std::string::npos;
         from = end + 1, end = text.find('\n', from))
        out.push_back(text.substr(from, end - from));
    return out;
}

std::string aircraft_says(const Journal& journal, const std::string& registration) {
    constexpr base::Date today{20'782};  // 2026-11-25
    for (const base::Id& id : journal.aircraft()) {
        const auto one = views::assess_recorded(journal, id, today);
        if (!one || one->state.registration != registration) continue;
        const views::AircraftView view = views::make_aircraft_view(*one);
        return base::say(view.total_time.text, {}) + "; " + base::say(view.hours_left.text, {}) +
               "; " + base::say(view.calendar_left.text, {});
    }
    return "not there";
}

/// What a browser stored, save by save.
std::vector<std::string> segments_of(std::uint32_t version) {
    std::vector<std::string> out;
    for (const char number : {'1', '2', '3', '4'})
        out.push_back(
            bytes_of("stored_" + std::to_string(version) + "/segment_" + number + ".txt"));
    return out;
}

}  // namespace

TEST_CASE("a journal of an earlier program is read whole and printed as it was",
          "[formats][journal]") {
    for (std::int64_t version = 1; version <= facts::journal_version; ++version) {
        const std::string of = "journal_" + std::to_string(version) + '/';
        for (const char* name : {"first_fleet.jsonl", "fleet_with_parts.jsonl"}) {
            CAPTURE(version, name);
            CHECK(facts::print_journal(read_whole(of + name)) == bytes_of(of + name));
        }
    }
}

TEST_CASE("a record of every kind is read as that kind, and printed as it was written",
          "[formats][journal]") {
    const facts::Parsed parsed = facts::parse_journal(bytes_of("journal_1/every_kind.jsonl"));
    CHECK(parsed.problems.empty());
    const std::vector<std::string> lines = lines_of(bytes_of("journal_1/every_kind.jsonl"));
    REQUIRE(parsed.facts.size() + 1 == lines.size());
    std::int32_t newer = 0;
    for (std::size_t place = 0; place < parsed.facts.size(); ++place) {
        const facts::Fact& fact = parsed.facts[place];
        CHECK(facts::print_fact(fact) == lines[place + 1]);
        newer += std::holds_alternative<facts::UnknownKind>(fact.body.fields) ? 1 : 0;
    }
    CHECK(newer == 0);
}

TEST_CASE("an earlier journal still says what it said", "[formats][journal]") {
    // By hand from the file, 25 Nov 2026. The second meter began at 316.3 h and read 326.0:
    // 642.3 h of 2,200. New 19 Nov 2021, 144 months: 19 Nov 2033, six years and 359 days on.
    CHECK(aircraft_says(read_whole("journal_1/first_fleet.jsonl"), "ISLE-2") ==
          "642.3 h total, read 10 Oct 2026; 1,557.7 h; 6 y 359 d");
    const Journal parts = read_whole("journal_1/fleet_with_parts.jsonl");
    // 436.8 h when it was put away; new 10 Feb 2021: 10 Feb 2033, six years and 77 days on.
    CHECK(aircraft_says(parts, "ISLE-5") == "436.8 h total, read 12 Nov 2026; 1,763.2 h; 6 y 77 d");
    // A gearbox that flew on two aircraft: 205.5 + (548.8 - 428.0) + (436.8 - 205.5).
    for (const base::Id& id : parts.parts()) {
        const auto view = views::part_history(parts, id, base::Date{20'782});
        if (base::say(view.name, {}).find("TG-0117") == std::string::npos) continue;
        CHECK(base::say(view.since_new.text, {}) == "557.6 h since new");
    }
}

TEST_CASE("what a browser stored is taken in whole, whatever version it was", "[formats][stored]") {
    for (std::uint32_t version = 1; version <= facts::binary_version; ++version) {
        CAPTURE(version);
        Ledger ledger;
        std::vector<std::string> lines;
        for (const std::string& segment : segments_of(version)) {
            CHECK(ledger.take_in(segment).empty());
            const std::vector<std::string> all = lines_of(segment);
            // The second import is set aside; its lines are kept and not counted.
            if (all.front().find("stale.jsonl") == std::string::npos)
                lines.insert(lines.end(), all.begin() + 1, all.end());
        }
        REQUIRE(ledger.batches().size() == 2);
        CHECK(ledger.batches()[1].aside);
        CHECK(ledger.batches()[0].file_name == "workshop copy.jsonl");
        const std::string printed = facts::print_journal(ledger.visible());
        CHECK(ledger.visible().facts().size() == lines.size());
        for (const std::string& line : lines)
            CHECK(printed.find(line + '\n') != std::string::npos);
    }
}

TEST_CASE("a snapshot of this version is read to the byte, an older one is refused whole",
          "[formats][stored]") {
    for (std::uint32_t version = 1; version <= facts::binary_version; ++version) {
        CAPTURE(version);
        const std::string bytes = bytes_of("stored_" + std::to_string(version) + "/snapshot.bin");
        Ledger ledger;
        const bool taken = ledger.take_snapshot(bytes);
        CHECK(taken == (version == facts::binary_version));
        if (!taken) {
            CHECK(ledger.own().empty());
            CHECK(ledger.batches().empty());
            continue;
        }
        Ledger replayed;
        for (const std::string& segment : segments_of(version))
            CHECK(replayed.take_in(segment).empty());
        CHECK(facts::print_journal(ledger.visible()) == facts::print_journal(replayed.visible()));
        CHECK(replayed.snapshot() == bytes);
        CHECK(ledger.snapshot() == bytes);
    }
}
