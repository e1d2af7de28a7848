#include "engine/base/csv.hpp"

#include <utility>

namespace twoclocks::base {

char csv_separator(std::string_view text) {
    const std::string_view first = text.substr(0, text.find('\n'));
    for (const char sign : {'\t', ';'})
        if (first.find(sign) != std::string_view::npos) return sign;
    return ',';
}

std::vector<std::vector<std::string>> split_csv(std::string_view text, char separator) {
    std::vector<std::vector<std::string>> rows;
    std::vector<std::string> row;
    std::string field;
    bool quoted = false;
    const auto end_field = [&] { row.push_back(std::exchange(field, {})); };
    const auto end_row = [&] {
        end_field();
        const bool is_empty = row.size() == 1 && row.front().empty();
        if (!is_empty) rows.push_back(row);
        row.clear();
    };
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char sign = text[at];
        if (quoted) {
            const bool twice = sign == '"' && at + 1 < text.size() && text[at + 1] == '"';
            if (twice) ++at;
            if (sign == '"' && !twice)
                quoted = false;
            else
                field += sign;
        } else if (sign == '"' && field.empty()) {
            quoted = true;
        } else if (sign == separator) {
            end_field();
        } else if (sign == '\n') {
            end_row();
        } else if (sign != '\r') {
            field += sign;
        }
    }
    if (!field.empty() || !row.empty()) end_row();
    return rows;
}

}  // namespace twoclocks::base
