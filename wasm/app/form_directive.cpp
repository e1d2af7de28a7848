// A directive, whether it applies, and another approved way to comply with it. Its bearer is the
// aircraft or the part that the form is opened from.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"
#include "wasm/app/limit_fields.hpp"

#include <algorithm>
#include <array>
#include <memory>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/facts/interval.hpp"
#include "engine/timeline/directives.hpp"
#include "engine/timeline/resolve.hpp"
#include "engine/views/directive_view.hpp"
#include "engine/views/record_care.hpp"
#include "engine/views/why_directive.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;
using facts::Applicability;
using timeline::ItemState;

constexpr std::array usual_intervals{"hours", "months", "landings"};
constexpr std::array rare_intervals{
    "starts", "days", "first_hours", "first_months", "first_days", "first_landings"};
constexpr std::array rare_counting{"once", "combine", "calendar_rule"};

/// The items of what a form hangs on; none when it is not recorded.
[[nodiscard]] const std::vector<ItemState>* items_of(const Form& form, const FormContext& context) {
    if (context.aircraft != nullptr && context.aircraft->id == form.aircraft)
        return &context.aircraft->items;
    const timeline::PartState* part = part_in(context, form.aircraft);
    return part == nullptr ? nullptr : &part->items;
}

[[nodiscard]] const ItemState* directive_of(const Form& form, const FormContext& context) {
    const std::vector<ItemState>* items = items_of(form, context);
    if (items == nullptr) return nullptr;
    for (const ItemState& item : *items) {
        if (item.id == form.subject) return &item;
    }
    return nullptr;
}

[[nodiscard]] std::string serial_of(const Form& form, const FormContext& context) {
    if (const timeline::PartState* part = part_in(context, form.aircraft)) return part->serial;
    return context.aircraft == nullptr ? std::string{} : context.aircraft->serial;
}

void name_directive(Form& form, const ItemState* item) {
    if (item == nullptr) return;
    form.about = {Word::as_told, {base::text_arg(item->name)}};
    if (item->directive && item->directive->told)
        form.about = views::directive_name(item->directive->directive);
}

/// No item, then every item of the bearer.
void add_items(Form& form, const FormContext& context, const char* id, Word label, Word none) {
    const std::vector<ItemState>* items = items_of(form, context);
    if (items == nullptr || items->empty()) return;
    FieldView choice = make_choice(id, label, {none}, 0);
    for (const ItemState& item : *items)
        choice.options.push_back({Word::as_told, {base::text_arg(item.name)}});
    form.fields.push_back(as_more(std::move(choice), Word::blank));
}

[[nodiscard]] std::vector<base::Id> chosen_item(FieldReader& reader,
                                                const Form& form,
                                                const FormContext& context,
                                                std::string_view id) {
    const std::vector<ItemState>* items = items_of(form, context);
    if (items == nullptr || !reader.has(id)) return {};
    const auto chosen = static_cast<std::size_t>(reader.choice(id));
    if (chosen == 0 || chosen > items->size()) return {};
    return {(*items)[chosen - 1].id};
}

void add_decision(Form& form, Applicability applies, std::string why) {
    form.fields.push_back(make_choice("applies",
                                      Word::field_applies,
                                      {views::applicability_word(Applicability::unknown),
                                       views::applicability_word(Applicability::applies),
                                       views::applicability_word(Applicability::not_applicable)},
                                      static_cast<std::int32_t>(applies)));
    form.fields.push_back(make_field(
        "applies_why", Word::field_applies_why, FieldKind::text, std::move(why), Need::optional));
}

/// A decision names who made it and by what.
void read_decision(FieldReader& reader, facts::Directive& directive) {
    directive.applies = static_cast<Applicability>(reader.choice("applies"));
    directive.applies_why = reader.text("applies_why");
    const bool decided = directive.applies != Applicability::unknown;
    if (decided && directive.applies_why.empty())
        reader.complain("applies_why", Trouble::form_needed);
}

