// Readings and parts out of tables: nothing saved before it was shown, nothing taken that two
// people would read differently.
#include "tests/app/limit_bench.hpp"

#include <algorithm>

using namespace twoclocks;
using namespace twoclocks::canvas;
using base::Trouble;
using canvas::support::Hangar;
using canvas::support::said;

namespace {

/// Chooses a file for the field of the form that is open.
void choose_table(Hangar& h, const std::string& bytes) {
    h.app.apply(intent::ChooseFieldFile{"file"});
    h.app.file_chosen("table.csv", bytes);
}

std::string told(Hangar& h) {
    std::string out;
    for (const base::Message& line : h.field("faults").told)
        out += said(line) + '\n';
    return out;
}

template <class Kind>
std::size_t count_of(Hangar& h) {
    const auto all = h.records();
    return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [](const auto& fact) {
        return std::holds_alternative<Kind>(fact.body.fields);
    }));
}

}  // namespace

TEST_CASE("readings come out of a table once they were shown", "[app][table]") {
    Hangar h;
    const std::size_t before = count_of<facts::Reading>(h);
    h.open(FormKind::readings_table, {});
    CHECK(h.find("faults") == nullptr);
    choose_table(h, "Date,Hours\r\n01/12/2026,1010.0\r\n25/11/2026,1003.4\r\n");
    CHECK(said(h.field("column-0").options.at(1)) == "Column 1: Date");
    CHECK(h.field("column-0").chosen == 1);
    CHECK(h.field("column-1").chosen == 2);
    CHECK(told(h).empty());  // the order of days is not said
    h.send();
    CHECK(h.problem("order") == Trouble::table_order_unsaid);
    h.choose("order", "day, month, year");
    CHECK(told(h) ==
          "To save: 1\nRow 3: 1,003.4 h on 25 Nov 2026\nCannot be taken: 1\nRow 2: "
          "1 Dec 2026 lies in the future.\n");
    h.send();
    CHECK(h.problem("faults") == Trouble::table_rows_faulty);
    CHECK(count_of<facts::Reading>(h) == before);
    h.open(FormKind::readings_table, {});
    choose_table(h, "Date,Hours\r\n01/12/2026,1010.0\r\n25/11/2026,1003.4\r\n");
    h.choose("order", "day, month, year");
    h.choose("faults", "all but the rows that cannot be taken");
    h.send();
    CHECK(count_of<facts::Reading>(h) == before + 1);
    CHECK(h.last<facts::Reading>().second.reads == base::tenths(10034));
    CHECK(h.last<facts::Reading>().first.about.front() == h.aircraft);
    // The same table once more: all of it is there.
    h.open(FormKind::readings_table, {});
    h.type("rows", "2026-11-25\t1003.4");
    h.choose("column-0", "Column 1");
    h.choose("column-1", "Column 2");
    CHECK(told(h) == "To save: 0\nAlready on record and left out: 1\n");
    h.send();
    REQUIRE(h.form().problems.size() == 1);
    CHECK(h.form().problems.front().code == Trouble::table_nothing_new);
}

TEST_CASE("a reading below the last one on record is refused by its row", "[app][table]") {
    Hangar h;
    h.open(FormKind::readings_table, {});
    choose_table(h, "day;meter\n2026-11-25;999,9\n");
    CHECK(told(h).find("To save: 0\nCannot be taken: 1\nRow 2: ") == 0);
    h.choose("faults", "all but the rows that cannot be taken");
    h.send();
    CHECK(h.form().problems.front().code == Trouble::table_nothing_new);
}

TEST_CASE("rows that cannot be taken stand by their numbers, however they are found",
          "[app][table]") {
    Hangar h;
    h.open(FormKind::readings_table, {});
    // Row 2 falls below the record, which is seen last; rows 3 and 4 cannot be read.
    choose_table(h, "day;meter\n2026-11-25;999,9\n2026-11-25;lots\nsoon;1001\n");
    const std::string all = told(h);
    CHECK(all.find("Cannot be taken: 3\nRow 2: ") != std::string::npos);
    CHECK(all.find("\nRow 2: ") < all.find("\nRow 3: "));
    CHECK(all.find("\nRow 3: ") < all.find("\nRow 4: "));
}

