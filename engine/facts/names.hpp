// Words of the file for every enumeration: one table each, read and printed from the same rows.
#pragma once

#include <span>
#include <string_view>

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// The enumerations that a record can hold a value of.
enum class Choices : std::uint8_t {
    limit_class,
    clock,
    item_role,
    meter_drive,
    anchor,
    calendar_rule,
    carry_over,
    combine,
    part_condition,
    applicability,
    event_kind,
    wear_sense,
    adjust_reason,
    operation,
    in_force,
    task_days,
    task_step,
    plan_work,
    route_by,
    carriage,
    price_basis,
    tax_case,
    acceptance,
    warranty_from,
    cost_group,
    cost_for,
    cost_taken,
    duty_relief,
    tax_round,
    core_grade,
    core_from,
    core_stage,
    paid_at,
    holder_role,
    closing_topic,
    closing_payer
};

/// Which of them a type is.
template <class T>
inline constexpr Choices choices_of = T::no_such_enumeration;
template <>
inline constexpr Choices choices_of<LimitClass> = Choices::limit_class;
template <>
inline constexpr Choices choices_of<Clock> = Choices::clock;
template <>
inline constexpr Choices choices_of<ItemRole> = Choices::item_role;
template <>
inline constexpr Choices choices_of<MeterDrive> = Choices::meter_drive;
template <>
inline constexpr Choices choices_of<Anchor> = Choices::anchor;
template <>
inline constexpr Choices choices_of<base::CalendarRule> = Choices::calendar_rule;
template <>
inline constexpr Choices choices_of<CarryOver> = Choices::carry_over;
template <>
inline constexpr Choices choices_of<Combine> = Choices::combine;
template <>
inline constexpr Choices choices_of<PartCondition> = Choices::part_condition;
template <>
inline constexpr Choices choices_of<Applicability> = Choices::applicability;
template <>
inline constexpr Choices choices_of<EventKind> = Choices::event_kind;
template <>
inline constexpr Choices choices_of<WearSense> = Choices::wear_sense;
template <>
inline constexpr Choices choices_of<AdjustReason> = Choices::adjust_reason;
template <>
inline constexpr Choices choices_of<Operation> = Choices::operation;
template <>
inline constexpr Choices choices_of<InForce> = Choices::in_force;
template <>
inline constexpr Choices choices_of<TaskDays> = Choices::task_days;
template <>
inline constexpr Choices choices_of<TaskStep> = Choices::task_step;
template <>
inline constexpr Choices choices_of<PlanWork> = Choices::plan_work;
template <>
inline constexpr Choices choices_of<RouteBy> = Choices::route_by;
template <>
inline constexpr Choices choices_of<Carriage> = Choices::carriage;
template <>
inline constexpr Choices choices_of<PriceBasis> = Choices::price_basis;
template <>
inline constexpr Choices choices_of<TaxCase> = Choices::tax_case;
template <>
inline constexpr Choices choices_of<Acceptance> = Choices::acceptance;
template <>
inline constexpr Choices choices_of<WarrantyFrom> = Choices::warranty_from;
template <>
inline constexpr Choices choices_of<CostGroup> = Choices::cost_group;
template <>
inline constexpr Choices choices_of<CostFor> = Choices::cost_for;
template <>
inline constexpr Choices choices_of<CostTaken> = Choices::cost_taken;
template <>
inline constexpr Choices choices_of<DutyRelief> = Choices::duty_relief;
template <>
inline constexpr Choices choices_of<TaxRound> = Choices::tax_round;
template <>
inline constexpr Choices choices_of<CoreGrade> = Choices::core_grade;
template <>
inline constexpr Choices choices_of<CoreFrom> = Choices::core_from;
template <>
inline constexpr Choices choices_of<CoreStage> = Choices::core_stage;
template <>
inline constexpr Choices choices_of<PaidAt> = Choices::paid_at;
template <>
inline constexpr Choices choices_of<HolderRole> = Choices::holder_role;
template <>
inline constexpr Choices choices_of<ClosingTopic> = Choices::closing_topic;
template <>
inline constexpr Choices choices_of<ClosingPayer> = Choices::closing_payer;

/// A value of an enumeration, as a number, and its word in the file.
struct Name {
    std::uint8_t value{};
    std::string_view word;
};

/// The names of an enumeration, in the order of its values, which count up from 0.
/// Units: none. Errors: none. Source: journal.schema.json.
[[nodiscard]] std::span<const Name> names_of(Choices choices);

/// The word of a value, empty when the enumeration has no such value.
/// Units: none. Errors: none. Source: as above.
[[nodiscard]] std::string_view word_of(Choices choices, std::uint8_t value);

}  // namespace twoclocks::facts
