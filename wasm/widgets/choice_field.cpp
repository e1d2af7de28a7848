#include "wasm/widgets/choice_field.hpp"

#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/field_box.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr float mark_size = 24;  // what a drawn mark takes, with air
constexpr float currency_width = 112;
constexpr std::size_t most_segments = 3;

void chevron(Pen& pen, Point middle, bool up) {
    const float tip = up ? -3.0F : 3.0F;
    pen.path({{middle.x - 6, middle.y - tip},
              {middle.x, middle.y + tip},
              {middle.x + 6, middle.y - tip}},
             Tone::ink,
             2);
}

void glass(Pen& pen, Point middle) {
    pen.ring({middle.x - 2, middle.y - 2}, 6, Tone::soft, 2);
    pen.line({middle.x + 3, middle.y + 3}, {middle.x + 8, middle.y + 8}, Tone::soft, 2);
}

void cross(Pen& pen, Point middle) {
    pen.line({middle.x - 6, middle.y - 6}, {middle.x + 6, middle.y + 6}, Tone::ink, 2);
    pen.line({middle.x - 6, middle.y + 6}, {middle.x + 6, middle.y - 6}, Tone::ink, 2);
}

void check_mark(Pen& pen, Point middle) {
    pen.path({{middle.x - 6, middle.y}, {middle.x - 2, middle.y + 5}, {middle.x + 7, middle.y - 5}},
             Tone::ink,
             2.5F);
}

[[nodiscard]] std::string option_id(const FieldView& field, std::int32_t option) {
    return "option-" + field.id + "-" + std::to_string(option);
}

[[nodiscard]] std::string chosen_text(Ui& ui, const FieldView& field) {
    const auto place = static_cast<std::size_t>(std::max(0, field.chosen));
    return place < field.options.size() ? ui.say(field.options[place]) : std::string{};
}

/// Width of one of the segments, 0 when their words do not fit side by side.
[[nodiscard]] float segment_width(Ui& ui, const FieldView& field) {
    const std::size_t count = field.options.size();
    if (count < 2 || count > most_segments) return 0;
    const auto parts = static_cast<float>(count);
    const float width = (ui.width() - target::apart * (parts - 1)) / parts;
    const bool fits =
        std::all_of(field.options.begin(), field.options.end(), [&](const base::Message& each) {
            const float words = ui.pen().width(Type::body_strong, ui.say(each));
            return words + mark_size + 2 * space::middle <= width;
        });
    return fits ? width : 0;
}

bool segment(Ui& ui, const ChoiceSpec& choice, const Rect& box) {
    Pen& pen = ui.pen();
    pen.fill(box, Tone::card, shape::field_radius);
    ui.press_mark(choice.id, box, shape::field_radius);
    const Type type = choice.chosen ? Type::body_strong : Type::body;
    pen.outline(box,
                choice.chosen ? Tone::ink : Tone::line,
                shape::field_radius,
                choice.chosen ? shape::chosen : shape::stroke);
    const float mark = choice.chosen ? mark_size : 0;
    const float left = box.left + (box.width() - mark - pen.width(type, choice.label)) / 2;
    if (choice.chosen) check_mark(pen, {left + 8, box.top + box.height() / 2});
    pen.text(type,
             Tone::ink,
             {left + mark, box.top + (box.height() - pen.line(type)) / 2},
             choice.label);
    Node node;
    node.role = Role::choice;
    node.id = choice.id;
    node.name = spoken(ui, choice);
    node.value = choice.chosen ? "on" : "";
    node.box = box;
    return ui.active(std::move(node));
}

[[nodiscard]] ChoiceSpec spec_of(Ui& ui, const FieldView& field, std::int32_t option) {
    return {option_id(field, option),
            ui.say(field.options[static_cast<std::size_t>(option)]),
            option == field.chosen,
            field.alike ? ui.say(field.label) : std::string{}};
}

[[nodiscard]] std::optional<Intent> few(Ui& ui, const FieldView& field) {
    const auto count = static_cast<std::int32_t>(field.options.size());
    const float width = segment_width(ui, field);
    std::int32_t pressed = -1;
    if (width > 0) {
        const Rect row = ui.take(target::least);
        for (std::int32_t at = 0; at < count; ++at) {
            const float left = row.left + static_cast<float>(at) * (width + target::apart);
            const Rect box{left, row.top, left + width, row.bottom};
            if (segment(ui, spec_of(ui, field, at), box)) pressed = at;
        }
    } else {
        std::vector<ChoiceSpec> rows;
        for (std::int32_t at = 0; at < count; ++at)
            rows.push_back(spec_of(ui, field, at));
        pressed = choice_list(ui, rows);
    }
    if (pressed < 0) return std::nullopt;
    return intent::ChooseOption{field.id, pressed};
}

