#include "wasm/app/specimen_fields.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/written.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

[[nodiscard]] base::Message label(Word what, Word state) {
    return {Word::specimen_as, {base::word_arg(what), base::word_arg(state)}};
}

/// The words of the caution serve as a text that is too long for its box.
[[nodiscard]] std::string long_text() {
    return std::string{base::pattern(Word::caution_full_2)} + ' ' +
           std::string{base::pattern(Word::welcome_text)};
}

[[nodiscard]] std::vector<Word> many_words() {
    return {Word::anchor_manufacture,
            Word::anchor_cure,
            Word::anchor_shipment,
            Word::anchor_first_airworthiness,
            Word::anchor_first_fit,
            Word::anchor_release,
            Word::anchor_overhaul,
            Word::anchor_unknown};
}

struct Typed {
    FieldKind kind;
    Word what;
    const char* filled;
    const char* wrong;  // null: nothing typed here can be wrong
};

constexpr Typed typed[] = {
    {FieldKind::text, Word::field_done_by, "Ann", nullptr},
    {FieldKind::code, Word::field_serial, "S-1042", nullptr},
    {FieldKind::secret, Word::field_password, "S-1042", nullptr},
    {FieldKind::hours, Word::field_total, "12:18", "1,234"},
    {FieldKind::whole, Word::field_landings, "1 240", "12.5"},
    {FieldKind::decimal, Word::field_other, "12.345", "1.2.3"},
    {FieldKind::date, Word::field_date, "2026-05-31", "2026-02-30"},
};

/// Fields that are typed into: empty, filled, with a problem.
void add_typed(std::vector<FieldView>& out) {
    for (const Typed& row : typed) {
        const std::string id = "specimen-" + std::to_string(out.size());
        FieldView empty = make_field(id + "-empty", row.what, row.kind, {}, Need::optional);
        empty.label = label(row.what, Word::specimen_empty);
        out.push_back(std::move(empty));
        FieldView filled = make_field(id + "-filled", row.what, row.kind, row.filled, Need::needed);
        filled.label = label(row.what, Word::specimen_filled);
        out.push_back(std::move(filled));
        if (row.wrong == nullptr) continue;
        FieldView wrong = make_field(id + "-wrong", row.what, row.kind, row.wrong, Need::needed);
        wrong.label = label(row.what, Word::specimen_wrong);
        wrong.problem = problem_of(wrong);
        out.push_back(std::move(wrong));
    }
}

void add_long(std::vector<FieldView>& out) {
    for (const FieldKind kind : {FieldKind::text, FieldKind::note}) {
        const bool note = kind == FieldKind::note;
        const Word what = note ? Word::field_note : Word::field_place;
        FieldView field =
            make_field(note ? "note-long" : "text-long", what, kind, long_text(), Need::needed);
        field.label = label(what, Word::specimen_long);
        out.push_back(std::move(field));
    }
    out.push_back(make_field("note-empty", Word::field_note, FieldKind::note, {}, Need::optional));
    out.back().label = label(Word::field_note, Word::specimen_empty);
    FieldView missing =
        make_field("text-missing", Word::field_place, FieldKind::text, {}, Need::needed);
    missing.label = label(Word::field_place, Word::specimen_wrong);
    missing.problem = base::trouble(base::Trouble::form_needed);
    out.push_back(std::move(missing));
}

void add_money(std::vector<FieldView>& out) {
    const base::Currency euro;
    for (const char* text : {"", "1'234,50", "1,234"}) {
        const std::string id = "money-" + std::to_string(out.size());
        FieldView field = make_money(id, Word::specimen_amount, text, euro, Need::needed);
        field.problem = problem_of(field);
        field.label = label(Word::specimen_amount,
                            field.text.empty() ? Word::specimen_empty
                            : field.problem    ? Word::specimen_wrong
                                               : Word::specimen_filled);
        out.push_back(std::move(field));
    }
    FieldView open = make_money("money-open", Word::specimen_amount, "99", euro, Need::needed);
    open.label = label(Word::specimen_amount, Word::specimen_open);
    open.open = true;
    open.filter = "us";
    out.push_back(std::move(open));
}

void add_choices(std::vector<FieldView>& out) {
    out.push_back(make_choice("choice-two", Word::field_rule, rule_words(), 1));
    out.push_back(make_choice("choice-few", Word::field_drive, drive_words(), 0));
    out.push_back(make_choice("choice-many", Word::field_anchor, many_words(), 3));
    out.back().label = label(Word::field_anchor, Word::specimen_filled);
    FieldView open = make_choice("choice-open", Word::field_anchor, many_words(), 3);
    open.label = label(Word::field_anchor, Word::specimen_open);
    open.open = true;
    out.push_back(std::move(open));
    for (const char* text : {"", "re", "zz"}) {
        const std::string id = "search-" + std::to_string(out.size());
        FieldView search = make_choice(id, Word::specimen_find, drive_words(), -1);
        search.kind = FieldKind::search;
        search.text = text;
        out.push_back(std::move(search));
    }
}

void add_files(std::vector<FieldView>& out) {
    constexpr std::int64_t size_bytes = 2'340'000;
    out.push_back(
        make_field("file-empty", Word::specimen_file, FieldKind::file, {}, Need::optional));
    FieldView filled =
        make_field("file-filled", Word::specimen_file, FieldKind::file, "plate.jpg", Need::needed);
    filled.size_bytes = size_bytes;
    out.push_back(std::move(filled));
}

}  // namespace

std::vector<FieldView> specimen_fields(base::Date today) {
    std::vector<FieldView> out;
    add_typed(out);
    add_long(out);
    add_money(out);
    add_choices(out);
    add_files(out);
    for (FieldView& field : out) {
        if (field.kind == FieldKind::date) field.quick = quick_days(today);
        understand(field);
    }
    return out;
}

void make_specimen(Form& form, const FormContext& context) {
    form.title = Word::specimen_fields;
    form.intro = Word::specimen_fields_intro;
    form.fields = specimen_fields(context.today);
}

}  // namespace twoclocks::canvas
