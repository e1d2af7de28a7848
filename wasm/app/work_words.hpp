// What a work renews, in words, and the field that offers the works on record.
#pragma once

#include "wasm/app/form.hpp"

namespace twoclocks::canvas {

/// What is renewed and what is kept, a line each: what is renewed as a whole, then item by item
/// what is renewed in part, then how many others keep their clocks.
[[nodiscard]] std::vector<base::Message> renewal_lines(const std::vector<facts::Renewal>& renews,
                                                       const timeline::AircraftState& aircraft);

/// The works on record that a form about an aircraft or one of its items offers; none on record,
/// no field.
[[nodiscard]] std::optional<FieldView> rule_field(const Form& form, const FormContext& context);

/// The items of an aircraft, to choose one from.
[[nodiscard]] FieldView item_field(const timeline::AircraftState& aircraft);

/// The work chosen in a form, null for one item only.
[[nodiscard]] const timeline::WorkRuleState* chosen_rule(Form& form, const FormContext& context);

}  // namespace twoclocks::canvas
