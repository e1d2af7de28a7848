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

constexpr base::Date recorded_on{20'576};  // 2026-05-03
const std::vector<base::Id> about_none{};
const std::vector<base::Id> about_one{id_of(1)};
const std::vector<base::Id> about_two{id_of(1), id_of(2)};
const FlightTime most_time = base::hours(base::most_hours);

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
    return verdict(support::body(recorded_on, about, std::move(fields)));
}

facts::Reading reading(FlightTime reads, Count landings, Count starts) {
    return {reads, landings, starts};
}

facts::LimitSet limit_months(std::int32_t count) {
    facts::LimitSet out;
    out.months = count;
    return out;
}

facts::LimitSet limit_hours(FlightTime time) {
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
    CHECK(verdict(about_two, reading({0}, {0}, {0})) == "sound");
    CHECK(verdict(about_two, reading({-1}, {0}, {0})) == "hours_negative:reads");
    CHECK(verdict(about_two, reading(most_time, {0}, {0})) == "sound");
    CHECK(verdict(about_two, reading(most_time + FlightTime{1}, {0}, {0})) == "hours_absurd:reads");
    CHECK(verdict(about_two, limit_hours({1})) == "sound");
    CHECK(verdict(about_two, limit_hours({0})) == "limit_zero:hours");
    CHECK(verdict(about_two, limit_hours({-1})) == "hours_negative:hours");
    CHECK(verdict(about_two, limit_hours(most_time + FlightTime{1})) == "hours_absurd:hours");
    CHECK(verdict(about_two, facts::MeterFitted{{}, {}, {-1}, {-1}, {}}) ==
          "hours_negative:reads hours_negative:total");
    CHECK(verdict(about_one, facts::UsagePlanned{{-1}, {}}) == "hours_negative:month");
    CHECK(verdict(about_one, facts::UsagePlanned{{0}, {}}) == "sound");
}

TEST_CASE("counts run from nothing to ten million", "[facts][check]") {
    CHECK(verdict(about_two, reading({0}, {base::most_counts}, {base::most_counts})) == "sound");
    CHECK(verdict(about_two, reading({0}, {base::most_counts + 1}, {0})) ==
          "count_absurd:landings");
    CHECK(verdict(about_two, reading({0}, {-1}, {0})) == "count_absurd:landings");
    CHECK(verdict(about_two, reading({0}, {0}, {base::most_counts + 1})) == "count_absurd:starts");
    CHECK(verdict(about_two, reading({0}, {0}, {-1})) == "count_absurd:starts");
    CHECK(verdict(about_two, counts(1, 1)) == "sound");
    CHECK(verdict(about_two, counts(0, 1)) == "limit_zero:landings");
    CHECK(verdict(about_two, counts(1, 0)) == "limit_zero:starts");
}

TEST_CASE("months run from one to 1,200", "[facts][check]") {
    CHECK(verdict(about_two, limit_months(-1)) == "months_absurd:months");
    CHECK(verdict(about_two, limit_months(0)) == "limit_zero:months");
    CHECK(verdict(about_two, limit_months(1)) == "sound");
    CHECK(verdict(about_two, limit_months(1200)) == "sound");
    CHECK(verdict(about_two, limit_months(1201)) == "months_absurd:months");
}

TEST_CASE("a limit limits something", "[facts][check]") {
    CHECK(verdict(about_two, facts::LimitSet{}) == "limit_without_any:hours");
    facts::LimitSet anchored = limit_hours({3600});
    anchored.anchor_total = most_time + FlightTime{1};
    anchored.anchor_landings = Count{-1};
    anchored.anchor_starts = Count{-1};
    CHECK(verdict(about_two, anchored) ==
          "hours_absurd:anchor_total count_absurd:anchor_landings count_absurd:anchor_starts");
}

