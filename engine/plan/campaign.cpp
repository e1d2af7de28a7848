#include "engine/plan/campaign.hpp"

#include <algorithm>
#include <random>
#include <utility>

#include "engine/plan/moment.hpp"
#include "engine/plan/pert.hpp"
#include "engine/plan/shares.hpp"

namespace twoclocks::plan {
namespace {

constexpr std::uint64_t seed = 26'112'025;
constexpr double open_end = 1e7;
constexpr double open_start = -1e7;
constexpr std::int32_t shares = 19;  // 5, 10, ... 95 of a hundred
constexpr double share_step = 0.05;

[[nodiscard]] double uniform(std::mt19937_64& random) {
    constexpr double step = 1.0 / 9'007'199'254'740'992.0;  // 2 to the 53
    return (static_cast<double>(random() >> 11U) + 0.5) * step;
}

}  // namespace

struct Campaign::Inside {
    Network network;
    WorkDays work;
    Terms terms;
    std::vector<double> limit_days;
    std::int32_t likely_limit;
    std::mt19937_64 random{seed};
    std::int32_t done{0};

    std::vector<double> days;
    std::vector<double> bounds;
    Times free;   // the ground work if nothing kept it waiting
    Times late;   // how late each task ahead may begin
    Times now;    // if all ahead begins today
    Times slack;  // how late each task may be then

    std::vector<Values> starts;
    std::vector<Values> ends;
    std::vector<Values> last_starts;
    Values stops;
    Values waits;
    Values readies;
    Values too_early;
    double out_sum{0};
    double wait_sum{0};
    std::int64_t waited{0};
    std::vector<std::int64_t> decided;

    std::int32_t order;
    std::int32_t kit;
    std::int32_t stop;
    std::int32_t fit;
    std::int32_t release;
    std::int32_t send;

    Inside(Network given, WorkDays days_given, const RunOut& run_out, Terms asked)
        : network(std::move(given)),
          work(std::move(days_given)),
          terms(asked),
          limit_days(run_out_days(run_out)),
          likely_limit(run_out.likely - asked.margin_days),
          days(network.tasks.size()),
          bounds(network.tasks.size()),
          starts(network.tasks.size()),
          ends(network.tasks.size()),
          last_starts(network.tasks.size()),
          decided(network.tasks.size(), 0),
          order(place_of(network, Role::order)),
          kit(place_of(network, Role::kit_here)),
          stop(place_of(network, Role::stop)),
          fit(place_of(network, Role::fit)),
          release(place_of(network, Role::release)),
          send(place_of(network, Role::send_cores)) {
        if (release < 0) release = static_cast<std::int32_t>(network.tasks.size()) - 1;
    }

    [[nodiscard]] const Task& task(std::size_t place) const { return network.tasks[place]; }

    void draw_days() {
        for (std::size_t place = 0; place < days.size(); ++place) {
            const auto [low, likely, high] = task(place).days;
            days[place] = triangular(low, likely, high, uniform(random));
        }
    }

    /// The work on the ground from the day of the limit on, as if all ahead were long over.
    void pass_free(double limit) {
        for (std::size_t place = 0; place < days.size(); ++place) {
            double start = task(place).stage == Stage::ahead ? open_start : limit;
            for (const auto& [before, lag] : network.before[place]) {
                const auto other = static_cast<std::size_t>(before);
                if (task(other).stage != Stage::ahead)
                    start = std::max(start, free.finish[other] + lag);
            }
            free.start[place] = start;
            free.finish[place] = end_of(task(place), work, start, days[place]);
        }
    }

    /// How late the tasks ahead may be for that.
    void pass_late() {
        for (std::size_t place = days.size(); place-- > 0;) {
            if (task(place).stage != Stage::ahead) {
                late.start[place] = free.start[place];
                continue;
            }
            double finish = open_end;
            for (const auto& [later, lag] : network.after[place])
                finish = std::min(finish, late.start[static_cast<std::size_t>(later)] - lag);
            late.finish[place] = finish;
            late.start[place] = start_of(task(place), work, finish, days[place]);
        }
    }

