#include "engine/timeline/directive_serials.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "engine/base/digit.hpp"

namespace twoclocks::timeline {
namespace {

constexpr std::size_t most_digits = 18;

/// A serial as letters and the number that ends it.
struct Plate {
    std::string_view letters;
    std::int64_t number{0};
};

[[nodiscard]] std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

/// Nothing when the text does not end in a number that fits.
[[nodiscard]] std::optional<Plate> plate_of(std::string_view text) {
    std::size_t start = text.size();
    while (start > 0 && base::is_digit(text[start - 1]))
        --start;
    const std::string_view digits = text.substr(start);
    if (digits.empty() || digits.size() > most_digits) return std::nullopt;
    Plate out{text.substr(0, start), 0};
    constexpr std::int64_t ten = 10;
    for (const char digit : digits)
        out.number = out.number * ten + (digit - '0');
    return out;
}

[[nodiscard]] std::vector<std::string_view> tokens_of(std::string_view text) {
    std::vector<std::string_view> out;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(",;"), text.size());
        const std::string_view token = trimmed(text.substr(0, end));
        if (!token.empty()) out.push_back(token);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

struct Range {
    Plate first;
    Plate last;
};

/// A token with a dash whose two sides are numbers behind the same letters, in order.
[[nodiscard]] std::optional<Range> range_of(std::string_view token) {
    const std::size_t dash = token.rfind('-');
    if (dash == std::string_view::npos) return std::nullopt;
    const std::optional<Plate> first = plate_of(trimmed(token.substr(0, dash)));
    std::optional<Plate> last = plate_of(trimmed(token.substr(dash + 1)));
    if (!first || !last) return std::nullopt;
    if (first->letters != last->letters || first->number > last->number) return std::nullopt;
    return Range{*first, *last};
}

[[nodiscard]] bool is_readable(std::string_view token) {
    return range_of(token) || token.find(' ') == std::string_view::npos;
}

[[nodiscard]] bool names(std::string_view token, std::string_view serial) {
    if (token == serial) return true;
    const std::optional<Plate> plate = plate_of(serial);
    if (!plate) return false;
    if (const std::optional<Range> range = range_of(token)) {
        return range->first.letters == plate->letters && range->first.number <= plate->number &&
               plate->number <= range->last.number;
    }
    const std::optional<Plate> one = plate_of(token);
    return one && one->letters == plate->letters && one->number == plate->number;
}

}  // namespace

bool are_readable(std::string_view serials) {
    const std::vector<std::string_view> tokens = tokens_of(serials);
    return std::all_of(tokens.begin(), tokens.end(), is_readable);
}

Says serials_say(std::string_view serials, std::string_view serial) {
    const std::vector<std::string_view> tokens = tokens_of(serials);
    const std::string_view own = trimmed(serial);
    if (tokens.empty() || own.empty()) return Says::nothing;
    const bool named = std::any_of(
        tokens.begin(), tokens.end(), [&](std::string_view token) { return names(token, own); });
    if (named) return Says::names_this;
    return are_readable(serials) ? Says::names_others : Says::nothing;
}

}  // namespace twoclocks::timeline
