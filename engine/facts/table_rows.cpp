#include "engine/facts/table_rows.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"
#include "engine/facts/json.hpp"

namespace twoclocks::facts {
namespace {

using base::Trouble;

/// A row under the choice of columns, and the faults it has.
class Cells {
  public:
    Cells(const std::vector<std::string>& row,
          std::int64_t number,
          const TableAsked& asked,
          std::vector<RowFault>& faults)
        : row_(row), number_(number), asked_(asked), faults_(faults) {}

    [[nodiscard]] std::string text(Column column) {
        const auto& at = asked_.of(column);
        if (!at || *at >= row_.size()) return {};
        std::string out{base::without_margins(row_[*at])};
        if (out.size() > static_cast<std::size_t>(longest_text_bytes)) {
            refuse(base::trouble(Trouble::line_text_too_long));
            return {};
        }
        for (char& sign : out)
            if (sign == '\n' || sign == '\r' || sign == '\t') sign = ' ';
        return out;
    }

    [[nodiscard]] std::string needed(Column column) {
        std::string out = text(column);
        if (out.empty())
            refuse(
                base::trouble(Trouble::table_cell_missing, {base::word_arg(column_word(column))}));
        return out;
    }

    [[nodiscard]] std::optional<base::FlightTime> hours(const std::string& told) {
        if (told.empty()) return std::nullopt;
        const auto read = base::parse_flight_time(told);
        if (!read) {
            refuse(read.problems().front());
            return std::nullopt;
        }
        return read.value();
    }

    [[nodiscard]] std::optional<base::Count> count(Column column) {
        const std::string told = text(column);
        if (told.empty()) return std::nullopt;
        constexpr std::int64_t most = 10'000'000;
        const auto read = base::parse_whole(told, most);
        if (read && *read <= most) return base::Count{*read};
        refuse(base::trouble(Trouble::table_cell_wrong, {base::excerpt_arg(told)}));
        return std::nullopt;
    }

    /// An amount from 0 on.
    [[nodiscard]] base::Money money(Column column, base::Currency otherwise) {
        const std::string told = needed(column);
        if (told.empty()) return {};
        const auto read = base::parse_money(told, otherwise);
        if (!read) refuse(read.problems().front());
        if (read && read.value().minor_units < 0)
            refuse(base::trouble(Trouble::price_negative, {base::excerpt_arg(told)}));
        return read ? read.value() : base::Money{};
    }

    [[nodiscard]] base::Date day() {
        const std::string told = needed(Column::day);
        const auto read = base::read_written_day(told, asked_.order);
        if (!read && !told.empty())
            refuse(base::trouble(Trouble::table_day_wrong, {base::excerpt_arg(told)}));
        return read.value_or(base::Date{});
    }

    [[nodiscard]] bool is_sound() const { return is_sound_; }

  private:
    void refuse(base::Problem problem) {
        if (is_sound_) faults_.push_back({number_, std::move(problem)});
        is_sound_ = false;
    }

