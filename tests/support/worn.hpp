// The check of the hangar as an item on condition, and what is measured of it.
#pragma once

#include "tests/support/hangar.hpp"

#include <optional>
#include <string>

#include "engine/timeline/wear.hpp"

namespace twoclocks::support {

struct Worn : Hangar {
    facts::Fact keep(facts::Fact fact) {
        journal.add(fact);
        return fact;
    }

    facts::Fact limited(std::int32_t thousandths,
                        facts::WearSense sense = facts::WearSense::at_most,
                        const char* on = "2024-01-02",
                        const char* unit = "mm") {
        return keep(ann.write(
            day(on), with(check), facts::WearLimit{thousandths, unit, sense, "Manual", {}}));
    }

    /// At a total in tenths; below zero is not given.
    facts::Fact measured(const char* on,
                         std::int32_t thousandths,
                         const char* unit = "mm",
                         std::int64_t total_tenths = -1) {
        facts::Wear wear{thousandths, unit, {}, {}, {}};
        if (total_tenths >= 0) wear.total = base::tenths(total_tenths);
        return keep(ann.write(day(on), with(check), wear));
    }

    [[nodiscard]] std::optional<timeline::WearState> wear() const {
        for (const timeline::ItemState& item : timeline::replay(journal, id(), today).items) {
            if (item.id == check.id) return item.wear;
        }
        return std::nullopt;
    }

    [[nodiscard]] timeline::WearFinding finding() const { return timeline::judge_wear(*wear()); }
};

}  // namespace twoclocks::support
