// What a campaign remembers of the ways it was lived through, and one more way. Only campaign.cpp
// looks in here.
#pragma once

#include <algorithm>
#include <random>
#include <utility>

#include "engine/forecast/uniform.hpp"
#include "engine/plan/campaign.hpp"
#include "engine/plan/moment.hpp"
#include "engine/plan/pert.hpp"
#include "engine/plan/shares.hpp"

namespace twoclocks::plan {

inline constexpr std::uint64_t seed = 26'112'025;
inline constexpr double open_end = 1e7;
inline constexpr double open_start = -1e7;

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
    Values ready_stops;
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
            days[place] = triangular(low, likely, high, forecast::uniform(random));
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
        count_ready(limit);
        count_too_early();
    }

    /// When all ahead is over, and what day to stop on that asks for: what the ground work waits
    /// for so long after the limit asks for a stop so much later.
    void count_ready(double limit) {
        double ready = 0;
        double ready_stop = 0;
        for (std::size_t place = 0; place < days.size(); ++place) {
            const bool is_ahead = task(place).stage == Stage::ahead;
            if (is_ahead && !network.after[place].empty())
                ready = std::max(ready, now.finish[place]);
            for (const auto& [before, lag] : network.before[place]) {
                const auto other = static_cast<std::size_t>(before);
                if (is_ahead || task(other).stage != Stage::ahead) continue;
                ready_stop =
                    std::max(ready_stop, now.finish[other] + lag - free.start[place] + limit);
            }
        }
        readies.push_back(static_cast<float>(ready));
        ready_stops.push_back(static_cast<float>(ready_stop));
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
        const auto part = static_cast<std::size_t>(forecast::uniform(random) * run_out_parts);
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
        if (place < 0) return std::nullopt;
        const auto at = static_cast<std::size_t>(place);
        // What nobody waits for has no last day.
        if (network.tasks[at].progress.begun || network.after[at].empty()) return std::nullopt;
        Values values = last_starts[static_cast<std::size_t>(place)];
        return day_down(at_share(values, 1 - sure(), false));
    }
};

}  // namespace twoclocks::plan
