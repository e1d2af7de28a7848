// Three devices that edit, save on disks that fail, and exchange whole, stale, repeated and cut-off
// files in any order. After every step each shows exactly what a plain model of it holds; in the
// end, when all files have gone round, the three hold the same and nothing acknowledged is missing.
//
// A seed replays any failure: TWO_CLOCKS_SEED=n canvas_tests "[devices]" runs that script alone,
// TWO_CLOCKS_SCRIPTS=n so many.
#include "catch_amalgamated.hpp"
#include "tests/app/device_script.hpp"

#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <string>

namespace {

using twoclocks::canvas::support::Script;

constexpr std::int64_t short_steps = 60;
constexpr std::int64_t long_steps = 400;  // enough saves for snapshots
#ifdef __EMSCRIPTEN__
constexpr std::int64_t usual_scripts = 100;  // as wasm the same takes minutes
#else
constexpr std::int64_t usual_scripts = 400;  // watched by sanitizers: two minutes
#endif

std::int64_t asked_for(const char* name, std::int64_t otherwise) {
    const char* const given = std::getenv(name);
    return given == nullptr ? otherwise : std::strtoll(given, nullptr, 10);
}

struct Tally {
    std::int64_t saves{0};
    std::int64_t faults{0};
    std::int64_t exchanges{0};

    void run(std::uint64_t seed, std::int64_t steps) {
        CAPTURE(seed, steps);
        Script script{seed, steps};
        script.run();
        saves += script.saves;
        faults += script.faults;
        exchanges += script.exchanges;
    }
};

}  // namespace

TEST_CASE("three devices on failing disks end with the same records, none of them lost",
          "[app][devices]") {
    Tally tally;
    const std::int64_t only = asked_for("TWO_CLOCKS_SEED", -1);
    const std::int64_t scripts = only >= 0 ? 1 : asked_for("TWO_CLOCKS_SCRIPTS", usual_scripts);
    for (std::int64_t script = 0; script < scripts; ++script)
        tally.run(static_cast<std::uint64_t>(only >= 0 ? only : script),
                  script % 50 == 49 ? long_steps : short_steps);
    if (only < 0) tally.run(1'000'003, 1000);
    std::cerr << "# devices: " << scripts << " scripts, " << tally.saves << " saves, "
              << tally.faults << " faults, " << tally.exchanges << " files joined\n";
    CHECK(tally.saves > 0);
    CHECK((only >= 0 || tally.faults > 100));
}
