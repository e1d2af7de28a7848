// What another answer to an open question would change: those figures bear a mark.
#pragma once

#include "engine/base/function_ref.hpp"
#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Each open question is answered by itself, and all of them together in at most so many ways. With
/// more, what rests on a record in question is marked as well. Our choice.
inline constexpr std::size_t most_ways = 32;

/// An aircraft as it is recorded, and as it would be with every answer to its open questions; none
/// when it was withdrawn.
/// Units: as assess.hpp. Errors: none. Source: our choice.
[[nodiscard]] std::optional<Assessed> assess_recorded(const facts::Journal& journal,
                                                      base::Id aircraft,
                                                      base::Date today);

/// The same of a part that is on no aircraft, with what hangs on it.
/// Units: as assess.hpp. Errors: none. Source: our choice.
[[nodiscard]] Assessed assess_part(const facts::Journal& journal,
                                   const timeline::PartState& part,
                                   base::Date today);

/// True when two messages read alike.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool reads_alike(const base::Message& left, const base::Message& right);

/// Tells a figure of an aircraft, with its mark where another answer would make it another.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Told told(const Assessed& aircraft,
                        base::FunctionRef<base::Message(const Assessed&)> tell);

/// The same of a part that is on it, or worked out by itself.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Told told_of_part(const Assessed& aircraft,
                                const timeline::PartState& part,
                                base::FunctionRef<base::Message(const timeline::PartState&)> tell);

/// The same of a figure with a why.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Figure marked(const Assessed& aircraft,
                            base::FunctionRef<Figure(const Assessed&)> tell);

/// Marks a figure, and says in its why what the mark means; also where its why rests on a record in
/// question and not every way was worked out.
/// Units: none. Errors: none. Source: our choice.
void mark(const Assessed& aircraft, Figure& figure, bool questioned);

/// The same of a why whose figure stands elsewhere. True when it is marked.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool mark(const Assessed& aircraft, Why& why, bool questioned);

}  // namespace twoclocks::views
