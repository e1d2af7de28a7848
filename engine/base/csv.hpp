// Tables as text: rows and their fields, as spreadsheets write them.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace twoclocks::base {

/// The text of a file that a spreadsheet saved, without a mark of its encoding.
/// Units: bytes. Errors: nothing where it is no UTF-8, nor UTF-16 with its mark. Source: RFC 3629,
/// RFC 2781.
[[nodiscard]] std::optional<std::string> table_text(std::string_view bytes);

/// The sign between the fields: of tab, semicolon and comma the one that the first row with any has
/// most of outside quotes; of as many, the first of these. A comma where there is none.
/// Units: none. Errors: none. Source: our choice; RFC 4180 has the comma.
[[nodiscard]] char csv_separator(std::string_view text);

/// A row that is not empty, by its number among all, 1 the first.
struct CsvRow {
    std::int64_t number{0};
    std::vector<std::string> fields;
};

/// A table as it was read.
struct CsvRead {
    std::vector<CsvRow> rows;
    std::int64_t open_row{0};  // the row with a quote that is never closed; 0: none
};

/// True where no field holds more than white space.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_blank(const std::vector<std::string>& fields);

/// Rows up to one more than `most_rows`: what is longer is not read to its end. Rows without any
/// sign are none, or with `drops_blank` those of blank fields either.
/// Units: none. Errors: none; open_row. Source: RFC 4180.
[[nodiscard]] CsvRead read_csv(std::string_view text,
                               char separator,
                               std::size_t most_rows,
                               bool drops_blank);

/// The fields of every row that is not empty. A field in double quotes may hold the separator, ends
/// of lines, and double quotes written twice; one that is never closed ends with the text.
/// Units: none. Errors: none. Source: RFC 4180.
[[nodiscard]] std::vector<std::vector<std::string>> split_csv(std::string_view text,
                                                              char separator);

}  // namespace twoclocks::base
