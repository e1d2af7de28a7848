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
                                    named(TaxCase::borne, "borne")};
constexpr std::array acceptance_names{named(Acceptance::unknown, "unknown"),
                                      named(Acceptance::accepted, "accepted"),
                                      named(Acceptance::refused, "refused")};
constexpr std::array warranty_from_names{named(WarrantyFrom::unknown, "unknown"),
                                         named(WarrantyFrom::release, "release"),
                                         named(WarrantyFrom::shipment, "shipment"),
                                         named(WarrantyFrom::first_flight, "first_flight")};

}  // namespace

std::span<const Name> names_of(Choices choices) {
    switch (choices) {
        case Choices::limit_class:
            return limit_class_names;
        case Choices::clock:
            return clock_names;
        case Choices::item_role:
            return item_role_names;
        case Choices::meter_drive:
            return meter_drive_names;
        case Choices::anchor:
            return anchor_names;
        case Choices::calendar_rule:
            return calendar_rule_names;
        case Choices::carry_over:
            return carry_over_names;
        case Choices::combine:
            return combine_names;
        case Choices::part_condition:
            return part_condition_names;
        case Choices::applicability:
            return applicability_names;
        case Choices::event_kind:
            return event_kind_names;
        case Choices::wear_sense:
            return wear_sense_names;
        case Choices::adjust_reason:
            return adjust_reason_names;
        case Choices::operation:
            return operation_names;
        case Choices::in_force:
            return in_force_names;
        case Choices::task_days:
            return task_days_names;
        case Choices::task_step:
            return task_step_names;
        case Choices::plan_work:
            return plan_work_names;
        case Choices::route_by:
            return route_by_names;
        case Choices::carriage:
            return carriage_names;
        case Choices::price_basis:
            return price_basis_names;
        case Choices::tax_case:
            return tax_case_names;
        case Choices::acceptance:
            return acceptance_names;
        case Choices::warranty_from:
            return warranty_from_names;
    }
    return {};
}

std::string_view word_of(Choices choices, std::uint8_t value) {
    for (const Name& name : names_of(choices)) {
        if (name.value == value) return name.word;
    }
    return {};
}

}  // namespace twoclocks::facts
