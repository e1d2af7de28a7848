// Merge is set union: laws that hold for any three journals.
#include "catch_amalgamated.hpp"
#include "tests/support/random_journal.hpp"
#include "tests/support/told_part.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/facts/print.hpp"
#include "engine/views/print_views.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using facts::merge;
using facts::print_journal;
using support::random_today;
using support::RandomJournal;
using support::shuffled;

namespace {

constexpr std::uint64_t merge_cases = 1000;
constexpr std::uint64_t cases_with_views = 250;

/// All that is shown of the aircraft: state, figures, whys, questions and history; and its parts.
std::string shown(const Journal& journal, base::Id aircraft) {
    const views::Assessed assessed =
        views::assess(timeline::replay(journal, aircraft, random_today), random_today);
    std::string out;
    facts::print_json(views::to_json(views::make_aircraft_view(assessed), {}), out);
    facts::print_json(views::to_json(views::make_history_view(journal, aircraft, {}), {}), out);
    for (const timeline::PartState& part : timeline::replay_parts(journal, random_today))
        out += '\n' + support::told(part);
    return out;
}

bool holds(const Journal& journal, const Fact& fact) {
    const std::string line = facts::print_fact(fact);
    const std::vector<const Fact*> same = journal.with_id(fact.id);
    return std::any_of(same.begin(), same.end(), [&](const Fact* other) {
        return facts::print_fact(*other) == line;
    });
}

}  // namespace

TEST_CASE("merging is commutative, associative and idempotent", "[properties][merge]") {
    for (std::uint64_t seed = 1; seed <= merge_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed};
        const auto& [a, b, c] = random.devices();
        const std::string all = print_journal(random.all());
        REQUIRE(print_journal(merge(a, b)) == print_journal(merge(b, a)));
        REQUIRE(print_journal(merge(a, merge(b, c))) == all);
        REQUIRE(print_journal(merge(c, merge(b, a))) == all);
        REQUIRE(print_journal(merge(merge(a, b), a)) == print_journal(merge(a, b)));
        REQUIRE(print_journal(merge(a, a)) == print_journal(a));
        REQUIRE(print_journal(merge(a, {})) == print_journal(a));
    }
}

TEST_CASE("merging never loses a fact and invents none", "[properties][merge]") {
    for (std::uint64_t seed = 1; seed <= merge_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed};
        const Journal all = random.all();
        std::size_t most = 0;
        for (const Journal& device : random.devices()) {
            for (const Fact& fact : device.facts())
                REQUIRE(holds(all, fact));
            most = std::max(most, device.facts().size());
        }
        REQUIRE(all.facts().size() >= most);
        for (const Fact& fact : all.facts()) {
            const auto& devices = random.devices();
            REQUIRE(std::any_of(devices.begin(), devices.end(), [&](const Journal& device) {
                return holds(device, fact);
            }));
        }
    }
}

TEST_CASE("what is shown does not depend on the order facts came in", "[properties][replay]") {
    for (std::uint64_t seed = 1; seed <= cases_with_views; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed, {20, true, true, true}};
        const Journal all = random.all();
        const Journal mixed = shuffled(all, seed);
        REQUIRE(facts::fingerprint(mixed) == facts::fingerprint(all));
        REQUIRE(shown(mixed, random.aircraft()) == shown(all, random.aircraft()));
    }
}

TEST_CASE("what is shown does not depend on the batches facts came in", "[properties][replay]") {
    for (std::uint64_t seed = 1; seed <= cases_with_views; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed, {20, true, true, true}};
        const auto& [a, b, c] = random.devices();
        const Journal twice = merge(merge(merge(c, a), merge(b, c)), a);
        REQUIRE(shown(twice, random.aircraft()) == shown(random.all(), random.aircraft()));
    }
}

TEST_CASE("a random journal is read and printed back to the same bytes", "[properties][facts]") {
    for (std::uint64_t seed = 1; seed <= merge_cases; ++seed) {
        CAPTURE(seed);
        const std::string text = print_journal(RandomJournal{seed}.all());
        REQUIRE(print_journal(support::journal_from(text)) == text);
    }
}
