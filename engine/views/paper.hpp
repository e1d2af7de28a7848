// Papers: what a page says, as blocks in the order of a sheet. Printed as one HTML file that needs
// nothing else, for A4 and Letter, and as CSV.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/assess.hpp"
#include "engine/views/money.hpp"
#include "engine/views/part_list_view.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/plan.hpp"
#include "engine/views/plan_lived.hpp"
#include "engine/views/routes.hpp"
#include "engine/views/stagger_view.hpp"
#include "engine/views/status.hpp"
#include "engine/views/sums.hpp"

namespace twoclocks::views {

/// A stretch of a paper: lines, then a table.
struct PaperBlock {
    base::Message title{base::Word::blank, {}};
    std::vector<base::Message> lines{};
    std::vector<std::vector<std::string>> rows{};  // text as it is read, each as many cells
};

/// One paper.
struct Paper {
    base::Message title{base::Word::blank, {}};
    std::string plate;  // registration, type, serial number
    std::string as_of;  // the day, and how many letters of the fingerprint of the record
    bool is_invented{false};
    std::optional<LifeBoxView> box{};
    std::vector<PaperBlock> blocks{};
    std::vector<base::Message> notes{};
};

/// What every paper of an aircraft bears.
struct PaperHead {
    std::string plate;
    base::Date today;
    std::string fingerprint;  // of the journal
    bool is_invented{false};
};

/// What papers of an aircraft bear.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] PaperHead paper_head(const Assessed& aircraft, std::string fingerprint);

/// What papers of several aircraft bear.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] PaperHead paper_head(base::Date today, std::string fingerprint, bool is_invented);

/// What papers of a part bear.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] PaperHead paper_head(const PartHistoryView& part,
                                   base::Date today,
                                   std::string fingerprint,
                                   bool is_invented,
                                   const base::Region& region);

/// True where a part is or was on an aircraft.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool was_aboard(const PartHistoryView& part, base::Id aircraft);

/// The same words as the page, as a paper.
/// Units: text as a person reads it. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const SumsView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// As above.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const StatusView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// As above.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const MoneyView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// As above.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const PlanView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// The list of what is due, as it was asked for.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const ChecksView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// The history of a part.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const PartHistoryView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// What a list to work by is made from.
struct WorkList {
    PlanView plan;
    ChecksView due;                 // by the time it is back
    std::vector<EventView> events;  // not signed for
    SumsView cores;
};

/// What is on such a list for an aircraft.
/// Units: none. Errors: none. Source: the likely day that the plan has it back; where there is
/// none, every check.
[[nodiscard]] WorkList make_work_list(const Assessed& aircraft, const Living& living);

/// A list to work by, with room to sign.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const WorkList& list,
                             const PaperHead& head,
                             const base::Region& region);

/// The fleet.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const FleetView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// Parts, as they were asked for.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const PartListView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// Records, newest first.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const HistoryView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// Ways of having the work done.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const RoutesView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// Who of a fleet goes in when.
/// Units: as above. Errors: none. Source: our choice.
[[nodiscard]] Paper paper_of(const StaggerView& view,
                             const PaperHead& head,
                             const base::Region& region);

/// One HTML file: every word escaped, no script, nothing fetched.
/// Units: millimetres on paper. Errors: none. Source: HTML, CSS paged media.
[[nodiscard]] std::string print_html(const Paper& paper, const base::Region& region);

/// The same as a table: what is above and below the rows stands in the first column.
/// Units: text as a person reads it. Errors: none.
/// Source: RFC 4180: CRLF, quotes doubled; cells that a spreadsheet would run get an apostrophe.
[[nodiscard]] std::string print_csv(const Paper& paper, const base::Region& region);

}  // namespace twoclocks::views
