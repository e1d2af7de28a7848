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
    std::same_as<F, facts::PlanTerms> || std::same_as<F, facts::Closed> ||
    std::same_as<F, facts::Route> || std::same_as<F, facts::PlanCosts> ||
    std::same_as<F, facts::PlanKept>;

/// What the record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message plan_what(const facts::PlanTask& fields);
[[nodiscard]] base::Message plan_what(const facts::PlanStep& fields);
[[nodiscard]] base::Message plan_what(const facts::PlanTerms& fields);
[[nodiscard]] base::Message plan_what(const facts::Closed& fields);
[[nodiscard]] base::Message plan_what(const facts::Route& fields);
[[nodiscard]] base::Message plan_what(const facts::PlanCosts& fields);
[[nodiscard]] base::Message plan_what(const facts::PlanKept& fields);

/// Every other field, one line each; the first is the second line of the record.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> plan_more(const facts::PlanTask& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::PlanStep& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::PlanTerms& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::Closed& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::Route& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::PlanCosts& fields);
[[nodiscard]] std::vector<base::Message> plan_more(const facts::PlanKept& fields);

/// Words of the enumerations.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Word plan_work_word(facts::PlanWork work);
[[nodiscard]] base::Word route_by_word(facts::RouteBy by);
[[nodiscard]] base::Word carriage_word(facts::Carriage carriage);
[[nodiscard]] base::Word price_basis_word(facts::PriceBasis basis);
[[nodiscard]] base::Word tax_case_word(facts::TaxCase tax);
[[nodiscard]] base::Word warranty_from_word(facts::WarrantyFrom from);
[[nodiscard]] base::Word acceptance_word(facts::Acceptance accepted);

/// Whether the registry accepts what is released there, as a sentence.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Word route_gate_word(facts::Acceptance accepted);

/// What people call a route: its name, or its key.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Arg route_name(const facts::Route& route);

}  // namespace twoclocks::views
