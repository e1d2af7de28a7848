// Laws of directives on random stories: until it is answered a disagreement makes nothing better,
// the order in which facts come changes nothing, and what is left and used make the limit.
#include "catch_amalgamated.hpp"
#include "tests/support/directed.hpp"
#include "tests/support/random_journal.hpp"

#include <algorithm>

#include "engine/facts/print.hpp"
#include "engine/timeline/question.hpp"

using namespace twoclocks;
using facts::Applicability;
using facts::Directive;
using facts::Fact;
using facts::Journal;
using limits::ClockDue;
using limits::ItemDue;
using support::Directed;
using support::directed;
using support::Random;
using support::shuffled;

namespace {

/// Three directives and a terminating action of ISLE-1, and what two people tell of them.
struct DirectiveStory : Directed {
    explicit DirectiveStory(std::uint64_t seed) : random(seed) {
        for (const char* name : {"D 1", "D 2", "D 3"}) {
            const std::int64_t hours = random.between(50, 900);
            items.push_back(asks(first, name, directed(hours, months())));
        }
        items.push_back(asks(first, "New mast"));
        for (std::int64_t left = random.between(3, 14); left > 0; --left)
            step();
    }

    [[nodiscard]] std::int32_t months() {
        return random.once_in(2) ? 0 : static_cast<std::int32_t>(random.between(1, 24));
    }

    [[nodiscard]] base::Date any_day() {
        return base::add_days(support::day("2023-12-20"),
                              static_cast<std::int32_t>(random.between(0, 200)));
    }

    [[nodiscard]] std::size_t any_item() { return static_cast<std::size_t>(random.between(0, 2)); }

    [[nodiscard]] Directive any_directive() {
        Directive out = support::directive("D");
        out.applies = random.once_in(4) ? static_cast<Applicability>(random.between(0, 2))
                                        : Applicability::applies;
        if (!random.once_in(4)) out.effective_on = any_day();
        if (random.once_in(6)) out.serials = "1-9";
        out.before_flight = random.once_in(5);
        out.credit = random.once_in(2);
        if (random.once_in(2)) out.replaces = {items[any_item()].id};
        if (random.once_in(3)) out.ended_by = {items.back().id};
        return out;
    }

    [[nodiscard]] facts::AlternativeMeans any_means() {
        facts::AlternativeMeans out;
        out.issuer = "Authority";
        out.reference = "M";
        if (!random.once_in(4)) out.interval.hours = base::hours(random.between(20, 900));
        if (random.once_in(3)) out.interval.days = 300;
        if (random.once_in(2)) out.until = any_day();
        return out;
    }

    [[nodiscard]] facts::Fields any_work() {
        const std::size_t item = random.once_in(4) ? items.size() - 1 : any_item();
        return support::renews({items[item].id}, random.between(10'000, 11'600));
    }

    void step() {
        support::Pen& pen = random.once_in(2) ? ann : ben;
        const std::vector<base::Id> about{first, items[any_item()].id};
        switch (random.between(0, 8)) {
            case 0:
            case 1:
            case 2:
                tell.push_back(keep(pen.write(any_day(), about, any_directive())));
                break;
            case 3:
                tell.push_back(keep(pen.write(any_day(), about, any_means())));
                break;
            case 4:
                tell.push_back(keep(pen.write(any_day(), {first}, any_work())));
                break;
            default:
                change(pen);
        }
    }

    void change(support::Pen& pen) {
        if (tell.empty()) return;
        const Fact fact = tell[static_cast<std::size_t>(
            random.between(0, static_cast<std::int64_t>(tell.size()) - 1))];
        if (random.once_in(3)) {
            keep(pen.withdraw(fact));
            return;
        }
        facts::Fields fields = fact.body.fields;
        if (std::holds_alternative<Directive>(fields)) fields = any_directive();
        if (std::holds_alternative<facts::AlternativeMeans>(fields)) fields = any_means();
        if (std::holds_alternative<facts::WorkDone>(fields)) fields = any_work();
        keep(pen.correct(fact, support::body(fact.body.on, fact.body.about, fields)));
    }

    [[nodiscard]] views::Assessed judged(const Journal& from) const {
        return views::assess(timeline::replay(from, first, today), today);
    }

