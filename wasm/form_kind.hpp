// Every form there is. To add one: a kind here, a pair in app/form_kinds.hpp, a line in each table
// of app/form.cpp and app/drafts.cpp.
#pragma once

#include <cstdint>

namespace twoclocks::canvas {

enum class FormKind : std::uint8_t {
    new_aircraft,
    meter_change,
    work_done,
    new_item,
    change_limit,
    permit,
    rename_item,
    usage_plan,
    parked,
    from_template,
    correct,
    withdraw,
    author,
    specimen,
    new_part,
    part_fit,
    part_remove,
    part_move,
    part_scrap,
    part_work,
    part_rebuild,
    event,
    sign_event,
    wear_limit,
    measure_wear,
    storage,
    return_to_service,
    meter_adjusted,
    flown_as,
    hours_factor,
    directive,
    decide,
    means,
    plan_task,
    plan_step,
    plan_terms,
    closed_days,
    route,
    plan_costs,
    plan_kept,
    fleet_bound,
    cost_line,
    exchange_rate,
    price_list,
    cost_terms,
    core,
    core_step,
    pay_term,
    payment,
    balance,
    reserve_terms,
    holder,
    item_price,
    closing,
    readings_table,
    parts_table,
    share,
    unlock
};

/// Forms with a password.
[[nodiscard]] constexpr bool has_secret(FormKind kind) {
    return kind == FormKind::share || kind == FormKind::unlock;
}

/// Rows out of a table.
[[nodiscard]] constexpr bool is_table(FormKind kind) {
    return kind == FormKind::readings_table || kind == FormKind::parts_table ||
           kind == FormKind::price_list;
}

}  // namespace twoclocks::canvas
