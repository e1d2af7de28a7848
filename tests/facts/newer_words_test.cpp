// A word that this version does not know, in a kind that it knows: a newer minor version wrote it.
// Its record is kept and printed back as it was, and its aircraft shows unknown.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <string>
#include <vector>

#include "engine/facts/binary.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"
#include "engine/timeline/state.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::UnknownKind;

namespace {

const std::string aircraft_id = "018c3f8a-0001-7000-8000-000000000001";
const std::string second_id = "018c3f8a-0002-7000-8000-000000000002";

std::string record(const std::string& kind, const std::string& fields) {
    return R"({"id":"018c3f8a-0003-7000-8000-000000000003","kind":")" + kind +
           R"(","on":"2026-05-03","at":1700000000003,"tick":0,"device":"d","about":[")" +
           aircraft_id + R"(",")" + second_id + R"("],)" + fields + "}";
}

struct NewWord {
    std::string kind;
    std::string fields;
    std::string field;  // that holds the word
};

/// Every field that holds one of a list of words, each with one that is on no list yet; the fields
/// stand in the order in which a version that knows the word prints them.
std::vector<NewWord> new_words() {
    const std::string limit = R"("class":"programme","hours":3600,"calendar_rule":"exact",)";
    return {
        {"limit", R"("class":"advised","calendar_rule":"exact","anchor":"unknown")", "class"},
        {"limit",
         R"("class":"programme","hours":3600,"calendar_rule":"fortnight","anchor":"unknown")",
         "calendar_rule"},
        {"limit",
         limit + R"("anchor":"sale","anchor_on":"2020-01-01","source":"Manual")",
         "anchor"},
        {"limit", limit + R"("anchor":"sale","Zeta":{"b":[1]},"grace":[true])", "anchor"},
        {"limit", limit + R"("anchor":"unknown","carry_over":"from_plan")", "carry_over"},
        {"limit", limit + R"("anchor":"unknown","combine":"second","cap_hours":9)", "combine"},
        {"meter", R"("name":"Hobbs","drive":"airflow","reads":5,"total":5)", "drive"},
        {"item", R"("name":"Blades","role":"rotor","chapter":"62")", "role"},
        {"work",
         R"("what":"Annual","renews":[{"item":")" + second_id +
             R"(","clocks":["hours","cycles"],"grade":1}],"total":5)",
         "clocks"},
        // A field that cannot be is no fault of a record that is not understood.
        {"meter", R"("drive":"airflow","reads":"none","total":-5)", "drive"},
        {"correction",
         R"("replaces":")" + second_id + R"(","why":"Misread","instead":{"kind":"meter",)" +
             R"("on":"2026-05-03","about":[")" + aircraft_id + R"(",")" + second_id +
             R"("],"drive":"airflow","reads":5,"total":5})",
         "drive"},
    };
}

const facts::Body& body_in(const Fact& fact) {
    const auto* correction = std::get_if<facts::Correction>(&fact.body.fields);
    return correction != nullptr ? *correction->instead : fact.body;
}

}  // namespace

TEST_CASE("a record with a newer word is kept and printed back to the same bytes",
          "[facts][newer]") {
    for (const NewWord& row : new_words()) {
        const std::string text = record(row.kind, row.fields);
        CAPTURE(text);
        base::Problems cautions;
        const base::Result<Fact> read = facts::parse_fact(text, 7, cautions);
        REQUIRE(read.ok());
        CHECK(facts::print_fact(read.value()) == text);
        CHECK(std::holds_alternative<UnknownKind>(body_in(read.value()).fields));
        REQUIRE(cautions.size() == 1);
        CHECK(cautions.front().code == base::Trouble::word_newer);
        CHECK(cautions.front().severity == base::Severity::caution);
        CHECK(cautions.front().line == 7);
        CHECK(cautions.front().field == row.field);
        // Without a place for cautions it is kept all the same.
        CHECK(facts::print_fact(facts::parse_fact(text, 7).value()) == text);
    }
}

TEST_CASE("a record with a newer word survives the snapshot", "[facts][newer][binary]") {
    std::string bytes;
    for (const NewWord& row : new_words())
        facts::write_binary(facts::parse_fact(record(row.kind, row.fields), 1).value(), bytes);
    std::string_view in = bytes;
    for (const NewWord& row : new_words()) {
        CAPTURE(row.kind, row.fields);
        Fact fact;
        REQUIRE(facts::read_binary(in, fact));
        CHECK(facts::print_fact(fact) == record(row.kind, row.fields));
        CHECK(std::holds_alternative<UnknownKind>(body_in(fact).fields));
    }
    CHECK(in.empty());
}

TEST_CASE("a newer word does not excuse what every record must have", "[facts][newer]") {
    std::string text = record("meter", R"("drive":"airflow","reads":5,"total":5)");
    const std::string on = R"("on":"2026-05-03")";
    text.replace(text.find(on), on.size(), R"("on":"2026-02-30")");
    base::Problems cautions;
    const base::Result<Fact> read = facts::parse_fact(text, 7, cautions);
    REQUIRE_FALSE(read.ok());
    REQUIRE(read.problems().size() == 1);
    CHECK(read.problems().front().code == base::Trouble::date_impossible);
    CHECK(cautions.empty());
}

TEST_CASE("every newer word of a record is told, and a known record beside it is used",
          "[facts][newer]") {
    const std::string head = facts::print_header() + '\n';
    const std::string text =
        head + record("limit", R"("class":"x","calendar_rule":"y","anchor":"unknown")") + '\n' +
        record("reading", R"("reads":5)") + '\n';
    const facts::Parsed parsed = facts::parse_journal(text);
    CHECK(parsed.facts.size() == 2);
    std::string told;
    for (const base::Problem& problem : parsed.problems)
        told += std::to_string(problem.line) + problem.field + ' ';
    CHECK(told == "2class 2calendar_rule ");
}

TEST_CASE("an aircraft with a record that holds a newer word shows unknown",
          "[facts][newer][timeline]") {
    const std::string added =
        R"({"id":")" + aircraft_id +
        R"(","kind":"aircraft","on":"2026-01-01","at":1,"tick":0,"device":"d","about":[")" +
        aircraft_id + R"("],"registration":"ISLE-1"})";
    for (const NewWord& row : new_words()) {
        CAPTURE(row.kind, row.fields);
        facts::Journal journal;
        for (const std::string& text : {added, record(row.kind, row.fields)})
            journal.add(facts::parse_fact(text, 1).value());
        const base::Id id = journal.aircraft().front();
        CHECK(timeline::replay(journal, id, support::day("2026-06-01")).unknown_records == 1);
    }
}
