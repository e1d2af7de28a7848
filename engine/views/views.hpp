// What panels, reports and files show: plain structs of words and figures, nothing left to compute.
//
// Every figure a person might doubt is a Figure: its text, and the `why` that answers it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/id.hpp"
#include "engine/base/message.hpp"
#include "engine/base/problem.hpp"

namespace twoclocks::views {

/// What an aircraft or an item asks of its owner. In order of urgency, least first.
enum class State : std::uint8_t { nothing_due, act, unknown, due, before_next_flight, over };

/// One line of an explanation: a sentence, and the fact it rests on if it rests on one.
struct WhyLine {
    base::Message text;
    std::optional<base::Id> fact;
    bool is_sum{false};  // the figures put together
};

/// The answer to "why?": what the figure is, what it was worked out from, the rule, its source.
struct Why {
    base::Message title;
    base::Message figure;
    std::vector<WhyLine> lines;
};

/// A figure and its explanation.
struct Figure {
    base::Message text;
    Why why;
    bool questioned{false};  // with another answer to an open question it would be another
};

/// A figure that is said without an explanation.
struct Told {
    base::Message text;
    bool questioned{false};  // as above
};

/// Which clock stops it.
enum class Edge : std::uint8_t { none, hours, calendar, count };

/// One clock as a bar: what is left, in words and in thousandths of the whole.
struct ClockView {
    bool known{false};
    base::Message left;             // "1,044.0 h", "7 y 166 d", or "unknown"
    std::int32_t left_permille{0};  // 0 to 1000, rounded down
    bool over{false};
};

/// A point of the life box: thousandths of the box's sides, so a panel only scales.
/// Range: 0 to 1000 inside the box; the line may leave it when a limit is flown past.
struct BoxPoint {
    std::int32_t across_permille{0};  // calendar, left to right
    std::int32_t up_permille{0};      // hours, bottom to top
};

/// Hours on a day to come, in thousandths of the box: none above its top edge.
struct BoxSpread {
    std::int32_t across_permille{0};
    std::int32_t early_permille{0};  // the most
    std::int32_t likely_permille{0};
    std::int32_t late_permille{0};
};

/// A marker on the box: another limit that comes before its edges.
struct BoxMark {
    Edge edge{Edge::calendar};  // a day (vertical line) or a total (horizontal line)
    std::int32_t at_permille{0};
    base::Message label;
};

/// The life box: a rectangle whose sides are the two limits of the overhaul.
struct LifeBoxView {
    bool known{false};  // false: no overhaul limit or no readings; `missing` says which
    base::Message missing;
    base::Message hours_edge;     // "2,400 h"
    base::Message calendar_edge;  // "May 2034"
    base::Message start;          // "May 2022"
    base::Message width;          // "12 years"
    std::int32_t hour_ticks{0};   // marks on the hours side, every fifth is long
    std::int32_t year_ticks{0};   // marks on the calendar side, every fourth is long
    std::vector<BoxPoint> line;   // the life so far, oldest first, last is today
    bool fan_known{false};
    BoxPoint early;                // where the line of the most hours meets an edge
    BoxPoint likely;               // where the line expected does
    BoxPoint late;                 // where the line of the fewest does
    std::vector<BoxSpread> fan{};  // the three from today to the calendar's end
    Edge meets{Edge::none};        // the edge the likely line meets
    std::vector<BoxMark> marks;
    base::Message spoken;  // the picture in one sentence, for the mirror
};

/// One bar of a chart.
struct ChartBar {
    base::Message label;
    std::int32_t permille{0};  // of the greatest
    bool planned{false};       // not flown yet
};

/// How much, over time: bars of one clock, or a curve through their tops.
struct ChartView {
    base::Message title;
    base::Message greatest;  // what the tallest bar may reach: "41.2 h"
    Edge edge{Edge::hours};
    std::vector<ChartBar> bars;
    base::Message spoken;  // the picture in one sentence
    bool is_curve{false};  // what grows to a whole
};

/// One aircraft in the fleet list.
struct AircraftCard {
    base::Id id;
    std::string registration;
    State state{State::unknown};
    base::Message state_word;
    base::Message sentence;  // "Hours stop it, about Sep 2029"
    ClockView hours;
    ClockView calendar;
    LifeBoxView box;
    base::Message questions{base::Word::blank, {}};  // how many are open
};

/// The fleet, what needs me first on top.
struct FleetView {
    std::vector<AircraftCard> cards;
    bool has_demo{false};                           // some of it is invented: say so
    base::Message reminder{base::Word::blank, {}};  // of a copy to be made, by whoever keeps them
};

/// Something that happened and asks for an inspection before the next flight.
struct EventView {
    base::Id event;
    Figure title;                                   // "Event: hard landing on 3 May 2026"
    base::Message total;                            // "At 1,234.5 h total."
    base::Message found{base::Word::blank, {}};     // as reported
    base::Message source;                           // what says how to inspect it
    std::vector<base::Message> open;                // "Not signed for: ISLE-1"
    base::Message disputed{base::Word::blank, {}};  // records disagree about it
    base::Message look;                             // what to do, and who decides
};

/// What an item rests on when that is a directive; word `blank` where nothing is to be said.
struct DirectiveView {
    base::Message name;  // "Directive D 7, revision 2, by Authority"
    base::Message standing;
    base::Message last;               // "Last done 11 Apr 2019 at 1,262.5 h"
    base::Message method;             // what was done, by which reference
    std::vector<base::Message> next;  // in hours and by day
    base::Message means;              // another approved way, where one is in use
    bool can_decide{false};           // a record of the directive is about it
};

/// One limit of one item.
struct DueRow {
    base::Id item;
    std::string name;         // "Main gearbox 7: Inspection" when it hangs on a part
    base::Id part;            // empty: it hangs on the aircraft
    base::Message part_name;  // "Main gearbox, serial 7: Main"; word `blank` on the aircraft
    State state{State::unknown};
    base::Message state_word;
    Edge binding{Edge::none};  // which of its clocks comes first
    std::optional<Figure> hours_left;
    std::optional<Figure> calendar_left;
    std::optional<Figure> count_left;
    std::optional<Figure> wear;  // "3.2 mm, at most 4 mm"
    Figure likely;               // "about 21 Sep 2029"
    base::Message source;        // "Maintenance manual, rev 5" or "source not given"
    bool is_overhaul{false};
    std::optional<DirectiveView> directive{};
};

/// One item of the list of checks.
struct CheckRow {
    DueRow due;
    std::string chapter;
    std::optional<ClockView> hours;  // none: it has no such clock
    std::optional<ClockView> calendar;
};

struct ChecksGroup {
    base::Message title;  // word `blank` where there is one group
    std::vector<CheckRow> rows;
};

/// Every item of an aircraft that answers a search.
struct ChecksView {
    base::Id id;
    std::string registration;
    base::Message summary;  // "3 of 12 checks"
    std::vector<ChecksGroup> groups;
};

struct ReturnGroup {
    base::Message title;
    std::vector<DueRow> rows;
};

/// What is due before the next flight if an aircraft comes back on a day.
struct ReturnView {
    base::Id id;
    std::string registration;
    std::vector<base::Message> storage;  // "Stored since 3 May 2026, by ..."
    base::Message summary;               // "If back on 1 Jun 2026: 3 checks before the next flight"
    std::vector<base::Message> events;   // not signed for
    std::vector<ReturnGroup> groups;     // those that have rows
    bool is_empty{false};                // nothing stops it that day
};

/// Two or more records that cannot all be right.
struct QuestionView {
    base::Message what;    // "Two records disagree: reading on 3 May 2026"
    base::Message in_use;  // "Until you answer, the safer value is in use: 1,234.5 h"

