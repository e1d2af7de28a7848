// A part's life while it is walked: what each kind of event does to it. part_walk.cpp fits and
// takes off; part_work.cpp holds what happens in between.
#pragma once

#include "engine/timeline/part_clock.hpp"
#include "engine/timeline/part_walk.hpp"

namespace twoclocks::timeline {

class Walk {
  public:
    Walk(PartState& part, const std::function<HostFound(base::Id)>& host_of, base::Date today)
        : part_(part), host_of_(host_of), today_(today), clock_(part) {}

    /// Walks all events and fills the part.
    /// Units: as fact.hpp. Errors: none. Source: parts.hpp.
    void go(const std::vector<PartEvent>& events);

  private:
    template <class Other>
    void happen(const PartEvent&, const Other&) {}

    void happen(const PartEvent& event, const facts::PartAdded& added);

    /// Papers whose day is disputed, on another of its days: what is known may rise and no more.
    void repeat_papers(const PartEvent& event, const facts::PartAdded& added);

    void happen(const PartEvent& event, const facts::PartFitted& fitted);

    [[nodiscard]] OpenSpell begin(const PartEvent& event, const facts::PartFitted& fitted);

    /// The time since new on the part's card. Where one version has none and nothing else is
    /// known, it stays unknown.
    void tell_card(const PartEvent& event, const facts::PartFitted& fitted);

    /// 14 CFR 43.10: taken off for a time, back on the same product, no time in between.
    [[nodiscard]] bool keeps_status(const PartEvent& event, const facts::PartFitted& fitted) const;

    void happen(const PartEvent& event, const facts::PartRemoved& removed);

    void doubt_falling(const OpenSpell& open, const std::optional<base::FlightTime>& total);

    /// Ends a spell with its host's total, or the most that it may have been.
    void end(OpenSpell& open,
             const std::optional<base::FlightTime>& total,
             bool lacks,
             base::Date on);

    /// Counts a spell on to today.
    void run_on(OpenSpell& open);

    void close(OpenSpell& open, std::optional<base::FlightTime> to, bool estimated, base::Date on);

    void happen(const PartEvent& event, const facts::PartScrapped& scrapped);

    void happen(const PartEvent&, const facts::PartMoved& moved);

    void happen(const PartEvent& event, const facts::PartRebuilt& rebuilt);

    void happen(const PartEvent& event, const facts::WorkDone& work);

    /// Counts what the part is on up to an event; true when that is an estimate.
    [[nodiscard]] bool count_to(const PartEvent& event,
                                const std::optional<base::FlightTime>& total,
                                bool lacks);

    void mark(bool estimated);

    /// Counts told while the part is fitted: what the host had then is not recorded.
    void forget_counts();

    void settle_place();

    [[nodiscard]] OpenSpell* on_host(base::Id host);

    void doubt(base::Trouble code, std::vector<base::Arg> args, std::vector<base::Id> facts);

    PartState& part_;
    const std::function<HostFound(base::Id)>& host_of_;
    base::Date today_;
    PartClock clock_;
    std::vector<OpenSpell> open_;
    base::Id scrapped_by_;
    bool papers_told_{false};
    bool start_is_disputed_{false};  // some version knows more hours than the others count
};

}  // namespace twoclocks::timeline
