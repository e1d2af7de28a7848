#include "engine/facts/parse.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/first_trouble.hpp"
#include "tests/support/pen.hpp"

#include <string>
#include <vector>

#include "engine/facts/binary.hpp"
#include "engine/facts/print.hpp"

using namespace twoclocks;
using facts::parse_fact;
using support::first_trouble;

namespace {

const std::string parsed_id = "018c3f8a-0001-7000-8000-000000000001";
const std::string header = R"({"journal":"twoclocks","version":1})";

/// A note with one part of its text put in place of another.
std::string note(const std::string& from = "", const std::string& to = "") {
    std::string text = R"({"id":")" + parsed_id +
                       R"(","kind":"note","on":"2026-05-03","at":5,"tick":0,"device":"d",)"
                       R"("about":[],"text":"Washed"})";
    if (from.empty()) return text;
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

std::vector<std::string> codes(const facts::Parsed& parsed) {
    std::vector<std::string> out;
    for (const base::Problem& problem : parsed.problems) {
        out.push_back(std::string{base::name_of(problem.code)} + '@' +
                      std::to_string(problem.line));
    }
    return out;
}

}  // namespace

TEST_CASE("a field that is missing or of another type is named", "[facts][parse]") {
    struct Row {
        const char* from;
        const char* to;
        const char* verdict;
        const char* field;
    };

    const std::string id_field = R"("id":")" + parsed_id + R"(",)";
    for (const Row& row : {
             Row{id_field.c_str(), "", "fact_field_missing", "id"},
             Row{parsed_id.c_str(), "018C3F8A", "fact_field_wrong", "id"},
             Row{R"("kind":"note",)", "", "fact_field_missing", "kind"},
             Row{R"("kind":"note")", R"("kind":1)", "fact_field_wrong", "kind"},
             Row{R"("on":"2026-05-03",)", "", "fact_field_missing", "on"},
             Row{"2026-05-03", "2026-5-3", "date_malformed", "on"},
             Row{"2026-05-03", "2026-02-30", "date_impossible", "on"},
             Row{"2026-05-03", "1899-12-31", "date_out_of_range", "on"},
             Row{"2026-05-03", "2200-01-01", "date_out_of_range", "on"},
             Row{R"("at":5,)", "", "fact_field_missing", "at"},
             Row{R"("at":5)", R"("at":"5")", "fact_field_wrong", "at"},
             Row{R"("at":5)", R"("at":-1)", "fact_field_wrong", "at"},
             Row{R"("tick":0,)", "", "fact_field_missing", "tick"},
             Row{R"("tick":0)", R"("tick":-1)", "fact_field_wrong", "tick"},
             Row{R"("tick":0)", R"("tick":2147483648)", "fact_field_wrong", "tick"},
             Row{R"("device":"d",)", "", "fact_field_missing", "device"},
             Row{R"("device":"d",)", R"("device":"d","by":7,)", "fact_field_wrong", "by"},
             Row{R"("about":[],)", "", "fact_field_missing", "about"},
             Row{R"("about":[])", R"("about":"x")", "fact_field_wrong", "about"},
             Row{R"("about":[])", R"("about":[1])", "fact_field_wrong", "about"},
             Row{R"("about":[])", R"("about":["x"])", "fact_field_wrong", "about"},
             Row{R"(,"text":"Washed")", "", "fact_field_missing", "text"},
             Row{R"("text":"Washed")", R"("text":true)", "fact_field_wrong", "text"},
         }) {
        CAPTURE(row.from, row.to);
        const base::Result<facts::Fact> read = parse_fact(note(row.from, row.to), 7);
        REQUIRE(first_trouble(read) == row.verdict);
        CHECK(read.problems().front().field == row.field);
        CHECK(read.problems().front().line == 7);
    }
}

TEST_CASE("the least and the greatest stamp are taken", "[facts][parse]") {
    CHECK(first_trouble(parse_fact(note(R"("at":5)", R"("at":0)"), 1)) == "accepted");
    CHECK(first_trouble(parse_fact(note(R"("tick":0)", R"("tick":2147483647)"), 1)) == "accepted");
    const std::string most = R"("at":9007199254740992)";
    CHECK(first_trouble(parse_fact(note(R"("at":5)", most), 1)) == "accepted");
}

TEST_CASE("every problem of a record is told, not only the first", "[facts][parse]") {
    const auto read = parse_fact(R"({"id":"x","kind":"reading","on":"today","about":[1]})", 3);
    REQUIRE_FALSE(read.ok());
    std::string fields;
    for (const base::Problem& problem : read.problems())
        fields += problem.field + ' ';
    CHECK(fields == "id at tick device on about reads ");
}

