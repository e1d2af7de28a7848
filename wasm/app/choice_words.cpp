// The words of the choices that a record can hold, in the order of their values.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/record_labels.hpp"

#include <array>

#include "engine/facts/names.hpp"
#include "engine/views/record_money.hpp"
#include "engine/views/record_plan.hpp"

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

template <std::size_t Count>
[[nodiscard]] std::vector<Word> list(const std::array<Word, Count>& words) {
    return {words.begin(), words.end()};
}

/// The word of each value of an enumeration.
template <class T>
[[nodiscard]] std::vector<Word> each(Word (*word)(T)) {
    std::vector<Word> out;
    for (const facts::Name& name : facts::names_of(facts::choices_of<T>))
        out.push_back(word(static_cast<T>(name.value)));
    return out;
}

/// Of what is recorded of money.
[[nodiscard]] std::vector<Word> money_words(Choices choices) {
    if (choices == Choices::cost_group) return each(views::cost_group_word);
    if (choices == Choices::cost_for) return each(views::cost_for_word);
    if (choices == Choices::cost_taken) return each(views::cost_taken_word);
    if (choices == Choices::duty_relief) return each(views::duty_relief_word);
    return each(views::tax_round_word);
}

}  // namespace

std::vector<Word> option_words(Choices choices) {
    switch (choices) {
        case Choices::limit_class:
            return class_words();
        case Choices::meter_drive:
            return drive_words();
        case Choices::calendar_rule:
            return rule_words();
        case Choices::part_condition:
            return list(part_condition_words);
        case Choices::carry_over:
            return list(carry_over_words);
        case Choices::combine:
            return list(combine_words);
        case Choices::item_role:
            return list(item_role_words);
        case Choices::anchor:
            return list(anchor_words);
        case Choices::applicability:
            return list(applicability_words);
        case Choices::event_kind:
            return list(event_kind_words);
        case Choices::wear_sense:
            return list(wear_sense_words);
        case Choices::adjust_reason:
            return list(adjust_reason_words);
        case Choices::operation:
            return list(operation_words);
        case Choices::task_days:
            return list(task_days_words);
        case Choices::task_step:
            return list(task_step_words);
        case Choices::plan_work:
            return each(views::plan_work_word);
        case Choices::route_by:
            return each(views::route_by_word);
        case Choices::carriage:
            return each(views::carriage_word);
        case Choices::price_basis:
            return each(views::price_basis_word);
        case Choices::tax_case:
            return each(views::tax_case_word);
        case Choices::acceptance:
            return each(views::acceptance_word);
        case Choices::warranty_from:
            return each(views::warranty_from_word);
        case Choices::cost_group:
        case Choices::cost_for:
        case Choices::cost_taken:
        case Choices::duty_relief:
        case Choices::tax_round:
            return money_words(choices);
        case Choices::in_force:
            return list(in_force_words);
        case Choices::clock:
            break;  // nobody chooses one by hand
    }
    return {};
}

}  // namespace twoclocks::canvas
