#include "wasm/app/sharing.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/written.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/facts/excerpt.hpp"
#include "engine/facts/json.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Trouble;
using base::Word;

constexpr std::string_view lock_mark = "{\"two_clocks_locked\":";
constexpr std::int64_t lock_version = 1;
constexpr std::int64_t least_password = 8;  // letters

/// What a form asks for.
[[nodiscard]] facts::ExcerptAsked excerpt_asked(Form& form) {
    const auto chosen = [&](std::string_view id) { return find_field(form, id)->chosen; };
    facts::ExcerptAsked out;
    const auto place = static_cast<std::size_t>(std::max(0, chosen("what")));
    if (place > 0 && place < form.hosts.size()) out.aircraft = form.hosts[place];
    out.has_money = chosen("money") == 0;
    out.has_names = chosen("names") == 0;
    return out;
}

/// Other aircraft that come along, by name.
void tell_others(const facts::Excerpt& excerpt,
                 const FormContext& context,
                 const facts::ExcerptAsked& asked,
                 std::vector<Message>& told) {
    if (!asked.aircraft || context.fleet == nullptr) return;
    std::string names;
    for (const base::Id& id : excerpt.journal.aircraft()) {
        const auto found = context.fleet->find(id);
        if (id == *asked.aircraft || found == context.fleet->end()) continue;
        names += (names.empty() ? "" : ", ") + found->second.state.registration;
    }
    if (!names.empty()) told.push_back({Word::share_with, {base::text_arg(names)}});
}

/// How much of the record the file will hold.
void tell_size(Form& form, const FormContext& context) {
    const facts::Excerpt excerpt = facts::excerpt_of(context.journal, excerpt_asked(form));
    const auto count = [](std::size_t size) {
        return base::whole_arg(static_cast<std::int64_t>(size));
    };
    FieldView* password = find_field(form, "password");
    password->told = {
        {Word::files_summary,
         {count(excerpt.journal.aircraft().size()), count(excerpt.journal.facts().size())}}};
    const auto tell = [&](Word word, std::int64_t some) {
        if (some > 0) password->told.push_back({word, {base::whole_arg(some)}});
    };
    tell_others(excerpt, context, excerpt_asked(form), password->told);
    tell(Word::share_newer_left, excerpt.newer_left);
    tell(Word::share_kept_names, excerpt.kept_names);
}

/// The password of the form, empty where none is wanted; nothing where it cannot stand.
[[nodiscard]] std::optional<std::string> password_in(Form& form) {
    FieldReader reader{form};
    const std::string password = find_field(form, "password")->text;
    const std::string again = find_field(form, "again")->text;
    if (!password.empty() && letters_in(password) < least_password)
        reader.complain("password", Trouble::password_short, {base::whole_arg(least_password)});
    else if (password != again)
        reader.complain("again", Trouble::password_differs);
    return reader.sound() ? std::optional{password} : std::nullopt;
}

/// Its password is kept nowhere.
void forget(AppState::Inside& in) {
    for (FieldView& field : in.form.fields)
        if (field.kind == FieldKind::secret) field.text.clear();
    in.form.files.clear();
    in.entry.fresh = in.form;
}

void leave_form(AppState::Inside& in) {
    forget(in);
    in.host.go_back();
}

/// True where the page that is open asks for a password.
[[nodiscard]] bool asks_password(AppState::Inside& in) {
    return in.here().kind == Place::Kind::form && in.form.kind == FormKind::unlock;
}

void share(AppState::Inside& in) {
    const auto password = password_in(in.form);
    if (!password) return;
    const facts::ExcerptAsked asked = excerpt_asked(in.form);
    const bool is_whole = !asked.aircraft && asked.has_money && asked.has_names;
    if (is_whole && password->empty()) {
        // That is a copy, as any other.
        export_journal(in);
        return leave_form(in);
    }
    const views::Assessed* aircraft = asked.aircraft ? in.assessed(*asked.aircraft) : nullptr;
    const std::string of = aircraft == nullptr ? "two-clocks" : aircraft->state.registration;
    const std::string bytes =
        facts::print_journal(facts::excerpt_of(in.ledger.visible(), asked).journal);
    const std::string name = file_name(in, of, "record", password->empty() ? ".jsonl" : ".locked");
    if (password->empty()) {
        in.host.hand_over_file(name, bytes);
        in.notify({Word::paper_done, {base::text_arg(name)}});
    } else {
        in.host.hand_over_locked({name, bytes, *password});
    }
    leave_form(in);
}

void keep_author(AppState::Inside& in) {
    const FieldView* field = find_field(in.form, "author");
    if (field == nullptr) return;
    in.signer.set_author(field->text);
    in.host.keep_setting("author", field->text);
    leave_form(in);
}

[[nodiscard]] std::optional<Trouble> fault_of_lock(std::string_view bytes);

void unlock(AppState::Inside& in) {
    // One at a time: the answer to it takes a moment.
    if (in.entry.is_opening) return;
    FieldReader reader{in.form};
    const std::string password = find_field(in.form, "password")->text;
    const std::string& bytes = in.form.files["locked"];
    if (const auto fault = fault_of_lock(bytes)) return reader.complain(base::trouble(*fault));
    if (password.empty()) return reader.complain("password", Trouble::form_needed);
    in.entry.is_opening = true;
    in.notify({Word::lock_opening, {}});
    in.host.unlock({in.form.named, bytes, password});
}

