#include "engine/facts/check_care.hpp"

#include <string_view>

#include "engine/facts/check_limit.hpp"
#include "engine/facts/refuse.hpp"

namespace twoclocks::facts {
namespace {

using base::Problems;
using base::Trouble;

constexpr std::int32_t as_flown = 1000;

void need_source(const std::string& source, Problems& out) {
    if (source.empty()) refuse(out, Trouble::source_needed, {base::whole_arg(0)}, "source");
}

}  // namespace

Problems check_care(const Fields& fields) {
    Problems out;
    if (const auto* directive = std::get_if<Directive>(&fields)) {
        if (directive->number.empty())
            refuse(out, Trouble::directive_without_number, {base::whole_arg(0)}, "number");
    }
    if (const auto* means = std::get_if<AlternativeMeans>(&fields)) {
        if (means->reference.empty())
            refuse(out, Trouble::approval_without_reference, {base::whole_arg(0)}, "reference");
        check_interval(means->interval, "", out);
    }
    if (const auto* limit = std::get_if<WearLimit>(&fields)) {
        if (limit->unit.empty())
            refuse(out, Trouble::wear_without_unit, {base::whole_arg(0)}, "unit");
    }
    if (const auto* wear = std::get_if<Wear>(&fields)) {
        if (wear->unit.empty())
            refuse(out, Trouble::wear_without_unit, {base::whole_arg(0)}, "unit");
    }
    if (const auto* adjusted = std::get_if<MeterAdjusted>(&fields)) {
        need_source(adjusted->source, out);
    }
    if (const auto* factor = std::get_if<HoursFactor>(&fields)) {
        need_source(factor->source, out);
        if (factor->factor_thousandths < as_flown)
            refuse(out, Trouble::factor_below_one, {base::whole_arg(0)}, "factor_thousandths");
    }
    return out;
}

bool names_two(const Fields& fields) {
    return std::holds_alternative<Directive>(fields) ||
           std::holds_alternative<AlternativeMeans>(fields) ||
           std::holds_alternative<WearLimit>(fields) || std::holds_alternative<Wear>(fields) ||
           std::holds_alternative<MeterAdjusted>(fields) ||
           std::holds_alternative<ItemPrice>(fields);
}

}  // namespace twoclocks::facts
