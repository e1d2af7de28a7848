// The words of the choices that a record can hold, in the order of their values.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/record_labels.hpp"

#include <array>

#include "engine/facts/names.hpp"
#include "engine/views/record_cash.hpp"
#include "engine/views/record_money.hpp"
#include "engine/views/record_plan.hpp"
#include "engine/views/record_sale.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using facts::Choices;

constexpr std::array part_condition_words{Word::condition_new,
                                          Word::condition_overhauled,
                                          Word::condition_repaired,
                                          Word::condition_inspected,
                                          Word::condition_as_removed,
                                          Word::condition_unknown,
                                          Word::condition_unserviceable};
constexpr std::array carry_over_words{Word::carry_from_due, Word::carry_from_done};
constexpr std::array combine_words{Word::combine_sooner, Word::combine_later};
constexpr std::array item_role_words{
    Word::role_overhaul, Word::role_inspection, Word::role_component, Word::role_other};
constexpr std::array anchor_words{Word::anchor_manufacture,
                                  Word::anchor_cure,
                                  Word::anchor_shipment,
                                  Word::anchor_first_airworthiness,
                                  Word::anchor_first_fit,
                                  Word::anchor_release,
                                  Word::anchor_overhaul,
                                  Word::anchor_unknown};
constexpr std::array applicability_words{
    Word::applies_unknown, Word::applies_yes, Word::applies_no};
constexpr std::array event_kind_words{Word::event_hard_landing,
                                      Word::event_overspeed,
                                      Word::event_overtemperature,
                                      Word::event_overtorque,
                                      Word::event_sudden_stoppage,
                                      Word::event_vibration,
                                      Word::event_lightning,
                                      Word::event_other};
constexpr std::array wear_sense_words{Word::sense_at_most, Word::sense_at_least};
constexpr std::array adjust_reason_words{
    Word::adjust_dead, Word::adjust_rolled_over, Word::adjust_other};
constexpr std::array operation_words{Word::operation_ordinary,
                                     Word::operation_agricultural,
                                     Word::operation_external_load,
                                     Word::operation_training,
                                     Word::operation_emergency,
                                     Word::operation_other};
constexpr std::array in_force_words{
    Word::in_force_always, Word::in_force_storage, Word::in_force_return};

constexpr std::array task_days_words{Word::runs_working, Word::runs_calendar};
constexpr std::array task_step_words{Word::step_begun, Word::step_promised, Word::step_finished};

/// The words of a list.
template <const auto& words>
[[nodiscard]] std::vector<Word> listed() {
    return {words.begin(), words.end()};
}

template <class T>
[[nodiscard]] std::vector<Word> each(Word (*word)(T)) {
    std::vector<Word> out;
    for (const facts::Name& name : facts::names_of(facts::choices_of<T>))
        out.push_back(word(static_cast<T>(name.value)));
    return out;
}

/// The word of each value of an enumeration.
template <auto word>
[[nodiscard]] std::vector<Word> named() {
    return each(word);
}

struct ChoiceRow {
    Choices choices;
    std::vector<Word> (*words)();
};

/// Everything that a person chooses by hand.
constexpr std::array choice_rows{
    ChoiceRow{Choices::limit_class, class_words},
    ChoiceRow{Choices::meter_drive, drive_words},
    ChoiceRow{Choices::calendar_rule, rule_words},
    ChoiceRow{Choices::part_condition, listed<part_condition_words>},
    ChoiceRow{Choices::carry_over, listed<carry_over_words>},
    ChoiceRow{Choices::combine, listed<combine_words>},
    ChoiceRow{Choices::item_role, listed<item_role_words>},
    ChoiceRow{Choices::anchor, listed<anchor_words>},
    ChoiceRow{Choices::applicability, listed<applicability_words>},
    ChoiceRow{Choices::event_kind, listed<event_kind_words>},
    ChoiceRow{Choices::wear_sense, listed<wear_sense_words>},
    ChoiceRow{Choices::adjust_reason, listed<adjust_reason_words>},
    ChoiceRow{Choices::operation, listed<operation_words>},
    ChoiceRow{Choices::task_days, listed<task_days_words>},
    ChoiceRow{Choices::task_step, listed<task_step_words>},
    ChoiceRow{Choices::in_force, listed<in_force_words>},
    ChoiceRow{Choices::plan_work, named<views::plan_work_word>},
    ChoiceRow{Choices::route_by, named<views::route_by_word>},
    ChoiceRow{Choices::carriage, named<views::carriage_word>},
    ChoiceRow{Choices::price_basis, named<views::price_basis_word>},
    ChoiceRow{Choices::tax_case, named<views::tax_case_word>},
    ChoiceRow{Choices::acceptance, named<views::acceptance_word>},
    ChoiceRow{Choices::warranty_from, named<views::warranty_from_word>},
    ChoiceRow{Choices::cost_group, named<views::cost_group_word>},
    ChoiceRow{Choices::cost_for, named<views::cost_for_word>},
    ChoiceRow{Choices::cost_taken, named<views::cost_taken_word>},
    ChoiceRow{Choices::duty_relief, named<views::duty_relief_word>},
    ChoiceRow{Choices::tax_round, named<views::tax_round_word>},
    ChoiceRow{Choices::core_grade, named<views::core_grade_word>},
    ChoiceRow{Choices::core_from, named<views::core_from_word>},
    ChoiceRow{Choices::core_stage, named<views::core_stage_word>},
    ChoiceRow{Choices::paid_at, named<views::paid_at_word>},
    ChoiceRow{Choices::holder_role, named<views::holder_role_word>},
    ChoiceRow{Choices::closing_topic, named<views::closing_topic_word>},
    ChoiceRow{Choices::closing_payer, named<views::closing_payer_word>},
};

}  // namespace

std::vector<Word> option_words(Choices choices) {
    for (const ChoiceRow& row : choice_rows)
        if (row.choices == choices) return row.words();
    return {};  // nobody chooses one by hand
}

}  // namespace twoclocks::canvas
