// What is recorded of the money of a campaign, worked out.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/id.hpp"
#include "engine/facts/cost_facts.hpp"
#include "engine/facts/price_rows.hpp"

namespace twoclocks::timeline {

/// One line of the estimate.
struct CostLineState {
    facts::CostLine said;
    base::Date on;
    base::Id fact;
};

/// One version of a price list.
struct PriceListState {
    std::string list;
    base::Date on;
    std::vector<facts::PriceRow> rows;
    std::string said_by;
    base::Id fact;  // the last of them
};

/// One rate of one day.
struct RateState {
    facts::ExchangeRate said;
    base::Date on;
    base::Id fact;
};

/// Everything recorded of the money of one aircraft.
struct MoneyState {
    std::vector<CostLineState> lines;   // one a key, without those left out
    std::vector<CostLineState> past;    // those of the campaign that is over, one a key
    std::vector<PriceListState> lists;  // by name, then by day
    std::vector<RateState> rates;       // by day
    facts::CostTerms terms;
    std::optional<base::Id> terms_fact;
};

}  // namespace twoclocks::timeline
