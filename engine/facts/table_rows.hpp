// Tables that people bring along: which column holds what, and what the rows say.
//
// Nothing is guessed that could be read two ways: the order of a day is said by a person, a number
// that two people read differently is a fault of its row. Headings only propose a column.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/csv.hpp"
#include "engine/base/written_day.hpp"
#include "engine/facts/aircraft_facts.hpp"
#include "engine/facts/part_facts.hpp"
#include "engine/facts/price_rows.hpp"

namespace twoclocks::facts {

/// What a column can hold.
enum class Column : std::uint8_t {
    day,
    hours,
    landings,
    starts,
    name,
    serial,
    part_number,
    position,
    chapter,
    since_new,
    since_overhaul,
    article,
    price
};
inline constexpr std::size_t column_count = 13;

/// Columns that a table of readings, one of parts and a price list can have.
inline constexpr std::array reading_columns{
    Column::day, Column::hours, Column::landings, Column::starts};
inline constexpr std::array part_columns{Column::name,
                                         Column::serial,
                                         Column::part_number,
                                         Column::position,
                                         Column::chapter,
                                         Column::since_new,
                                         Column::since_overhaul};
inline constexpr std::array price_columns{Column::article, Column::price, Column::name};

/// More is refused: a person could not look it through, and a phone could not hold it.
inline constexpr std::size_t most_table_rows = 5'000;
inline constexpr std::size_t most_table_columns = 60;
inline constexpr std::size_t most_table_bytes = 4 * 1024 * 1024;

/// A table as it was read.
struct Table {
    std::vector<base::CsvRow> rows;
    std::size_t columns{0};  // of its longest row
};

/// What a person said of it.
struct TableAsked {
    std::array<std::optional<std::size_t>, column_count> at{};  // by Column: which column
    bool has_headings{false};
    std::optional<base::DayOrder> order{};

    [[nodiscard]] std::optional<std::size_t>& of(Column column) {
        return at[static_cast<std::size_t>(column)];
    }

    [[nodiscard]] const std::optional<std::size_t>& of(Column column) const {
        return at[static_cast<std::size_t>(column)];
    }
};

/// What is wrong with a row, by its number in the table, 1 the first.
struct RowFault {
    std::int64_t row{0};
    base::Problem problem;
};

/// A row of a table of readings.
struct ReadingRow {
    std::int64_t row{0};
    base::Date on;
    Reading reading;
};

/// A row of a table of parts.
struct PartRow {
    std::int64_t row{0};
    PartAdded part;
    std::string position;
};

/// A row of a price list.
struct PriceLine {
    std::int64_t row{0};
    PriceRow price;
};

/// What was read, and what could not be.
template <class Row>
struct TableRead {
    std::vector<Row> rows;
    std::vector<RowFault> faults;
};

/// Reads rows with a tab, a semicolon or a comma between.
/// Units: none. Range: as above. Errors: table_encoding, table_empty, table_too_long,
/// table_too_wide, table_too_large, table_quote_open. Source: RFC 4180.
[[nodiscard]] base::Result<Table> read_table(std::string_view bytes);

/// Columns whose headings are words of the trade for what is wanted. The first row is headings
/// where two of them match and no cell has a digit. A proposal, for a person to change.
/// Units: none. Errors: none. Source: our choice of words.
[[nodiscard]] TableAsked proposed(const Table& table, const std::vector<Column>& wanted);

/// What keeps a table from being read at all: no column for what every row needs, one column for
/// two things, days that two people read differently.
/// Units: none. Errors: table_no_column, table_column_twice, table_order_unsaid; the field is that
/// of the column, or `order`. Source: our choice.
[[nodiscard]] base::Problems unclear(const Table& table,
                                     const TableAsked& asked,
                                     const std::vector<Column>& needed);

/// The rows of a table of readings, by day and hours; a row that repeats another is one.
/// Units: seconds, days. Errors: faults of rows: table_day_wrong, table_cell_missing,
/// table_cell_wrong, table_row_twice, table_row_falls, entry_too_fast, hours_*.
/// Source: our choice; 24 hours in a day.
[[nodiscard]] TableRead<ReadingRow> reading_rows(const Table& table, const TableAsked& asked);

/// The rows of a table of parts, in its order; a row that repeats another is one.
/// Units: seconds. Errors: faults of rows: table_cell_missing, table_row_twice, hours_*.
/// Source: our choice.
[[nodiscard]] TableRead<PartRow> part_rows(const Table& table, const TableAsked& asked);

/// The rows of a price list, in its order; a row that repeats another is one. A price without a
/// code is in `otherwise`.
/// Units: minor units. Errors: faults of rows: table_cell_missing, table_row_twice, price_negative,
/// money_*. Source: our choice.
[[nodiscard]] TableRead<PriceLine> price_lines(const Table& table,
                                               const TableAsked& asked,
                                               base::Currency otherwise);

/// The name of the field that asks for a column.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::string column_field(Column column);

/// The word of the trade for what a column holds.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] base::Word column_word(Column column);

}  // namespace twoclocks::facts
