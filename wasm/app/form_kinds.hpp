// One pair a form: `make_` lays its fields out, `take_` reads them into facts.
// To add a form: a FormKind in form_kind.hpp, a pair here, a line in each switch of form.cpp.
#pragma once

#include "wasm/app/form.hpp"

namespace twoclocks::canvas {

using Facts = std::vector<facts::Fact>;

void make_new_aircraft(Form& form, const FormContext& context);
[[nodiscard]] Facts take_new_aircraft(Form& form, const FormContext& context, Signer& signer);
void make_meter_change(Form& form, const FormContext& context);
[[nodiscard]] Facts take_meter_change(Form& form, const FormContext& context, Signer& signer);
void make_work_done(Form& form, const FormContext& context);
[[nodiscard]] Facts take_work_done(Form& form, const FormContext& context, Signer& signer);
void make_new_item(Form& form, const FormContext& context);
[[nodiscard]] Facts take_new_item(Form& form, const FormContext& context, Signer& signer);
void make_change_limit(Form& form, const FormContext& context);
[[nodiscard]] Facts take_change_limit(Form& form, const FormContext& context, Signer& signer);
void make_permit(Form& form, const FormContext& context);
[[nodiscard]] Facts take_permit(Form& form, const FormContext& context, Signer& signer);
void make_rename_item(Form& form, const FormContext& context);
[[nodiscard]] Facts take_rename_item(Form& form, const FormContext& context, Signer& signer);
void make_usage_plan(Form& form, const FormContext& context);
[[nodiscard]] Facts take_usage_plan(Form& form, const FormContext& context, Signer& signer);
void make_parked(Form& form, const FormContext& context);
[[nodiscard]] Facts take_parked(Form& form, const FormContext& context, Signer& signer);
void make_from_template(Form& form, const FormContext& context);
[[nodiscard]] Facts take_from_template(Form& form, const FormContext& context, Signer& signer);
void make_correct(Form& form, const FormContext& context);
[[nodiscard]] Facts take_correct(Form& form, const FormContext& context, Signer& signer);
void make_withdraw(Form& form, const FormContext& context);
[[nodiscard]] Facts take_withdraw(Form& form, const FormContext& context, Signer& signer);
void make_new_part(Form& form, const FormContext& context);
[[nodiscard]] Facts take_new_part(Form& form, const FormContext& context, Signer& signer);
void make_part_fit(Form& form, const FormContext& context);
[[nodiscard]] Facts take_part_fit(Form& form, const FormContext& context, Signer& signer);
void make_part_remove(Form& form, const FormContext& context);
[[nodiscard]] Facts take_part_remove(Form& form, const FormContext& context, Signer& signer);
void make_part_move(Form& form, const FormContext& context);
[[nodiscard]] Facts take_part_move(Form& form, const FormContext& context, Signer& signer);
void make_part_scrap(Form& form, const FormContext& context);
[[nodiscard]] Facts take_part_scrap(Form& form, const FormContext& context, Signer& signer);
void make_part_work(Form& form, const FormContext& context);
[[nodiscard]] Facts take_part_work(Form& form, const FormContext& context, Signer& signer);
/// Chooses what hangs on the part as what the work renews.
void choose_part_work(Form& form, const timeline::PartState& part, base::Id item);
void make_part_rebuild(Form& form, const FormContext& context);
[[nodiscard]] Facts take_part_rebuild(Form& form, const FormContext& context, Signer& signer);
void make_author(Form& form, const FormContext& context);
void make_specimen(Form& form, const FormContext& context);
void make_event(Form& form, const FormContext& context);
[[nodiscard]] Facts take_event(Form& form, const FormContext& context, Signer& signer);
void make_sign_event(Form& form, const FormContext& context);
[[nodiscard]] Facts take_sign_event(Form& form, const FormContext& context, Signer& signer);
void make_wear_limit(Form& form, const FormContext& context);
[[nodiscard]] Facts take_wear_limit(Form& form, const FormContext& context, Signer& signer);
void make_measure_wear(Form& form, const FormContext& context);
[[nodiscard]] Facts take_measure_wear(Form& form, const FormContext& context, Signer& signer);
void make_storage(Form& form, const FormContext& context);
[[nodiscard]] Facts take_storage(Form& form, const FormContext& context, Signer& signer);
void make_return(Form& form, const FormContext& context);
[[nodiscard]] Facts take_return(Form& form, const FormContext& context, Signer& signer);
void make_adjust(Form& form, const FormContext& context);
[[nodiscard]] Facts take_adjust(Form& form, const FormContext& context, Signer& signer);
void make_flown_as(Form& form, const FormContext& context);
[[nodiscard]] Facts take_flown_as(Form& form, const FormContext& context, Signer& signer);
void make_factor(Form& form, const FormContext& context);
[[nodiscard]] Facts take_factor(Form& form, const FormContext& context, Signer& signer);

void make_plan_task(Form& form, const FormContext& context);
[[nodiscard]] Facts take_plan_task(Form& form, const FormContext& context, Signer& signer);
void make_plan_step(Form& form, const FormContext& context);
[[nodiscard]] Facts take_plan_step(Form& form, const FormContext& context, Signer& signer);
void make_plan_terms(Form& form, const FormContext& context);
[[nodiscard]] Facts take_plan_terms(Form& form, const FormContext& context, Signer& signer);
void make_closed(Form& form, const FormContext& context);
[[nodiscard]] Facts take_closed(Form& form, const FormContext& context, Signer& signer);
/// Chooses a task of the plan by its key.
void choose_task(Form& form, const FormContext& context, const std::string& key);

void make_route(Form& form, const FormContext& context);
[[nodiscard]] Facts take_route(Form& form, const FormContext& context, Signer& signer);
void make_plan_costs(Form& form, const FormContext& context);
[[nodiscard]] Facts take_plan_costs(Form& form, const FormContext& context, Signer& signer);
/// What days and hours are worth by the fields; nothing where one cannot be read.
[[nodiscard]] std::optional<facts::PlanCosts> costs_in(Form& form);
void make_plan_kept(Form& form, const FormContext& context);
[[nodiscard]] Facts take_plan_kept(Form& form, const FormContext& context, Signer& signer);
void make_fleet_bound(Form& form, const FormContext& context);
[[nodiscard]] Facts take_fleet_bound(Form& form, const FormContext& context, Signer& signer);
void make_cost_line(Form& form, const FormContext& context);
[[nodiscard]] Facts take_cost_line(Form& form, const FormContext& context, Signer& signer);
void make_exchange_rate(Form& form, const FormContext& context);
[[nodiscard]] Facts take_exchange_rate(Form& form, const FormContext& context, Signer& signer);
void make_price_list(Form& form, const FormContext& context);
[[nodiscard]] Facts take_price_list(Form& form, const FormContext& context, Signer& signer);
void make_cost_terms(Form& form, const FormContext& context);
[[nodiscard]] Facts take_cost_terms(Form& form, const FormContext& context, Signer& signer);
void make_core(Form& form, const FormContext& context);
[[nodiscard]] Facts take_core(Form& form, const FormContext& context, Signer& signer);
void make_core_step(Form& form, const FormContext& context);
[[nodiscard]] Facts take_core_step(Form& form, const FormContext& context, Signer& signer);
void make_pay_term(Form& form, const FormContext& context);
[[nodiscard]] Facts take_pay_term(Form& form, const FormContext& context, Signer& signer);
void make_payment(Form& form, const FormContext& context);
[[nodiscard]] Facts take_payment(Form& form, const FormContext& context, Signer& signer);
void make_balance(Form& form, const FormContext& context);
[[nodiscard]] Facts take_balance(Form& form, const FormContext& context, Signer& signer);
void make_reserve_terms(Form& form, const FormContext& context);
[[nodiscard]] Facts take_reserve_terms(Form& form, const FormContext& context, Signer& signer);
void make_holder(Form& form, const FormContext& context);
[[nodiscard]] Facts take_holder(Form& form, const FormContext& context, Signer& signer);
/// What follows from the record that was chosen in the form, and choosing it by its key.
void make_item_price(Form& form, const FormContext& context);
[[nodiscard]] Facts take_item_price(Form& form, const FormContext& context, Signer& signer);
void choose_item_price(Form& form, const FormContext& context, const std::string& key);
void make_closing(Form& form, const FormContext& context);
[[nodiscard]] Facts take_closing(Form& form, const FormContext& context, Signer& signer);
void reshape_closing(Form& form, const FormContext& context);
void choose_closing(Form& form, const FormContext& context, const std::string& key);
void reshape_core(Form& form, const FormContext& context);
void reshape_pay_term(Form& form, const FormContext& context);
void reshape_holder(Form& form, const FormContext& context);
void choose_core(Form& form, const FormContext& context, const std::string& key);
void choose_pay_term(Form& form, const FormContext& context, const std::string& key);
void choose_holder(Form& form, const FormContext& context, const std::string& key);
void choose_balance(Form& form, const FormContext& context, const std::string& key);
/// What follows from the line that was chosen in the form, and choosing it by its key.
void reshape_cost_line(Form& form, const FormContext& context);
void choose_cost_line(Form& form, const FormContext& context, const std::string& key);
/// What follows from the route that was chosen in the form.
void reshape_route(Form& form, const FormContext& context);
/// Chooses a route by its key.
void choose_route(Form& form, const FormContext& context, const std::string& key);

/// Rows out of a table, and what the fields are once there is one.
void make_readings_table(Form& form, const FormContext& context);
[[nodiscard]] Facts take_readings_table(Form& form, const FormContext& context, Signer& signer);
void make_parts_table(Form& form, const FormContext& context);
[[nodiscard]] Facts take_parts_table(Form& form, const FormContext& context, Signer& signer);
void reshape_table(Form& form, const FormContext& context);
/// A part of the record as a file, and a file that is locked.
void make_share(Form& form, const FormContext& context);
void reshape_share(Form& form, const FormContext& context);
void make_unlock(Form& form, const FormContext& context);

void make_directive(Form& form, const FormContext& context);
[[nodiscard]] Facts take_directive(Form& form, const FormContext& context, Signer& signer);
void make_decide(Form& form, const FormContext& context);
[[nodiscard]] Facts take_decide(Form& form, const FormContext& context, Signer& signer);
void make_means(Form& form, const FormContext& context);
[[nodiscard]] Facts take_means(Form& form, const FormContext& context, Signer& signer);

/// The item hangs on an aircraft or a part that is recorded.
[[nodiscard]] bool can_change_directive(base::Id item, const FormContext& context);

/// The item of a form's bearer by its id, null when it bears none of that name.
[[nodiscard]] const timeline::ItemState* item_of(const FormContext& context, base::Id id);

/// Puts the overhaul limits of the template just chosen where nothing was typed.
void propose_overhaul(Form& form);

/// What follows in each from what was chosen in it.
void reshape_work_done(Form& form, const FormContext& context);
void reshape_plan_task(Form& form, const FormContext& context);
void reshape_from_template(Form& form, const FormContext& context);

/// Words of a meter's drive and of a limit's class, in the order of their enumerations.
[[nodiscard]] std::vector<base::Word> drive_words();
[[nodiscard]] std::vector<base::Word> class_words();
[[nodiscard]] std::vector<base::Word> rule_words();

}  // namespace twoclocks::canvas
