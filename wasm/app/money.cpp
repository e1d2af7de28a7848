#include "wasm/app/money.hpp"

#include "wasm/app/plan.hpp"

#include "engine/base/message_args.hpp"
#include "engine/budget/usual_lines.hpp"
#include "engine/views/money_view.hpp"
#include "engine/views/record_money.hpp"

namespace twoclocks::canvas {
namespace {

/// Saves lines of an estimate, as of today; undone at one tap.
void save_lines(AppState::Inside& in, base::Id aircraft, std::vector<facts::CostLine> lines) {
    if (!in.pending.empty() || lines.empty()) return;
    std::vector<facts::Fact> facts;
    Pending save;
    for (facts::CostLine& line : lines) {
        facts::Body body{in.today, {aircraft}, std::move(line), {}};
        facts.push_back(in.signer.sign(in.signer.new_id(), std::move(body), in.ledger.visible()));
        save.taken_back_by_tap.push_back(facts.back().id);
    }
    save.aircraft = aircraft;
    save.done = {base::Word::saved_records,
                 {base::whole_arg(static_cast<std::int64_t>(facts.size()))}};
    in.save_facts(facts, std::move(save));
}

}  // namespace

std::vector<LifeAsked> money_asked(const views::Assessed& aircraft) {
    std::vector<LifeAsked> out = routes_asked(aircraft);
    out.insert(out.begin(), as_planned(aircraft));
    return out;
}

MoneyPage money_page(AppState::Inside& in, const views::Assessed& aircraft) {
    if (!in.costed || in.costed->id != aircraft.state.id)
        in.costed = views::make_money_view(
            aircraft, in.lives.of(as_planned(aircraft)), lives_of(in, routes_asked(aircraft)));
    return {*in.costed};
}

void open_page(AppState::Inside& in, const intent::OpenMoney& intent) {
    if (in.assessed(intent.aircraft) != nullptr) in.open({Place::Kind::money, intent.aircraft});
}

void open_page(AppState::Inside& in, const intent::UsualLines& intent) {
    const views::Assessed* aircraft = in.assessed(intent.aircraft);
    if (aircraft == nullptr || !aircraft->state.money.lines.empty()) return;
    std::vector<facts::CostLine> lines;
    for (budget::UsualLine& usual : budget::usual_lines()) {
        const auto said = [&](base::Word word) { return base::say(word, in.region); };
        usual.line.name =
            said(usual.name == base::Word::blank ? views::cost_group_word(usual.line.group)
                                                 : usual.name);
        if (usual.line.group == facts::CostGroup::engine)
            usual.line.one_of = said(base::Word::cost_engine);
        lines.push_back(std::move(usual.line));
    }
    save_lines(in, intent.aircraft, std::move(lines));
}

void open_page(AppState::Inside& in, const intent::TakeOverLines& intent) {
    const views::Assessed* aircraft = in.assessed(intent.aircraft);
    if (aircraft == nullptr) return;
    std::vector<facts::CostLine> lines;
    for (const timeline::CostLineState& past : aircraft->state.money.past) {
        lines.push_back(past.said);
        // A price keeps the day it is of: it rises from there.
        if (!lines.back().price_on) lines.back().price_on = past.on;
    }
    save_lines(in, intent.aircraft, std::move(lines));
}

}  // namespace twoclocks::canvas
