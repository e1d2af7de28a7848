// Tables that people bring along, with all that can be wrong with them.
#include "engine/facts/table_rows.hpp"

#include "catch_amalgamated.hpp"

#include "engine/base/message_args.hpp"

using namespace twoclocks;
using namespace twoclocks::facts;
using base::Trouble;

namespace {

std::vector<Column> all_readings() {
    return {reading_columns.begin(), reading_columns.end()};
}

/// The columns as their headings propose them, with an order of days.
TableAsked asked_of(const Table& table, std::optional<base::DayOrder> order = {}) {
    TableAsked out = proposed(table, all_readings());
    out.order = order;
    return out;
}

struct Told {
    std::int64_t row;
    Trouble code;

    bool operator==(const Told& other) const { return row == other.row && code == other.code; }
};

template <class Row>
std::vector<Told> faults_of(const TableRead<Row>& read) {
    std::vector<Told> out;
    for (const RowFault& fault : read.faults)
        out.push_back({fault.row, fault.problem.code});
    return out;
}

Trouble refused(std::string_view bytes) {
    const auto table = read_table(bytes);
    REQUIRE_FALSE(table);
    return table.problems().front().code;
}

Table table_of(std::string_view bytes) {
    const auto table = read_table(bytes);
    REQUIRE(table);
    return table.value();
}

}  // namespace

TEST_CASE("a table of readings is read by its headings", "[facts][table]") {
    const Table table = table_of(
        "Remark;Date;Hour meter;Landings\r\n"
        "\"ferry; long\";2026-01-02;1234,5;10\r\n"
        ";2026-01-01;1232:30;\r\n");
    const TableAsked asked = asked_of(table);
    CHECK(asked.has_headings);
    CHECK(asked.of(Column::day) == 1U);
    CHECK(asked.of(Column::hours) == 2U);
    CHECK(asked.of(Column::landings) == 3U);
    CHECK_FALSE(asked.of(Column::starts));
    CHECK(unclear(table, asked, {Column::day, Column::hours}).empty());
    const auto read = reading_rows(table, asked);
    CHECK(read.faults.empty());
    REQUIRE(read.rows.size() == 2);
    CHECK(read.rows[0].row == 3);  // by day
    CHECK(read.rows[0].reading.reads.seconds == 1232 * 3600 + 1800);
    CHECK_FALSE(read.rows[0].reading.landings);
    CHECK(read.rows[1].reading.reads == base::tenths(12345));
    CHECK(read.rows[1].reading.landings == base::Count{10});
}

