#include "engine/budget/past_bills.hpp"

#include <algorithm>

namespace twoclocks::budget {
namespace {

using timeline::CostLineState;
using timeline::PaymentState;

[[nodiscard]] const CostLineState* line_of(const std::vector<CostLineState>& lines,
                                           const std::string& key) {
    const auto found = std::find_if(
        lines.begin(), lines.end(), [&](const CostLineState& one) { return one.said.line == key; });
    return found == lines.end() ? nullptr : &*found;
}

}  // namespace

const CostLineState* past_line(const facts::Payment& payment, const timeline::MoneyState& money) {
    const bool is_new = line_of(money.lines, payment.line) != nullptr;
    return is_new ? nullptr : line_of(money.past, payment.line);
}

std::vector<PastBill> past_bills(const timeline::MoneyState& money,
                                 Setting setting,
                                 base::Problems& faults) {
    setting.days = {};
    std::vector<PastBill> out;
    for (const CostLineState& line : money.past) {
        PastBill bill;
        bool is_known = true;
        bool any = false;
        const auto take = [&](const PaymentState& one) {
            if (one.said.line != line.said.line || !one.said.amount) return;
            const auto amount = in_home(*one.said.amount, setting, base::MoneyRound::down, faults);
            any = true;
            is_known = is_known && amount;
            bill.paid += one.said.back ? -amount.value_or(0) : amount.value_or(0);
        };
        for (const PaymentState& one : money.past_payments)
            take(one);
        for (const PaymentState& one : money.payments)
            if (past_line(one.said, money) != nullptr) take(one);
        if (!any || !is_known) continue;  // the fault says which rate is missing
        const CostedLine costed = worked_out(line, setting);
        if (costed.known) bill.whole = costed.home_gross.likely;
        if (bill.whole && *bill.whole <= bill.paid) continue;
        bill.name = name_of(line.said);
        bill.fact = line.fact;
        out.push_back(std::move(bill));
    }
    return out;
}

}  // namespace twoclocks::budget
