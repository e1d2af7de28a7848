// Of several versions that disagree, the one that gives less life, quantity by quantity.
#pragma once

#include <optional>
#include <vector>

#include "engine/facts/fact.hpp"

namespace twoclocks::timeline {

/// The safer of several bodies of one kind, or nothing when the safer is that it never happened.
///   reading         highest reading, earliest day, highest counts
///   limit           shortest hours, months and counts; earliest anchor; strictest class; exact
/// rule;
///                   cap and first interval the shortest, tolerances the least, later only where
/// both
///                   say so of the same clocks
///                   a withdrawal beside it leaves the limit standing; always in force unless both
///                   say the same
///   meter           highest total for the same reading, earliest day
///   work done       not done when one version takes it back; else what all renew, at the lowest
/// total
///                   and the earliest day
///   work rule       none when one version takes it back; else what all renew
///   usage planned   most hours a month
///   out of service  in service when one version takes it back; else the shortest spell, stored
///                   where all say so
///   permit          none when one version takes it back; else the fewest hours, the shortest time
///   part added      most hours and counts, earliest days, worst condition; a figure that one lacks
///                   is unknown
///   part fitted     lowest total of the host, earliest day; fitted even if one takes it back
///   part removed    highest total of the host, latest day; still fitted when one takes it back
///   part rebuilt    not done when one version takes it back; else the lowest total, earliest day
///   meter adjusted  most hours, earliest day; added even if one takes it back
///   hours factor    the highest; flown as: the most hours, the latest day
///   the others      have no safe side: the first version, and the record stays an open question
/// Units: as fact.hpp. Errors: none. Source: our choice, remaining is never more than any one
/// answer gives.
[[nodiscard]] std::optional<facts::Body> safer(const std::vector<const facts::Body*>& bodies,
                                               bool one_takes_it_back);

}  // namespace twoclocks::timeline
