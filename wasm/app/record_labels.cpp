#include "wasm/app/record_labels.hpp"

#include "wasm/app/form_kinds.hpp"

#include <algorithm>
#include <array>

namespace twoclocks::canvas {
namespace {

using base::Word;

struct Row {
    std::string_view key;
    Word label;
};

/// Settings that few limits have: a field is laid out only for one that is there.
constexpr std::array rare_rows{Row{"days", Word::field_days},
                               Row{"first_hours", Word::field_first_hours},
                               Row{"first_months", Word::field_first_months},
                               Row{"first_days", Word::field_first_days},
                               Row{"first_landings", Word::field_first_landings},
                               Row{"first_starts", Word::field_first_starts},
                               Row{"combine", Word::field_combine},
                               Row{"cap_hours", Word::field_cap_hours},
                               Row{"cap_months", Word::field_cap_months},
                               Row{"cap_days", Word::field_cap_days},
                               Row{"cap_landings", Word::field_cap_landings},
                               Row{"cap_starts", Word::field_cap_starts},
                               Row{"tolerance_hours", Word::field_tolerance_hours},
                               Row{"tolerance_days", Word::field_tolerance_days},
                               Row{"tolerance_permille", Word::field_tolerance_permille},
                               Row{"tolerance_cap_hours", Word::field_tolerance_cap_hours},
                               Row{"tolerance_cap_days", Word::field_tolerance_cap_days},
                               Row{"carry_over", Word::field_carry_over},
                               Row{"overfly_hours", Word::field_overfly_hours},
                               Row{"tolerance_source", Word::field_tolerance_source}};

constexpr std::array part_rows{Row{"part_number", Word::field_part_number},
                               Row{"tsn", Word::field_tsn},
                               Row{"tso", Word::field_tso},
                               Row{"overhauls", Word::field_overhauls},
                               Row{"cured", Word::field_cured},
                               Row{"shipped", Word::field_shipped},
                               Row{"condition", Word::field_condition},
                               Row{"papers", Word::field_papers},
                               Row{"owner", Word::field_owner},
                               Row{"lent_until", Word::field_lent_until},
                               Row{"position", Word::field_position},
                               Row{"host_total", Word::field_host_total},
                               Row{"host_landings", Word::field_host_landings},
                               Row{"host_starts", Word::field_host_starts},
                               Row{"proof", Word::field_proof},
                               Row{"lent_to", Word::field_lent_to},
                               Row{"return_by", Word::field_return_by},
                               Row{"document", Word::field_document}};

}  // namespace

bool is_rare(std::string_view key) {
    return std::any_of(
        rare_rows.begin(), rare_rows.end(), [&](const Row& row) { return row.key == key; });
}

Word label_of(std::string_view key) {
    for (const Row& row : rare_rows) {
        if (row.key == key) return row.label;
    }
    for (const Row& row : part_rows) {
        if (row.key == key) return row.label;
    }
    constexpr std::array rows{Row{"registration", Word::field_registration},
                              Row{"type", Word::field_type},
                              Row{"serial", Word::field_serial},
                              Row{"manufactured", Word::field_manufactured},
                              Row{"why", Word::field_why},
                              Row{"hours", Word::field_hours},
                              Row{"months", Word::field_months},
                              Row{"landings", Word::field_landings},
                              Row{"starts", Word::field_starts},
                              Row{"anchor_on", Word::field_last_on},
                              Row{"anchor_total", Word::field_last_total},
                              Row{"anchor_landings", Word::field_anchor_landings},
                              Row{"anchor_starts", Word::field_anchor_starts},
                              Row{"source", Word::field_source},
                              Row{"revision", Word::field_revision},
                              Row{"name", Word::field_name},
                              Row{"reads", Word::field_reads},
                              Row{"total", Word::field_total},
                              Row{"what", Word::field_what},
                              Row{"place", Word::field_place},
                              Row{"done_by", Word::field_done_by},
                              Row{"reference", Word::field_reference},
                              Row{"month", Word::field_plan_month},
                              Row{"until", Word::field_until},
                              Row{"text", Word::field_note},
                              Row{"issuer", Word::field_issuer},
                              Row{"route", Word::field_route},
                              Row{"chapter", Word::field_chapter},
                              Row{"class", Word::field_class},
                              Row{"calendar_rule", Word::field_rule},
                              Row{"drive", Word::field_drive},
                              Row{"role", Word::field_role},
                              Row{"anchor", Word::field_anchor}};
    for (const Row& row : rows) {
        if (row.key == key) return row.label;
    }
    return Word::field_other;
}

std::vector<Word> option_words(facts::LimitClass) {
    return class_words();
}

std::vector<Word> option_words(facts::MeterDrive) {
    return drive_words();
}

std::vector<Word> option_words(base::CalendarRule) {
    return rule_words();
}

std::vector<Word> option_words(facts::PartCondition) {
    return {Word::condition_new,
            Word::condition_overhauled,
            Word::condition_repaired,
            Word::condition_inspected,
            Word::condition_as_removed,
            Word::condition_unknown,
            Word::condition_unserviceable};
}

std::vector<Word> option_words(facts::CarryOver) {
    return {Word::carry_from_due, Word::carry_from_done};
}

std::vector<Word> option_words(facts::Combine) {
    return {Word::combine_sooner, Word::combine_later};
}

std::vector<Word> option_words(facts::ItemRole) {
    return {Word::role_overhaul, Word::role_inspection, Word::role_component, Word::role_other};
}

std::vector<Word> option_words(facts::Anchor) {
    return {Word::anchor_manufacture,
            Word::anchor_cure,
            Word::anchor_shipment,
            Word::anchor_first_airworthiness,
            Word::anchor_first_fit,
            Word::anchor_release,
            Word::anchor_overhaul,
            Word::anchor_unknown};
}

}  // namespace twoclocks::canvas