    struct Side {
        base::Id fact;
        base::Message value;                          // what this one says
        base::Message told_by;                        // who, when, device
        std::vector<base::Message> differs{};         // fields that not every side has like this
        base::Message origin{base::Word::blank, {}};  // of a file that is looked at: here or in it
    };

    std::vector<Side> sides;
};

/// One aircraft.
struct AircraftView {
    base::Id id;
    std::string registration;
    std::string type;
    std::string serial;
    State state{State::unknown};
    base::Message state_word;
    Figure hours_left;  // of the overhaul
    Figure calendar_left;
    bool hours_known{false};
    bool calendar_known{false};
    Figure answer;  // "Hours stop it first, about 21 Sep 2029."
    Edge answer_edge{Edge::none};
    Figure range;  // "Between Feb 2029 and Aug 2030 at its own least and greatest rate."
    LifeBoxView box;
    Figure total_time;                // "1,356.0 h total, read 3 May 2026"
    Figure rate;                      // "143 h a year"
    Figure break_even;                // "245.4 h a year meets both clocks at once"
    std::vector<DueRow> due;          // soonest first
    std::vector<EventView> events{};  // not signed for, oldest first
    std::vector<QuestionView> questions;
    std::vector<base::Message> cautions;
    std::vector<base::Problem> troubles;   // records to look at: what happened, what to do
    std::vector<base::Message> storage{};  // stored, or about to be; none: neither
    bool can_return{false};                // a storage without an end that nobody disputes
};

/// What can be done with one record.
struct HistoryRow {
    base::Id fact;
    base::Id aircraft;  // empty when about none
    base::Date on;
    base::Message date;
    base::Message what;     // "Reading 1,234.5 h"
    base::Message detail;   // "ISLE-1, collective meter"
    base::Message told_by;  // "by Ann, 3 May 2026, this device"
    bool corrected{false};  // another record replaces it
    bool withdrawn{false};
    bool questioned{false};  // an open question asks about it
    bool can_correct{false};
    bool can_withdraw{false};
    bool unknown_kind{false};  // written by a newer version: kept, not understood
};

/// Records, newest first.
struct HistoryView {
    std::string registration;  // empty: the whole fleet
    std::vector<HistoryRow> rows;
};

/// What the reading pad needs to know before a digit is typed.
struct LogView {
    base::Id aircraft;
    std::string registration;
    base::Message meter_name;
    bool has_meter{false};
    std::optional<base::FlightTime> last_reads;
    std::optional<base::Date> last_on;
    base::Message last;  // "Last: 1,234.5 on 3 May 2026" or "No reading yet"
};

}  // namespace twoclocks::views
