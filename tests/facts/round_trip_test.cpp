// Reading a canonical line and printing it gives the same bytes, for every kind.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <set>
#include <string>

#include "engine/facts/binary.hpp"
#include "engine/facts/fields.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"

using namespace twoclocks;

namespace {

const std::string one = "018c3f8a-0001-7000-8000-000000000001";
const std::string two = "018c3f8a-0002-7000-8000-000000000002";
const std::string content = "0123456789abcdef";

/// A whole line from a kind and what comes after `about`.
std::string line(const std::string& kind, const std::string& about, const std::string& rest) {
    return R"({"id":")" + one + R"(","kind":")" + kind +
           R"(","on":"2026-05-03","at":1777800000000,"tick":0,"device":"d1","by":"Ann",)" +
           R"("about":[)" + about + "]" + rest + "}";
}

std::string both() {
    return '"' + one + R"(",")" + two + '"';
}

std::string first() {
    return '"' + one + '"';
}

/// Limits and permits: as little as they can hold, and as much.
std::vector<std::string> limit_lines() {
    return {
        line("limit",
             both(),
             R"(,"class":"programme","hours":360000,"calendar_rule":"exact","anchor":"unknown")"),
        line("limit",
             both(),
             R"(,"class":"airworthiness_limitation","hours":7920000,"months":144,)"
             R"("landings":3000,"starts":5000,"calendar_rule":"month_end","anchor":"overhaul",)"
             R"("anchor_on":"2022-04-08","anchor_total":3600000,"anchor_landings":10,)"
             R"("anchor_starts":12,"source":"Manual","revision":"5")"),
        line("limit",
             both(),
             R"(,"class":"programme","hours":360000,"calendar_rule":"exact","anchor":"unknown",)"
             R"("source":"Manual","revision":"5","days":90,"first_hours":720000,"first_months":24,)"
             R"("first_landings":5,"first_starts":6,"once":true,"combine":"later",)"
             R"("cap_hours":540000,"cap_months":30,"cap_landings":7,"cap_starts":8,)"
             R"("tolerance_hours":36000,"tolerance_days":30,"tolerance_permille":100,)"
             R"("tolerance_cap_hours":1800000,"tolerance_cap_days":60,"carry_over":"from_due",)"
             R"("overfly_hours":36000,"tolerance_source":"Programme 3")"),
        line("limit",
             both(),
             R"(,"class":"directive","calendar_rule":"exact","anchor":"unknown","days":90,)"
             R"("first_days":30,"combine":"sooner","cap_days":120,"carry_over":"from_done",)"
             R"("tolerance_source":"Directive 7")"),
        line("permit", both(), R"(,"issuer":"Authority","until":"2026-06-01")"),
        line("permit",
             both(),
             R"(,"issuer":"Authority","reference":"P 7","route":"Home to works","hours":18000,)"
             R"("until":"2026-06-01")"),
    };
}

/// The other kinds likewise.
std::vector<std::string> other_lines() {
    const std::string reading =
        R"({"kind":"reading","on":"2026-05-02","about":[)" + both() + R"(],"reads":4444200})";
    return {
        line("aircraft", first(), R"(,"registration":"ISLE-1")"),
        line("aircraft",
             first(),
             R"(,"registration":"ISLE-1","type":"Gannet 2","serial":"G2-1",)"
             R"("manufactured":"2015-01-10","invented":true)"),
        line("aircraft_changed", first(), R"(,"registration":"ISLE-2")"),
        line("aircraft_changed", first(), R"(,"registration":"ISLE-2","why":"Sold")"),
        line("meter", both(), R"(,"drive":"collective","reads":0,"total":0)"),
        line("meter",
             both(),
             R"(,"name":"Second","drive":"oil_pressure","reads":360,"total":3600,"why":"Failed")"),
        line("reading", both(), R"(,"reads":0)"),
        line("reading", both(), R"(,"reads":4444200,"landings":7,"starts":9)"),
        line("item", both(), R"(,"name":"Overhaul","role":"overhaul")"),
        line("item", both(), R"(,"name":"Belt","role":"component","chapter":"63-10")"),
        line("item_changed", both(), R"(,"name":"Drive belt")"),
        line("item_changed", both(), R"(,"name":"Drive belt","why":"Clearer")"),
        line("work", first(), R"(,"what":"Annual","renews":[])"),
        line("work",
             both(),
             R"(,"what":"Annual","renews":[{"item":")" + two + R"("},{"item":")" + one +
                 R"(","clocks":["hours","calendar","landings","starts"]}],"total":4320000,)"
                 R"("landings":100,"starts":200,"place":"Shed","done_by":"R. I.",)"
                 R"("reference":"W 1")"),
        line("usage_planned", first(), R"(,"month":36000)"),
        line("usage_planned", first(), R"(,"month":36000,"why":"Summer")"),
        line("out_of_service", first(), ""),
        line("out_of_service", first(), R"(,"until":"2027-03-15","why":"Winter")"),
        line("note", "", R"(,"text":"")"),
        line("note", first(), R"(,"text":"Two\nlines")"),
        line("correction",
             first(),
             R"(,"replaces":")" + two + R"(","why":"Misread","instead":)" + reading),
        line("correction",
             first(),
             R"(,"replaces":")" + two + "/" + content + R"(","why":"","instead":)" + reading),
        line("withdrawal", first(), R"(,"withdraws":")" + two + R"(","why":"Twice")"),
        line("answer", first(), R"(,"settles":[")" + two + R"("],"keeps":[])"),
        line("answer",
             first(),
             R"(,"settles":[")" + two + "/" + content + R"(",")" + one + R"("],"keeps":[")" + two +
                 "/" + content + R"("],"why":"Logbook")"),
    };
}

