#include "engine/facts/check_cash.hpp"

#include <array>
#include <string_view>

#include "engine/facts/refuse.hpp"

namespace twoclocks::facts {
namespace {

using base::Problems;
using base::Trouble;

[[nodiscard]] bool is_more(const std::optional<base::Money>& amount,
                           const std::optional<base::Money>& bound) {
    return amount && bound && amount->minor_units > bound->minor_units;
}

void check_core(const Core& core, Problems& out) {
    const base::Arg named = base::text_arg(core.name.empty() ? core.core : core.name);
    const std::array amounts{&core.charge, &core.best_credit, &core.part_credit, &core.bill};
    const base::Money* first = nullptr;
    for (const auto* const amount : amounts) {
        if (!*amount) continue;
        if (first == nullptr) first = &**amount;
        if (first->currency == (*amount)->currency) continue;
        return refuse(out, Trouble::core_currencies, {named}, "best_credit");
    }
    if (is_more(core.best_credit, core.charge))
        refuse(out, Trouble::core_credit_high, {named}, "best_credit");
    if (is_more(core.part_credit, core.best_credit))
        refuse(out, Trouble::core_part_high, {named}, "part_credit");
    const std::int32_t chances = core.part_permille.value_or(0) +
                                 core.nothing_permille.value_or(0) +
                                 core.billed_permille.value_or(0);
    if (chances > whole_permille) refuse(out, Trouble::core_chances, {named}, "part_permille");
}

void check_step(const CoreStep& step, Problems& out) {
    if (step.stage == CoreStage::graded && !step.grade)
        refuse(out, Trouble::core_grade_missing, {}, "core_grade");
    if (step.credit && step.billed) refuse(out, Trouble::core_two_ways, {}, "core_credit");
    if (step.stage == CoreStage::settled && !step.credit && !step.billed)
        refuse(out, Trouble::amount_missing, {}, "core_credit");
    if (step.stage == CoreStage::destroyed && step.reference.empty())
        refuse(out, Trouble::proof_missing, {}, "core_reference");
}

}  // namespace

Problems check_cash(const Body& body) {
    Problems out;
    if (const auto* core = std::get_if<Core>(&body.fields)) check_core(*core, out);
    if (const auto* step = std::get_if<CoreStep>(&body.fields)) check_step(*step, out);
    if (const auto* payment = std::get_if<Payment>(&body.fields); payment && !payment->amount)
        refuse(out, Trouble::amount_missing, {}, "amount");
    if (const auto* balance = std::get_if<Balance>(&body.fields); balance && !balance->amount)
        refuse(out, Trouble::amount_missing, {}, "amount");
    if (const auto* price = std::get_if<ItemPrice>(&body.fields); price && !price->price)
        refuse(out, Trouble::amount_missing, {}, "item_price");
    return out;
}

}  // namespace twoclocks::facts
