// The published schema and the engine list the same kinds, fields and words.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>

#include "engine/facts/fields.hpp"
#include "engine/facts/names.hpp"
#include "engine/facts/parse.hpp"

using namespace twoclocks;
using nlohmann::json;
using Words = std::set<std::string>;

namespace {

json defs() {
    return json::parse(support::file_text("engine/facts/journal.schema.json"))["$defs"];
}

/// Walks the field list as the reader and the writer do, and notes every field.
struct Lister {
    Words all;
    Words needed;
    std::map<std::string, Words> words;

    void add(std::string_view key, bool is_needed) {
        all.insert(std::string{key});
        if (is_needed) needed.insert(std::string{key});
    }

    void needed_text(std::string_view key, const std::string&) { add(key, true); }

    void text(std::string_view key, const std::string&) { add(key, false); }

    void note(std::string_view key, const std::string&) { add(key, true); }

    void truth(std::string_view key, bool) { add(key, false); }

    void needed_time(std::string_view key, base::FlightTime) { add(key, true); }

    template <class T>
    void date(std::string_view key, const T&) {
        add(key, false);
    }

    template <class T>
    void time(std::string_view key, const T&) {
        add(key, false);
    }

    template <class T>
    void count(std::string_view key, const T&) {
        add(key, false);
    }

    template <class T>
    void months(std::string_view key, const T&) {
        add(key, false);
    }

    template <class T>
    void ref(std::string_view key, const T&) {
        add(key, true);
    }

    template <class T>
    void refs(std::string_view key, const T&) {
        add(key, true);
    }

    template <class T>
    void renewals(std::string_view key, const T&) {
        add(key, true);
    }

    template <class T>
    void body(std::string_view key, const T&) {
        add(key, true);
    }

    template <class T>
    void number(std::string_view key, const T&, std::int32_t) {
        add(key, false);
    }

    void needed_number(std::string_view key, std::int32_t, std::int32_t) { add(key, true); }

    template <class T>
    void maybe_ids(std::string_view key, const T&) {
        add(key, false);
    }

    template <class T>
    void maybe_name(std::string_view key, const std::optional<T>&) {
        name(key, T{});
        needed.erase(std::string{key});
    }

    template <class T>
    void name(std::string_view key, T value) {
        add(key, true);
        for (const auto& one : facts::names_of(value)) {
            words[std::string{key}].insert(std::string{one.word});
        }
    }
};

Words members(const json& object) {
    Words out;
    for (const auto& [key, value] : object.items())
        out.insert(key);
    return out;
}

Words words_in(const json& list) {
    return list.get<Words>();
}

}  // namespace

TEST_CASE("the kinds of the schema are exactly those of the engine", "[facts][schema]") {
    const json definitions = defs();
    Words listed;
    for (const json& one : definitions["kinds"]["allOf"]) {
        const std::string kind = one["if"]["properties"]["kind"]["const"];
        CHECK(one["then"]["$ref"] == "#/$defs/" + kind);
        CHECK(listed.insert(kind).second);
    }
    const Words known{facts::kind_words.begin() + 1, facts::kind_words.end()};
    CHECK(listed == known);
}

TEST_CASE("the fields of every kind in the schema are those of the engine", "[facts][schema]") {
    const json definitions = defs();
    for (std::size_t at = 1; at < facts::kind_words.size(); ++at) {
        const std::string kind{facts::kind_words[at]};
        CAPTURE(kind);
        Lister lister;
        const facts::Fields fields = facts::empty_fields(kind);
        std::visit([&](const auto& one) { facts::visit(lister, one); }, fields);
        const json& one = definitions[kind];
        Words listed = members(one["properties"]);
        listed.erase("about");
        CHECK(listed == lister.all);
        CHECK((one.contains("required") ? words_in(one["required"]) : Words{}) == lister.needed);
        for (const auto& [field, words] : lister.words) {
            CAPTURE(field);
            const json& choices = one["properties"][field]["anyOf"];
            CHECK(words_in(choices[0]["enum"]) == words);
            CHECK(choices[1]["$ref"] == "#/$defs/newer_word");
        }
    }
}

TEST_CASE("the limits of the schema are those of the engine", "[facts][schema]") {
    const json definitions = defs();
    CHECK(definitions["header"]["properties"]["journal"]["const"] == "twoclocks");
    CHECK(definitions["short_text"]["maxLength"] == facts::longest_text_bytes);
    CHECK(definitions["long_text"]["maxLength"] == facts::longest_note_bytes);
    CHECK(definitions["time"]["maximum"] == base::most_hours * base::seconds_per_hour);
    CHECK(definitions["count"]["maximum"] == base::most_counts);
    CHECK(definitions["fact"]["properties"]["at"]["maximum"] == facts::greatest_whole);
    const json& clocks =
        definitions["renewal"]["properties"]["clocks"]["items"]["anyOf"][0]["enum"];
    CHECK(clocks.size() == facts::clock_names.size());
    for (const auto& name : facts::clock_names) {
        CHECK(std::find(clocks.begin(), clocks.end(), name.word) != clocks.end());
    }
}

TEST_CASE("every part of the schema says in words what it is", "[facts][schema]") {
    const json definitions = defs();
    for (const auto& [name, part] : definitions.items()) {
        CAPTURE(name);
        CHECK(part.contains("description"));
        if (!part.contains("properties") || name == "limit") continue;
        for (const auto& [field, property] : part["properties"].items()) {
            CAPTURE(field);
            CHECK((field == "about" || field == "instead" || property.contains("description")));
        }
    }
}
