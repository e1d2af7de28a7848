#include "engine/plan/edit_tasks.hpp"

#include <algorithm>

namespace twoclocks::plan {

Task* find_task(Tasks& tasks, std::string_view key) {
    const auto found =
        std::find_if(tasks.begin(), tasks.end(), [&](const Task& one) { return one.key == key; });
    return found == tasks.end() ? nullptr : &*found;
}

void leave_out(Tasks& tasks, const std::string& key) {
    const Task* out = find_task(tasks, key);
    if (out == nullptr) return;
    const std::vector<Link> instead = out->after;
    std::erase_if(tasks, [&](const Task& task) { return task.key == key; });
    for (Task& task : tasks) {
        const auto waits = std::find_if(
            task.after.begin(), task.after.end(), [&](const Link& one) { return one.key == key; });
        if (waits == task.after.end()) continue;
        const std::int32_t lag = waits->lag;
        task.after.erase(waits);
        for (const Link& link : instead) {
            const auto known = std::find_if(task.after.begin(),
                                            task.after.end(),
                                            [&](const Link& one) { return one.key == link.key; });
            if (known == task.after.end()) task.after.push_back({link.key, link.lag + lag});
        }
    }
}

}  // namespace twoclocks::plan
