#include "engine/views/record_cash.hpp"

#include <array>

#include "engine/views/labelled.hpp"
#include "engine/views/record_lines.hpp"
#include "engine/views/record_money.hpp"
#include "engine/views/record_plan.hpp"

namespace twoclocks::views {

using base::Message;
using base::Word;

Word core_grade_word(facts::CoreGrade grade) {
    constexpr std::array words{
        Word::grade_full, Word::grade_part, Word::grade_nothing, Word::grade_billed};
    return word_at(words, grade);
}

Word core_from_word(facts::CoreFrom from) {
    constexpr std::array words{Word::core_from_shipment, Word::core_from_release};
    return word_at(words, from);
}

Word core_stage_word(facts::CoreStage stage) {
    constexpr std::array words{Word::core_off,
                               Word::core_sent,
                               Word::core_received,
                               Word::core_graded,
                               Word::core_settled,
                               Word::core_forfeited,
                               Word::core_destroyed};
    return word_at(words, stage);
}

Word paid_at_word(facts::PaidAt at) {
    constexpr std::array words{Word::paid_at_order,
                               Word::paid_at_booking,
                               Word::paid_at_shipment,
                               Word::paid_at_stop,
                               Word::paid_at_release,
                               Word::paid_at_cores};
    return word_at(words, at);
}

Word holder_role_word(facts::HolderRole role) {
    constexpr std::array words{Word::holder_owner, Word::holder_lessor};
    return word_at(words, role);
}

base::Arg core_label(const facts::Core& core) {
    return base::text_arg(core.name.empty() ? core.core : core.name);
}

Message cash_what(const facts::Core& fields) {
    return {fields.left_out ? Word::record_core_left_out : Word::record_core, {core_label(fields)}};
}

Message cash_what(const facts::CoreStep& fields) {
    return {Word::record_core_step, {base::word_arg(core_stage_word(fields.stage))}};
}

Message cash_what(const facts::PayTerm& fields) {
    return {fields.left_out ? Word::record_pay_term_left_out : Word::record_pay_term,
            {base::short_decimal_arg(fields.permille, 1),
             base::word_arg(paid_at_word(fields.at)),
             base::text_arg(fields.name)}};
}

Message cash_what(const facts::Payment& fields) {
    if (!fields.amount) return {Word::record_payment, {base::word_arg(Word::not_known)}};
    return {fields.back ? Word::record_payment_back : Word::record_payment,
            {base::money_arg(*fields.amount)}};
}

Message cash_what(const facts::Balance& fields) {
    return {Word::record_balance,
            {base::text_arg(fields.account),
             fields.amount ? base::money_arg(*fields.amount) : base::word_arg(Word::not_known)}};
}

Message cash_what(const facts::ReserveTerms&) {
    return {Word::record_reserve_terms, {}};
}

Message cash_what(const facts::Holder& fields) {
    return {fields.left_out ? Word::record_holder_left_out : Word::record_holder,
            {base::text_arg(fields.holder), base::short_decimal_arg(fields.permille, 1)}};
}

std::vector<Message> cash_more(const facts::Core& fields) {
    Labelled lines;
    lines.text(Word::field_kit_name, fields.kit);
    lines.text(Word::field_part_numbers, fields.part_numbers);
    lines.text(Word::field_core_serial, fields.serial);
    lines.money(Word::field_core_charge, fields.charge);
    lines.money(Word::field_best_credit, fields.best_credit);
    lines.money(Word::field_part_credit, fields.part_credit);
    lines.money(Word::field_core_bill, fields.bill);
    lines.tenths(Word::field_part_chance, fields.part_permille);
    lines.tenths(Word::field_nothing_chance, fields.nothing_permille);
    lines.tenths(Word::field_billed_chance, fields.billed_permille);
    lines.word(Word::field_returns_from, core_from_word(fields.returns_from));
    lines.whole(Word::field_return_days, fields.return_days);
    lines.date(Word::field_shipped_on, fields.shipped_on);
    lines.date(Word::field_core_by, fields.return_by);
    lines.whole(Word::field_credit_days, fields.credit_days);
    lines.truth(Word::field_log_card, fields.log_card);
    lines.text(Word::field_lien, fields.lien);
    lines.truth(Word::field_destroy, fields.destroy);
    lines.word(Word::field_tax, tax_case_word(fields.tax));
    lines.tenths(Word::field_tax_percent, fields.tax_permille);
    lines.word(Word::field_relief, duty_relief_word(fields.relief));
    lines.date(Word::field_export_by, fields.export_by);
    lines.text(Word::field_said_by, fields.said_by);
    return lines.out;
}

std::vector<Message> cash_more(const facts::CoreStep& fields) {
    Labelled lines;
    if (fields.grade) lines.word(Word::field_core_grade, core_grade_word(*fields.grade));
    lines.money(Word::field_core_credit, fields.credit);
    lines.money(Word::field_billed, fields.billed);
    lines.text(Word::field_core_reference, fields.reference);
    return lines.out;
}

std::vector<Message> cash_more(const facts::PayTerm& fields) {
    Labelled lines;
    if (fields.group) lines.word(Word::field_cost_group, cost_group_word(*fields.group));
    lines.whole(Word::field_after_days, fields.after_days);
    lines.text(Word::field_said_by, fields.said_by);
    return lines.out;
}

std::vector<Message> cash_more(const facts::Payment& fields) {
    Labelled lines;
    lines.text(Word::field_payee, fields.payee);
    lines.text(Word::field_payment_reference, fields.reference);
    return lines.out;
}

std::vector<Message> cash_more(const facts::Balance& fields) {
    Labelled lines;
    lines.text(Word::field_held_by, fields.held_by);
    return lines.out;
}

std::vector<Message> cash_more(const facts::ReserveTerms& fields) {
    Labelled lines;
    lines.money(Word::field_per_hour, fields.hour);
    lines.money(Word::field_per_month, fields.month);
    lines.money(Word::field_goal, fields.goal);
    lines.tenths(Word::field_goal_rise, fields.goal_rise_permille);
    lines.tenths(Word::field_interest_percent, fields.interest_permille);
    return lines.out;
}

std::vector<Message> cash_more(const facts::Holder& fields) {
    Labelled lines;
    lines.word(Word::field_holder_role, holder_role_word(fields.role));
    return lines.out;
}

}  // namespace twoclocks::views
