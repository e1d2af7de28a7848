// Directives: what serials and part numbers say, what a person decided, which record holds.
#include "catch_amalgamated.hpp"
#include "tests/support/directed.hpp"

#include "engine/timeline/directive_serials.hpp"

using namespace twoclocks;
using facts::Applicability;
using facts::Directive;
using facts::Fact;
using support::day;
using support::Directed;
using support::directed;
using support::directive;
using timeline::Says;

TEST_CASE("serials are read as lists and ranges, and words are not read at all",
          "[timeline][directives]") {
    struct Row {
        const char* serials;
        const char* serial;
        Says says;
    };

    for (const Row& row : {Row{"1001-1234, 1240", "1000", Says::names_others},
                           Row{"1001-1234, 1240", "1001", Says::names_this},
                           Row{"1001-1234, 1240", "1234", Says::names_this},
                           Row{"1001-1234, 1240", "1235", Says::names_others},
                           Row{"1001-1234, 1240", "1239", Says::names_others},
                           Row{"1001-1234, 1240", "1240", Says::names_this},
                           Row{"1001 - 1234; 1240", "1240", Says::names_this},
                           Row{"1001-1234", "01001", Says::names_this},
                           Row{"K1001-K1234", "K1100", Says::names_this},
                           Row{"K1001-K1234", "1100", Says::names_others},
                           Row{"K1001-L1234", "K1100", Says::names_others},
                           Row{"AB-12", "AB-12", Says::names_this},
                           Row{"1001 and up", "1100", Says::nothing},
                           Row{"1001 and up, 1100", "1100", Says::names_this},
                           Row{"", "1100", Says::nothing},
                           Row{" , ", "1100", Says::nothing},
                           Row{"1001-1234", "", Says::nothing},
                           Row{"1234-1001", "1100", Says::names_others}}) {
        CAPTURE(row.serials, row.serial);
        CHECK(timeline::serials_say(row.serials, row.serial) == row.says);
    }
    CHECK(timeline::are_readable("1001-1234, 1240"));
    CHECK(timeline::are_readable(""));
    CHECK_FALSE(timeline::are_readable("1001-1234, 1240 and up"));
}

TEST_CASE("a person decides; serials or a part number that disagree make it count and are shown",
          "[timeline][directives]") {
    struct Row {
        Applicability applies;
        const char* serials;      // the gearbox is serial 7
        const char* part_number;  // and number GB-1
        const char* stands;
        bool doubted;
    };

    constexpr auto here = Applicability::applies;
    constexpr auto not_here = Applicability::not_applicable;
    constexpr auto unknown = Applicability::unknown;
    for (const Row& row : {Row{here, "", "", "open -2000", false},
                           Row{here, "1-9", "GB-1", "open -2000", false},
                           Row{here, "8-9", "", "open -2000", true},
                           Row{here, "1-9", "GB-2", "open -2000", true},
                           Row{not_here, "", "", "not here", false},
                           Row{not_here, "8-9", "", "not here", false},
                           Row{not_here, "1-9", "GB-2", "not here", false},
                           Row{not_here, "1-9", "", "open -2000", true},
                           Row{not_here, "", "GB-1", "open -2000", true},
                           Row{unknown, "", "", "unknown ?", false},
                           Row{unknown, "1-9", "GB-1", "unknown ?", false},
                           Row{unknown, "8-9", "", "unknown ?", false}}) {
        CAPTURE(static_cast<int>(row.applies), row.serials, row.part_number);
        Directed s;
        Directive told = directive("D 1");
        told.applies = row.applies;
        told.serials = row.serials;
        told.part_number = row.part_number;
        const Fact item = s.rests(s.gearbox.id, told, directed(100));
        CHECK(Directed::told_of(s.due(s.gearbox, item)) == row.stands);
        CHECK(s.state(s.gearbox).items.front().directive->doubted == row.doubted);
        CHECK(s.state(s.gearbox).cautions.size() == (row.doubted ? 1 : 0));
    }
}

TEST_CASE("on an aircraft a part number names it while such a part may be aboard",
          "[timeline][directives]") {
    Directed s;
    Directive told = directive("D 1");
    told.applies = Applicability::not_applicable;
    told.part_number = "GB-1";
    const Fact item = s.rests(s.first, told, directed(100));
    CHECK(s.stands(item) == "not here");
    const Fact fit = s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    CHECK(s.stands(item) == "open -10600");
    CHECK(s.cautions() == "directive_named_here");
    s.remove(s.gearbox, s.first, "2024-04-01", 11'200);
    CHECK(s.stands(item) == "not here");
    // Taken back by one of two: it may be aboard still.
    s.keep(s.ann.withdraw(s.fit(s.gearbox, s.first, "2024-05-01", 11'300)));
    CHECK(s.stands(item) == "not here");
    const Fact again = s.fit(s.gearbox, s.first, "2024-05-02", 11'300);
    s.keep(s.ann.withdraw(again));
    s.keep(s.ben.correct(again, facts::PartFitted{"Main", {}, {}, {}, {}, {}}));
    CHECK(s.stands(item) == "open -10600");
}

TEST_CASE("the last record of a directive by its day holds, and one of a day to come does not",
          "[timeline][directives]") {
    Directed s;
    Directive told = directive("D 1");
    told.applies = Applicability::unknown;
    const Fact item = s.rests(s.first, told, directed(2000));
    CHECK(s.stands(item) == "unknown ?");
    told.applies = Applicability::not_applicable;
    s.told(s.first, item, told, "2024-05-01");
    CHECK(s.stands(item) == "not here");
    told.applies = Applicability::applies;
    s.told(s.first, item, told, "2024-07-02");
    CHECK(s.stands(item) == "not here");
    s.told(s.first, item, told, "2024-07-01");
    CHECK(s.stands(item) == "open 8400");
}
