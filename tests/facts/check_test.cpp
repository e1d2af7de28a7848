#include "engine/facts/check.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <string>
#include <vector>

#include "engine/facts/fields.hpp"

using namespace twoclocks;
using base::Count;
using base::FlightTime;
using facts::Body;
using facts::Fields;
using support::id_of;

namespace {

constexpr base::Date on{20'576};  // 2026-05-03
const std::vector<base::Id> none{};
const std::vector<base::Id> one{id_of(1)};
const std::vector<base::Id> two{id_of(1), id_of(2)};
const FlightTime most = base::hours(base::most_hours);

/// "sound", or every trouble with its field.
std::string verdict(const Body& body) {
    std::string out;
    for (const base::Problem& problem : facts::check(body)) {
        if (!out.empty()) out += ' ';
        out += std::string{base::name_of(problem.code)} + ':' + problem.field;
    }
    return out.empty() ? "sound" : out;
}

std::string verdict(const std::vector<base::Id>& about, Fields fields) {
    return verdict(support::body(on, about, std::move(fields)));
}

facts::Reading reading(FlightTime reads, Count landings, Count starts) {
    return {reads, landings, starts};
}

facts::LimitSet months(std::int32_t count) {
    facts::LimitSet out;
    out.months = count;
    return out;
}

facts::LimitSet hours(FlightTime time) {
    facts::LimitSet out;
    out.hours = time;
    return out;
}

facts::LimitSet counts(std::int64_t landings, std::int64_t starts) {
    facts::LimitSet out;
    out.landings = Count{landings};
    out.starts = Count{starts};
    return out;
}

}  // namespace

TEST_CASE("hours run from nothing to 200,000", "[facts][check]") {
    CHECK(verdict(two, reading({0}, {0}, {0})) == "sound");
    CHECK(verdict(two, reading({-1}, {0}, {0})) == "hours_negative:reads");
    CHECK(verdict(two, reading(most, {0}, {0})) == "sound");
    CHECK(verdict(two, reading(most + FlightTime{1}, {0}, {0})) == "hours_absurd:reads");
    CHECK(verdict(two, hours({1})) == "sound");
    CHECK(verdict(two, hours({0})) == "limit_zero:hours");
    CHECK(verdict(two, hours({-1})) == "hours_negative:hours");
    CHECK(verdict(two, hours(most + FlightTime{1})) == "hours_absurd:hours");
    CHECK(verdict(two, facts::MeterFitted{{}, {}, {-1}, {-1}, {}}) ==
          "hours_negative:reads hours_negative:total");
    CHECK(verdict(one, facts::UsagePlanned{{-1}, {}}) == "hours_negative:month");
    CHECK(verdict(one, facts::UsagePlanned{{0}, {}}) == "sound");
}

TEST_CASE("counts run from nothing to ten million", "[facts][check]") {
    CHECK(verdict(two, reading({0}, {base::most_counts}, {base::most_counts})) == "sound");
    CHECK(verdict(two, reading({0}, {base::most_counts + 1}, {0})) == "count_absurd:landings");
    CHECK(verdict(two, reading({0}, {-1}, {0})) == "count_absurd:landings");
    CHECK(verdict(two, reading({0}, {0}, {base::most_counts + 1})) == "count_absurd:starts");
    CHECK(verdict(two, reading({0}, {0}, {-1})) == "count_absurd:starts");
    CHECK(verdict(two, counts(1, 1)) == "sound");
    CHECK(verdict(two, counts(0, 1)) == "limit_zero:landings");
    CHECK(verdict(two, counts(1, 0)) == "limit_zero:starts");
}

TEST_CASE("months run from one to 1,200", "[facts][check]") {
    CHECK(verdict(two, months(-1)) == "months_absurd:months");
    CHECK(verdict(two, months(0)) == "limit_zero:months");
    CHECK(verdict(two, months(1)) == "sound");
    CHECK(verdict(two, months(1200)) == "sound");
    CHECK(verdict(two, months(1201)) == "months_absurd:months");
}

TEST_CASE("a limit limits something", "[facts][check]") {
    CHECK(verdict(two, facts::LimitSet{}) == "limit_without_any:hours");
    facts::LimitSet anchored = hours({3600});
    anchored.anchor_total = most + FlightTime{1};
    anchored.anchor_landings = Count{-1};
    anchored.anchor_starts = Count{-1};
    CHECK(verdict(two, anchored) ==
          "hours_absurd:anchor_total count_absurd:anchor_landings count_absurd:anchor_starts");
}

namespace {

/// A record of a kind, and how many subjects it has to name.
struct Row {
    Fields fields;
    std::size_t needed;
};

/// In the order of the kinds.
std::vector<Row> every_kind() {
    const auto instead =
        std::make_shared<const Body>(support::body(on, none, facts::Note{"Washed"}));
    return {
        Row{facts::UnknownKind{"vibration"}, 0},
        Row{facts::AircraftAdded{"ISLE-1", {}, {}, {}, false}, 1},
        Row{facts::AircraftChanged{"ISLE-2", {}}, 1},
        Row{hours({3600}), 2},
        Row{facts::MeterFitted{}, 2},
        Row{facts::Reading{}, 2},
        Row{facts::ItemAdded{"Belt", {}, {}}, 2},
        Row{facts::ItemChanged{"Belt", {}}, 2},
        Row{support::renews({}, 0), 1},
        Row{facts::UsagePlanned{}, 1},
        Row{facts::OutOfService{}, 1},
        Row{facts::Note{"Washed"}, 0},
        Row{facts::Correction{{id_of(1), 0}, "w", instead}, 1},
        Row{facts::Withdrawal{{id_of(1), 0}, "w"}, 1},
        Row{facts::Answer{{{id_of(1), 0}}, {}, {}}, 1},
        Row{facts::Permit{"Authority", {}, {}, base::hours(5), {}}, 2},
        Row{facts::PartAdded{}, 1},
        Row{facts::PartFitted{}, 2},
        Row{facts::PartRemoved{}, 2},
        Row{facts::PartScrapped{"Cut up"}, 1},
        Row{facts::PartMoved{}, 1},
        Row{facts::PartRebuilt{"RB 1", {}, {}, {}}, 1},
        Row{support::directive("D 1"), 2},
        Row{facts::AlternativeMeans{"Authority", "A 1", {}, {}, {}, {}, {}}, 2},
        Row{facts::Event{}, 1},
        Row{facts::WearLimit{500, "mm", facts::WearSense::at_most, {}, {}}, 2},
        Row{facts::Wear{500, "mm", {}, {}, {}}, 2},
        Row{facts::MeterAdjusted{facts::AdjustReason::dead, {}, {}, "Flight log", {}}, 2},
        Row{facts::WorkRule{"Overhaul", {}, {}, {}}, 1},
        Row{facts::HoursFactor{facts::Operation::training, 1500, "Letter 3", {}}, 1},
        Row{facts::FlownAs{}, 1},
        Row{facts::PlanTask{"kit", {}, {}, {}, {}, {}, {}, {}, {}, {}}, 1},
        Row{facts::PlanStep{"kit", {}, {}, {}}, 1},
        Row{facts::PlanTerms{}, 1},
        Row{facts::Closed{}, 1},
        Row{support::route("r1"), 1},
        Row{facts::PlanCosts{}, 1},
        Row{facts::PlanKept{}, 1},
        Row{support::cost_line("kit"), 1},
        Row{facts::PriceList{"Kits", "K-1\t90.00 EUR\tKit\n", {}}, 1},
        Row{facts::ExchangeRate{"USD", "EUR", "0.9", {}}, 1},
        Row{facts::CostTerms{}, 1},
    };
}

}  // namespace

TEST_CASE("every kind names enough of what it is about", "[facts][check]") {
    const std::vector<Row> rows = every_kind();
    REQUIRE(rows.size() == std::variant_size_v<Fields>);
    for (std::size_t at = 0; at < rows.size(); ++at) {
        CAPTURE(facts::kind_name(rows[at].fields));
        REQUIRE(rows[at].fields.index() == at);
        const std::vector<base::Id> all[] = {none, one, two};
        for (std::size_t given = 0; given <= 2; ++given) {
            CAPTURE(given);
            const char* expected = given < rows[at].needed ? "about_missing:about" : "sound";
            CHECK(verdict(all[given], rows[at].fields) == expected);
        }
    }
}

TEST_CASE("a correction is checked with what it puts in place", "[facts][check]") {
    const auto instead =
        std::make_shared<const Body>(support::body(on, one, reading({-1}, {-1}, {0})));
    CHECK(verdict(one, facts::Correction{{id_of(1), 0}, "w", instead}) ==
          "hours_negative:reads count_absurd:landings about_missing:about");
}

TEST_CASE("an answer settles something", "[facts][check]") {
    CHECK(verdict(one, facts::Answer{{}, {}, {}}) == "answer_empty:settles");
    CHECK(verdict(one, facts::Answer{{{id_of(1), 0}}, {}, {}}) == "sound");
}

TEST_CASE("directives, wear and use name what they rest on", "[facts][check]") {
    CHECK(verdict(two, facts::Directive{}) == "directive_without_number:number");
    facts::AlternativeMeans means;
    means.interval.months = 2;
    means.interval.days = 60;
    means.interval.landings = Count{0};
    means.grace_days = 1201;
    CHECK(verdict(two, means) ==
          "number_absurd:grace_days approval_without_reference:reference limit_zero:landings "
          "limit_two_calendars:days");
    CHECK(verdict(two, facts::Wear{-1, {}, {}, {}, {}}) ==
          "number_absurd:value_thousandths wear_without_unit:unit");
    CHECK(verdict(two, facts::WearLimit{-1, {}, facts::WearSense::at_least, {}, {}}) ==
          "number_absurd:limit_thousandths wear_without_unit:unit");
    CHECK(verdict(two, facts::MeterAdjusted{}) == "source_needed:source");
    CHECK(verdict(one, facts::HoursFactor{facts::Operation::training, 1000, "L 3", {}}) == "sound");
    CHECK(verdict(one, facts::HoursFactor{facts::Operation::training, 999, {}, {}}) ==
          "source_needed:source factor_below_one:factor_thousandths");
    CHECK(verdict(one, facts::FlownAs{facts::Operation::training, on, base::hours(1), {}}) ==
          "sound");
    CHECK(verdict(one,
                  facts::FlownAs{
                      facts::Operation::training, base::add_days(on, 1), base::hours(1), {}}) ==
          "flown_backwards:from");
}

TEST_CASE("a rebuild names its document, and hours of parts are hours", "[facts][check]") {
    CHECK(verdict(one, facts::PartRebuilt{}) == "rebuild_without_document:document");
    facts::PartAdded added;
    added.tsn = FlightTime{-1};
    added.tso = most + FlightTime{1};
    added.overhauls = Count{-1};
    CHECK(verdict(one, added) == "hours_negative:tsn hours_absurd:tso count_absurd:overhauls");
    facts::PartFitted fitted;
    fitted.host_total = FlightTime{-1};
    fitted.host_starts = Count{base::most_counts + 1};
    CHECK(verdict(two, fitted) == "hours_negative:host_total count_absurd:host_starts");
}
