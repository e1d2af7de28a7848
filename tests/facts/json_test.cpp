#include "engine/facts/json.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/first_trouble.hpp"

#include <string>

using namespace twoclocks;
using facts::read_json;
using support::first_trouble;

namespace {

std::string printed(const facts::Json& value) {
    std::string out;
    facts::print_json(value, out);
    return out;
}

/// An object whose value is lists inside lists: `levels` deep in all.
std::string nested(std::int32_t levels) {
    const auto lists = static_cast<std::size_t>(levels - 1);
    return R"({"a":)" + std::string(lists, '[') + std::string(lists, ']') + '}';
}

std::string text_of(std::int32_t bytes) {
    return R"({"a":")" + std::string(static_cast<std::size_t>(bytes), 'x') + R"("})";
}

std::string key_of(std::int32_t bytes) {
    return R"({")" + std::string(static_cast<std::size_t>(bytes), 'x') + R"(":1})";
}

}  // namespace

TEST_CASE("every kind of value is read and printed back", "[facts][json]") {
    for (const char* text : {R"({})",
                             R"({"a":1,"b":-1,"c":0})",
                             R"({"b":true,"a":false})",
                             R"({"list":[1,"two",[3],{"four":4},[],{}]})",
                             R"({"text":"quote \" backslash \\ tab \t feed \n \r \b \f"})",
                             R"({"control":"\u0000\u0001\u001f","delete":"})"
                             "\x7F"
                             R"("})",
                             R"({"letters":"Zürich – 東京 😀"})",
                             R"({"slash":"a/b","":"empty key"})"}) {
        CAPTURE(text);
        const base::Result<facts::Json> read = read_json(text, 1);
        REQUIRE(read.ok());
        CHECK(printed(read.value()) == text);
    }
}

TEST_CASE("spaces, escapes and their case are read and printed in one form", "[facts][json]") {
    struct Row {
        const char* text;
        const char* canonical;
    };

    for (const Row& row : {Row{" { \"a\" : [ 1 , 2 ] } ", R"({"a":[1,2]})"},
                           Row{R"({"a":"\u0041\u00fc\u00FC"})", R"({"a":"Aüü"})"},
                           Row{R"({"a":"\uD83D\uDE00"})", R"({"a":"😀"})"},
                           Row{R"({"a":"\/"})", R"({"a":"/"})"},
                           Row{R"({"a":-0})", R"({"a":0})"}}) {
        CAPTURE(row.text);
        const base::Result<facts::Json> read = read_json(row.text, 1);
        REQUIRE(read.ok());
        CHECK(printed(read.value()) == row.canonical);
    }
}

TEST_CASE("what the journal does not allow is refused by its own name", "[facts][json]") {
    struct Row {
        std::string text;
        const char* verdict;
    };

    for (const Row& row : {
             Row{R"({"a":1,"b":2})", "accepted"},
             Row{R"({"a":1,"a":1})", "line_double_key"},
             Row{R"({"x":{"a":1,"a":2}})", "line_double_key"},
             Row{R"({"x":{"a":1},"a":2})", "accepted"},
             Row{R"({"a":1,"\u0061":2})", "line_double_key"},
             Row{R"({"a":9007199254740992})", "accepted"},
             Row{R"({"a":9007199254740993})", "line_number_not_whole"},
             Row{R"({"a":-9007199254740992})", "accepted"},
             Row{R"({"a":-9007199254740993})", "line_number_not_whole"},
             Row{R"({"a":18446744073709551615})", "line_number_not_whole"},
             Row{R"({"a":123456789012345678901234567890})", "line_number_not_whole"},
             Row{R"({"a":1.0})", "line_number_not_whole"},
             Row{R"({"a":1e3})", "line_number_not_whole"},
             Row{R"({"a":1e999})", "line_not_json"},
             Row{R"({"a":01})", "line_not_json"},
             Row{R"({"a":+1})", "line_not_json"},
             Row{R"({"a":NaN})", "line_not_json"},
             Row{R"({"a":null})", "line_null"},
             Row{"null", "line_null"},
             Row{"[]", "line_not_object"},
             Row{"1", "line_not_object"},
             Row{"\"a\"", "line_not_object"},
             Row{"true", "line_not_object"},
             Row{"", "line_not_json"},
             Row{" ", "line_not_json"},
             Row{"{", "line_not_json"},
             Row{"{}}", "line_not_json"},
             Row{"{}{}", "line_not_json"},
             Row{R"({"a":1,})", "line_not_json"},
             Row{R"({a:1})", "line_not_json"},
             Row{R"({'a':1})", "line_not_json"},
             Row{R"({"a":1} // note)", "line_not_json"},
         }) {
        CAPTURE(row.text);
        CHECK(first_trouble(read_json(row.text, 1)) == row.verdict);
    }
}

