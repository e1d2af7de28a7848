// Words of the file for every enumeration: one table each, read and printed from the same rows.
#pragma once

#include <array>
#include <string_view>

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// A value and its word in the file.
template <class T>
struct Name {
    T value;
    std::string_view word;
};

inline constexpr std::array<Name<LimitClass>, 4> limit_class_names{{
    {LimitClass::airworthiness_limitation, "airworthiness_limitation"},
    {LimitClass::directive, "directive"},
    {LimitClass::programme, "programme"},
    {LimitClass::recommended, "recommended"},
}};
inline constexpr std::array<Name<Clock>, 4> clock_names{{
    {Clock::hours, "hours"},
    {Clock::calendar, "calendar"},
    {Clock::landings, "landings"},
    {Clock::starts, "starts"},
}};
inline constexpr std::array<Name<ItemRole>, 4> item_role_names{{
    {ItemRole::overhaul, "overhaul"},
    {ItemRole::inspection, "inspection"},
    {ItemRole::component, "component"},
    {ItemRole::other, "other"},
}};
inline constexpr std::array<Name<MeterDrive>, 5> meter_drive_names{{
    {MeterDrive::collective, "collective"},
    {MeterDrive::oil_pressure, "oil_pressure"},
    {MeterDrive::tachometer, "tachometer"},
    {MeterDrive::electrical, "electrical"},
    {MeterDrive::other, "other"},
}};
inline constexpr std::array<Name<Anchor>, 8> anchor_names{{
    {Anchor::manufacture, "manufacture"},
    {Anchor::cure, "cure"},
    {Anchor::shipment, "shipment"},
    {Anchor::first_airworthiness, "first_airworthiness"},
    {Anchor::first_fit, "first_fit"},
    {Anchor::release, "release"},
    {Anchor::overhaul, "overhaul"},
    {Anchor::unknown, "unknown"},
}};
inline constexpr std::array<Name<base::CalendarRule>, 2> calendar_rule_names{{
    {base::CalendarRule::exact, "exact"},
    {base::CalendarRule::month_end, "month_end"},
}};

inline constexpr std::array<Name<CarryOver>, 2> carry_over_names{{
    {CarryOver::from_due, "from_due"},
    {CarryOver::from_done, "from_done"},
}};
inline constexpr std::array<Name<Combine>, 2> combine_names{{
    {Combine::sooner, "sooner"},
    {Combine::later, "later"},
}};
inline constexpr std::array<Name<PartCondition>, 7> part_condition_names{{
    {PartCondition::made_new, "new"},
    {PartCondition::overhauled, "overhauled"},
    {PartCondition::repaired, "repaired"},
    {PartCondition::inspected, "inspected"},
    {PartCondition::as_removed, "as_removed"},
    {PartCondition::unknown, "unknown"},
    {PartCondition::unserviceable, "unserviceable"},
}};
inline constexpr std::array<Name<Applicability>, 3> applicability_names{{
    {Applicability::unknown, "unknown"},
    {Applicability::applies, "applies"},
    {Applicability::not_applicable, "not_applicable"},
}};
inline constexpr std::array<Name<EventKind>, 8> event_kind_names{{
    {EventKind::hard_landing, "hard_landing"},
    {EventKind::overspeed, "overspeed"},
    {EventKind::overtemperature, "overtemperature"},
    {EventKind::overtorque, "overtorque"},
    {EventKind::sudden_stoppage, "sudden_stoppage"},
    {EventKind::vibration, "vibration"},
    {EventKind::lightning, "lightning"},
    {EventKind::other, "other"},
}};
inline constexpr std::array<Name<WearSense>, 2> wear_sense_names{{
    {WearSense::at_most, "at_most"},
    {WearSense::at_least, "at_least"},
}};
inline constexpr std::array<Name<AdjustReason>, 3> adjust_reason_names{{
    {AdjustReason::dead, "dead"},
    {AdjustReason::rolled_over, "rolled_over"},
    {AdjustReason::other, "other"},
}};
inline constexpr std::array<Name<Operation>, 6> operation_names{{
    {Operation::ordinary, "ordinary"},
    {Operation::agricultural, "agricultural"},
    {Operation::external_load, "external_load"},
    {Operation::training, "training"},
    {Operation::emergency, "emergency"},
    {Operation::other, "other"},
}};
inline constexpr std::array<Name<InForce>, 3> in_force_names{{
    {InForce::always, "always"},
    {InForce::in_storage, "in_storage"},
    {InForce::on_return, "on_return"},
}};

/// The table of an enumeration, chosen by any of its values.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(LimitClass) {
    return limit_class_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(Clock) {
    return clock_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(ItemRole) {
    return item_role_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(MeterDrive) {
    return meter_drive_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(Anchor) {
    return anchor_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(base::CalendarRule) {
    return calendar_rule_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(CarryOver) {
    return carry_over_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(Combine) {
    return combine_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(PartCondition) {
    return part_condition_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(Applicability) {
    return applicability_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(EventKind) {
    return event_kind_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(WearSense) {
    return wear_sense_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(AdjustReason) {
    return adjust_reason_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(Operation) {
    return operation_names;
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] constexpr const auto& names_of(InForce) {
    return in_force_names;
}

}  // namespace twoclocks::facts
