// Records about parts in words.
#pragma once

#include <concepts>
#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::views {

/// The kinds of records about parts.
template <class F>
concept PartRecord = std::same_as<F, facts::PartAdded> || std::same_as<F, facts::PartFitted> ||
    std::same_as<F, facts::PartRemoved> || std::same_as<F, facts::PartScrapped> ||
    std::same_as<F, facts::PartMoved> || std::same_as<F, facts::PartRebuilt>;

/// What the record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message part_what(const facts::PartAdded& fields);
[[nodiscard]] base::Message part_what(const facts::PartFitted& fields);
[[nodiscard]] base::Message part_what(const facts::PartRemoved& fields);
[[nodiscard]] base::Message part_what(const facts::PartScrapped& fields);
[[nodiscard]] base::Message part_what(const facts::PartMoved& fields);
[[nodiscard]] base::Message part_what(const facts::PartRebuilt& fields);

/// The second line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message part_detail(const facts::PartAdded& fields);
[[nodiscard]] base::Message part_detail(const facts::PartFitted& fields);
[[nodiscard]] base::Message part_detail(const facts::PartRemoved& fields);
[[nodiscard]] base::Message part_detail(const facts::PartScrapped& fields);
[[nodiscard]] base::Message part_detail(const facts::PartMoved& fields);
[[nodiscard]] base::Message part_detail(const facts::PartRebuilt& fields);

/// Every other field, one line each.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> part_more(const facts::PartAdded& fields);
[[nodiscard]] std::vector<base::Message> part_more(const facts::PartFitted& fields);
[[nodiscard]] std::vector<base::Message> part_more(const facts::PartRemoved& fields);
[[nodiscard]] std::vector<base::Message> part_more(const facts::PartScrapped& fields);
[[nodiscard]] std::vector<base::Message> part_more(const facts::PartMoved& fields);
[[nodiscard]] std::vector<base::Message> part_more(const facts::PartRebuilt& fields);

/// The word of a condition.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Word condition_word(facts::PartCondition condition);

}  // namespace twoclocks::views
