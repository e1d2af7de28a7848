// A part of a journal to hand over: of one aircraft, without what is nobody else's business.
//
// The hard questions.
//   What belongs to an aircraft? What is about it, and about the parts that are or were on it.
//   Where such a part flew on another one, or in somebody else's part, its hours need that one's
//   readings and fits: they come along, with who it is, and nothing else of it.
//   What is money? Kinds that are about nothing else, and whatever names an amount. With such a
//   record everything goes that it corrects or takes back, or that does so to it: half of a chain
//   would show a figure that was replaced. What a newer version wrote cannot be looked into.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/facts/journal.hpp"

namespace twoclocks::facts {

/// What is handed over.
struct ExcerptAsked {
    std::optional<base::Id> aircraft{};  // missing: all of them
    bool has_money{true};
    bool has_names{true};  // signatures; names that stand in words stay
};

/// The part that was asked for.
struct Excerpt {
    Journal journal;
    std::int64_t kept_names{0};  // records whose number another bears: a signature tells them apart
    std::int64_t newer_left{0};  // records of a newer version, left out with the money or the names
};

/// True when a record says what something costs, or is about nothing but money; of a correction,
/// when what it puts in the place does.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_of_money(const Body& body);

/// Records as they are. Joined to the whole again they add nothing: a record without its signature
/// is the same.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Excerpt excerpt_of(const Journal& journal, const ExcerptAsked& asked);

}  // namespace twoclocks::facts
