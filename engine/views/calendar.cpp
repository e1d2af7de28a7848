#include "engine/views/calendar.hpp"

#include <algorithm>
#include <string_view>

#include "engine/base/message_args.hpp"
#include "engine/base/region.hpp"
#include "engine/budget/cores.hpp"
#include "engine/views/record_cash.hpp"
#include "engine/views/record_sale.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using base::Message;
using base::Word;

constexpr std::int32_t limit_alarm_days = 30;
constexpr std::int32_t order_alarm_days = 14;
constexpr std::size_t most_octets = 75;
constexpr std::int64_t second_ms = 1'000;
constexpr std::int64_t day_seconds = 86'400;

/// The days of one aircraft while they are gathered.
class Days {
  public:
    explicit Days(const Assessed& aircraft) : aircraft_(aircraft) {}

    void add_limits() {
        for (std::size_t place = 0; place < aircraft_.items.size(); ++place) {
            const limits::ItemDue& item = aircraft_.items[place];
            const forecast::Projection& projection = aircraft_.projections[place];
            if (!item.mandatory() || item.complied || item.asleep || !projection.early) continue;
            std::vector<Message> more;
            if (projection.likely && *projection.likely != *projection.early)
                more.push_back({Word::calendar_expected, {base::day_arg(*projection.likely)}});
            add("limit-" + base::print_id(item.item),
                *projection.early,
                {Word::calendar_limit, {own(), base::text_arg(item_label(item))}},
                std::move(more),
                limit_alarm_days);
        }
    }

    void add_plan(const Living& living) {
        if (!living.lived) return;
        const Lived& lived = *living.lived;
        const auto by = [&](const char* key,
                            plan::Role role,
                            const std::optional<std::int32_t>& day,
                            Word word) {
            const plan::Task* task = lived.with(role);
            if (!day || task == nullptr || task->progress.begun || task->progress.finished) return;
            add(key + base::print_id(aircraft_.state.id),
                lived.day(std::max(0, *day)),
                {word, {own()}},
                {},
                order_alarm_days);
        };
        by("order-", plan::Role::order, lived.outcome.order_by, Word::calendar_order);
        by("book-", plan::Role::book, lived.outcome.book_by, Word::calendar_book);
    }

    void add_money() {
        for (const timeline::CoreState& core : aircraft_.state.money.cores) {
            const auto deadline = budget::recorded_deadline(core);
            const bool is_away = budget::standing_of(core) > budget::CoreStanding::to_send;
            if (deadline && !is_away)
                add("core-" + base::print_id(core.fact),
                    *deadline,
                    {Word::calendar_core, {own(), core_label(core.said)}},
                    {},
                    limit_alarm_days);
        }
        for (const timeline::ClosingState& point : aircraft_.state.money.closing)
            if (point.said.until && !point.said.settled)
                add("point-" + base::print_id(point.fact),
                    *point.said.until,
                    {Word::calendar_limit, {own(), closing_label(point.said)}},
                    {},
                    order_alarm_days);
    }

    [[nodiscard]] std::vector<CalendarDay> done() {
        std::stable_sort(days_.begin(), days_.end(), [](const auto& one, const auto& other) {
            return one.on < other.on;
        });
        return std::move(days_);
    }

  private:
    [[nodiscard]] base::Arg own() const { return base::text_arg(aircraft_.state.registration); }

    void add(std::string key,
             Date on,
             Message what,
             std::vector<Message> more,
             std::int32_t alarm_days) {
        more.push_back({Word::calendar_caution, {}});
        days_.push_back({std::move(key), on, std::move(what), std::move(more), alarm_days});
    }

    const Assessed& aircraft_;
    std::vector<CalendarDay> days_;
};

/// Text of a value: commas, semicolons, backslashes and ends of lines are written with a backslash.
[[nodiscard]] std::string escaped(std::string_view text) {
    std::string out;
    for (const char sign : text) {
        if (sign == '\r') continue;
        if (sign == '\n') {
            out += "\\n";
            continue;
        }
        if (sign == ',' || sign == ';' || sign == '\\') out += '\\';
        out += sign;
    }
    return out;
}

/// A line, folded between letters: those of more than one octet stay whole.
void put_line(std::string_view line, std::string& out) {
    std::size_t used = 0;
    for (std::size_t at = 0; at < line.size();) {
        std::size_t size = 1;
        constexpr unsigned char follows = 0x80;
        constexpr unsigned char kind = 0xC0;
        while (at + size < line.size() &&
               (static_cast<unsigned char>(line[at + size]) & kind) == follows)
            ++size;
        if (used + size > most_octets) {
            out += "\r\n ";
            used = 1;
        }
        out += line.substr(at, size);
        used += size;
        at += size;
    }
    out += "\r\n";
}

[[nodiscard]] std::string digits_of(Date date) {
    std::string out;
    for (const char sign : base::print_date(date))
        if (sign != '-') out += sign;
    return out;
}

[[nodiscard]] std::string two(std::int64_t number) {
    constexpr std::int64_t ten = 10;
    return (number < ten ? "0" : "") + std::to_string(number);
}

/// A moment in universal time.
[[nodiscard]] std::string stamp_of(std::int64_t wall_ms) {
    constexpr std::int64_t hour = 3'600;
    constexpr std::int64_t minute = 60;
    const std::int64_t seconds = wall_ms / second_ms;
    const std::int64_t of_day = seconds % day_seconds;
    return digits_of({static_cast<std::int32_t>(seconds / day_seconds)}) + 'T' +
           two(of_day / hour) + two(of_day % hour / minute) + two(of_day % minute) + 'Z';
}

}  // namespace

std::vector<CalendarDay> calendar_days(const Assessed& aircraft, const Living& living) {
    Days days{aircraft};
    days.add_limits();
    days.add_plan(living);
    days.add_money();
    return days.done();
}

std::string print_calendar(const std::vector<CalendarDay>& days,
                           std::int64_t wall_ms,
                           std::int64_t sequence,
                           const base::Region& region) {
    std::string out;
    const auto put = [&](const std::string& line) { put_line(line, out); };
    put("BEGIN:VCALENDAR");
    put("VERSION:2.0");
    put("PRODID:-//twoclocks//twoclocks//EN");
    put("CALSCALE:GREGORIAN");
    for (const CalendarDay& day : days) {
        std::string more;
        for (const Message& one : day.more)
            more += (more.empty() ? "" : "\n") + base::say(one, region);
        const std::string what = escaped(base::say(day.what, region));
        put("BEGIN:VEVENT");
        put("UID:" + day.key + "@twoclocks.invalid");
        put("DTSTAMP:" + stamp_of(wall_ms));
        put("SEQUENCE:" + std::to_string(sequence));
        put("DTSTART;VALUE=DATE:" + digits_of(day.on));
        put("DTEND;VALUE=DATE:" + digits_of(base::add_days(day.on, 1)));
        put("SUMMARY:" + what);
        put("DESCRIPTION:" + escaped(more));
        put("TRANSP:TRANSPARENT");
        put("BEGIN:VALARM");
        put("ACTION:DISPLAY");
        put("DESCRIPTION:" + what);
        put("TRIGGER:-P" + std::to_string(day.alarm_days) + "D");
        put("END:VALARM");
        put("END:VEVENT");
    }
    put("END:VCALENDAR");
    return out;
}

}  // namespace twoclocks::views
