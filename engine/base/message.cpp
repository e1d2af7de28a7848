#include "engine/base/message.hpp"

#include <array>

namespace twoclocks::base {
namespace {

struct WordRow {
    std::string_view name;
    std::string_view text;
};

struct TroubleRow {
    std::string_view name;
    std::string_view what;
    std::string_view remedy;
};

constexpr auto words = std::to_array<WordRow>({
#define WORD(id, text) {#id, text},
#define TROUBLE(id, what, remedy)
#include "engine/base/words.def"
#undef WORD
#undef TROUBLE
});

constexpr auto troubles = std::to_array<TroubleRow>({
#define WORD(id, text)
#define TROUBLE(id, what, remedy) {#id, what, remedy},
#include "engine/base/words.def"
#undef WORD
#undef TROUBLE
});

[[nodiscard]] const TroubleRow& row(Trouble code) {
    return troubles.at(static_cast<std::size_t>(code));
}

}  // namespace

std::string_view pattern(Word word) {
    return words.at(static_cast<std::size_t>(word)).text;
}

std::string_view pattern_what(Trouble code) {
    return row(code).what;
}

std::string_view pattern_remedy(Trouble code) {
    return row(code).remedy;
}

std::string_view name_of(Trouble code) {
    return row(code).name;
}

std::string_view name_of(Word word) {
    return words.at(static_cast<std::size_t>(word)).name;
}

}  // namespace twoclocks::base
