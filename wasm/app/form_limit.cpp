// A new item with its limit, a limit that takes the place of the one in force, leave to fly past
// one, and a new name. The bearer of an item is what its facts are about first.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"
#include "wasm/app/limit_fields.hpp"

#include "engine/base/message_args.hpp"
#include "engine/facts/print.hpp"
#include "engine/limits/due.hpp"
#include "engine/timeline/resolve.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;

void add_date(Form& form, base::Date today) {
    form.fields.push_back(make_field(
        "date", Word::field_from, FieldKind::date, base::print_date(today), Need::needed));
}

/// Says whose item a form is about.
void name_item(Form& form, const FormContext& context, const timeline::ItemState* item) {
    if (item == nullptr) return;
    form.about = {Word::as_told, {base::text_arg(item->name)}};
    if (context.aircraft != nullptr) {
        form.about = {Word::form_about_item,
                      {base::text_arg(item->name), base::text_arg(context.aircraft->registration)}};
    }
}

/// The limit to start from: the one in force, or one that says nothing yet.
[[nodiscard]] facts::LimitSet limit_in_force(const timeline::ItemState* item) {
    return item != nullptr && item->limit ? *item->limit : fresh_limit();
}

/// The day the limit in force holds from.
[[nodiscard]] std::optional<base::Date> in_force_since(const FormContext& context,
                                                       base::Id bearer,
                                                       const timeline::ItemState& item) {
    for (const timeline::Record& record : timeline::resolve(context.journal, bearer)) {
        if (record.root == item.limit_fact && !record.withdrawn) return record.in_use.on;
    }
    return std::nullopt;
}

}  // namespace

const timeline::ItemState* item_of(const FormContext& context, base::Id id) {
    const timeline::PartState* part = part_with_item(context, id);
    if (part == nullptr && context.aircraft == nullptr) return nullptr;
    for (const timeline::ItemState& item :
         part != nullptr ? part->items : context.aircraft->items) {
        if (item.id == id) return &item;
    }
    return nullptr;
}

void make_new_item(Form& form, const FormContext& context) {
    form.title = Word::form_new_item;
    form.intro = Word::form_new_item_intro;
    const timeline::PartState* part = part_in(context, form.subject);
    if (part != nullptr) form.about = {Word::as_told, {base::text_arg(part_label(*part))}};
    const bool has_items =
        part != nullptr || (context.aircraft != nullptr && !context.aircraft->items.empty());
    form.fields.push_back(
        make_field("name", Word::field_item_name, FieldKind::text, {}, Need::needed));
    form.fields.push_back(make_choice(
        "role",
        Word::field_role,
        {Word::role_overhaul, Word::role_inspection, Word::role_component, Word::role_other},
        has_items ? 1 : 0));
    facts::LimitSet limit = fresh_limit();
    // A part carries its limits along: they count in its own hours.
    if (part != nullptr) {
        limit.anchor_total = part->tsn_estimated ? std::nullopt : part->tsn;
    } else if (context.aircraft != nullptr) {
        limit.anchor_total = limits::total_time(*context.aircraft);
    }
    add_usual_fields(form, limit);
    FieldView* last = find_field(form, "anchor_total");
    if (part != nullptr && last != nullptr) last->label = {Word::field_last_since_new, {}};
    form.fields.push_back(
        as_more(make_field("chapter", Word::field_chapter, FieldKind::text, {}, Need::optional),
                Word::blank));
    add_rare_fields(form, limit);
}

