#include "engine/facts/journal.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <string>
#include <vector>

#include "engine/base/hash.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using facts::Stamp;
using support::day;
using support::id_of;
using support::Pen;
using support::reads;

namespace {

constexpr std::int64_t now_ms = 1'700'000'000'000;

Fact with_stamp(Fact fact, Stamp stamp) {
    fact.stamp = std::move(stamp);
    return fact;
}

std::string texts(const std::vector<const Fact*>& facts) {
    std::string out;
    for (const Fact* fact : facts)
        out += std::get<facts::Note>(fact->body.fields).text;
    return out;
}

}  // namespace

TEST_CASE("a fact is added once, however often it comes", "[facts][journal]") {
    Pen pen{"ann"};
    const Fact fact = pen.write(day("2026-05-03"), {id_of(1), id_of(2)}, reads(10));
    Journal journal;
    CHECK(journal.add(fact));
    CHECK_FALSE(journal.add(fact));
    CHECK(journal.facts().size() == 1);
    CHECK(journal.about(id_of(1)).size() == 1);
    CHECK(journal.about(id_of(2)).size() == 1);
    CHECK(journal.about(id_of(3)).empty());
}

TEST_CASE("one id with two bodies keeps both and says so", "[facts][journal]") {
    Pen pen{"ann"};
    const Fact fact = pen.write(day("2026-05-03"), {id_of(1), id_of(2)}, reads(10));
    Fact twin = fact;
    twin.body.fields = reads(11);
    Journal journal;
    CHECK(journal.add(fact));
    CHECK_FALSE(journal.id_is_shared(fact.id));
    CHECK(ref_to(journal, fact).content == 0);
    CHECK(journal.add(twin));
    CHECK_FALSE(journal.add(twin));
    CHECK(journal.id_is_shared(fact.id));
    CHECK(journal.with_id(fact.id).size() == 2);
    CHECK(ref_to(journal, fact).content == facts::content_of(fact));
    CHECK(names(ref_to(journal, fact), fact));
    CHECK_FALSE(names(ref_to(journal, fact), twin));
    CHECK(names({fact.id, 0}, twin));
    CHECK_FALSE(names({id_of(9), 0}, fact));
}

TEST_CASE("a content is the head of the line's fingerprint, and never nothing",
          "[facts][journal]") {
    Pen pen{"ann"};
    const Fact fact = pen.write(day("2026-05-03"), {id_of(1), id_of(2)}, reads(10));
    const std::string hex = base::print_hex(base::sha256(facts::print_fact(fact)));
    CHECK(facts::print_ref({fact.id, facts::content_of(fact)}) ==
          base::print_id(fact.id) + '/' + hex.substr(0, 16));
    CHECK(facts::print_ref({fact.id, 0}) == base::print_id(fact.id));
}

TEST_CASE("facts stand by stamp, then id, then content", "[facts][journal]") {
    Pen pen{"ann"};
    const Fact plain = pen.write(day("2026-05-03"), {}, facts::Note{"x"});
    const auto make = [&](const char* text, std::uint64_t id, Stamp stamp) {
        Fact out = with_stamp(plain, std::move(stamp));
        out.id = id_of(id);
        out.body.fields = facts::Note{text};
        return out;
    };
    // In the order they must come out: wall, tick, device, id, content.
    const std::vector<Fact> sorted{make("a", 9, {1, 5, "z"}),
                                   make("b", 8, {2, 0, "z"}),
                                   make("c", 7, {2, 1, "a"}),
                                   make("d", 6, {2, 1, "b"}),
                                   make("e", 7, {2, 1, "b"}),
                                   make("f", 7, {2, 1, "b"})};
    Journal forwards = support::journal_of(sorted);
    Journal backwards = support::journal_of({sorted.rbegin(), sorted.rend()});
    CHECK(texts(forwards.in_order()) == "abcdef");
    CHECK(texts(backwards.in_order()) == "abcdef");
    CHECK(print_journal(forwards) == print_journal(backwards));
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        for (std::size_t j = 0; j < sorted.size(); ++j) {
            CAPTURE(i, j);
            CHECK(comes_before(sorted[i], sorted[j]) == (i < j));
        }
    }
}

TEST_CASE("the fingerprint is that of the canonical export", "[facts][journal]") {
    CHECK(facts::print_journal({}) == facts::print_header() + "\n");
    CHECK(facts::fingerprint({}) == base::print_hex(base::sha256("{\"journal\":\"twoclocks\","
                                                                 "\"version\":1}\n")));
    const std::string text = support::file_text("demo/fleet.jsonl");
    CHECK(fingerprint(support::journal_from(text)) == base::print_hex(base::sha256(text)));
}

