#include "engine/plan/campaign.hpp"

#include "engine/plan/campaign_inside.hpp"

namespace twoclocks::plan {
namespace {

constexpr std::int32_t shares = 19;  // 5, 10, ... 95 of a hundred
constexpr double share_step = 0.05;

}  // namespace

Campaign::Campaign(Network network, WorkDays work, const RunOut& run_out, Terms terms)
    : inside_(std::make_unique<Inside>(std::move(network), std::move(work), run_out, terms)) {
    for (Times* times : {&inside_->free, &inside_->late, &inside_->now, &inside_->slack}) {
        times->start.resize(inside_->days.size());
        times->finish.resize(inside_->days.size());
    }
}

Campaign::~Campaign() = default;
Campaign::Campaign(Campaign&&) noexcept = default;
Campaign& Campaign::operator=(Campaign&&) noexcept = default;

bool Campaign::go_on(std::int32_t more) {
    const std::int32_t until = std::min(inside_->done + more, campaign_count);
    for (; inside_->done < until; ++inside_->done)
        inside_->live_once();
    return inside_->done == campaign_count;
}

Outcome Campaign::outcome() const {
    const Inside& in = *inside_;
    const auto all = static_cast<double>(in.done);
    const auto role = [&](Role wanted) { return place_of(in.network, wanted); };
    const auto ends = [&](std::int32_t place) {
        if (place < 0) return DayRange{};
        Values values = in.ends[static_cast<std::size_t>(place)];
        return range_of_ends(values);
    };
    Outcome out;
    out.order_by = in.last_day(role(Role::order));
    out.book_by = in.last_day(role(Role::book));
    if (!in.too_early.empty()) {
        Values values = in.too_early;
        out.not_before = day_up(at_share(values, in.sure(), true));
    }
    Values stops = in.stops;
    out.stop_on = day_down(at_share(stops, 1 - in.sure(), false));
    Values backs = in.ends[static_cast<std::size_t>(in.release)];
    out.back_on = last_day_of(at_share(backs, in.sure(), true));
    Values readies = in.readies;
    out.ready_on = last_day_of(at_share(readies, in.sure(), true));
    out.kit_here = ends(in.kit);
    out.back = ends(in.release);
    out.credit = ends(role(Role::credit));
    out.out_days = day_up(in.out_sum / all);
    out.waiting_permille = share_permille(in.waited, in.done);
    out.waiting_days = day_up(in.wait_sum / all);
    Values waits = in.waits;
    out.waiting_bad = day_up(at_share(waits, 0.9, true));
    for (std::size_t place = 0; place < in.days.size(); ++place) {
        out.critical_permille.push_back(share_permille(in.decided[place], in.done));
        // What nobody waits for has no last day.
        const bool ahead = in.task(place).stage == Stage::ahead && !in.network.after[place].empty();
        Values starts = in.starts[place];
        out.starts.push_back(range_of_starts(starts));
        out.ends.push_back(ends(static_cast<std::int32_t>(place)));
        Values lasts = in.last_starts[place];
        out.last_start.push_back(ahead ? day_down(at_share(lasts, 1 - in.sure(), false))
                                       : out.starts.back().middle);
    }
    const double handbook = in.handbook_end();
    const auto kept =
        std::count_if(in.ends[static_cast<std::size_t>(in.release)].begin(),
                      in.ends[static_cast<std::size_t>(in.release)].end(),
                      [&](float end) { return static_cast<double>(end) <= handbook; });
    out.handbook_day = last_day_of(handbook);
    out.handbook_permille = static_cast<std::int32_t>(kept * 1'000 / in.done);
    for (std::int32_t share = 1; share <= shares; ++share)
        out.back_by_share.push_back(last_day_of(at_share(backs, share * share_step, true)));
    return out;
}

Draws Campaign::draws() const {
    return {inside_->stops, inside_->ready_stops};
}

Outcome live_through(const Network& network,
                     const WorkDays& work,
                     const RunOut& run_out,
                     const Terms& terms) {
    Campaign campaign{network, work, run_out, terms};
    campaign.go_on(campaign_count);
    return campaign.outcome();
}

}  // namespace twoclocks::plan
