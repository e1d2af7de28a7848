// Any bytes as a journal file: nothing crashes, what is read prints the same when it is read again,
// and joining it twice changes nothing.
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"
#include "engine/timeline/parts.hpp"
#include "engine/views/assess.hpp"
#include "tests/fuzz/must.hpp"

using namespace twoclocks;

namespace {

const base::Date today{20'782};  // 2026-11-25
constexpr std::size_t replayed_most = 3;

void replay(const facts::Journal& journal) {
    std::size_t count = 0;
    for (const base::Id& id : journal.aircraft()) {
        if (++count > replayed_most) return;
        (void)views::assess(timeline::replay(journal, id, today),
                            today,
                            timeline::parts_of(journal, id, today));
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t length) {
    const std::string text{reinterpret_cast<const char*>(bytes), length};
    const facts::Parsed parsed = facts::parse_journal(text);
    facts::Journal journal;
    for (const facts::Fact& fact : parsed.facts) {
        const std::string printed = facts::print_fact(fact);
        const base::Result<facts::Fact> again = facts::parse_fact(printed, 1);
        fuzz::must(static_cast<bool>(again));
        fuzz::must(facts::print_fact(again.value()) == printed);
        journal.add(fact);
    }
    const std::size_t known = journal.facts().size();
    for (const facts::Fact& fact : parsed.facts)
        journal.add(fact);
    fuzz::must(journal.facts().size() == known);
    replay(journal);
    return 0;
}
