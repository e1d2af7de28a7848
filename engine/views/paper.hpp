// Papers: what a page says, as blocks in the order of a sheet. Printed as one HTML file that needs
// nothing else, for A4 and Letter, and as CSV.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/assess.hpp"
#include "engine/views/money.hpp"
#include "engine/views/plan.hpp"
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
    base::Message title;
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

/// One HTML file: every word escaped, no script, nothing fetched.
/// Units: millimetres on paper. Errors: none. Source: HTML, CSS paged media.
[[nodiscard]] std::string print_html(const Paper& paper, const base::Region& region);

/// The tables of a paper, one below the other.
/// Units: text as a person reads it. Errors: none.
/// Source: RFC 4180: CRLF, quotes doubled; cells that a spreadsheet would run get an apostrophe.
[[nodiscard]] std::string print_csv(const Paper& paper, const base::Region& region);

}  // namespace twoclocks::views
