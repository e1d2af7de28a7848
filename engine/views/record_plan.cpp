#include "engine/views/record_plan.hpp"

#include <array>

#include "engine/plan/default_tasks.hpp"
#include "engine/views/labelled.hpp"
#include "engine/views/record_lines.hpp"

namespace twoclocks::views {

using base::Message;
using base::Word;

Word plan_work_word(facts::PlanWork work) {
    return work == facts::PlanWork::overhaul ? Word::plan_work_overhaul : Word::plan_work_calendar;
}

Word route_by_word(facts::RouteBy by) {
    constexpr std::array words{Word::route_by_works,
                               Word::route_by_service_centre,
                               Word::route_by_abroad,
                               Word::route_by_own_workshop};
    return word_at(words, by);
}

Word carriage_word(facts::Carriage carriage) {
    constexpr std::array words{Word::carriage_flown,
                               Word::carriage_on_permit,
                               Word::carriage_crated,
                               Word::carriage_stays};
    return word_at(words, carriage);
}

Word price_basis_word(facts::PriceBasis basis) {
    constexpr std::array words{Word::basis_estimate, Word::basis_fixed, Word::basis_hourly};
    return word_at(words, basis);
}

Word tax_case_word(facts::TaxCase tax) {
    constexpr std::array words{Word::not_known,
                               Word::tax_none,
                               Word::tax_recoverable,
                               Word::tax_borne,
                               Word::tax_reverse_charge};
    return word_at(words, tax);
}

Word warranty_from_word(facts::WarrantyFrom from) {
    constexpr std::array words{Word::not_known,
                               Word::warranty_from_release,
                               Word::warranty_from_shipment,
                               Word::warranty_from_first_flight};
    return word_at(words, from);
}

Word acceptance_word(facts::Acceptance accepted) {
    constexpr std::array words{Word::not_known, Word::choice_yes, Word::choice_no};
    return word_at(words, accepted);
}

Word route_gate_word(facts::Acceptance accepted) {
    constexpr std::array words{
        Word::route_ask_line, Word::route_accepted_line, Word::route_refused_line};
    return word_at(words, accepted);
}

base::Arg route_name(const facts::Route& route) {
    return base::text_arg(route.name.empty() ? route.route : route.name);
}

Message plan_what(const facts::PlanTask& fields) {
    return {fields.left_out ? Word::record_plan_left_out : Word::record_plan_task,
            {plan::task_name(fields.task, fields.name)}};
}

Message plan_what(const facts::PlanStep& fields) {
    const base::Arg task = plan::task_name(fields.task, {});
    switch (fields.step) {
        case facts::TaskStep::begun:
            return {Word::record_plan_begun, {task}};
        case facts::TaskStep::finished:
            return {Word::record_plan_finished, {task}};
        case facts::TaskStep::promised:
            break;
    }
    if (!fields.promised) return {Word::record_plan_promised_open, {task}};
    return {Word::record_plan_promised, {task, base::day_arg(*fields.promised)}};
}

Message plan_what(const facts::PlanTerms& fields) {
    return {Word::record_plan_terms, {base::whole_arg(fields.confidence_percent)}};
}

Message plan_what(const facts::Closed& fields) {
    if (!fields.last) return {Word::record_closed_day, {}};
    return {Word::record_closed, {base::day_arg(*fields.last)}};
}

Message plan_what(const facts::Route& fields) {
    const Word word = fields.left_out ? Word::record_route_left_out
                      : fields.chosen ? Word::record_route_chosen
                                      : Word::record_route_told;
    return {word, {route_name(fields)}};
}

Message plan_what(const facts::PlanCosts&) {
    return {Word::record_costs, {}};
}

Message plan_what(const facts::PlanKept&) {
    return {Word::record_kept, {}};
}

std::vector<Message> plan_more(const facts::PlanTask& fields) {
    Lines lines;
    if (fields.low_days && fields.likely_days && fields.high_days)
        lines.out.push_back({Word::record_plan_task_days,
                             {base::whole_arg(*fields.low_days),
                              base::whole_arg(*fields.high_days),
                              base::whole_arg(*fields.likely_days)}});
    if (fields.runs)
        lines.out.push_back({*fields.runs == facts::TaskDays::working ? Word::plan_task_working
                                                                      : Word::plan_task_calendar,
                             {}});
    lines.text(Word::record_plan_waits, fields.waits_for);
    lines.text(Word::record_plan_resource, fields.resource);
    lines.text(Word::record_plan_said, fields.said_by);
    return lines.out;
}

std::vector<Message> plan_more(const facts::PlanStep& fields) {
    Lines lines;
    lines.text(Word::record_reference, fields.reference);
    return lines.out;
}

std::vector<Message> plan_more(const facts::PlanTerms& fields) {
    Lines lines;
    lines.out.push_back({plan_work_word(fields.work), {}});
    lines.whole(Word::record_plan_margin, fields.margin_days);
    lines.whole(Word::record_plan_cores, fields.core_days);
    lines.whole(Word::record_plan_keeps, fields.keeps_days);
    lines.whole(Word::record_plan_out_at_once, fields.out_at_once);
    return lines.out;
}

std::vector<Message> plan_more(const facts::Closed& fields) {
    Lines lines;
    lines.text(Word::record_why, fields.why);
    return lines.out;
}

std::vector<Message> plan_more(const facts::Route& fields) {
    Labelled lines;
    lines.word(Word::field_route_by, route_by_word(fields.by));
    lines.word(Word::field_carriage, carriage_word(fields.carriage));
    lines.time(Word::field_ferry_hours, fields.ferry);
    lines.whole(Word::field_there_days, fields.there_days);
    lines.whole(Word::field_back_days, fields.back_days);
    lines.whole(Word::field_queue_days, fields.queue_days);
    lines.whole(Word::field_kit_days, fields.kit_days);
    lines.whole(Word::field_shop_low, fields.low_days);
    lines.whole(Word::field_shop_likely, fields.likely_days);
    lines.whole(Word::field_shop_high, fields.high_days);
    lines.word(Word::field_price_basis, price_basis_word(fields.basis));
    lines.money(Word::field_price, fields.price);
    lines.money(Word::field_freight, fields.freight);
    lines.word(Word::field_tax, tax_case_word(fields.tax));
    lines.tenths(Word::field_tax_percent, fields.tax_permille);
    lines.tenths(Word::field_duty_percent, fields.duty_permille);
    lines.date(Word::field_price_until, fields.price_until);
    lines.whole(Word::field_warranty_months, fields.warranty_months);
    lines.time(Word::field_warranty_hours, fields.warranty_hours);
    lines.word(Word::field_warranty_from, warranty_from_word(fields.warranty_from));
    lines.word(Word::field_release_accepted, acceptance_word(fields.accepted));
    lines.whole(Word::field_shop_takes, fields.shop_takes);
    if (!fields.said_by.empty())
        lines.out.push_back(one_text(Word::record_plan_said, fields.said_by));
    return lines.out;
}

std::vector<Message> plan_more(const facts::PlanCosts& fields) {
    Labelled lines;
    lines.money(Word::field_overhaul_sum, fields.sum);
    lines.money(Word::field_lost_day, fields.lost_day);
    lines.money(Word::field_saved_day, fields.saved_day);
    lines.money(Word::field_life_hour, fields.life_hour);
    lines.money(Word::field_life_month, fields.life_month);
    lines.tenths(Word::field_interest_percent, fields.interest_permille);
    return lines.out;
}

std::vector<Message> plan_more(const facts::PlanKept& fields) {
    Labelled lines;
    lines.date(Word::field_order_on, fields.order_on);
    lines.date(Word::field_book_on, fields.book_on);
    lines.date(Word::field_stop_on, fields.stop_on);
    lines.date(Word::field_back_on, fields.back_on);
    return lines.out;
}

}  // namespace twoclocks::views