/// What is wrong with the first line of a locked file.
[[nodiscard]] std::optional<Trouble> fault_of_lock(std::string_view bytes) {
    const auto first = facts::read_json(bytes.substr(0, bytes.find('\n')), 1);
    const facts::Json* version = first ? first.value().find("two_clocks_locked") : nullptr;
    if (version == nullptr || version->type != facts::Json::Type::whole)
        return Trouble::lock_damaged;
    return version->whole > lock_version ? std::optional{Trouble::lock_newer} : std::nullopt;
}

}  // namespace

void make_share(Form& form, const FormContext& context) {
    form.title = Word::form_share;
    form.intro = Word::form_share_intro;
    form.submit = Word::form_share_submit;
    FieldView what = make_choice("what", Word::field_share_what, {Word::share_all}, 0);
    form.hosts = {{}};
    add_fleet(form, what, context, Word::share_aircraft);
    form.fields.push_back(std::move(what));
    form.fields.push_back(make_choice(
        "money", Word::field_share_money, {Word::share_with_money, Word::share_without_money}, 0));
    form.fields.push_back(with_hint(make_choice("names",
                                                Word::field_share_names,
                                                {Word::share_with_names, Word::share_without_names},
                                                0),
                                    Word::hint_share_names));
    form.fields.push_back(with_hint(
        make_field("password", Word::field_password, FieldKind::secret, {}, Need::optional),
        Word::hint_password));
    form.fields.push_back(
        make_field("again", Word::field_password_again, FieldKind::secret, {}, Need::optional));
    tell_size(form, context);
}

void reshape_share(Form& form, const FormContext& context) {
    tell_size(form, context);
}

void make_unlock(Form& form, const FormContext&) {
    form.title = Word::form_unlock;
    form.intro = Word::form_unlock_intro;
    form.submit = Word::form_unlock_submit;
    form.fields.push_back(
        make_field("password", Word::field_password, FieldKind::secret, {}, Need::needed));
}

std::string file_name(const AppState::Inside& in,
                      const std::string& of,
                      const std::string& kind,
                      const char* ending) {
    constexpr std::size_t most = 60;  // what follows is short, and systems hold 255
    std::string out;
    bool says = false;
    for (const char sign : of.substr(0, most)) {
        const bool is_plain = (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z') ||
                              (sign >= '0' && sign <= '9') || sign == '-';
        out += is_plain ? sign : '_';
        says = says || (is_plain && sign != '-');
    }
    return (says ? out : std::string{"two-clocks"}) + '-' + kind + '-' +
           base::print_date(in.today) + ending;
}

bool act_on_form(AppState::Inside& in) {
    if (in.form.kind == FormKind::author)
        keep_author(in);
    else if (in.form.kind == FormKind::share)
        share(in);
    else if (in.form.kind == FormKind::unlock)
        unlock(in);
    else
        return false;
    return true;
}

bool take_locked(AppState::Inside& in, std::string_view name, std::string_view bytes) {
    constexpr std::string_view mark = "\xEF\xBB\xBF";  // some ways of sending put it in front
    if (bytes.starts_with(mark)) bytes.remove_prefix(mark.size());
    if (!bytes.starts_with(lock_mark)) return false;
    if (!asks_password(in)) {
        // What is typed in another form comes back when that is opened again.
        if (in.here().kind == Place::Kind::form) {
            in.keep_drafts();
            in.replace({Place::Kind::files, {}});
        }
        in.open({Place::Kind::form, {}});
    }
    in.open_form(FormKind::unlock, {});
    in.form.named = name;
    in.form.files["locked"] = bytes;
    in.entry.fresh = in.form;
    in.entry.is_opening = false;
    if (const auto fault = fault_of_lock(bytes)) in.form.problems = {base::trouble(*fault)};
    in.dirty = true;
    return true;
}

void show_import(AppState::Inside& in) {
    constexpr auto files = Place::Kind::files;
    if (in.here().kind == files) return;
    if (!asks_password(in)) return in.open({files, {}});
    in.entry.is_opening = false;
    in.notices.clear();
    in.sheet = std::monostate{};
    forget(in);
    // The page of files lies below, or else takes this one's place: one Back leads out of it.
    const std::vector<Place>& places = in.places;
    if (places.size() > 1 && places[places.size() - 2].kind == files)
        in.host.go_back();
    else
        in.replace({files, {}});
}

void tell_lock(AppState::Inside& in, std::string_view code, std::string_view name) {
    in.dirty = true;
    if (code == "done") return in.notify({Word::paper_done, {base::text_arg(std::string{name})}});
    const bool was_opening = std::exchange(in.entry.is_opening, false);
    if (was_opening) in.notices.clear();
    const bool asks = asks_password(in) && in.form.named == name;
    if (!asks && !was_opening) return in.notify({Word::lock_failed, {}}, true);
    if (!asks) return;  // the person went on to something else
    const Trouble trouble = code == "wrong"     ? Trouble::password_wrong
                            : code == "damaged" ? Trouble::lock_damaged
                                                : Trouble::lock_missing;
    in.form.problems = {base::trouble(trouble)};
}

}  // namespace twoclocks::canvas
