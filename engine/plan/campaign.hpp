// A campaign lived through many times: each time its tasks take other days, and the limit comes on
// another day.
//
// Each time four things are worked out. When could the work on the ground begin and end if nothing
// kept it waiting? How late may each task ahead begin so that it keeps nothing waiting? What comes
// of it if everything ahead begins today? And which tasks decide the end then?
//
// The hard questions.
//   Lengths are drawn from a triangle over the three points, each task by itself. The day of the
//   limit is drawn with them: it comes from the flying.
//   The draws are the same for every campaign: a date moves only when what it rests on does.
//   A date to act by is the last day at which the share of ways asked for keeps nothing waiting.
//   The aircraft stops on the day of its limit; nobody grounds it earlier by this reckoning.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "engine/plan/network.hpp"
#include "engine/plan/run_out.hpp"

namespace twoclocks::plan {

/// How often a campaign is lived through.
inline constexpr std::int32_t campaign_count = 10'000;

/// What a campaign asks for beside its tasks.
struct Terms {
    std::int32_t confidence_percent{90};     // 50 to 99
    std::int32_t margin_days{0};             // kept free before the limit
    std::optional<std::int32_t> core_days;   // cores must be on their way, from the kit's arrival
    std::optional<std::int32_t> keeps_days;  // the kit must be in use, from its arrival
};

/// The range of a day: one of ten is sooner, half are, one of ten is later. Days of the plan.
struct DayRange {
    std::int32_t early{0};
    std::int32_t middle{0};
    std::int32_t late{0};
};

/// What ten thousand campaigns come to. Days are counted from today, which is 0.
struct Outcome {
    std::optional<std::int32_t> order_by;    // the last day for it; negative: behind
    std::optional<std::int32_t> not_before;  // the kit would wait too long
    std::optional<std::int32_t> book_by;
    std::int32_t stop_on{0};   // the last day that can be counted on for flying
    std::int32_t back_on{0};   // back in service by then, if all ahead begins today
    std::int32_t ready_on{0};  // all that is done ahead is over by then, if it begins today
    DayRange kit_here;         // if all ahead begins today
    DayRange back;
    DayRange credit;
    std::int32_t out_days{0};          // from the last flight to the release, expected
    std::int32_t waiting_permille{0};  // chance of standing still before the work begins
    std::int32_t waiting_days{0};      // expected, rounded up
    std::int32_t waiting_bad{0};       // one of ten is worse
    std::vector<std::int32_t>
        critical_permille;                 // one a task: how often a day more of it is a day more
    std::vector<std::int32_t> last_start;  // one a task ahead; others: as it begins
    std::vector<DayRange> starts;          // one a task, if all ahead begins today
    std::vector<DayRange> ends;
    std::vector<std::int32_t> back_by_share;  // the end at 5, 10, ... 95 of a hundred
    std::int32_t handbook_day{0};             // what the mean of one path gives for `back`
    std::int32_t handbook_permille{0};        // how often that day is kept
};

/// Two days of each way, in the order lived through. Days of the plan, as moments.
struct Draws {
    std::vector<float> limits;   // the limit less the margin; the last flight, once it was
    std::vector<float> readies;  // stopped no earlier than this, the work waits for nothing
};

/// A campaign being lived through, in slices.
class Campaign {
  public:
    /// Units: days. Errors: none. Source: our choice.
    Campaign(Network network, WorkDays work, const RunOut& run_out, Terms terms);
    ~Campaign();
    Campaign(Campaign&&) noexcept;
    Campaign& operator=(Campaign&&) noexcept;
    Campaign(const Campaign&) = delete;
    Campaign& operator=(const Campaign&) = delete;

    /// Lives through so many more; true once all are done.
    /// Units: campaigns. Errors: none. Source: our choice.
    bool go_on(std::int32_t more);

    /// What those lived through come to.
    /// Units: days, thousandths. Range: after at least one. Errors: none. Source: our choice.
    [[nodiscard]] Outcome outcome() const;

    /// The days of those lived through.
    /// Units: days. Errors: none. Source: our choice.
    [[nodiscard]] Draws draws() const;

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

/// All of them at once.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] Outcome live_through(const Network& network,
                                   const WorkDays& work,
                                   const RunOut& run_out,
                                   const Terms& terms);

}  // namespace twoclocks::plan
