// Laws of wear: a trend never extends an interval, wear never makes a state milder, and until it
// is answered a disagreement makes nothing better.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/random_journal.hpp"
#include "tests/support/worn.hpp"

#include <algorithm>

#include "engine/facts/print.hpp"
#include "engine/timeline/question.hpp"
#include "engine/views/wear_view.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using facts::WearSense;
using support::Random;
using support::shuffled;
using timeline::Question;
using timeline::WearFinding;
using timeline::WearVerdict;

namespace {

/// Measurements and limits of one item, and what two people change of them.
struct WearStory : support::Worn {
    explicit WearStory(std::uint64_t seed) : random(seed) {
        for (std::int64_t left = random.between(2, 10); left > 0; --left)
            step();
    }

    [[nodiscard]] std::int32_t small(std::int64_t least, std::int64_t most) {
        return static_cast<std::int32_t>(random.between(least, most));
    }

    [[nodiscard]] base::Date any_day() {
        return base::add_days(support::day("2024-01-02"), small(0, 190));
    }

    [[nodiscard]] facts::Fields any_wear() {
        facts::Wear out{small(1'000, 5'000), random.once_in(12) ? "in" : "mm", {}, {}, {}};
        if (random.once_in(2)) out.total = base::hours(random.between(1000, 1160));
        return out;
    }

    [[nodiscard]] facts::Fields any_limit() {
        const auto sense = random.once_in(6) ? WearSense::at_least : WearSense::at_most;
        return facts::WearLimit{small(2'000, 6'000), "mm", sense, "Manual", {}};
    }

    void step() {
        support::Pen& pen = random.once_in(2) ? ann : ben;
        switch (random.between(0, 5)) {
            case 0:
                told.push_back(keep(pen.write(any_day(), with(check), any_limit())));
                break;
            case 1:
            case 2:
                told.push_back(keep(pen.write(any_day(), with(check), any_wear())));
                break;
            default:
                change(pen);
        }
    }

    void change(support::Pen& pen) {
        if (told.empty()) return;
        const Fact fact = told[static_cast<std::size_t>(
            random.between(0, static_cast<std::int64_t>(told.size()) - 1))];
        if (random.once_in(3)) {
            keep(pen.withdraw(fact));
            return;
        }
        const bool measured = std::holds_alternative<facts::Wear>(fact.body.fields);
        keep(pen.correct(fact,
                         support::body(random.once_in(2) ? any_day() : fact.body.on,
                                       fact.body.about,
                                       measured ? any_wear() : any_limit())));
    }

    [[nodiscard]] std::optional<WearFinding> judged(const Journal& from) const {
        for (const auto& item : timeline::replay(from, id(), today).items) {
            if (item.id == check.id && item.wear) return timeline::judge_wear(*item.wear);
        }
        return std::nullopt;
    }

    Random random;
    std::vector<Fact> told;
};

[[nodiscard]] bool answer_all(const WearStory& story, Journal& journal, std::uint64_t seed) {
    Random random{seed};
    support::Pen judge{"judge", 1'800'000'000'000};
    for (std::int32_t round = 0; round < 12; ++round) {
        const auto state = timeline::replay(journal, story.id(), story.today);
        if (state.questions.empty()) return true;
        const Question& question = state.questions.front();
        const auto last = static_cast<std::int64_t>(question.sides.size()) - 1;
        const auto side = static_cast<std::size_t>(random.between(0, last));
        const facts::Body body =
            timeline::answer_to(journal, question, side, story.id(), story.today);
        journal.add(judge.write(body.on, body.about, body.fields));
    }
    return false;
}

[[nodiscard]] std::int64_t left_of(const WearFinding& finding) {
    return timeline::wear_left(finding.bound->limit, finding.point->value_thousandths);
}

/// No answer says worse than what is said before it. A limit that an answer takes away altogether
/// leaves nothing to say.
void compare(const WearFinding& open, const WearFinding& settled) {
    if (settled.verdict == WearVerdict::no_limit) return;
    if (settled.verdict == WearVerdict::past) REQUIRE(open.verdict == WearVerdict::past);
    if (open.verdict != WearVerdict::sound) return;
    REQUIRE(settled.verdict == WearVerdict::sound);
    REQUIRE(left_of(open) <= left_of(settled));
}

}  // namespace

TEST_CASE("an unanswered disagreement makes no wear better than an answer would",
          "[properties][wear]") {
    std::int64_t compared = 0;
    for (std::uint64_t seed = 1; seed <= 3000; ++seed) {
        const WearStory story{seed};
        const auto open = story.judged(story.journal);
        if (!open || timeline::replay(story.journal, story.id(), story.today).questions.empty())
            continue;
        for (std::uint64_t way = 0; way < 3; ++way) {
            Journal journal = story.journal;
            if (!answer_all(story, journal, seed * 10 + way)) continue;
            const auto settled = story.judged(journal);
            if (!settled) continue;
            CAPTURE(seed, way, facts::print_journal(journal));
            compare(*open, *settled);
            ++compared;
        }
    }
    CHECK(compared > 1000);
}

TEST_CASE("the order in which facts come changes no wear", "[properties][wear]") {
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        const WearStory story{seed};
        const auto before = story.judged(story.journal);
        const auto after = story.judged(shuffled(story.journal, seed));
        CAPTURE(seed);
        REQUIRE(before.has_value() == after.has_value());
        if (!before) continue;
        REQUIRE(before->verdict == after->verdict);
        REQUIRE(before->point.has_value() == after->point.has_value());
        if (before->point) REQUIRE(before->point->fact == after->point->fact);
    }
}

TEST_CASE("a trend never gives a later day than the interval, and wear never a milder state",
          "[properties][wear]") {
    std::int64_t sooner = 0;
    for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
        WearStory story{seed};
        timeline::AircraftState with = timeline::replay(story.journal, story.id(), story.today);
        timeline::AircraftState without = with;
        for (timeline::ItemState& item : without.items)
            item.wear.reset();
        const views::Assessed worn = views::assess(with, story.today);
        const views::Assessed bare = views::assess(without, story.today);
        CAPTURE(seed, facts::print_journal(story.journal));
        for (std::size_t at = 0; at < worn.items.size(); ++at) {
            const auto place = static_cast<std::int32_t>(at);
            REQUIRE(worn.item_states[at] >= bare.item_states[at]);
            REQUIRE(worn.projections[at].likely == bare.projections[at].likely);
            const auto interval = bare.projections[at].likely;
            const auto trend = views::wear_first(worn, place);
            if (!trend) continue;
            REQUIRE((!interval || *trend < *interval));
            REQUIRE((*trend >= story.today || views::is_worn_past(worn, place)));
            ++sooner;
        }
        REQUIRE(worn.overall >= bare.overall);
    }
    CHECK(sooner > 50);
}
