#include "engine/budget/cost_line.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/real.hpp"
#include "engine/base/scaled.hpp"
#include "engine/budget/cost_groups.hpp"
#include "engine/plan/moment.hpp"

namespace twoclocks::budget {
namespace {

using base::Money;
using base::MoneyRound;
using base::Trouble;
using facts::CostLine;
using facts::DutyRelief;
using facts::TaxCase;

constexpr std::int64_t thousand = 1'000;
constexpr std::int32_t days_a_year = 365;
constexpr std::int32_t usual_rate_days = 30;

void note(CostedLine& line, Trouble code, std::vector<base::Arg> args, base::Severity severity) {
    base::Problem problem = base::trouble(code, std::move(args));
    problem.severity = severity;
    line.notes.push_back(std::move(problem));
}

void refuse(CostedLine& line, Trouble code, std::vector<base::Arg> args) {
    note(line, code, std::move(args), base::Severity::refused);
}

void warn(CostedLine& line, Trouble code, std::vector<base::Arg> args) {
    note(line, code, std::move(args), base::Severity::caution);
}

/// One of the three points through a step that may go beyond what an amount can be.
template <class Step>
[[nodiscard]] bool each_point(const Points& from, Points& to, Step step) {
    const auto one = [&](std::int64_t value, std::int64_t& out) {
        const std::optional<std::int64_t> made = step(value);
        out = made.value_or(0);
        return made.has_value();
    };
    return one(from.low, to.low) && one(from.likely, to.likely) && one(from.high, to.high);
}

[[nodiscard]] std::optional<std::int64_t> units_of(const std::optional<Money>& money) {
    return money ? std::optional{money->minor_units} : std::nullopt;
}

[[nodiscard]] std::optional<std::int64_t> share(std::int64_t amount,
                                                std::int64_t permille,
                                                MoneyRound round) {
    return units_of(base::scaled({amount, {}}, permille, thousand, round));
}

/// The three prices of one: those recorded, or that of the list.
[[nodiscard]] bool take_price(const CostLine& said, const Setting& setting, CostedLine& line) {
    if (!said.price) {
        const facts::PriceRow* row = listed(said, setting.lists);
        if (row == nullptr) {
            const bool is_listed = !said.list.empty() && !said.article.empty();
            if (is_listed)
                refuse(line,
                       Trouble::article_missing,
                       {base::text_arg(said.article), base::text_arg(said.list)});
            else
                refuse(line, Trouble::price_missing, {name_of(said)});
            return false;
        }
        line.from_list = true;
        line.currency = row->price.currency;
        line.price = {row->price.minor_units, row->price.minor_units, row->price.minor_units};
        return true;
    }
    line.currency = said.price->currency;
    line.price = {said.low_price.value_or(*said.price).minor_units,
                  said.price->minor_units,
                  said.high_price.value_or(*said.price).minor_units};
    return true;
}

[[nodiscard]] bool times_quantity(const CostLine& said, CostedLine& line) {
    const std::int64_t likely = said.quantity.value_or(static_cast<std::int32_t>(thousand));
    const auto times = [&](std::int64_t price, std::int64_t quantity, std::int64_t& out) {
        const auto made = base::scaled({price, {}}, quantity, thousand, MoneyRound::up);
        out = units_of(made).value_or(0);
        return made.has_value();
    };
    const Points one = line.price;
    const bool sound = times(one.low,
                             said.low_quantity.value_or(static_cast<std::int32_t>(likely)),
                             line.price.low) &&
                       times(one.likely, likely, line.price.likely) &&
                       times(one.high,
                             said.high_quantity.value_or(static_cast<std::int32_t>(likely)),
                             line.price.high);
    return sound;
}

/// When the price was made: that of a list on the day of its version.
[[nodiscard]] base::Date priced_on(const CostedLine& line, const Setting& setting) {
    if (line.from_list) {
        base::Date out = line.on;
        for (const timeline::PriceListState& list : setting.lists)
            if (list.list == line.said.list) out = list.on;
        return out;
    }
    return line.said.price_on.value_or(line.on);
}

[[nodiscard]] bool rise(const Setting& setting, CostedLine& line) {
    line.risen = line.price;
    const CostLine& said = line.said;
    line.paid_on = paid_on(said.group, setting.days);
    const base::Date agreed = agreed_on(said.group, setting.days).value_or(setting.today);
    const bool is_held = said.price_until && *said.price_until >= agreed;
    if (said.price_until && *said.price_until < std::min(agreed, setting.today))
        warn(line, Trouble::price_lapsed, {name_of(said), base::day_arg(*said.price_until)});
    if (!line.paid_on) return true;
    const std::int32_t days = line.paid_on->day_number - priced_on(line, setting).day_number;
    const std::int32_t permille = rise_of(said.group, setting.terms).value_or(0);
    if ((is_held && !said.at_shipment) || days <= 0 || permille == 0) return true;
    line.rise_days = days;
    line.rise_permille = permille;
    const double years = static_cast<double>(days) / days_a_year;
    const double grown = 1 + static_cast<double>(permille) / static_cast<double>(thousand);
    const double factor = base::exp_fixed(base::log_fixed(grown) * years);
    return each_point(line.price, line.risen, [&](std::int64_t amount) {
        const std::int64_t out = plan::whole_from(static_cast<double>(amount) * factor);
        return out <= base::most_minor_units ? std::optional{out} : std::nullopt;
    });
}

[[nodiscard]] bool add_duty(const Setting& setting, CostedLine& line) {
    const CostLine& said = line.said;
    if (said.duty_permille.value_or(0) == 0) return true;
    if (said.relief != DutyRelief::none) {
        const base::Date needed = line.paid_on.value_or(setting.today);
        if (!said.relief_until || *said.relief_until >= needed) return true;
        warn(line, Trouble::relief_over, {name_of(said), base::day_arg(*said.relief_until)});
    }
    return each_point(line.risen, line.duty, [&](std::int64_t amount) {
        return share(amount, *said.duty_permille, MoneyRound::up);
    });
}

[[nodiscard]] MoneyRound rule_of(facts::TaxRound round) {
    switch (round) {
        case facts::TaxRound::half_up:
            return MoneyRound::half_up;
        case facts::TaxRound::up:
            return MoneyRound::up;
        case facts::TaxRound::down:
            return MoneyRound::down;
    }
    return MoneyRound::up;
}

[[nodiscard]] bool add_tax(const Setting& setting, CostedLine& line) {
    const CostLine& said = line.said;
    if (said.tax == TaxCase::none || said.tax == TaxCase::reverse_charge) return true;
    if (said.tax == TaxCase::unknown || !said.tax_permille)
        warn(line, Trouble::tax_unknown, {name_of(said)});
    const MoneyRound rule = rule_of(setting.terms.tax_round);
    const auto taxed = [&](std::int64_t amount, std::int64_t duty, std::int64_t& out) {
        const auto tax = share(amount + duty, said.tax_permille.value_or(0), rule);
        out = tax.value_or(0);
        return tax.has_value();
    };
    const bool sound = taxed(line.risen.low, line.duty.low, line.tax.low) &&
                       taxed(line.risen.likely, line.duty.likely, line.tax.likely) &&
                       taxed(line.risen.high, line.duty.high, line.tax.high);
    if (said.tax == TaxCase::recoverable) line.tax_back = line.tax;
    return sound;
}

[[nodiscard]] bool turn(const Setting& setting, CostedLine& line) {
    line.home_gross = line.gross();
    line.home_back = line.tax_back;
    if (line.currency == setting.home) return true;
    const Rate* rate = rate_on(setting.rates, line.currency, setting.home, setting.today);
    if (rate == nullptr) {
        refuse(line,
               Trouble::rate_missing,
               {base::text_arg(base::print_currency(line.currency)),
                base::text_arg(base::print_currency(setting.home))});
        return false;
    }
    line.rate = *rate;
    const std::int32_t age = setting.today.day_number - rate->on.day_number;
    if (age > setting.terms.rate_days.value_or(usual_rate_days))
        warn(line,
             Trouble::rate_old,
             {base::text_arg(base::print_currency(line.currency)),
              base::text_arg(base::print_currency(setting.home)),
              base::day_arg(rate->on)});
    const auto by = [&](MoneyRound round) {
        return [&, round](std::int64_t amount) {
            return units_of(turned({amount, line.currency}, *rate, round));
        };
    };
    if (each_point(line.gross(), line.home_gross, by(MoneyRound::up)) &&
        each_point(line.tax_back, line.home_back, by(MoneyRound::down)))
        return true;
    refuse(line, Trouble::sum_beyond, {name_of(line.said)});
    return false;
}

}  // namespace

std::optional<std::int64_t> in_home(Money amount,
                                    const Setting& setting,
                                    MoneyRound round,
                                    base::Problems& faults) {
    if (amount.currency == setting.home) return amount.minor_units;
    const Rate* rate = rate_on(setting.rates, amount.currency, setting.home, setting.today);
    if (rate == nullptr) {
        faults.push_back(base::trouble(Trouble::rate_missing,
                                       {base::text_arg(base::print_currency(amount.currency)),
                                        base::text_arg(base::print_currency(setting.home))}));
        return std::nullopt;
    }
    const auto out = turned(amount, *rate, round);
    if (!out) faults.push_back(base::trouble(Trouble::sum_beyond, {base::money_arg(amount)}));
    return units_of(out);
}

base::Arg name_of(const CostLine& line) {
    return base::text_arg(line.name.empty() ? line.line : line.name);
}

const facts::PriceRow* listed(const CostLine& line,
                              const std::vector<timeline::PriceListState>& lists) {
    if (line.list.empty() || line.article.empty()) return nullptr;
    const timeline::PriceListState* last = nullptr;
    for (const timeline::PriceListState& list : lists)
        if (list.list == line.list) last = &list;  // by day
    if (last == nullptr) return nullptr;
    for (const facts::PriceRow& row : last->rows)
        if (row.article == line.article) return &row;
    return nullptr;
}

CostedLine worked_out(const timeline::CostLineState& line, const Setting& setting) {
    CostedLine out;
    out.said = line.said;
    out.on = line.on;
    out.fact = line.fact;
    out.counts = true;
    if (!take_price(line.said, setting, out)) return out;
    const bool sound = times_quantity(line.said, out) && rise(setting, out) &&
                       add_duty(setting, out) && add_tax(setting, out);
    if (!sound) {
        refuse(out, Trouble::sum_beyond, {name_of(line.said)});
        return out;
    }
    out.known = turn(setting, out);
    return out;
}

}  // namespace twoclocks::budget
