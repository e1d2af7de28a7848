#include "engine/views/cash_curve.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/permille.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using budget::CashCourse;
using budget::FlowKind;

/// What the picture reaches from and to.
struct Frame {
    Date first;
    Date last;
    std::int64_t low{0};
    std::int64_t high{0};

    [[nodiscard]] std::int32_t across(Date day) const {
        const std::int64_t whole = std::max<std::int64_t>(1, base::days_between(first, last));
        return static_cast<std::int32_t>(base::days_between(first, day) *
                                         std::int64_t{base::whole_permille} / whole);
    }

    [[nodiscard]] std::int32_t up(std::int64_t amount) const {
        // Apart, so that no product is too long.
        const std::int64_t each = std::max<std::int64_t>(1, (high - low) / base::whole_permille);
        return static_cast<std::int32_t>(
            std::min<std::int64_t>(base::whole_permille, (amount - low) / each));
    }
};

[[nodiscard]] bool moves(const budget::Flow& flow) {
    return flow.on && flow.kind != FlowKind::paid;
}

void widen(const CashCourse& course, std::int64_t in_hand, Frame& frame) {
    std::int64_t left = in_hand;
    for (const budget::Flow& flow : course.flows) {
        if (!moves(flow)) continue;
        left += flow.amount;
        frame.low = std::min(frame.low, left);
        frame.high = std::max(frame.high, left);
        frame.last = std::max(frame.last, *flow.on);
    }
}

[[nodiscard]] std::vector<SumsStep> steps_of(const CashCourse& course,
                                             std::int64_t in_hand,
                                             const Frame& frame) {
    std::vector<SumsStep> out{{0, frame.up(in_hand)}};
    std::int64_t left = in_hand;
    for (const budget::Flow& flow : course.flows) {
        if (!moves(flow)) continue;
        left += flow.amount;
        out.push_back({frame.across(*flow.on), frame.up(left)});
    }
    out.push_back({base::whole_permille, frame.up(left)});
    return out;
}

}  // namespace

std::optional<SumsCurve> cash_curve(const std::array<CashCourse, 3>& courses,
                                    std::int64_t in_hand,
                                    Date today,
                                    base::Currency home) {
    Frame frame{
        today, today, std::min<std::int64_t>(0, in_hand), std::max<std::int64_t>(0, in_hand)};
    for (const CashCourse& course : courses)
        widen(course, in_hand, frame);
    if (frame.last == today) return std::nullopt;
    SumsCurve out;
    out.early = steps_of(courses[0], in_hand, frame);
    out.likely = steps_of(courses[1], in_hand, frame);
    out.late = steps_of(courses[2], in_hand, frame);
    out.nothing = frame.up(0);
    const auto money = [&](std::int64_t minor_units) {
        return base::money_arg({minor_units, home});
    };
    out.most = {base::Word::record_of, {money(frame.high)}};
    out.least = {base::Word::record_of, {money(frame.low)}};
    out.first = {base::Word::record_of, {base::month_arg(today)}};
    out.last = {base::Word::record_of, {base::month_arg(frame.last)}};
    const CashCourse& likely = courses[1];
    out.spoken = {base::Word::cash_curve_spoken,
                  {money(in_hand),
                   money(likely.lowest),
                   base::day_arg(likely.lowest_on.value_or(today)),
                   money(likely.last),
                   base::month_arg(frame.last)}};
    return out;
}

}  // namespace twoclocks::views
