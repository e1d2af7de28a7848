// What a person wrote in a field, as a figure: read the same way while it is typed, when the field
// is left and when the form is sent.
#pragma once

#include "wasm/screen.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/money.hpp"

namespace twoclocks::canvas {

/// Decimals of a field that holds a plain decimal number.
inline constexpr std::int32_t field_decimals = 3;

[[nodiscard]] base::Result<std::int64_t> read_whole(std::string_view text);
/// Thousandths, as many as `decimals` says of them: 12.3 with 2 decimals is 1230.
[[nodiscard]] base::Result<std::int64_t> read_decimal(std::string_view text, std::int32_t decimals);
[[nodiscard]] base::Result<base::Money> read_money(const FieldView& field);

/// What is wrong with what stands in the field; nothing while it is empty.
[[nodiscard]] std::optional<base::Problem> problem_of(const FieldView& field);

/// Fills in what the page shows of a field: how it was understood, and what its search leaves.
void understand(FieldView& field);

/// How many letters a text has, whatever they take.
[[nodiscard]] std::int64_t letters_in(std::string_view text);

/// Every word of `query` stands in `text`, capitals or not.
[[nodiscard]] bool matches(std::string_view text, std::string_view query);

}  // namespace twoclocks::canvas
