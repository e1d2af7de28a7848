#include "wasm/app/table_sorted.hpp"

#include <algorithm>
#include <set>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/facts/check.hpp"
#include "engine/timeline/entry.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using facts::RowFault;
using facts::Table;
using facts::TableAsked;

/// What stands on record of the meter in use: corrected, and not taken back.
[[nodiscard]] std::vector<std::pair<base::Date, facts::Reading>> readings_of(
    const facts::Journal& journal, const timeline::AircraftState& aircraft) {
    std::vector<std::pair<base::Date, facts::Reading>> out;
    const timeline::MeterState* meter = timeline::meter_in_use(aircraft);
    if (meter == nullptr) return out;
    for (const facts::Fact* fact : journal.about(meter->id)) {
        const auto naming = journal.naming(fact->id);
        const bool is_replaced = std::any_of(naming.begin(), naming.end(), [](const auto* other) {
            return !std::holds_alternative<facts::Answer>(other->body.fields);
        });
        if (is_replaced) continue;
        const auto* correction = std::get_if<facts::Correction>(&fact->body.fields);
        const facts::Body* body = correction == nullptr ? &fact->body : correction->instead.get();
        if (body == nullptr) continue;
        if (const auto* reading = std::get_if<facts::Reading>(&body->fields))
            out.emplace_back(body->on, *reading);
    }
    std::sort(out.begin(), out.end(), [](const auto& left, const auto& right) {
        return left.first < right.first;
    });
    return out;
}

/// The same day and hours, and no count that the record does not have.
[[nodiscard]] bool is_here(const std::vector<std::pair<base::Date, facts::Reading>>& here,
                           const facts::ReadingRow& row) {
    auto at =
        std::lower_bound(here.begin(), here.end(), row.on, [](const auto& one, base::Date on) {
            return one.first < on;
        });
    for (; at != here.end() && at->first == row.on; ++at) {
        const facts::Reading& told = at->second;
        const bool adds = (row.reading.landings && row.reading.landings != told.landings) ||
                          (row.reading.starts && row.reading.starts != told.starts);
        if (told.reads == row.reading.reads && !adds) return true;
    }
    return false;
}

/// A part has its number when it is saved; until then any will do.
constexpr base::Id some_part{1, 1};

template <class Row>
void sort_in(Row row, const base::Problems& problems, Sorted<Row>& out) {
    if (problems.empty())
        out.fresh.push_back(std::move(row));
    else
        out.faults.push_back({row.row, problems.front()});
}

[[nodiscard]] Message sample_of(const facts::ReadingRow& row) {
    return {
        Word::table_reading_row,
        {base::whole_arg(row.row), base::hours_used_arg(row.reading.reads), base::day_arg(row.on)}};
}

[[nodiscard]] Message sample_of(const facts::PartRow& row) {
    const std::string name = row.part.name.empty() ? row.part.part_number : row.part.name;
    return {Word::table_part_row,
            {base::whole_arg(row.row), base::text_arg(name + ' ' + row.part.serial)}};
}

[[nodiscard]] Message sample_of(const facts::PriceLine& line) {
    const facts::PriceRow& price = line.price;
    return {
        Word::table_price_row,
        {base::whole_arg(line.row), base::text_arg(price.article), base::money_arg(price.price)}};
}

/// How many rows are sound, there already, or faulty, the first few of each.
template <class Row>
[[nodiscard]] std::vector<Message> all_told(const Sorted<Row>& sorted, const base::Region& region) {
    std::vector<Message> out;
    const auto count = [](std::size_t size) {
        return base::whole_arg(static_cast<std::int64_t>(size));
    };
    const auto some = [&](const auto& rows, const auto& line) {
        for (std::size_t at = 0; at < std::min(rows.size(), most_told); ++at)
            out.push_back(line(rows[at]));
        if (rows.size() > most_told)
            out.push_back({Word::table_more_faults, {count(rows.size() - most_told)}});
    };
    out.push_back({Word::table_sound, {count(sorted.fresh.size())}});
    some(sorted.fresh, [](const Row& row) { return sample_of(row); });
    if (sorted.here > 0) out.push_back({Word::table_here, {base::whole_arg(sorted.here)}});
    if (sorted.faults.empty()) return out;
    out.push_back({Word::table_faulty, {count(sorted.faults.size())}});
    std::vector<RowFault> by_row = sorted.faults;
    base::sort_stably(
        by_row, [](const RowFault& one, const RowFault& other) { return one.row < other.row; });
    some(by_row, [&](const RowFault& fault) {
        return Message{
            Word::table_part_row,
            {base::whole_arg(fault.row), base::text_arg(base::say_what(fault.problem, region))}};
    });
    return out;
}

}  // namespace

Sorted<facts::ReadingRow> sorted_readings(const Table& table,
                                          const TableAsked& asked,
                                          const FormContext& context,
                                          const timeline::AircraftState& aircraft) {
    auto read = facts::reading_rows(table, asked);
    Sorted<facts::ReadingRow> out{{}, 0, std::move(read.faults)};
    const auto here = readings_of(context.journal, aircraft);
    for (facts::ReadingRow& row : read.rows) {
        if (is_here(here, row)) {
            ++out.here;
            continue;
        }
        base::Problems problems =
            timeline::check_reading(aircraft, row.reading.reads, row.on, context.today);
        if (problems.empty()) {
            const base::Id meter = timeline::meter_in_use(aircraft)->id;
            problems = facts::check({row.on, {aircraft.id, meter}, row.reading, {}});
        }
        sort_in(std::move(row), problems, out);
    }
    return out;
}

Sorted<facts::PartRow> sorted_parts(const Table& table,
                                    const TableAsked& asked,
                                    const FormContext& context) {
    auto read = facts::part_rows(table, asked);
    Sorted<facts::PartRow> out{{}, 0, std::move(read.faults)};
    std::set<std::pair<std::string, std::string>> here;
    if (context.parts != nullptr)
        for (const timeline::PartState& part : *context.parts)
            here.emplace(part.part_number, part.serial);
    for (facts::PartRow& row : read.rows) {
        const bool is_here = here.count({row.part.part_number, row.part.serial}) > 0;
        if (is_here) ++out.here;
        if (is_here) continue;
        const base::Problems problems = facts::check({context.today, {some_part}, row.part, {}});
        sort_in(std::move(row), problems, out);
    }
    return out;
}

std::vector<Message> told_of(const Sorted<facts::ReadingRow>& sorted, const base::Region& region) {
    return all_told(sorted, region);
}

std::vector<Message> told_of(const Sorted<facts::PartRow>& sorted, const base::Region& region) {
    return all_told(sorted, region);
}

std::vector<Message> told_of(const Sorted<facts::PriceLine>& sorted, const base::Region& region) {
    return all_told(sorted, region);
}

}  // namespace twoclocks::canvas
