#include "wasm/app/working.hpp"

#include "wasm/app/money.hpp"
#include "wasm/app/plan.hpp"
#include "wasm/app/sums.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {

using base::Word;

std::vector<LifeAsked> AppState::Inside::lives_asked() const {
    const Place& here = places.back();
    if (here.kind == Place::Kind::stagger) return fleet_asked(*this);
    const views::Assessed* aircraft = assessed(here.subject);
    if (aircraft == nullptr) return {};
    if (here.kind == Place::Kind::plan) return {as_planned(*aircraft)};
    if (here.kind == Place::Kind::routes) return routes_asked(*aircraft);
    if (here.kind == Place::Kind::money) return money_asked(*aircraft);
    if (here.kind == Place::Kind::sums && rests_on_plan(here.of)) return {as_planned(*aircraft)};
    return {};
}

std::optional<WorkingPage> working_page(AppState::Inside& in) {
    const std::vector<LifeAsked> asked = in.lives_asked();
    if (in.lives.are_over(asked)) return std::nullopt;
    if (!in.in_slices) {
        while (!in.lives.go_on(asked, in.fleet, plan::campaign_count)) {
        }
        return std::nullopt;
    }
    const views::Assessed* aircraft = in.assessed(in.here().subject);
    const base::Arg name =
        base::text_arg(aircraft == nullptr ? std::string{} : aircraft->state.registration);
    const Place::Kind kind = in.here().kind;
    const auto [done, all] = in.lives.so_far(asked);
    return WorkingPage{kind == Place::Kind::stagger  ? base::Message{Word::stagger_title, {}}
                       : kind == Place::Kind::routes ? base::Message{Word::routes_title, {name}}
                       : kind == Place::Kind::money  ? base::Message{Word::money_title, {name}}
                       : kind == Place::Kind::sums
                           ? base::Message{views::sums_title(in.here().of), {name}}
                           : base::Message{Word::title_plan, {name}},
                       {Word::plan_living, {base::whole_arg(done), base::whole_arg(all)}}};
}

}  // namespace twoclocks::canvas
