#include "wasm/app/import.hpp"

#include "wasm/app/form.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "engine/base/message_args.hpp"
#include "engine/facts/print.hpp"
#include "engine/timeline/parts.hpp"
#include "engine/views/part_views.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using facts::Fact;
using facts::Journal;

[[nodiscard]] bool is_here(const Journal& journal, const Fact& fact) {
    const auto same = journal.with_id(fact.id);
    return std::any_of(same.begin(), same.end(), [&](const Fact* other) {
        return print_fact(*other) == print_fact(fact);
    });
}

/// What joining would add to one aircraft, or to a part that no aircraft is named with.
struct Change {
    std::int32_t readings{0};
    std::int32_t others{0};
    bool is_new{false};
};

/// The aircraft that a fact names, also behind a part; else what it names first.
[[nodiscard]] base::Id subject_of(const Journal& journal, const Fact& fact) {
    for (const base::Id& id : fact.body.about) {
        if (is_aircraft(journal, id)) return id;
    }
    return aircraft_of(fact.body);
}

[[nodiscard]] std::map<base::Id, Change> changes_of(const Journal& journal,
                                                    const std::vector<Fact>& fresh) {
    std::map<base::Id, Change> out;
    for (const Fact& fact : fresh) {
        Change& change = out[subject_of(journal, fact)];
        if (std::holds_alternative<facts::Reading>(fact.body.fields)) {
            ++change.readings;
        } else {
            ++change.others;
        }
        change.is_new = change.is_new ||
                        std::holds_alternative<facts::AircraftAdded>(fact.body.fields) ||
                        std::holds_alternative<facts::PartAdded>(fact.body.fields);
    }
    return out;
}

/// Open questions about what the fresh facts name, each once.
[[nodiscard]] std::int32_t questions_of(const Journal& journal,
                                        const std::vector<Fact>& fresh,
                                        base::Date today) {
    std::set<base::Id> named;
    for (const Fact& fact : fresh)
        named.insert(fact.body.about.begin(), fact.body.about.end());
    std::set<base::Id> roots;
    std::int32_t without_root = 0;
    for (const base::Id& id : named) {
        if (!is_aircraft(journal, id)) {
            for (const auto& question : timeline::replay_part(journal, id, today).questions)
                roots.insert(question.root);
            continue;
        }
        for (const auto& question : timeline::replay(journal, id, today).questions) {
            if (question.root.empty()) ++without_root;
            if (!question.root.empty()) roots.insert(question.root);
        }
    }
    return without_root + static_cast<std::int32_t>(roots.size());
}

void describe(Import& import, const Journal& before, const Journal& after, base::Date today) {
    const auto add = [&](Word word, std::vector<base::Arg> args) {
        import.preview.changes.push_back({word, std::move(args)});
    };
    for (const auto& [id, change] : changes_of(after, import.fresh)) {
        const bool flies = is_aircraft(after, id);
        const std::string called = flies ? timeline::replay(after, id, today).registration
                                         : views::name_of_host(after, id);
        if (called.empty()) {
            add(Word::import_loose, {base::whole_arg(change.readings + change.others)});
            continue;
        }
        const base::Arg name = base::text_arg(called);
        if (change.is_new) add(flies ? Word::import_new_aircraft : Word::import_new_part, {name});
        if (change.readings > 0)
            add(Word::import_readings, {base::whole_arg(change.readings), name});
        const std::int32_t others = change.others - (change.is_new && !flies ? 1 : 0);
        if (others > 0) add(Word::import_others, {base::whole_arg(others), name});
    }
    const std::int32_t questions =
        questions_of(after, import.fresh, today) - questions_of(before, import.fresh, today);
    if (questions > 0) add(Word::import_questions, {base::whole_arg(questions)});
}

}  // namespace

Import read_import(std::string_view file_name,
                   std::string_view bytes,
                   const Journal& journal,
                   base::Date today) {
    Import out;
    out.file_name = file_name;
    out.parsed = facts::parse_journal(bytes);
    Journal after = journal;
    for (const Fact& fact : out.parsed.facts) {
        if (!is_here(journal, fact) && after.add(fact)) out.fresh.push_back(fact);
    }
    const auto fresh = static_cast<std::int64_t>(out.fresh.size());
    const auto known = static_cast<std::int64_t>(out.parsed.facts.size()) - fresh;
    out.preview.file_name = file_name;
    out.preview.summary = {Word::import_summary, {base::whole_arg(fresh), base::whole_arg(known)}};
    out.preview.problems = out.parsed.problems;
    out.preview.read_only = out.parsed.newer;
    out.preview.can_accept = out.parsed.ours && !out.parsed.newer && fresh > 0;
    describe(out, journal, after, today);
    return out;
}

}  // namespace twoclocks::canvas
