#include "engine/budget/exchange.hpp"

#include <algorithm>

#include "engine/base/scaled.hpp"

namespace twoclocks::budget {

std::optional<base::Money> turned(base::Money amount, const Rate& rate, base::MoneyRound round) {
    const std::int32_t from = base::minor_digits(rate.from);
    const std::int32_t to = base::minor_digits(rate.to);
    // What both sides of the fraction share is left out, so that neither grows too long.
    const std::int32_t shared = std::min(to, from + rate.figure.decimals);
    const auto out = base::scaled(amount,
                                  rate.figure.digits * base::power_of_ten(to - shared),
                                  base::power_of_ten(from + rate.figure.decimals - shared),
                                  round);
    if (!out) return std::nullopt;
    return base::Money{out->minor_units, rate.to};
}

const Rate* rate_on(const std::vector<Rate>& rates,
                    base::Currency from,
                    base::Currency to,
                    base::Date day) {
    const Rate* out = nullptr;
    for (const Rate& rate : rates) {
        const bool fits = rate.from == from && rate.to == to && rate.on <= day;
        if (fits && (out == nullptr || rate.on >= out->on)) out = &rate;
    }
    return out;
}

}  // namespace twoclocks::budget
