// What happens to a part between its fits: moved, lent, worked on, rebuilt, scrapped.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;
using timeline::PartState;

/// In the order of the options of the field "kind".
enum class PartWork : std::int32_t { overhaul, other };

/// Behind them stands what hangs on the part.
constexpr std::size_t kinds_of_work = 2;

[[nodiscard]] bool is_fitted(const PartState* part) {
    return part != nullptr && part->whereabouts == timeline::Whereabouts::fitted;
}

/// What the part was fitted to on a day; empty for nothing.
[[nodiscard]] base::Id host_on(const PartState* part, base::Date on) {
    base::Id out;
    if (part == nullptr) return out;
    for (const timeline::PartSpell& spell : part->spells) {
        if (spell.from <= on && (!spell.until || on < *spell.until)) out = spell.host;
    }
    return out;
}

/// Signs one fact about the part, and gives nothing when its record would not add up with it.
[[nodiscard]] Facts one_fact(FieldReader& reader,
                             const Form& form,
                             const FormContext& context,
                             Signer& signer,
                             facts::Body body) {
    if (!reader.sound()) return {};
    const Facts out{signer.sign(signer.new_id(), std::move(body), context.journal)};
    refuse_new_troubles(reader, context, form.subject, out);
    return reader.sound() ? out : Facts{};
}

}  // namespace

void make_part_move(Form& form, const FormContext& context) {
    begin_part_form(form, context, Word::form_part_move, Word::form_part_move_intro);
    add_field(form, "place", Word::field_part_place, FieldKind::text, Need::optional);
    add_field(form, "owner", Word::field_owner, FieldKind::text, Need::optional, Word::hint_owner);
    add_field(
        form, "lent_to", Word::field_lent_to, FieldKind::text, Need::optional, Word::hint_lent_to);
    add_field(form, "return_by", Word::field_return_by, FieldKind::date, Need::optional);
    add_field(form, "why", Word::field_why, FieldKind::text, Need::optional);
}

Facts take_part_move(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const auto on = read_day(reader, context);
    facts::PartMoved moved;
    moved.place = reader.text("place");
    moved.owner = reader.text("owner");
    moved.lent_to = reader.text("lent_to");
    moved.return_by = reader.date("return_by");
    moved.why = reader.text("why");
    if (reader.sound() && moved.place.empty() && moved.owner.empty() && moved.lent_to.empty())
        complain(reader, "place", Trouble::form_no_move);
    if (on && moved.return_by && *moved.return_by < *on)
        complain(reader, "return_by", Trouble::form_ends_before_start);
    const base::Date day = on.value_or(context.today);
    return one_fact(reader, form, context, signer, {day, {form.subject}, std::move(moved), {}});
}

void make_part_scrap(Form& form, const FormContext& context) {
    begin_part_form(form, context, Word::form_part_scrap, Word::form_part_scrap_intro);
    form.submit = Word::button_part_scrap;
    add_field(form, "proof", Word::field_proof, FieldKind::text, Need::needed, Word::hint_proof);
}

Facts take_part_scrap(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const auto on = read_day(reader, context);
    facts::PartScrapped scrapped;
    scrapped.proof = reader.text("proof");
    const base::Date day = on.value_or(context.today);
    return one_fact(reader, form, context, signer, {day, {form.subject}, std::move(scrapped), {}});
}

void make_part_work(Form& form, const FormContext& context) {
    begin_part_form(form, context, Word::form_part_work, Word::form_part_work_intro);
    FieldView kind = make_choice(
        "kind", Word::field_part_work, {Word::option_overhaul, Word::option_other_work}, 0);
    if (const PartState* part = part_in(context, form.subject)) {
        for (const timeline::ItemState& item : part->items)
            kind.options.push_back({Word::as_told, {base::text_arg(item.name)}});
    }
    form.fields.push_back(std::move(kind));
    add_field(form, "what", Word::field_what, FieldKind::text, Need::needed);
    if (is_fitted(part_in(context, form.subject))) add_host_total(form, context);
    add_field(form, "done_by", Word::field_done_by, FieldKind::text, Need::optional);
    add_field(form, "place", Word::field_place, FieldKind::text, Need::optional);
    add_field(form, "reference", Word::field_reference, FieldKind::text, Need::optional);
}

void choose_part_work(Form& form, const PartState& part, base::Id item) {
    FieldView* kind = find_field(form, "kind");
    FieldView* what = find_field(form, "what");
    if (kind == nullptr || what == nullptr) return;
    for (std::size_t place = 0; place < part.items.size(); ++place) {
        if (part.items[place].id != item) continue;
        kind->chosen = static_cast<std::int32_t>(kinds_of_work + place);
        if (what->text.empty()) what->text = part.items[place].name;
    }
}

Facts take_part_work(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const PartState* part = part_in(context, form.subject);
    const auto on = read_day(reader, context);
    facts::WorkDone work;
    work.what = reader.text("what");
    const base::Date day = on.value_or(context.today);
    const base::Id host = host_on(part, day);
    if (!host.empty()) work.total = read_host_total(reader, context, host, on);
    work.done_by = reader.text("done_by");
    work.place = reader.text("place");
    work.reference = reader.text("reference");
    const std::int32_t kind = reader.choice("kind");
    if (kind == static_cast<std::int32_t>(PartWork::overhaul)) work.renews = {{form.subject, {}}};
    const auto item = static_cast<std::size_t>(kind) - kinds_of_work;
    if (part != nullptr && kind > static_cast<std::int32_t>(PartWork::other) &&
        item < part->items.size())
        work.renews = {{part->items[item].id, {}}};
    // Of work done where the part is fitted, the total is that of what it is fitted to.
    std::vector<base::Id> about{form.subject};
    if (!host.empty()) about.insert(about.begin(), host);
    return one_fact(reader, form, context, signer, {day, std::move(about), std::move(work), {}});
}

void make_part_rebuild(Form& form, const FormContext& context) {
    begin_part_form(form, context, Word::form_part_rebuild, Word::form_part_rebuild_intro);
    add_field(form, "document", Word::field_document, FieldKind::text, Need::needed);
    if (is_fitted(part_in(context, form.subject))) add_host_total(form, context);
    add_field(form, "done_by", Word::field_done_by, FieldKind::text, Need::optional);
    add_field(form, "place", Word::field_place, FieldKind::text, Need::optional);
}

Facts take_part_rebuild(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const PartState* part = part_in(context, form.subject);
    const auto on = read_day(reader, context);
    facts::PartRebuilt rebuilt;
    rebuilt.document = reader.text("document");
    const base::Date day = on.value_or(context.today);
    const base::Id host = host_on(part, day);
    if (!host.empty()) rebuilt.host_total = read_host_total(reader, context, host, on);
    rebuilt.done_by = reader.text("done_by");
    rebuilt.place = reader.text("place");
    return one_fact(reader, form, context, signer, {day, {form.subject}, std::move(rebuilt), {}});
}

}  // namespace twoclocks::canvas
