#include "engine/views/cash_view.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/budget/from_records.hpp"
#include "engine/budget/reserve.hpp"
#include "engine/views/cash_curve.hpp"
#include "engine/views/money_estimate.hpp"
#include "engine/views/record_cash.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using budget::CashCourse;
using budget::Flow;
using budget::FlowKind;

constexpr std::array paces{budget::Pace::early, budget::Pace::likely, budget::Pace::late};
constexpr std::size_t likely_place = 1;

/// What the page is put together from.
struct Cash {
    const Assessed& aircraft;
    budget::Setting setting;
    budget::Estimate estimate;
    std::optional<std::int64_t> known_hand{};
    std::int64_t hand{0};
    std::array<CashCourse, paces.size()> courses{};

    [[nodiscard]] const CashCourse& likely() const { return courses[likely_place]; }

    [[nodiscard]] base::Arg money(std::int64_t minor_units) const {
        return base::money_arg({minor_units, setting.home});
    }

    [[nodiscard]] base::Arg cost(std::int64_t minor_units) const {
        return base::cost_arg({minor_units, setting.home});
    }
};

[[nodiscard]] Message name_of(const Flow& flow) {
    const Word words[] = {Word::cash_share,
                          Word::cash_rest,
                          Word::cash_tax_back,
                          Word::cash_core_credit,
                          Word::cash_paid};
    const bool is_named = flow.kind == FlowKind::share && !flow.term.empty();
    return {is_named ? Word::cash_share_named : words[static_cast<std::size_t>(flow.kind)],
            {flow.name, base::text_arg(flow.term)}};
}

/// For what it moves, when, and how much; below nothing where it goes.
[[nodiscard]] SumsPair pair_of(const Flow& flow, const Cash& cash) {
    const bool is_with = flow.kind == FlowKind::share && flow.at;
    const base::Arg day = flow.on ? base::day_arg(*flow.on) : base::word_arg(Word::cash_no_day);
    if (flow.was_due)
        return {name_of(flow),
                {Word::record_of, {cash.money(flow.amount)}},
                {Word::cash_was_due, {base::day_arg(*flow.was_due)}}};
    std::vector<base::Arg> when{day};
    if (is_with) when.push_back(base::word_arg(paid_at_word(*flow.at)));
    return {name_of(flow),
            {Word::record_of, {cash.money(flow.amount)}},
            {is_with ? Word::cash_on_with : Word::record_of, std::move(when)}};
}

/// The lowest point, and every movement up to it.
[[nodiscard]] Figure lowest_figure(const Cash& cash) {
    const CashCourse& course = cash.likely();
    Figure out;
    out.text = course.lowest_on
                   ? Message{Word::cash_lowest,
                             {cash.money(course.lowest), base::day_arg(*course.lowest_on)}}
                   : Message{Word::cash_never_lower, {cash.money(course.lowest)}};
    out.why = {{Word::why_cash_lowest, {}}, out.text, {}};
    add(out.why,
        Word::why_cash_hand,
        {cash.known_hand ? cash.money(cash.hand) : base::word_arg(Word::not_known)});
    for (const Flow& flow : course.flows) {
        if (!flow.on || flow.kind == FlowKind::paid) continue;
        const bool is_after =
            !course.lowest_on || *course.lowest_on < *flow.on ||
            (*course.lowest_on == *flow.on && flow.amount > 0);  // the lowest comes before it
        if (is_after) break;
        add(out.why,
            Word::why_cash_flow,
            {base::day_arg(*flow.on), flow.name, cash.money(flow.amount)},
            flow.fact);
    }
    add(out.why, Word::why_cash_rule, {});
    add_sum(out.why, Word::why_cash_sum, {cash.money(course.lowest)});
    return out;
}

