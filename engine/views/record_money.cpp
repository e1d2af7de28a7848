#include "engine/views/record_money.hpp"

#include <array>

#include "engine/facts/price_rows.hpp"
#include "engine/views/labelled.hpp"
#include "engine/views/record_lines.hpp"
#include "engine/views/record_plan.hpp"

namespace twoclocks::views {

using base::Message;
using base::Word;

Word cost_group_word(facts::CostGroup group) {
    constexpr std::array words{Word::cost_whole_price,
                               Word::cost_kit,
                               Word::cost_labour,
                               Word::cost_engine,
                               Word::cost_findings,
                               Word::cost_frame,
                               Word::cost_interior,
                               Word::cost_avionics,
                               Word::cost_freight,
                               Word::cost_duty,
                               Word::cost_ferry,
                               Word::cost_cover,
                               Word::cost_financing,
                               Word::cost_lost_use,
                               Word::cost_other};
    return word_at(words, group);
}

Word cost_for_word(facts::CostFor work) {
    constexpr std::array words{
        Word::cost_for_either, Word::plan_work_overhaul, Word::plan_work_calendar};
    return word_at(words, work);
}

Word cost_taken_word(facts::CostTaken taken) {
    constexpr std::array words{Word::cost_counted, Word::cost_offered, Word::cost_chosen};
    return word_at(words, taken);
}

Word duty_relief_word(facts::DutyRelief relief) {
    constexpr std::array words{
        Word::relief_none, Word::relief_temporary_export, Word::relief_processing};
    return word_at(words, relief);
}

Word tax_round_word(facts::TaxRound round) {
    constexpr std::array words{Word::tax_round_half_up, Word::tax_round_up, Word::tax_round_down};
    return word_at(words, round);
}

base::Arg cost_name(const facts::CostLine& line) {
    return line.name.empty() ? base::word_arg(cost_group_word(line.group))
                             : base::text_arg(line.name);
}

Message money_what(const facts::CostLine& fields) {
    if (fields.left_out) return {Word::record_line_left_out, {cost_name(fields)}};
    if (fields.price)
        return {Word::record_line_priced, {cost_name(fields), base::money_arg(*fields.price)}};
    return {Word::record_line, {cost_name(fields)}};
}

Message money_what(const facts::PriceList& fields) {
    const auto rows = facts::parse_price_rows(fields.rows);
    const auto count = rows ? static_cast<std::int64_t>(rows.value().size()) : 0;
    return {Word::record_price_list, {base::whole_arg(count), base::text_arg(fields.list)}};
}

Message money_what(const facts::ExchangeRate& fields) {
    return {Word::record_rate,
            {base::text_arg(fields.from), base::text_arg(fields.rate), base::text_arg(fields.to)}};
}

Message money_what(const facts::CostTerms& fields) {
    return {Word::record_cost_terms, {base::text_arg(fields.home)}};
}

std::vector<Message> money_more(const facts::CostLine& fields) {
    Labelled lines;
    lines.word(Word::field_cost_group, cost_group_word(fields.group));
    lines.text(Word::field_which_route, fields.route);
    lines.word(Word::field_cost_for, cost_for_word(fields.work));
    lines.thousandths(Word::field_low_quantity, fields.low_quantity);
    lines.thousandths(Word::field_quantity, fields.quantity);
    lines.thousandths(Word::field_high_quantity, fields.high_quantity);
    lines.money(Word::field_low_price, fields.low_price);
    lines.money(Word::field_one_price, fields.price);
    lines.money(Word::field_high_price, fields.high_price);
    lines.date(Word::field_price_on, fields.price_on);
    lines.date(Word::field_price_until, fields.price_until);
    lines.truth(Word::field_at_shipment, fields.at_shipment);
    lines.tenths(Word::field_deposit_percent, fields.deposit_permille);
    lines.truth(Word::field_deposit_back, fields.deposit_back);
    lines.word(Word::field_tax, tax_case_word(fields.tax));
    lines.tenths(Word::field_tax_percent, fields.tax_permille);
    lines.tenths(Word::field_duty_percent, fields.duty_permille);
    lines.word(Word::field_relief, duty_relief_word(fields.relief));
    lines.date(Word::field_relief_until, fields.relief_until);
    lines.text(Word::field_relief_terms, fields.relief_terms);
    lines.word(Word::field_taken, cost_taken_word(fields.taken));
    lines.text(Word::field_one_of, fields.one_of);
    lines.text(Word::field_needs, fields.needs);
    lines.text(Word::field_excludes, fields.excludes);
    lines.text(Word::field_serials, fields.serials);
    lines.time(Word::field_work_hours, fields.added_hours);
    lines.whole(Word::field_added_days, fields.added_days);
    lines.whole(Word::field_added_grams, fields.added_grams);
    lines.whole(Word::field_removed_grams, fields.removed_grams);
    lines.text(Word::field_price_list, fields.list);
    lines.text(Word::field_article, fields.article);
    lines.text(Word::field_said_by, fields.said_by);
    return lines.out;
}

std::vector<Message> money_more(const facts::PriceList& fields) {
    Labelled lines;
    const auto rows = facts::parse_price_rows(fields.rows);
    if (rows)
        for (const facts::PriceRow& row : rows.value())
            lines.out.push_back({Word::record_price_row,
                                 {base::text_arg(row.article),
                                  base::money_arg(row.price),
                                  base::text_arg(row.name)}});
    lines.text(Word::field_said_by, fields.said_by);
    return lines.out;
}

std::vector<Message> money_more(const facts::ExchangeRate& fields) {
    Labelled lines;
    lines.text(Word::field_said_by, fields.said_by);
    return lines.out;
}

std::vector<Message> money_more(const facts::CostTerms& fields) {
    Labelled lines;
    lines.tenths(Word::field_linked_percent, fields.linked_permille);
    lines.tenths(Word::field_kit_rise, fields.kit_rise_permille);
    lines.tenths(Word::field_labour_rise, fields.labour_rise_permille);
    lines.tenths(Word::field_engine_rise, fields.engine_rise_permille);
    lines.tenths(Word::field_other_rise, fields.other_rise_permille);
    lines.word(Word::field_tax_round, tax_round_word(fields.tax_round));
    lines.whole(Word::field_rate_days, fields.rate_days);
    return lines.out;
}

}  // namespace twoclocks::views