    Random random;
    std::vector<Fact> items;
    std::vector<Fact> tell;
};

[[nodiscard]] bool answer_all(const DirectiveStory& story, Journal& journal, std::uint64_t seed) {
    Random random{seed};
    support::Pen judge{"judge", 1'800'000'000'000};
    for (std::int32_t round = 0; round < 12; ++round) {
        const auto state = timeline::replay(journal, story.first, story.today);
        if (state.questions.empty()) return true;
        const timeline::Question& question = state.questions.front();
        const auto last = static_cast<std::int64_t>(question.sides.size()) - 1;
        const auto side = static_cast<std::size_t>(random.between(0, last));
        const facts::Body body =
            timeline::answer_to(journal, question, side, story.first, story.today);
        journal.add(judge.write(body.on, body.about, body.fields));
    }
    return false;
}

/// What a clock promises is promised by the least of its kind before the answer, or is not known.
[[nodiscard]] bool item_promises_no_more(const ItemDue& open, const ClockDue& settled) {
    if (!settled.known) return true;
    return std::any_of(open.clocks.begin(), open.clocks.end(), [&](const ClockDue& clock) {
        if (clock.clock != settled.clock) return false;
        return !clock.known || (clock.left <= settled.left && clock.days_left <= settled.days_left);
    });
}

}  // namespace

TEST_CASE("an unanswered disagreement makes no directive better than an answer would",
          "[properties][directives]") {
    std::int64_t compared = 0;
    for (std::uint64_t seed = 1; seed <= 3000; ++seed) {
        const DirectiveStory story{seed};
        const views::Assessed open = story.judged(story.journal);
        if (open.state.questions.empty()) continue;
        for (std::uint64_t way = 0; way < 3; ++way) {
            Journal journal = story.journal;
            if (!answer_all(story, journal, seed * 10 + way)) continue;
            const views::Assessed settled = story.judged(journal);
            REQUIRE(open.items.size() == settled.items.size());
            for (std::size_t at = 0; at < open.items.size(); ++at) {
                CAPTURE(seed, way, at, facts::print_journal(journal));
                CAPTURE(Directed::told_of(open.items[at]), Directed::told_of(settled.items[at]));
                // `due` and `act` rest on how fast it is flown, which an answer may change.
                const views::State state = settled.item_states[at];
                const bool by_rate = state == views::State::due || state == views::State::act;
                REQUIRE((by_rate || open.item_states[at] >= state));
                for (const ClockDue& clock : settled.items[at].clocks)
                    REQUIRE(item_promises_no_more(open.items[at], clock));
                ++compared;
            }
        }
    }
    CHECK(compared > 2000);
}

TEST_CASE("the order in which facts come changes no directive", "[properties][directives]") {
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        const DirectiveStory story{seed};
        const views::Assessed before = story.judged(story.journal);
        const views::Assessed after = story.judged(shuffled(story.journal, seed));
        CAPTURE(seed);
        for (std::size_t at = 0; at < before.items.size(); ++at) {
            REQUIRE(before.item_states[at] == after.item_states[at]);
            REQUIRE(Directed::told_of(before.items[at]) == Directed::told_of(after.items[at]));
        }
    }
}

TEST_CASE("what is left and what is used make the limit of a directive, exactly",
          "[properties][directives]") {
    std::int64_t seen = 0;
    for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
        const DirectiveStory story{seed};
        CAPTURE(seed);
        for (const ItemDue& item : story.judged(story.journal).items) {
            for (const ClockDue& clock : item.clocks) {
                if (!clock.known || clock.clock != facts::Clock::hours) continue;
                REQUIRE(clock.left + clock.used == clock.limit_hours);
                ++seen;
            }
        }
    }
    CHECK(seen > 500);
}

TEST_CASE("in every story what is superseded, ended or not here leaves nothing due",
          "[properties][directives]") {
    std::int64_t seen = 0;
    for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
        const DirectiveStory story{seed};
        CAPTURE(seed);
        const views::Assessed now = story.judged(story.journal);
        for (std::size_t at = 0; at < now.items.size(); ++at) {
            const auto& told = now.items[at].directive;
            if (!told || told->standing < limits::DirectiveStanding::ended ||
                told->standing == limits::DirectiveStanding::unknown)
                continue;
            REQUIRE(now.items[at].clocks.empty());
            REQUIRE((now.item_states[at] == views::State::nothing_due || told->unsure));
            ++seen;
        }
    }
    CHECK(seen > 200);
}
