// Records of money in words.
#pragma once

#include <concepts>
#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::views {

/// The kinds of records of money.
template <class F>
concept MoneyRecord = std::same_as<F, facts::CostLine> || std::same_as<F, facts::PriceList> ||
    std::same_as<F, facts::ExchangeRate> || std::same_as<F, facts::CostTerms>;

/// What the record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message money_what(const facts::CostLine& fields);
[[nodiscard]] base::Message money_what(const facts::PriceList& fields);
[[nodiscard]] base::Message money_what(const facts::ExchangeRate& fields);
[[nodiscard]] base::Message money_what(const facts::CostTerms& fields);

/// Every other field, one line each; the first is the second line of the record.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> money_more(const facts::CostLine& fields);
[[nodiscard]] std::vector<base::Message> money_more(const facts::PriceList& fields);
[[nodiscard]] std::vector<base::Message> money_more(const facts::ExchangeRate& fields);
[[nodiscard]] std::vector<base::Message> money_more(const facts::CostTerms& fields);

/// Words of the enumerations.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Word cost_group_word(facts::CostGroup group);
[[nodiscard]] base::Word cost_for_word(facts::CostFor work);
[[nodiscard]] base::Word cost_taken_word(facts::CostTaken taken);
[[nodiscard]] base::Word duty_relief_word(facts::DutyRelief relief);
[[nodiscard]] base::Word tax_round_word(facts::TaxRound round);

/// What people call a line: its name, or the name of its group.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Arg cost_name(const facts::CostLine& line);

}  // namespace twoclocks::views