TEST_CASE("corrections, withdrawals and answers are found by what they name", "[facts][journal]") {
    Pen pen{"ann"};
    const Fact reading = pen.write(day("2026-05-03"), {id_of(1), id_of(2)}, reads(10));
    const Fact correction = pen.correct(reading, reads(11));
    const Fact withdrawal = pen.withdraw(reading);
    const Fact answer = pen.answer(id_of(1), {{reading.id, 0}, {correction.id, 0}}, {});
    const Journal journal = support::journal_of({answer, withdrawal, correction, reading});
    CHECK(journal.naming(reading.id).size() == 3);
    CHECK(journal.naming(correction.id).size() == 1);
    CHECK(journal.naming(withdrawal.id).empty());
}

TEST_CASE("a correction is about what it puts in place, too", "[facts][journal]") {
    Pen pen{"ann"};
    const Fact reading = pen.write(day("2026-05-03"), {id_of(1), id_of(2)}, reads(10));
    const Fact moved =
        pen.correct(reading, support::body(day("2026-05-03"), {id_of(3), id_of(4)}, reads(10)));
    const Journal journal = support::journal_of({reading, moved});
    CHECK(journal.about(id_of(1)).size() == 2);
    CHECK(journal.about(id_of(3)).size() == 1);
    CHECK(journal.about(id_of(4)).size() == 1);
}

TEST_CASE("aircraft are listed once, in order of id", "[facts][journal]") {
    Pen pen{"ann"};
    const Fact first = pen.add(day("2026-05-03"), {}, facts::AircraftAdded{"B", {}, {}, {}, {}});
    const Fact second = pen.add(day("2026-05-03"), {}, facts::AircraftAdded{"A", {}, {}, {}, {}});
    Fact twin = first;
    twin.body.fields = facts::AircraftAdded{"C", {}, {}, {}, {}};
    const Journal journal = support::journal_of({second, twin, first});
    CHECK(journal.aircraft() == std::vector<base::Id>{first.id, second.id});
}

TEST_CASE("the next stamp comes after everything that was seen", "[facts][stamp]") {
    struct Row {
        const char* name;
        Stamp seen;
        std::int64_t wall_ms;
        Stamp next;
    };

    constexpr std::int64_t far = facts::far_ahead_ms;
    for (const Row& row : {
             Row{"our clock is ahead", {now_ms - 1, 7, "b"}, now_ms, {now_ms, 0, "a"}},
             Row{"the same millisecond", {now_ms, 7, "b"}, now_ms, {now_ms, 8, "a"}},
             Row{"our clock is behind", {now_ms + 1, 7, "b"}, now_ms, {now_ms + 1, 8, "a"}},
             Row{"a day behind", {now_ms + far, 7, "b"}, now_ms, {now_ms + far, 8, "a"}},
             Row{"more than a day", {now_ms + far + 1, 7, "b"}, now_ms, {now_ms, 0, "a"}},
             Row{"the last tick", {now_ms, INT32_MAX, "b"}, now_ms, {now_ms + 1, 0, "a"}},
         }) {
        CAPTURE(row.name);
        const Stamp next = facts::next_stamp(row.seen, row.wall_ms, "a");
        CHECK(next.wall_ms == row.next.wall_ms);
        CHECK(next.tick == row.next.tick);
        CHECK(next.device == "a");
        if (row.seen.wall_ms <= row.wall_ms + far) CHECK(facts::earlier(row.seen, next));
    }
}

TEST_CASE("a stamp far ahead is kept and does not advance ours", "[facts][stamp]") {
    Pen pen{"ann"};
    const Fact plain = pen.write(day("2026-05-03"), {}, facts::Note{"x"});
    Journal journal;
    CHECK(facts::latest_stamp(journal, now_ms).wall_ms == 0);
    const auto add = [&](std::uint64_t id, std::int64_t wall_ms) {
        Fact fact = with_stamp(plain, {wall_ms, 0, "ann"});
        fact.id = id_of(id);
        REQUIRE(journal.add(fact));
    };
    add(1, now_ms + facts::far_ahead_ms + 1);
    CHECK(facts::latest_stamp(journal, now_ms).wall_ms == 0);
    add(2, now_ms - 5);
    CHECK(facts::latest_stamp(journal, now_ms).wall_ms == now_ms - 5);
    add(3, now_ms + facts::far_ahead_ms);
    CHECK(facts::latest_stamp(journal, now_ms).wall_ms == now_ms + facts::far_ahead_ms);
    CHECK(journal.facts().size() == 3);
}
