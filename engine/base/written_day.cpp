#include "engine/base/written_day.hpp"

#include <array>

#include "engine/base/written_number.hpp"

namespace twoclocks::base {
namespace {

constexpr std::size_t year_digits = 4;
constexpr std::size_t most_part_digits = 2;

struct Part {
    std::int32_t value{0};
    std::size_t digits{0};
};

/// The three numbers of a day as they stand; nothing where the shape is another.
[[nodiscard]] std::optional<std::array<Part, 3>> parts_of(std::string_view text) {
    std::array<Part, 3> out{};
    std::size_t place = 0;
    char between = 0;
    for (const char sign : text) {
        if (sign >= '0' && sign <= '9') {
            Part& part = out[place];
            if (++part.digits > year_digits) return std::nullopt;
            part.value = part.value * 10 + (sign - '0');
            continue;
        }
        constexpr std::string_view signs = ".-/ ";
        const bool is_other = between != 0 && sign != between;
        if (signs.find(sign) == std::string_view::npos || is_other) return std::nullopt;
        if (out[place].digits == 0 || ++place == out.size()) return std::nullopt;
        between = sign;
    }
    const bool is_whole = place + 1 == out.size() && out.back().digits > 0;
    return is_whole ? std::optional{out} : std::nullopt;
}

[[nodiscard]] bool has_year_first(const std::array<Part, 3>& parts) {
    return parts[0].digits == year_digits && parts[1].digits <= most_part_digits &&
           parts[2].digits <= most_part_digits;
}

[[nodiscard]] bool has_year_last(const std::array<Part, 3>& parts) {
    return parts[2].digits == year_digits && parts[0].digits <= most_part_digits &&
           parts[1].digits <= most_part_digits;
}

}  // namespace

std::optional<Date> read_written_day(std::string_view text, std::optional<DayOrder> order) {
    const auto parts = parts_of(without_margins(text));
    if (!parts) return std::nullopt;
    CivilDay day;
    const auto& [first, second, third] = *parts;
    if (has_year_first(*parts))
        day = {first.value, second.value, third.value};
    else if (!order || *order == DayOrder::year_month_day || !has_year_last(*parts))
        return std::nullopt;
    else if (*order == DayOrder::day_month_year)
        day = {third.value, second.value, first.value};
    else
        day = {third.value, first.value, second.value};
    const Result<Date> date = from_civil(day);
    return date ? std::optional{date.value()} : std::nullopt;
}

bool needs_day_order(std::string_view text) {
    const auto parts = parts_of(without_margins(text));
    return parts && has_year_last(*parts);
}

}  // namespace twoclocks::base
