#include "engine/budget/reserve.hpp"

#include <algorithm>

#include "engine/base/money.hpp"
#include "engine/base/order.hpp"
#include "engine/base/permille.hpp"
#include "engine/base/real.hpp"
#include "engine/budget/growth.hpp"
#include "engine/plan/moment.hpp"

namespace twoclocks::budget {
namespace {

using base::Date;

constexpr std::int64_t seconds_an_hour = 3'600;
constexpr std::int32_t year_months = 12;

/// (1 + rate) to the power of so many months.
[[nodiscard]] double compound(double rate, std::int32_t months) {
    return rate == 0 ? 1 : base::exp_fixed(base::log_fixed(1 + rate) * static_cast<double>(months));
}

/// What deposits of one at the end of each month come to.
[[nodiscard]] double of_deposits(double rate, std::int32_t months) {
    return rate == 0 ? static_cast<double>(months) : (compound(rate, months) - 1) / rate;
}

/// A sum that an amount can hold.
[[nodiscard]] std::optional<std::int64_t> bounded(double sum) {
    const std::int64_t out = plan::whole_from(sum);
    const bool is_held = out <= base::most_minor_units && out >= -base::most_minor_units;
    return is_held ? std::optional{out} : std::nullopt;
}

/// Full months from one day to another, 0 where it is over.
[[nodiscard]] std::int32_t full_months(Date from, Date to) {
    if (to <= from) return 0;
    const base::CivilDay start = base::civil(from);
    const base::CivilDay end = base::civil(to);
    std::int32_t out = (end.year - start.year) * year_months +
                       static_cast<std::int32_t>(end.month) -
                       static_cast<std::int32_t>(start.month);
    while (out > 0 && base::add_months(from, out, base::CalendarRule::exact) > to)
        --out;
    return out;
}

/// So much for each hour, rounded down.
[[nodiscard]] double for_hours(std::int64_t hourly, base::FlightTime hours) {
    return static_cast<double>(hourly) * static_cast<double>(hours.seconds) /
           static_cast<double>(seconds_an_hour);
}

/// A sum over hours, rounded up.
[[nodiscard]] std::optional<std::int64_t> over_hours(double sum, base::FlightTime hours) {
    if (hours.seconds <= 0) return std::nullopt;
    return bounded(sum * static_cast<double>(seconds_an_hour) / static_cast<double>(hours.seconds));
}

void find_ways(const ReserveAsked& asked, double rate, ReserveWorked& out) {
    if (!asked.hand) return;
    const std::int64_t goal = *asked.goal;
    const std::int32_t left = out.months_left;
    if (const auto needed = needed_today(goal, rate, left))
        out.once = std::max<std::int64_t>(0, *needed - *asked.hand);
    out.monthly = monthly_deposit(goal, *asked.hand, rate, left);
    if (out.monthly && asked.to_fly)
        out.hourly = over_hours(static_cast<double>(*out.monthly) * left, *asked.to_fly);
    if (const auto grown = grown_to(*asked.hand, 0, rate, left))
        out.at_the_end = std::max<std::int64_t>(0, goal - *grown);
}

/// What comes together if it goes on as it is set aside now.
void find_course(const ReserveAsked& asked, double rate, ReserveWorked& out) {
    const bool by_hour = asked.hour && asked.to_fly;
    if (!asked.hand || (!by_hour && !asked.month)) return;
    const std::int32_t left = out.months_left;
    double deposit = static_cast<double>(asked.month.value_or(0));
    if (by_hour && left > 0) deposit += for_hours(*asked.hour, *asked.to_fly) / left;
    const std::int64_t cut = -plan::whole_from(-deposit);
    out.will_be = grown_to(*asked.hand, cut, rate, left);
}

}  // namespace

std::optional<std::int64_t> monthly_deposit(std::int64_t goal,
                                            std::int64_t hand,
                                            double rate,
                                            std::int32_t months) {
    if (months <= 0 || rate <= -1) return std::nullopt;
    const double missing =
        static_cast<double>(goal) - static_cast<double>(hand) * compound(rate, months);
    if (missing <= 0) return 0;
    return bounded(missing / of_deposits(rate, months));
}

std::optional<std::int64_t> grown_to(std::int64_t hand,
                                     std::int64_t deposit,
                                     double rate,
                                     std::int32_t months) {
    if (rate <= -1) return std::nullopt;
    const double sum = static_cast<double>(hand) * compound(rate, months) +
                       static_cast<double>(deposit) * of_deposits(rate, months);
    const auto out = bounded(-sum);
    return out ? std::optional{-*out} : std::nullopt;
}

std::optional<std::int64_t> needed_today(std::int64_t goal, double rate, std::int32_t months) {
    if (rate <= -1) return std::nullopt;
    return bounded(static_cast<double>(goal) / compound(rate, months));
}

ReserveWorked work_out(const ReserveAsked& asked) {
    ReserveWorked out;
    if (!asked.due) return out;
    out.months_left = full_months(asked.today, *asked.due);
    if (asked.since) out.months_gone = full_months(*asked.since, asked.today);
    if (!asked.goal) return out;
    const double rate = monthly_rate(asked.interest_permille);
    if (asked.since) {
        const std::int32_t whole = full_months(*asked.since, *asked.due);
        const std::int32_t gone = std::min(out.months_gone, whole);
        const double part = whole == 0 ? 1 : of_deposits(rate, gone) / of_deposits(rate, whole);
        out.should_be = bounded(static_cast<double>(*asked.goal) * part);
        if (out.should_be && asked.hand) out.shortfall = *out.should_be - *asked.hand;
    }
    find_ways(asked, rate, out);
    find_course(asked, rate, out);
    if (!asked.life || asked.life->seconds <= 0) return out;
    out.linear_hour = over_hours(static_cast<double>(*asked.goal), *asked.life);
    if (!out.linear_hour || !asked.to_fly || !asked.flown) return out;
    const auto comes = bounded(-for_hours(*out.linear_hour, *asked.flown + *asked.to_fly));
    if (comes) out.linear_short = std::max<std::int64_t>(0, *asked.goal + *comes);
    return out;
}

std::vector<std::int64_t> in_shares(std::int64_t sum, const std::vector<std::int32_t>& permille) {
    struct Rest {
        std::size_t place{0};
        std::int64_t rest{0};
    };

    std::vector<std::int64_t> out;
    std::vector<Rest> rests;
    std::int64_t told = 0;
    std::int64_t taken = 0;
    for (const std::int32_t share : permille) {
        // Apart, so that no product is too long.
        const std::int64_t thousands = sum / base::whole_permille;
        const std::int64_t rest = sum % base::whole_permille * share;
        out.push_back(thousands * share + rest / base::whole_permille);
        rests.push_back({out.size() - 1, rest % base::whole_permille});
        taken += out.back();
        told += share;
    }
    if (told != base::whole_permille) return out;
    base::sort_stably(rests,
                      [](const Rest& one, const Rest& other) { return one.rest > other.rest; });
    for (std::size_t turn = 0; taken < sum && turn < rests.size(); ++turn, ++taken)
        ++out[rests[turn].place];
    return out;
}

std::vector<timeline::BalanceState> last_balances(
    const std::vector<timeline::BalanceState>& balances) {
    std::vector<timeline::BalanceState> out;
    for (const timeline::BalanceState& balance : balances) {
        const auto found = std::find_if(out.begin(), out.end(), [&](const auto& one) {
            return one.said.account == balance.said.account;
        });
        if (found == out.end())
            out.push_back(balance);
        else
            *found = balance;
    }
    return out;
}

}  // namespace twoclocks::budget
