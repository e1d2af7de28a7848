// A part of a journal: what is in it, what is not, and that it joins the whole without a trace.
#include "engine/facts/excerpt.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"
#include "tests/support/random_journal.hpp"

#include "engine/base/money.hpp"
#include "engine/facts/print.hpp"

using namespace twoclocks;
using namespace twoclocks::facts;
using support::day;
using support::Hangar;

namespace {

std::size_t with_names(const Journal& journal) {
    std::size_t out = 0;
    for (const Fact& fact : journal.facts())
        out += fact.by.empty() ? 0U : 1U;
    return out;
}

base::Money euro(std::int64_t whole) {
    return {whole * 100, base::parse_currency("EUR").value()};
}

}  // namespace

TEST_CASE("without money no amount is left, nor what corrects or takes back one",
          "[facts][excerpt]") {
    Hangar h;
    const std::size_t before = h.journal.facts().size();
    CostLine line = support::cost_line("kit");
    line.price = euro(1000);
    const Fact cost = h.ann.write(day("2024-06-01"), {h.id()}, line);
    Route route = support::route("works");
    route.price = euro(5000);
    const Fact priced = h.ann.write(day("2024-06-01"), {h.id()}, route);
    const Fact unpriced = h.ann.write(day("2024-06-01"), {h.id()}, support::route("near"));
    const Fact correction =
        h.ann.write(day("2024-06-02"),
                    {h.id()},
                    Correction{{cost.id, 0}, "typed wrong", std::make_shared<Body>(cost.body)});
    const Fact withdrawal =
        h.ben.write(day("2024-06-03"), {h.id()}, Withdrawal{{correction.id, 0}, "was right"});
    const Fact other =
        h.ben.write(day("2024-06-03"), {h.id()}, Withdrawal{{h.reading.id, 0}, "misread"});
    for (const Fact& fact : {cost, priced, unpriced, correction, withdrawal, other})
        h.journal.add(fact);
    const Excerpt excerpt = excerpt_of(h.journal, {std::nullopt, false, true});
    CHECK(excerpt.journal.facts().size() == before + 2);
    CHECK(excerpt.journal.with_id(unpriced.id).size() == 1);
    CHECK(excerpt.journal.with_id(other.id).size() == 1);
    CHECK(print_journal(excerpt.journal).find("EUR") == std::string::npos);
    CHECK(excerpt.kept_names == 0);
    CHECK(with_names(excerpt.journal) == excerpt.journal.facts().size());
    CHECK(fingerprint(merge(h.journal, excerpt.journal)) == fingerprint(h.journal));
}

TEST_CASE("a record without its signature is the same record", "[facts][excerpt]") {
    Hangar h;
    const Excerpt bare = excerpt_of(h.journal, {std::nullopt, true, false});
    CHECK(bare.journal.facts().size() == h.journal.facts().size());
    CHECK(with_names(bare.journal) == 0);
    // Joined either way round nothing is doubled, and every signature is there.
    const std::string whole = print_journal(h.journal);
    CHECK(print_journal(merge(h.journal, bare.journal)) == whole);
    CHECK(print_journal(merge(bare.journal, h.journal)) == whole);
    CHECK(print_journal(merge(bare.journal, bare.journal)) == print_journal(bare.journal));
    Fact named = h.reading;
    Fact bare_one = named;
    bare_one.by.clear();
    CHECK(holds(named, bare_one));
    CHECK_FALSE(holds(bare_one, named));
    Fact by_ben = named;
    by_ben.by = "ben";
    CHECK_FALSE(holds(named, by_ben));
    CHECK_FALSE(holds(h.work, named));
}

TEST_CASE("two of one number keep the signatures that tell them apart", "[facts][excerpt]") {
    Hangar h;
    Fact twin = h.reading;
    twin.by = "ben";
    h.journal.add(twin);
    const Excerpt excerpt = excerpt_of(h.journal, {std::nullopt, true, false});
    CHECK(excerpt.kept_names == 2);
    CHECK(excerpt.journal.with_id(h.reading.id).size() == 2);
    CHECK(print_journal(merge(h.journal, excerpt.journal)) == print_journal(h.journal));
}

TEST_CASE("one aircraft comes with what bears on it and with nothing else", "[facts][excerpt]") {
    Hangar h;
    AircraftAdded added;
    added.registration = "OTHER-1";
    const Fact other = h.ann.add(day("2024-01-01"), {}, added);
    h.journal.add(other);
    const Excerpt excerpt = excerpt_of(h.journal, {h.id(), true, true});
    CHECK(excerpt.journal.facts().size() == h.journal.facts().size() - 1);
    CHECK(excerpt.journal.with_id(other.id).empty());
    CHECK(excerpt_of(h.journal, {other.id, true, true}).journal.facts().size() == 1);
}

