// Which column of a table holds what.
#include <algorithm>

#include "engine/base/csv.hpp"
#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"
#include "engine/facts/table_rows.hpp"

namespace twoclocks::facts {
namespace {

using base::Trouble;
using base::Word;

/// Words in headings, by what they head; the first that matches proposes.
struct Heading {
    Column column;
    std::string_view word;
};

constexpr std::array headings{
    Heading{Column::since_overhaul, "tso"}, Heading{Column::since_overhaul, "overhaul"},
    Heading{Column::since_new, "tsn"},      Heading{Column::since_new, "new"},
    Heading{Column::serial, "serial"},      Heading{Column::serial, "s/n"},
    Heading{Column::serial, "sn"},          Heading{Column::article, "article"},
    Heading{Column::article, "p/n"},        Heading{Column::article, "pn"},
    Heading{Column::article, "code"},       Heading{Column::article, "number"},
    Heading{Column::price, "price"},        Heading{Column::price, "amount"},
    Heading{Column::price, "cost"},         Heading{Column::part_number, "p/n"},
    Heading{Column::part_number, "pn"},     Heading{Column::part_number, "number"},
    Heading{Column::day, "date"},           Heading{Column::day, "day"},
    Heading{Column::landings, "landing"},   Heading{Column::starts, "start"},
    Heading{Column::hours, "hour"},         Heading{Column::hours, "meter"},
    Heading{Column::hours, "reading"},      Heading{Column::position, "position"},
    Heading{Column::chapter, "chapter"},    Heading{Column::chapter, "ata"},
    Heading{Column::name, "name"},          Heading{Column::name, "description"},
    Heading{Column::name, "part"}};

[[nodiscard]] std::string lowered(std::string_view text) {
    std::string out{text};
    for (char& sign : out)
        if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
    return out;
}

/// Of what a heading speaks, among what is wanted.
[[nodiscard]] std::optional<Column> headed(std::string_view heading,
                                           const std::vector<Column>& wanted) {
    const std::string text = lowered(base::without_margins(heading));
    for (const auto& [column, word] : headings) {
        const bool is_wanted = std::find(wanted.begin(), wanted.end(), column) != wanted.end();
        const bool is_short = word.size() <= 3;
        const bool speaks = is_short ? text == word : text.find(word) != std::string::npos;
        if (is_wanted && speaks) return column;
    }
    return std::nullopt;
}

}  // namespace

Word column_word(Column column) {
    constexpr std::array words{Word::field_date,
                               Word::field_meter_reading,
                               Word::field_landings,
                               Word::field_starts,
                               Word::field_name,
                               Word::field_serial,
                               Word::field_part_number,
                               Word::field_position,
                               Word::field_chapter,
                               Word::field_tsn,
                               Word::field_tso,
                               Word::field_article,
                               Word::field_price};
    static_assert(words.size() == column_count);
    return words[static_cast<std::size_t>(column)];
}

std::string column_field(Column column) {
    return "column-" + std::to_string(static_cast<std::size_t>(column));
}

base::Result<Table> read_table(std::string_view bytes) {
    const auto whole = [](std::size_t size) {
        return base::whole_arg(static_cast<std::int64_t>(size));
    };
    constexpr std::size_t megabyte = 1024 * 1024;
    if (bytes.size() > most_table_bytes)
        return base::trouble(Trouble::table_too_large, {whole(most_table_bytes / megabyte)});
    const auto text = base::table_text(bytes);
    if (!text) return base::trouble(Trouble::table_encoding);
    base::CsvRead read = base::read_csv(*text, base::csv_separator(*text), most_table_rows, true);
    if (read.rows.size() > most_table_rows)
        return base::trouble(Trouble::table_too_long, {whole(most_table_rows)});
    if (read.open_row > 0)
        return base::trouble(Trouble::table_quote_open, {base::whole_arg(read.open_row)});
    Table out;
    for (base::CsvRow& row : read.rows) {
        out.columns = std::max(out.columns, row.fields.size());
        out.rows.push_back(std::move(row));
    }
    if (out.rows.empty()) return base::trouble(Trouble::table_empty);
    if (out.columns > most_table_columns)
        return base::trouble(Trouble::table_too_wide,
                             {whole(out.columns), whole(most_table_columns)});
    return out;
}

TableAsked proposed(const Table& table, const std::vector<Column>& wanted) {
    TableAsked out;
    if (table.rows.empty()) return out;
    const std::vector<std::string>& first = table.rows.front().fields;
    std::int32_t matches = 0;
    for (std::size_t at = 0; at < first.size(); ++at) {
        if (first[at].find_first_of("0123456789") != std::string::npos) return {};
        const auto column = headed(first[at], wanted);
        if (!column || out.of(*column)) continue;
        out.of(*column) = at;
        ++matches;
    }
    if (matches < 2) return {};
    out.has_headings = true;
    return out;
}

base::Problems unclear(const Table& table,
                       const TableAsked& asked,
                       const std::vector<Column>& needed) {
    base::Problems out;
    const auto add = [&](Trouble code, std::string field, base::Arg arg) {
        out.push_back(base::trouble(code, {std::move(arg)}));
        out.back().field = std::move(field);
    };
    for (const Column column : needed)
        if (!asked.of(column))
            add(Trouble::table_no_column,
                column_field(column),
                base::word_arg(column_word(column)));
    for (std::size_t other = 1; other < column_count; ++other) {
        const auto end = asked.at.begin() + static_cast<std::ptrdiff_t>(other);
        const auto column = static_cast<Column>(other);
        if (asked.at[other] && std::find(asked.at.begin(), end, asked.at[other]) != end)
            add(Trouble::table_column_twice,
                column_field(column),
                base::word_arg(column_word(column)));
    }
    const auto& day = asked.of(Column::day);
    if (!day || asked.order) return out;
    for (const auto& row : table.rows) {
        const auto& cells = row.fields;
        if (*day >= cells.size() || !base::needs_day_order(cells[*day])) continue;
        add(Trouble::table_order_unsaid, "order", base::excerpt_arg(cells[*day]));
        break;
    }
    return out;
}

}  // namespace twoclocks::facts
