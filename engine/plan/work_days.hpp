// Which days are worked on: Monday to Friday, without the days that somebody closes.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/base/date.hpp"

namespace twoclocks::plan {

/// Days on which nobody works.
struct Closure {
    base::Date from;
    base::Date last;  // closed on this day too
};

/// Turns stretches of work into stretches of time. Three years back, twelve ahead; beyond that
/// every day is worked on.
class WorkDays {
  public:
    /// Units: days. Range: 0 is the morning of `today`. Errors: none; a closure that ends before it
    /// begins closes nothing. Source: common practice, no source.
    WorkDays(base::Date today, const std::vector<Closure>& closures);

    /// When so much work is over that begins at a time: the first moment.
    /// Units: days of the plan, working days. Range: work not negative. Errors: none.
    /// Source: our choice.
    [[nodiscard]] double after(double time, double work) const;

    /// When so much work must begin to be over by a time: the last moment.
    /// Units: days of the plan, working days. Range: work not negative. Errors: none.
    /// Source: our choice.
    [[nodiscard]] double before(double time, double work) const;

  private:
    [[nodiscard]] double work_by(double time) const;

    std::vector<double> done_;     // working days before each day
    std::vector<double> nth_day_;  // the day that is the n-th working day
};

}  // namespace twoclocks::plan
