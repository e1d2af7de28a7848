#include "engine/facts/check_limit.hpp"

#include <string_view>

#include "engine/facts/refuse.hpp"

namespace twoclocks::facts {
namespace {

using base::Problems;
using base::Trouble;

}  // namespace

void check_interval(const Interval& interval, const std::string& prefix, Problems& out) {
    const auto zero = [&](bool is_zero, const char* key) {
        if (is_zero) refuse(out, Trouble::limit_zero, {base::whole_arg(0)}, prefix + key);
    };
    zero(interval.hours && interval.hours->seconds == 0, "hours");
    zero(interval.days && *interval.days == 0, "days");
    zero(interval.landings && interval.landings->value == 0, "landings");
    zero(interval.starts && interval.starts->value == 0, "starts");
    if (interval.months && interval.days)
        refuse(out, Trouble::limit_two_calendars, {base::whole_arg(0)}, prefix + "days");
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
        refuse(out, Trouble::tolerance_not_allowed, {base::whole_arg(0)}, setting);
        return;
    }
    if (tolerance.source.empty())
        refuse(out, Trouble::tolerance_without_source, {base::whole_arg(0)}, "tolerance_source");
    if (tolerance.cap_hours && !tolerance.permille)
        refuse(out, Trouble::tolerance_cap_alone, {base::whole_arg(0)}, "tolerance_cap_hours");
    if (tolerance.cap_days && !tolerance.permille)
        refuse(out, Trouble::tolerance_cap_alone, {base::whole_arg(0)}, "tolerance_cap_days");
    if (tolerance.overfly_hours && limit.limit_class != LimitClass::programme)
        refuse(out, Trouble::overfly_not_programme, {base::whole_arg(0)}, "overfly_hours");
}

}  // namespace

Problems check_limit(const LimitSet& limit) {
    Problems out;
    const Interval repeat{limit.hours, limit.months, limit.days, limit.landings, limit.starts};
    const bool any =
        repeat.hours || repeat.months || repeat.days || repeat.landings || repeat.starts;
    if (!any) refuse(out, Trouble::limit_without_any, {base::whole_arg(0)}, "hours");
    check_interval(repeat, "", out);
    check_interval(limit.first, "first_", out);
    check_interval(limit.cap, "cap_", out);
    check_tolerance(limit, out);
    return out;
}

Problems check_permit(const Permit& permit) {
    Problems out;
    if (!permit.hours && !permit.until)
        refuse(out, Trouble::permit_without_any, {base::whole_arg(0)}, "hours");
    return out;
}

}  // namespace twoclocks::facts
