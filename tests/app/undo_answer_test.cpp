// Taking back that an answer was withdrawn.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"
#include "wasm/app/undo.hpp"

#include <string>
#include <variant>

#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"

using namespace twoclocks;
using canvas::Signer;
using canvas::take_back;

TEST_CASE("an answer that was withdrawn and is wanted back is given once more", "[app][undo]") {
    facts::Journal journal;
    twoclocks::support::Pen ann{"ann"};
    const auto on = twoclocks::support::day("2024-05-01");
    const facts::Fact added = ann.write(on, {}, facts::AircraftAdded{});
    const facts::Fact first = ann.write(on, {added.id}, facts::Note{"One"});
    const facts::Fact answer = ann.answer(added.id, {{first.id, 0}}, {{first.id, 0}});
    const facts::Fact gone = ann.withdraw(answer);
    for (const facts::Fact& fact : {added, first, answer, gone})
        journal.add(fact);
    Signer signer;
    const auto again = take_back({gone.id}, journal, on, signer);
    REQUIRE(again.size() == 1);
    // What is written must be read again: a correction cannot hold an answer.
    CHECK(std::holds_alternative<facts::Answer>(again.front().body.fields));
    std::string text = facts::print_header() + '\n' + facts::print_fact(again.front()) + '\n';
    CHECK(facts::parse_journal(text).problems.empty());
}
