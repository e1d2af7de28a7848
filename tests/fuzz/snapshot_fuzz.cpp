// A snapshot that lies damaged on the disk. The first two bytes say how many are damaged, then come
// their places and values, then a journal that the snapshot is made from. The check sum is set
// right again, so that what it would have caught is seen by the reader.
#include <cstddef>
#include <cstdint>
#include <fuzzer/FuzzedDataProvider.h>
#include <string>
#include <utility>
#include <vector>

#include "engine/base/hash.hpp"
#include "engine/facts/binary.hpp"
#include "tests/fuzz/must.hpp"
#include "wasm/app/ledger.hpp"

using namespace twoclocks;
using canvas::Ledger;

namespace {

constexpr std::string_view mark = "TwoClocksSnapshot";
constexpr int damaged_most = 16;

/// Where the body of a snapshot begins: after the mark, the version and the check sum.
std::size_t body_at(const std::string& snapshot) {
    std::string_view rest{snapshot};
    rest.remove_prefix(mark.size());
    std::int64_t number = 0;
    fuzz::must(facts::read_whole(rest, number) && facts::read_whole(rest, number));
    return snapshot.size() - rest.size();
}

std::string sealed(const std::string& body) {
    std::string out{mark};
    facts::write_whole(facts::binary_version, out);
    facts::write_whole(base::crc32c(body), out);
    return out + body;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t length) {
    FuzzedDataProvider given{bytes, length};
    std::vector<std::pair<std::uint32_t, std::uint8_t>> damage(
        given.ConsumeIntegralInRange<std::size_t>(0, damaged_most));
    for (auto& [place, value] : damage) {
        place = given.ConsumeIntegral<std::uint16_t>();
        value = given.ConsumeIntegral<std::uint8_t>();
    }
    Ledger first;
    (void)first.take_in("{\"segment\":\"facts\"}\n" + given.ConsumeRemainingBytesAsString());
    const std::string whole = first.snapshot();
    Ledger same;
    fuzz::must(same.take_snapshot(whole));
    fuzz::must(same.snapshot() == whole);
    std::string body = whole.substr(body_at(whole));
    for (const auto& [place, value] : damage)
        body[place % body.size()] = static_cast<char>(value);
    Ledger second;
    if (!second.take_snapshot(sealed(body))) {
        fuzz::must(second.visible().facts().empty());
        return 0;
    }
    // What was accepted is a snapshot like any other.
    Ledger third;
    fuzz::must(third.take_snapshot(second.snapshot()));
    fuzz::must(third.visible().facts().size() == second.visible().facts().size());
    return 0;
}
