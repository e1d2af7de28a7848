#include "engine/timeline/work_rules.hpp"

#include <algorithm>

namespace twoclocks::timeline {

void fold_work_rules(const std::vector<const Record*>& records,
                     base::Date today,
                     AircraftState& state) {
    for (const Record* record : records) {
        const auto* rule = std::get_if<facts::WorkRule>(&record->in_use.fields);
        if (rule == nullptr || record->in_use.on > today) continue;
        WorkRuleState out{record->root,
                          rule->name,
                          rule->renews,
                          rule->source,
                          rule->revision,
                          record->open,
                          record->heads.front().fact->id};
        const auto same = std::find_if(
            state.work_rules.begin(), state.work_rules.end(), [&](const WorkRuleState& each) {
                return each.name == out.name;
            });
        if (same == state.work_rules.end())
            state.work_rules.push_back(std::move(out));
        else
            *same = std::move(out);
    }
}

}  // namespace twoclocks::timeline
