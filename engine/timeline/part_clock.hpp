// The hours and counts of a part while its life is walked.
#pragma once

#include "engine/timeline/part_host.hpp"

namespace twoclocks::timeline {

/// A spell that has not ended yet.
struct OpenSpell {
    std::size_t spell{0};  // in PartState::spells
    base::Id host;
    const HostLine* line{nullptr};
    std::optional<base::FlightTime> from;     // count of the host at the fit
    std::optional<base::FlightTime> counted;  // and up to which it has been added
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
};

/// Adds the hours of spells to a part, and keeps the part's own count.
class PartClock {
  public:
    explicit PartClock(PartState& part) : part_(part) {}

    /// Counts a spell on to a count of its host; without one the hours are not known any more.
    /// Units: hours. Errors: none. Source: our choice.
    void advance(OpenSpell& open, const std::optional<base::FlightTime>& to);

    /// What counting a spell on to a count of its host would add.
    /// Units: hours. Errors: none. Source: our choice.
    [[nodiscard]] static base::FlightTime ahead(const OpenSpell& open,
                                                const std::optional<base::FlightTime>& to);

    /// The part's own count by now, and how often hours were added that nobody knows.
    /// Units: hours. Errors: none. Source: our choice.
    [[nodiscard]] base::FlightTime count() const { return count_; }

    /// As above.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] std::int32_t gaps() const { return gaps_; }

    /// How often papers or a card have told the time since new.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] std::int32_t tells() const { return tells_; }

    /// Time since new as papers have it, from a day on. The higher of two certain figures stands.
    /// Units: hours. Errors: none, a problem of the part. Source: our choice.
    void tell_tsn(base::FlightTime tsn, bool estimated, base::Date on, base::Id fact);

    /// Time since new starts again.
    /// Units: none. Errors: none. Source: the maker's document.
    void start_again(bool estimated, base::Date on);

    /// Keeps the hours of a spell for what is fitted to the part.
    /// Units: hours. Errors: none. Source: our choice.
    void keep_points(const OpenSpell& open, base::Date until);

    /// Fills the part's own count, and what its hours owe to papers.
    /// Units: hours. Errors: none. Source: our choice.
    void finish(base::Date born);

  private:
    void set_tsn(base::FlightTime tsn, bool estimated, base::Date on);

    PartState& part_;
    base::FlightTime count_;
    std::int32_t gaps_{0};
    std::int32_t tells_{0};
    UsageSeries steps_;  // by how much the count rose, and when
};

}  // namespace twoclocks::timeline
