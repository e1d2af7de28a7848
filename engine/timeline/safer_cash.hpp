// Of two records of a core, of terms or of the reserve that people say otherwise, the more careful:
// less comes back, sooner and dearer, less is in hand.
#pragma once

#include "engine/facts/cash_facts.hpp"
#include "engine/facts/sale_facts.hpp"
#include "engine/timeline/safer_cost.hpp"

namespace twoclocks::timeline {

inline void join(facts::Core& into, const facts::Core& other) {
    into.charge = dearer(into.charge, other.charge);
    into.best_credit = cheaper(into.best_credit, other.best_credit);
    into.part_credit = cheaper(into.part_credit, other.part_credit);
    into.bill = dearer(into.bill, other.bill);
    // Chances that disagree may add up to more than all: without them no credit is counted.
    const bool same_chances = into.part_permille == other.part_permille &&
                              into.nothing_permille == other.nothing_permille &&
                              into.billed_permille == other.billed_permille;
    if (!same_chances) {
        into.part_permille.reset();
        into.nothing_permille.reset();
        into.billed_permille.reset();
    }
    if (into.lien.empty()) into.lien = other.lien;
    into.relief = std::max(into.relief, other.relief);
    if (into.returns_from != other.returns_from) into.returns_from = facts::CoreFrom::shipment;
    into.return_days = least(into.return_days, other.return_days);
    into.shipped_on = least(into.shipped_on, other.shipped_on);
    into.return_by = least(into.return_by, other.return_by);
    into.credit_days = greatest(into.credit_days, other.credit_days);
    into.log_card = into.log_card || other.log_card;
    into.destroy = into.destroy || other.destroy;
    into.tax = agreed(into.tax, other.tax);
    into.tax_permille = greatest(into.tax_permille, other.tax_permille);
    into.export_by = least(into.export_by, other.export_by);
    into.left_out = into.left_out && other.left_out;
}

/// How far it is at the least; what it is worth then is not known.
inline void join(facts::CoreStep& into, const facts::CoreStep& other) {
    into.stage = std::min(into.stage, other.stage);
    if (into.grade != other.grade) into.grade = facts::CoreGrade::nothing;
    into.credit = cheaper(into.credit, other.credit);
    into.billed = dearer(into.billed, other.billed);
}

inline void join(facts::PayTerm& into, const facts::PayTerm& other) {
    into.permille = std::max(into.permille, other.permille);
    into.at = std::min(into.at, other.at);
    into.after_days = least(into.after_days, other.after_days);
    into.left_out = into.left_out && other.left_out;
}

inline void join(facts::Payment& into, const facts::Payment& other) {
    into.amount = cheaper(into.amount, other.amount);
    into.back = into.back && other.back;
}

inline void join(facts::Balance& into, const facts::Balance& other) {
    into.amount = cheaper(into.amount, other.amount);
}

inline void join(facts::ReserveTerms& into, const facts::ReserveTerms& other) {
    into.hour = cheaper(into.hour, other.hour);
    into.month = cheaper(into.month, other.month);
    into.goal = dearer(into.goal, other.goal);
    into.goal_rise_permille = greatest(into.goal_rise_permille, other.goal_rise_permille);
    into.interest_permille = least(into.interest_permille, other.interest_permille);
}

inline void join(facts::Holder& into, const facts::Holder& other) {
    into.permille = std::min(into.permille, other.permille);
    into.left_out = into.left_out && other.left_out;
}

inline void join(facts::ItemPrice& into, const facts::ItemPrice& other) {
    into.price = dearer(into.price, other.price);
}

/// What anybody leaves open is open.
inline void join(facts::ClosingPoint& into, const facts::ClosingPoint& other) {
    into.settled = into.settled && other.settled;
    into.until = least(into.until, other.until);
    into.cost = dearer(into.cost, other.cost);
    if (into.payer != other.payer) into.payer = facts::ClosingPayer::open;
    into.left_out = into.left_out && other.left_out;
}

}  // namespace twoclocks::timeline