[[nodiscard]] Figure present_figure(const Cash& cash) {
    Figure out;
    const auto interest = cash.aircraft.state.campaign.costs.interest_permille;
    const auto present = interest
                             ? budget::present_cost(cash.likely(), cash.setting.today, *interest)
                             : std::nullopt;
    out.text = {Word::cash_present,
                {present ? cash.cost(*present) : base::word_arg(Word::not_known)}};
    out.why = {{Word::why_cash_present, {}}, out.text, {}};
    if (!interest) add(out.why, Word::why_cash_no_interest, {});
    if (interest) add(out.why, Word::why_cash_discount, {base::short_decimal_arg(*interest, 1)});
    if (interest && !present) add(out.why, Word::why_cash_undated, {});
    return out;
}

[[nodiscard]] Figure week_figure(const Cash& cash) {
    const facts::PlanCosts& costs = cash.aircraft.state.campaign.costs;
    const budget::WeekCost week =
        budget::week_cost(cash.estimate, cash.likely(), costs, cash.setting);
    Figure out;
    const std::int64_t sum = week.standing.value_or(0) + week.rise + week.interest.value_or(0);
    out.text = {week.standing ? Word::cash_week : Word::cash_week_without, {cash.cost(sum)}};
    out.why = {{Word::why_cash_week, {}}, out.text, {}};
    const auto part = [&](Word word, std::optional<std::int64_t> amount) {
        add(out.why, word, {amount ? cash.money(*amount) : base::word_arg(Word::not_known)});
    };
    part(Word::why_cash_standing, week.standing);
    part(Word::why_cash_rise, week.rise);
    part(Word::why_cash_interest, week.interest);
    add_sum(out.why, Word::why_cash_week_sum, {cash.money(sum)});
    return out;
}

void add_paces(const Cash& cash, SumsView& view) {
    constexpr std::array words{Word::cash_if_early, Word::cash_if_likely, Word::cash_if_late};
    SumsBlock block;
    block.title = {Word::cash_in_hand, {}};
    block.curve = cash_curve(cash.courses, cash.hand, cash.setting.today, cash.setting.home);
    for (std::size_t place = 0; place < words.size(); ++place) {
        const CashCourse& course = cash.courses[place];
        block.lines.push_back({words[place],
                               {cash.money(course.lowest),
                                base::day_arg(course.lowest_on.value_or(cash.setting.today)),
                                cash.money(course.last)}});
    }
    if (block.curve) view.blocks.push_back(std::move(block));
}

void add_months(const Cash& cash, SumsView& view) {
    SumsBlock block;
    block.title = {Word::cash_months, {}};
    block.lines.push_back({Word::cash_months_rule, {}});
    for (const budget::CashMonth& month : cash.likely().months) {
        if (month.goes == 0 && month.comes == 0) continue;
        Message below{Word::cash_month, {cash.money(month.goes), cash.money(month.comes)}};
        if (month.comes == 0) below = {Word::cash_month_out, {cash.money(month.goes)}};
        if (month.goes == 0) below = {Word::cash_month_in, {cash.money(month.comes)}};
        block.pairs.push_back({{Word::record_of, {base::month_arg(month.first)}},
                               {Word::record_of, {cash.money(month.left)}},
                               std::move(below)});
    }
    if (!block.pairs.empty()) view.blocks.push_back(std::move(block));
}

void add_flows(const Cash& cash, SumsView& view) {
    SumsBlock ahead;
    ahead.title = {Word::cash_ahead, {}};
    SumsBlock paid;
    paid.title = {Word::cash_moved, {}};
    for (const Flow& flow : cash.likely().flows)
        (flow.kind == FlowKind::paid ? paid : ahead).pairs.push_back(pair_of(flow, cash));
    if (!ahead.pairs.empty()) view.blocks.push_back(std::move(ahead));
    if (!paid.pairs.empty()) view.blocks.push_back(std::move(paid));
}

void add_terms(const Cash& cash, SumsView& view) {
    SumsBlock block;
    block.title = {Word::cash_terms, {}};
    block.opens = SumsOpens::pay_term;
    for (const timeline::PayTermState& term : cash.aircraft.state.money.pay_terms)
        block.rows.push_back(
            {term.said.term, cash_what(term.said), {Word::blank, {}}, cash_more(term.said), {}});
    if (!block.rows.empty()) view.blocks.push_back(std::move(block));
}

}  // namespace

