// Parts that join the record, go on and come off.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"
#include "wasm/app/record_labels.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Date;
using base::Trouble;
using base::Word;
using timeline::PartState;

void add_condition(Form& form, facts::PartCondition condition) {
    form.fields.push_back(make_choice("condition",
                                      Word::field_condition,
                                      option_words(facts::Choices::part_condition),
                                      static_cast<std::int32_t>(condition)));
}

[[nodiscard]] facts::PartCondition read_condition(FieldReader& reader) {
    return static_cast<facts::PartCondition>(reader.choice("condition"));
}

/// Counts of the host where they matter to the part.
void add_host_counts(Form& form, const PartState* part) {
    if (part != nullptr && part->landings)
        add_field(form,
                  "host_landings",
                  Word::field_host_landings,
                  FieldKind::whole,
                  Need::optional,
                  Word::hint_unknown);
    if (part != nullptr && part->starts)
        add_field(form,
                  "host_starts",
                  Word::field_host_starts,
                  FieldKind::whole,
                  Need::optional,
                  Word::hint_unknown);
}

[[nodiscard]] facts::PartAdded read_papers(FieldReader& reader) {
    facts::PartAdded added;
    added.name = reader.text("name");
    added.part_number = reader.text("part_number");
    added.serial = reader.text("serial");
    added.tsn = reader.hours("tsn");
    added.tso = reader.hours("tso");
    added.overhauls = read_count(reader, "overhauls");
    added.history_unknown = reader.choice("history_unknown") == 1;
    added.condition = read_condition(reader);
    added.papers = reader.text("papers");
    added.manufactured = reader.date("manufactured");
    added.cured = reader.date("cured");
    added.shipped = reader.date("shipped");
    added.landings = read_count(reader, "landings");
    added.starts = read_count(reader, "starts");
    added.chapter = reader.text("chapter");
    added.owner = reader.text("owner");
    added.lent_until = reader.date("lent_until");
    return added;
}

void check_papers(const facts::PartAdded& added, const FormContext& context, FieldReader& reader) {
    if (added.tsn && added.tso && *added.tso > *added.tsn)
        complain(reader, "tso", Trouble::form_tso_above_tsn, {base::hours_used_arg(*added.tsn)});
    const auto refuse_ahead = [&](const char* field, const std::optional<Date>& date) {
        if (date && *date > context.today)
            complain(reader, field, Trouble::form_day_ahead, {base::day_arg(*date)});
    };
    refuse_ahead("manufactured", added.manufactured);
    refuse_ahead("cured", added.cured);
    refuse_ahead("shipped", added.shipped);
    const bool known =
        context.parts != nullptr && !added.serial.empty() &&
        std::any_of(context.parts->begin(), context.parts->end(), [&](const PartState& part) {
            return part.part_number == added.part_number && part.serial == added.serial;
        });
    if (known)
        complain(reader,
                 "serial",
                 Trouble::form_part_twice,
                 {base::text_arg(added.part_number), base::text_arg(added.serial)});
}

/// The spell that a removal ends; null when the part is on nothing.
[[nodiscard]] const timeline::PartSpell* open_spell(const PartState& part) {
    for (auto spell = part.spells.rbegin(); spell != part.spells.rend(); ++spell) {
        if (!spell->until && spell->host == part.host) return &*spell;
    }
    return nullptr;
}

/// The hours of the part are recorded and have not changed since a day.
[[nodiscard]] bool stands_since(const PartState& part, Date on) {
    if (!part.tsn || part.tsn_estimated) return false;
    return part.spells.empty() || (part.spells.back().until && on >= *part.spells.back().until);
}

}  // namespace

void make_new_part(Form& form, const FormContext& context) {
    begin_part_form(form, context, Word::form_new_part, Word::form_new_part_intro);
    form.aircraft = form.subject;
    form.submit = Word::button_new_part;
    const auto field =
        [&](const char* id, Word label, FieldKind kind, Need need, Word hint = Word::blank) {
            add_field(form, id, label, kind, need, hint);
        };
    field("name", Word::field_part_name, FieldKind::text, Need::optional);
    field("part_number", Word::field_part_number, FieldKind::code, Need::needed);
    field("serial", Word::field_serial, FieldKind::code, Need::needed);
    field("tsn", Word::field_tsn, FieldKind::hours, Need::optional, Word::hint_unknown);
    field("tso", Word::field_tso, FieldKind::hours, Need::optional, Word::hint_unknown);
    field("overhauls", Word::field_overhauls, FieldKind::whole, Need::optional);
    add_truth(form, "history_unknown", Word::field_history_unknown, Word::hint_history_unknown);
    add_condition(form, facts::PartCondition::unknown);
    add_hosts(form, context, {}, form.subject);
    field("position", Word::field_position, FieldKind::text, Need::optional);
    add_host_total(form, context);
    field("papers", Word::field_papers, FieldKind::text, Need::optional);
    field("manufactured", Word::field_manufactured, FieldKind::date, Need::optional);
    field("cured", Word::field_cured, FieldKind::date, Need::optional);
    field("shipped", Word::field_shipped, FieldKind::date, Need::optional);
    field("landings", Word::field_landings, FieldKind::whole, Need::optional);
    field("starts", Word::field_starts, FieldKind::whole, Need::optional);
    field("chapter", Word::field_chapter, FieldKind::text, Need::optional);
    field("owner", Word::field_owner, FieldKind::text, Need::optional);
    field("lent_until", Word::field_lent_until, FieldKind::date, Need::optional);
}

