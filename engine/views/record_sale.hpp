// Records for a sale in words.
#pragma once

#include <concepts>
#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::views {

/// The kinds of records for a sale.
template <class F>
concept SaleRecord = std::same_as<F, facts::ItemPrice> || std::same_as<F, facts::ClosingPoint>;

/// What the record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message sale_what(const facts::ItemPrice& fields);
[[nodiscard]] base::Message sale_what(const facts::ClosingPoint& fields);

/// Every other field, one line each; the first is the second line of the record.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> sale_more(const facts::ItemPrice& fields);
[[nodiscard]] std::vector<base::Message> sale_more(const facts::ClosingPoint& fields);

/// Words of the enumerations.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Word closing_topic_word(facts::ClosingTopic topic);
[[nodiscard]] base::Word closing_payer_word(facts::ClosingPayer payer);

/// What people call a point: its words, or its topic.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Arg closing_label(const facts::ClosingPoint& point);

}  // namespace twoclocks::views
