#include "engine/plan/default_tasks.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::plan {
namespace {

using base::Word;

/// One row of a table; `after` is a list of keys with commas between.
struct Row {
    std::string_view key;
    Word name;
    Estimate days;
    Estimate calendar_work;  // how long in a calendar inspection; -1: not done there
    DayKind kind;
    Stage stage;
    Role role;
    std::string_view after;
};

constexpr Estimate none{-1, -1, -1};
// Days on which a shop works, and days that pass by themselves.
constexpr auto busy = DayKind::working;
constexpr auto idle = DayKind::calendar;

constexpr std::array rows{
    Row{"quotes", Word::task_quotes, {5, 10, 20}, {3, 5, 10}, busy, Stage::ahead, Role::none, ""},
    Row{"records", Word::task_records, {2, 5, 10}, {1, 3, 6}, busy, Stage::ahead, Role::none, ""},
    Row{"money", Word::task_money, {3, 5, 15}, none, busy, Stage::ahead, Role::none, "quotes"},
    Row{"order",
        Word::task_order,
        {1, 2, 5},
        {1, 2, 5},
        busy,
        Stage::ahead,
        Role::order,
        "quotes,money"},
    Row{"kit",
        Word::task_kit,
        {147, 154, 168},
        {30, 45, 90},
        idle,
        Stage::ahead,
        Role::kit_here,
        "order"},
    Row{"kit_check",
        Word::task_kit_check,
        {1, 2, 3},
        {1, 1, 2},
        busy,
        Stage::ahead,
        Role::none,
        "kit"},
    Row{"slot", Word::task_slot, {1, 3, 10}, {1, 3, 10}, busy, Stage::ahead, Role::book, "quotes"},
    Row{"queue",
        Word::task_queue,
        {20, 40, 90},
        {10, 20, 45},
        idle,
        Stage::ahead,
        Role::none,
        "slot"},
    Row{"hand_over",
        Word::task_hand_over,
        {1, 1, 2},
        {1, 1, 2},
        busy,
        Stage::grounded,
        Role::stop,
        ""},
    Row{"transport",
        Word::task_transport,
        {1, 2, 5},
        {1, 2, 5},
        busy,
        Stage::grounded,
        Role::none,
        "hand_over"},
    Row{"induct",
        Word::task_induct,
        {1, 2, 4},
        {1, 1, 3},
        busy,
        Stage::grounded,
        Role::none,
        "transport,queue,kit_check,records"},
    Row{"strip",
        Word::task_strip,
        {4, 6, 10},
        {2, 4, 6},
        busy,
        Stage::grounded,
        Role::none,
        "induct"},
    Row{"engine",
        Word::task_engine,
        {15, 25, 45},
        none,
        idle,
        Stage::grounded,
        Role::none,
        "strip"},
    Row{"inspect",
        Word::task_inspect,
        {4, 6, 12},
        {2, 4, 8},
        busy,
        Stage::grounded,
        Role::none,
        "strip"},
    Row{"findings",
        Word::task_findings,
        {3, 8, 25},
        {2, 5, 15},
        busy,
        Stage::grounded,
        Role::none,
        "inspect"},
    Row{"frame", Word::task_frame, {5, 8, 14}, none, busy, Stage::grounded, Role::none, "inspect"},
    Row{"build",
        Word::task_build,
        {10, 14, 20},
        {3, 5, 8},
        busy,
        Stage::grounded,
        Role::fit,
        "findings,frame"},
    Row{"engine_in",
        Word::task_engine_in,
        {1, 2, 4},
        none,
        busy,
        Stage::grounded,
        Role::none,
        "build,engine"},
    Row{"rig",
        Word::task_rig,
        {1, 2, 4},
        {1, 1, 2},
        busy,
        Stage::grounded,
        Role::none,
        "build,engine_in"},
    Row{"second_look",
        Word::task_second_look,
        {1, 1, 2},
        {1, 1, 2},
        busy,
        Stage::grounded,
        Role::none,
        "rig"},
    Row{"weigh", Word::task_weigh, {1, 1, 2}, none, busy, Stage::grounded, Role::none, "rig"},
    Row{"ground_runs",
        Word::task_ground_runs,
        {1, 2, 4},
        {1, 1, 3},
        busy,
        Stage::grounded,
        Role::none,
        "second_look"},
    Row{"balance",
        Word::task_balance,
        {1, 2, 5},
        {1, 1, 3},
        busy,
        Stage::grounded,
        Role::none,
        "ground_runs"},
    Row{"test_flight",
        Word::task_test_flight,
        {1, 1, 3},
        {1, 1, 2},
        busy,
        Stage::grounded,
        Role::none,
        "balance,weigh"},
    Row{"release",
        Word::task_release,
        {1, 1, 3},
        {1, 1, 2},
        busy,
        Stage::grounded,
        Role::release,
        "test_flight"},
    Row{"cores_out",
        Word::task_cores_out,
        {3, 5, 10},
        none,
        busy,
        Stage::after,
        Role::send_cores,
        "strip"},
    Row{"cores_back",
        Word::task_cores_back,
        {60, 90, 120},
        none,
        idle,
        Stage::after,
        Role::credit,
        "cores_out"},
};

/// Tasks that only some routes have.
constexpr std::array<std::pair<std::string_view, Word>, 4> of_routes{
    {{"crate", Word::task_crate},
     {"shop", Word::task_shop},
     {"home", Word::task_home},
     {"assemble", Word::task_assemble}}};

[[nodiscard]] const Row* row_of(std::string_view key) {
    for (const Row& row : rows)
        if (row.key == key) return &row;
    return nullptr;
}

/// The keys of a row; of those that are not done, what they wait for instead.
void add_links(std::string_view after, Work wanted, std::vector<Link>& out) {
    while (!after.empty()) {
        const std::size_t end = std::min(after.find(','), after.size());
        const std::string_view key = after.substr(0, end);
        after.remove_prefix(std::min(end + 1, after.size()));
        const Row* row = row_of(key);
        if (row == nullptr) continue;
        if (wanted == Work::calendar_work && row->calendar_work == none) {
            add_links(row->after, wanted, out);
            continue;
        }
        const Link link{std::string{key}, 0};
        if (std::find(out.begin(), out.end(), link) == out.end()) out.push_back(link);
    }
}

}  // namespace

bool is_ours(std::string_view key) {
    return row_of(key) != nullptr;
}

bool is_of_routes(std::string_view key) {
    return std::any_of(
        of_routes.begin(), of_routes.end(), [&](const auto& named) { return named.first == key; });
}

base::Arg task_name(std::string_view key, const std::string& own) {
    if (!own.empty()) return base::text_arg(own);
    if (const Row* row = row_of(key)) return base::word_arg(row->name);
    for (const auto& [named, word] : of_routes)
        if (named == key) return base::word_arg(word);
    return base::text_arg(std::string{key});
}

Tasks default_tasks(Work wanted) {
    Tasks out;
    for (const Row& row : rows) {
        const Estimate& estimate = wanted == Work::overhaul ? row.days : row.calendar_work;
        if (estimate == none) continue;
        Task task{std::string{row.key},
                  base::word_arg(row.name),
                  estimate,
                  row.kind,
                  row.stage,
                  row.role,
                  {}};
        add_links(row.after, wanted, task.after);
        out.push_back(std::move(task));
    }
    return out;
}

}  // namespace twoclocks::plan
