#include "engine/views/record_limit.hpp"

#include "engine/base/message_args.hpp"
#include "engine/views/record_care.hpp"

namespace twoclocks::views {
namespace {

using base::Word;

/// The words of an interval, clock by clock.
struct IntervalWords {
    Word hours;
    Word months;
    Word days;
    Word landings;
    Word starts;
};

class LimitLines {
  public:
    explicit LimitLines(std::vector<base::Message>& out) : out_(out) {}

    void hours(Word word, const std::optional<base::FlightTime>& time) {
        if (time) out_.push_back({word, {base::hours_left_arg(*time)}});
    }

    void whole(Word word, const std::optional<std::int32_t>& number) {
        if (number) out_.push_back({word, {base::whole_arg(*number)}});
    }

    void count(Word word, const std::optional<base::Count>& count) {
        if (count) out_.push_back({word, {base::whole_arg(count->value)}});
    }

    void interval(const IntervalWords& words, const facts::Interval& interval) {
        hours(words.hours, interval.hours);
        whole(words.months, interval.months);
        whole(words.days, interval.days);
        count(words.landings, interval.landings);
        count(words.starts, interval.starts);
    }

    void plain(Word word, bool is_so) {
        if (is_so) out_.push_back({word, {}});
    }

    void tolerance(const facts::Tolerance& tolerance) {
        hours(Word::record_tolerance_hours, tolerance.hours);
        whole(Word::record_tolerance_days, tolerance.days);
        if (tolerance.permille) {
            out_.push_back(
                {Word::record_tolerance_permille, {base::decimal_arg(*tolerance.permille, 1)}});
        }
        hours(Word::record_tolerance_cap_hours, tolerance.cap_hours);
        whole(Word::record_tolerance_cap_days, tolerance.cap_days);
        plain(Word::record_from_due, tolerance.carry_over == facts::CarryOver::from_due);
        plain(Word::record_from_done, tolerance.carry_over == facts::CarryOver::from_done);
        hours(Word::record_overfly, tolerance.overfly_hours);
        if (!tolerance.source.empty()) {
            out_.push_back({Word::record_tolerance_source, {base::text_arg(tolerance.source)}});
        }
    }

  private:
    std::vector<base::Message>& out_;
};

}  // namespace

void add_limit_lines(const facts::LimitSet& limit, std::vector<base::Message>& out) {
    LimitLines lines{out};
    const bool said_elsewhere = !limit.hours && !limit.months;
    if (!said_elsewhere) lines.whole(Word::record_limit_days, limit.days);
    lines.interval({Word::record_first_hours,
                    Word::record_first_months,
                    Word::record_first_days,
                    Word::record_first_landings,
                    Word::record_first_starts},
                   limit.first);
    lines.plain(Word::record_once, limit.once);
    lines.plain(Word::record_later, limit.combine == facts::Combine::later);
    lines.interval({Word::record_cap_hours,
                    Word::record_cap_months,
                    Word::record_cap_days,
                    Word::record_cap_landings,
                    Word::record_cap_starts},
                   limit.cap);
    lines.tolerance(limit.tolerance);
    if (limit.in_force)
        out.push_back({Word::record_in_force, {base::word_arg(in_force_word(*limit.in_force))}});
}

}  // namespace twoclocks::views
