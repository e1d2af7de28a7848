#include "engine/timeline/question.hpp"

#include <algorithm>

namespace twoclocks::timeline {
namespace {

using facts::Fact;
using facts::Journal;
using facts::Ref;

[[nodiscard]] bool has_safe_side(const facts::Fields& fields) {
    return !std::holds_alternative<facts::AircraftAdded>(fields) &&
           !std::holds_alternative<facts::AircraftChanged>(fields) &&
           !std::holds_alternative<facts::ItemAdded>(fields) &&
           !std::holds_alternative<facts::UnknownKind>(fields);
}

/// Two records of a part name the same plate.
[[nodiscard]] bool same_plate(const facts::Fields& left, const facts::Fields& right) {
    const auto* one = std::get_if<facts::PartAdded>(&left);
    const auto* other = std::get_if<facts::PartAdded>(&right);
    return one == nullptr || other == nullptr ||
           (one->part_number == other->part_number && one->serial == other->serial);
}

/// Versions of different kinds, or about different things, have no safe side between them.
[[nodiscard]] bool comparable(const Record& record) {
    const facts::Body* first = nullptr;
    for (const Head& head : record.heads) {
        if (head.body == nullptr) continue;
        if (first == nullptr) first = head.body;
        const bool same_kind = head.body->fields.index() == first->fields.index();
        if (!same_kind || head.body->about != first->about) return false;
        if (!same_plate(head.body->fields, first->fields)) return false;
    }
    return first == nullptr || has_safe_side(first->fields);
}

/// A side that already stands for what a head says.
[[nodiscard]] bool stands(const Record& record, std::size_t head) {
    for (std::size_t before = 0; before < head; ++before) {
        if (agree(record.heads[before], record.heads[head])) return true;
    }
    return false;
}

void add_new(std::vector<Ref>& refs, const Ref& ref) {
    if (std::find(refs.begin(), refs.end(), ref) == refs.end()) refs.push_back(ref);
}

void add_aircraft(std::vector<base::Id>& about, const facts::Body& body) {
    const base::Id aircraft = aircraft_of(body);
    if (!aircraft.empty() && std::find(about.begin(), about.end(), aircraft) == about.end())
        about.push_back(aircraft);
}

[[nodiscard]] std::vector<const Fact*> facts_of(const Side& side) {
    std::vector<const Fact*> out{&side.fact};
    for (const Fact& fact : side.same)
        out.push_back(&fact);
    return out;
}

/// Puts an answer in the place of an earlier one that keeps a fact which it drops.
class Successor {
  public:
    Successor(const Journal& journal, facts::Answer& answer) : journal_(journal), answer_(answer) {}

    void takes_over_from(const Fact& dropped) {
        const std::vector<base::Id> roots = roots_of(journal_, dropped);
        for (const Fact* fact : answers_on(journal_, dropped)) {
            const auto& earlier = *std::get_if<facts::Answer>(&fact->body.fields);
            if (!any_names(earlier.keeps, dropped)) continue;
            add_new(answer_.settles, ref_to(journal_, *fact));
            for (const Ref& ref : earlier.settles) {
                for (const Fact* settled : journal_.with_id(ref.id)) {
                    if (names(ref, *settled)) take(earlier, *settled, roots);
                }
            }
        }
    }

  private:
    /// What the earlier answer kept beside the dropped fact stays kept; what it dropped stays
    /// dropped where it is a version of the same record. One by one: an id that the earlier answer
    /// gave may by now name two facts, of which this answer keeps one.
    void take(const facts::Answer& earlier, const Fact& fact, const std::vector<base::Id>& roots) {
        if (any_names(answer_.settles, fact)) return;
        const bool kept = any_names(earlier.keeps, fact);
        if (!kept && !is_version_of(fact, roots)) return;
        answer_.settles.push_back(ref_to(journal_, fact));
        if (kept) answer_.keeps.push_back(ref_to(journal_, fact));
    }

    [[nodiscard]] bool is_version_of(const Fact& fact, const std::vector<base::Id>& roots) const {
        const std::vector<base::Id> own = roots_of(journal_, fact);
        return std::any_of(own.begin(), own.end(), [&](const base::Id& root) {
            return std::find(roots.begin(), roots.end(), root) != roots.end();
        });
    }

    const Journal& journal_;
    facts::Answer& answer_;
};

}  // namespace

Side side_of(const Record& record, std::size_t head) {
    Side side{*record.heads[head].fact, {}};
    for (std::size_t other = 0; other < record.heads.size(); ++other) {
        if (other != head && agree(record.heads[other], record.heads[head]))
            side.same.push_back(*record.heads[other].fact);
    }
    return side;
}

void fold_question(const Record& record, AircraftState& state) {
    if (!record.open) return;
    Question question;
    question.root = record.root;
    const bool one_id =
        std::all_of(record.heads.begin(), record.heads.end(), [&](const Head& head) {
            return head.fact->id == record.heads.front().fact->id;
        });
    question.kind = one_id ? QuestionKind::same_id : QuestionKind::versions;
    for (std::size_t head = 0; head < record.heads.size(); ++head) {
        if (!stands(record, head)) question.sides.push_back(side_of(record, head));
    }
    if (!record.withdrawn) question.in_use = record.in_use;
    question.no_safe_side = !comparable(record);
    state.questions.push_back(std::move(question));
}

std::vector<base::Id> facts_in_question(const Journal& journal, base::Id aircraft) {
    constexpr base::Date last_day{84'005};  // 2199-12-31
    std::vector<base::Id> out;
    for (const Question& question : replay(journal, aircraft, last_day).questions) {
        if (!question.root.empty()) out.push_back(question.root);
        for (const Side& side : question.sides) {
            for (const Fact* fact : facts_of(side))
                out.push_back(fact->id);
        }
    }
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

facts::Body answer_to(const Journal& journal,
                      const Question& question,
                      std::size_t side,
                      base::Id aircraft,
                      base::Date today) {
    facts::Answer answer;
    facts::Body body{today, {aircraft}, {}, {}};
    for (std::size_t place = 0; place < question.sides.size(); ++place) {
        for (const Fact* fact : facts_of(question.sides[place])) {
            add_new(answer.settles, ref_to(journal, *fact));
            if (place == side) add_new(answer.keeps, ref_to(journal, *fact));
            add_aircraft(body.about, fact->body);
            const auto* correction = std::get_if<facts::Correction>(&fact->body.fields);
            if (correction != nullptr && correction->instead)
                add_aircraft(body.about, *correction->instead);
        }
    }
    Successor successor{journal, answer};
    for (std::size_t place = 0; place < question.sides.size(); ++place) {
        if (place == side) continue;
        for (const Fact* fact : facts_of(question.sides[place]))
            successor.takes_over_from(*fact);
    }
    body.fields = std::move(answer);
    return body;
}

}  // namespace twoclocks::timeline
