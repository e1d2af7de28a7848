// Open questions: how a record that people disagree about becomes one, and what answers it.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// The side of a question that one head of a record is on, with the heads that agree with it.
/// Units: none. Range: a place in `record.heads`. Errors: none. Source: our choice.
[[nodiscard]] Side side_of(const Record& record, std::size_t head);

/// Adds the question that a record is, if it is one.
/// Units: none. Errors: none. Source: our choice.
void fold_question(const Record& record, AircraftState& state);

/// Ids of the facts that an open question of an aircraft asks about, and of the records they are
/// versions of; sorted. A record dated ahead disagrees already: it waits for no day.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Id> facts_in_question(const facts::Journal& journal,
                                                      base::Id aircraft);

/// The answer that keeps one side of a question. It is about every aircraft that a side is about.
/// An earlier answer that keeps what this one drops is settled with it, and what that answer had
/// dropped of the same records stays dropped; otherwise the question could never be closed.
/// Units: none. Range: `side` is a place in the question's sides. Errors: none.
/// Source: our choice, the later answer knows of the earlier.
[[nodiscard]] facts::Body answer_to(const facts::Journal& journal,
                                    const Question& question,
                                    std::size_t side,
                                    base::Id aircraft,
                                    base::Date today);

}  // namespace twoclocks::timeline
