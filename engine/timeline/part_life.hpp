// A part's life while it is walked: what each kind of event does to it. part_walk.cpp fits and
// takes off; part_work.cpp holds what happens in between.
#pragma once

#include "engine/base/function_ref.hpp"
#include "engine/timeline/part_clock.hpp"
#include "engine/timeline/part_walk.hpp"

namespace twoclocks::timeline {

class Walk {
  public:
    Walk(PartState& part, base::FunctionRef<HostFound(base::Id)> host_of, base::Date today)
        : part_(part), host_of_(host_of), today_(today), clock_(part) {}

    /// Walks all events and fills the part.
    /// Units: as fact.hpp. Errors: none. Source: parts.hpp.
    [[nodiscard]] PartWorks go(const std::vector<PartEvent>& events);

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

    /// Resets what an overhaul of the part itself does.
    void overhaul(const PartEvent& event,
                  const facts::WorkDone& work,
                  const Renewed& renewed,
                  bool estimated);

    /// What the part had by work on it. Work on what hangs on it is looked at, and where its total
    /// is recorded it is counted up to: an estimate is not, no hours of the part rest on it.
    [[nodiscard]] PartWork by_work(const PartEvent& event, const facts::WorkDone& work, bool lacks);

    /// A count of the part at work, from the count of its host then.
    [[nodiscard]] std::optional<base::Count> count_by(
        const PartEvent& event,
        const std::optional<base::Count>& own,
        const std::optional<base::Count> OpenSpell::*at_fit,
        const std::optional<base::Count>& at_work) const;

    /// The total of the host of a spell at an event, the least that it may have been.
    [[nodiscard]] HostTotal total_at(const OpenSpell& open,
                                     const PartEvent& event,
                                     const std::optional<base::FlightTime>& total,
                                     bool lacks) const;

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
    base::FunctionRef<HostFound(base::Id)> host_of_;
    base::Date today_;
    PartClock clock_;
    std::vector<OpenSpell> open_;
    std::vector<PartWork> works_;
    base::Id scrapped_by_;
    bool papers_told_{false};
    bool start_is_disputed_{false};  // some version knows more hours than the others count
};

}  // namespace twoclocks::timeline
