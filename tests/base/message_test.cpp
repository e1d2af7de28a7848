#include "engine/base/message.hpp"

#include "catch_amalgamated.hpp"

#include <array>
#include <cstddef>
#include <set>
#include <string>
#include <string_view>
#include <vector>

using namespace twoclocks::base;

namespace {

struct WordRow {
    Word word;
    const char* name;
    std::string_view text;
};

struct TroubleRow {
    Trouble code;
    const char* name;
    std::string_view what;
    std::string_view remedy;
};

const std::vector<WordRow> word_rows{
#define WORD(id, text) {Word::id, #id, text},
#define TROUBLE(id, what, remedy)
#include "engine/base/words.def"
#undef WORD
#undef TROUBLE
};

const std::vector<TroubleRow> trouble_rows{
#define WORD(id, text)
#define TROUBLE(id, what, remedy) {Trouble::id, #id, what, remedy},
#include "engine/base/words.def"
#undef WORD
#undef TROUBLE
};

bool is_digit(char sign) {
    return sign >= '0' && sign <= '9';
}

/// The numbers of the slots; 10 stands for a brace that is no slot.
std::set<int> slots(std::string_view text) {
    std::set<int> out;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '}') out.insert(10);
        if (text[at] != '{') continue;
        const bool whole = at + 2 < text.size() && is_digit(text[at + 1]) && text[at + 2] == '}';
        out.insert(whole ? text[at + 1] - '0' : 10);
        at += whole ? 2 : 0;
    }
    return out;
}

/// 0, 1, 2 ... without a gap.
bool in_order(const std::set<int>& numbers) {
    int next = 0;
    for (const int number : numbers) {
        if (number != next++) return false;
    }
    return true;
}

std::vector<std::string_view> halves(std::string_view text) {
    const std::size_t bar = text.find('|');
    if (bar == std::string_view::npos) return {text};
    return {text.substr(0, bar), text.substr(bar + 1)};
}

bool ends_as_sentence(std::string_view text) {
    return text.ends_with('.') || text.ends_with('?') || text.ends_with('!');
}

/// What is wrong with the look of one text, empty when nothing is.
std::string fault_of(std::string_view text) {
    for (const char sign : text) {
        if (sign == '\'' || sign == '"') return "has a typewriter quote: use ’ or “ ”";
        if (static_cast<unsigned char>(sign) < 0x20U) return "has a control character";
    }
    if (text.find("...") != std::string_view::npos) return "has three dots: use …";
    if (text.find("  ") != std::string_view::npos) return "has two spaces in a row";
    if (text.starts_with(' ') || text.ends_with(' ')) return "begins or ends with a space";
    for (const std::string_view end : {",", ";", ":", "-", "–", "(", "“"}) {
        if (text.ends_with(end)) return "ends in the middle";
    }
    for (const std::string_view stop : {". ", "? ", "! "}) {
        const bool goes_on = text.find(stop) != std::string_view::npos;
        const bool ends = ends_as_sentence(text) || text.ends_with('}');
        if (goes_on && !ends) return "is two sentences, the last without a stop";
    }
    return {};
}

/// Every rule on a text of the catalogue, its two halves included.
std::string fault_of_entry(std::string_view text) {
    const std::vector<std::string_view> forms = halves(text);
    if (forms.back().find('|') != std::string_view::npos) return "has more than two forms";
    if (forms.size() == 2 && (forms[0].empty() || forms[1].empty())) return "has an empty form";
    if (slots(text).contains(10)) return "has a brace that is no argument";
    for (const std::string_view form : forms) {
        const std::string fault = fault_of(form);
        if (!fault.empty()) return fault;
    }
    return {};
}

}  // namespace

TEST_CASE("every word is found by its id", "[base][message]") {
    REQUIRE(word_rows.size() > 100);
    for (const WordRow& row : word_rows) {
        CHECK(name_of(row.word) == row.name);
        CHECK(pattern(row.word) == row.text);
    }
}

TEST_CASE("every trouble is found by its id", "[base][message]") {
    REQUIRE(trouble_rows.size() > 20);
    for (const TroubleRow& row : trouble_rows) {
        CHECK(name_of(row.code) == row.name);
        CHECK(pattern_what(row.code) == row.what);
        CHECK(pattern_remedy(row.code) == row.remedy);
    }
}

TEST_CASE("every word of the catalogue is fit to be shown", "[base][message]") {
    for (const WordRow& row : word_rows) {
        INFO(row.name << ": " << row.text);
        CHECK(fault_of_entry(row.text) == "");
        CHECK(in_order(slots(row.text)));
        CHECK(row.text.empty() == (row.word == Word::blank));
    }
}

TEST_CASE("every trouble says in sentences what happened and what to do", "[base][message]") {
    for (const TroubleRow& row : trouble_rows) {
        INFO(row.name << ": " << row.what << " / " << row.remedy);
        CHECK(fault_of_entry(row.what) == "");
        CHECK(fault_of_entry(row.remedy) == "");
        CHECK(ends_as_sentence(row.what));
        CHECK(ends_as_sentence(row.remedy));
        std::set<int> used = slots(row.what);
        used.merge(slots(row.remedy));
        CHECK(in_order(used));
    }
}

TEST_CASE("no trouble is told in the words of another", "[base][message]") {
    std::set<std::string_view> seen;
    for (const TroubleRow& row : trouble_rows) {
        INFO(row.name);
        CHECK(seen.insert(row.what).second);
    }
}

TEST_CASE("the checks of the catalogue fire on bad entries", "[base][message]") {
    for (const char* text :
         {"it's",      "say \"so\"",    "two  spaces", " leading", "trailing ",    "open {",
          "open {0",   "{x}",           "}",           "{0",       "a|b|c",        "a|",
          "|b",        "so, ",          "so,",         "One. two", "Why? because", "wait...",
          "tab\there", "a|two  spaces", "(",           "so:"}) {
        CAPTURE(text);
        CHECK(fault_of_entry(text) != "");
    }
    for (const char* text : {"",
                             "nothing due",
                             "{0} h",
                             "One. Two.",
                             "{0} year|{0} years",
                             "it’s",
                             "“{0}” is not a date.",
                             "{0}: why?",
                             "{0}. {1}"}) {
        CAPTURE(text);
        CHECK(fault_of_entry(text) == "");
    }
    CHECK(in_order({0, 1, 2}));
    CHECK(in_order({}));
    CHECK_FALSE(in_order({1}));
    CHECK_FALSE(in_order({0, 2}));
}
