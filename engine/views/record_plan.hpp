// Records of a campaign in words.
#pragma once

#include <concepts>
#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::views {

/// The kinds of records of a campaign.
template <class F>
concept PlanRecord = std::same_as<F, facts::PlanTask> || std::same_as<F, facts::PlanStep> ||
    std::same_as<F, facts::PlanTerms> || std::same_as<F, facts::Closed>;

/// What the record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message plan_what(const facts::PlanTask& fields);
[[nodiscard]] base::Message plan_what(const facts::PlanStep& fields);
[[nodiscard]] base::Message plan_what(const facts::PlanTerms& fields);
[[nodiscard]] base::Message plan_what(const facts::Closed& fields);

/// Every other field, one line each; the first is the second line of the record.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> plan_more(const facts::PlanTask& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::PlanStep& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::PlanTerms& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::Closed& fields);

/// Words of the enumeration.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Word plan_work_word(facts::PlanWork work);

}  // namespace twoclocks::views