Facts take_new_item(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const base::Id item = signer.new_id();
    const auto role = static_cast<facts::ItemRole>(reader.choice("role"));
    facts::LimitSet limit = fresh_limit();
    facts::ItemAdded added{reader.text("name"), role, reader.text("chapter")};
    read_limit(reader, limit);
    facts::Body body{context.today, {form.aircraft, item}, std::move(limit), {}};
    check_limit_fields(reader, body, role, context.today);
    if (!reader.sound()) return {};
    facts::Body first{context.today, body.about, std::move(added), {}};
    return {signer.sign(item, std::move(first), context.journal),
            signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_change_limit(Form& form, const FormContext& context) {
    const timeline::ItemState* item = item_of(context, form.subject);
    form.title = Word::form_change_limit;
    form.intro = Word::form_change_limit_intro;
    name_item(form, context, item);
    add_date(form, context.today);
    const facts::LimitSet limit = limit_in_force(item);
    add_usual_fields(form, limit);
    add_rare_fields(form, limit);
}

Facts take_change_limit(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const timeline::ItemState* item = item_of(context, form.subject);
    if (item == nullptr) return {};
    const auto on = reader.date("date");
    const std::optional<base::Date> since = in_force_since(context, form.aircraft, *item);
    if (on && since && *on < *since)
        reader.complain("date", Trouble::form_limit_before, {base::day_arg(*since)});
    facts::LimitSet limit = limit_in_force(item);
    read_limit(reader, limit);
    const base::Date from = on.value_or(context.today);
    const std::vector<base::Id> about{form.aircraft, item->id};
    if (item->limit && reader.sound() &&
        facts::say_the_same({from, about, *item->limit, {}}, {from, about, limit, {}}))
        reader.complain("date", Trouble::form_same_as_before);
    facts::Body body{from, about, std::move(limit), {}};
    check_limit_fields(reader, body, item->role, context.today);
    if (!reader.sound()) return {};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_permit(Form& form, const FormContext& context) {
    form.title = Word::form_permit;
    form.intro = Word::form_permit_intro;
    name_item(form, context, item_of(context, form.subject));
    const auto field = [&](const char* id, Word label, FieldKind kind, Need need) {
        form.fields.push_back(make_field(id, label, kind, {}, need));
    };
    field("issuer", Word::field_issuer, FieldKind::text, Need::needed);
    field("reference", Word::field_permit_reference, FieldKind::text, Need::optional);
    field("route", Word::field_route, FieldKind::text, Need::optional);
    add_date(form, context.today);
    field("hours", Word::field_permit_hours, FieldKind::hours, Need::optional);
    field("until", Word::field_permit_until, FieldKind::date, Need::optional);
    form.fields.back().hint = {Word::hint_permit, {}};
}

Facts take_permit(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Permit permit;
    permit.issuer = reader.text("issuer");
    permit.reference = reader.text("reference");
    permit.route = reader.text("route");
    permit.hours = reader.hours("hours");
    permit.until = reader.date("until");
    const auto on = reader.date("date");
    if (on && permit.until && *permit.until < *on)
        reader.complain("until", Trouble::form_ends_before_start);
    facts::Body body{
        on.value_or(context.today), {form.aircraft, form.subject}, std::move(permit), {}};
    check_fields(reader, body);
    if (!reader.sound()) return {};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_rename_item(Form& form, const FormContext& context) {
    const timeline::ItemState* item = item_of(context, form.subject);
    form.title = Word::form_rename_item;
    form.intro = Word::form_rename_item_intro;
    name_item(form, context, item);
    form.fields.push_back(make_field("name",
                                     Word::field_item_name,
                                     FieldKind::text,
                                     item == nullptr ? std::string{} : item->name,
                                     Need::needed));
    form.fields.push_back(make_field("why", Word::field_why, FieldKind::text, {}, Need::optional));
}

Facts take_rename_item(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::ItemChanged changed{reader.text("name"), reader.text("why")};
    const timeline::ItemState* item = item_of(context, form.subject);
    if (item != nullptr && item->name == changed.name)
        reader.complain("name", Trouble::form_same_as_before);
    if (!reader.sound()) return {};
    facts::Body body{context.today, {form.aircraft, form.subject}, std::move(changed), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

}  // namespace twoclocks::canvas
