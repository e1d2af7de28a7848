#include "engine/facts/check_cost.hpp"

#include <string_view>

#include "engine/base/rate_figure.hpp"
#include "engine/facts/price_rows.hpp"
#include "engine/facts/refuse.hpp"

namespace twoclocks::facts {
namespace {

using base::Problems;
using base::Trouble;

void tell_at(Problems& out, base::Problem problem, std::string_view key) {
    problem.field = key;
    out.push_back(std::move(problem));
}

template <class T>
[[nodiscard]] bool in_order(const std::optional<T>& less, const std::optional<T>& more) {
    return !less || !more || *less <= *more;
}

[[nodiscard]] std::optional<std::int64_t> units_of(const std::optional<base::Money>& money) {
    return money ? std::optional{money->minor_units} : std::nullopt;
}

void check_prices(const CostLine& line, const base::Arg& named, Problems& out) {
    const bool has_ends = line.low_price || line.high_price;
    if (has_ends && !line.price) {
        refuse(out, Trouble::line_points_missing, {named}, "price");
        return;
    }
    for (const auto* const end : {&line.low_price, &line.high_price}) {
        if (!*end || (*end)->currency == line.price->currency) continue;
        refuse(out, Trouble::line_currencies, {named}, "price");
        return;
    }
    const auto price = units_of(line.price);
    if (!in_order(units_of(line.low_price), price) || !in_order(price, units_of(line.high_price)))
        refuse(out, Trouble::line_out_of_order, {named}, "price");
}

void check_quantities(const CostLine& line, const base::Arg& named, Problems& out) {
    constexpr std::string_view key = "quantity_thousandths";
    if ((line.low_quantity || line.high_quantity) && !line.quantity)
        refuse(out, Trouble::line_points_missing, {named}, key);
    else if (!in_order(line.low_quantity, line.quantity) ||
             !in_order(line.quantity, line.high_quantity))
        refuse(out, Trouble::line_out_of_order, {named}, key);
}

void check_code(const std::string& code, std::string_view key, Problems& out) {
    const auto currency = base::parse_currency(code);
    if (currency && base::print_currency(currency.value()) == code) return;
    refuse(out, Trouble::money_currency, {base::excerpt_arg(code)}, key);
}

void check_rate(const ExchangeRate& rate, Problems& out) {
    check_code(rate.from, "rate_from", out);
    check_code(rate.to, "rate_to", out);
    if (rate.from == rate.to)
        refuse(out, Trouble::rate_same_currency, {base::text_arg(rate.from)}, "rate_to");
    const auto figure = base::parse_rate(rate.rate);
    if (!figure) tell_at(out, figure.problems().front(), "rate");
}

}  // namespace

Problems check_cost(const Body& body) {
    Problems out;
    if (const auto* line = std::get_if<CostLine>(&body.fields)) {
        const base::Arg named = base::text_arg(line->name.empty() ? line->line : line->name);
        check_prices(*line, named, out);
        check_quantities(*line, named, out);
    }
    if (const auto* rate = std::get_if<ExchangeRate>(&body.fields)) check_rate(*rate, out);
    if (const auto* terms = std::get_if<CostTerms>(&body.fields); terms && !terms->home.empty())
        check_code(terms->home, "home_currency", out);
    if (const auto* list = std::get_if<PriceList>(&body.fields)) {
        const auto rows = parse_price_rows(list->rows);
        if (!rows)
            for (const base::Problem& problem : rows.problems())
                tell_at(out, problem, "list_rows");
    }
    return out;
}

}  // namespace twoclocks::facts
