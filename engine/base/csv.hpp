// Tables as text: rows and their fields, as spreadsheets write them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace twoclocks::base {

/// The sign between the fields: a tab where the first row has one, else a semicolon, else a comma.
/// Units: none. Errors: none. Source: our choice; RFC 4180 has the comma.
[[nodiscard]] char csv_separator(std::string_view text);

/// The fields of every row that is not empty. A field in double quotes may hold the separator, ends
/// of lines, and double quotes written twice; one that is never closed ends with the text.
/// Units: none. Errors: none. Source: RFC 4180.
[[nodiscard]] std::vector<std::vector<std::string>> split_csv(std::string_view text,
                                                              char separator);

}  // namespace twoclocks::base