Facts take_new_part(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const auto on = read_day(reader, context);
    facts::PartAdded added = read_papers(reader);
    check_papers(added, context, reader);
    const base::Id host = host_of(form, context);
    facts::PartFitted fitted;
    fitted.position = reader.text("position");
    fitted.host_total = host.empty() ? std::nullopt : read_host_total(reader, context, host, on);
    if (!reader.sound()) return {};
    const base::Id part = signer.new_id();
    Facts out{signer.sign(part, {*on, {part}, std::move(added), {}}, context.journal)};
    if (!host.empty()) {
        out.push_back(signer.sign(
            signer.new_id(), {*on, {part, host}, std::move(fitted), {}}, context.journal));
    }
    refuse_new_troubles(reader, context, part, out);
    return reader.sound() ? out : Facts{};
}

void make_part_fit(Form& form, const FormContext& context) {
    begin_part_form(form, context, Word::form_part_fit, Word::form_part_fit_intro);
    const PartState* part = part_in(context, form.subject);
    // What was taken off for a time goes back where it was.
    const bool goes_back =
        part != nullptr && !part->spells.empty() && part->spells.back().temporarily;
    const base::Id last = goes_back ? part->spells.back().host : base::Id{};
    // Otherwise nothing is chosen: the wrong aircraft is one hasty tap away.
    add_hosts(form, context, form.subject, last);
    add_field(form, "position", Word::field_position, FieldKind::text, Need::optional);
    if (goes_back) form.fields.back().text = part->spells.back().position;
    add_host_total(form, context);
    add_field(
        form, "tsn", Word::field_card_tsn, FieldKind::hours, Need::optional, Word::hint_card_tsn);
    add_host_counts(form, part);
    add_field(form, "reference", Word::field_reference, FieldKind::text, Need::optional);
}

Facts take_part_fit(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const PartState* part = part_in(context, form.subject);
    const auto on = read_day(reader, context);
    const base::Id host = host_of(form, context);
    if (host.empty()) complain(reader, host_field, Trouble::form_needed);
    facts::PartFitted fitted;
    fitted.position = reader.text("position");
    fitted.host_total = read_host_total(reader, context, host, on);
    fitted.tsn = reader.hours("tsn");
    fitted.host_landings = read_count(reader, "host_landings");
    fitted.host_starts = read_count(reader, "host_starts");
    fitted.reference = reader.text("reference");
    if (part != nullptr && on && fitted.tsn && stands_since(*part, *on) && part->tsn > fitted.tsn)
        complain(reader, "tsn", Trouble::form_tsn_falls, {base::hours_used_arg(*part->tsn)});
    if (!reader.sound()) return {};
    const Facts out{signer.sign(
        signer.new_id(), {*on, {form.subject, host}, std::move(fitted), {}}, context.journal)};
    refuse_new_troubles(reader, context, form.subject, out);
    return reader.sound() ? out : Facts{};
}

void make_part_remove(Form& form, const FormContext& context) {
    begin_part_form(form, context, Word::form_part_remove, Word::form_part_remove_intro);
    add_host_total(form, context);
    add_condition(form, facts::PartCondition::as_removed);
    add_truth(form, "temporarily", Word::field_temporarily, Word::hint_temporarily);
    add_field(form, "why", Word::field_why, FieldKind::text, Need::optional);
    add_host_counts(form, part_in(context, form.subject));
}

Facts take_part_remove(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const PartState* part = part_in(context, form.subject);
    const timeline::PartSpell* spell = part == nullptr ? nullptr : open_spell(*part);
    if (spell == nullptr) return {};
    const auto on = read_day(reader, context);
    facts::PartRemoved removed;
    removed.host_total = read_host_total(reader, context, spell->host, on);
    removed.condition = read_condition(reader);
    removed.temporarily = reader.choice("temporarily") == 1;
    removed.why = reader.text("why");
    removed.host_landings = read_count(reader, "host_landings");
    removed.host_starts = read_count(reader, "host_starts");
    if (on && *on < spell->from)
        complain(reader, day_field, Trouble::form_before_fit, {base::day_arg(spell->from)});
    const bool falls = removed.host_total && spell->from_total && !spell->from_estimated &&
                       *removed.host_total < *spell->from_total;
    if (falls)
        complain(reader,
                 host_total_field,
                 Trouble::form_host_falls,
                 {base::hours_used_arg(*spell->from_total)});
    if (!reader.sound()) return {};
    const Facts out{signer.sign(signer.new_id(),
                                {*on, {form.subject, spell->host}, std::move(removed), {}},
                                context.journal)};
    refuse_new_troubles(reader, context, form.subject, out);
    return reader.sound() ? out : Facts{};
}

}  // namespace twoclocks::canvas
