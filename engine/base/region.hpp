// How a person writes numbers and days. The only place where a Message becomes text.
#pragma once

#include <string>
#include <string_view>

#include "engine/base/message.hpp"
#include "engine/base/problem.hpp"

namespace twoclocks::base {

/// The short name of a month.
/// Units: none. Range: 0 is January, 11 December. Errors: none. Source: our choice.
[[nodiscard]] Word month_word(std::size_t month);

enum class DateOrder : std::uint8_t { day_first, month_first, year_first };

/// Signs and orders, told by the shell; only looks, never figures.
struct Region {
    std::string decimal_sign{"."};
    std::string group_sign{","};
    DateOrder date_order{DateOrder::day_first};
};

/// Text of a message.
/// Units: as its arguments say. Errors: none; a missing argument prints as an en dash.
/// Source: words.def.
[[nodiscard]] std::string say(const Message& message, const Region& region);

/// Text of a word that takes no arguments.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] std::string say(Word word, const Region& region);

/// What happened, as a sentence.
/// Units: as its arguments say. Errors: none. Source: words.def.
[[nodiscard]] std::string say_what(const Problem& problem, const Region& region);

/// What to do about it, as a sentence.
/// Units: as its arguments say. Errors: none. Source: words.def.
[[nodiscard]] std::string say_remedy(const Problem& problem, const Region& region);

}  // namespace twoclocks::base
