// What the months ahead may take: a pattern, and how far months and years strayed from it before.
//
// The hard questions.
//   How does a month stray? Like one of the whole months of the last five years, as a share of what
//   the pattern had for it. With fewer than six such months nobody knows, and a plain set of shares
//   is assumed; `assumed` says so.
//   How does the level stray? From year to year by as much as it did before, together with one year
//   of a quarter, so that a single quiet year promises nothing.
//   How well is the level known now? As well as a mean of twelve months that stray, of which the
//   last year also changed: a third of a year's straying.
//   A stated plan is the level, or each month where it is by month; the straying stays what it was.
//   While records disagree about it a month is the most of what any of them plans and what was
//   measured.
#pragma once

#include <optional>
#include <vector>

#include "engine/forecast/pattern.hpp"
#include "engine/forecast/week.hpp"

namespace twoclocks::forecast {

/// What the months ahead are drawn from.
struct FlyingModel {
    FlyingPattern pattern;
    std::vector<double> ratios;  // flown over expected, a month each, oldest first; mean 1
    double year_spread{0};       // of the level from one year to the next, as a logarithm
    double level_spread{0};      // of the level as it is now: nobody knows it to the hour
    bool assumed{false};         // too few months: the ratios are ours
    std::optional<Week> week{};  // where the days of the week differ
};

inline constexpr std::size_t fewest_ratios = 6;
inline constexpr double assumed_year_spread = 0.25;

/// The model of what was flown.
/// Units: seconds, shares. Errors: pattern.basis none where nothing is known.
/// Source: our choice; its bands are held against invented histories in chance_laws_test.cpp.
[[nodiscard]] FlyingModel flying_model(const std::vector<MonthFlown>& months);

/// The model of what an aircraft flew in the last years, with its week.
/// Units: seconds, shares. Errors: as above. Source: our choice.
[[nodiscard]] FlyingModel measured_model(const timeline::AircraftState& state);

/// A model with a plan for its level.
/// Units: seconds, shares. Errors: none. Source: our choice.
[[nodiscard]] FlyingModel planned_model(FlyingModel measured,
                                        const std::optional<timeline::StatedPlan>& plan);

}  // namespace twoclocks::forecast
