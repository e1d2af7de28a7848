// When each limit is met, over a thousand ways in which the hours ahead may go.
//
// The hard questions.
//   An item with several clocks: on every path its own day, the sooner of them, or the later where
//   its limit says so, and never after a cap. Early, likely and late are of those days, so they
//   need not be of one clock.
//   Kinds of flying that used a limit faster: early takes all flying as the kind that used it most.
//   Counts have no rate and are left out; a clock that is not known hides the item, unless it is
//   past a limit already.
//   Days out of service ahead, and records that disagree: early counts on neither, so it is no
//   later than the plain projection has it, see projection.hpp.
#pragma once

#include <optional>
#include <vector>

#include "engine/forecast/flight_paths.hpp"
#include "engine/limits/due.hpp"

namespace twoclocks::forecast {

/// What the paths say of one item. None: not within thirty years.
struct ItemChance {
    bool known{false};
    std::optional<base::Date> early;       // one path in ten has met it by then
    std::optional<base::Date> likely;      // one in two
    std::optional<base::Date> late;        // nine in ten
    std::int32_t hours_first_permille{0};  // of the paths: an hours clock is what it waits for
};

/// Works out the chances of every item of an aircraft, a slice at a time.
class ChanceWork {
  public:
    /// Units: as limits. Errors: without a reading, or without a pattern or a plan, nothing that is
    /// counted in hours is known.
    /// Source: our choice; see flying_model.hpp.
    ChanceWork(const timeline::AircraftState& state,
               std::vector<limits::ItemDue> items,
               base::Date today);

    /// Draws so many more paths; true when all are drawn.
    /// Units: none. Errors: none. Source: our choice.
    bool slice(std::int32_t paths) { return paths_.draw(paths); }

    /// One an item, from the paths drawn so far.
    /// Units: days, thousandths. Errors: none. Source: order statistics.
    [[nodiscard]] std::vector<ItemChance> chances() const;

    [[nodiscard]] const FlyingModel& model() const { return model_; }

  private:
    /// One clock of one item: a day, or a target of the paths.
    struct ClockAhead {
        bool known{false};
        bool by_hours{false};
        base::Date on;               // of a calendar clock
        std::size_t target{0};       // of an hours clock, as it is flown
        std::size_t fast_target{0};  // and all of it as the kind that uses it most
    };

    struct ItemAhead {
        std::vector<ClockAhead> clocks;
        std::vector<ClockAhead> caps;
        bool later{false};
        bool known{false};
        std::optional<base::Date> not_after;  // early
    };

    /// The day of a path, in days after the last reading, and what it waited for.
    struct Met {
        std::int32_t days{never_days};
        bool by_hours{false};
    };

    [[nodiscard]] PathsAsked ask(const timeline::AircraftState& state,
                                 const std::vector<limits::ItemDue>& items);
    [[nodiscard]] ClockAhead ahead(const limits::ClockDue& clock,
                                   const timeline::AircraftState& state,
                                   PathsAsked& asked) const;
    [[nodiscard]] Met met(const ClockAhead& clock, std::size_t path, bool fast) const;
    [[nodiscard]] Met met(const ItemAhead& item, std::size_t path, bool fast) const;
    [[nodiscard]] std::optional<base::Date> day(std::int32_t days) const;

    base::Date today_;
    base::Date from_;
    FlyingModel model_;
    std::vector<ItemAhead> items_;
    FlightPaths paths_;
};

}  // namespace twoclocks::forecast