TEST_CASE("bytes that are not the text they should be are refused", "[facts][json]") {
    struct Row {
        std::string name;
        std::string text;
        const char* verdict;
    };

    for (const Row& row : {
             Row{"two-byte letter", "{\"a\":\"\xC3\xBC\"}", "accepted"},
             Row{"byte order mark", "\xEF\xBB\xBF{}", "line_not_json"},
             Row{"zero byte at the end", std::string{"{}\0", 3}, "line_not_json"},
             Row{"zero byte in a text", std::string{"{\"a\":\"\0\"}", 9}, "line_not_json"},
             Row{"bare control letter", "{\"a\":\"\x01\"}", "line_not_json"},
             Row{"bare line feed in a text", "{\"a\":\"\n\"}", "line_not_json"},
             Row{"lone continuation", "{\"a\":\"\x80\"}", "line_not_json"},
             Row{"letter cut short", "{\"a\":\"\xC3\"}", "line_not_json"},
             Row{"overlong slash", "{\"a\":\"\xC0\xAF\"}", "line_not_json"},
             Row{"surrogate as bytes", "{\"a\":\"\xED\xA0\x80\"}", "line_not_json"},
             Row{"past the last letter", "{\"a\":\"\xF4\x90\x80\x80\"}", "line_not_json"},
             Row{"last letter", "{\"a\":\"\xF4\x8F\xBF\xBF\"}", "accepted"},
             Row{"bad byte in a key", "{\"\xFF\":1}", "line_not_json"},
             Row{"lone high surrogate", R"({"a":"\uD83D"})", "line_not_json"},
             Row{"lone low surrogate", R"({"a":"\uDE00"})", "line_not_json"},
             Row{"surrogates swapped", R"({"a":"\uDE00\uD83D"})", "line_not_json"},
             Row{"high surrogate twice", R"({"a":"\uD83D\uD83D"})", "line_not_json"},
             Row{"Latin-1", "{\"a\":\"Z\xFCrich\"}", "line_not_json"},
             Row{"UTF-16", std::string{"\xFF\xFE{\0}\0", 6}, "line_not_json"},
         }) {
        CAPTURE(row.name);
        CHECK(first_trouble(read_json(row.text, 1)) == row.verdict);
    }
}

TEST_CASE("depth and lengths are held at their limits", "[facts][json]") {
    CHECK(first_trouble(read_json(nested(facts::deepest), 1)) == "accepted");
    CHECK(first_trouble(read_json(nested(facts::deepest + 1), 1)) == "line_too_deep");
    CHECK(first_trouble(read_json(std::string(200'000, '['), 1)) == "line_too_deep");
    CHECK(first_trouble(read_json(text_of(facts::longest_note_bytes), 1)) == "accepted");
    CHECK(first_trouble(read_json(text_of(facts::longest_note_bytes + 1), 1)) ==
          "line_text_too_long");
    CHECK(first_trouble(read_json(key_of(facts::longest_text_bytes), 1)) == "accepted");
    CHECK(first_trouble(read_json(key_of(facts::longest_text_bytes + 1), 1)) ==
          "line_text_too_long");
}

TEST_CASE("a refusal names its line and the key that stands twice", "[facts][json]") {
    const base::Result<facts::Json> read = read_json(R"({"hours":1,"hours":2})", 42);
    REQUIRE_FALSE(read.ok());
    REQUIRE(read.problems().size() == 1);
    CHECK(read.problems().front().line == 42);
    REQUIRE(read.problems().front().args.size() == 1);
    CHECK(read.problems().front().args.front().text == "hours");
}

TEST_CASE("the first thing that is not allowed is the one that is named", "[facts][json]") {
    CHECK(first_trouble(read_json(R"({"a":null,"a":1.5})", 1)) == "line_null");
    CHECK(first_trouble(read_json(R"({"a":1.5,"b":null})", 1)) == "line_number_not_whole");
    CHECK(first_trouble(read_json(R"({"a":1,"a":null}}})", 1)) == "line_double_key");
}
