// The rule that sentences stand in the catalogue and nowhere else.
#include "tests/support/house_rules.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace twoclocks::support {
namespace {

struct Exception {
    std::string_view path;
    std::string_view text;
    std::string_view reason;
};

/// Texts with a space that nobody is ever shown.
constexpr std::array<Exception, 0> allowed_texts{};

/// Letters with at most the punctuation of a sentence round them; no code, no key, no path.
bool is_word(std::string_view token) {
    constexpr std::string_view stops = ".,;:!?()'\\\"-";
    bool any = false;
    for (const char sign : token) {
        if (is_letter(sign)) {
            any = true;
        } else if (stops.find(sign) == std::string_view::npos) {
            return false;
        }
    }
    return any;
}

/// Two words in a row, one of them longer than a letter.
bool is_prose(std::string_view text) {
    std::size_t before = 0;
    while (!text.empty()) {
        const std::size_t space = text.find(' ');
        const std::string_view token = text.substr(0, space);
        const std::size_t size = is_word(token) ? token.size() : 0;
        if (before > 0 && size > 0 && before + size > 2) return true;
        before = size;
        if (space == std::string_view::npos) return false;
        text.remove_prefix(space + 1);
    }
    return false;
}

bool is_excepted(const SourceText& file, const Literal& literal) {
    return literal.asserted ||
           std::any_of(allowed_texts.begin(), allowed_texts.end(), [&](const Exception& row) {
               return file.path == row.path && literal.text == row.text;
           });
}

}  // namespace

Complaints prose_complaints(const SourceText& file) {
    Complaints out;
    for (const Literal& literal : file.literals) {
        if (!is_prose(literal.text) || is_excepted(file, literal)) continue;
        complain(out,
                 file,
                 literal.line,
                 "\"" + literal.text + "\": put the words in engine/base/words.def and `say` them");
    }
    return out;
}

}  // namespace twoclocks::support
