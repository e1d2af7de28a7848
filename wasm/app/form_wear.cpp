// How far an item may wear, and what was measured.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/written.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/limits/due.hpp"
#include "engine/views/record_care.hpp"

namespace twoclocks::canvas {
namespace {

using base::Id;
using base::Trouble;
using base::Word;

[[nodiscard]] const timeline::ItemState* item_of(const Form& form, const FormContext& context) {
    if (context.aircraft == nullptr) return nullptr;
    for (const timeline::ItemState& item : context.aircraft->items) {
        if (item.id == form.subject) return &item;
    }
    return nullptr;
}

/// The unit in use for an item: of its limit, or of what was measured last.
[[nodiscard]] std::string unit_of(const timeline::ItemState* item) {
    if (item == nullptr || !item->wear) return {};
    if (!item->wear->bounds.empty()) return item->wear->bounds.back().limit.unit;
    return item->wear->points.empty() ? std::string{} : item->wear->points.back().unit;
}

[[nodiscard]] std::string total_text(const FormContext& context) {
    if (context.aircraft == nullptr) return {};
    const auto total = limits::total_time(*context.aircraft);
    return total ? tenths_text(*total) : std::string{};
}

void complain(FieldReader& reader, const char* field, Trouble code, std::vector<base::Arg> args) {
    base::Problem problem = base::trouble(code, std::move(args));
    problem.field = field;
    reader.complain(std::move(problem));
}

/// Thousandths of the unit, as far as a record can hold them.
[[nodiscard]] std::int32_t thousandths(FieldReader& reader, const char* id) {
    const std::optional<std::int64_t> value = reader.decimal(id, field_decimals);
    if (!value) return 0;
    if (*value > facts::most_wear_thousandths) {
        constexpr std::int64_t whole = 1000;
        complain(reader,
                 id,
                 Trouble::number_absurd,
                 {base::whole_arg(*value / whole),
                  base::whole_arg(facts::most_wear_thousandths / whole)});
        return 0;
    }
    return static_cast<std::int32_t>(*value);
}

/// The items of the aircraft, and one that is not there yet.
void add_item_fields(Form& form, const FormContext& context) {
    FieldView choice = make_choice("item", Word::field_wear_item, {Word::wear_new_item}, 0);
    if (context.aircraft != nullptr) {
        for (const timeline::ItemState& item : context.aircraft->items)
            choice.options.push_back({Word::as_told, {base::text_arg(item.name)}});
    }
    form.fields.push_back(std::move(choice));
    form.fields.push_back(
        make_field("name", Word::field_new_item_name, FieldKind::text, {}, Need::optional));
}

/// The item that a limit is for; a new one has no id and a name.
struct ForItem {
    Id item;
    std::string name;
};

[[nodiscard]] ForItem chosen_item(const Form& form,
                                  const FormContext& context,
                                  FieldReader& reader) {
    if (form.subject != form.aircraft) return {form.subject, {}};
    const auto chosen = static_cast<std::size_t>(reader.choice("item"));
    const bool known =
        context.aircraft != nullptr && chosen > 0 && chosen <= context.aircraft->items.size();
    if (known) return {context.aircraft->items[chosen - 1].id, {}};
    ForItem out{{}, reader.text("name")};
    if (out.name.empty()) complain(reader, "name", Trouble::form_needed, {});
    return out;
}

}  // namespace

void make_wear_limit(Form& form, const FormContext& context) {
    form.title = Word::form_wear_limit;
    form.intro = Word::form_wear_limit_intro;
    const timeline::ItemState* item = item_of(form, context);
    facts::WearLimit now;
    if (item != nullptr && item->wear && !item->wear->bounds.empty())
        now = item->wear->bounds.back().limit;
    if (form.subject == form.aircraft) add_item_fields(form, context);
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    form.fields.push_back(make_choice("sense",
                                      Word::field_sense,
                                      {views::sense_word(facts::WearSense::at_most),
                                       views::sense_word(facts::WearSense::at_least)},
                                      static_cast<std::int32_t>(now.sense)));
    field("limit",
          Word::field_limit_thousandths,
          FieldKind::decimal,
          now.unit.empty() ? std::string{} : typed_thousandths(now.limit_thousandths),
          Need::needed);
    field("unit", Word::field_unit, FieldKind::text, unit_of(item), Need::needed);
    field("date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed);
    field("source", Word::field_source, FieldKind::text, now.source, Need::optional);
    field("revision", Word::field_revision, FieldKind::text, now.revision, Need::optional);
}

Facts take_wear_limit(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const ForItem to = chosen_item(form, context, reader);
    facts::WearLimit limit;
    limit.sense = static_cast<facts::WearSense>(reader.choice("sense"));
    limit.limit_thousandths = thousandths(reader, "limit");
    limit.unit = reader.text("unit");
    const auto on = reader.date("date");
    limit.source = reader.text("source");
    limit.revision = reader.text("revision");
    if (on && *on > context.today)
        complain(reader, "date", Trouble::entry_day_ahead, {base::day_arg(*on)});
    if (!reader.sound()) return {};
    Facts out;
    const Id item = to.item.empty() ? signer.new_id() : to.item;
    const auto sign = [&](Id id, facts::Fields fields) {
        out.push_back(
            signer.sign(id, {*on, {form.aircraft, item}, std::move(fields), {}}, context.journal));
    };
    if (to.item.empty()) sign(item, facts::ItemAdded{to.name, facts::ItemRole::component, {}});
    sign(signer.new_id(), std::move(limit));
    return out;
}

void make_measure_wear(Form& form, const FormContext& context) {
    form.title = Word::form_measure_wear;
    form.intro = Word::form_measure_wear_intro;
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    field("value", Word::field_value_thousandths, FieldKind::decimal, {}, Need::needed);
    field("unit", Word::field_unit, FieldKind::text, unit_of(item_of(form, context)), Need::needed);
    field("date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed);
    field("total", Word::field_total, FieldKind::hours, total_text(context), Need::optional);
    field("done_by", Word::field_done_by, FieldKind::text, {}, Need::optional);
    field("reference", Word::field_reference, FieldKind::text, {}, Need::optional);
}

Facts take_measure_wear(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Wear wear;
    wear.value_thousandths = thousandths(reader, "value");
    wear.unit = reader.text("unit");
    const auto on = reader.date("date");
    wear.total = reader.hours("total");
    wear.done_by = reader.text("done_by");
    wear.reference = reader.text("reference");
    if (on && *on > context.today)
        complain(reader, "date", Trouble::entry_day_ahead, {base::day_arg(*on)});
    if (!reader.sound()) return {};
    facts::Body body{*on, {form.aircraft, form.subject}, std::move(wear), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

}  // namespace twoclocks::canvas
