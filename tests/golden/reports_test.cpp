// The golden hash: every report of every invented fleet on fixed days. Natively and as wasm this
// test reads the same stored hashes, so both passing proves that both give the same bits.
//
// To store new ones after a wanted change:
//   TWO_CLOCKS_REWRITE=1 build/native/unit_tests '[golden]'
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>

#include "engine/base/hash.hpp"
#include "engine/base/region.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"
#include "engine/views/print_views.hpp"

using namespace twoclocks;
using support::day;
using support::demo_files;
using support::file_text;

namespace {

constexpr const char* stored = "tests/golden/reports.sha256";

// The first day of the first fleet, and days on which each story stands differently.
constexpr const char* report_days[] = {
    "2019-05-06", "2022-06-30", "2024-06-03", "2026-11-21", "2027-03-20", "2031-08-31"};

std::string hash(const std::string& text) {
    return base::print_hex(base::sha256(text));
}

/// A line for every fleet and a last one for all of them.
std::string measured() {
    std::string lines;
    std::string all;
    for (const std::string& file : demo_files()) {
        std::string reports;
        const std::string text = file_text(file);
        for (const char* today : report_days)
            reports += views::print_report(text, day(today), {});
        lines += hash(reports) + "  " + file + '\n';
        all += reports;
    }
    return lines + hash(all) + "  all\n";
}

}  // namespace

TEST_CASE("every report of every fleet is the same to the byte on every build", "[golden][views]") {
    const std::string now = measured();
    const std::string last_line = now.substr(now.rfind('\n', now.size() - 2) + 1);
    std::printf("golden %s\n", last_line.substr(0, 64).c_str());
    if (std::getenv("TWO_CLOCKS_REWRITE") != nullptr) {
        std::string path{HOUSE_ROOT};
        path.append("/").append(stored);
        std::ofstream{path, std::ios::binary} << now;
    }
    CHECK(now == file_text(stored));
}

TEST_CASE("reading and printing a fleet gives its file back", "[golden][facts]") {
    REQUIRE(demo_files().size() >= 4);
    for (const std::string& file : demo_files()) {
        INFO(file);
        const std::string text = file_text(file);
        CHECK(facts::print_journal(support::journal_from(text)) == text);
    }
}

TEST_CASE("a report does not depend on the order of the lines", "[golden][views]") {
    for (const std::string& file : demo_files()) {
        INFO(file);
        const facts::Journal journal = support::journal_from(file_text(file));
        std::string backwards;
        for (const facts::Fact* fact : journal.in_order()) {
            backwards = facts::print_fact(*fact) + '\n' + backwards;
        }
        backwards = facts::print_header() + '\n' + backwards;
        CHECK(views::print_report(backwards, day("2026-11-21"), {}) ==
              views::print_report(file_text(file), day("2026-11-21"), {}));
    }
}
