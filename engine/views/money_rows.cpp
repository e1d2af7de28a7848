#include "engine/views/money_rows.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/budget/from_records.hpp"
#include "engine/views/record_cash.hpp"
#include "engine/views/record_money.hpp"
#include "engine/views/record_plan.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using budget::CostedLine;
using budget::Points;
using facts::CostLine;
using facts::TaxCase;

constexpr std::int32_t quantity_decimals = 3;
constexpr std::size_t most_movers = 6;

[[nodiscard]] bool is_nothing(const Points& points) {
    return points == Points{};
}

/// The quantity as one figure, or as three, and the price of one where it was said.
void add_quantity(const CostLine& said, MoneyRow& row) {
    const auto figure = [](std::int32_t thousandths) {
        return base::short_decimal_arg(thousandths, quantity_decimals);
    };
    const bool strays = said.low_quantity || said.high_quantity;
    std::vector<base::Arg> args;
    if (strays)
        args = {figure(said.low_quantity.value_or(*said.quantity)),
                figure(said.high_quantity.value_or(*said.quantity))};
    args.push_back(figure(*said.quantity));
    if (said.price) args.push_back(base::money_arg(*said.price));
    const Word one = said.price ? Word::money_quantity_at : Word::money_quantity;
    const Word three = said.price ? Word::money_quantities_at : Word::money_quantities;
    row.lines.push_back({strays ? three : one, std::move(args)});
}

void add_price(const CostedLine& line, MoneyRow& row) {
    const CostLine& said = line.said;
    if (said.quantity) add_quantity(said, row);
    if (line.from_list)
        row.lines.push_back(
            {Word::money_from_list, {base::text_arg(said.article), base::text_arg(said.list)}});
    else if (said.price && !said.quantity)
        row.lines.push_back({Word::money_price_of_one, {base::money_arg(*said.price)}});
}

/// How the price becomes what is paid.
void add_terms(const CostedLine& line, MoneyRow& row) {
    const CostLine& said = line.said;
    if (line.rise_days > 0)
        row.workings.push_back({Word::money_risen,
                                {base::short_decimal_arg(line.rise_permille, 1),
                                 base::day_arg(*line.paid_on),
                                 base::cost_arg({line.risen.likely, line.currency})}});
    if (said.price_until)
        row.workings.push_back({Word::route_until_line, {base::day_arg(*said.price_until)}});
    if (said.at_shipment) row.workings.push_back({Word::money_at_shipment, {}});
    if (said.deposit_permille)
        row.workings.push_back(
            {said.deposit_back ? Word::money_deposit_back : Word::money_deposit_gone,
             {base::short_decimal_arg(*said.deposit_permille, 1)}});
}

void add_taxes(const CostedLine& line, MoneyRow& row) {
    const CostLine& said = line.said;
    if (!is_nothing(line.duty))
        row.workings.push_back({Word::route_duty_line,
                                {base::short_decimal_arg(*said.duty_permille, 1),
                                 base::cost_arg({line.duty.likely, line.currency})}});
    else if (said.relief != facts::DutyRelief::none)
        row.workings.push_back(
            {said.relief_terms.empty() ? Word::money_relief : Word::money_relief_on,
             {base::word_arg(duty_relief_word(said.relief)), base::text_arg(said.relief_terms)}});
    if (said.tax == TaxCase::reverse_charge) {
        row.workings.push_back({Word::money_reverse_charge, {}});
    } else if (!is_nothing(line.tax)) {
        row.workings.push_back({said.tax == TaxCase::recoverable ? Word::route_tax_back_line
                                                                 : Word::route_tax_borne_line,
                                {base::short_decimal_arg(*said.tax_permille, 1),
                                 base::cost_arg({line.tax.likely, line.currency})}});
    }
}

/// What was recorded of an option beside its price.
void add_option(const CostLine& said, MoneyRow& row) {
    if (said.taken != facts::CostTaken::counted)
        row.lines.push_back({Word::record_of, {base::word_arg(cost_taken_word(said.taken))}});
    if (!said.one_of.empty())
        row.lines.push_back({Word::money_one_of, {base::text_arg(said.one_of)}});
    if (!said.serials.empty())
        row.lines.push_back({Word::money_serials, {base::text_arg(said.serials)}});
}

[[nodiscard]] MoneyRow row_of(const CostedLine& line, base::Currency home) {
    MoneyRow row;
    const CostLine& said = line.said;
    row.key = said.line;
    row.name = {Word::record_of, {cost_name(said)}};
    row.counts = line.counts && line.known;
    const Points& gross = line.home_gross;
    row.sum = row.counts ? Message{Word::record_of, {base::cost_arg({gross.likely, home})}}
              : line.known && said.taken == facts::CostTaken::offered
                  ? Message{Word::money_would_cost, {base::cost_arg({gross.likely, home})}}
                  : Message{Word::money_not_in, {}};
    if (row.counts && gross.low != gross.high)
        row.range = {Word::money_from_to,
                     {base::cost_arg({gross.low, home}), base::cost_arg({gross.high, home})}};
    add_price(line, row);
    add_option(said, row);
    add_terms(line, row);
    add_taxes(line, row);
    if (line.rate)
        row.workings.push_back(
            {Word::money_turned, {base::cost_arg({line.gross().likely, line.currency})}});
    row.workings.push_back(said.said_by.empty()
                               ? Message{Word::route_recorded_line, {base::day_arg(line.on)}}
                               : Message{Word::route_said_line,
                                         {base::text_arg(said.said_by), base::day_arg(line.on)}});
    row.notes = line.notes;
    return row;
}

}  // namespace

std::vector<MoneyRow> money_rows(const budget::Estimate& estimate) {
    std::vector<MoneyRow> out;
    const facts::CostGroup* before = nullptr;
    for (const CostedLine& line : estimate.lines) {
        MoneyRow row = row_of(line, estimate.home);
        row.is_recorded = line.said.line != budget::route_price_key &&
                          line.said.line != budget::route_freight_key;
        if (!row.is_recorded) row.key = line.said.route;
        const bool is_new = before == nullptr || *before != line.said.group;
        row.group =
            is_new ? Message{cost_group_word(line.said.group), {}} : Message{Word::blank, {}};
        before = &line.said.group;
        out.push_back(std::move(row));
    }
    return out;
}

std::vector<MoverRow> mover_rows(const budget::Estimate& estimate) {
    std::vector<MoverRow> out;
    if (estimate.movers.empty()) return out;
    const std::int64_t most = estimate.movers.front().swing;
    for (const budget::Mover& mover : estimate.movers) {
        if (out.size() == most_movers) break;
        constexpr std::int64_t whole = 1'000;
        const std::int64_t share =
            most >= whole ? mover.swing / (most / whole) : mover.swing * whole / most;
        const Message name =
            mover.core < 0
                ? Message{Word::record_of,
                          {cost_name(estimate.lines[static_cast<std::size_t>(mover.line)].said)}}
                : Message{Word::cash_core_credit,
                          {core_label(estimate.cores[static_cast<std::size_t>(mover.core)].said)}};
        out.push_back({name,
                       {Word::record_of, {base::cost_arg({mover.swing, estimate.home})}},
                       static_cast<std::int32_t>(std::min(share, whole))});
    }
    return out;
}

}  // namespace twoclocks::views
