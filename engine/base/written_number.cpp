#include "engine/base/written_number.hpp"

#include <algorithm>
#include <array>

#include "engine/base/digit.hpp"

namespace twoclocks::base {
namespace {

constexpr std::size_t group_digits = 3;

// What people and keyboards put between thousands, beside . and , : spaces (plain, no-break, narrow
// no-break, thin, figure) and apostrophes.
constexpr std::array<std::string_view, 7> gaps{
    " ", "'", "\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89", "\xE2\x80\x87", "\xE2\x80\x99"};

// What a clipboard leaves at the ends.
constexpr std::array<std::string_view, 8> margins{
    " ", "\t", "\r", "\n", "\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89", "\xE2\x80\x87"};

// A hyphen, and the minus sign that `say` prints.
constexpr std::array<std::string_view, 2> minuses{"-", "\xE2\x88\x92"};

/// Takes the first of `signs` that `text` begins with off its front.
template <std::size_t size>
[[nodiscard]] bool took(std::string_view& text, const std::array<std::string_view, size>& signs) {
    for (const std::string_view sign : signs) {
        if (!text.starts_with(sign)) continue;
        text.remove_prefix(sign.size());
        return true;
    }
    return false;
}

[[nodiscard]] bool took_last(std::string_view& text) {
    for (const std::string_view sign : margins) {
        if (!text.ends_with(sign)) continue;
        text.remove_suffix(sign.size());
        return true;
    }
    return false;
}

/// The signs between the runs of digits: . , : or a space for every kind of gap. Nothing when it is
/// anything else than runs of digits with one sign between every two.
[[nodiscard]] std::optional<std::string> split(std::string_view text,
                                               std::vector<std::string_view>& runs) {
    std::string signs;
    for (;;) {
        const auto length = static_cast<std::size_t>(
            std::find_if_not(text.begin(), text.end(), is_digit) - text.begin());
        if (length == 0) return std::nullopt;
        runs.push_back(text.substr(0, length));
        text.remove_prefix(length);
        if (text.empty()) return signs;
        if (took(text, gaps)) {
            signs += ' ';
            continue;
        }
        if (std::string_view{".,:"}.find(text.front()) == std::string_view::npos) {
            return std::nullopt;
        }
        signs += text.front();
        text.remove_prefix(1);
    }
}

[[nodiscard]] NumberForm form_of(const std::vector<std::string_view>& runs,
                                 const std::string& signs) {
    if (signs.empty()) return NumberForm::whole;
    const char last = signs.back();
    const std::string_view before{signs.data(), signs.size() - 1};
    const char grouping = before.empty() ? ' ' : before.front();
    const bool one_grouping = before.find_first_not_of(grouping) == std::string_view::npos;
    if (!one_grouping || grouping == ':') return NumberForm::malformed;
    if (last == ':') return NumberForm::clock;
    if (last == grouping) return NumberForm::whole;
    if (last == ' ') return NumberForm::malformed;
    const std::string_view lead = runs.front();
    const bool like_a_group = before.empty() && runs.back().size() == group_digits &&
                              lead.size() <= group_digits && lead.front() != '0';
    return like_a_group ? NumberForm::ambiguous : NumberForm::decimal;
}

}  // namespace

WrittenNumber read_number(std::string_view text) {
    WrittenNumber out;
    text = without_margins(text);
    out.negative = took(text, minuses);
    const std::optional<std::string> signs = split(text, out.runs);
    if (signs) out.form = form_of(out.runs, *signs);
    return out;
}

std::optional<std::int64_t> joined_runs(const WrittenNumber& number,
                                        std::int32_t count,
                                        std::int64_t most) {
    std::int64_t out = 0;
    const auto runs = static_cast<std::size_t>(count);
    for (std::size_t at = 0; at < runs && at < number.runs.size(); ++at) {
        const std::string_view run = number.runs[at];
        if (at > 0 && run.size() != group_digits) return std::nullopt;
        if (at == 0 && runs > 1 && run.size() > group_digits) return std::nullopt;
        for (const char digit : run)
            out = std::min(out * 10 + (digit - '0'), most + 1);
    }
    return out;
}

std::optional<std::int64_t> parse_whole(std::string_view text, std::int64_t most) {
    const WrittenNumber number = read_number(text);
    const bool one_reading =
        number.form == NumberForm::whole || number.form == NumberForm::ambiguous;
    if (!one_reading || number.negative) return std::nullopt;
    return joined_runs(number, static_cast<std::int32_t>(number.runs.size()), most);
}

std::string print_decimal(std::int64_t units, std::int32_t decimals) {
    std::string digits = std::to_string(units);
    const bool negative = digits.front() == '-';
    if (negative) digits.erase(0, 1);
    const auto behind = static_cast<std::size_t>(decimals);
    if (digits.size() <= behind) digits.insert(0, behind + 1 - digits.size(), '0');
    if (behind > 0) digits.insert(digits.size() - behind, 1, '.');
    return (negative ? "-" : "") + digits;
}

std::string_view without_margins(std::string_view text) {
    while (took(text, margins)) {
    }
    while (took_last(text)) {
    }
    return text;
}

}  // namespace twoclocks::base