    const std::vector<std::string>& row_;
    std::int64_t number_;
    const TableAsked& asked_;
    std::vector<RowFault>& faults_;
    bool is_sound_{true};
};

/// Reads every row that is no heading; `take` answers a row, and it counts where it was sound.
template <class Row, class Take>
[[nodiscard]] TableRead<Row> rows_of(const Table& table, const TableAsked& asked, Take take) {
    TableRead<Row> out;
    for (std::size_t at = asked.has_headings ? 1 : 0; at < table.rows.size(); ++at) {
        const base::CsvRow& read = table.rows[at];
        Cells cells{read.fields, read.number, asked, out.faults};
        Row row = take(cells);
        row.row = read.number;
        if (cells.is_sound()) out.rows.push_back(std::move(row));
    }
    return out;
}

[[nodiscard]] RowFault fault(std::int64_t row, Trouble code, std::int64_t other) {
    return {row, base::trouble(code, {base::whole_arg(other)})};
}

[[nodiscard]] bool says_same(const Reading& left, const Reading& right) {
    return left.reads == right.reads && left.landings == right.landings &&
           left.starts == right.starts;
}

/// More than 24 hours a day: the reading before may be of the morning, this one of the evening.
[[nodiscard]] bool is_too_fast(const ReadingRow& from, const ReadingRow& to) {
    constexpr std::int64_t seconds_per_day = 24 * base::seconds_per_hour;
    const std::int64_t days = base::days_between(from.on, to.on) + 1;
    return (to.reading.reads - from.reading.reads).seconds > days * seconds_per_day;
}

[[nodiscard]] bool says_same(const PartRow& left, const PartRow& right) {
    const auto all = [](const PartRow& row) {
        const PartAdded& part = row.part;
        return std::tie(part.name, part.chapter, part.tsn, part.tso, row.position);
    };
    return all(left) == all(right);
}

}  // namespace

TableRead<PriceLine> price_lines(const Table& table,
                                 const TableAsked& asked,
                                 base::Currency otherwise) {
    auto out = rows_of<PriceLine>(table, asked, [&](Cells& cells) {
        PriceLine line;
        line.price.article = cells.needed(Column::article);
        line.price.price = cells.money(Column::price, otherwise);
        line.price.name = cells.text(Column::name);
        return line;
    });
    std::vector<PriceLine> kept;
    std::map<std::string, std::size_t> places;
    for (PriceLine& line : out.rows) {
        const auto [found, is_new] = places.emplace(line.price.article, kept.size());
        if (is_new) {
            kept.push_back(std::move(line));
            continue;
        }
        const PriceLine& before = kept[found->second];
        if (!(before.price == line.price))
            out.faults.push_back(fault(line.row, Trouble::table_row_twice, before.row));
    }
    out.rows = std::move(kept);
    return out;
}

TableRead<ReadingRow> reading_rows(const Table& table, const TableAsked& asked) {
    auto out = rows_of<ReadingRow>(table, asked, [](Cells& cells) {
        ReadingRow row;
        row.on = cells.day();
        row.reading.reads = cells.hours(cells.needed(Column::hours)).value_or(base::FlightTime{});
        row.reading.landings = cells.count(Column::landings);
        row.reading.starts = cells.count(Column::starts);
        return row;
    });
    // The last of a day is its evening's, whatever its place in the table.
    std::stable_sort(out.rows.begin(), out.rows.end(), [](const auto& left, const auto& right) {
        return std::tie(left.on, left.reading.reads) < std::tie(right.on, right.reading.reads);
    });
    std::vector<ReadingRow> kept;
    for (ReadingRow& row : out.rows) {
        const ReadingRow* const before = kept.empty() ? nullptr : &kept.back();
        const bool is_same =
            before != nullptr && before->on == row.on && before->reading.reads == row.reading.reads;
        if (is_same && says_same(before->reading, row.reading)) continue;
        if (is_same)
            out.faults.push_back(fault(row.row, Trouble::table_row_twice, before->row));
        else if (before != nullptr && row.reading.reads < before->reading.reads)
            out.faults.push_back(fault(row.row, Trouble::table_row_falls, before->row));
        else if (before != nullptr && is_too_fast(*before, row))
            out.faults.push_back({row.row,
                                  base::trouble(Trouble::entry_too_fast,
                                                {base::hours_used_arg(before->reading.reads),
                                                 base::day_arg(before->on)})});
        else
            kept.push_back(std::move(row));
    }
    out.rows = std::move(kept);
    return out;
}

TableRead<PartRow> part_rows(const Table& table, const TableAsked& asked) {
    auto out = rows_of<PartRow>(table, asked, [](Cells& cells) {
        PartRow row;
        row.part.name = cells.text(Column::name);
        row.part.serial = cells.needed(Column::serial);
        row.part.part_number = cells.needed(Column::part_number);
        row.part.chapter = cells.text(Column::chapter);
        row.position = cells.text(Column::position);
        row.part.tsn = cells.hours(cells.text(Column::since_new));
        row.part.tso = cells.hours(cells.text(Column::since_overhaul));
        return row;
    });
    std::vector<PartRow> kept;
    std::map<std::pair<std::string, std::string>, std::size_t> places;
    for (PartRow& row : out.rows) {
        const auto key = std::pair{row.part.part_number, row.part.serial};
        const auto [found, is_new] = places.emplace(key, kept.size());
        if (is_new) {
            kept.push_back(std::move(row));
            continue;
        }
        const PartRow& before = kept[found->second];
        if (!says_same(before, row))
            out.faults.push_back(fault(row.row, Trouble::table_row_twice, before.row));
    }
    out.rows = std::move(kept);
    return out;
}

}  // namespace twoclocks::facts