    void pass_now(double limit) {
        for (std::size_t place = 0; place < days.size(); ++place)
            bounds[place] = task(place).stage == Stage::ahead ? 0 : std::max(limit, 0.0);
        pass_forward(network, work, days, bounds, now);
    }

    void pass_slack() {
        const double end = now.finish[static_cast<std::size_t>(release)];
        for (std::size_t place = 0; place < days.size(); ++place)
            bounds[place] = task(place).stage == Stage::after ? open_end : end;
        pass_backward(network, work, days, bounds, slack);
        for (std::size_t place = 0; place < days.size(); ++place)
            if (slack.start[place] - now.start[place] < 1 && !task(place).progress.finished)
                ++decided[place];
    }

    void count(double limit) {
        for (std::size_t place = 0; place < days.size(); ++place) {
            starts[place].push_back(static_cast<float>(now.start[place]));
            ends[place].push_back(static_cast<float>(now.finish[place]));
            last_starts[place].push_back(static_cast<float>(late.start[place]));
        }
        const auto back = static_cast<std::size_t>(release);
        const double stopped = stopped_at().value_or(std::max(limit, 0.0));
        const double ground = free.finish[back] - limit;
        const double out = now.finish[back] - stopped;
        const double wait = std::max(0.0, out - ground);
        stops.push_back(static_cast<float>(limit));
        waits.push_back(static_cast<float>(wait));
        out_sum += out;
        wait_sum += wait;
        if (wait >= 1) ++waited;
        double ready = 0;
        for (std::size_t place = 0; place < days.size(); ++place)
            if (task(place).stage == Stage::ahead && !network.after[place].empty())
                ready = std::max(ready, now.finish[place]);
        readies.push_back(static_cast<float>(ready));
        count_too_early();
    }

    /// How early the kit may be ordered, where it may not wait for ever.
    void count_too_early() {
        if (order < 0 || kit < 0) return;
        const auto ordered = static_cast<std::size_t>(order);
        const auto here = static_cast<std::size_t>(kit);
        const double lead = now.finish[here] - now.start[ordered];
        double first = open_start;
        if (terms.core_days && send >= 0)
            first = std::max(first, free.finish[static_cast<std::size_t>(send)] - *terms.core_days);
        if (terms.keeps_days && fit >= 0)
            first = std::max(first, free.start[static_cast<std::size_t>(fit)] - *terms.keeps_days);
        if (first > open_start) too_early.push_back(static_cast<float>(first - lead));
    }

    /// When the last flight was, once it was.
    [[nodiscard]] std::optional<double> stopped_at() const {
        if (stop < 0) return std::nullopt;
        const Progress& progress = task(static_cast<std::size_t>(stop)).progress;
        return progress.begun ? progress.begun : progress.finished;
    }

    void live_once() {
        draw_days();
        const auto part = static_cast<std::size_t>(uniform(random) * run_out_parts);
        const double limit = stopped_at().value_or(limit_days[part] - terms.margin_days);
        pass_free(limit);
        pass_late();
        pass_now(limit);
        pass_slack();
        count(limit);
    }

    /// The end as a handbook reckons it: every task takes its mean, the limit comes on its day.
    [[nodiscard]] double handbook_end() const {
        std::vector<double> means;
        std::vector<double> from;
        for (const Task& one : network.tasks) {
            means.push_back(three_point(one.days).mean);
            from.push_back(one.stage == Stage::ahead ? 0 : std::max(likely_limit, 0));
        }
        Times times;
        pass_forward(network, work, means, from, times);
        return times.finish[static_cast<std::size_t>(release)];
    }

    [[nodiscard]] double sure() const { return terms.confidence_percent / 100.0; }

    [[nodiscard]] std::optional<std::int32_t> last_day(std::int32_t place) const {
        if (place < 0 || network.tasks[static_cast<std::size_t>(place)].progress.begun)
            return std::nullopt;
        Values values = last_starts[static_cast<std::size_t>(place)];
        return day_down(at_share(values, 1 - sure(), false));
    }
};

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

Outcome live_through(const Network& network,
                     const WorkDays& work,
                     const RunOut& run_out,
                     const Terms& terms) {
    Campaign campaign{network, work, run_out, terms};
    campaign.go_on(campaign_count);
    return campaign.outcome();
}

}  // namespace twoclocks::plan
