// What happens while something is typed: fields, pad, clearing and undoing it, drafts that survive
// a reload.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/inside.hpp"
#include "wasm/app/written.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;

constexpr std::string_view search_mark = "find-";

// What forms need under them: these nothing, a record, an item, or a part; the others an aircraft.
constexpr std::array of_nothing{FormKind::new_aircraft,
                                FormKind::author,
                                FormKind::specimen,
                                FormKind::fleet_bound,
                                FormKind::readings_table,
                                FormKind::parts_table,
                                FormKind::new_part};
constexpr std::array of_a_record{FormKind::correct, FormKind::withdraw, FormKind::sign_event};
constexpr std::array of_an_item{FormKind::change_limit, FormKind::permit, FormKind::rename_item};
constexpr std::array of_a_part{FormKind::part_fit,
                               FormKind::part_remove,
                               FormKind::part_move,
                               FormKind::part_scrap,
                               FormKind::part_work,
                               FormKind::part_rebuild};

template <std::size_t Count>
[[nodiscard]] bool is_one(const std::array<FormKind, Count>& kinds, FormKind kind) {
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

/// A form of this kind says nothing without its aircraft or record.
[[nodiscard]] bool has_ground(Inside& in, FormKind kind, base::Id subject) {
    if (is_one(of_nothing, kind)) return true;
    if (is_one(of_a_record, kind)) return !in.ledger.visible().with_id(subject).empty();
    if (is_one(of_an_item, kind)) return item_of(in.context_of(subject), subject) != nullptr;
    if (is_one(of_a_part, kind)) return in.part(subject) != nullptr;
    if (kind == FormKind::decide || kind == FormKind::means)
        return can_change_directive(subject, in.context_of(subject));
    if (kind == FormKind::new_item || kind == FormKind::directive)
        return in.part(subject) != nullptr || in.assessed(subject) != nullptr;
    const views::Assessed* aircraft =
        in.assessed(aircraft_of_subject(in.ledger.visible(), subject));
    const bool needs_core = kind == FormKind::core_step;
    return aircraft != nullptr && (!needs_core || !aircraft->state.money.cores.empty());
}

[[nodiscard]] base::Arg when_arg(const Inside& in, base::Date day) {
    if (day == in.today) return base::word_arg(Word::pad_today);
    if (day.day_number == in.today.day_number - 1) return base::word_arg(Word::pad_yesterday);
    return base::day_arg(day);
}

[[nodiscard]] Message draft_note(const Inside& in, base::Date day) {
    return {Word::draft_back, {when_arg(in, day)}};
}

/// The form's field of that id, or the one whose list is searched by it.
[[nodiscard]] FieldView* field_or_searched(Form& form, std::string_view id, bool& searches) {
    searches = id.starts_with(search_mark);
    return find_field(form, searches ? id.substr(search_mark.size()) : id);
}

}  // namespace

void AppState::Inside::open_form(FormKind kind, base::Id subject) {
    const FormContext context = context_of(subject);
    form = make_form(kind, subject, context);
    entry.fresh = form;
    entry.note = {Word::blank, {}};
    const Draft* draft = entry.drafts.find(name_of(kind), subject);
    if (draft == nullptr) return;
    // What was chosen brings fields of its own, and those may bring more.
    constexpr int deepest = 4;  // template, part, item, its figures
    for (int step = 0; step < deepest; ++step) {
        fill(form, *draft);
        reshape(form, context);
    }
    adopt_total(form, context);
    for (FieldView& field : form.fields) {
        if (!field.problem) field.problem = problem_of(field);
    }
    put_apart(form);
    if (is_touched(form, entry.fresh)) entry.note = draft_note(*this, draft->on);
}

void AppState::Inside::open_pad(base::Id aircraft) {
    pad = {aircraft, {}, base::print_date(today), {}};
    entry.note = {Word::blank, {}};
    open({Place::Kind::pad, aircraft});
}

void AppState::Inside::type(std::string_view field_id, std::string_view text) {
    dirty = true;
    if (here().kind == Place::Kind::pad) {
        if (field_id == "date") pad.date_text = text;
        return;
    }
    bool searches = false;
    FieldView* field = field_or_searched(typed(), field_id, searches);
    if (field == nullptr) return;
    (searches ? field->filter : field->text) = text;
    if (field->kind == FieldKind::file) form.files.erase(field->id);
    if (searches) return;
    field->problem.reset();
    if (!asks()) follow_change(form, field_id, context_of(form.aircraft));
}

void AppState::Inside::end_field(std::string_view field_id) {
    dirty = true;
    if (here().kind != Place::Kind::form && !asks()) return;
    FieldView* field = find_field(typed(), field_id);
    if (field == nullptr || field->problem) return;
    field->problem = problem_of(*field);
    // Laying the form out again moves its fields.
    if (is_table(form.kind) && !asks()) return reshape(form, context_of(form.aircraft));
    if (field->kind != FieldKind::money || field->problem) return;
    // An amount may bring its currency along: then that is the one chosen.
    const base::Result<base::Money> money = read_money(*field);
    const auto& all = base::currencies();
    for (std::size_t at = 0; money && at < all.size(); ++at) {
        if (all[at] == money.value().currency) field->chosen = static_cast<std::int32_t>(at);
    }
}

