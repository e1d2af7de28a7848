// Numbers as people write them: what stands between the digits, and what it can mean.
//
// Between thousands people put a dot, a comma, an apostrophe or a space of any width; behind whole
// numbers a dot or a comma; before minutes a colon. One sign with three digits behind it can be
// either of the first two. What reads numbers (hours, money, counts) decides what to do about that.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace twoclocks::base {

/// What the signs between the digits make of them. `ambiguous`: "1,234" and "1.234".
enum class NumberForm : std::uint8_t { whole, decimal, clock, ambiguous, malformed };

/// A number taken apart. The runs of digits lie in the text that was read.
struct WrittenNumber {
    NumberForm form{NumberForm::malformed};
    bool negative{false};
    std::vector<std::string_view> runs;
};

/// Takes a written number apart: an optional minus, digits, and one sign between every two runs.
/// Units: none. Range: any text. Errors: none; what is no number has the form `malformed`.
/// Source: our choice, after what keyboards and spreadsheets put into a clipboard.
[[nodiscard]] WrittenNumber read_number(std::string_view text);

/// The whole number of the first `count` runs, thousands joined, held at `most` + 1.
/// Units: the caller's. Range: 0 to `most` + 1. Errors: nothing when a group of thousands is not
/// three digits long. Source: our choice.
[[nodiscard]] std::optional<std::int64_t> joined_runs(const WrittenNumber& number,
                                                      std::int32_t count,
                                                      std::int64_t most);

/// Reads a whole number: 1234, 1 234, 1'234, 1,234 or 1.234. What has no decimals can be read one
/// way only, so a single sign with three digits behind it is a thousands sign here.
/// Units: the caller's. Range: 0 to `most` + 1, where it is held. Errors: nothing when it is none,
/// or below zero. Source: our choice.
[[nodiscard]] std::optional<std::int64_t> parse_whole(std::string_view text, std::int64_t most);

/// Prints all digits of a decimal number with a dot and no grouping: 123450 and 2 are 1234.50.
/// Units: the caller's. Range: 0 to 9 decimals. Errors: none. Source: our choice.
[[nodiscard]] std::string print_decimal(std::int64_t units, std::int32_t decimals);

/// The text without white space at its ends, of any width.
/// Units: none. Range: any text. Errors: none. Source: our choice.
[[nodiscard]] std::string_view without_margins(std::string_view text);

}  // namespace twoclocks::base
