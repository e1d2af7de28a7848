#include "wasm/app/record_labels.hpp"

#include "wasm/app/form_kinds.hpp"

#include <algorithm>
#include <array>

namespace twoclocks::canvas {
namespace {

using base::Word;

struct Row {
    std::string_view key;
    Word label;
};

/// Settings that few limits have.
constexpr std::array rare_rows{Row{"days", Word::field_days},
                               Row{"first_hours", Word::field_first_hours},
                               Row{"first_months", Word::field_first_months},
                               Row{"first_days", Word::field_first_days},
                               Row{"first_landings", Word::field_first_landings},
                               Row{"first_starts", Word::field_first_starts},
                               Row{"once", Word::field_once},
                               Row{"combine", Word::field_combine},
                               Row{"cap_hours", Word::field_cap_hours},
                               Row{"cap_months", Word::field_cap_months},
                               Row{"cap_days", Word::field_cap_days},
                               Row{"cap_landings", Word::field_cap_landings},
                               Row{"cap_starts", Word::field_cap_starts},
                               Row{"tolerance_hours", Word::field_tolerance_hours},
                               Row{"tolerance_days", Word::field_tolerance_days},
                               Row{"tolerance_permille", Word::field_tolerance_permille},
                               Row{"tolerance_cap_hours", Word::field_tolerance_cap_hours},
                               Row{"tolerance_cap_days", Word::field_tolerance_cap_days},
                               Row{"carry_over", Word::field_carry_over},
                               Row{"overfly_hours", Word::field_overfly_hours},
                               Row{"tolerance_source", Word::field_tolerance_source},
                               Row{"in_force", Word::field_in_force}};

constexpr std::array part_rows{Row{"part_number", Word::field_part_number},
                               Row{"tsn", Word::field_tsn},
                               Row{"tso", Word::field_tso},
                               Row{"overhauls", Word::field_overhauls},
                               Row{"cured", Word::field_cured},
                               Row{"shipped", Word::field_shipped},
                               Row{"condition", Word::field_condition},
                               Row{"papers", Word::field_papers},
                               Row{"owner", Word::field_owner},
                               Row{"lent_until", Word::field_lent_until},
                               Row{"position", Word::field_position},
                               Row{"host_total", Word::field_host_total},
                               Row{"host_landings", Word::field_host_landings},
                               Row{"host_starts", Word::field_host_starts},
                               Row{"proof", Word::field_proof},
                               Row{"lent_to", Word::field_lent_to},
                               Row{"return_by", Word::field_return_by},
                               Row{"document", Word::field_document}};

constexpr std::array care_rows{Row{"number", Word::field_number},
                               Row{"effective_on", Word::field_effective_on},
                               Row{"serials", Word::field_serials},
                               Row{"applies", Word::field_applies},
                               Row{"applies_why", Word::field_applies_why},
                               Row{"method", Word::field_method},
                               Row{"grace_hours", Word::field_grace_hours},
                               Row{"grace_days", Word::field_grace_days},
                               Row{"found", Word::field_found},
                               Row{"happened", Word::field_happened},
                               Row{"valid_until", Word::field_valid_until},
                               Row{"added_hours", Word::field_added_hours},
                               Row{"flown_hours", Word::field_flown_hours},
                               Row{"from", Word::field_from},
                               Row{"limit_thousandths", Word::field_limit_thousandths},
                               Row{"value_thousandths", Word::field_value_thousandths},
                               Row{"unit", Word::field_unit},
                               Row{"sense", Word::field_sense},
                               Row{"reason", Word::field_reason},
                               Row{"operation", Word::field_operation},
                               Row{"factor_thousandths", Word::field_factor_thousandths}};

constexpr std::array plan_rows{Row{"task", Word::field_task},
                               Row{"task_name", Word::field_task_name},
                               Row{"low_days", Word::field_low_days},
                               Row{"likely_days", Word::field_likely_days},
                               Row{"high_days", Word::field_high_days},
                               Row{"runs", Word::field_calendar_days},
                               Row{"waits_for", Word::field_waits_for},
                               Row{"resource", Word::field_resource},
                               Row{"said_by", Word::field_said_by},
                               Row{"step", Word::field_step},
                               Row{"promised", Word::field_promised},
                               Row{"plan_work", Word::field_plan_work},
                               Row{"confidence_percent", Word::field_confidence_percent},
                               Row{"margin_days", Word::field_margin_days},
                               Row{"core_days", Word::field_core_days},
                               Row{"keeps_days", Word::field_keeps_days},
                               Row{"out_at_once", Word::field_out_at_once},
                               Row{"closed_last", Word::field_closed_last}};

constexpr std::array route_rows{Row{"route_key", Word::field_which_route},
                                Row{"route_name", Word::field_route_name},
                                Row{"route_by", Word::field_route_by},
                                Row{"carriage", Word::field_carriage},
                                Row{"ferry_hours", Word::field_ferry_hours},
                                Row{"there_days", Word::field_there_days},
                                Row{"back_days", Word::field_back_days},
                                Row{"queue_days", Word::field_queue_days},
                                Row{"kit_days", Word::field_kit_days},
                                Row{"price_basis", Word::field_price_basis},
                                Row{"price", Word::field_price},
                                Row{"freight", Word::field_freight},
                                Row{"tax", Word::field_tax},
                                Row{"tax_permille", Word::field_tax_percent},
                                Row{"duty_permille", Word::field_duty_percent},
                                Row{"price_until", Word::field_price_until},
                                Row{"warranty_months", Word::field_warranty_months},
                                Row{"warranty_hours", Word::field_warranty_hours},
                                Row{"warranty_from", Word::field_warranty_from},
                                Row{"release_accepted", Word::field_release_accepted},
                                Row{"shop_takes", Word::field_shop_takes},
                                Row{"overhaul_sum", Word::field_overhaul_sum},
                                Row{"lost_day", Word::field_lost_day},
                                Row{"saved_day", Word::field_saved_day},
                                Row{"life_hour", Word::field_life_hour},
                                Row{"life_month", Word::field_life_month},
                                Row{"interest_permille", Word::field_interest_percent},
                                Row{"order_on", Word::field_order_on},
                                Row{"book_on", Word::field_book_on},
                                Row{"stop_on", Word::field_stop_on},
                                Row{"back_on", Word::field_back_on}};

constexpr std::array cost_rows{Row{"line_key", Word::field_which_line},
                               Row{"line_name", Word::field_line_name},
                               Row{"cost_group", Word::field_cost_group},
                               Row{"cost_for", Word::field_cost_for},
                               Row{"low_quantity_thousandths", Word::field_low_quantity},
                               Row{"quantity_thousandths", Word::field_quantity},
                               Row{"high_quantity_thousandths", Word::field_high_quantity},
                               Row{"low_price", Word::field_low_price},
                               Row{"high_price", Word::field_high_price},
                               Row{"price_on", Word::field_price_on},
                               Row{"deposit_permille", Word::field_deposit_percent},
                               Row{"duty_relief", Word::field_relief},
                               Row{"relief_until", Word::field_relief_until},
                               Row{"relief_terms", Word::field_relief_terms},
                               Row{"taken", Word::field_taken},
                               Row{"one_of", Word::field_one_of},
                               Row{"needs", Word::field_needs},
                               Row{"excludes", Word::field_excludes},
                               Row{"work_hours", Word::field_work_hours},
                               Row{"added_days", Word::field_added_days},
                               Row{"added_grams", Word::field_added_grams},
                               Row{"removed_grams", Word::field_removed_grams},
                               Row{"price_list", Word::field_price_list},
                               Row{"article", Word::field_article},
                               Row{"list_rows", Word::field_list_rows},
                               Row{"rate_from", Word::field_rate_from},
                               Row{"rate_to", Word::field_rate_to},
                               Row{"rate", Word::field_rate},
                               Row{"home_currency", Word::field_home_currency},
                               Row{"linked_permille", Word::field_linked_percent},
                               Row{"kit_rise_permille", Word::field_kit_rise},
                               Row{"labour_rise_permille", Word::field_labour_rise},
                               Row{"engine_rise_permille", Word::field_engine_rise},
                               Row{"other_rise_permille", Word::field_other_rise},
                               Row{"tax_round", Word::field_tax_round},
                               Row{"rate_days", Word::field_rate_days},
                               Row{"tax_back_days", Word::field_tax_back_days}};

constexpr std::array cash_rows{Row{"core_name", Word::field_core_name},
                               Row{"kit", Word::field_kit_name},
                               Row{"part_numbers", Word::field_part_numbers},
                               Row{"core_serial", Word::field_core_serial},
                               Row{"core_charge", Word::field_core_charge},
                               Row{"best_credit", Word::field_best_credit},
                               Row{"part_credit", Word::field_part_credit},
                               Row{"core_bill", Word::field_core_bill},
                               Row{"part_permille", Word::field_part_chance},
                               Row{"nothing_permille", Word::field_nothing_chance},
                               Row{"billed_permille", Word::field_billed_chance},
                               Row{"returns_from", Word::field_returns_from},
                               Row{"return_days", Word::field_return_days},
                               Row{"shipped_on", Word::field_shipped_on},
                               Row{"core_by", Word::field_core_by},
                               Row{"credit_days", Word::field_credit_days},
                               Row{"log_card", Word::field_log_card},
                               Row{"lien", Word::field_lien},
                               Row{"destroy", Word::field_destroy},
                               Row{"export_by", Word::field_export_by},
                               Row{"core_stage", Word::field_core_stage},
                               Row{"core_grade", Word::field_core_grade},
                               Row{"core_credit", Word::field_core_credit},
                               Row{"core_reference", Word::field_core_reference},
                               Row{"payment_reference", Word::field_payment_reference},
                               Row{"billed", Word::field_billed},
                               Row{"term_name", Word::field_term_name},
                               Row{"share_permille", Word::field_share_percent},
                               Row{"paid_at", Word::field_paid_at},
                               Row{"after_days", Word::field_after_days},
                               Row{"amount", Word::field_amount},
                               Row{"came_back", Word::field_came_back},
                               Row{"payee", Word::field_payee},
                               Row{"account", Word::field_account},
                               Row{"held_by", Word::field_held_by},
                               Row{"per_hour", Word::field_per_hour},
                               Row{"per_month", Word::field_per_month},
                               Row{"goal", Word::field_goal},
                               Row{"goal_rise_permille", Word::field_goal_rise},
                               Row{"holder", Word::field_holder},
                               Row{"holder_role", Word::field_holder_role}};

/// Answers of yes or no.
constexpr std::array truth_rows{Row{"before_flight", Word::field_before_flight},
                                Row{"credit", Word::field_credit},
                                Row{"left_out", Word::field_left_out},
                                Row{"chosen", Word::field_chosen},
                                Row{"at_shipment", Word::field_at_shipment},
                                Row{"deposit_back", Word::field_deposit_back},
                                Row{"stored", Word::field_stored},
                                Row{"history_unknown", Word::field_history_unknown},
                                Row{"temporarily", Word::field_temporarily}};

/// The row of a key in a table, null when it is not there.
template <std::size_t Count>
[[nodiscard]] const Row* row_of(const std::array<Row, Count>& rows, std::string_view key) {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.key == key; });
    return found == rows.end() ? nullptr : &*found;
}

}  // namespace

