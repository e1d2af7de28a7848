#include "engine/plan/pert.hpp"

#include <cmath>

#include "engine/base/real.hpp"

namespace twoclocks::plan {
namespace {

/// One path of critical tasks, from the first that waits for nothing to the last.
[[nodiscard]] std::vector<std::int32_t> critical_path(const Network& network,
                                                      const std::vector<Slack>& slack) {
    std::vector<std::int32_t> out;
    std::int32_t last = -1;
    for (std::size_t place = 0; place < slack.size(); ++place) {
        if (!slack[place].critical) continue;
        const auto& before = network.before[place];
        bool follows = last < 0 && before.empty();
        for (const Neighbour& link : before)
            follows = follows || (link.place == last && last >= 0);
        if (!follows) continue;
        last = static_cast<std::int32_t>(place);
        out.push_back(last);
    }
    return out;
}

}  // namespace

ThreePoint three_point(const Estimate& days) {
    const auto low = static_cast<double>(days.low);
    const auto likely = static_cast<double>(days.likely);
    const auto high = static_cast<double>(days.high);
    const double sixth = (high - low) / 6;
    return {(low + 4 * likely + high) / 6, sixth * sixth};
}

Pert pert_of(const Network& network) {
    Network plain = network;
    std::vector<double> means;
    for (Task& task : plain.tasks) {
        task.kind = DayKind::calendar;
        task.progress = {};
        means.push_back(three_point(task.days).mean);
    }
    Pert out;
    out.slack = slack_of(plain, WorkDays{{}, {}}, means);
    out.path = critical_path(plain, out.slack);
    for (const std::int32_t place : out.path) {
        const ThreePoint one = three_point(plain.tasks[static_cast<std::size_t>(place)].days);
        out.mean += one.mean;
        out.variance += one.variance;
    }
    return out;
}

double triangular(double low, double likely, double high, double chance) {
    const double width = high - low;
    if (width <= 0) return low;
    const double peak = (likely - low) / width;
    if (chance < peak) return low + std::sqrt(chance * width * (likely - low));
    return high - std::sqrt((1 - chance) * width * (high - likely));
}

double pert_chance(const Pert& pert, double days) {
    if (pert.variance <= 0) return days >= pert.mean ? 1 : 0;
    return base::normal_cdf((days - pert.mean) / std::sqrt(pert.variance));
}

}  // namespace twoclocks::plan
