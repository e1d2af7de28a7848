#include "engine/facts/names.hpp"

#include <array>

namespace twoclocks::facts {
namespace {

template <class T>
constexpr Name named(T value, std::string_view word) {
    return {static_cast<std::uint8_t>(value), word};
}

constexpr std::array limit_class_names{
    named(LimitClass::airworthiness_limitation, "airworthiness_limitation"),
    named(LimitClass::directive, "directive"),
    named(LimitClass::programme, "programme"),
    named(LimitClass::recommended, "recommended")};
constexpr std::array clock_names{named(Clock::hours, "hours"),
                                 named(Clock::calendar, "calendar"),
                                 named(Clock::landings, "landings"),
                                 named(Clock::starts, "starts")};
constexpr std::array item_role_names{named(ItemRole::overhaul, "overhaul"),
                                     named(ItemRole::inspection, "inspection"),
                                     named(ItemRole::component, "component"),
                                     named(ItemRole::other, "other")};
constexpr std::array meter_drive_names{named(MeterDrive::collective, "collective"),
                                       named(MeterDrive::oil_pressure, "oil_pressure"),
                                       named(MeterDrive::tachometer, "tachometer"),
                                       named(MeterDrive::electrical, "electrical"),
                                       named(MeterDrive::other, "other")};
constexpr std::array anchor_names{named(Anchor::manufacture, "manufacture"),
                                  named(Anchor::cure, "cure"),
                                  named(Anchor::shipment, "shipment"),
                                  named(Anchor::first_airworthiness, "first_airworthiness"),
                                  named(Anchor::first_fit, "first_fit"),
                                  named(Anchor::release, "release"),
                                  named(Anchor::overhaul, "overhaul"),
                                  named(Anchor::unknown, "unknown")};
constexpr std::array calendar_rule_names{named(base::CalendarRule::exact, "exact"),
                                         named(base::CalendarRule::month_end, "month_end")};
constexpr std::array carry_over_names{named(CarryOver::from_due, "from_due"),
                                      named(CarryOver::from_done, "from_done")};
constexpr std::array combine_names{named(Combine::sooner, "sooner"),
                                   named(Combine::later, "later")};
constexpr std::array part_condition_names{named(PartCondition::made_new, "new"),
                                          named(PartCondition::overhauled, "overhauled"),
                                          named(PartCondition::repaired, "repaired"),
                                          named(PartCondition::inspected, "inspected"),
                                          named(PartCondition::as_removed, "as_removed"),
                                          named(PartCondition::unknown, "unknown"),
                                          named(PartCondition::unserviceable, "unserviceable")};
constexpr std::array applicability_names{named(Applicability::unknown, "unknown"),
                                         named(Applicability::applies, "applies"),
                                         named(Applicability::not_applicable, "not_applicable")};
constexpr std::array event_kind_names{named(EventKind::hard_landing, "hard_landing"),
                                      named(EventKind::overspeed, "overspeed"),
                                      named(EventKind::overtemperature, "overtemperature"),
                                      named(EventKind::overtorque, "overtorque"),
                                      named(EventKind::sudden_stoppage, "sudden_stoppage"),
                                      named(EventKind::vibration, "vibration"),
                                      named(EventKind::lightning, "lightning"),
                                      named(EventKind::other, "other")};
constexpr std::array wear_sense_names{named(WearSense::at_most, "at_most"),
                                      named(WearSense::at_least, "at_least")};
constexpr std::array adjust_reason_names{named(AdjustReason::dead, "dead"),
                                         named(AdjustReason::rolled_over, "rolled_over"),
                                         named(AdjustReason::other, "other")};
constexpr std::array operation_names{named(Operation::ordinary, "ordinary"),
                                     named(Operation::agricultural, "agricultural"),
                                     named(Operation::external_load, "external_load"),
                                     named(Operation::training, "training"),
                                     named(Operation::emergency, "emergency"),
                                     named(Operation::other, "other")};
constexpr std::array in_force_names{named(InForce::always, "always"),
                                    named(InForce::in_storage, "in_storage"),
                                    named(InForce::on_return, "on_return")};
constexpr std::array task_days_names{named(TaskDays::working, "working"),
                                     named(TaskDays::calendar, "calendar")};
constexpr std::array task_step_names{named(TaskStep::begun, "begun"),
                                     named(TaskStep::promised, "promised"),
                                     named(TaskStep::finished, "finished")};
constexpr std::array plan_work_names{named(PlanWork::overhaul, "overhaul"),
                                     named(PlanWork::calendar_work, "calendar_work")};
constexpr std::array route_by_names{named(RouteBy::works, "works"),
                                    named(RouteBy::service_centre, "service_centre"),
                                    named(RouteBy::abroad, "abroad"),
                                    named(RouteBy::own_workshop, "own_workshop")};
constexpr std::array carriage_names{named(Carriage::flown, "flown"),
                                    named(Carriage::on_permit, "on_permit"),
                                    named(Carriage::crated, "crated"),
                                    named(Carriage::stays, "stays")};
constexpr std::array price_basis_names{named(PriceBasis::estimate, "estimate"),
                                       named(PriceBasis::fixed, "fixed"),
                                       named(PriceBasis::hourly, "hourly")};
constexpr std::array tax_case_names{named(TaxCase::unknown, "unknown"),
                                    named(TaxCase::none, "none"),
                                    named(TaxCase::recoverable, "recoverable"),
                                    named(TaxCase::borne, "borne"),
                                    named(TaxCase::reverse_charge, "reverse_charge")};
constexpr std::array acceptance_names{named(Acceptance::unknown, "unknown"),
                                      named(Acceptance::accepted, "accepted"),
                                      named(Acceptance::refused, "refused")};
constexpr std::array warranty_from_names{named(WarrantyFrom::unknown, "unknown"),
                                         named(WarrantyFrom::release, "release"),
                                         named(WarrantyFrom::shipment, "shipment"),
                                         named(WarrantyFrom::first_flight, "first_flight")};

constexpr std::array cost_group_names{named(CostGroup::whole_price, "whole_price"),
                                      named(CostGroup::kit, "kit"),
                                      named(CostGroup::labour, "labour"),
                                      named(CostGroup::engine, "engine"),
                                      named(CostGroup::findings, "findings"),
                                      named(CostGroup::frame, "frame"),
                                      named(CostGroup::interior, "interior"),
                                      named(CostGroup::avionics, "avionics"),
                                      named(CostGroup::freight, "freight"),
                                      named(CostGroup::duty, "duty"),
                                      named(CostGroup::ferry, "ferry"),
                                      named(CostGroup::cover, "cover"),
                                      named(CostGroup::financing, "financing"),
                                      named(CostGroup::lost_use, "lost_use"),
                                      named(CostGroup::other, "other")};
constexpr std::array cost_for_names{named(CostFor::either, "either"),
                                    named(CostFor::overhaul, "overhaul"),
                                    named(CostFor::calendar_work, "calendar_work")};
constexpr std::array cost_taken_names{named(CostTaken::counted, "counted"),
                                      named(CostTaken::offered, "offered"),
                                      named(CostTaken::chosen, "chosen")};
constexpr std::array duty_relief_names{named(DutyRelief::none, "none"),
                                       named(DutyRelief::temporary_export, "temporary_export"),
                                       named(DutyRelief::processing, "processing")};
constexpr std::array tax_round_names{
    named(TaxRound::half_up, "half_up"), named(TaxRound::up, "up"), named(TaxRound::down, "down")};
constexpr std::array core_grade_names{named(CoreGrade::full, "full_credit"),
                                      named(CoreGrade::part, "part_credit"),
                                      named(CoreGrade::nothing, "no_credit"),
                                      named(CoreGrade::billed, "billed_back")};
constexpr std::array core_from_names{named(CoreFrom::shipment, "shipment"),
                                     named(CoreFrom::release, "release")};
constexpr std::array core_stage_names{named(CoreStage::off, "off"),
                                      named(CoreStage::sent, "sent"),
                                      named(CoreStage::received, "received"),
                                      named(CoreStage::graded, "graded"),
                                      named(CoreStage::settled, "settled"),
                                      named(CoreStage::forfeited, "forfeited"),
                                      named(CoreStage::destroyed, "destroyed")};
constexpr std::array paid_at_names{named(PaidAt::order, "order"),
                                   named(PaidAt::booking, "booking"),
                                   named(PaidAt::shipment, "shipment"),
                                   named(PaidAt::stop, "stop"),
                                   named(PaidAt::release, "release"),
                                   named(PaidAt::cores, "cores")};
constexpr std::array holder_role_names{named(HolderRole::owner, "owner"),
                                       named(HolderRole::lessor, "lessor")};
constexpr std::array closing_topic_names{
    named(ClosingTopic::finding, "finding"),
    named(ClosingTopic::lien, "lien"),
    named(ClosingTopic::tax, "tax"),
    named(ClosingTopic::damage, "damage"),
    named(ClosingTopic::cores, "cores"),
    named(ClosingTopic::warranty, "warranty"),
    named(ClosingTopic::records, "records"),
    named(ClosingTopic::airworthiness_review, "airworthiness_review"),
    named(ClosingTopic::registration, "registration"),
    named(ClosingTopic::insurance, "insurance"),
    named(ClosingTopic::other, "other")};
constexpr std::array closing_payer_names{named(ClosingPayer::open, "open"),
                                         named(ClosingPayer::seller, "seller"),
                                         named(ClosingPayer::buyer, "buyer"),
                                         named(ClosingPayer::shared, "shared")};

/// In the order of Choices.
constexpr std::array<std::span<const Name>, 36> all_names{
    limit_class_names,    clock_names,         item_role_names,     meter_drive_names,
    anchor_names,         calendar_rule_names, carry_over_names,    combine_names,
    part_condition_names, applicability_names, event_kind_names,    wear_sense_names,
    adjust_reason_names,  operation_names,     in_force_names,      task_days_names,
    task_step_names,      plan_work_names,     route_by_names,      carriage_names,
    price_basis_names,    tax_case_names,      acceptance_names,    warranty_from_names,
    cost_group_names,     cost_for_names,      cost_taken_names,    duty_relief_names,
    tax_round_names,      core_grade_names,    core_from_names,     core_stage_names,
    paid_at_names,        holder_role_names,   closing_topic_names, closing_payer_names};

static_assert(all_names.size() == static_cast<std::size_t>(Choices::closing_payer) + 1);

}  // namespace

std::span<const Name> names_of(Choices choices) {
    return all_names.at(static_cast<std::size_t>(choices));
}

std::string_view word_of(Choices choices, std::uint8_t value) {
    for (const Name& name : names_of(choices)) {
        if (name.value == value) return name.word;
    }
    return {};
}

}  // namespace twoclocks::facts
