// Into storage, and back into service.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"

#include <memory>

#include "engine/base/message_args.hpp"
#include "engine/base/region.hpp"
#include "engine/timeline/resolve.hpp"

namespace twoclocks::canvas {
namespace {

using base::Date;
using base::Trouble;
using base::Word;

/// The records of storage that last on the day of the form: none that records disagree about.
[[nodiscard]] std::vector<const timeline::Spell*> lasting(const FormContext& context) {
    std::vector<const timeline::Spell*> out;
    if (context.aircraft == nullptr) return out;
    for (const timeline::Spell& spell : context.aircraft->spells) {
        const bool lasts = !spell.until || spell.flown_by || *spell.until > context.today;
        if (spell.stored && lasts && spell.from <= context.today) out.push_back(&spell);
    }
    return out;
}

void check_return(const FormContext& context, const std::optional<Date>& on, FieldReader& reader) {
    const std::vector<const timeline::Spell*> spells = lasting(context);
    const bool disputed =
        context.aircraft != nullptr && !context.aircraft->storage.in_question.empty();
    if (spells.empty())
        reader.complain("date",
                        disputed ? Trouble::form_storage_disputed : Trouble::form_not_stored);
    for (const timeline::Spell* spell : spells) {
        if (on && *on <= spell->from)
            reader.complain("date", Trouble::form_return_before, {base::day_arg(spell->from)});
    }
}

}  // namespace

void make_storage(Form& form, const FormContext& context) {
    form.title = Word::form_storage;
    form.intro = Word::form_storage_intro;
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    field("date", Word::field_from, FieldKind::date, base::print_date(context.today), Need::needed);
    field("until", Word::field_until, FieldKind::date, {}, Need::optional);
    field("source", Word::field_storage_source, FieldKind::text, {}, Need::optional);
    field("revision", Word::field_revision, FieldKind::text, {}, Need::optional);
    field("why", Word::field_why, FieldKind::text, {}, Need::optional);
}

Facts take_storage(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::OutOfService stored;
    stored.stored = true;
    const auto from = reader.date("date");
    stored.until = reader.date("until");
    stored.source = reader.text("source");
    stored.revision = reader.text("revision");
    stored.why = reader.text("why");
    if (from && stored.until && *stored.until <= *from)
        reader.complain("until", Trouble::form_ends_before_start);
    if (!reader.sound()) return {};
    facts::Body body{*from, {form.aircraft}, std::move(stored), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_return(Form& form, const FormContext& context) {
    form.title = Word::form_return;
    form.intro = Word::form_return_intro;
    form.fields.push_back(make_field(
        "date", Word::field_until, FieldKind::date, base::print_date(context.today), Need::needed));
    form.fields.push_back(
        make_field("reference", Word::field_return_reference, FieldKind::text, {}, Need::optional));
}

/// The record of the storage is corrected: it has a last day now.
Facts take_return(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const auto on = reader.date("date");
    const std::string reference = reader.text("reference");
    check_return(context, on, reader);
    if (!reader.sound()) return {};
    const std::string why =
        reference.empty() ? base::say({Word::reason_returned, {}}, {})
                          : base::say({Word::reason_returned_by, {base::text_arg(reference)}}, {});
    Facts out;
    for (const timeline::Spell* spell : lasting(context)) {
        const timeline::Record record = timeline::resolve_one(context.journal, spell->fact);
        auto instead = std::make_shared<facts::Body>(record.in_use);
        std::get<facts::OutOfService>(instead->fields).until = *on;
        for (const timeline::Head& head : record.heads) {
            facts::Correction correction{facts::ref_to(context.journal, *head.fact), why, instead};
            facts::Body body{context.today, instead->about, std::move(correction), {}};
            out.push_back(signer.sign(signer.new_id(), std::move(body), context.journal));
        }
    }
    return out;
}

}  // namespace twoclocks::canvas
