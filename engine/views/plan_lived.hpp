// A campaign that was lived through, with everything its words are made from.
#pragma once

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/plan/from_records.hpp"
#include "engine/plan/moment.hpp"
#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Everything the words are made from.
struct Lived {
    const Assessed& aircraft;
    const limits::ItemDue& item;
    const forecast::Projection& projection;
    plan::Network network;
    plan::RunOut run_out;
    plan::Terms terms;
    plan::Outcome outcome;

    [[nodiscard]] base::Date day(std::int32_t from_today) const {
        return base::add_days(aircraft.today, from_today);
    }

    [[nodiscard]] base::Arg said(std::int32_t from_today) const {
        return base::day_arg(day(from_today));
    }

    [[nodiscard]] const plan::Task* with(plan::Role role) const {
        const std::int32_t place = plan::place_of(network, role);
        return place < 0 ? nullptr : &network.tasks[static_cast<std::size_t>(place)];
    }

    [[nodiscard]] bool any_begun() const {
        return std::any_of(network.tasks.begin(), network.tasks.end(), [](const plan::Task& task) {
            return task.progress.begun || task.progress.promised;
        });
    }
};

}  // namespace twoclocks::views
