// The lines that a whole-aircraft overhaul usually has, to begin an estimate with. Ours, without
// prices: those come from quotes.
#pragma once

#include <vector>

#include "engine/facts/cost_facts.hpp"

namespace twoclocks::budget {

/// One of them, and the word it is named by where its group alone does not say it.
struct UsualLine {
    facts::CostLine line;
    base::Word name{base::Word::blank};
};

/// In the order of the groups; keys of ours. Labour is told in hours.
/// Units: thousandths. Errors: none. Source: about 240 hours of labour, the engine by choice, a
/// finish and an interior beside the kit: common practice, no source. The least and the most are
/// estimates of ours.
[[nodiscard]] std::vector<UsualLine> usual_lines();

}  // namespace twoclocks::budget
