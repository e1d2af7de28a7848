// The pages of parts: what was asked of the list, what answers, and what can be recorded of one.
#pragma once

#include "wasm/app/form.hpp"

namespace twoclocks::canvas {

/// Nothing searched, the aircraft's own parts.
[[nodiscard]] Form make_parts_form(const std::string& registration);

/// What the fields ask for. Of no aircraft, all parts of the record.
[[nodiscard]] PartsPage parts_page(Form& form, base::Id aircraft, const FormContext& context);

/// What can be recorded of a part by where it is.
[[nodiscard]] std::vector<PartOffer> offered(timeline::Whereabouts whereabouts);

/// One part, and the forms that make sense where it is.
[[nodiscard]] PartPage part_page(const timeline::PartState& part, const FormContext& context);

}  // namespace twoclocks::canvas
