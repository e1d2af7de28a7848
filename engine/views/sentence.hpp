// The answer as a sentence: for the card in the fleet list, and for the head of one aircraft.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// One short line for the fleet list.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message card_sentence(const Assessed& aircraft);

/// The answer in full.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message answer_sentence(const Assessed& aircraft);

/// Which edge of the overhaul's limits is met first, as far as it is known.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Edge answer_edge(const Assessed& aircraft);

/// How far apart early and late are.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message range_sentence(const Assessed& aircraft);

/// The edge that a clock stands for.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Edge edge_of(facts::Clock clock);

}  // namespace twoclocks::views
