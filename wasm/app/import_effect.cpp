#include "wasm/app/import_effect.hpp"

#include "wasm/app/form.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/facts/print.hpp"
#include "engine/timeline/parts.hpp"
#include "engine/views/assess.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/part_views.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using facts::Clock;
using facts::Fact;
using facts::Journal;
using timeline::Question;

[[nodiscard]] std::vector<Question> questions_of(const Journal& journal,
                                                 base::Id subject,
                                                 base::Date today) {
    if (is_aircraft(journal, subject)) return timeline::replay(journal, subject, today).questions;
    return timeline::replay_part(journal, subject, today).questions;
}

/// What tells one question from another: its record, and every fact on its sides.
using QuestionKey = std::vector<base::Id>;

[[nodiscard]] QuestionKey key_of(const Question& question) {
    std::set<base::Id> facts;
    for (const timeline::Side& side : question.sides) {
        facts.insert(side.fact.id);
        for (const Fact& same : side.same)
            facts.insert(same.id);
    }
    QuestionKey out{question.root};
    out.insert(out.end(), facts.begin(), facts.end());
    return out;
}

[[nodiscard]] base::Message origin_of(const Joining& joining, const timeline::Side& side) {
    bool here = false;
    bool filed = false;
    const auto look = [&](const Fact& fact) {
        here = here || is_here(joining.before, fact);
        filed = filed || std::any_of(joining.file.begin(),
                                     joining.file.end(),
                                     [&](const Fact& other) { return facts::holds(fact, other); });
    };
    look(side.fact);
    for (const Fact& same : side.same)
        look(same);
    if (here && filed) return {Word::question_in_both, {}};
    return {filed ? Word::question_in_file : Word::question_here, {}};
}

[[nodiscard]] std::string name_of(const Joining& joining, base::Id subject) {
    return is_aircraft(joining.after, subject)
               ? timeline::replay(joining.after, subject, joining.today).registration
               : views::name_of_host(joining.after, subject);
}

/// The overhaul of an aircraft; none where it has none, or is not there.
[[nodiscard]] std::optional<limits::ItemDue> overhaul_in(const Journal& journal,
                                                         base::Id aircraft,
                                                         base::Date today) {
    if (!is_aircraft(journal, aircraft)) return std::nullopt;
    const views::Assessed assessed =
        views::assess(timeline::replay(journal, aircraft, today), today);
    const limits::ItemDue* overhaul = views::overhaul_of(assessed);
    return overhaul == nullptr ? std::nullopt : std::optional{*overhaul};
}

/// What is left by one clock, as a sentence has it.
[[nodiscard]] base::Arg left_by(const limits::ItemDue& item, Clock which) {
    const limits::ClockDue* clock = limits::clock_of(item, which);
    if (clock == nullptr || !clock->known) return base::word_arg(Word::unknown_figure);
    return which == Clock::hours ? base::hours_left_arg(clock->left) : base::day_arg(clock->due_on);
}

}  // namespace

bool is_here(const Journal& journal, const Fact& fact) {
    const auto with_id = journal.with_id(fact.id);
    return std::any_of(with_id.begin(), with_id.end(), [&](const Fact* other) {
        return facts::holds(*other, fact);
    });
}

std::vector<base::Message> effects_of(const Joining& joining) {
    std::vector<base::Message> out;
    for (const base::Id& subject : joining.subjects) {
        const auto now = overhaul_in(joining.before, subject, joining.today);
        const auto then = overhaul_in(joining.after, subject, joining.today);
        if (!now || !then) continue;
        for (const auto& [clock, word] : {std::pair{Clock::hours, Word::import_hours_left},
                                          std::pair{Clock::calendar, Word::import_overhaul_by}}) {
            const base::Arg before = left_by(*now, clock);
            const base::Arg after = left_by(*then, clock);
            if (before == after) continue;
            out.push_back({word, {base::text_arg(name_of(joining, subject)), before, after}});
        }
    }
    return out;
}

std::vector<Disagreement> disagreements_of(const Joining& joining) {
    std::vector<Disagreement> out;
    std::set<QuestionKey> asked;
    for (const base::Id& subject : joining.subjects) {
        for (const Question& question : questions_of(joining.before, subject, joining.today))
            asked.insert(key_of(question));
    }
    for (const base::Id& subject : joining.subjects) {
        for (const Question& question : questions_of(joining.after, subject, joining.today)) {
            if (!asked.insert(key_of(question)).second) continue;
            Disagreement one;
            const base::Arg name = base::text_arg(name_of(joining, subject));
            one.about = {Word::import_disagrees, {name}};
            one.question = views::make_questions({question}).front();
            for (std::size_t side = 0; side < question.sides.size(); ++side)
                one.question.sides[side].origin = origin_of(joining, question.sides[side]);
            out.push_back(std::move(one));
        }
    }
    return out;
}

}  // namespace twoclocks::canvas
