// A campaign that was lived through, with everything its words are made from.
#pragma once

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/plan/by_route.hpp"
#include "engine/plan/from_records.hpp"
#include "engine/plan/moment.hpp"
#include "engine/plan/worth.hpp"
#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Everything the words are made from.
struct Lived {
    const Assessed& aircraft;
    limits::ItemDue item;             // with the hours of the route kept back
    forecast::Projection projection;  // likewise
    plan::Network network;
    plan::RunOut run_out;
    plan::Terms terms;
    plan::Outcome outcome;
    plan::Draws draws;

    [[nodiscard]] base::Date day(std::int32_t from_today) const {
        return base::add_days(aircraft.today, from_today);
    }

    [[nodiscard]] base::Arg said(std::int32_t from_today) const {
        return base::day_arg(day(from_today));
    }

    [[nodiscard]] const plan::Task* with(plan::Role role) const {
        const std::int32_t place = plan::place_of(network, role);
        return place < 0 ? nullptr : &network.tasks[static_cast<std::size_t>(place)];
    }

    /// It has flown its last flight before the work.
    [[nodiscard]] bool has_stopped() const {
        const plan::Task* stop = with(plan::Role::stop);
        return stop != nullptr && (stop->progress.begun || stop->progress.finished);
    }

    [[nodiscard]] bool any_begun() const {
        return std::any_of(network.tasks.begin(), network.tasks.end(), [](const plan::Task& task) {
            return task.progress.begun || task.progress.promised;
        });
    }
};

/// A campaign that was lived through, or why it could not be.
struct Living {
    std::optional<Lived> lived{};
    base::Message missing{base::Word::blank, {}};
    std::vector<base::Problem> faults{};
};

/// The campaign of an aircraft while it is lived through, by these records of it, in slices. The
/// aircraft is looked at until the end.
class Life {
  public:
    /// Units: ways. Range: up to plan::campaign_count. Errors: those of `Living`.
    /// Source: our choice.
    Life(const Assessed& aircraft, const timeline::PlanState& records, std::int32_t ways);

    /// Lives through so many more ways; true once all are, or there is nothing to live through.
    /// Units: ways. Errors: none. Source: our choice.
    bool go_on(std::int32_t more);

    /// Ways lived through.
    /// Units: ways. Errors: none. Source: none needed.
    [[nodiscard]] std::int32_t done() const { return done_; }

    /// What it came to, after the last way.
    /// Units: days. Errors: `missing` and `faults`. Source: our choice.
    [[nodiscard]] Living end() const;

  private:
    /// What was made ready before the first way.
    struct Ready {
        limits::ItemDue item;
        forecast::Projection projection;
        plan::Network network;
        plan::RunOut run_out;
        plan::Terms terms;
        plan::Campaign campaign;
    };

    void make_ready(const timeline::PlanState& records);
    void cannot(base::Message missing, std::vector<base::Problem> faults = {});

    const Assessed& aircraft_;
    std::int32_t ways_;
    std::int32_t done_{0};
    std::optional<Ready> ready_;
    base::Message missing_{base::Word::blank, {}};
    std::vector<base::Problem> faults_;
};

/// All of it at once.
/// Units: days. Range: up to plan::campaign_count. Errors: `missing` and `faults`.
/// Source: our choice.
[[nodiscard]] Living live(const Assessed& aircraft,
                          const timeline::PlanState& records,
                          std::int32_t ways);

/// Of a hundred, rounded so that a chance of harm is never shown as none.
/// Units: of a hundred. Errors: none. Source: our choice.
[[nodiscard]] base::Arg hundredths_up(std::int32_t of_thousand);

}  // namespace twoclocks::views
