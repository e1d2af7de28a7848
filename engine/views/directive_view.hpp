// A directive in words: which it is, where it stands, what was done for it, what comes next.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// What a directive makes of the state of its item: one that nobody decided on is unknown, one that
/// is to be complied with before further flight stops it, and a recommended one warns.
/// Units: none. Errors: none. Source: 14 CFR 39.7 from memory; our choice.
[[nodiscard]] State with_directive(State by_clocks, const limits::ItemDue& item);

/// The directive that an item rests on; nothing when it rests on none and none names it.
/// Units: none. Errors: none. Source: 14 CFR 91.417(a)(2)(v): method, number, revision, and where
/// it recurs the time and date when it is next required.
[[nodiscard]] std::optional<DirectiveView> make_directive_view(const Assessed& aircraft,
                                                               std::int32_t place);

/// Where a directive stands, where no day says more.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::optional<base::Message> standing_instead(const Assessed& aircraft,
                                                            std::int32_t place);

/// "D 7, revision 2, by Authority".
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message directive_name(const facts::Directive& directive);

/// Says which directive is to be complied with before the next flight, where that is what sets the
/// state; nothing while it is not.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::optional<base::Message> directive_sentence(const Assessed& aircraft,
                                                              base::Word word);

}  // namespace twoclocks::views