namespace {

/// A record of a kind, and how many subjects it has to name.
struct NeededRow {
    Fields fields;
    std::size_t needed;
};

/// In the order of the kinds.
std::vector<NeededRow> every_kind() {
    const auto instead =
        std::make_shared<const Body>(support::body(recorded_on, about_none, facts::Note{"Washed"}));
    return {
        NeededRow{facts::UnknownKind{"vibration"}, 0},
        NeededRow{facts::AircraftAdded{"ISLE-1", {}, {}, {}, false}, 1},
        NeededRow{facts::AircraftChanged{"ISLE-2", {}}, 1},
        NeededRow{limit_hours({3600}), 2},
        NeededRow{facts::MeterFitted{}, 2},
        NeededRow{facts::Reading{}, 2},
        NeededRow{facts::ItemAdded{"Belt", {}, {}}, 2},
        NeededRow{facts::ItemChanged{"Belt", {}}, 2},
        NeededRow{support::renews({}, 0), 1},
        NeededRow{facts::UsagePlanned{}, 1},
        NeededRow{facts::OutOfService{}, 1},
        NeededRow{facts::Note{"Washed"}, 0},
        NeededRow{facts::Correction{{id_of(1), 0}, "w", instead}, 1},
        NeededRow{facts::Withdrawal{{id_of(1), 0}, "w"}, 1},
        NeededRow{facts::Answer{{{id_of(1), 0}}, {}, {}}, 1},
        NeededRow{facts::Permit{"Authority", {}, {}, base::hours(5), {}}, 2},
        NeededRow{facts::PartAdded{}, 1},
        NeededRow{facts::PartFitted{}, 2},
        NeededRow{facts::PartRemoved{}, 2},
        NeededRow{facts::PartScrapped{"Cut up"}, 1},
        NeededRow{facts::PartMoved{}, 1},
        NeededRow{facts::PartRebuilt{"RB 1", {}, {}, {}}, 1},
        NeededRow{support::directive("D 1"), 2},
        NeededRow{facts::AlternativeMeans{"Authority", "A 1", {}, {}, {}, {}, {}}, 2},
        NeededRow{facts::Event{}, 1},
        NeededRow{facts::WearLimit{500, "mm", facts::WearSense::at_most, {}, {}}, 2},
        NeededRow{facts::Wear{500, "mm", {}, {}, {}}, 2},
        NeededRow{facts::MeterAdjusted{facts::AdjustReason::dead, {}, {}, "Flight log", {}}, 2},
        NeededRow{facts::WorkRule{"Overhaul", {}, {}, {}}, 1},
        NeededRow{facts::HoursFactor{facts::Operation::training, 1500, "Letter 3", {}}, 1},
        NeededRow{facts::FlownAs{}, 1},
        NeededRow{facts::PlanTask{"kit", {}, {}, {}, {}, {}, {}, {}, {}, {}}, 1},
        NeededRow{facts::PlanStep{"kit", {}, {}, {}}, 1},
        NeededRow{facts::PlanTerms{}, 1},
        NeededRow{facts::Closed{}, 1},
        NeededRow{support::route("r1"), 1},
        NeededRow{facts::PlanCosts{}, 1},
        NeededRow{facts::PlanKept{}, 1},
        NeededRow{support::cost_line("kit"), 1},
        NeededRow{facts::PriceList{"Kits", "K-1\t90.00 EUR\tKit\n", {}}, 1},
        NeededRow{facts::ExchangeRate{"USD", "EUR", "0.9", {}}, 1},
        NeededRow{facts::CostTerms{}, 1},
        NeededRow{support::core("gearbox"), 1},
        NeededRow{facts::CoreStep{"gearbox", {}, {}, {}, {}, {}}, 1},
        NeededRow{facts::PayTerm{"deposit", {}, {}, {}, 300, {}, {}, {}, {}}, 1},
        NeededRow{facts::Payment{{}, base::Money{}, {}, {}, {}}, 1},
        NeededRow{facts::Balance{"Reserve", base::Money{}, {}}, 1},
        NeededRow{facts::ReserveTerms{}, 1},
        NeededRow{facts::Holder{"Ann", {}, 500, {}}, 1},
        NeededRow{facts::ItemPrice{base::Money{}, {}}, 2},
        NeededRow{support::closing("lien"), 1},
    };
}

}  // namespace