void add_intervals(Form& form) {
    const facts::LimitSet limit = fresh_limit();
    for (const char* key : usual_intervals)
        form.fields.push_back(limit_field(limit, key));
    for (const char* key : rare_intervals)
        form.fields.push_back(as_more(limit_field(limit, key), Word::group_intervals));
    for (const char* key : rare_counting)
        form.fields.push_back(as_more(limit_field(limit, key), Word::group_counting));
}

void read_links(FieldReader& reader,
                const Form& form,
                const FormContext& context,
                facts::Directive& directive) {
    directive.before_flight = reader.choice("before_flight") == 1;
    if (reader.has("credit")) directive.credit = reader.choice("credit") == 1;
    directive.replaces = chosen_item(reader, form, context, "replaces");
    directive.ended_by = chosen_item(reader, form, context, "ended_by");
}

/// The record of the directive of an item; without heads when there is none.
[[nodiscard]] timeline::Record record_of(const ItemState* item, const FormContext& context) {
    if (item == nullptr || !item->directive || !item->directive->told) return {};
    return timeline::resolve_one(context.journal, item->directive->fact);
}

void add_typed(
    Form& form, const char* id, Word label, FieldKind kind, Need need, Word hint = Word::blank) {
    FieldView field = make_field(id, label, kind, {}, need);
    form.fields.push_back(hint == Word::blank ? std::move(field)
                                              : with_hint(std::move(field), hint));
}

}  // namespace

bool can_change_directive(base::Id item, const FormContext& context) {
    Form form;
    form.subject = item;
    form.aircraft = aircraft_of_subject(context.journal, item);
    return directive_of(form, context) != nullptr;
}

void make_directive(Form& form, const FormContext& context) {
    form.title = Word::form_directive;
    form.intro = Word::form_directive_intro;
    add_typed(form, "number", Word::field_number, FieldKind::text, Need::needed);
    add_typed(form, "revision", Word::field_revision, FieldKind::text, Need::optional);
    add_typed(form, "issuer", Word::field_issuer, FieldKind::text, Need::optional);
    add_typed(form, "name", Word::field_asks_for, FieldKind::text, Need::needed);
    add_typed(form,
              "effective_on",
              Word::field_effective_on,
              FieldKind::date,
              Need::optional,
              Word::hint_effective);
    add_decision(form, Applicability::unknown, {});
    add_typed(
        form, "serials", Word::field_serials, FieldKind::text, Need::optional, Word::hint_serials);
    add_typed(form, "part_number", Word::field_for_number, FieldKind::text, Need::optional);
    form.fields.push_back(make_choice(
        "before_flight", Word::field_before_flight, {Word::choice_no, Word::choice_yes}, 0));
    add_intervals(form);
    const std::vector<ItemState>* items = items_of(form, context);
    if (items == nullptr || items->empty()) return;
    add_items(form, context, "replaces", Word::field_replaces, Word::option_no_other);
    form.fields.push_back(
        as_more(make_choice("credit", Word::field_credit, {Word::choice_no, Word::choice_yes}, 0),
                Word::blank));
    add_items(form, context, "ended_by", Word::field_ended_by, Word::option_none_recorded);
}

Facts take_directive(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const base::Id item = signer.new_id();
    facts::Directive directive;
    directive.number = reader.text("number");
    directive.revision = reader.text("revision");
    directive.issuer = reader.text("issuer");
    facts::ItemAdded added{reader.text("name"), facts::ItemRole::other, {}};
    directive.effective_on = reader.date("effective_on");
    read_decision(reader, directive);
    directive.serials = reader.text("serials");
    directive.part_number = reader.text("part_number");
    read_links(reader, form, context, directive);
    facts::LimitSet limit = fresh_limit();
    limit.limit_class = facts::LimitClass::directive;
    read_limit(reader, limit);
    limit.source = directive.number;
    const bool has_limit = !is_empty(repeat_of(limit)) || !is_empty(limit.first);
    if (!has_limit && !directive.before_flight)
        reader.complain("hours", Trouble::form_directive_empty);
    const std::vector<base::Id> about{form.aircraft, item};
    facts::Body told{context.today, about, std::move(directive), {}};
    facts::Body limited{context.today, about, std::move(limit), {}};
    check_fields(reader, told);
    if (has_limit) check_fields(reader, limited);
    if (!reader.sound()) return {};
    Facts out{signer.sign(item, {context.today, about, std::move(added), {}}, context.journal)};
    if (has_limit) out.push_back(signer.sign(signer.new_id(), std::move(limited), context.journal));
    out.push_back(signer.sign(signer.new_id(), std::move(told), context.journal));
    return out;
}

