#include "engine/views/otherwise.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/region.hpp"
#include "engine/facts/related.hpp"
#include "engine/timeline/question.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using base::Id;
using base::Message;
using facts::Journal;
using timeline::PartState;
using timeline::Question;

/// Which side of each question is chosen; none: it stays open.
using Way = std::vector<std::optional<std::size_t>>;

/// Every way of answering all of them.
[[nodiscard]] std::vector<Way> all_ways(const std::vector<Question>& questions) {
    std::vector<Way> out{{}};
    for (const Question& question : questions) {
        std::vector<Way> longer;
        for (const Way& way : out) {
            for (std::size_t side = 0; side < question.sides.size(); ++side) {
                longer.push_back(way);
                longer.back().emplace_back(side);
            }
        }
        out = std::move(longer);
    }
    return out;
}

/// Every way of answering one of them while the others stay open.
[[nodiscard]] std::vector<Way> single_ways(const std::vector<Question>& questions) {
    std::vector<Way> out;
    for (std::size_t place = 0; place < questions.size(); ++place) {
        for (std::size_t side = 0; side < questions[place].sides.size(); ++side) {
            out.emplace_back(questions.size());
            out.back()[place] = side;
        }
    }
    return out;
}

[[nodiscard]] bool has_more(const std::vector<Question>& questions) {
    std::size_t ways = 1;
    for (const Question& question : questions) {
        ways *= question.sides.size();
        if (ways > most_ways) return true;
    }
    return false;
}

/// The records as they would be with the answers of one way.
[[nodiscard]] Journal answered(const Journal& journal,
                               const std::vector<Question>& questions,
                               const Way& way,
                               Id subject,
                               Date today) {
    // Nobody's id: a real one says its version.
    constexpr std::uint64_t nobody = ~0ULL;
    Journal out = journal;
    for (std::size_t place = 0; place < questions.size(); ++place) {
        if (!way[place]) continue;
        facts::Body body = timeline::answer_to(out, questions[place], *way[place], subject, today);
        out.add({Id{nobody, place}, questions[place].sides.front().fact.stamp, {}, body});
    }
    return out;
}

/// Works everything out again for each way of answering.
void add_ways(Assessed& recorded,
              const Journal& journal,
              Id subject,
              base::FunctionRef<Assessed(const Journal&)> work_out) {
    const std::vector<Question> questions = open_questions(recorded);
    if (questions.empty()) return;
    const Journal related = facts::related_to(journal, subject);
    recorded.has_more_ways = has_more(questions);
    std::vector<Way> ways = single_ways(questions);
    if (questions.size() > 1 && !recorded.has_more_ways) {
        for (Way& way : all_ways(questions))
            ways.push_back(std::move(way));
    }
    for (const Way& way : ways) {
        recorded.otherwise.push_back(
            work_out(answered(related, questions, way, subject, recorded.today)));
    }
}

/// True when an explanation names a record that an open question asks about.
[[nodiscard]] bool rests_on_question(const Assessed& aircraft, const Why& why) {
    const auto names = [&](const facts::Fact& fact) {
        return std::any_of(why.lines.begin(), why.lines.end(), [&](const WhyLine& line) {
            return line.fact == fact.id;
        });
    };
    const std::vector<Question> questions = open_questions(aircraft);
    return std::any_of(questions.begin(), questions.end(), [&](const Question& question) {
        return std::any_of(
            question.sides.begin(), question.sides.end(), [&](const timeline::Side& side) {
                return names(side.fact) || std::any_of(side.same.begin(), side.same.end(), names);
            });
    });
}

}  // namespace

std::optional<Assessed> assess_recorded(const Journal& journal, Id aircraft, Date today) {
    const auto work_out = [&](const Journal& records) {
        return assess(timeline::replay(records, aircraft, today),
                      today,
                      timeline::parts_of(records, aircraft, today));
    };
    Assessed out = work_out(journal);
    if (out.state.withdrawn) return std::nullopt;
    add_ways(out, journal, aircraft, work_out);
    return out;
}

Assessed assess_part(const Journal& journal, const PartState& part, Date today) {
    Assessed out = assess({}, today, {part});
    add_ways(out, journal, part.id, [&](const Journal& records) {
        return assess({}, today, {timeline::replay_part(records, part.id, today)});
    });
    return out;
}

bool reads_alike(const Message& left, const Message& right) {
    return left == right || base::say(left, {}) == base::say(right, {});
}

Told told(const Assessed& aircraft, base::FunctionRef<Message(const Assessed&)> tell) {
    Told out{tell(aircraft), false};
    for (const Assessed& other : aircraft.otherwise)
        out.questioned = out.questioned || !reads_alike(tell(other), out.text);
    return out;
}

Told told_of_part(const Assessed& aircraft,
                  const PartState& part,
                  base::FunctionRef<Message(const PartState&)> tell) {
    Told out{tell(part), false};
    for (const Assessed& other : aircraft.otherwise) {
        const auto found = std::find_if(other.parts.begin(),
                                        other.parts.end(),
                                        [&](const auto& one) { return one.id == part.id; });
        const bool alike = found != other.parts.end() && reads_alike(tell(*found), out.text);
        out.questioned = out.questioned || !alike;
    }
    return out;
}

Figure marked(const Assessed& aircraft, base::FunctionRef<Figure(const Assessed&)> tell) {
    Figure out = tell(aircraft);
    const bool questioned =
        told(aircraft, [&](const Assessed& other) { return tell(other).text; }).questioned;
    mark(aircraft, out, questioned);
    return out;
}

void mark(const Assessed& aircraft, Figure& figure, bool questioned) {
    figure.questioned = mark(aircraft, figure.why, questioned);
}

bool mark(const Assessed& aircraft, Why& why, bool questioned) {
    const bool marks = questioned || (aircraft.has_more_ways && rests_on_question(aircraft, why));
    if (marks)
        why.lines.insert(why.lines.begin(), WhyLine{{base::Word::why_questioned, {}}, {}, false});
    return marks;
}

}  // namespace twoclocks::views
