// One line of an estimate, from what is recorded to what is paid.
//
//   quantity x price -> the price of the day it is paid -> duty -> tax -> home currency
//
// The hard questions.
//   From when does a price rise? From its own date to the day it is paid, at the rate recorded for
//   its group; not at all where it still holds on the day on which it is agreed on, the order or
//   the booking, and is not a price of the day of shipment. Without a rate it stays, and without a
//   day nothing can be said of it.
//   What is tax on? On the price and the duty, as on imports. Tax that comes back is paid first: it
//   counts in the gross and is taken off again. Under a reverse charge nothing is paid.
//   Everything is rounded up but tax, which has a rule of its own, and what comes back, which is
//   rounded down. A line in another currency is turned at the end, once for the gross and once for
//   what comes back.
#pragma once

#include <string>

#include "engine/budget/cost_groups.hpp"
#include "engine/budget/exchange.hpp"
#include "engine/timeline/money_state.hpp"

namespace twoclocks::budget {

/// Three points of an amount.
struct Points {
    std::int64_t low{0};
    std::int64_t likely{0};
    std::int64_t high{0};

    bool operator==(const Points& other) const {
        return low == other.low && likely == other.likely && high == other.high;
    }
};

/// What every line of an estimate is worked out by.
struct Setting {
    base::Date today;
    base::Currency home;
    std::vector<Rate> rates;
    std::vector<timeline::PriceListState> lists;
    facts::CostTerms terms;
    PayDays days;
    std::vector<timeline::CoreState> cores{};  // of the overhaul
};

/// A line worked out; amounts in minor units.
struct CostedLine {
    facts::CostLine said;
    base::Date on;
    base::Id fact;
    bool counts{false};  // it is part of the estimate
    bool known{false};   // and its sum could be worked out
    base::Currency currency;
    Points price;  // quantity times price
    Points risen;  // on the day it is paid
    Points duty;
    Points tax;
    Points tax_back;
    Points home_gross;  // in the home currency
    Points home_back;
    std::optional<base::Date> paid_on;
    std::int32_t rise_permille{0};  // a year
    std::int32_t rise_days{0};
    std::optional<Rate> rate;  // where it was turned
    bool from_list{false};     // its price is that of a list
    base::Problems notes;      // what is missing, and what to look at

    [[nodiscard]] Points gross() const {
        return {risen.low + duty.low + tax.low,
                risen.likely + duty.likely + tax.likely,
                risen.high + duty.high + tax.high};
    }
};

/// An amount in the home currency, by the rate of the day; nothing, and a fault, where there is
/// none or the sum would be too great.
/// Units: minor units. Errors: rate_missing, sum_beyond. Source: our choice, no rate is inverted.
[[nodiscard]] std::optional<std::int64_t> in_home(base::Money amount,
                                                  const Setting& setting,
                                                  base::MoneyRound round,
                                                  base::Problems& faults);

/// What a line is called in a problem: its name, or its key.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Arg name_of(const facts::CostLine& line);

/// The price of an article in the last version of its list; null where it has none.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const facts::PriceRow* listed(const facts::CostLine& line,
                                            const std::vector<timeline::PriceListState>& lists);

/// Works a line out.
/// Units: minor units. Errors: `notes`, and `known` false where there is no sum: price_missing,
/// article_missing, rate_missing, sum_beyond; cautions: price_lapsed, rate_old, tax_unknown,
/// relief_over. Source: our choice; tax and duty by the line's own record.
[[nodiscard]] CostedLine worked_out(const timeline::CostLineState& line, const Setting& setting);

}  // namespace twoclocks::budget