/// The kinds about parts, the same way.
std::vector<std::string> part_lines() {
    return {
        line("part", first(), R"(,"part_number":"P-1","serial":"7","condition":"unknown")"),
        line("part",
             first(),
             R"(,"part_number":"P-1","serial":"7","name":"Clutch","chapter":"63-10",)"
             R"("tsn":7200,"tso":3600,"overhauls":1,"landings":5,"starts":6,)"
             R"("manufactured":"2015-01-10","cured":"2015-01-09","shipped":"2015-02-01",)"
             R"("condition":"new","papers":"Tag 1","history_unknown":true,"owner":"Lender",)"
             R"("lent_until":"2027-01-01")"),
        line("part_fitted", both(), ""),
        line("part_fitted",
             both(),
             R"(,"position":"Left","host_total":3600,"tsn":7200,"host_landings":1,)"
             R"("host_starts":2,"reference":"W 1")"),
        line("part_removed", both(), R"(,"condition":"unserviceable")"),
        line("part_removed",
             both(),
             R"(,"host_total":3600,"host_landings":1,"host_starts":2,)"
             R"("condition":"as_removed","why":"Leaks","temporarily":true)"),
        line("part_scrapped", first(), R"(,"proof":"Cut in two")"),
        line("part_moved", first(), ""),
        line("part_moved",
             first(),
             R"(,"place":"Shelf 2","owner":"Ann","lent_to":"Ben","return_by":"2027-01-01",)"
             R"("why":"Asked for it")"),
        line("part_rebuilt", first(), R"(,"document":"RB 1")"),
        line("part_rebuilt",
             first(),
             R"(,"document":"RB 1","host_total":3600,"done_by":"Maker","place":"Works")"),
    };
}

/// Every kind.
std::vector<std::string> lines() {
    std::vector<std::string> out = limit_lines();
    for (auto* const more : {&other_lines, &part_lines}) {
        for (std::string& line : more())
            out.push_back(std::move(line));
    }
    return out;
}

}  // namespace

TEST_CASE("every kind is read and printed back to the same bytes", "[facts][print]") {
    std::set<std::string_view> seen;
    for (const std::string& text : lines()) {
        CAPTURE(text);
        const base::Result<facts::Fact> fact = facts::parse_fact(text, 1);
        REQUIRE(fact.ok());
        CHECK(facts::print_fact(fact.value()) == text);
        CHECK(fact.value().body.extra.empty());
        seen.insert(facts::kind_name(fact.value().body.fields));
    }
    // Every kind of the list stands in the table above; the first word is the unknown kind's.
    CHECK(seen.size() == facts::kind_words.size() - 1);
}

TEST_CASE("every kind survives the form of the snapshot", "[facts][binary]") {
    std::string bytes;
    for (const std::string& text : lines()) {
        facts::write_binary(facts::parse_fact(text, 1).value(), bytes);
    }
    std::string_view in = bytes;
    for (const std::string& text : lines()) {
        CAPTURE(text);
        facts::Fact fact;
        REQUIRE(facts::read_binary(in, fact));
        CHECK(facts::print_fact(fact) == text);
    }
    CHECK(in.empty());
}

TEST_CASE("a snapshot that was cut anywhere is refused, never read past", "[facts][binary]") {
    for (const std::string& text : lines()) {
        std::string bytes;
        facts::write_binary(facts::parse_fact(text, 1).value(), bytes);
        for (std::size_t length = 0; length < bytes.size(); ++length) {
            const std::string cut = bytes.substr(0, length);
            std::string_view in = cut;
            facts::Fact fact;
            CAPTURE(text, length);
            REQUIRE_FALSE(facts::read_binary(in, fact));
        }
    }
}

TEST_CASE("a snapshot with any byte changed is refused or read, never misused", "[facts][binary]") {
    std::int32_t refused = 0;
    std::int32_t accepted = 0;
    for (const std::string& text : lines()) {
        std::string bytes;
        facts::write_binary(facts::parse_fact(text, 1).value(), bytes);
        for (std::size_t at = 0; at < bytes.size(); ++at) {
            for (const unsigned flip : {0x01U, 0x02U, 0x04U, 0x40U, 0x80U}) {
                std::string changed = bytes;
                changed[at] = static_cast<char>(static_cast<unsigned char>(changed[at]) ^ flip);
                std::string_view in = changed;
                facts::Fact fact;
                const bool sound = facts::read_binary(in, fact);
                (sound ? accepted : refused) += 1;
                // What is taken must print with every enumerated word in its place.
                if (!sound) continue;
                const std::string shown = facts::print_fact(fact);
                CAPTURE(text, at, flip, shown);
                REQUIRE(shown.find("\"class\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"condition\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"drive\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"role\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"anchor\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"calendar_rule\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"carry_over\":\"\"") == std::string::npos);
                REQUIRE(shown.find("\"combine\":\"\"") == std::string::npos);
                REQUIRE(shown.find("[\"\"") == std::string::npos);
            }
        }
    }
    CHECK(refused > 1000);
    CHECK(accepted > 1000);
}