TEST_CASE("short texts hold 4 KB and notes 64 KB, to the byte", "[facts][parse]") {
    const std::string most(facts::longest_text_bytes, 'x');
    const std::string note_most(facts::longest_note_bytes, 'x');
    CHECK(first_trouble(parse_fact(note(R"("d",)", R"("d","by":")" + most + R"(",)"), 1)) ==
          "accepted");
    const auto read = parse_fact(note(R"("d",)", R"("d","by":")" + most + R"(x",)"), 1);
    CHECK(first_trouble(read) == "line_text_too_long");
    CHECK(read.problems().front().field == "by");
    CHECK(first_trouble(parse_fact(note("Washed", note_most), 1)) == "accepted");
    CHECK(first_trouble(parse_fact(note("Washed", note_most + 'x'), 1)) == "line_text_too_long");
}

TEST_CASE("what a newer version wrote is kept and printed back, sorted by key", "[facts][parse]") {
    struct Row {
        std::string text;
        std::string printed;
    };

    const std::string start = R"({"id":")" + parsed_id +
                              R"(","kind":"vibration","on":"2026-05-03","at":5,"tick":0,)"
                              R"("device":"d","about":[])";
    const std::string work = R"({"id":")" + parsed_id +
                             R"(","kind":"work","on":"2026-05-03","at":5,"tick":0,"device":"d",)"
                             R"("about":[")" +
                             parsed_id + R"("],"what":"Annual","renews":[{"item":")" + parsed_id +
                             R"(")";
    for (const Row& row : {
             Row{start + "}", start + "}"},
             Row{start + R"(,"zeta":{"b":1,"a":[true]},"alpha":"x"})",
                 start + R"(,"alpha":"x","zeta":{"b":1,"a":[true]}})"},
             Row{note("}", R"(,"zoo":-1,"Apt":[]})"), note("}", R"(,"Apt":[],"zoo":-1})")},
             Row{work + R"(,"grade":2,"clocks":["hours"],"a":{}}]})",
                 work + R"(,"clocks":["hours"],"a":{},"grade":2}]})"},
         }) {
        CAPTURE(row.text);
        const base::Result<facts::Fact> read = parse_fact(row.text, 1);
        REQUIRE(read.ok());
        CHECK(facts::print_fact(read.value()) == row.printed);
        std::string bytes;
        facts::write_binary(read.value(), bytes);
        std::string_view in = bytes;
        facts::Fact again;
        REQUIRE(facts::read_binary(in, again));
        CHECK(facts::print_fact(again) == row.printed);
    }
}

TEST_CASE("a correction cannot put another change in place of a record", "[facts][parse]") {
    struct Row {
        std::string instead;
        const char* verdict;
    };

    const std::string start = R"({"id":")" + parsed_id +
                              R"(","kind":"correction","on":"2026-05-03","at":5,"tick":0,)"
                              R"("device":"d","about":[")" +
                              parsed_id + R"("],"replaces":")" + parsed_id +
                              R"(","why":"w","instead":)";
    const std::string about = R"(,"on":"2026-05-03","about":[")" + parsed_id + R"("])";
    for (const Row& row : {
             Row{R"({"kind":"note")" + about + R"(,"text":""})", "accepted"},
             Row{R"({"kind":"vibration")" + about + R"(,"zeta":1})", "accepted"},
             Row{R"({"kind":"correction")" + about + "}", "fact_kind_nested"},
             Row{R"({"kind":"withdrawal")" + about + "}", "fact_kind_nested"},
             Row{R"({"kind":"answer")" + about + "}", "fact_kind_nested"},
             Row{R"({"kind":"reading")" + about + R"(,"reads":-1})", "hours_negative"},
             Row{"[]", "fact_field_wrong"},
         }) {
        CAPTURE(row.instead);
        CHECK(first_trouble(parse_fact(start + row.instead + "}", 1)) == row.verdict);
    }
}

TEST_CASE("a reference is an id, or an id and what tells two bodies apart", "[facts][parse]") {
    struct Row {
        std::string text;
        const char* verdict;
    };

    for (const Row& row : {Row{parsed_id, "accepted"},
                           Row{parsed_id + "/0123456789abcdef", "accepted"},
                           Row{parsed_id + "/0123456789abcde", "id_malformed"},
                           Row{parsed_id + "/0123456789abcdef0", "id_malformed"},
                           Row{parsed_id + "/0123456789ABCDEF", "id_malformed"},
                           Row{parsed_id + "-0123456789abcdef", "id_malformed"},
                           Row{parsed_id + "/", "id_malformed"},
                           Row{parsed_id.substr(1), "id_malformed"},
                           Row{"", "id_malformed"}}) {
        CAPTURE(row.text);
        const base::Result<facts::Ref> ref = facts::parse_ref(row.text);
        REQUIRE(first_trouble(ref) == row.verdict);
        if (ref) CHECK(facts::print_ref(ref.value()) == row.text);
    }
}

