// When an aircraft was, is and will be in storage.
//
// The hard questions.
//   What is storage? Out of service, preserved by a document: a record says so. Standing is not.
//   Two records of storage that touch: one storage, from the first day of the first to the last of
//   both.
//   Records that disagree whether or when it was stored: neither way is taken. Every way they tell
//   it is kept, and limits count from the earliest they could by any of them.
//   Storage without an end that was flown in has ended, as every spell; while readings are asked
//   about it may not have.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Fills the storage of an aircraft, after its spells.
/// Units: days. Errors: none. Source: our choice.
void fold_storage(const std::vector<Record>& records, AircraftState& state);

/// The storage that a day lies in, null when there is none that nobody disputes.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] const StorageSpell* storage_on(const StorageState& storage, base::Date on);

/// The last storage that began by a day, null when there is none that nobody disputes.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] const StorageSpell* last_storage(const StorageState& storage, base::Date on);

/// The same aircraft as if it came back on a day: what lasts until later, or ends nobody knows
/// when, ends then.
/// Units: days. Range: spells that begin on that day or later stay as they are. Errors: none.
/// Source: our choice.
[[nodiscard]] AircraftState returned_on(AircraftState state, base::Date on);

}  // namespace twoclocks::timeline