/// What the search leaves of the options, or that it leaves nothing.
[[nodiscard]] std::optional<Intent> matches_of(Ui& ui, const FieldView& field) {
    const auto all = static_cast<std::int64_t>(field.options.size());
    const auto left = static_cast<std::int64_t>(field.shown.size());
    const base::Message found =
        left == 0
            ? base::Message{Word::search_none, {}}
            : base::Message{Word::search_found, {base::whole_arg(left), base::whole_arg(all)}};
    ui.gap(space::small);
    const float top = ui.y();
    quiet_paragraph(ui, Type::body, Tone::soft, ui.say(found));
    Node status;
    status.role = Role::status;
    status.name = ui.say(found);
    status.box = {ui.left(), top, ui.column().right(), ui.y()};
    ui.node(std::move(status));
    ui.gap(space::small);
    std::vector<ChoiceSpec> rows;
    for (const std::int32_t option : field.shown)
        rows.push_back(spec_of(ui, field, option));
    const std::int32_t pressed = choice_list(ui, rows);
    if (pressed < 0) return std::nullopt;
    return intent::ChooseOption{field.id, field.shown[static_cast<std::size_t>(pressed)]};
}

/// The search over the options of an open list, as a field of its own.
[[nodiscard]] FieldView search_of(Ui& ui, const FieldView& field) {
    FieldView search;
    search.id = "find-" + field.id;
    search.label = {Word::search_in, {base::text_arg(ui.say(field.label))}};
    search.kind = FieldKind::search;
    search.text = field.filter;
    return search;
}

/// A box that shows what is chosen and opens the list. True when tapped.
bool opener(Ui& ui, const FieldView& field, const Rect& box, const std::string& name) {
    const std::string id = "choose-" + field.id;
    field_frame(ui, id, box, field.problem.has_value() && field.kind == FieldKind::choice);
    const std::string text = chosen_text(ui, field);
    Rect inner = inner_of(box);
    inner.right -= mark_size;
    line_in_box(ui, Type::body_strong, Tone::ink, inner, text);
    chevron(ui.pen(), {box.right - space::middle - 6, box.top + box.height() / 2}, field.open);
    return ui.active(Role::button, id, name + ": " + text, box);
}

}  // namespace

SearchPress search_box(Ui& ui, const FieldView& field) {
    SearchPress press;
    const Rect row = ui.take(field_height);
    const float button = field.text.empty() ? 0 : field_height + target::apart;
    const Rect box{row.left, row.top, row.right - button, row.bottom};
    field_frame(ui, field.id, box, false);
    Rect inner = inner_of(box);
    glass(ui.pen(), {inner.left + 8, box.top + box.height() / 2});
    inner.left += mark_size;
    if (ui.memory().editing != field.id) {
        const bool empty = field.text.empty();
        const Type type = empty ? Type::body : Type::body_strong;
        const std::string text =
            empty ? ui.pen().shorten(type, ui.say(field.label), inner.width()) : field.text;
        line_in_box(ui, type, empty ? Tone::soft : Tone::ink, inner, text);
    }
    press.edit = field_node(ui, field, box, field.text);
    if (field.text.empty()) return press;
    const Rect clear{row.right - field_height, row.top, row.right, row.bottom};
    const std::string id = "clear-" + field.id;
    field_frame(ui, id, clear, false);
    cross(ui.pen(), {clear.left + clear.width() / 2, clear.top + clear.height() / 2});
    press.clear = ui.active(Role::button, id, ui.say(Word::search_clear), clear);
    return press;
}

std::optional<Intent> choice_field(Ui& ui, const FieldView& field) {
    if (static_cast<std::int32_t>(field.options.size()) <= few_options) return few(ui, field);
    const Rect box = ui.take(field_height);
    if (!opener(ui, field, box, label_of(ui, field))) return std::nullopt;
    return intent::ToggleChoice{field.id};
}

std::optional<Intent> search_field(Ui& ui, const FieldView& field) {
    const SearchPress press = search_box(ui, field);
    const std::optional<Intent> chosen = matches_of(ui, field);
    if (press.edit) return intent::EditField{field.id};
    if (press.clear) return intent::FillField{field.id, {}};
    return chosen;
}

std::optional<Intent> money_field(Ui& ui, const FieldView& field) {
    const Rect row = ui.take(field_height);
    const Rect box{row.left, row.top, row.right - currency_width - target::apart, row.bottom};
    const Rect currency{row.right - currency_width, row.top, row.right, row.bottom};
    field_frame(ui, field.id, box, field.problem.has_value());
    if (ui.memory().editing != field.id)
        line_in_box(ui, Type::body_strong, Tone::ink, inner_of(box), field.text);
    const bool edit = field_node(ui, field, box, field.text);
    const std::string name = ui.say({Word::field_currency, {base::text_arg(ui.say(field.label))}});
    const bool toggled = opener(ui, field, currency, name);
    if (toggled) return intent::ToggleChoice{field.id};
    if (edit) return intent::EditField{field.id};
    return std::nullopt;
}

std::optional<Intent> open_list(Ui& ui, const FieldView& field) {
    if (!field.open) return std::nullopt;
    ui.gap(target::apart);
    const FieldView search = search_of(ui, field);
    const SearchPress press = search_box(ui, search);
    const std::optional<Intent> chosen = matches_of(ui, field);
    if (press.edit) return intent::EditField{search.id};
    if (press.clear) return intent::FillField{search.id, {}};
    return chosen;
}

}  // namespace twoclocks::canvas