TEST_CASE("a header says whose file it is and how new", "[facts][header]") {
    struct Row {
        std::string text;
        bool ours;
        bool newer;
        std::vector<std::string> problems;
    };

    for (const Row& row : {
             Row{header, true, false, {}},
             Row{header + "\n", true, false, {}},
             Row{R"({"version":1,"journal":"twoclocks","made":"x"})", true, false, {}},
             Row{R"({"journal":"twoclocks","version":2})", true, true, {"file_newer@1"}},
             Row{R"({"journal":"twoclocks","version":0})", false, false, {"file_foreign@1"}},
             Row{R"({"journal":"twoclocks","version":"1"})", false, false, {"file_foreign@1"}},
             Row{R"({"journal":"twoclocks"})", false, false, {"file_foreign@1"}},
             Row{R"({"journal":"other","version":1})", false, false, {"file_foreign@1"}},
             Row{R"({"journal":["twoclocks"],"version":1})", false, false, {"file_foreign@1"}},
             Row{"date,hours\n2026-05-03,5\n", false, false, {"file_foreign@1"}},
             Row{"\n" + header, false, false, {"file_foreign@1"}},
             Row{"\xEF\xBB\xBF" + header, false, false, {"file_foreign@1"}},
             Row{"", false, false, {"file_empty@0"}},
         }) {
        CAPTURE(row.text);
        const facts::Parsed parsed = facts::parse_journal(row.text);
        CHECK(parsed.ours == row.ours);
        CHECK(parsed.newer == row.newer);
        CHECK(codes(parsed) == row.problems);
    }
    CHECK(facts::print_header() == header);
}

TEST_CASE("every line is tried and each problem has its line", "[facts][file]") {
    struct Row {
        const char* name;
        std::string text;
        std::size_t facts;
        std::vector<std::string> problems;
    };

    const std::string good = note();
    const std::string cut = good.substr(0, 60);
    for (const Row& row : {
             Row{"closing line feed", header + "\n" + good + "\n", 1, {}},
             Row{"no closing line feed", header + "\n" + good, 1, {}},
             Row{"line ends of two bytes", header + "\r\n" + good + "\r\n", 1, {}},
             Row{"empty lines", header + "\n\n" + good + "\n\n\r\n", 1, {}},
             Row{"cut at the end", header + "\n" + good + "\n" + cut, 1, {"file_torn@3"}},
             Row{"cut, then whole", header + "\n" + cut + "\n" + good, 1, {"line_not_json@2"}},
             Row{"cut but closed",
                 header + "\n" + good + "\n" + cut + "\n",
                 1,
                 {"line_not_json@3"}},
             Row{"two bad lines",
                 header + "\n{}\n" + good + "\n[]\n",
                 1,
                 {"fact_field_missing@2", "line_not_object@4"}},
             Row{"a newer file is still read",
                 R"({"journal":"twoclocks","version":9})"
                 "\n" +
                     good,
                 1,
                 {"file_newer@1"}},
         }) {
        CAPTURE(row.name);
        const facts::Parsed parsed = facts::parse_journal(row.text);
        CHECK(parsed.facts.size() == row.facts);
        std::vector<std::string> seen;
        for (const std::string& code : codes(parsed)) {
            if (seen.empty() || seen.back() != code) seen.push_back(code);
        }
        CHECK(seen == row.problems);
    }
}

TEST_CASE("a file of 96 MB is tried and one byte more is not", "[facts][file]") {
    // Zero bytes: a line that is refused at its first byte, so that only the size is tried here.
    std::string text = header + "\n";
    text.resize(static_cast<std::size_t>(facts::largest_file_bytes), '\0');
    CHECK(codes(facts::parse_journal(text)) == std::vector<std::string>{"file_torn@2"});
    text += '\0';
    CHECK(codes(facts::parse_journal(text)) == std::vector<std::string>{"file_too_large@0"});
}

TEST_CASE("a file of 500,000 records is read and of one more only so many", "[facts][file]") {
    std::string text = header + "\n";
    const std::string line = note() + "\n";
    text.reserve(line.size() * facts::most_facts + 100);
    for (std::int32_t left = facts::most_facts; left > 0; --left)
        text += line;
    // An empty line after the last that counts is fine; the next record is not.
    const facts::Parsed over = facts::parse_journal(text + "\n" + line + line);
    CHECK(over.facts.size() == facts::most_facts);
    CHECK(codes(over) == std::vector<std::string>{"file_too_many@500003"});
}
