// Hours of a kind of flying that use limits faster than they are flown.
//
// The hard questions.
//   Whose limits? Those in hours that hang on the aircraft, its total time being what they count;
//   recorded time itself never changes. Limits on parts count the hours flown as they are.
//   Which hours fall into an interval? All that may have been flown since it began: of a span of
//   days that ends on its first day or later, every hour, but in all no more than was flown in the
//   interval, those that use the most first. Where the day it began is not known, all spans may.
//   Rounding: what is used is rounded up to the second.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/limits/bearer.hpp"

namespace twoclocks::limits {

/// Hours of one kind in an interval, and what they use more than was flown.
struct FactorTerm {
    facts::Operation kind{facts::Operation::other};
    base::FlightTime hours;
    std::int32_t thousandths{1000};
    base::FlightTime more;
    std::string source;
    base::Id fact;
};

/// What flying used of an interval of an item on top of the hours flown in it, a term for each
/// record.
/// Units: seconds, rounded up. Range: `flown` below zero is nothing flown. Errors: none.
/// Source: our choice, more use is less life.
[[nodiscard]] std::vector<FactorTerm> factor_terms(const Bearer& bearer,
                                                   const timeline::ItemState& item,
                                                   base::FlightTime flown);

/// All of it together.
/// Units: seconds. Errors: none. Source: as above.
[[nodiscard]] base::FlightTime extra_hours(const std::vector<FactorTerm>& terms);

/// How many thousandths of an hour an hour of a kind counts on a limit of an item.
/// Units: thousandths. Errors: null where no factor is on record. Source: our choice.
[[nodiscard]] const timeline::FactorState* factor_of(const timeline::UseState& use,
                                                     facts::Operation kind,
                                                     base::Id item);

}  // namespace twoclocks::limits
