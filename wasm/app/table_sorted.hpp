// The rows of a table beside what is on record: what is to be saved, what is there already, what
// cannot be taken.
#pragma once

#include "wasm/app/form.hpp"

#include "engine/facts/table_rows.hpp"

namespace twoclocks::canvas {

inline constexpr std::size_t most_told = 6;  // lines shown before "and more"

/// Rows, sorted.
template <class Row>
struct Sorted {
    std::vector<Row> fresh;
    std::int64_t here{0};
    std::vector<facts::RowFault> faults;
};

/// Readings of an aircraft that are not on record, and what the record has against the others.
[[nodiscard]] Sorted<facts::ReadingRow> sorted_readings(const facts::Table& table,
                                                        const facts::TableAsked& asked,
                                                        const FormContext& context,
                                                        const timeline::AircraftState& aircraft);

/// Parts that are not on record.
[[nodiscard]] Sorted<facts::PartRow> sorted_parts(const facts::Table& table,
                                                  const facts::TableAsked& asked,
                                                  const FormContext& context);

/// How many there are of each, and the first few.
[[nodiscard]] std::vector<base::Message> told_of(const Sorted<facts::ReadingRow>& sorted,
                                                 const base::Region& region);
[[nodiscard]] std::vector<base::Message> told_of(const Sorted<facts::PartRow>& sorted,
                                                 const base::Region& region);
[[nodiscard]] std::vector<base::Message> told_of(const Sorted<facts::PriceLine>& sorted,
                                                 const base::Region& region);

}  // namespace twoclocks::canvas
