#include "wasm/app/drafts.hpp"

#include "wasm/app/form_kinds.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/base/region.hpp"

namespace twoclocks::canvas {
namespace {

constexpr std::string_view first_line = "two-clocks-drafts\t1";
constexpr std::size_t most_drafts = 6;

/// In the order of FormKind.
constexpr std::array<std::string_view, 58> kind_names{
    "new_aircraft",  "meter_change", "work_done",     "new_item",   "change_limit",
    "permit",        "rename_item",  "usage_plan",    "parked",     "from_template",
    "correct",       "withdraw",     "author",        "specimen",   "new_part",
    "part_fit",      "part_remove",  "part_move",     "part_scrap", "part_work",
    "part_rebuild",  "event",        "sign_event",    "wear_limit", "measure_wear",
    "storage",       "return",       "adjust",        "flown_as",   "factor",
    "directive",     "decide",       "means",         "plan_task",  "plan_step",
    "plan_terms",    "closed",       "route",         "plan_costs", "plan_kept",
    "fleet_bound",   "cost_line",    "exchange_rate", "price_list", "cost_terms",
    "core",          "core_step",    "pay_term",      "payment",    "balance",
    "reserve_terms", "holder",       "item_price",    "closing",    "readings_table",
    "parts_table",   "share",        "unlock"};

/// Signs that end a field or a line, and how they are written inside one.
constexpr std::array<std::pair<char, char>, 4> escapes{
    {{'\\', '\\'}, {'\n', 'n'}, {'\r', 'r'}, {'\t', 't'}}};

void write_field(std::string& out, std::string_view text) {
    out += '\t';
    for (const char sign : text) {
        const auto* escape = std::find_if(
            escapes.begin(), escapes.end(), [&](const auto& each) { return each.first == sign; });
        if (escape == escapes.end()) {
            out += sign;
        } else {
            out += '\\';
            out += escape->second;
        }
    }
}

[[nodiscard]] std::optional<std::string> plain(std::string_view written) {
    std::string out;
    while (!written.empty()) {
        const char sign = written.front();
        written.remove_prefix(1);
        if (sign != '\\') {
            out += sign;
            continue;
        }
        if (written.empty()) return std::nullopt;
        const auto* escape = std::find_if(escapes.begin(), escapes.end(), [&](const auto& each) {
            return each.second == written.front();
        });
        if (escape == escapes.end()) return std::nullopt;
        out += escape->first;
        written.remove_prefix(1);
    }
    return out;
}

[[nodiscard]] std::string_view took_until(std::string_view& text, char end) {
    const std::size_t size = std::min(text.find(end), text.size());
    const std::string_view taken = text.substr(0, size);
    text.remove_prefix(std::min(size + 1, text.size()));
    return taken;
}

[[nodiscard]] std::vector<std::string_view> cells_of(std::string_view line) {
    std::vector<std::string_view> out;
    while (!line.empty())
        out.push_back(took_until(line, '\t'));
    return out;
}

[[nodiscard]] std::optional<base::Id> read_subject(std::string_view text) {
    if (text == "-") return base::Id{};
    const base::Result<base::Id> id = base::parse_id(text);
    if (!id) return std::nullopt;
    return id.value();
}

/// draft KIND SUBJECT DAY open|closed
[[nodiscard]] std::optional<Draft> read_head(const std::vector<std::string_view>& cells) {
    if (cells.size() != 5) return std::nullopt;
    const std::optional<base::Id> subject = read_subject(cells[2]);
    const base::Result<base::Date> on = base::parse_date(cells[3]);
    const bool known = cells[1] == pad_kind || form_kind(cells[1]).has_value();
    if (!known || !subject || !on) return std::nullopt;
    return Draft{std::string{cells[1]}, *subject, on.value(), cells[4] == "open", {}};
}

/// text|choice ID TEXT; a text that is empty has no third cell.
[[nodiscard]] std::optional<DraftField> read_field(const std::vector<std::string_view>& cells) {
    const bool chosen = cells[0] == "choice";
    if ((!chosen && cells[0] != "text") || cells.size() < 2 || cells.size() > 3)
        return std::nullopt;
    const std::optional<std::string> id = plain(cells[1]);
    const std::optional<std::string> text = plain(cells.size() == 3 ? cells[2] : "");
    if (!id || !text) return std::nullopt;
    return DraftField{*id, *text, chosen};
}

[[nodiscard]] bool is_like(const Draft& draft, std::string_view kind, base::Id subject) {
    return draft.kind == kind && draft.subject == subject;
}

}  // namespace

std::string_view name_of(FormKind kind) {
    return kind_names[static_cast<std::size_t>(kind)];
}

std::optional<FormKind> form_kind(std::string_view name) {
    const auto* found = std::find(kind_names.begin(), kind_names.end(), name);
    if (found == kind_names.end()) return std::nullopt;
    return static_cast<FormKind>(found - kind_names.begin());
}

void Drafts::put(Draft draft) {
    const Draft* like = find(draft.kind, draft.subject);
    // A draft that is only looked at keeps its day.
    if (like != nullptr && like->fields == draft.fields) draft.on = like->on;
    drop(draft.kind, draft.subject);
    drafts_.push_back(std::move(draft));
    if (drafts_.size() > most_drafts) drafts_.erase(drafts_.begin());
}

void Drafts::drop(std::string_view kind, base::Id subject) {
    std::erase_if(drafts_, [&](const Draft& each) { return is_like(each, kind, subject); });
}

void Drafts::drop_kind(std::string_view kind) {
    std::erase_if(drafts_, [&](const Draft& each) { return each.kind == kind; });
}

void Drafts::close_all() {
    for (Draft& draft : drafts_)
        draft.open = false;
}

const Draft* Drafts::find(std::string_view kind, base::Id subject) const {
    const auto found = std::find_if(drafts_.begin(), drafts_.end(), [&](const Draft& each) {
        return is_like(each, kind, subject);
    });
    return found == drafts_.end() ? nullptr : &*found;
}

const Draft* Drafts::open() const {
    const auto found =
        std::find_if(drafts_.begin(), drafts_.end(), [](const Draft& each) { return each.open; });
    return found == drafts_.end() ? nullptr : &*found;
}

std::string Drafts::print() const {
    if (drafts_.empty()) return {};
    std::string out{first_line};
    for (const Draft& draft : drafts_) {
        out += "\ndraft";
        write_field(out, draft.kind);
        write_field(out, draft.subject.empty() ? "-" : base::print_id(draft.subject));
        write_field(out, base::print_date(draft.on));
        write_field(out, draft.open ? "open" : "closed");
        for (const DraftField& field : draft.fields) {
            out += field.chosen ? "\nchoice" : "\ntext";
            write_field(out, field.id);
            write_field(out, field.text);
        }
    }
    return out;
}

Drafts Drafts::read(std::string_view text) {
    Drafts out;
    if (took_until(text, '\n') != first_line) return {};
    while (!text.empty()) {
        const std::vector<std::string_view> cells = cells_of(took_until(text, '\n'));
        if (cells.empty()) return {};
        if (cells[0] == "draft") {
            std::optional<Draft> head = read_head(cells);
            if (!head) return {};
            out.drafts_.push_back(std::move(*head));
            continue;
        }
        const std::optional<DraftField> field = read_field(cells);
        if (!field || out.drafts_.empty()) return {};
        out.drafts_.back().fields.push_back(*field);
    }
    if (out.drafts_.size() > most_drafts) return {};
    return out;
}

Draft draft_of(const Form& form, base::Date today) {
    Draft draft{std::string{name_of(form.kind)}, form.subject, today, true, {}};
    for (const FieldView& field : form.fields) {
        if (field.kind == FieldKind::file) continue;  // its bytes are not here after a reload
        if (field.kind != FieldKind::choice) draft.fields.push_back({field.id, field.text, false});
        if (field.options.empty()) continue;
        const auto chosen = static_cast<std::size_t>(std::max(0, field.chosen));
        if (chosen >= field.options.size()) continue;
        draft.fields.push_back({field.id, base::say(field.options[chosen], {}), true});
    }
    return draft;
}

Draft draft_of(const PadDraft& pad, base::Date today) {
    return {std::string{pad_kind},
            pad.aircraft,
            today,
            true,
            {{"digits", pad.digits, false}, {"date", pad.date_text, false}}};
}

void fill(Form& form, const Draft& draft) {
    for (const DraftField& typed : draft.fields) {
        FieldView* field = find_field(form, typed.id);
        if (field == nullptr || field->kind == FieldKind::file) continue;
        if (!typed.chosen) {
            if (field->kind != FieldKind::choice) field->text = typed.text;
            continue;
        }
        for (std::size_t at = 0; at < field->options.size(); ++at) {
            if (base::say(field->options[at], {}) == typed.text)
                field->chosen = static_cast<std::int32_t>(at);
        }
    }
}

void fill(PadDraft& pad, const Draft& draft) {
    for (const DraftField& typed : draft.fields) {
        if (typed.id == "date") pad.date_text = typed.text;
        if (typed.id != "digits") continue;
        pad.digits.clear();
        for (const char key : typed.text)
            press_key(pad.digits, key, PadSign::decimal);
    }
}

bool is_touched(const Form& form, const Form& fresh) {
    return draft_of(form, {}).fields != draft_of(fresh, {}).fields;
}

}  // namespace twoclocks::canvas
