// The engine without a canvas: every view of a journal on a day, as JSON.
//   build/report FILE --today YYYY-MM-DD
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

#include "engine/views/print_views.hpp"

namespace {

constexpr const char* usage = "usage: report FILE --today YYYY-MM-DD\n";
constexpr const char* no_file = "report: the file could not be read: %s\n";

}  // namespace

int main(int count, char** words) {
    using namespace twoclocks;
    if (count != 4 || std::string{words[2]} != "--today") {
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
    std::fputs(views::print_report(text, today.value(), {}).c_str(), stdout);
    return 0;
}
