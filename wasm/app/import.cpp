#include "wasm/app/import.hpp"

#include "wasm/app/form.hpp"
#include "wasm/app/import_effect.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "engine/base/message_args.hpp"
#include "engine/timeline/parts.hpp"
#include "engine/views/part_views.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using facts::Fact;
using facts::Journal;

/// What joining would add to one aircraft, or to a part that no aircraft is named with.
struct Change {
    std::int32_t readings{0};
    std::int32_t corrections{0};
    std::int32_t withdrawals{0};
    std::int32_t answers{0};
    std::int32_t others{0};
    std::int32_t signatures{0};  // of records that are here without
    bool is_new{false};

    [[nodiscard]] std::int32_t& count_of(const facts::Fields& fields) {
        if (std::holds_alternative<facts::Reading>(fields)) return readings;
        if (std::holds_alternative<facts::Correction>(fields)) return corrections;
        if (std::holds_alternative<facts::Withdrawal>(fields)) return withdrawals;
        if (std::holds_alternative<facts::Answer>(fields)) return answers;
        return others;
    }

    [[nodiscard]] std::int32_t all() const {
        return readings + corrections + withdrawals + answers + others + signatures;
    }
};

/// The aircraft that a fact names, also behind a part; else what it names first.
[[nodiscard]] base::Id subject_of(const Journal& journal, const Fact& fact) {
    for (const base::Id& id : fact.body.about) {
        if (is_aircraft(journal, id)) return id;
    }
    return aircraft_of(fact.body);
}

/// True where the record is here but for who wrote it.
[[nodiscard]] bool is_here_unsigned(const Journal& before, const Fact& fact) {
    const auto with_id = before.with_id(fact.id);
    return std::any_of(with_id.begin(), with_id.end(), [&](const Fact* other) {
        return facts::holds(fact, *other);
    });
}

[[nodiscard]] std::map<base::Id, Change> changes_of(const Journal& before,
                                                    const Journal& after,
                                                    const std::vector<Fact>& fresh) {
    std::map<base::Id, Change> out;
    for (const Fact& fact : fresh) {
        Change& change = out[subject_of(after, fact)];
        if (is_here_unsigned(before, fact)) {
            ++change.signatures;
            continue;
        }
        ++change.count_of(fact.body.fields);
        change.is_new = change.is_new ||
                        std::holds_alternative<facts::AircraftAdded>(fact.body.fields) ||
                        std::holds_alternative<facts::PartAdded>(fact.body.fields);
    }
    return out;
}

/// Ids that the fresh facts name, each once, in order.
[[nodiscard]] std::vector<base::Id> subjects_in(const std::vector<Fact>& fresh) {
    std::set<base::Id> named;
    for (const Fact& fact : fresh)
        named.insert(fact.body.about.begin(), fact.body.about.end());
    return {named.begin(), named.end()};
}

void describe(Import& import, const Journal& before, const Journal& after, base::Date today) {
    const auto add = [&](Word word, std::vector<base::Arg> args) {
        import.preview.changes.push_back({word, std::move(args)});
    };
    for (const auto& [id, change] : changes_of(before, after, import.fresh)) {
        const bool flies = is_aircraft(after, id);
        const std::string called = flies ? timeline::replay(after, id, today).registration
                                         : views::name_of_host(after, id);
        if (called.empty()) {
            add(Word::import_loose, {base::whole_arg(change.all())});
            continue;
        }
        const base::Arg name = base::text_arg(called);
        if (change.is_new) add(flies ? Word::import_new_aircraft : Word::import_new_part, {name});
        const auto some = [&](Word word, std::int32_t count) {
            if (count > 0) add(word, {base::whole_arg(count), name});
        };
        some(Word::import_readings, change.readings);
        some(Word::import_corrections, change.corrections);
        some(Word::import_withdrawals, change.withdrawals);
        some(Word::import_answers, change.answers);
        some(Word::import_signatures, change.signatures);
        some(Word::import_others, change.others - (change.is_new && !flies ? 1 : 0));
    }
    const Joining joining{before, after, import.parsed.facts, subjects_in(import.fresh), today};
    for (base::Message& effect : effects_of(joining))
        import.preview.changes.push_back(std::move(effect));
    import.preview.disagreements = disagreements_of(joining);
    const auto questions = static_cast<std::int64_t>(import.preview.disagreements.size());
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
    const auto fresh = std::count_if(out.fresh.begin(), out.fresh.end(), [&](const Fact& fact) {
        return !is_here_unsigned(journal, fact);
    });
    const auto known = static_cast<std::int64_t>(out.parsed.facts.size()) - fresh;
    out.preview.file_name = file_name;
    out.preview.summary = {Word::import_summary, {base::whole_arg(fresh), base::whole_arg(known)}};
    out.preview.problems = out.parsed.problems;
    out.preview.read_only = out.parsed.newer;
    out.preview.can_accept = out.parsed.ours && !out.parsed.newer && !out.fresh.empty();
    describe(out, journal, after, today);
    return out;
}

}  // namespace twoclocks::canvas
