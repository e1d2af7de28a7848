#include "wasm/app/lives.hpp"

#include <algorithm>

#include "engine/plan/by_route.hpp"

namespace twoclocks::canvas {
namespace {

[[nodiscard]] views::Life begin(const views::Assessed& aircraft, const LifeAsked& asked) {
    const timeline::PlanState& records = aircraft.state.campaign;
    return {aircraft, asked.route < 0 ? records : plan::choosing(records, asked.route), asked.ways};
}

}  // namespace

void Lives::clear() {
    over_.clear();
    begun_.reset();
}

bool Lives::are_over(const std::vector<LifeAsked>& asked) const {
    return std::all_of(
        asked.begin(), asked.end(), [&](const LifeAsked& one) { return over_.count(one) > 0; });
}

LivesSoFar Lives::so_far(const std::vector<LifeAsked>& asked) const {
    LivesSoFar out;
    for (const LifeAsked& one : asked) {
        out.all += one.ways;
        if (over_.count(one) > 0) out.done += one.ways;
    }
    if (begun_) out.done += begun_->life.done();
    return out;
}

bool Lives::go_on(const std::vector<LifeAsked>& asked, const Fleet& fleet, std::int32_t ways) {
    const auto next = std::find_if(
        asked.begin(), asked.end(), [&](const LifeAsked& one) { return over_.count(one) == 0; });
    if (next == asked.end()) return true;
    const auto found = fleet.find(next->aircraft);
    if (found == fleet.end()) {
        over_.emplace(*next, views::Living{});
        return are_over(asked);
    }
    const bool is_same = begun_ && !(begun_->asked < *next) && !(*next < begun_->asked);
    if (!is_same) begun_.emplace(Begun{*next, begin(found->second, *next)});
    if (!begun_->life.go_on(ways)) return false;
    over_.emplace(*next, begun_->life.end());
    begun_.reset();
    return are_over(asked);
}

const views::Living& Lives::of(const LifeAsked& asked) const {
    return over_.at(asked);
}

}  // namespace twoclocks::canvas
