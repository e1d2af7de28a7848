// Words: what the engine says, as an id with typed arguments.
//
// Every sentence of the product stands once, in words.def. The engine, the canvas and the report
// pass Messages about; only `say` (region.hpp) makes text of them. A prose literal anywhere else
// fails a test.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace twoclocks::base {

/// Every word and sentence on the canvas, in reports and in files.
enum class Word : std::uint16_t {
#define WORD(id, text) id,
#define TROUBLE(id, what, remedy)
#include "engine/base/words.def"
#undef WORD
#undef TROUBLE
};

/// Every thing that can be wrong. Each has a sentence for what happened and one for what to do.
enum class Trouble : std::uint16_t {
#define WORD(id, text)
#define TROUBLE(id, what, remedy) id,
#include "engine/base/words.def"
#undef WORD
#undef TROUBLE
};

/// What an argument means, so that a Region can write it its own way.
enum class ArgType : std::uint8_t {
    text,         // somebody's own words, as they are
    whole,        // a whole number in `first`
    day,          // day number in `first`: 21 Sep 2029
    month,        // day number in `first`: Sep 2029
    hours_down,   // seconds in `first`, cut to tenths toward minus infinity: 1,044.0
    hours_up,     // seconds in `first`, cut to tenths toward plus infinity
    hours_whole,  // seconds in `first`, cut down to whole hours: 2,400
    hours_exact,  // seconds in `first`, nothing cut, in the HoursForm in `second`: 9:51
    decimal,      // `first` with its last `second` digits behind the decimal sign: 1,234.50
    money,        // as decimal, and the code of its currency in `text`: 1,234.50 EUR
    span,         // years in `first`, days in `second`: 7 y 166 d
    word          // a Word in `first`
};

/// One typed argument. Made by the functions in message_args.hpp.
struct Arg {
    ArgType type{ArgType::whole};
    std::int64_t first{0};
    std::int64_t second{0};
    std::string text;

    bool operator==(const Arg& other) const {
        return type == other.type && first == other.first && second == other.second &&
               text == other.text;
    }
};

/// A word or sentence and what goes into its {0}, {1}, ...
struct Message {
    Word word{};
    std::vector<Arg> args;

    bool operator==(const Message& other) const { return word == other.word && args == other.args; }
};

/// The catalogue's text of a word, before arguments; `a|b` means one | many by the first argument.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] std::string_view pattern(Word word);

/// The catalogue's text of what happened.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] std::string_view pattern_what(Trouble code);

/// The catalogue's text of what to do about it.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] std::string_view pattern_remedy(Trouble code);

/// The id of a trouble as it stands in words.def, for tests, reports and the gallery.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] std::string_view name_of(Trouble code);

/// The id of a word as it stands in words.def.
/// Units: none. Errors: none. Source: words.def.
[[nodiscard]] std::string_view name_of(Word word);

}  // namespace twoclocks::base
