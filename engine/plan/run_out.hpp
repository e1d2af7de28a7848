// The day on which a limit stops the aircraft, as chance has it.
//
// The forecast gives three days: early (one of ten ways is sooner), likely, late (one of ten is
// later). Between and beyond them the days are spread as a normal distribution of two halves is,
// one for each side of likely. The calendar day of the limit is the last there is.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace twoclocks::plan {

/// Days counted from today, which is 0; negative where the limit is behind.
struct RunOut {
    std::int32_t early{0};
    std::int32_t likely{0};
    std::optional<std::int32_t> late;      // nothing: perhaps never
    std::optional<std::int32_t> calendar;  // the last day of the calendar limit
};

/// The same so many days sooner.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] RunOut sooner_by(RunOut run_out, std::int32_t days);

/// How many equal parts of chance a run-out is laid out in.
inline constexpr std::int32_t run_out_parts = 256;

/// The day at the middle of each part, soonest first.
/// Units: days. Range: early <= likely <= late, else they are raised to it. Errors: none.
/// Source: normal distribution of two halves, our choice.
[[nodiscard]] std::vector<double> run_out_days(const RunOut& run_out);

}  // namespace twoclocks::plan