void AppState::Inside::choose(const std::string& field_id, std::int32_t option) {
    FieldView* field = find_field(typed(), field_id);
    if (field == nullptr || option < 0) return;
    if (option >= static_cast<std::int32_t>(field->options.size())) return;
    field->chosen = option;
    if (here().kind != Place::Kind::checks) field->open = false;
    field->filter.clear();
    field->problem.reset();
    if (asks()) return;
    if (form.kind == FormKind::new_aircraft && field_id == "template") propose_overhaul(form);
    follow_change(form, field_id, context_of(form.aircraft));
    reshape(form, context_of(form.aircraft));
}

void AppState::Inside::toggle(const std::string& field_id) {
    for (FieldView& field : typed().fields) {
        const bool was_open = std::exchange(field.open, false);
        field.filter.clear();
        if (field.id == field_id) field.open = !was_open;
    }
}

void AppState::Inside::clear_entry() {
    const bool on_pad = here().kind == Place::Kind::pad;
    if (on_pad) {
        entry.cleared_pad = pad;
        pad = {pad.aircraft, {}, base::print_date(today), {}};
    } else if (here().kind == Place::Kind::form) {
        entry.cleared = has_secret(form.kind) ? std::nullopt : std::optional{form};
        form = entry.fresh;
    } else {
        return;
    }
    entry.note = {Word::blank, {}};
    notify({Word::form_cleared, {}});
    if (!on_pad && !entry.cleared) return;
    notices.back().action = Intent{intent::UndoClear{}};
    notices.back().action_label = {Word::button_undo, {}};
}

void AppState::Inside::undo_clear() {
    notices.clear();
    const bool same_pad = here().kind == Place::Kind::pad && entry.cleared_pad &&
                          entry.cleared_pad->aircraft == pad.aircraft;
    if (same_pad) pad = *entry.cleared_pad;
    const bool same_form = here().kind == Place::Kind::form && entry.cleared &&
                           entry.cleared->kind == form.kind &&
                           entry.cleared->subject == form.subject;
    if (same_form) form = *entry.cleared;
    entry.cleared.reset();
    entry.cleared_pad.reset();
}

bool AppState::Inside::take_field_file(std::string_view name, std::string_view bytes) {
    const std::string id = std::exchange(entry.file_field, {});
    FieldView* field = find_field(form, id);
    if (id.empty() || here().kind != Place::Kind::form || field == nullptr) return false;
    field->text = name;
    field->size_bytes = static_cast<std::int64_t>(bytes.size());
    field->problem.reset();
    form.files[id] = bytes;
    form.headings.clear();
    reshape(form, context_of(form.aircraft));
    dirty = true;
    return true;
}

void AppState::Inside::keep_drafts() {
    if (!is_loaded || is_read_only) return;
    Drafts& drafts = entry.drafts;
    drafts.close_all();
    if (here().kind == Place::Kind::form) {
        // A password is kept nowhere, and the rest of its page is a few taps.
        const bool typed = !has_secret(form.kind) && is_touched(form, entry.fresh);
        if (typed) drafts.put(draft_of(form, today));
        if (!typed) drafts.drop(name_of(form.kind), form.subject);
    }
    // A pad that is left by hand is left: digits of another day would mislead.
    const bool typed_on_pad = here().kind == Place::Kind::pad && !pad.digits.empty();
    if (typed_on_pad) drafts.put(draft_of(pad, today));
    if (!typed_on_pad) drafts.drop_kind(pad_kind);
    std::string text = drafts.print();
    if (text == entry.kept) return;
    entry.kept = std::move(text);
    host.keep_draft(entry.kept);
}

void AppState::Inside::restore_draft(std::string_view stored) {
    entry.kept = stored;
    if (is_read_only) return;
    entry.drafts = Drafts::read(stored);
    const Draft* found = entry.drafts.open();
    if (found == nullptr) return;
    const Draft draft = *found;  // opening a page changes the list
    if (draft.kind == pad_kind) {
        if (assessed(draft.subject) == nullptr) return;
        open({Place::Kind::aircraft, draft.subject});
        open_pad(draft.subject);
        fill(pad, draft);
        entry.note = draft_note(*this, draft.on);
        return;
    }
    const std::optional<FormKind> kind = form_kind(draft.kind);
    if (!kind || !has_ground(*this, *kind, draft.subject)) return;
    const base::Id aircraft = aircraft_of_subject(ledger.visible(), draft.subject);
    if (assessed(aircraft) != nullptr) open({Place::Kind::aircraft, aircraft});
    if (part(draft.subject) != nullptr) open({Place::Kind::part, draft.subject});
    open({Place::Kind::form, draft.subject});
    open_form(*kind, draft.subject);
}

void AppState::Inside::draft_saved(const Pending& saved) {
    if (saved.draft_kind.empty()) return;
    entry.drafts.drop(saved.draft_kind, saved.draft_subject);
    if (name_of(form.kind) == saved.draft_kind && form.subject == saved.draft_subject)
        entry.fresh = form;
}

}  // namespace twoclocks::canvas
