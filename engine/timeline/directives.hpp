// Directives: whether each applies, what it counts from, and how one acts on another.
//
// The hard questions.
//   Who decides whether it applies? A person. What serials and part number say is shown beside the
//   decision; where they disagree with it, it counts until somebody decides again. While nobody has
//   decided, what is due is not known. On an aircraft a part number names it while such a part may
//   be aboard; where no part is on record it says nothing.
//   Which record holds? The last by its day, as for a limit; of one day, and while records
//   disagree, all of them: it counts if any has it so, and nothing ends it unless all have it so.
//   What does `replaces` end? An item of the same aircraft or part, once the directive that names
//   it applies here and is in effect. One that does not apply, or of which nobody knows, ends
//   nothing: both count, for the one it replaces may be all there is. So does one that was itself
//   superseded, where its successor does not apply here.
//   A chain: each is ended by the one that names it. A ring ends nothing, and all in it count.
//   Credit: what was done by the day the directive took effect, for what it replaces, by way of
//   further credit too. Without `credit` it begins anew.
//   Terminating action: work on the whole of an item that `ended_by` names, of the same aircraft or
//   part, whenever it was done. Work taken back or in dispute ends nothing.
//   An approved other way belongs to the directive it was approved for, not to what replaces it.
//   What does a part carry? Its own directives, with what was done for them. A directive of an
//   aircraft is no part's: names across the two count for nothing.
#pragma once

#include "engine/timeline/parts.hpp"

namespace twoclocks::timeline {

/// Hangs directives on the items of an aircraft that rest on one or that one names.
/// Units: as state.hpp. Errors: none, what does not add up is a caution.
/// Source: 14 CFR 39.7, 39.11 and 39.19 from memory: until complied with, as it says, or by another
/// approved way; the rest our choice, see the head of this file.
void fold_directives(const facts::Journal& journal,
                     const std::vector<Record>& records,
                     base::Date today,
                     AircraftState& state);

/// The same of a part, wherever it is.
/// Units: as parts.hpp. Errors: none, what does not add up is a caution. Source: as above.
void fold_directives(const std::vector<Record>& records, base::Date today, PartState& part);

/// True when work renewed all of an item: every clock that its limit counts, or that there is.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_wholly_renewed(const ItemState& item);

}  // namespace twoclocks::timeline
