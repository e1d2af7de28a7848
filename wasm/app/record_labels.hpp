// What the fields of a record are called on the canvas, and the words of their choices.
#pragma once

#include <string_view>
#include <vector>

#include "engine/base/message.hpp"
#include "engine/facts/names.hpp"

namespace twoclocks::canvas {

/// The label of a field of the file format.
[[nodiscard]] base::Word label_of(std::string_view key);

/// The words of a choice, in the order of its values.
[[nodiscard]] std::vector<base::Word> option_words(facts::Choices choices);

}  // namespace twoclocks::canvas
