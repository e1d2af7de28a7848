// The history marks what an open question asks about: all of it, and no longer than it is open.
#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <vector>

#include "engine/views/make_views.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using support::day;
using support::Hangar;

namespace {

/// Ids of the rows of the aircraft's history that carry the mark; each row alone says the same.
std::vector<base::Id> marked(const Hangar& h, const std::vector<Fact>& more) {
    Journal journal = h.journal;
    for (const Fact& fact : more)
        journal.add(fact);
    std::vector<base::Id> out;
    for (const views::HistoryRow& row : views::make_history_view(journal, h.id(), {}).rows) {
        const Fact& fact = *journal.with_id(row.fact).front();
        if (journal.with_id(row.fact).size() == 1)
            CHECK(views::make_history_row(journal, fact).questioned == row.questioned);
        if (row.questioned) out.push_back(row.fact);
    }
    std::sort(out.begin(), out.end());
    return out;
}

std::vector<base::Id> ids(const std::vector<Fact>& facts) {
    std::vector<base::Id> out;
    for (const Fact& fact : facts)
        out.push_back(fact.id);
    std::sort(out.begin(), out.end());
    return out;
}

}  // namespace

TEST_CASE("two corrections of one record are marked, with the record", "[views][questioned]") {
    Hangar h;
    const Fact first = h.ann.correct(h.reading, support::reads(1650));
    const Fact second = h.ben.correct(h.reading, support::reads(1700));
    CHECK(marked(h, {}).empty());
    CHECK(marked(h, {first}).empty());
    CHECK(marked(h, {first, second}) == ids({h.reading, first, second}));
    const std::vector<facts::Ref> sides{{first.id, 0}, {second.id, 0}};
    CHECK(marked(h, {first, second, h.ann.answer(h.id(), sides, {sides[0]})}).empty());
    // Two who write the same do not disagree.
    CHECK(marked(h, {first, h.ben.correct(h.reading, support::reads(1650))}).empty());
}

TEST_CASE("a correction beside a withdrawal is marked until it is answered",
          "[views][questioned]") {
    Hangar h;
    const Fact correction = h.ann.correct(h.reading, support::reads(1650));
    const Fact withdrawal = h.ben.withdraw(h.reading);
    CHECK(marked(h, {correction, withdrawal}) == ids({h.reading, correction, withdrawal}));
    const std::vector<facts::Ref> sides{{correction.id, 0}, {withdrawal.id, 0}};
    CHECK(marked(h, {correction, withdrawal, h.ann.answer(h.id(), sides, {sides[1]})}).empty());
}

TEST_CASE("readings that fall or run too fast are marked until they are answered",
          "[views][questioned]") {
    for (const std::int64_t tenths : {1400, 19'000}) {
        CAPTURE(tenths);
        Hangar h;
        const Fact odd = h.read(h.ben, "2024-06-20", tenths);
        CHECK(marked(h, {odd}) == ids({h.reading, odd}));
        const std::vector<facts::Ref> sides{{h.reading.id, 0}, {odd.id, 0}};
        CHECK(marked(h, {odd, h.ann.answer(h.id(), sides, {sides[0]})}).empty());
    }
}

TEST_CASE("one id with two bodies is marked until it is answered", "[views][questioned]") {
    Hangar h;
    Fact twin = h.first_reading;
    twin.body.fields = support::reads(1001);
    CHECK(marked(h, {twin}) == ids({h.first_reading, twin}));
    Journal journal = h.journal;
    journal.add(twin);
    const facts::Ref kept = ref_to(journal, twin);
    const facts::Ref other = ref_to(journal, h.first_reading);
    CHECK(marked(h, {twin, h.ann.answer(h.id(), {kept, other}, {kept})}).empty());
    // What is about no aircraft nobody can be asked about: it stays marked.
    Fact loose = h.ann.write(day("2024-05-20"), {}, facts::Note{"Hangar rent due"});
    Journal notes = support::journal_of({loose});
    CHECK_FALSE(views::make_history_row(notes, loose).questioned);
    notes.add([&] {
        Fact copy = loose;
        copy.body.fields = facts::Note{"Hangar rent paid"};
        return copy;
    }());
    CHECK(views::make_history_row(notes, loose).questioned);
}