TEST_CASE("a file that is no table says so beside its field", "[app][table]") {
    Hangar h;
    h.open(FormKind::readings_table, {});
    choose_table(h, "PK\x03\x04 spreadsheet \xFF");
    CHECK(h.find("column-0") == nullptr);
    h.send();
    CHECK(h.problem("file") == Trouble::table_encoding);
    h.app.apply(intent::FillField{"file", {}});
    h.send();
    CHECK(h.problem("rows") == Trouble::table_empty);
    h.type("rows", "2026-11-25;1001");
    choose_table(h, "a;b\n");
    h.send();
    CHECK(h.problem("rows") == Trouble::table_two_sources);
    h.type("rows", "");
    // Another table brings other columns, and what was chosen for the first says nothing of it.
    choose_table(h, "when;how much\n2026-11-25;1001\n");
    CHECK(h.field("column-0").chosen == 0);
    h.choose("column-0", "Column 1");
    choose_table(h, "Hours;Date\n1001;2026-11-25\n");
    CHECK(h.field("column-0").chosen == 2);
    CHECK(h.field("column-1").chosen == 1);
}

TEST_CASE("the order of days is said anew for every file", "[app][table]") {
    Hangar h;
    h.open(FormKind::readings_table, {});
    choose_table(h, "Date,Hours\n25/11/2026,1001\n");
    h.choose("order", "day, month, year");
    choose_table(h, "Date,Hours\n11/12/2026,1001\n");
    CHECK(h.field("order").chosen == 0);
    CHECK(told(h).empty());
}

TEST_CASE("what was taken back comes again out of a table", "[app][table]") {
    Hangar h;
    const auto save = [&] {
        h.open(FormKind::readings_table, {});
        choose_table(h, "Date,Hours\n2026-11-25,1001.0\n");
        h.send();
    };
    const std::size_t before = count_of<facts::Reading>(h);
    save();
    CHECK(count_of<facts::Reading>(h) == before + 1);
    const auto all = h.records();
    const auto saved = std::find_if(all.rbegin(), all.rend(), [](const facts::Fact& fact) {
        const auto* reading = std::get_if<facts::Reading>(&fact.body.fields);
        return reading != nullptr && reading->reads == base::hours(1001);
    });
    REQUIRE(saved != all.rend());
    h.app.apply(intent::WithdrawSaved{{saved->id}});
    h.host.answer(h.app);
    save();
    CHECK(count_of<facts::Reading>(h) == before + 2);
}

TEST_CASE("of several aircraft none is chosen for a person", "[app][table]") {
    Hangar h;
    canvas::support::add_aircraft(h.app, "TEST-2");
    h.host.answer(h.app);
    h.open(FormKind::readings_table, {});
    CHECK(said(h.field("host").options.front()) == "please choose");
    choose_table(h, "Date,Hours\n2026-11-25,1001\n");
    CHECK(told(h).empty());
    h.send();
    CHECK(h.problem("host") == Trouble::form_needed);
    h.choose("host", "TEST-2");
    CHECK(told(h).find("To save: 1") == 0);
}

TEST_CASE("parts come out of a table fitted to the aircraft", "[app][table]") {
    Hangar h;
    h.open(FormKind::parts_table, {});
    choose_table(h,
                 "P/N,S/N,Description,Position,TSN,TSO\n"
                 "G-1,7,Gearbox,main,1200.5,200\n"
                 "R-1,8,Rotor,,,\n"
                 "X-1,9,Odd,,10,20\n");
    CHECK(told(h).find("Row 2: Gearbox 7\nRow 3: Rotor 8\n") != std::string::npos);
    h.choose("faults", "all but the rows that cannot be taken");
    h.send();
    CHECK(count_of<facts::PartAdded>(h) == count_of<facts::PartFitted>(h));
    REQUIRE(count_of<facts::PartAdded>(h) >= 2);
    CHECK(h.last<facts::PartFitted>().first.about[1] == h.aircraft);
    CHECK(h.last<facts::PartFitted>().second.host_total.has_value());
}
