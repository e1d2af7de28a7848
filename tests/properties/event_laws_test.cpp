// Laws of what happened: until it is answered, a disagreement hides no event that an answer would
// leave open, and the order in which facts come changes nothing.
#include "catch_amalgamated.hpp"
#include "tests/support/happened.hpp"
#include "tests/support/random_journal.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "engine/facts/print.hpp"
#include "engine/timeline/question.hpp"

using namespace twoclocks;
using base::Id;
using facts::Fact;
using facts::Journal;
using support::Random;
using support::shuffled;
using timeline::Question;

namespace {

constexpr std::uint64_t event_stories = 2000;

/// Two aircraft, a gearbox and a bearing that go on and off, what happens to them, who signs it,
/// and what two people change of it afterwards.
struct EventStory : support::Happened {
    explicit EventStory(std::uint64_t seed) : random(seed) {
        facts::PartAdded plate = Stores::plate("3");
        plate.name = "Bearing";
        bearing = add(plate);
        for (std::int64_t left = random.between(4, 12); left > 0; --left)
            step();
    }

    [[nodiscard]] base::Date any_day() {
        return base::add_days(support::day("2024-02-01"),
                              static_cast<std::int32_t>(random.between(0, 160)));
    }

    [[nodiscard]] Id any_aircraft() { return random.once_in(2) ? first : second; }

    [[nodiscard]] Id any_part() { return random.once_in(2) ? gearbox.id : bearing.id; }

    [[nodiscard]] std::vector<Id> any_subjects() {
        std::vector<Id> out;
        if (!random.once_in(4)) out.push_back(any_aircraft());
        if (out.empty() || random.once_in(2)) out.push_back(any_part());
        return out;
    }

    void step() {
        support::Pen& pen = random.once_in(2) ? ann : ben;
        switch (random.between(0, 9)) {
            case 0:
            case 1:
                events.push_back(tell(pen.write(any_day(), any_subjects(), facts::Event{})).id);
                break;
            case 2:
            case 3:
                if (!events.empty())
                    tell(pen.write(any_day(), any_subjects(), support::renews({any_event()}, -1)));
                break;
            case 4:
                move(pen, facts::PartFitted{});
                break;
            case 5:
                move(pen, facts::PartRemoved{});
                break;
            default:
                change(pen);
        }
    }

    [[nodiscard]] Id any_event() {
        return events[static_cast<std::size_t>(
            random.between(0, static_cast<std::int64_t>(events.size()) - 1))];
    }

    void move(support::Pen& pen, facts::Fields fields) {
        const Id part = any_part();
        const Id host = part == bearing.id && random.once_in(2) ? gearbox.id : any_aircraft();
        tell(pen.write(any_day(), {part, host}, std::move(fields)));
    }

    void change(support::Pen& pen) {
        if (told.empty()) return;
        const Fact fact = told[static_cast<std::size_t>(
            random.between(0, static_cast<std::int64_t>(told.size()) - 1))];
        if (random.once_in(3)) {
            keep(pen.withdraw(fact));
            return;
        }
        facts::Body instead = fact.body;
        instead.on = any_day();
        const bool moves = std::holds_alternative<facts::PartFitted>(instead.fields) ||
                           std::holds_alternative<facts::PartRemoved>(instead.fields);
        if (!moves && random.once_in(2)) instead.about = any_subjects();
        if (moves && random.once_in(3)) instead.about.back() = any_aircraft();
        keep(pen.correct(fact, instead));
    }

    const Fact& tell(Fact fact) {
        told.push_back(keep(std::move(fact)));
        return told.back();
    }

    Random random;
    Fact bearing;
    std::vector<Id> events;
    std::vector<Fact> told;
};

/// What stops an aircraft: events with the subjects that are open here.
using Open = std::set<std::pair<Id, Id>>;

[[nodiscard]] Open open_on(const Journal& journal, Id aircraft, base::Date today) {
    Open out;
    for (const auto& event : timeline::replay(journal, aircraft, today).events) {
        for (const auto& subject : event.subjects) {
            if (subject.here) out.insert({event.id, subject.id});
        }
    }
    return out;
}

[[nodiscard]] std::vector<std::pair<Id, Question>> questions_of(const EventStory& story,
                                                                const Journal& journal) {
    std::vector<std::pair<Id, Question>> out;
    for (const Id& id : {story.first, story.second}) {
        for (const Question& one : timeline::replay(journal, id, story.today).questions)
            out.emplace_back(id, one);
    }
    for (const Id& id : {story.gearbox.id, story.bearing.id}) {
        for (const Question& one : timeline::replay_part(journal, id, story.today).questions)
            out.emplace_back(id, one);
    }
    return out;
}

/// Answers one question after another at random; false when they do not come to an end.
[[nodiscard]] bool answer_all(const EventStory& story, Journal& journal, std::uint64_t seed) {
    Random random{seed};
    support::Pen judge{"judge", 1'800'000'000'000};
    for (std::int32_t round = 0; round < 20; ++round) {
        const auto questions = questions_of(story, journal);
        if (questions.empty()) return true;
        const auto& [id, question] = questions.front();
        const auto last = static_cast<std::int64_t>(question.sides.size()) - 1;
        const auto side = static_cast<std::size_t>(random.between(0, last));
        const facts::Body body = timeline::answer_to(journal, question, side, id, story.today);
        journal.add(judge.write(body.on, body.about, body.fields));
    }
    return false;
}

}  // namespace

TEST_CASE("an unanswered disagreement hides no event that an answer would leave open",
          "[properties][events]") {
    std::int64_t compared = 0;
    std::int64_t open_after = 0;
    for (std::uint64_t seed = 1; seed <= event_stories; ++seed) {
        const EventStory story{seed};
        if (questions_of(story, story.journal).empty()) continue;
        for (std::uint64_t way = 0; way < 3; ++way) {
            Journal journal = story.journal;
            if (!answer_all(story, journal, seed * 10 + way)) continue;
            for (const Id& aircraft : {story.first, story.second}) {
                const Open before = open_on(story.journal, aircraft, story.today);
                const Open after = open_on(journal, aircraft, story.today);
                CAPTURE(seed, way, facts::print_journal(journal));
                REQUIRE(std::includes(before.begin(), before.end(), after.begin(), after.end()));
                ++compared;
                if (!after.empty()) ++open_after;
            }
        }
    }
    CHECK(compared > 1000);
    CHECK(open_after > 300);
}

TEST_CASE("the order in which facts come changes no event", "[properties][events]") {
    std::int64_t open = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const EventStory story{seed};
        const Journal other = shuffled(story.journal, seed);
        for (const Id& aircraft : {story.first, story.second}) {
            const auto before = timeline::replay(story.journal, aircraft, story.today).events;
            const auto after = timeline::replay(other, aircraft, story.today).events;
            CAPTURE(seed);
            REQUIRE(support::told(before) == support::told(after));
            REQUIRE(before.size() == after.size());
            for (std::size_t at = 0; at < before.size(); ++at) {
                REQUIRE(before[at].id == after[at].id);
                REQUIRE(before[at].on == after[at].on);
            }
            open += static_cast<std::int64_t>(before.size());
        }
    }
    CHECK(open > 100);
}
