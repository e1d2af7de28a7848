// What the fields of a record are called on the canvas, and the words of their choices.
#pragma once

#include <string_view>
#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/fact.hpp"

namespace twoclocks::canvas {

/// The label of a field of the file format.
[[nodiscard]] base::Word label_of(std::string_view key);

/// The words of a choice, in the order of its values.
[[nodiscard]] std::vector<base::Word> option_words(facts::LimitClass);
[[nodiscard]] std::vector<base::Word> option_words(facts::MeterDrive);
[[nodiscard]] std::vector<base::Word> option_words(base::CalendarRule);
[[nodiscard]] std::vector<base::Word> option_words(facts::ItemRole);
[[nodiscard]] std::vector<base::Word> option_words(facts::Anchor);
[[nodiscard]] std::vector<base::Word> option_words(facts::CarryOver);
[[nodiscard]] std::vector<base::Word> option_words(facts::Combine);
[[nodiscard]] std::vector<base::Word> option_words(facts::PartCondition);
[[nodiscard]] std::vector<base::Word> option_words(facts::Applicability);
[[nodiscard]] std::vector<base::Word> option_words(facts::EventKind);
[[nodiscard]] std::vector<base::Word> option_words(facts::WearSense);
[[nodiscard]] std::vector<base::Word> option_words(facts::AdjustReason);
[[nodiscard]] std::vector<base::Word> option_words(facts::Operation);
[[nodiscard]] std::vector<base::Word> option_words(facts::InForce);

}  // namespace twoclocks::canvas