TEST_CASE("what cannot be a table says why", "[facts][table]") {
    CHECK(refused("") == Trouble::table_empty);
    CHECK(refused("\r\n\r\n") == Trouble::table_empty);
    CHECK(refused("gr\xFC\xDF;1") == Trouble::table_encoding);
    std::string long_one = "day,hours\n";
    for (int row = 0; row < 200'000; ++row)
        long_one += "2026-01-01,1.0\n";
    CHECK(refused(long_one) == Trouble::table_too_long);
    CHECK(refused(std::string(5 * 1024 * 1024, 'a')) == Trouble::table_too_large);
    CHECK(refused(std::string(5'000, ',') + "a") == Trouble::table_too_wide);
    CHECK(refused(",,\n,\n ,\t\n") == Trouble::table_empty);
    const auto open = read_table("day,hours\n2026-01-01,1\n2026-01-02,\"4 in hose\n2026-01-03,3\n");
    REQUIRE_FALSE(open);
    CHECK(open.problems().front().code == Trouble::table_quote_open);
    CHECK(open.problems().front().args.front() == base::whole_arg(3));
}

TEST_CASE("columns and the order of days are asked for, never guessed", "[facts][table]") {
    const Table table = table_of("03/04/2026,12.5\n05/04/2026,13.5\n");
    TableAsked asked = asked_of(table);
    CHECK_FALSE(asked.has_headings);
    auto problems = unclear(table, asked, {Column::day, Column::hours});
    REQUIRE(problems.size() == 2);
    CHECK(problems[0].code == Trouble::table_no_column);
    CHECK(problems[0].field == column_field(Column::day));
    asked.of(Column::day) = 0;
    asked.of(Column::hours) = 0;
    problems = unclear(table, asked, {Column::day, Column::hours});
    REQUIRE(problems.size() == 2);
    CHECK(problems[0].code == Trouble::table_column_twice);
    CHECK(problems[0].field == column_field(Column::hours));
    CHECK(problems[1].code == Trouble::table_order_unsaid);
    CHECK(problems[1].field == "order");
    asked.of(Column::hours) = 1;
    asked.order = base::DayOrder::month_day_year;
    CHECK(unclear(table, asked, {Column::day, Column::hours}).empty());
    const auto read = reading_rows(table, asked);
    REQUIRE(read.rows.size() == 2);
    CHECK(base::print_date(read.rows[0].on) == "2026-03-04");
    CHECK(base::print_date(read.rows[1].on) == "2026-05-04");
}

TEST_CASE("each row that cannot be taken says what is wrong with it", "[facts][table]") {
    const Table table = table_of(
        "date\thours\tlandings\n"
        "2026-01-01\t100.0\t5\n"
        "2026-01-01\t100.0\t5\n"   // the same again: one reading
        "2026-01-01\t100.0\t6\n"   // other landings at the same hours
        "2026-02-01\t99.9\t\n"     // falls
        "2026-02-02\t1,234\t\n"    // read two ways
        "2026-02-03\ttwelve\t\n"   // no hours
        "2026-02-30\t120\t\n"      // no day
        "2026-02-04\t\t\n"         // nothing
        "\t120\t\n"                // no day either
        "2026-02-05\t120\t4.5\n"   // no whole landings
        "2026-02-06\t120\t-1\n"    // below nothing
        "2026-02-07\t-3\t\n"       // below nothing
        "2026-02-08\t5000\t\n"     // more than 24 h a day
        "\n\t\t\n"                 // blank rows are none, and are numbered
        "2026-02-09\t121\n"        // a short row is none the worse
        "2026-02-09\t121.4\t\n");  // a second flight of the day
    const auto read = reading_rows(table, asked_of(table));
    auto faults = faults_of(read);
    std::sort(faults.begin(), faults.end(), [](const Told& left, const Told& right) {
        return left.row < right.row;
    });
    CHECK(faults == std::vector<Told>{{4, Trouble::table_row_twice},
                                      {5, Trouble::table_row_falls},
                                      {6, Trouble::hours_ambiguous},
                                      {7, Trouble::hours_malformed},
                                      {8, Trouble::table_day_wrong},
                                      {9, Trouble::table_cell_missing},
                                      {10, Trouble::table_cell_missing},
                                      {11, Trouble::table_cell_wrong},
                                      {12, Trouble::table_cell_wrong},
                                      {13, Trouble::hours_negative},
                                      {14, Trouble::entry_too_fast}});
    REQUIRE(read.rows.size() == 3);
    CHECK(read.rows[0].row == 2);
    CHECK(read.rows[1].row == 17);
    CHECK(read.rows[2].row == 18);
}

TEST_CASE("prices keep their currency, and what is none says so", "[facts][table]") {
    const Table table = table_of(
        "Article;Name;Price\n"
        "K-1;Kit;5,50 USD\n"
        "K-2;Seal;12\n"
        "K-2;Seal;12\n"
        "K-2;Seal;13\n"
        "K-3;Nut;-1\n"
        "K-4;Bolt;1.234\n"
        "K-5;Pin;ten\n"
        ";Pin;1\n"
        "K-6;Pin;\n");
    const TableAsked asked = proposed(table, {price_columns.begin(), price_columns.end()});
    CHECK(asked.of(Column::price) == 2U);
    const auto read = price_lines(table, asked, base::parse_currency("EUR").value());
    REQUIRE(read.rows.size() == 2);
    CHECK(base::print_money(read.rows[0].price.price) == "5.50 USD");
    CHECK(base::print_money(read.rows[1].price.price) == "12.00 EUR");
    CHECK(faults_of(read) == std::vector<Told>{{6, Trouble::price_negative},
                                               {7, Trouble::money_ambiguous},
                                               {8, Trouble::money_malformed},
                                               {9, Trouble::table_cell_missing},
                                               {10, Trouble::table_cell_missing},
                                               {5, Trouble::table_row_twice}});
}

TEST_CASE("a serial number is no part number", "[facts][table]") {
    const std::vector<Column> wanted{part_columns.begin(), part_columns.end()};
    const TableAsked asked = proposed(table_of("Serial number,Part number,Part name\n"), wanted);
    CHECK(asked.of(Column::serial) == 0U);
    CHECK(asked.of(Column::part_number) == 1U);
    CHECK(asked.of(Column::name) == 2U);
}

TEST_CASE("a row of data is not taken for headings", "[facts][table]") {
    const std::vector<Column> wanted{part_columns.begin(), part_columns.end()};
    for (const char* first : {"New cylinder,Overhauled,77\n", "Hours\nx\n", "a,b\n"}) {
        const TableAsked asked = proposed(table_of(first), wanted);
        CHECK_FALSE(asked.has_headings);
        for (const Column column : wanted)
            CHECK_FALSE(asked.of(column));
    }
}

TEST_CASE("a cell that no record could hold is refused by its row", "[facts][table]") {
    const Table table =
        table_of("P/N,S/N,Position\nG-1,7," + std::string(5'000, 'x') + "\nG-1,8,main\n");
    const auto read = part_rows(table, proposed(table, {part_columns.begin(), part_columns.end()}));
    CHECK(faults_of(read) == std::vector<Told>{{2, Trouble::line_text_too_long}});
    CHECK(read.rows.size() == 1);
}

TEST_CASE("a table of parts keeps every sign and tells two alike apart", "[facts][table]") {
    const Table table = table_of(
        "Part number,Serial,Description,Position,TSN,TSO,ATA\n"
        "\"G-1, rev \"\"B\"\"\",7,\"=cmd|'/c'!A1\nnext\",main,1200.5,200,63\n"
        "G-1,8,Gearbox,,,,\n"
        "G-1,8,Gearbox,,,,\n"
        "G-1,8,Another,,,,\n"
        ",9,Shaft,,,,\n"
        "G-2,9,\u00dcbersetzung\u2122,,1.234,,\n");
    const std::vector<Column> wanted{part_columns.begin(), part_columns.end()};
    const TableAsked asked = proposed(table, wanted);
    CHECK(asked.has_headings);
    for (const Column column : wanted)
        CHECK(asked.of(column));
    const auto read = part_rows(table, asked);
    REQUIRE(read.rows.size() == 2);
    CHECK(read.rows[0].part.part_number == "G-1, rev \"B\"");
    CHECK(read.rows[0].part.name == "=cmd|'/c'!A1 next");
    CHECK(read.rows[0].position == "main");
    CHECK(read.rows[0].part.chapter == "63");
    CHECK(read.rows[0].part.tsn == base::tenths(12005));
    CHECK(read.rows[0].part.tso == base::hours(200));
    CHECK_FALSE(read.rows[1].part.tsn);
    CHECK(faults_of(read) == std::vector<Told>{{6, Trouble::table_cell_missing},
                                               {7, Trouble::hours_ambiguous},
                                               {5, Trouble::table_row_twice}});
}
