// What the page "Plan" shows: plain structs of words and figures, nothing left to compute.
#pragma once

#include "engine/facts/plan_facts.hpp"
#include "engine/views/views.hpp"

namespace twoclocks::views {

/// One task on the time line.
struct PlanTaskRow {
    std::string key;
    base::Message name;
    base::Message days;      // "12 Jan 2027 to 3 Feb 2027", "done 3 Jan 2027"
    base::Message estimate;  // whose, how long
    base::Message decides;   // how often it decides the end; word `blank`: done
    bool decides_often{false};
    bool done{false};
    bool grounded{false};           // the aircraft stands meanwhile
    std::int32_t from_permille{0};  // of the time line
    std::int32_t to_permille{0};
    std::int32_t late_permille{0};  // one of ten ends later
};

/// One task that somebody should see to.
struct PlanNextRow {
    std::string key;
    base::Message name;
    base::Message when;  // "by 3 Jan 2027"
    bool late{false};
};

/// How far one day has moved from the plan that was kept.
struct SlipRow {
    base::Message name;
    base::Message moved;
};

/// When it is cheapest to go in.
struct InductionView {
    base::Message missing{base::Word::blank, {}};  // why there is no day
    Figure best;
    std::vector<base::Message> lines;
    std::optional<ChartView> chart;
};

/// The campaign of one aircraft.
struct PlanView {
    base::Id id;
    std::string registration;
    base::Message missing{base::Word::blank, {}};  // why there is no date
    std::vector<base::Problem> faults;             // of the tasks
    Figure order;
    Figure book;
    Figure stop;
    Figure back;
    bool order_late{false};
    bool book_late{false};
    base::Message window{base::Word::blank, {}};  // the kit would wait too long
    base::Message confidence;
    base::Message title;  // "If all is begun today"
    std::vector<base::Message> today;
    std::vector<PlanNextRow> next;
    std::vector<PlanTaskRow> rows;
    std::int32_t today_permille{0};  // on the time line; -1: before it
    std::int32_t limit_permille{0};
    base::Message from;  // its ends
    base::Message to;
    std::optional<ChartView> chart;
    std::vector<base::Message> sure;
    std::vector<base::Message> notes;
    std::vector<base::Message> route;  // by which it is planned, and what that takes
    std::vector<SlipRow> slip;         // against the plan that was kept
    base::Message slip_title;
    facts::PlanKept as_it_stands;  // its days, for keeping
    InductionView induction;
};

}  // namespace twoclocks::views
