// The engine without a canvas: every view of a journal on a day, as JSON, or one page of one
// aircraft (or part, by its serial number) as a paper, a table or days for a calendar.
//   build/report FILE --today YYYY-MM-DD
//   build/report FILE --today YYYY-MM-DD --paper|--table PAGE REGISTRATION
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

#include "engine/views/print_views.hpp"
#include "engine/views/report_paper.hpp"

namespace {

constexpr const char* usage =
    "usage: report FILE --today YYYY-MM-DD [--paper|--table PAGE REGISTRATION]\n";
constexpr const char* no_file = "report: the file could not be read: %s\n";

}  // namespace

int main(int count, char** words) {
    using namespace twoclocks;
    constexpr int short_form = 4;
    constexpr int long_form = 7;
    const bool is_paper = count == long_form && (std::string{words[4]} == "--paper" ||
                                                 std::string{words[4]} == "--table");
    if ((count != short_form && !is_paper) || std::string{words[2]} != "--today") {
        std::fputs(usage, stderr);
        return 2;
    }
    const base::Result<base::Date> today = base::parse_date(words[3]);
    if (!today) {
        std::fprintf(stderr, "report: %s\n", base::say_what(today.problems().front(), {}).c_str());
        return 2;
    }
    std::ifstream file{words[1], std::ios::binary};
    if (!file) {
        std::fprintf(stderr, no_file, words[1]);
        return 2;
    }
    const std::string text{std::istreambuf_iterator<char>{file}, {}};
    if (!is_paper) {
        std::fputs(views::print_report(text, today.value(), {}).c_str(), stdout);
        return 0;
    }
    const auto out = views::report_paper(
        text, today.value(), {words[6], words[5], std::string{words[4]} == "--table"}, {});
    if (!out) {
        std::fputs(usage, stderr);
        return 2;
    }
    std::fputs(out->c_str(), stdout);
    return 0;
}
