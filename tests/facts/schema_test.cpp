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
struct Lister final : facts::FieldTeller {
    Words all;
    Words needed;
    std::map<std::string, Words> words;

    void add(std::string_view key, bool is_needed) {
        all.insert(std::string{key});
        if (is_needed) needed.insert(std::string{key});
    }

    using Key = std::string_view;

    void needed_text(Key key, const std::string&) override { add(key, true); }

    void text(Key key, const std::string&) override { add(key, false); }

    void note(Key key, const std::string&) override { add(key, true); }

    void truth(Key key, bool) override { add(key, false); }

    void needed_time(Key key, base::FlightTime) override { add(key, true); }

    void date(Key key, const std::optional<base::Date>&) override { add(key, false); }

    void time(Key key, const std::optional<base::FlightTime>&) override { add(key, false); }

    void count(Key key, const std::optional<base::Count>&) override { add(key, false); }

    void months(Key key, const std::optional<std::int32_t>&) override { add(key, false); }

    void ref(Key key, const facts::Ref&) override { add(key, true); }

    void refs(Key key, const std::vector<facts::Ref>&) override { add(key, true); }

    void renewals(Key key, const std::vector<facts::Renewal>&) override { add(key, true); }

    void body(Key key, const std::shared_ptr<const facts::Body>&) override { add(key, true); }

    void money(Key key, const std::optional<base::Money>&) override { add(key, false); }

    void number(Key key, const std::optional<std::int32_t>&, std::int32_t) override {
        add(key, false);
    }

    void needed_number(Key key, std::int32_t, std::int32_t) override { add(key, true); }

    void maybe_ids(Key key, const std::vector<base::Id>&) override { add(key, false); }

    void maybe_choice(Key key, facts::Choices choices, std::optional<std::uint8_t>) override {
        choice(key, choices, 0);
        needed.erase(std::string{key});
    }

    void choice(Key key, facts::Choices choices, std::uint8_t) override {
        add(key, true);
        for (const facts::Name& one : facts::names_of(choices))
            words[std::string{key}].insert(std::string{one.word});
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
        facts::visit_fields(lister, fields);
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
    const auto known = facts::names_of(facts::Choices::clock);
    CHECK(clocks.size() == known.size());
    for (const facts::Name& name : known) {
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
