#include "engine/base/region.hpp"

#include <algorithm>
#include <array>
#include <limits>

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/written_number.hpp"

namespace twoclocks::base {
namespace {

constexpr std::string_view minus_sign = "\xE2\x88\x92";
constexpr std::string_view missing = "\xE2\x80\x93";
constexpr std::array month_words{Word::month_1,
                                 Word::month_2,
                                 Word::month_3,
                                 Word::month_4,
                                 Word::month_5,
                                 Word::month_6,
                                 Word::month_7,
                                 Word::month_8,
                                 Word::month_9,
                                 Word::month_10,
                                 Word::month_11,
                                 Word::month_12};

/// Writes plain text like -1234.5 or 1234:30 with the region's signs.
[[nodiscard]] std::string write_number(std::string_view plain, const Region& region) {
    constexpr std::size_t group = 3;
    std::string out;
    if (plain.starts_with('-')) {
        out += minus_sign;
        plain.remove_prefix(1);
    }
    const std::size_t point = plain.find_first_of(".:");
    const std::string_view whole = plain.substr(0, point);
    for (std::size_t i = 0; i < whole.size(); ++i) {
        if (i > 0 && (whole.size() - i) % group == 0) out += region.group_sign;
        out += whole[i];
    }
    if (point == std::string_view::npos) return out;
    out += plain[point] == '.' ? region.decimal_sign : std::string{plain[point]};
    out += plain.substr(point + 1);
    return out;
}

[[nodiscard]] std::string write_whole(std::int64_t number, const Region& region) {
    return write_number(std::to_string(number), region);
}

[[nodiscard]] CivilDay day_of(const Arg& arg) {
    constexpr std::int64_t least = std::numeric_limits<std::int32_t>::min();
    constexpr std::int64_t most = std::numeric_limits<std::int32_t>::max();
    return civil({static_cast<std::int32_t>(std::clamp(arg.first, least, most))});
}

[[nodiscard]] std::string month_name(CivilDay day) {
    return std::string{pattern(month_words.at(static_cast<std::size_t>(day.month - 1)))};
}

[[nodiscard]] std::string write_month(CivilDay day) {
    return month_name(day) + ' ' + std::to_string(day.year);
}

[[nodiscard]] std::string write_day(CivilDay day, const Region& region) {
    const std::string number = std::to_string(day.day);
    switch (region.date_order) {
        case DateOrder::day_first:
            return number + ' ' + write_month(day);
        case DateOrder::month_first:
            return month_name(day) + ' ' + number + ", " + std::to_string(day.year);
        case DateOrder::year_first:
            return std::to_string(day.year) + ' ' + month_name(day) + ' ' + number;
    }
    return {};
}

[[nodiscard]] std::string write_hours(std::int64_t seconds, Round round, const Region& region) {
    return write_number(print_tenths({seconds}, round), region);
}

[[nodiscard]] std::string write_whole_hours(std::int64_t seconds, const Region& region) {
    const std::int64_t cut = seconds / seconds_per_hour;
    return write_whole(seconds % seconds_per_hour < 0 ? cut - 1 : cut, region);
}

[[nodiscard]] std::string write_decimal(const Arg& arg, const Region& region) {
    constexpr std::int64_t most_decimals = 9;
    const auto decimals = std::clamp<std::int64_t>(arg.second, 0, most_decimals);
    return write_number(print_decimal(arg.first, static_cast<std::int32_t>(decimals)), region);
}

/// Both figures carry the sign of the span: it is written once, in front.
[[nodiscard]] std::string write_span(const Arg& arg, const Region& region) {
    const auto size = [&](std::int64_t signed_number) {
        const std::string plain = std::to_string(signed_number);
        return write_number(std::string_view{plain}.substr(signed_number < 0 ? 1 : 0), region);
    };
    std::string out{arg.first < 0 || arg.second < 0 ? minus_sign : std::string_view{}};
    if (arg.first != 0)
        out += size(arg.first) + ' ' + std::string{pattern(Word::short_years)} + ' ';
    return out + size(arg.second) + ' ' + std::string{pattern(Word::short_days)};
}

[[nodiscard]] std::string write(const Arg& arg, const Region& region) {
    switch (arg.type) {
        case ArgType::text:
            return arg.text;
        case ArgType::whole:
            return write_whole(arg.first, region);
        case ArgType::day:
            return write_day(day_of(arg), region);
        case ArgType::month:
            return write_month(day_of(arg));
        case ArgType::hours_down:
            return write_hours(arg.first, Round::down, region);
        case ArgType::hours_up:
            return write_hours(arg.first, Round::up, region);
        case ArgType::hours_whole:
            return write_whole_hours(arg.first, region);
        case ArgType::hours_exact:
            return write_number(print_exact({arg.first}, static_cast<HoursForm>(arg.second)),
                                region);
        case ArgType::decimal:
            return write_decimal(arg, region);
        case ArgType::money:
            return write_decimal(arg, region) + "\xC2\xA0" + arg.text;
        case ArgType::span:
            return write_span(arg, region);
        case ArgType::word:
            return std::string{pattern(static_cast<Word>(arg.first))};
    }
    return std::string{missing};
}

/// The half of `one|many` that the first whole number asks for.
[[nodiscard]] std::string_view number_form(std::string_view text, const std::vector<Arg>& args) {
    const std::size_t bar = text.find('|');
    if (bar == std::string_view::npos) return text;
    for (const Arg& arg : args) {
        if (arg.type == ArgType::whole)
            return arg.first == 1 ? text.substr(0, bar) : text.substr(bar + 1);
    }
    return text.substr(bar + 1);
}

[[nodiscard]] std::string fill(std::string_view text,
                               const std::vector<Arg>& args,
                               const Region& region) {
    text = number_form(text, args);
    std::string out;
    while (!text.empty()) {
        const bool slot = text.size() >= 3 && text[0] == '{' && text[2] == '}' && text[1] >= '0' &&
                          text[1] <= '9';
        if (!slot) {
            out += text.front();
            text.remove_prefix(1);
            continue;
        }
        const auto place = static_cast<std::size_t>(text[1] - '0');
        out += place < args.size() ? write(args[place], region) : std::string{missing};
        text.remove_prefix(3);
    }
    return out;
}

}  // namespace

Word month_word(std::size_t month) {
    return month_words[month];
}

std::string say(const Message& message, const Region& region) {
    return fill(pattern(message.word), message.args, region);
}

std::string say(Word word, const Region& region) {
    return fill(pattern(word), {}, region);
}

std::string say_what(const Problem& problem, const Region& region) {
    return fill(pattern_what(problem.code), problem.args, region);
}

std::string say_remedy(const Problem& problem, const Region& region) {
    return fill(pattern_remedy(problem.code), problem.args, region);
}

}  // namespace twoclocks::base
