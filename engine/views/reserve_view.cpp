#include "engine/views/reserve_view.hpp"

#include "engine/base/message_args.hpp"
#include "engine/views/cash_view.hpp"
#include "engine/views/record_cash.hpp"
#include "engine/views/reserve_asked.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using budget::ReserveAsked;
using budget::ReserveWorked;

void add_goal(const Reserve& reserve, Why& why) {
    if (reserve.goal.is_recorded)
        add(why,
            Word::why_reserve_goal,
            {reserve.money(reserve.goal.before),
             base::short_decimal_arg(reserve.records().reserve.goal_rise_permille.value_or(0), 1),
             reserve.money(reserve.goal.sum)},
            *reserve.records().reserve_fact);
    else
        add(why, Word::why_reserve_estimate, {reserve.money(reserve.goal.sum)});
    if (reserve.asked.due) add(why, Word::why_reserve_due, {base::day_arg(*reserve.asked.due)});
    if (reserve.records().reserve.interest_permille)
        add(why,
            Word::why_reserve_interest,
            {base::short_decimal_arg(reserve.asked.interest_permille, 1)});
    else
        add(why, Word::why_reserve_no_interest, {});
}

[[nodiscard]] Figure should_figure(const Reserve& reserve) {
    Figure out;
    out.text = {Word::reserve_should, {reserve.money(reserve.worked.should_be)}};
    out.why = {{Word::why_reserve_should, {}}, out.text, {}};
    add_goal(reserve, out.why);
    if (reserve.asked.since)
        add(out.why,
            Word::why_reserve_months,
            {base::day_arg(*reserve.asked.since),
             base::whole_arg(reserve.worked.months_gone),
             base::whole_arg(reserve.worked.months_left)});
    else
        add(out.why, Word::why_reserve_no_start, {});
    add(out.why, Word::why_reserve_rule, {});
    add_sum(out.why, Word::why_reserve_should_sum, {reserve.money(reserve.worked.should_be)});
    return out;
}

[[nodiscard]] Figure hand_figure(const Reserve& reserve) {
    Figure out;
    out.text = {Word::reserve_hand, {reserve.money(reserve.asked.hand)}};
    out.why = {{Word::why_reserve_hand, {}}, out.text, {}};
    for (const timeline::BalanceState& balance : budget::last_balances(reserve.records().balances))
        if (balance.said.amount)
            add(out.why,
                Word::why_reserve_account,
                {base::text_arg(balance.said.account),
                 base::money_arg(*balance.said.amount),
                 base::day_arg(balance.on)},
                balance.fact);
    for (const timeline::PaymentState* const one : paid_since(reserve.records()))
        add(out.why,
            one->said.back ? Word::record_payment_back : Word::record_payment,
            {base::money_arg(*one->said.amount)},
            one->fact);
    add_sum(out.why, Word::why_reserve_hand_sum, {reserve.money(reserve.asked.hand)});
    return out;
}

[[nodiscard]] Figure short_figure(const Reserve& reserve) {
    const auto& shortfall = reserve.worked.shortfall;
    const bool is_ahead = shortfall && *shortfall < 0;
    Figure out;
    out.text = {is_ahead ? Word::reserve_ahead : Word::reserve_short,
                {reserve.money(is_ahead ? std::optional{-*shortfall} : shortfall)}};
    out.why = {{Word::why_reserve_short, {}}, out.text, {}};
    add(out.why, Word::why_reserve_should_sum, {reserve.money(reserve.worked.should_be)});
    add(out.why, Word::why_reserve_hand_sum, {reserve.money(reserve.asked.hand)});
    add_sum(out.why, Word::why_reserve_short_sum, {reserve.money(shortfall)});
    return out;
}

/// As it is set aside now: what comes together, and by how much that falls short.
void tell_course(const Reserve& reserve, SumsView& view) {
    const ReserveWorked& worked = reserve.worked;
    const ReserveAsked& asked = reserve.asked;
    if (asked.due && worked.months_left == 0) view.told.push_back({Word::reserve_no_month, {}});
    if (worked.will_be && asked.goal && asked.due) {
        const std::int64_t lacks = *asked.goal - *worked.will_be;
        view.told.push_back(
            {lacks > 0 ? Word::reserve_will_lack : Word::reserve_will_do,
             {reserve.money(worked.will_be), base::day_arg(*asked.due), reserve.money(lacks)}});
    }
    if (worked.linear_hour && worked.linear_short && *worked.linear_short > 0)
        view.told.push_back({Word::reserve_linear_short,
                             {reserve.money(worked.linear_hour),
                              base::hours_whole_arg(*asked.flown + *asked.to_fly),
                              base::hours_whole_arg(*asked.life),
                              reserve.money(worked.linear_short)}});
    else if (worked.linear_hour)
        view.told.push_back(
            {Word::reserve_linear,
             {reserve.money(worked.linear_hour), base::hours_whole_arg(*asked.life)}});
}

