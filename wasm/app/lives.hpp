// Campaigns that were lived through, kept while nothing changes, and the one that is being lived
// through: a slice a frame, so that no finger waits for ten thousand ways.
#pragma once

#include <map>
#include <optional>
#include <tuple>
#include <vector>

#include "engine/views/plan_lived.hpp"

namespace twoclocks::canvas {

/// One campaign: of which aircraft, by which of its routes, how often.
struct LifeAsked {
    base::Id aircraft;
    std::int32_t route{-1};  // its place among those recorded; below 0: as the plan goes
    std::int32_t ways{0};

    bool operator<(const LifeAsked& other) const {
        return std::tie(aircraft, route, ways) < std::tie(other.aircraft, other.route, other.ways);
    }
};

/// How far those that were asked for are.
struct LivesSoFar {
    std::int32_t done{0};
    std::int32_t all{0};
};

class Lives {
  public:
    using Fleet = std::map<base::Id, views::Assessed>;

    /// Something changed: all are to be lived through again.
    void clear();

    /// Goes on with the first that is not over by so many ways; true once all are over. An aircraft
    /// that is gone is over.
    bool go_on(const std::vector<LifeAsked>& asked, const Fleet& fleet, std::int32_t ways);

    /// True when all are over.
    [[nodiscard]] bool are_over(const std::vector<LifeAsked>& asked) const;

    [[nodiscard]] LivesSoFar so_far(const std::vector<LifeAsked>& asked) const;

    /// What one came to, after it is over.
    [[nodiscard]] const views::Living& of(const LifeAsked& asked) const;

  private:
    struct Begun {
        LifeAsked asked;
        views::Life life;
    };

    std::map<LifeAsked, views::Living> over_;
    std::optional<Begun> begun_;
};

}  // namespace twoclocks::canvas
