// Of two records of money that people say otherwise, the dearer. It decides nothing about flying.
#pragma once

#include "engine/facts/cost_facts.hpp"
#include "engine/timeline/safer_plan.hpp"

namespace twoclocks::timeline {

inline void join(facts::CostLine& into, const facts::CostLine& other) {
    // Two lines that disagree in currency or order have no dearest of each point: the first stays.
    const bool is_alike =
        into.price && other.price && into.price->currency == other.price->currency;
    if (is_alike) {
        into.low_price = dearer(into.low_price, other.low_price);
        into.price = dearer(into.price, other.price);
        into.high_price = dearer(dearer(into.high_price, other.high_price), into.price);
    }
    into.tax = agreed(into.tax, other.tax);
    into.tax_permille = greatest(into.tax_permille, other.tax_permille);
    into.duty_permille = greatest(into.duty_permille, other.duty_permille);
    if (into.relief != other.relief) into.relief = facts::DutyRelief::none;
    into.relief_until = least(into.relief_until, other.relief_until);
    into.price_until = least(into.price_until, other.price_until);
    into.at_shipment = into.at_shipment || other.at_shipment;
    into.deposit_back = into.deposit_back && other.deposit_back;
    into.left_out = into.left_out && other.left_out;
}

inline void join(facts::CostTerms& into, const facts::CostTerms& other) {
    into.linked_permille = greatest(into.linked_permille, other.linked_permille);
    for (const auto rise : {&facts::CostTerms::kit_rise_permille,
                            &facts::CostTerms::labour_rise_permille,
                            &facts::CostTerms::engine_rise_permille,
                            &facts::CostTerms::other_rise_permille})
        into.*rise = greatest(into.*rise, other.*rise);
    if (into.tax_round != other.tax_round) into.tax_round = facts::TaxRound::up;
    into.rate_days = least(into.rate_days, other.rate_days);
}

}  // namespace twoclocks::timeline