TEST_CASE("every kind names enough of what it is about", "[facts][check]") {
    const std::vector<NeededRow> rows = every_kind();
    REQUIRE(rows.size() == std::variant_size_v<Fields>);
    for (std::size_t at = 0; at < rows.size(); ++at) {
        CAPTURE(facts::kind_name(rows[at].fields));
        REQUIRE(rows[at].fields.index() == at);
        const std::vector<base::Id> all[] = {about_none, about_one, about_two};
        for (std::size_t given = 0; given <= 2; ++given) {
            CAPTURE(given);
            const char* expected = given < rows[at].needed ? "about_missing:about" : "sound";
            CHECK(verdict(all[given], rows[at].fields) == expected);
        }
    }
}

TEST_CASE("a correction is checked with what it puts in place", "[facts][check]") {
    const auto instead = std::make_shared<const Body>(
        support::body(recorded_on, about_one, reading({-1}, {-1}, {0})));
    CHECK(verdict(about_one, facts::Correction{{id_of(1), 0}, "w", instead}) ==
          "hours_negative:reads count_absurd:landings about_missing:about");
}

TEST_CASE("an answer settles something", "[facts][check]") {
    CHECK(verdict(about_one, facts::Answer{{}, {}, {}}) == "answer_empty:settles");
    CHECK(verdict(about_one, facts::Answer{{{id_of(1), 0}}, {}, {}}) == "sound");
}

TEST_CASE("directives, wear and use name what they rest on", "[facts][check]") {
    CHECK(verdict(about_two, facts::Directive{}) == "directive_without_number:number");
    facts::AlternativeMeans means;
    means.interval.months = 2;
    means.interval.days = 60;
    means.interval.landings = Count{0};
    means.grace_days = 1201;
    CHECK(verdict(about_two, means) ==
          "number_absurd:grace_days approval_without_reference:reference limit_zero:landings "
          "limit_two_calendars:days");
    CHECK(verdict(about_two, facts::Wear{-1, {}, {}, {}, {}}) ==
          "number_absurd:value_thousandths wear_without_unit:unit");
    CHECK(verdict(about_two, facts::WearLimit{-1, {}, facts::WearSense::at_least, {}, {}}) ==
          "number_absurd:limit_thousandths wear_without_unit:unit");
    CHECK(verdict(about_two, facts::MeterAdjusted{}) == "source_needed:source");
    CHECK(verdict(about_one, facts::HoursFactor{facts::Operation::training, 1000, "L 3", {}}) ==
          "sound");
    CHECK(verdict(about_one, facts::HoursFactor{facts::Operation::training, 999, {}, {}}) ==
          "source_needed:source factor_below_one:factor_thousandths");
    CHECK(verdict(about_one,
                  facts::FlownAs{facts::Operation::training, recorded_on, base::hours(1), {}}) ==
          "sound");
    CHECK(verdict(about_one,
                  facts::FlownAs{facts::Operation::training,
                                 base::add_days(recorded_on, 1),
                                 base::hours(1),
                                 {}}) == "flown_backwards:from");
}

TEST_CASE("a rebuild names its document, and hours of parts are hours", "[facts][check]") {
    CHECK(verdict(about_one, facts::PartRebuilt{}) == "rebuild_without_document:document");
    facts::PartAdded added;
    added.tsn = FlightTime{-1};
    added.tso = most_time + FlightTime{1};
    added.overhauls = Count{-1};
    CHECK(verdict(about_one, added) ==
          "hours_negative:tsn hours_absurd:tso count_absurd:overhauls");
    facts::PartFitted fitted;
    fitted.host_total = FlightTime{-1};
    fitted.host_starts = Count{base::most_counts + 1};
    CHECK(verdict(about_two, fitted) == "hours_negative:host_total count_absurd:host_starts");
}