TEST_CASE("of a part that flew elsewhere its hours come along, and nothing else of there",
          "[facts][excerpt]") {
    Hangar h;
    AircraftAdded added;
    added.registration = "OTHER-1";
    const Fact other = h.ben.add(day("2023-01-01"), {}, added);
    MeterFitted fitted;
    const Fact meter = h.ben.add(day("2023-01-01"), {other.id}, fitted);
    const Fact reading = h.ben.write(day("2023-06-01"), {other.id, meter.id}, support::reads(500));
    const Fact misread = h.ben.write(day("2023-07-01"), {other.id, meter.id}, support::reads(900));
    const Fact taken_back = h.ben.withdraw(misread);
    CostLine line = support::cost_line("kit");
    const Fact cost = h.ben.write(day("2023-06-01"), {other.id}, line);
    const Fact note = h.ben.write(day("2023-06-01"), {other.id}, Note{"sold to a friend"});
    PartAdded plate;
    plate.part_number = "G-1";
    plate.serial = "7";
    const Fact part = h.ben.add(day("2023-01-01"), {}, plate);
    const Fact on_other = h.ben.write(day("2023-01-01"), {part.id, other.id}, PartFitted{});
    const Fact off = h.ben.write(day("2023-07-01"), {part.id, other.id}, PartRemoved{});
    const Fact on_this = h.ben.write(day("2024-02-01"), {part.id, h.id()}, PartFitted{});
    plate.serial = "8";
    const Fact strange = h.ben.add(day("2023-01-01"), {}, plate);
    const Fact on_other_too = h.ben.write(day("2023-01-01"), {strange.id, other.id}, PartFitted{});
    plate.serial = "9";
    const Fact lender = h.ben.add(day("2023-01-01"), {}, plate);
    const Fact in_lender = h.ben.write(day("2023-01-01"), {part.id, lender.id}, PartFitted{});
    const Fact of_lender = h.ben.write(day("2023-01-01"), {lender.id, other.id}, PartFitted{});
    const Fact lender_note = h.ben.write(day("2023-01-01"), {lender.id}, Note{"bought cheaply"});
    for (const Fact& fact : {lender,
                             in_lender,
                             of_lender,
                             lender_note,
                             other,
                             meter,
                             reading,
                             misread,
                             taken_back,
                             cost,
                             note,
                             part,
                             on_other,
                             off,
                             on_this,
                             strange,
                             on_other_too})
        h.journal.add(fact);
    const Journal out = excerpt_of(h.journal, {h.id(), true, true}).journal;
    const auto is_in = [&](const Fact& fact) { return !out.with_id(fact.id).empty(); };
    for (const Fact& fact : {other,
                             meter,
                             reading,
                             misread,
                             taken_back,
                             part,
                             on_other,
                             off,
                             on_this,
                             lender,
                             in_lender,
                             of_lender})
        CHECK(is_in(fact));
    for (const Fact& fact : {cost, note, strange, on_other_too, lender_note})
        CHECK_FALSE(is_in(fact));
}

TEST_CASE("without money a chain of corrections goes whole, and what is newer goes too",
          "[facts][excerpt]") {
    Hangar h;
    Route route = support::route("works");
    const Fact first = h.ann.write(day("2024-06-01"), {h.id()}, route);
    route.kit_days = 30;
    const Fact second = h.ann.correct(first, Fields{route});
    route.price = euro(5000);
    const Fact third = h.ann.correct(second, Fields{route});
    const Fact newer = h.ann.write(day("2024-06-01"), {h.id()}, UnknownKind{"invoice"});
    for (const Fact& fact : {first, second, third, newer})
        h.journal.add(fact);
    const Excerpt out = excerpt_of(h.journal, {std::nullopt, false, true});
    for (const Fact& fact : {first, second, third, newer})
        CHECK(out.journal.with_id(fact.id).empty());
    CHECK(out.newer_left == 1);
    CHECK(excerpt_of(h.journal, {std::nullopt, true, true}).newer_left == 0);
}

TEST_CASE("whoever had a record without its signature still names it", "[facts][excerpt]") {
    Hangar h;
    Fact bare = h.reading;
    bare.by.clear();
    CHECK(names({bare.id, content_of(bare)}, h.reading));
    CHECK(names({bare.id, content_of(h.reading)}, h.reading));
    CHECK_FALSE(names({bare.id, content_of(h.reading)}, bare));
}

TEST_CASE("any part of any journal joins the whole without a trace", "[facts][excerpt][laws]") {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        CAPTURE(seed);
        const Journal journal = support::RandomJournal{seed}.all();
        const std::string whole = print_journal(journal);
        std::vector<std::optional<base::Id>> asked{std::nullopt};
        for (const base::Id& id : journal.aircraft())
            asked.emplace_back(id);
        for (const auto& aircraft : asked)
            for (const bool has_money : {true, false})
                for (const bool has_names : {true, false}) {
                    const Journal part =
                        excerpt_of(journal, {aircraft, has_money, has_names}).journal;
                    CHECK(print_journal(merge(journal, part)) == whole);
                    CHECK(print_journal(merge(part, journal)) == whole);
                }
    }
}
