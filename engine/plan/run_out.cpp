#include "engine/plan/run_out.hpp"

#include <algorithm>

#include "engine/base/real.hpp"

namespace twoclocks::plan {
namespace {

constexpr double tenth_z = 1.281551565544600466965;  // nine tenths lie below; Abramowitz and Stegun
constexpr double no_end = 100.0 * 366;

[[nodiscard]] const std::vector<double>& parts_of_chance() {
    static const std::vector<double> parts = [] {
        std::vector<double> out;
        for (std::int32_t part = 0; part < run_out_parts; ++part)
            out.push_back(base::normal_quantile((static_cast<double>(part) + 0.5) / run_out_parts));
        return out;
    }();
    return parts;
}

}  // namespace

std::vector<double> run_out_days(const RunOut& run_out) {
    const auto likely = static_cast<double>(run_out.likely);
    const double sooner = std::max(likely - static_cast<double>(run_out.early), 0.0) / tenth_z;
    const double late = run_out.late ? static_cast<double>(*run_out.late) : no_end;
    const double later = std::max(late - likely, 0.0) / tenth_z;
    std::vector<double> out;
    for (const double z : parts_of_chance()) {
        double day = likely + z * (z < 0 ? sooner : later);
        if (run_out.calendar) day = std::min(day, static_cast<double>(*run_out.calendar));
        out.push_back(day);
    }
    return out;
}

RunOut sooner_by(RunOut run_out, std::int32_t days) {
    run_out.early -= days;
    run_out.likely -= days;
    if (run_out.late) *run_out.late -= days;
    if (run_out.calendar) *run_out.calendar -= days;
    return run_out;
}

}  // namespace twoclocks::plan
