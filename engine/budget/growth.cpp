#include "engine/budget/growth.hpp"

#include "engine/base/permille.hpp"
#include "engine/base/real.hpp"
#include "engine/plan/moment.hpp"

namespace twoclocks::budget {
namespace {

constexpr double growth_year = 365;
constexpr double months_a_year = 12;

[[nodiscard]] double power(std::int32_t permille, double years) {
    const double grown = 1 + static_cast<double>(permille) / base::whole_permille;
    return permille == 0 ? 1 : base::exp_fixed(base::log_fixed(grown) * years);
}

}  // namespace

double growth(std::int32_t permille, std::int32_t days) {
    return power(permille, static_cast<double>(days) / growth_year);
}

std::int64_t grown(std::int64_t sum, std::int32_t permille, std::int32_t days) {
    return plan::whole_from(static_cast<double>(sum) * growth(permille, days));
}

double monthly_rate(std::int32_t permille) {
    return power(permille, 1 / months_a_year) - 1;
}

}  // namespace twoclocks::budget
