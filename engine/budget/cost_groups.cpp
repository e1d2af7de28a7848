#include "engine/budget/cost_groups.hpp"

namespace twoclocks::budget {

using facts::CostGroup;

std::optional<std::int32_t> rise_of(CostGroup group, const facts::CostTerms& terms) {
    switch (group) {
        case CostGroup::kit:
        case CostGroup::freight:
        case CostGroup::duty:
            return terms.kit_rise_permille;
        case CostGroup::whole_price:
        case CostGroup::labour:
        case CostGroup::findings:
        case CostGroup::frame:
        case CostGroup::interior:
        case CostGroup::avionics:
            return terms.labour_rise_permille;
        case CostGroup::engine:
            return terms.engine_rise_permille;
        case CostGroup::ferry:
        case CostGroup::cover:
        case CostGroup::financing:
        case CostGroup::lost_use:
        case CostGroup::other:
            return terms.other_rise_permille;
    }
    return std::nullopt;
}

std::optional<base::Date> agreed_on(CostGroup group, const PayDays& days) {
    const bool is_ordered = group == CostGroup::kit || group == CostGroup::engine ||
                            group == CostGroup::freight || group == CostGroup::duty;
    return is_ordered ? days.ordered : days.booked;
}

std::optional<base::Date> paid_on(CostGroup group, const PayDays& days) {
    switch (group) {
        case CostGroup::kit:
        case CostGroup::engine:
        case CostGroup::freight:
        case CostGroup::duty:
            return days.shipped;
        case CostGroup::ferry:
            return days.stopped;
        case CostGroup::whole_price:
        case CostGroup::labour:
        case CostGroup::findings:
        case CostGroup::frame:
        case CostGroup::interior:
        case CostGroup::avionics:
        case CostGroup::cover:
        case CostGroup::financing:
        case CostGroup::lost_use:
        case CostGroup::other:
            return days.back;
    }
    return std::nullopt;
}

}  // namespace twoclocks::budget
