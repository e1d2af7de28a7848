// A paper, a table or days for a calendar of one aircraft of a journal: what the report program
// hands over.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/base/date.hpp"
#include "engine/base/region.hpp"

namespace twoclocks::views {

/// What is asked for.
struct PaperAsked {
    std::string registration;  // of "part": its serial number
    // status, due, work, history, part, parts, plan, routes, money, cores, cash, reserve, sale,
    // closing, days; of all aircraft: fleet, order, compare
    std::string page;
    bool is_table{false};
};

/// The text of the file; nothing where there is no such aircraft, part or page. "days" is a
/// calendar file whatever is asked for.
/// Units: text as a person reads it. Errors: nothing. Source: our choice.
[[nodiscard]] std::optional<std::string> report_paper(std::string_view journal_text,
                                                      base::Date today,
                                                      const PaperAsked& asked,
                                                      const base::Region& region);

}  // namespace twoclocks::views