void make_decide(Form& form, const FormContext& context) {
    form.title = Word::form_decide;
    form.intro = Word::form_decide_intro;
    const ItemState* item = directive_of(form, context);
    name_directive(form, item);
    facts::Directive now;
    if (item != nullptr && item->directive) now = item->directive->directive;
    add_decision(form, now.applies, now.applies_why);
    if (item == nullptr || !item->directive) return;
    const std::vector<base::Message> evidence =
        views::evidence_of(*item->directive, serial_of(form, context));
    if (!evidence.empty()) find_field(form, "applies")->hint = evidence.front();
    if (evidence.size() > 1) find_field(form, "applies_why")->hint = evidence.back();
}

Facts take_decide(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const ItemState* item = directive_of(form, context);
    const timeline::Record record = record_of(item, context);
    if (item == nullptr || record.heads.empty()) return {};
    auto instead = std::make_shared<facts::Body>();
    instead->on = record.in_use.on;
    instead->about = {form.aircraft, item->id};
    facts::Directive directive = item->directive->directive;
    read_decision(reader, directive);
    const std::string why = directive.applies_why;
    instead->fields = std::move(directive);
    check_fields(reader, *instead);
    if (!reader.sound()) return {};
    // Where people disagree, one decision takes the place of all that they said.
    Facts out;
    for (const timeline::Head& head : record.heads) {
        facts::Correction correction{facts::ref_to(context.journal, *head.fact), why, instead};
        facts::Body body{context.today, instead->about, std::move(correction), {}};
        out.push_back(signer.sign(signer.new_id(), std::move(body), context.journal));
    }
    return out;
}

void make_means(Form& form, const FormContext& context) {
    form.title = Word::form_means;
    form.intro = Word::form_means_intro;
    name_directive(form, directive_of(form, context));
    add_typed(form, "issuer", Word::field_issuer, FieldKind::text, Need::needed);
    add_typed(form, "reference", Word::field_approval, FieldKind::text, Need::needed);
    add_typed(form, "method", Word::field_method, FieldKind::text, Need::optional);
    form.fields.push_back(make_field(
        "date", Word::field_from, FieldKind::date, base::print_date(context.today), Need::needed));
    add_typed(form, "valid_until", Word::field_valid_until, FieldKind::date, Need::optional);
    const facts::LimitSet limit = fresh_limit();
    for (const char* key : usual_intervals)
        form.fields.push_back(with_hint(limit_field(limit, key), Word::hint_means_interval));
    for (const char* key : {"starts", "days"})
        form.fields.push_back(as_more(limit_field(limit, key), Word::group_intervals));
    add_typed(form,
              "grace_hours",
              Word::field_grace_hours,
              FieldKind::hours,
              Need::optional,
              Word::hint_grace);
    add_typed(form,
              "grace_days",
              Word::field_grace_days,
              FieldKind::whole,
              Need::optional,
              Word::hint_grace);
}

Facts take_means(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::AlternativeMeans means;
    means.issuer = reader.text("issuer");
    means.reference = reader.text("reference");
    means.method = reader.text("method");
    const auto on = reader.date("date");
    means.until = reader.date("valid_until");
    facts::LimitSet limit;
    read_limit(reader, limit);
    means.interval = repeat_of(limit);
    means.grace_hours = reader.hours("grace_hours");
    constexpr std::int64_t absurd = 1'000'000;
    if (const auto days = reader.whole("grace_days"))
        means.grace_days = static_cast<std::int32_t>(std::min(*days, absurd));
    if (on && means.until && *means.until < *on)
        reader.complain("valid_until", Trouble::form_ends_before_start);
    facts::Body body{
        on.value_or(context.today), {form.aircraft, form.subject}, std::move(means), {}};
    check_fields(reader, body);
    if (!reader.sound()) return {};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

}  // namespace twoclocks::canvas
