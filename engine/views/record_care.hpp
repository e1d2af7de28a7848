// Records of directives, events, wear and use in words.
#pragma once

#include <concepts>
#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::views {

/// The kinds of records about directives, events, wear and use.
template <class F>
concept CareRecord = std::same_as<F, facts::Directive> ||
    std::same_as<F, facts::AlternativeMeans> || std::same_as<F, facts::Event> ||
    std::same_as<F, facts::WearLimit> || std::same_as<F, facts::Wear> ||
    std::same_as<F, facts::MeterAdjusted> || std::same_as<F, facts::WorkRule> ||
    std::same_as<F, facts::HoursFactor> || std::same_as<F, facts::FlownAs>;

/// What the record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message care_what(const facts::Directive& fields);
[[nodiscard]] base::Message care_what(const facts::AlternativeMeans& fields);
[[nodiscard]] base::Message care_what(const facts::Event& fields);
[[nodiscard]] base::Message care_what(const facts::WearLimit& fields);
[[nodiscard]] base::Message care_what(const facts::Wear& fields);
[[nodiscard]] base::Message care_what(const facts::MeterAdjusted& fields);
[[nodiscard]] base::Message care_what(const facts::WorkRule& fields);
[[nodiscard]] base::Message care_what(const facts::HoursFactor& fields);
[[nodiscard]] base::Message care_what(const facts::FlownAs& fields);

/// Every other field, one line each; the first is the second line of the record.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> care_more(const facts::Directive& fields);
[[nodiscard]] std::vector<base::Message> care_more(const facts::AlternativeMeans& fields);
[[nodiscard]] std::vector<base::Message> care_more(const facts::Event& fields);
[[nodiscard]] std::vector<base::Message> care_more(const facts::WearLimit& fields);
[[nodiscard]] std::vector<base::Message> care_more(const facts::Wear& fields);
[[nodiscard]] std::vector<base::Message> care_more(const facts::MeterAdjusted& fields);
[[nodiscard]] std::vector<base::Message> care_more(const facts::WorkRule& fields);
[[nodiscard]] std::vector<base::Message> care_more(const facts::HoursFactor& fields);
[[nodiscard]] std::vector<base::Message> care_more(const facts::FlownAs& fields);

/// Words of the enumerations.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Word applicability_word(facts::Applicability applies);
[[nodiscard]] base::Word event_word(facts::EventKind event);
[[nodiscard]] base::Word sense_word(facts::WearSense sense);
[[nodiscard]] base::Word adjust_word(facts::AdjustReason reason);
[[nodiscard]] base::Word operation_word(facts::Operation operation);
[[nodiscard]] base::Word in_force_word(facts::InForce in_force);

/// A value in thousandths as people write it: 12.5, no needless zeros.
/// Units: thousandths. Errors: none. Source: our choice.
[[nodiscard]] std::string thousandths_text(std::int64_t thousandths);

}  // namespace twoclocks::views
