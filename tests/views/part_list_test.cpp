#include "catch_amalgamated.hpp"
#include "tests/support/said.hpp"
#include "tests/support/stores.hpp"

#include <map>
#include <string>
#include <vector>

#include "engine/views/part_list_view.hpp"

using namespace twoclocks;
using facts::Fact;
using support::day;
using support::said;
using support::Stores;
using views::PartListView;
using views::PartsAsked;

namespace {

using Lines = std::vector<std::string>;

PartListView listed(const Stores& s, base::Id aircraft, const PartsAsked& asked = {}) {
    const std::map<base::Id, std::string> registrations{{s.first, "ISLE-1"}, {s.second, "ISLE-2"}};
    return views::make_part_list(
        timeline::replay_parts(s.journal, s.today), registrations, aircraft, asked);
}

/// Titles of groups, and under each the serials, a mark for each assembly they are in.
Lines list_told(const PartListView& view) {
    Lines out;
    for (const views::PartGroup& group : view.groups) {
        out.push_back(said(group.title) + ':');
        for (const views::PartRow& row : group.rows) {
            const std::string plate = said(row.plate);
            out.push_back(std::string(static_cast<std::size_t>(row.depth), '>') +
                          plate.substr(plate.rfind(' ') + 1));
        }
    }
    return out;
}

/// A gearbox 7 on ISLE-1 with a bearing 8 and in that a race 9; 10 on ISLE-2, 11 on the shelf, 12
/// lent, 13 scrapped, 14 on something that nobody recorded.
struct Spread : Stores {
    Spread() {
        fit(gearbox, first, "2024-01-10", 10'200);
        const Fact bearing = add(named("8", "Bearing"));
        fit(bearing, gearbox.id, "2024-01-10", 3000);
        fit(add(named("9", "Race")), bearing.id, "2024-01-10", -1);
        fit(add(named("10", "Blade")), second, "2024-01-10", 5100);
        const Fact shelf = add(named("11", "Belt"));
        keep(ann.write(day("2024-02-01"), {shelf.id}, facts::PartMoved{"Bin 3", {}, {}, {}, {}}));
        const Fact lent = add(named("12", "Belt"));
        keep(ann.write(day("2024-02-01"), {lent.id}, facts::PartMoved{{}, {}, "Ben", {}, {}}));
        const Fact scrapped = add(named("13", "Belt"));
        keep(ann.write(day("2024-02-01"), {scrapped.id}, facts::PartScrapped{"Cut in two"}));
        fit(add(named("14", "Belt")), base::Id{7, 7}, "2024-02-01", -1);
    }

    [[nodiscard]] static facts::PartAdded named(const char* serial, const char* name) {
        facts::PartAdded out = plate(serial);
        out.name = name;
        return out;
    }
};

}  // namespace

TEST_CASE("the parts of an aircraft stand under their assemblies", "[views][parts]") {
    const Spread s;
    CHECK(list_told(listed(s, s.first)) == Lines{"On ISLE-1:", "7", ">8", ">>9"});
    CHECK(list_told(listed(s, s.second)) == Lines{"On ISLE-2:", "10"});
    CHECK(said(listed(s, s.first).summary) == "3 of 3 parts");
    CHECK(listed(s, s.first).registration == "ISLE-1");
}

TEST_CASE("all parts are grouped by where they are", "[views][parts]") {
    const Spread s;
    const Lines all{"On ISLE-1:",
                    "7",
                    ">8",
                    ">>9",
                    "On ISLE-2:",
                    "10",
                    "On the shelf:",
                    "11",
                    "Lent:",
                    "12",
                    "Scrapped:",
                    "13",
                    "Fitted to something not recorded:",
                    "14"};
    CHECK(list_told(listed(s, s.first, {{}, true})) == all);
    CHECK(list_told(listed(s, {}, {{}, true})) == all);
    const PartListView view = listed(s, {}, {{}, true});
    CHECK(said(view.groups[2].rows[0].position) == "Bin 3");
    CHECK(said(view.groups[3].rows[0].position) == "Ben");
}

TEST_CASE("a search finds a part by name, number, serial or place, in any letters",
          "[views][parts]") {
    const Spread s;
    const auto found = [&](const char* search) {
        return list_told(listed(s, s.first, {search, true}));
    };
    CHECK(found("bEARing") == Lines{"On ISLE-1:", "8"});
    CHECK(found("bin 3") == Lines{"On the shelf:", "11"});
    CHECK(found("ben") == Lines{"Lent:", "12"});
    CHECK(found("gb-1").size() == 14);
    CHECK(found("nothing like it").empty());
    const PartListView view = listed(s, s.first, {"bearing", true});
    CHECK(said(view.summary) == "1 of 8 parts");
    // Cut off from its assembly, it says what it is in.
    REQUIRE(view.groups.front().rows.front().marks.size() == 1);
    CHECK(said(view.groups.front().rows.front().marks.front()) == "in Main gearbox 7");
}

TEST_CASE("a row says in words what is unknown and marks an estimate", "[views][parts]") {
    Stores s;
    s.fit(s.gearbox, s.first, "2024-02-10", -1);
    facts::PartAdded worn = Stores::plate("8");
    worn.name.clear();
    worn.history_unknown = true;
    worn.condition = facts::PartCondition::unserviceable;
    s.fit(s.add(worn), s.first, "2024-03-01", 11'000);
    const PartListView view = listed(s, s.first);
    REQUIRE(view.groups.size() == 1);
    const views::PartRow& blank = view.groups[0].rows[0];
    CHECK(said(blank.name) == "GB-1");
    CHECK(said(blank.plate) == "number GB-1, serial 8");
    CHECK(said(blank.since_new) == "unknown");
    CHECK(said(blank.since_overhaul) == "unknown");
    CHECK(said(blank.condition) == "unserviceable");
    REQUIRE(blank.marks.size() == 1);
    CHECK(said(blank.marks[0]) == "history unknown");
    const views::PartRow& estimated = view.groups[0].rows[1];
    CHECK(said(estimated.name) == "Main gearbox");
    CHECK(said(estimated.position) == "Main");
    // From at least 1,000.0 h to 1,160.0 h on what had 300.0 h.
    CHECK(said(estimated.since_new) == "about 460.0 h");
    REQUIRE(estimated.marks.size() == 1);
    CHECK(said(estimated.marks[0]) == "hours estimated");
}

TEST_CASE("parts in one another are listed once, where nothing recorded holds them",
          "[views][parts]") {
    Stores s;
    const Fact other = s.add(Stores::plate("8"));
    s.fit(s.gearbox, other.id, "2024-01-10", -1);
    s.fit(other, s.gearbox.id, "2024-01-10", -1);
    const PartListView view = listed(s, {}, {{}, true});
    CHECK(said(view.summary) == "2 of 2 parts");
    REQUIRE(view.groups.size() == 1);
    CHECK(said(view.groups[0].title) == "Fitted to something not recorded");
    CHECK(view.groups[0].rows.size() == 2);
}

TEST_CASE("two aircraft of one registration keep their parts apart", "[views][parts]") {
    const Spread s;
    const std::map<base::Id, std::string> same{{s.first, "ISLE-1"}, {s.second, "ISLE-1"}};
    const auto parts = timeline::replay_parts(s.journal, s.today);
    CHECK(list_told(views::make_part_list(parts, same, s.second, {})) == Lines{"On ISLE-1:", "10"});
}
