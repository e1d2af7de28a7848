#include "engine/facts/price_rows.hpp"

#include <optional>

#include "engine/base/csv.hpp"
#include "engine/base/message_args.hpp"

namespace twoclocks::facts {
namespace {

/// What stands before the sign, taken off with it; all of it where the sign is missing.
[[nodiscard]] std::string_view taken_to(std::string_view& text, char sign) {
    const std::size_t at = text.find(sign);
    const std::string_view out = text.substr(0, at);
    text = at == std::string_view::npos ? std::string_view{} : text.substr(at + 1);
    return out;
}

[[nodiscard]] std::optional<PriceRow> row_of(std::string_view line) {
    const std::string_view article = taken_to(line, '\t');
    const std::string_view price = taken_to(line, '\t');
    const auto money = base::parse_money(price, {});
    const bool is_sound = !article.empty() && money && base::print_money(money.value()) == price &&
                          money.value().minor_units >= 0 &&
                          line.find('\t') == std::string_view::npos;
    if (!is_sound) return std::nullopt;
    return PriceRow{std::string{article}, money.value(), std::string{line}};
}

[[nodiscard]] bool has_digit(std::string_view text) {
    return text.find_first_of("0123456789") != std::string_view::npos;
}

/// What ends a field or a row of ours becomes a space.
[[nodiscard]] std::string one_line(std::string text) {
    for (char& sign : text)
        if (sign == '\t' || sign == '\n' || sign == '\r') sign = ' ';
    return text;
}

}  // namespace

base::Result<std::vector<PriceRow>> parse_price_rows(std::string_view text) {
    std::vector<PriceRow> out;
    base::Problems problems;
    std::int64_t number = 0;
    while (!text.empty()) {
        const std::string_view line = taken_to(text, '\n');
        ++number;
        if (auto row = row_of(line))
            out.push_back(std::move(*row));
        else
            problems.push_back(base::trouble(base::Trouble::list_row_wrong,
                                             {base::whole_arg(number), base::excerpt_arg(line)}));
    }
    if (!problems.empty()) return problems;
    if (out.empty()) return base::trouble(base::Trouble::list_empty);
    return out;
}

base::Result<std::vector<PriceRow>> read_price_table(std::string_view text,
                                                     base::Currency otherwise) {
    std::vector<PriceRow> out;
    base::Problems problems;
    std::int64_t number = 0;
    for (const auto& fields : base::split_csv(text, base::csv_separator(text))) {
        ++number;
        const std::string price = fields.size() > 1 ? fields[1] : std::string{};
        if (number == 1 && !has_digit(price)) continue;
        const auto money = base::parse_money(price, otherwise);
        const bool is_sound = !fields.front().empty() && money && money.value().minor_units >= 0;
        if (is_sound)
            out.push_back({one_line(fields.front()),
                           money.value(),
                           fields.size() > 2 ? one_line(fields[2]) : std::string{}});
        else
            problems.push_back(
                base::trouble(base::Trouble::list_row_wrong,
                              {base::whole_arg(number), base::excerpt_arg(fields.front())}));
    }
    if (!problems.empty()) return problems;
    if (out.empty()) return base::trouble(base::Trouble::list_empty);
    return out;
}

std::string print_price_rows(const std::vector<PriceRow>& rows) {
    std::string out;
    for (const PriceRow& row : rows)
        out += row.article + '\t' + base::print_money(row.price) + '\t' + row.name + '\n';
    return out;
}

}  // namespace twoclocks::facts
