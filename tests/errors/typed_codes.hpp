// What a person types, and the code of what is wrong with it.
#pragma once

#include <cstdint>
#include <set>
#include <string>

namespace twoclocks::support::typed {

using CodeNames = std::set<std::string>;

struct Typed {
    const char* text;
    const char* code;
};

inline constexpr Typed typed_hours[] = {{"", "hours_empty"},
                                        {"twelve", "hours_malformed"},
                                        {"1,234", "hours_ambiguous"},
                                        {"-3.5", "hours_negative"},
                                        {"200001", "hours_absurd"}};

inline constexpr Typed typed_money[] = {{"five", "money_malformed"},
                                        {"1,234", "money_ambiguous"},
                                        {"1.2345", "money_decimals"},
                                        {"5 XAU", "money_currency"},
                                        {"10000000000001", "money_absurd"}};

inline constexpr Typed typed_ids[] = {{"ISLE-1", "id_malformed"}};

/// Readings of a meter that was fitted at 0 h on 1 March and read 100 h on 1 and 110 h on 11 April.
struct Entry {
    const char* on;
    std::int64_t reads_tenths;
    const char* code;
    const char* field;
};

inline constexpr Entry entries[] = {{"2026-06-02", 1200, "entry_day_ahead", "date"},
                                    {"2026-02-28", 0, "entry_before_meter", "date"},
                                    {"2026-04-20", 1099, "entry_falls", "reads"},
                                    {"2026-04-05", 1101, "entry_above_later", "reads"},
                                    {"2026-04-12", 1581, "entry_too_fast", "reads"}};

/// Only forms on the canvas raise these; tests/app and tests/panels cover them.
inline const CodeNames of_forms{"form_needed",
                                "core_unknown",
                                "form_not_whole",
                                "form_not_decimal",
                                "form_figure_ambiguous",
                                "form_decimals",
                                "form_too_large",
                                "form_anchor_above_total",
                                "form_percent_absurd",
                                "form_overfly_item",
                                "form_limit_before",
                                "form_same_as_before",
                                "form_no_item",
                                "form_nothing_taken",
                                "form_directive_empty",
                                "form_month_absurd",
                                "form_ends_before_start",
                                "form_day_ahead",
                                "form_part_twice",
                                "form_tso_above_tsn",
                                "form_tsn_falls",
                                "form_host_falls",
                                "form_before_fit",
                                "form_no_move",
                                "form_before_event",
                                "form_nothing_open",
                                "form_not_stored",
                                "form_storage_disputed",
                                "form_return_before",
                                "form_adjust_absurd",
                                "form_adjust_nothing",
                                "form_flown_absurd",
                                "form_factor_absurd",
                                "plan_task_nameless",
                                "route_nameless"};

/// What tables cannot be taken for; tests/facts/table_rows_test.cpp and tests/app have each.
inline const CodeNames of_tables{"table_empty",
                                 "table_encoding",
                                 "table_too_long",
                                 "table_too_wide",
                                 "table_too_large",
                                 "table_quote_open",
                                 "table_two_sources",
                                 "table_no_column",
                                 "table_column_twice",
                                 "table_order_unsaid",
                                 "table_day_wrong",
                                 "table_cell_wrong",
                                 "table_cell_missing",
                                 "table_row_twice",
                                 "table_row_falls",
                                 "table_rows_faulty",
                                 "table_nothing_new"};

/// Passwords and locked files; tests/app/sharing_test.cpp has each.
inline const CodeNames of_locks{"password_short",
                                "password_differs",
                                "password_wrong",
                                "lock_newer",
                                "lock_damaged",
                                "lock_missing"};

/// A total time told for a day; tests/timeline/entry_test.cpp has either side of both.
inline const CodeNames of_totals{"entry_total_falls", "entry_total_above_later"};

/// Tasks that do not hold together; tests/plan/network_test.cpp has each of them.
inline const CodeNames of_plans{"plan_empty",
                                "task_negative",
                                "task_too_long",
                                "task_twice",
                                "task_unknown_before",
                                "task_loop",
                                "task_waits_for_later_stage"};

/// Lines that have no sum, and what to look at; tests/budget has each of them.
inline const CodeNames of_estimates{"price_missing",
                                    "article_missing",
                                    "rate_missing",
                                    "rate_old",
                                    "price_lapsed",
                                    "tax_unknown",
                                    "relief_over",
                                    "sum_beyond",
                                    "option_unsettled",
                                    "option_twice",
                                    "option_serial",
                                    "option_needs",
                                    "option_excludes"};

/// Cores, payments and shares that do not add up; tests/budget and tests/views have each of them.
inline const CodeNames of_cash{"core_late",
                               "core_short",
                               "core_lien",
                               "core_no_deadline",
                               "core_sent_early",
                               "core_settled_twice",
                               "core_credit_over",
                               "core_chances_missing",
                               "core_number",
                               "core_worth_missing",
                               "terms_over_whole",
                               "payment_unplaced",
                               "paid_too_much",
                               "shares_not_whole"};

/// Made and tried in tests/facts/parse_test.cpp: too large to be kept as files.
inline const CodeNames of_great_files{"file_too_large", "file_too_many"};

}  // namespace twoclocks::support::typed