void add_ways(const Reserve& reserve, SumsView& view) {
    const ReserveWorked& worked = reserve.worked;
    if (!worked.once) return;
    SumsBlock block;
    block.title = {Word::reserve_ways, {}};
    block.pairs.push_back(
        {{Word::reserve_once, {}}, {Word::record_of, {reserve.money(worked.once)}}});
    block.pairs.push_back({{Word::reserve_monthly, {base::whole_arg(worked.months_left)}},
                           {Word::record_of, {reserve.money(worked.monthly)}}});
    if (reserve.asked.to_fly)
        block.pairs.push_back(
            {{Word::reserve_hourly, {base::hours_whole_arg(*reserve.asked.to_fly)}},
             {Word::record_of, {reserve.money(worked.hourly)}}});
    block.pairs.push_back(
        {{Word::reserve_end, {}}, {Word::record_of, {reserve.money(worked.at_the_end)}}});
    block.lines.push_back({Word::reserve_ways_rule, {}});
    view.blocks.push_back(std::move(block));
}

void add_accounts(const Reserve& reserve, SumsView& view) {
    SumsBlock block;
    block.title = {Word::reserve_accounts, {}};
    block.opens = SumsOpens::balance;
    const auto& balances = reserve.records().balances;
    for (const timeline::BalanceState& last : budget::last_balances(balances)) {
        SumsRow row;
        row.key = last.said.account;
        row.name = {Word::record_of, {base::text_arg(last.said.account)}};
        if (last.said.amount) row.figure = {Word::record_of, {base::money_arg(*last.said.amount)}};
        if (!last.said.held_by.empty())
            row.lines.push_back({Word::reserve_held_by, {base::text_arg(last.said.held_by)}});
        for (auto one = balances.rbegin(); one != balances.rend(); ++one)
            if (one->said.account == last.said.account && one->said.amount)
                row.lines.push_back({Word::reserve_balance,
                                     {base::day_arg(one->on), base::money_arg(*one->said.amount)}});
        block.rows.push_back(std::move(row));
    }
    if (!block.rows.empty()) view.blocks.push_back(std::move(block));
}

void add_holders(const Reserve& reserve, SumsView& view) {
    const auto& holders = reserve.records().holders;
    if (holders.empty()) return;
    SumsBlock block;
    block.title = {Word::reserve_holders, {}};
    block.opens = SumsOpens::holder;
    std::vector<std::int32_t> shares;
    std::int32_t told = 0;
    for (const timeline::HolderState& one : holders) {
        shares.push_back(one.said.permille);
        told += one.said.permille;
    }
    const auto split = [&](std::optional<std::int64_t> sum) {
        return sum ? budget::in_shares(*sum, shares) : std::vector<std::int64_t>{};
    };
    const auto lacks = split(reserve.worked.shortfall);
    const auto monthly = split(reserve.worked.monthly);
    for (std::size_t place = 0; place < holders.size(); ++place) {
        const facts::Holder& said = holders[place].said;
        SumsRow row;
        row.key = said.holder;
        row.name = {Word::record_of, {base::text_arg(said.holder)}};
        row.figure = {Word::reserve_share, {base::short_decimal_arg(said.permille, 1)}};
        row.lines.push_back({Word::record_of, {base::word_arg(holder_role_word(said.role))}});
        if (!lacks.empty() && *reserve.worked.shortfall > 0)
            row.lines.push_back({Word::reserve_share_short, {reserve.money(lacks[place])}});
        if (!monthly.empty())
            row.lines.push_back({Word::reserve_share_month, {reserve.money(monthly[place])}});
        block.rows.push_back(std::move(row));
    }
    if (told != facts::whole_permille)
        view.faults.push_back(
            base::trouble(base::Trouble::shares_not_whole, {base::short_decimal_arg(told, 1)}));
    view.blocks.push_back(std::move(block));
}

}  // namespace

SumsView make_reserve_view(const Assessed& aircraft, const Living& living) {
    SumsView view;
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    view.of = SumsOf::reserve;
    const Reserve reserve = make_reserve(aircraft, living, view.faults);
    const timeline::MoneyState& money = aircraft.state.money;
    if (!reserve.goal.sum && money.balances.empty() && !money.reserve_fact)
        view.missing = {Word::reserve_nothing, {}};
    view.top = {should_figure(reserve), hand_figure(reserve), short_figure(reserve)};
    if (!reserve.goal.sum) view.told.push_back({Word::reserve_no_goal, {}});
    tell_course(reserve, view);
    add_ways(reserve, view);
    add_accounts(reserve, view);
    add_holders(reserve, view);
    view.notes.push_back({Word::money_estimate, {base::day_arg(aircraft.today)}});
    view.notes.push_back({Word::reserve_note, {}});
    view.notes.push_back({Word::reserve_advice, {}});
    return view;
}

}  // namespace twoclocks::views
