#include "engine/views/plan_chart.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;

constexpr std::int32_t bars = 24;
constexpr std::int32_t share_permille = 50;  // between two of the shares that are known

/// Of a thousand ways, how many are over by a day: straight between the shares.
[[nodiscard]] std::int32_t over_by(const plan::Outcome& outcome, std::int32_t day) {
    const auto& days = outcome.back_by_share;
    std::int32_t out = 0;
    for (std::size_t place = 0; place < days.size(); ++place) {
        const auto share = static_cast<std::int32_t>(place + 1) * share_permille;
        if (days[place] <= day) {
            out = share;
            continue;
        }
        if (place == 0) return 0;
        const std::int32_t width = days[place] - days[place - 1];
        return out + share_permille * (day - days[place - 1]) / width;
    }
    return out;
}

}  // namespace

ChartView plan_chart(const plan::Outcome& outcome, base::Date today) {
    const std::int32_t first = outcome.back_by_share.front();
    const std::int32_t width = std::max(outcome.back_by_share.back() - first, 1);
    const auto said = [&](std::int32_t day) { return base::day_arg(base::add_days(today, day)); };
    ChartView chart{{Word::plan_chart, {}}, {Word::plan_chart_all, {}}, Edge::calendar, {}, {}};
    for (std::int32_t bar = 0; bar < bars; ++bar) {
        const std::int32_t day = first + width * bar / (bars - 1);
        const bool has_label = bar % (bars / 3) == 3;
        chart.bars.push_back(
            {has_label ? Message{Word::record_of, {base::month_arg(base::add_days(today, day))}}
                       : Message{Word::blank, {}},
             over_by(outcome, day),
             false});
    }
    chart.is_curve = true;
    chart.spoken = {Word::plan_chart_spoken,
                    {said(outcome.back.early), said(outcome.back.middle), said(outcome.back.late)}};
    return chart;
}

}  // namespace twoclocks::views
