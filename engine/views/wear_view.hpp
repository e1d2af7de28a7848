// Measured wear in words: the figure, its trend, and why.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// The wear of an item worked out; nothing where none is recorded.
/// Units: as the rooms before. Errors: none. Source: timeline/wear.hpp, forecast/wear_trend.hpp.
[[nodiscard]] std::optional<ItemWear> work_out_wear(const Assessed& aircraft, base::Id item);

/// The state of an item with its wear: past its limit it is over, whatever its interval says; not
/// measured, or in another unit, is unknown; a trend that is near only warns.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] State with_wear(State by_interval,
                              const limits::ItemDue& item,
                              const std::optional<ItemWear>& wear,
                              base::Date today);

/// What was measured against the limit, with every measurement in its why; nothing where no wear is
/// recorded.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::optional<Figure> wear_figure(const Assessed& aircraft, std::int32_t place);

/// The day that wear names, where that comes before the day of the interval: of the measurement
/// past the limit, or of the trend.
/// Units: none. Errors: none. Source: our choice, the earlier day is shown.
[[nodiscard]] std::optional<base::Date> wear_first(const Assessed& aircraft, std::int32_t place);

/// When the item is likely due by its wear: where that comes before its interval, or it has none.
/// Units: none. Errors: none. Source: as above.
[[nodiscard]] std::optional<base::Message> wear_likely(const Assessed& aircraft,
                                                       std::int32_t place);

/// Adds the trend of an item to a why, if it has one.
/// Units: none. Errors: none. Source: our choice.
void explain_trend(Why& why, const Assessed& aircraft, std::int32_t place);

/// What to look at: measurements in another unit than their limit.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> wear_cautions(const Assessed& aircraft);

/// True when an item is over by its wear.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_worn_past(const Assessed& aircraft, std::int32_t place);

}  // namespace twoclocks::views
