// Reading a canonical line and printing it gives the same bytes, for every kind.
#include "catch_amalgamated.hpp"
#include "tests/support/kind_lines.hpp"

#include <set>
#include <string>

#include "engine/facts/binary.hpp"
#include "engine/facts/fields.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"

using namespace twoclocks;

using support::kind_lines;

TEST_CASE("every kind is read and printed back to the same bytes", "[facts][print]") {
    std::set<std::string_view> seen;
    for (const std::string& text : kind_lines()) {
        CAPTURE(text);
        const base::Result<facts::Fact> fact = facts::parse_fact(text, 1);
        REQUIRE(fact.ok());
        CHECK(facts::print_fact(fact.value()) == text);
        CHECK(fact.value().body.extra.empty());
        seen.insert(facts::kind_name(fact.value().body.fields));
    }
    // Every kind of the list stands in the table above; the first word is the unknown kind's.
    CHECK(seen.size() == facts::kind_words.size() - 1);
}

TEST_CASE("every kind survives the form of the snapshot", "[facts][binary]") {
    std::string bytes;
    for (const std::string& text : kind_lines()) {
        facts::write_binary(facts::parse_fact(text, 1).value(), bytes);
    }
    std::string_view in = bytes;
    for (const std::string& text : kind_lines()) {
        CAPTURE(text);
        facts::Fact fact;
        REQUIRE(facts::read_binary(in, fact));
        CHECK(facts::print_fact(fact) == text);
    }
    CHECK(in.empty());
}

TEST_CASE("a snapshot that was cut anywhere is refused, never read past", "[facts][binary]") {
    for (const std::string& text : kind_lines()) {
        std::string bytes;
        facts::write_binary(facts::parse_fact(text, 1).value(), bytes);
        for (std::size_t length = 0; length < bytes.size(); ++length) {
            const std::string cut = bytes.substr(0, length);
            std::string_view in = cut;
            facts::Fact fact;
            CAPTURE(text, length);
            REQUIRE_FALSE(facts::read_binary(in, fact));
        }
    }
}

TEST_CASE("a snapshot with any byte changed is refused or read, never misused", "[facts][binary]") {
    std::int32_t refused = 0;
    std::int32_t accepted = 0;
    for (const std::string& text : kind_lines()) {
        std::string bytes;
        facts::write_binary(facts::parse_fact(text, 1).value(), bytes);
        for (std::size_t at = 0; at < bytes.size(); ++at) {
            for (const unsigned flip : {0x01U, 0x02U, 0x04U, 0x40U, 0x80U}) {
                std::string changed = bytes;
                changed[at] = static_cast<char>(static_cast<unsigned char>(changed[at]) ^ flip);
                std::string_view in = changed;
                facts::Fact fact;
                const bool sound = facts::read_binary(in, fact);
                (sound ? accepted : refused) += 1;
                // What is taken must print with every enumerated word in its place.
                if (!sound) continue;
                const std::string shown = facts::print_fact(fact);
                CAPTURE(text, at, flip, shown);
                REQUIRE(shown.find("\"class\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"condition\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"drive\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"role\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"anchor\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"calendar_rule\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"carry_over\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"combine\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"in_force\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"applies\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"sense\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"reason\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"operation\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"kind\":\"event\",\"happened\":\"\"") == std::string::npos);
                REQUIRE(shown.find("[\"\"") == std::string::npos);
            }
        }
    }
    CHECK(refused > 1000);
    CHECK(accepted > 1000);
}