std::optional<std::int64_t> in_hand(const Assessed& aircraft,
                                    const budget::Setting& setting,
                                    base::Problems& faults) {
    const timeline::MoneyState& money = aircraft.state.money;
    if (money.balances.empty()) return std::nullopt;
    std::int64_t out = 0;
    bool is_known = true;
    for (const timeline::BalanceState& balance : budget::last_balances(money.balances)) {
        if (!balance.said.amount) continue;
        const auto amount =
            budget::in_home(*balance.said.amount, setting, base::MoneyRound::down, faults);
        is_known = is_known && amount;
        out += amount.value_or(0);
    }
    const auto is_past = [&](const timeline::PaymentState* one) {
        return std::any_of(money.past_payments.begin(),
                           money.past_payments.end(),
                           [&](const timeline::PaymentState& past) { return &past == one; });
    };
    for (const timeline::PaymentState* const one : paid_since(money)) {
        base::Problems told_with_flows;
        const auto amount = budget::in_home(*one->said.amount,
                                            setting,
                                            base::MoneyRound::down,
                                            is_past(one) ? faults : told_with_flows);
        is_known = is_known && amount;
        out += one->said.back ? amount.value_or(0) : -amount.value_or(0);
    }
    return is_known ? std::optional{out} : std::nullopt;
}

std::vector<const timeline::PaymentState*> paid_since(const timeline::MoneyState& money) {
    std::vector<const timeline::PaymentState*> out;
    if (money.balances.empty()) return out;
    for (const auto* const payments : {&money.past_payments, &money.payments})
        for (const timeline::PaymentState& one : *payments)
            if (one.said.amount && one.on > money.balances.back().on) out.push_back(&one);
    return out;
}

SumsView make_cash_view(const Assessed& aircraft, const Living& living) {
    SumsView view;
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    view.of = SumsOf::cash;
    const budget::PayDays days = pay_days(living);
    Cash cash{aircraft,
              budget::setting_of(aircraft.state, aircraft.today, days),
              estimate_of(aircraft, asked_of(aircraft), days, 0)};
    cash.known_hand = in_hand(aircraft, cash.setting, view.faults);
    cash.hand = cash.known_hand.value_or(0);
    const timeline::MoneyState& money = aircraft.state.money;
    for (std::size_t place = 0; place < paces.size(); ++place) {
        budget::Setting setting = cash.setting;
        setting.days = pay_days(living, paces[place]);
        base::Problems faults;
        cash.courses[place] = budget::cash_course(cash.estimate, money, setting, cash.hand, faults);
        if (place == likely_place)
            view.faults.insert(view.faults.end(), faults.begin(), faults.end());
    }
    if (cash.likely().flows.empty()) view.missing = {Word::cash_nothing, {}};
    view.top = {present_figure(cash), week_figure(cash), lowest_figure(cash)};
    if (aircraft.state.money.balances.empty()) view.told.push_back({Word::cash_no_account, {}});
    if (cash.likely().undated != 0)
        view.told.push_back({Word::cash_undated, {cash.money(-cash.likely().undated)}});
    if (cash.estimate.missing > 0)
        view.told.push_back({Word::money_not_whole, {base::whole_arg(cash.estimate.missing)}});
    add_paces(cash, view);
    add_months(cash, view);
    add_flows(cash, view);
    add_terms(cash, view);
    view.notes.push_back({Word::money_estimate, {base::day_arg(aircraft.today)}});
    view.notes.push_back({Word::cash_amounts_note, {}});
    if (!aircraft.state.money.past.empty()) view.notes.push_back({Word::cash_past_note, {}});
    view.notes.push_back({Word::cash_reserve_note, {}});
    view.notes.push_back(
        money.terms.tax_back_days
            ? Message{Word::cash_tax_note, {base::whole_arg(*money.terms.tax_back_days)}}
            : Message{Word::cash_tax_note_usual, {base::whole_arg(budget::usual_tax_back_days)}});
    view.notes.push_back({living.lived ? Word::cash_days : Word::money_no_days, {}});
    view.notes.push_back({Word::money_advice, {}});
    return view;
}

}  // namespace twoclocks::views
