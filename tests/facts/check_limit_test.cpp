#include "engine/facts/check_limit.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <string>

#include "engine/facts/check.hpp"
#include "engine/facts/interval.hpp"

using namespace twoclocks;
using base::Count;
using facts::Interval;
using facts::LimitClass;
using facts::LimitSet;
using support::id_of;

namespace {

/// "sound", or every trouble with its field.
std::string limit_verdict(facts::Fields fields) {
    std::string out;
    const facts::Body body = support::body({20'576}, {id_of(1), id_of(2)}, std::move(fields));
    for (const base::Problem& problem : facts::check(body)) {
        if (!out.empty()) out += ' ';
        out += std::string{base::name_of(problem.code)} + ':' + problem.field;
    }
    return out.empty() ? "sound" : out;
}

LimitSet tolerant(LimitClass limit_class) {
    LimitSet out = support::limit(100, 0);
    out.limit_class = limit_class;
    out.tolerance.hours = base::hours(10);
    out.tolerance.source = "Programme 3";
    return out;
}

}  // namespace

TEST_CASE("a tolerance needs a source and a class that may have one", "[facts][check]") {
    CHECK(limit_verdict(tolerant(LimitClass::programme)) == "sound");
    CHECK(limit_verdict(tolerant(LimitClass::directive)) == "sound");
    CHECK(limit_verdict(tolerant(LimitClass::recommended)) == "sound");
    CHECK(limit_verdict(tolerant(LimitClass::airworthiness_limitation)) ==
          "tolerance_not_allowed:tolerance_hours");
    LimitSet bare = tolerant(LimitClass::directive);
    bare.tolerance.source.clear();
    CHECK(limit_verdict(bare) == "tolerance_without_source:tolerance_source");
}

TEST_CASE("every setting of a tolerance is refused where none is allowed", "[facts][check]") {
    const auto alone = [](auto set, LimitClass limit_class) {
        LimitSet limit = support::limit(100, 0);
        limit.limit_class = limit_class;
        set(limit.tolerance);
        return limit_verdict(limit);
    };

    struct Row {
        const char* field;
        void (*set)(facts::Tolerance&);
    };

    for (const Row& row :
         {Row{"tolerance_hours", [](facts::Tolerance& t) { t.hours = base::hours(1); }},
          Row{"tolerance_days", [](facts::Tolerance& t) { t.days = 1; }},
          Row{"tolerance_permille", [](facts::Tolerance& t) { t.permille = 1; }},
          Row{"carry_over", [](facts::Tolerance& t) { t.carry_over = facts::CarryOver::from_due; }},
          Row{"overfly_hours", [](facts::Tolerance& t) { t.overfly_hours = base::hours(1); }}}) {
        CAPTURE(row.field);
        CHECK(alone(row.set, LimitClass::airworthiness_limitation) ==
              std::string{"tolerance_not_allowed:"} + row.field);
        CHECK(alone(row.set, LimitClass::programme) == "tolerance_without_source:tolerance_source");
    }
}

TEST_CASE("a cap bounds a percentage, an overfly belongs to a programme", "[facts][check]") {
    LimitSet limit = tolerant(LimitClass::programme);
    limit.tolerance.cap_hours = base::hours(500);
    limit.tolerance.cap_days = 30;
    CHECK(limit_verdict(limit) ==
          "tolerance_cap_alone:tolerance_cap_hours tolerance_cap_alone:tolerance_cap_days");
    limit.tolerance.permille = 100;
    CHECK(limit_verdict(limit) == "sound");
    limit.tolerance.permille = 1000;
    CHECK(limit_verdict(limit) == "sound");
    limit.tolerance.permille = 1001;
    CHECK(limit_verdict(limit) == "number_absurd:tolerance_permille");
    limit.tolerance.permille = -1;
    CHECK(limit_verdict(limit) == "number_absurd:tolerance_permille");
    limit.tolerance.permille = 100;
    limit.tolerance.overfly_hours = base::hours(10);
    CHECK(limit_verdict(limit) == "sound");
    limit.limit_class = LimitClass::directive;
    CHECK(limit_verdict(limit) == "overfly_not_programme:overfly_hours");
}

TEST_CASE("first interval and cap are checked like the interval itself", "[facts][check]") {
    LimitSet limit = support::limit(100, 12);
    limit.first = {base::hours(200), 24, std::nullopt, Count{5}, Count{6}};
    limit.cap = {base::hours(150), std::nullopt, 400, Count{7}, Count{8}};
    CHECK(limit_verdict(limit) == "sound");
    limit.first = {base::FlightTime{0}, 24, 90, Count{0}, Count{0}};
    CHECK(limit_verdict(limit) ==
          "limit_zero:first_hours limit_zero:first_landings limit_zero:first_starts "
          "limit_two_calendars:first_days");
    limit.first = {};
    limit.cap = {{}, 12, 0, {}, {}};
    CHECK(limit_verdict(limit) == "limit_zero:cap_days limit_two_calendars:cap_days");
    limit.cap = {};
    limit.days = 90;
    CHECK(limit_verdict(limit) == "limit_two_calendars:days");
    limit.months = std::nullopt;
    CHECK(limit_verdict(limit) == "sound");
    limit.days = 36'526;
    CHECK(limit_verdict(limit) == "number_absurd:days");
    LimitSet only_first;
    only_first.first.hours = base::hours(5);
    CHECK(limit_verdict(only_first) == "limit_without_any:hours");
}

TEST_CASE("a permit allows something", "[facts][check]") {
    CHECK(limit_verdict(facts::Permit{"Authority", "P 7", "Home to works", {}, {}}) ==
          "permit_without_any:hours");
    CHECK(limit_verdict(facts::Permit{"Authority", {}, {}, base::hours(5), {}}) == "sound");
    CHECK(limit_verdict(facts::Permit{"Authority", {}, {}, {}, base::Date{20'576}}) == "sound");
}

TEST_CASE("intervals are taken apart and compared by clock", "[facts][interval]") {
    const Interval all{base::hours(9), 3, 90, Count{5}, Count{6}};
    CHECK(facts::is_empty({}));
    CHECK_FALSE(facts::is_empty(all));
    CHECK(facts::part(all, facts::Clock::hours).hours == base::hours(9));
    CHECK(facts::is_empty(facts::part({base::hours(9), {}, {}, {}, {}}, facts::Clock::starts)));
    const Interval calendar = facts::part(all, facts::Clock::calendar);
    CHECK((calendar.months == 3 && calendar.days == 90 && !calendar.hours && !calendar.starts));
    const Interval less = facts::lesser(all, {base::hours(8), 4, {}, Count{4}, {}});
    CHECK((less.hours == base::hours(8) && less.months == 3 && less.days == 90));
    CHECK((less.landings == Count{4} && less.starts == Count{6}));
    CHECK(facts::same_clocks({{}, 3, {}, {}, {}}, {{}, {}, 90, {}, {}}));
    CHECK_FALSE(facts::same_clocks({{}, 3, {}, {}, {}}, {base::hours(1), 3, {}, {}, {}}));
}
