// What is recorded of cores: each of them, and what happened to it.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_keys.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_plan.hpp"
#include "wasm/app/record_fields.hpp"
#include "wasm/app/record_labels.hpp"

#include <array>

#include "engine/budget/cores.hpp"
#include "engine/budget/from_records.hpp"
#include "engine/facts/names.hpp"
#include "engine/views/record_cash.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;
using timeline::CoreState;

/// The fields that most cores have; the others are further settings.
constexpr std::array<std::string_view, 11> usual_core_fields{"core_name",
                                                             "core_charge",
                                                             "best_credit",
                                                             "part_credit",
                                                             "part_permille",
                                                             "nothing_permille",
                                                             "returns_from",
                                                             "return_days",
                                                             "shipped_on",
                                                             "destroy",
                                                             "core_by"};

[[nodiscard]] const std::vector<CoreState>& cores_in(const FormContext& context) {
    static const std::vector<CoreState> none;
    return context.aircraft == nullptr ? none : context.aircraft->money.cores;
}

[[nodiscard]] base::Currency home_of(const FormContext& context) {
    return context.aircraft == nullptr ? base::Currency{} : budget::home_of(*context.aircraft);
}

[[nodiscard]] std::string key_of_core(const CoreState& core) {
    return core.said.core;
}

void lay_out_core(Form& form, const FormContext& context) {
    const CoreState* core = chosen_in(form, cores_in(context));
    const facts::Core said = core == nullptr ? facts::Core{} : core->said;
    form.named = said.core;
    form.fields.resize(1);
    add_record_fields(form, said, home_of(context));
    std::erase_if(form.fields, [](const FieldView& field) { return field.id == "core_key"; });
    find_field(form, "core_name")->optional = false;
    for (FieldView& field : form.fields)
        field.more = field.id != "core" &&
                     std::find(usual_core_fields.begin(), usual_core_fields.end(), field.id) ==
                         usual_core_fields.end();
    std::stable_partition(
        form.fields.begin(), form.fields.end(), [](const FieldView& field) { return !field.more; });
}

/// What cannot be, told at the field that says it.
void complain_of(const base::Problem& fault, FieldReader& reader) {
    const char* const field = fault.code == Trouble::core_sent_early      ? "date"
                              : fault.code == Trouble::core_settled_twice ? "core_stage"
                                                                          : "core_credit";
    reader.complain(field, fault.code, fault.args);
}

/// Faults that this step brings, and that were not there before.
void check_step(const CoreState& core,
                const facts::CoreStep& said,
                base::Date on,
                FieldReader& reader) {
    CoreState with = core;
    with.steps.push_back({said, on, {}});
    const std::size_t before = budget::core_faults(core).size();
    const base::Problems after = budget::core_faults(with);
    if (after.size() > before) complain_of(after.back(), reader);
}

}  // namespace

void make_core(Form& form, const FormContext& context) {
    form.title = Word::form_core;
    form.intro = Word::form_core_intro;
    add_which(form, "core", Word::field_which_core, cores_in(context), [](const auto& one) {
        return views::core_label(one.said);
    });
    lay_out_core(form, context);
}

void reshape_core(Form& form, const FormContext& context) {
    const CoreState* core = chosen_in(form, cores_in(context));
    if ((core == nullptr ? std::string{} : core->said.core) != form.named)
        lay_out_core(form, context);
}

Facts take_core(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const CoreState* core = chosen_in(form, cores_in(context));
    facts::Fields fields = core == nullptr ? facts::Core{} : core->said;
    read_record_fields(reader, fields);
    auto& said = *std::get_if<facts::Core>(&fields);
    said.core = core == nullptr ? base::print_id(signer.new_id()) : core->said.core;
    check_fields(reader, {context.today, {form.aircraft}, said, {}});
    if (!reader.sound()) return {};
    return signed_today(form, std::move(said), context, signer);
}

void make_core_step(Form& form, const FormContext& context) {
    form.title = Word::form_core_step;
    form.intro = Word::form_core_step_intro;
    FieldView list = make_choice("core", Word::field_which_core, {}, 0);
    for (const CoreState& core : cores_in(context))
        list.options.push_back({Word::record_of, {views::core_label(core.said)}});
    form.fields.push_back(std::move(list));
    form.fields.push_back(make_choice("core_stage",
                                      Word::field_core_stage,
                                      option_words(facts::Choices::core_stage),
                                      static_cast<std::int32_t>(facts::CoreStage::sent)));
    form.fields.push_back(make_field(
        "date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed));
    form.fields.push_back(make_field(
        "core_reference", Word::field_core_reference, FieldKind::text, {}, Need::optional));
    std::vector<Word> grades{Word::grade_open};
    for (const Word word : option_words(facts::Choices::core_grade))
        grades.push_back(word);
    form.fields.push_back(make_choice("core_grade", Word::field_core_grade, grades, 0));
    const base::Currency home = home_of(context);
    form.fields.push_back(make_amount("core_credit", Word::field_core_credit, {}, home));
    form.fields.push_back(make_amount("billed", Word::field_billed, {}, home));
}

void choose_core(Form& form, const FormContext& context, const std::string& key) {
    const auto& cores = cores_in(context);
    const auto found = std::find_if(cores.begin(), cores.end(), [&](const CoreState& core) {
        return key_of_core(core) == key;
    });
    if (found == cores.end()) return;
    form.fields.front().chosen = static_cast<std::int32_t>(found - cores.begin());
    // What comes next of it is offered first.
    FieldView* stage = find_field(form, "core_stage");
    const bool is_off = std::any_of(found->steps.begin(), found->steps.end(), [](const auto& step) {
        return step.said.stage == facts::CoreStage::off;
    });
    const facts::CoreStage last =
        found->steps.empty() ? facts::CoreStage::off : found->steps.back().said.stage;
    const bool is_here = found->steps.empty() || last == facts::CoreStage::off;
    const auto next = !is_off && is_here && !found->released ? facts::CoreStage::off
                      : found->said.destroy                  ? facts::CoreStage::destroyed
                      : is_here                              ? facts::CoreStage::sent
                      : last == facts::CoreStage::sent       ? facts::CoreStage::received
                      : last == facts::CoreStage::received   ? facts::CoreStage::graded
                                                             : facts::CoreStage::settled;
    stage->chosen = static_cast<std::int32_t>(next);
}

Facts take_core_step(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const auto& cores = cores_in(context);
    const auto place = static_cast<std::size_t>(reader.choice("core"));
    if (place >= cores.size()) {
        reader.complain("core", Trouble::core_unknown);
        return {};
    }
    facts::CoreStep said;
    said.core = cores[place].said.core;
    said.stage = static_cast<facts::CoreStage>(reader.choice("core_stage"));
    const std::int32_t grade = reader.choice("core_grade");
    if (grade > 0) said.grade = static_cast<facts::CoreGrade>(grade - 1);
    said.credit = reader.money("core_credit");
    said.billed = reader.money("billed");
    said.reference = reader.text("core_reference");
    const auto on = reader.date("date");
    if (on && *on > context.today) reader.complain("date", Trouble::form_day_ahead);
    check_fields(reader, {on.value_or(context.today), {form.aircraft}, said, {}});
    if (on) check_step(cores[place], said, *on, reader);
    if (!reader.sound()) return {};
    return {signed_on(*on, form, std::move(said), context, signer)};
}

}  // namespace twoclocks::canvas
