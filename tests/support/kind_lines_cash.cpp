#include "tests/support/kind_lines_cash.hpp"

namespace twoclocks::support {

std::vector<std::pair<std::string, std::string>> cash_lines() {
    return {
        {"exchange_rate", R"(,"rate_from":"USD","rate_to":"EUR","rate":"0.9183")"},
        {"exchange_rate", R"(,"rate_from":"JPY","rate_to":"EUR","rate":"1","said_by":"C")"},
        {"cost_terms", R"(,"tax_round":"half_up")"},
        {"cost_terms",
         R"(,"home_currency":"CHF","linked_permille":500,"kit_rise_permille":40,)"
         R"("labour_rise_permille":30,"engine_rise_permille":0,"other_rise_permille":9,)"
         R"("tax_round":"down","rate_days":14,"tax_back_days":60)"},
        {"core",
         R"(,"core_key":"g1","returns_from":"shipment","tax":"unknown")"
         R"(,"duty_relief":"none")"},
        {"core",
         R"(,"core_key":"g1","core_name":"Main gearbox","kit":"K-1")"
         R"(,"part_numbers":"MG-1, MG-2","core_serial":"77")"
         R"(,"core_charge":"20000.00 EUR","best_credit":"16000.00 EUR")"
         R"(,"part_credit":"9000.00 EUR","core_bill":"1500.00 EUR")"
         R"(,"part_permille":300,"nothing_permille":150,"billed_permille":50)"
         R"(,"returns_from":"release","return_days":60)"
         R"(,"shipped_on":"2026-03-01","core_by":"2026-06-01","credit_days":91)"
         R"(,"log_card":true,"lien":"Bank","destroy":true,"tax":"borne")"
         R"(,"tax_permille":200,"duty_relief":"processing")"
         R"(,"export_by":"2026-05-01","left_out":true,"said_by":"Ann")"},
        {"core_step", R"(,"core_key":"g1","core_stage":"off")"},
        {"core_step",
         R"(,"core_key":"g1","core_stage":"settled","core_grade":"part_credit")"
         R"(,"core_credit":"9000.00 EUR","core_reference":"CN 5")"},
        {"core_step",
         R"(,"core_key":"g1","core_stage":"settled","core_grade":"billed_back")"
         R"(,"billed":"1500.00 EUR")"},
        {"pay_term", R"(,"term_key":"t1","share_permille":300,"paid_at":"order")"},
        {"pay_term",
         R"(,"term_key":"t1","term_name":"Deposit","line_key":"kit")"
         R"(,"cost_group":"kit","share_permille":1000,"paid_at":"cores")"
         R"(,"after_days":30,"left_out":true,"said_by":"Ann")"},
        {"payment", R"(,"amount":"500.00 EUR")"},
        {"payment",
         R"(,"line_key":"kit","amount":"500 JPY","came_back":true)"
         R"(,"payee":"Shop","payment_reference":"I 7")"},
        {"balance", R"(,"account":"Reserve","amount":"0.00 EUR")"},
        {"balance", R"(,"account":"Reserve","amount":"60000.00 EUR","held_by":"Bank")"},
        {"reserve_terms", R"()"},
        {"reserve_terms",
         R"(,"per_hour":"113.64 EUR","per_month":"500.00 EUR")"
         R"(,"goal":"250000.00 EUR","goal_rise_permille":40)"
         R"(,"interest_permille":37)"},
        {"holder", R"(,"holder":"Ann","holder_role":"owner","share_permille":0)"},
        {"holder",
         R"(,"holder":"Bank","holder_role":"lessor","share_permille":1000)"
         R"(,"left_out":true)"},
        {"cost_terms", R"(,"tax_round":"half_up","tax_back_days":45)"},
        {"closing_point", R"(,"point_key":"p1","closing_topic":"finding","payer":"open")"},
        {"closing_point",
         R"(,"point_key":"p1","closing_topic":"airworthiness_review","point_text":"Review",)"
         R"("settled":true,"point_until":"2027-05-01","point_cost":"900.00 EUR",)"
         R"("payer":"shared","paper":"ARC 7","left_out":true)"},
    };
}

}  // namespace twoclocks::support
