// What joining a file would do to what is shown: figures that move, records that would disagree.
#pragma once

#include "wasm/screen.hpp"

#include <vector>

#include "engine/facts/journal.hpp"

namespace twoclocks::canvas {

/// A file about to be joined.
struct Joining {
    const facts::Journal& before;
    const facts::Journal& after;
    const std::vector<facts::Fact>& file;
    std::vector<base::Id> subjects;  // that its new records name, each once
    base::Date today;
};

/// True when a journal has a fact, to the byte.
[[nodiscard]] bool is_here(const facts::Journal& journal, const facts::Fact& fact);

/// Limits of overhauls that would move, a sentence each.
[[nodiscard]] std::vector<base::Message> effects_of(const Joining& joining);

/// Questions that nobody asks yet, with the sides that are here and those in the file.
[[nodiscard]] std::vector<Disagreement> disagreements_of(const Joining& joining);

}  // namespace twoclocks::canvas
