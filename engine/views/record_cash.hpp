// Records of cores, payments and the reserve in words.
#pragma once

#include <concepts>
#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::views {

/// The kinds of records of cores, payments and the reserve.
template <class F>
concept CashRecord = std::same_as<F, facts::Core> || std::same_as<F, facts::CoreStep> ||
    std::same_as<F, facts::PayTerm> || std::same_as<F, facts::Payment> ||
    std::same_as<F, facts::Balance> || std::same_as<F, facts::ReserveTerms> ||
    std::same_as<F, facts::Holder>;

/// What the record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message cash_what(const facts::Core& fields);
[[nodiscard]] base::Message cash_what(const facts::CoreStep& fields);
[[nodiscard]] base::Message cash_what(const facts::PayTerm& fields);
[[nodiscard]] base::Message cash_what(const facts::Payment& fields);
[[nodiscard]] base::Message cash_what(const facts::Balance& fields);
[[nodiscard]] base::Message cash_what(const facts::ReserveTerms& fields);
[[nodiscard]] base::Message cash_what(const facts::Holder& fields);

/// Every other field, one line each; the first is the second line of the record.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> cash_more(const facts::Core& fields);
[[nodiscard]] std::vector<base::Message> cash_more(const facts::CoreStep& fields);
[[nodiscard]] std::vector<base::Message> cash_more(const facts::PayTerm& fields);
[[nodiscard]] std::vector<base::Message> cash_more(const facts::Payment& fields);
[[nodiscard]] std::vector<base::Message> cash_more(const facts::Balance& fields);
[[nodiscard]] std::vector<base::Message> cash_more(const facts::ReserveTerms& fields);
[[nodiscard]] std::vector<base::Message> cash_more(const facts::Holder& fields);

/// Words of the enumerations.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Word core_grade_word(facts::CoreGrade grade);
[[nodiscard]] base::Word core_from_word(facts::CoreFrom from);
[[nodiscard]] base::Word core_stage_word(facts::CoreStage stage);
[[nodiscard]] base::Word paid_at_word(facts::PaidAt at);
[[nodiscard]] base::Word holder_role_word(facts::HolderRole role);

/// What people call a core: its name, or its key.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Arg core_label(const facts::Core& core);

}  // namespace twoclocks::views
