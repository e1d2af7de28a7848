#include <algorithm>

#include "engine/facts/check.hpp"
#include "engine/facts/fact_reader.hpp"
#include "engine/facts/parse.hpp"

namespace twoclocks::facts {
namespace {

[[nodiscard]] bool may_nest(const Fields& fields) {
    return !std::holds_alternative<Correction>(fields) &&
           !std::holds_alternative<Withdrawal>(fields) && !std::holds_alternative<Answer>(fields);
}

void read_envelope(Reader& reader, Body& body, bool nested) {
    std::string kind;
    reader.needed_text("kind", kind);
    reader.needed_date("on", body.on);
    reader.ids("about", body.about);
    body.fields = empty_fields(kind);
    if (nested && !may_nest(body.fields)) {
        reader.complain(Trouble::fact_kind_nested, "instead");
        body.fields = UnknownKind{kind};
    }
}

/// The fields of the kind. With a word that this version does not know the whole record is one it
/// does not know: kept as it is, and nothing but its envelope is judged.
void read_fields(Reader& reader, Body& body, Problems& problems, Problems& cautions) {
    const std::size_t before = reader.taken();
    const std::size_t problems_before = problems.size();
    const std::size_t cautions_before = cautions.size();
    visit_fields(reader, body.fields);
    if (reader.newer_words().empty()) {
        body.extra = reader.rest();
        return;
    }
    problems.resize(problems_before);
    cautions.resize(cautions_before);
    cautions.insert(cautions.end(), reader.newer_words().begin(), reader.newer_words().end());
    body.extra = reader.members_since(before);
    body.fields = UnknownKind{std::string{kind_name(body.fields)}};
}

}  // namespace

Body read_body(const Json& object, bool nested, Problems& problems, Problems& cautions) {
    Body body;
    Reader reader{object, problems, cautions};
    read_envelope(reader, body, nested);
    read_fields(reader, body, problems, cautions);
    return body;
}

base::Result<Fact> parse_fact(std::string_view text, std::int32_t line) {
    Problems cautions;
    return parse_fact(text, line, cautions);
}

base::Result<Fact> parse_fact(std::string_view text, std::int32_t line, Problems& cautions) {
    base::Result<Json> json = read_json(text, line);
    if (!json) return json.problems();
    Problems problems;
    Problems newer;
    Fact fact;
    Reader reader{json.value(), problems, newer};
    reader.id("id", fact.id);
    std::int64_t tick = 0;
    reader.needed_whole("at", fact.stamp.wall_ms);
    reader.needed_whole("tick", tick);
    reader.needed_text("device", fact.stamp.device);
    reader.text("by", fact.by);
    read_envelope(reader, fact.body, false);
    read_fields(reader, fact.body, problems, newer);
    if (tick < 0 || tick > INT32_MAX) reader.complain(Trouble::fact_field_wrong, "tick");
    if (fact.stamp.wall_ms < 0) reader.complain(Trouble::fact_field_wrong, "at");
    fact.stamp.tick = static_cast<std::int32_t>(std::clamp<std::int64_t>(tick, 0, INT32_MAX));
    if (problems.empty()) problems = check(fact.body);
    for (Problem& problem : problems)
        problem.line = line;
    if (!problems.empty()) return problems;
    for (Problem& caution : newer) {
        caution.line = line;
        cautions.push_back(std::move(caution));
    }
    return fact;
}

}  // namespace twoclocks::facts