Word label_of(std::string_view key) {
    constexpr std::array rows{Row{"registration", Word::field_registration},
                              Row{"type", Word::field_type},
                              Row{"serial", Word::field_serial},
                              Row{"manufactured", Word::field_manufactured},
                              Row{"why", Word::field_why},
                              Row{"hours", Word::field_hours},
                              Row{"months", Word::field_months},
                              Row{"landings", Word::field_landings},
                              Row{"starts", Word::field_starts},
                              Row{"anchor_on", Word::field_last_on},
                              Row{"anchor_total", Word::field_last_total},
                              Row{"anchor_landings", Word::field_anchor_landings},
                              Row{"anchor_starts", Word::field_anchor_starts},
                              Row{"source", Word::field_source},
                              Row{"revision", Word::field_revision},
                              Row{"name", Word::field_name},
                              Row{"reads", Word::field_reads},
                              Row{"total", Word::field_total},
                              Row{"what", Word::field_what},
                              Row{"place", Word::field_place},
                              Row{"done_by", Word::field_done_by},
                              Row{"reference", Word::field_reference},
                              Row{"month", Word::field_plan_month},
                              Row{"until", Word::field_until},
                              Row{"text", Word::field_note},
                              Row{"issuer", Word::field_issuer},
                              Row{"route", Word::field_route},
                              Row{"chapter", Word::field_chapter},
                              Row{"class", Word::field_class},
                              Row{"calendar_rule", Word::field_rule},
                              Row{"drive", Word::field_drive},
                              Row{"role", Word::field_role},
                              Row{"anchor", Word::field_counts_from}};
    for (std::size_t month = 0; month < facts::month_keys.size(); ++month) {
        if (facts::month_keys[month] == key) return base::month_word(month);
    }
    for (const Row* row : {row_of(rare_rows, key),
                           row_of(part_rows, key),
                           row_of(care_rows, key),
                           row_of(plan_rows, key),
                           row_of(route_rows, key),
                           row_of(cost_rows, key),
                           row_of(cash_rows, key),
                           row_of(truth_rows, key),
                           row_of(rows, key)}) {
        if (row != nullptr) return row->label;
    }
    return Word::field_other;
}

}  // namespace twoclocks::canvas
