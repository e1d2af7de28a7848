#include "wasm/app/import.hpp"

#include <algorithm>
#include <map>

#include "engine/base/message_args.hpp"
#include "engine/facts/print.hpp"
#include "engine/timeline/state.hpp"

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

/// What joining would add to one aircraft.
struct Change {
    std::int32_t readings{0};
    std::int32_t others{0};
    bool is_new{false};
};

[[nodiscard]] std::map<base::Id, Change> changes_of(const std::vector<Fact>& fresh) {
    std::map<base::Id, Change> out;
    for (const Fact& fact : fresh) {
        Change& change = out[aircraft_of(fact.body)];
        if (std::holds_alternative<facts::Reading>(fact.body.fields)) {
            ++change.readings;
        } else {
            ++change.others;
        }
        change.is_new =
            change.is_new || std::holds_alternative<facts::AircraftAdded>(fact.body.fields);
    }
    return out;
}

[[nodiscard]] std::int32_t questions_of(const Journal& journal,
                                        const std::map<base::Id, Change>& changes,
                                        base::Date today) {
    std::int32_t out = 0;
    for (const auto& [id, change] : changes) {
        out += static_cast<std::int32_t>(timeline::replay(journal, id, today).questions.size());
    }
    return out;
}

void describe(Import& import, const Journal& before, const Journal& after, base::Date today) {
    const std::map<base::Id, Change> changes = changes_of(import.fresh);
    for (const auto& [id, change] : changes) {
        const std::string registration = timeline::replay(after, id, today).registration;
        const base::Arg name = base::text_arg(registration);
        if (registration.empty()) {
            import.preview.changes.push_back(
                {Word::import_loose,
                 { base::whole_arg(change.readings + change.others) }});
            continue;
        }
        if (change.is_new) import.preview.changes.push_back({Word::import_new_aircraft, { name }});
        if (change.readings > 0) {
            import.preview.changes.push_back({Word::import_readings,
                                              { base::whole_arg(change.readings),
                                                name }});
        }
        if (change.others > 0) {
            import.preview.changes.push_back({Word::import_others,
                                              { base::whole_arg(change.others),
                                                name }});
        }
    }
    const std::int32_t questions =
        questions_of(after, changes, today) - questions_of(before, changes, today);
    if (questions > 0)
        import.preview.changes.push_back({Word::import_questions, { base::whole_arg(questions) }});
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
