// An estimate: its lines, its sums, how far they may stray, and what moves them most.
//
// The hard questions.
//   What is the total when a line has no price? The total of the others, and it says that it is not
//   whole. A line that was chosen and cannot be had is not counted, and the total is not whole.
//   How do lines stray together? With a chance that is the root of what was recorded, a line takes
//   the luck of its group instead of its own. Two lines of a group are then linked as much as was
//   recorded, and each by itself strays as its three points say.
//   What comes back for cores? It has nothing to do with the luck of the lines: the cheapest way
//   has the best credits, the dearest the worst. A calendar inspection has no cores.
//   Sums of all lows and of all highs are bounds, not forecasts: all luck on one side. The shares
//   lie between them.
#pragma once

#include "engine/budget/cores.hpp"
#include "engine/budget/options.hpp"

namespace twoclocks::budget {

/// How often an estimate is drawn.
inline constexpr std::int32_t estimate_draws = 10'000;

/// Of a hundred draws ten are no greater, half are, ten are greater. Minor units.
struct Shares {
    std::int64_t tenth{0};
    std::int64_t half{0};
    std::int64_t ninth{0};
};

/// Gross and what comes back, in one currency as it is paid.
struct CurrencySum {
    base::Currency currency;
    Points gross;
    Points back;
};

/// How much one line, or one core, moves the total.
struct Mover {
    std::int32_t line{0};
    std::int32_t core{-1};  // its place, where it is not a line
    std::int64_t swing{0};  // from all else as expected and this one low, to this one high
};

/// All of it, in the home currency where nothing else is said.
struct Estimate {
    base::Currency home;
    std::vector<CostedLine> lines;  // in the order of their groups
    std::vector<CoreWorked> cores;  // of this overhaul
    std::vector<CurrencySum> by_currency;
    // Of the cheapest way, as expected, of the dearest: what comes back need not rise along it.
    Points gross;
    Points back;
    Points net;  // gross less back, exactly
    Shares gross_shares;
    Shares net_shares;
    std::int32_t net_over_permille{0};  // of a thousand draws of net, those over it as expected
    std::vector<Mover> movers;          // the greatest first, none that moves nothing
    base::Problems faults;              // of the whole
    std::int32_t missing{0};            // lines that belong to it and are not in the sums
    std::int32_t added_days{0};         // by what was chosen
    std::int64_t added_grams{0};        // less those removed
    base::FlightTime added_hours;       // of work
};

/// Makes an estimate of the lines that are of this route and this work.
/// Units: minor units. Errors: `faults`, and `notes` of each line. Source: our choice; shares by
/// drawing from triangles so many times, seeded; without a draw there are none.
[[nodiscard]] Estimate estimate(const std::vector<timeline::CostLineState>& lines,
                                const EstimateFor& asked,
                                const Setting& setting,
                                std::int32_t draws = estimate_draws);

}  // namespace twoclocks::budget
