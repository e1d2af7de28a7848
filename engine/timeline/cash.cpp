#include "engine/timeline/cash.hpp"

#include <algorithm>

#include "engine/base/order.hpp"

namespace twoclocks::timeline {
namespace {

/// Puts a record in the place of the one of its key.
template <class State, class Said>
void put(const Record& record, const Said& said, std::string Said::*key, std::vector<State>& all) {
    State now{said, record.in_use.on, record.root};
    const auto found = std::find_if(
        all.begin(), all.end(), [&](const State& one) { return one.said.*key == said.*key; });
    if (found == all.end())
        all.push_back(std::move(now));
    else
        *found = std::move(now);
}

/// Said anew it stays a core of the overhaul that it was first recorded for.
void put_core(const Record& record, const facts::Core& said, MoneyState& money) {
    base::Date first = record.in_use.on;
    for (const CoreState& core : money.cores)
        if (core.said.core == said.core) first = std::min(first, core.on);
    put(record, said, &facts::Core::core, money.cores);
    for (CoreState& core : money.cores)
        if (core.said.core == said.core) core.on = first;
}

void put_price(const Record& record, const facts::ItemPrice& said, MoneyState& money) {
    if (record.in_use.about.size() < 2) return;  // no record that was checked
    const base::Id item = record.in_use.about[1];
    std::erase_if(money.item_prices, [&](const ItemPriceState& one) { return one.item == item; });
    money.item_prices.push_back({item, said, record.in_use.on, record.root});
}

/// While they are folded: steps may be recorded before the core they are of.
struct Folding {
    MoneyState& money;
    std::vector<CoreStepState> steps{};
};

void fold_one(const Record& record, bool is_over, Folding& folding) {
    const facts::Fields& fields = record.in_use.fields;
    const base::Date on = record.in_use.on;
    MoneyState& money = folding.money;
    if (const auto* core = std::get_if<facts::Core>(&fields)) put_core(record, *core, money);
    if (const auto* step = std::get_if<facts::CoreStep>(&fields))
        folding.steps.push_back({*step, on, record.root});
    if (const auto* term = std::get_if<facts::PayTerm>(&fields))
        put(record, *term, &facts::PayTerm::term, money.pay_terms);
    if (const auto* payment = std::get_if<facts::Payment>(&fields))
        (is_over ? money.past_payments : money.payments).push_back({*payment, on, record.root});
    if (const auto* balance = std::get_if<facts::Balance>(&fields))
        money.balances.push_back({*balance, on, record.root});
    if (const auto* terms = std::get_if<facts::ReserveTerms>(&fields)) {
        money.reserve = *terms;
        money.reserve_on = on;
        money.reserve_fact = record.root;
    }
    if (const auto* holder = std::get_if<facts::Holder>(&fields))
        put(record, *holder, &facts::Holder::holder, money.holders);
    if (const auto* price = std::get_if<facts::ItemPrice>(&fields))
        put_price(record, *price, money);
    if (const auto* point = std::get_if<facts::ClosingPoint>(&fields))
        put(record, *point, &facts::ClosingPoint::point, money.closing);
}

[[nodiscard]] bool is_closed(const CoreState& core) {
    return std::any_of(core.steps.begin(), core.steps.end(), [](const CoreStepState& step) {
        return step.said.stage == facts::CoreStage::settled ||
               step.said.stage == facts::CoreStage::forfeited ||
               step.said.stage == facts::CoreStage::destroyed;
    });
}

template <class State>
void drop_left_out(std::vector<State>& all) {
    std::erase_if(all, [](const State& one) { return one.said.left_out; });
}

template <class State>
void sort_by_day(std::vector<State>& all) {
    base::sort_stably(all, [](const State& one, const State& other) { return one.on < other.on; });
}

/// Steps go to their cores. One of an overhaul before the last that came to its end is history.
void close_cores(std::optional<base::Date> ended, Folding& folding) {
    std::vector<CoreState>& cores = folding.money.cores;
    sort_by_day(folding.steps);
    for (CoreState& core : cores) {
        for (const CoreStepState& step : folding.steps)
            if (step.said.core == core.said.core) core.steps.push_back(step);
        base::Date first = std::min(core.on, core.said.shipped_on.value_or(core.on));
        if (!core.steps.empty()) first = std::min(first, core.steps.front().on);
        if (ended && first <= *ended) core.released = ended;
    }
    drop_left_out(cores);
    std::erase_if(cores, [&](const CoreState& core) {
        return core.released && is_closed(core) && core.steps.back().on <= *core.released;
    });
}

}  // namespace

void fold_cash(const std::vector<const Record*>& records,
               base::Date today,
               std::optional<base::Date> ended,
               AircraftState& state) {
    Folding folding{state.money};
    for (const Record* record : records) {
        const facts::Body& body = record->in_use;
        if (record->withdrawn || body.on > today) continue;
        fold_one(*record, ended && body.on < *ended, folding);
    }
    close_cores(ended, folding);
    drop_left_out(state.money.pay_terms);
    drop_left_out(state.money.holders);
    drop_left_out(state.money.closing);
    sort_by_day(state.money.payments);
    sort_by_day(state.money.past_payments);
    sort_by_day(state.money.balances);
}

}  // namespace twoclocks::timeline
