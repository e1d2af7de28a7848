// What is recorded of the money of a campaign, worked out.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/id.hpp"
#include "engine/facts/cash_facts.hpp"
#include "engine/facts/price_rows.hpp"
#include "engine/facts/sale_facts.hpp"

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

/// What happened to a core on a day.
struct CoreStepState {
    facts::CoreStep said;
    base::Date on;
    base::Id fact;
};

/// One core.
struct CoreState {
    facts::Core said;
    base::Date on;
    base::Id fact;
    std::vector<CoreStepState> steps{};    // by day
    std::optional<base::Date> released{};  // the overhaul it belongs to is over since this day
};

/// One share of a price.
struct PayTermState {
    facts::PayTerm said;
    base::Date on;
    base::Id fact;
};

/// One payment.
struct PaymentState {
    facts::Payment said;
    base::Date on;
    base::Id fact;
};

/// What was in an account on a day.
struct BalanceState {
    facts::Balance said;
    base::Date on;
    base::Id fact;
};

/// One share in the aircraft.
struct HolderState {
    facts::Holder said;
    base::Date on;
    base::Id fact;
};

/// What an item costs each time.
struct ItemPriceState {
    base::Id item;
    facts::ItemPrice said;
    base::Date on;
    base::Id fact;
};

/// One point of the closing list.
struct ClosingState {
    facts::ClosingPoint said;
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
    std::vector<CoreState> cores;             // one a key, without those left out
    std::vector<PayTermState> pay_terms;      // likewise
    std::vector<PaymentState> payments;       // of this campaign, by day
    std::vector<PaymentState> past_payments;  // before the last overhaul, by day
    std::vector<BalanceState> balances;       // by day
    facts::ReserveTerms reserve;
    std::optional<base::Date> reserve_on;
    std::optional<base::Id> reserve_fact;
    std::vector<HolderState> holders;         // one a name, without those left out
    std::vector<ItemPriceState> item_prices;  // one an item
    std::vector<ClosingState> closing;        // one a key, without those left out
};

}  // namespace twoclocks::timeline
