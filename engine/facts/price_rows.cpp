#include "engine/facts/price_rows.hpp"

#include <optional>

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

std::string print_price_rows(const std::vector<PriceRow>& rows) {
    std::string out;
    for (const PriceRow& row : rows)
        out += row.article + '\t' + base::print_money(row.price) + '\t' + row.name + '\n';
    return out;
}

}  // namespace twoclocks::facts
