#include "engine/facts/check_care.hpp"

#include <string_view>

#include "engine/base/message_args.hpp"
#include "engine/facts/check_limit.hpp"

namespace twoclocks::facts {
namespace {

using base::Problems;
using base::Trouble;

constexpr std::int32_t as_flown = 1000;

void complain(Problems& out, Trouble code, std::string_view key) {
    base::Problem problem = base::trouble(code, {base::whole_arg(0)});
    problem.field = key;
    out.push_back(std::move(problem));
}

void need_source(const std::string& source, Problems& out) {
    if (source.empty()) complain(out, Trouble::source_needed, "source");
}

}  // namespace

Problems check_care(const Fields& fields) {
    Problems out;
    if (const auto* directive = std::get_if<Directive>(&fields)) {
        if (directive->number.empty()) complain(out, Trouble::directive_without_number, "number");
    }
    if (const auto* means = std::get_if<AlternativeMeans>(&fields)) {
        if (means->reference.empty())
            complain(out, Trouble::approval_without_reference, "reference");
        check_interval(means->interval, "", out);
    }
    if (const auto* limit = std::get_if<WearLimit>(&fields)) {
        if (limit->unit.empty()) complain(out, Trouble::wear_without_unit, "unit");
    }
    if (const auto* wear = std::get_if<Wear>(&fields)) {
        if (wear->unit.empty()) complain(out, Trouble::wear_without_unit, "unit");
    }
    if (const auto* adjusted = std::get_if<MeterAdjusted>(&fields)) {
        need_source(adjusted->source, out);
    }
    if (const auto* factor = std::get_if<HoursFactor>(&fields)) {
        need_source(factor->source, out);
        if (factor->factor_thousandths < as_flown)
            complain(out, Trouble::factor_below_one, "factor_thousandths");
    }
    return out;
}

bool names_two(const Fields& fields) {
    return std::holds_alternative<Directive>(fields) ||
           std::holds_alternative<AlternativeMeans>(fields) ||
           std::holds_alternative<WearLimit>(fields) || std::holds_alternative<Wear>(fields) ||
           std::holds_alternative<MeterAdjusted>(fields);
}

}  // namespace twoclocks::facts
