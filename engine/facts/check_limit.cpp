#include "engine/facts/check_limit.hpp"

#include <string_view>

#include "engine/base/message_args.hpp"

namespace twoclocks::facts {
namespace {

using base::Problems;
using base::Trouble;

void complain(Problems& out, Trouble code, std::string_view key) {
    base::Problem problem = base::trouble(code, {base::whole_arg(0)});
    problem.field = key;
    out.push_back(std::move(problem));
}

}  // namespace

void check_interval(const Interval& interval, const std::string& prefix, Problems& out) {
    const auto zero = [&](bool is_zero, const char* key) {
        if (is_zero) complain(out, Trouble::limit_zero, prefix + key);
    };
    zero(interval.hours && interval.hours->seconds == 0, "hours");
    zero(interval.days && *interval.days == 0, "days");
    zero(interval.landings && interval.landings->value == 0, "landings");
    zero(interval.starts && interval.starts->value == 0, "starts");
    if (interval.months && interval.days)
        complain(out, Trouble::limit_two_calendars, prefix + "days");
}

namespace {

/// The key of the first setting of a tolerance that is there, empty when none is.
[[nodiscard]] std::string_view first_setting(const Tolerance& tolerance) {
    if (tolerance.hours) return "tolerance_hours";
    if (tolerance.days) return "tolerance_days";
    if (tolerance.permille) return "tolerance_permille";
    if (tolerance.cap_hours) return "tolerance_cap_hours";
    if (tolerance.cap_days) return "tolerance_cap_days";
    if (tolerance.carry_over) return "carry_over";
    if (tolerance.overfly_hours) return "overfly_hours";
    return {};
}

void check_tolerance(const LimitSet& limit, Problems& out) {
    const Tolerance& tolerance = limit.tolerance;
    const std::string_view setting = first_setting(tolerance);
    if (setting.empty()) return;
    if (limit.limit_class == LimitClass::airworthiness_limitation) {
        complain(out, Trouble::tolerance_not_allowed, setting);
        return;
    }
    if (tolerance.source.empty())
        complain(out, Trouble::tolerance_without_source, "tolerance_source");
    if (tolerance.cap_hours && !tolerance.permille)
        complain(out, Trouble::tolerance_cap_alone, "tolerance_cap_hours");
    if (tolerance.cap_days && !tolerance.permille)
        complain(out, Trouble::tolerance_cap_alone, "tolerance_cap_days");
    if (tolerance.overfly_hours && limit.limit_class != LimitClass::programme)
        complain(out, Trouble::overfly_not_programme, "overfly_hours");
}

}  // namespace

Problems check_limit(const LimitSet& limit) {
    Problems out;
    const Interval repeat{limit.hours, limit.months, limit.days, limit.landings, limit.starts};
    const bool any =
        repeat.hours || repeat.months || repeat.days || repeat.landings || repeat.starts;
    if (!any) complain(out, Trouble::limit_without_any, "hours");
    check_interval(repeat, "", out);
    check_interval(limit.first, "first_", out);
    check_interval(limit.cap, "cap_", out);
    check_tolerance(limit, out);
    return out;
}

Problems check_permit(const Permit& permit) {
    Problems out;
    if (!permit.hours && !permit.until) complain(out, Trouble::permit_without_any, "hours");
    return out;
}

}  // namespace twoclocks::facts
