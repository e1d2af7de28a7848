#include "wasm/widgets/due_card.hpp"

#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using views::DueRow;
using views::Edge;

std::vector<FigureSpec> figures_of(Ui& ui, std::int32_t index, const DueRow& row) {
    std::vector<FigureSpec> figures;
    const std::string start = "why-due-" + std::to_string(index) + "-";
    const bool over =
        row.state == views::State::over || row.state == views::State::before_next_flight;
    const auto add =
        [&](const std::optional<views::Figure>& figure, const char* id, Word label, Edge edge) {
            if (!figure) return;
            figures.push_back({start + id,
                               ui.say(label),
                               said(ui, *figure),
                               tone_of(edge),
                               over && row.binding == edge,
                               row.name});
        };
    add(row.hours_left, "hours", Word::label_hours_left, Edge::hours);
    add(row.calendar_left, "calendar", Word::label_calendar_left, Edge::calendar);
    add(row.count_left, "count", Word::label_count_left, Edge::count);
    add(row.wear, "wear", Word::label_wear, Edge::none);
    figures.push_back({start + "likely",
                       ui.say(Word::label_likely),
                       said(ui, row.likely),
                       Tone::ink,
                       false,
                       row.name});
    return figures;
}

}  // namespace

void name_and_state(Ui& ui, const Named& named) {
    Pen& pen = ui.pen();
    const float chip = state_chip_width(pen, named.state_word);
    const bool below = chip + space::base > ui.width() * 0.6F;
    const float room = ui.width() - (below ? 0 : chip + space::small);
    const float top = ui.y();
    const Rect at{ui.left(), top, ui.left() + room, 0};
    float bottom = ui.inside(at, [&] { quiet_paragraph(ui, named.type, Tone::ink, named.words); });
    Node node;
    node.role = named.level > 0 ? Role::heading : Role::text;
    node.level = named.level;
    node.name = named.words;
    node.box = {ui.left(), top, ui.left() + room, bottom};
    ui.node(std::move(node));
    const float chip_top = below ? bottom + space::hair : top + (pen.line(named.type) - 26) / 2;
    const float right = below ? ui.left() + chip : ui.column().right();
    Node said;
    said.name = named.state_word;
    said.box = state_chip(pen, named.state, named.state_word, {right, chip_top});
    bottom = std::max(bottom, said.box.bottom);
    ui.node(std::move(said));
    ui.use({ui.left(), ui.width(), bottom});
}

std::int32_t figures_in(const DueRow& row) {
    return (row.hours_left ? 1 : 0) + (row.calendar_left ? 1 : 0) + (row.count_left ? 1 : 0) +
           (row.wear ? 1 : 0) + 1;
}

std::optional<FormKind> item_buttons(Ui& ui, std::int32_t index, const DueRow& row, bool all) {
    std::vector<ButtonSpec> buttons;
    std::vector<FormKind> forms;
    const auto offer = [&](const char* id, Word label, FormKind form) {
        buttons.push_back({id + std::to_string(index), ui.say(label), true, row.name});
        forms.push_back(form);
    };
    offer("work-done-", Word::button_work_done, FormKind::work_done);
    if (row.wear) offer("measure-wear-", Word::button_measure_wear, FormKind::measure_wear);
    if (row.wear && all) offer("wear-limit-", Word::button_wear_limit, FormKind::wear_limit);
    offer("change-limit-", Word::button_change_limit, FormKind::change_limit);
    // Nobody asks for leave to fly past what is far away.
    if (row.state >= views::State::due) offer("permit-", Word::button_permit, FormKind::permit);
    if (row.directive && row.directive->can_decide) {
        offer("decide-", Word::button_decide, FormKind::decide);
        if (all) offer("means-", Word::button_means, FormKind::means);
    }
    if (all) offer("rename-", Word::button_rename_item, FormKind::rename_item);
    const std::int32_t pressed = button_row(ui, buttons);
    if (pressed < 0) return std::nullopt;
    return forms[static_cast<std::size_t>(pressed)];
}

void directive_lines(Ui& ui, const DueRow& row) {
    if (!row.directive) return;
    const views::DirectiveView& view = *row.directive;
    const auto line = [&](const base::Message& message, Type type, Tone tone) {
        const std::string words = ui.say(message);
        if (!words.empty()) paragraph(ui, type, tone, words);
    };
    line(view.name, Type::small, Tone::ink);
    line(view.standing, Type::body_strong, Tone::ink);
    line(view.last, Type::small, Tone::soft);
    line(view.method, Type::small, Tone::soft);
    line(view.means, Type::small, Tone::soft);
    for (const base::Message& next : view.next)
        line(next, Type::small, Tone::ink);
}

DuePress due_card(Ui& ui, std::int32_t index, const DueRow& row) {
    DuePress press;
    card(ui, [&] {
        name_and_state(ui, {Type::answer, 3, row.name, row.state, ui.say(row.state_word)});
        paragraph(ui, Type::small, Tone::soft, ui.say(row.source));
        directive_lines(ui, row);
        ui.gap(space::middle);
        press.figure = figure_cells(ui, figures_of(ui, index, row));
        ui.gap(space::middle);
        press.form = item_buttons(ui, index, row, false);
    });
    return press;
}

std::optional<Intent> due_cards(Ui& ui, const std::vector<DueRow>& rows, DuePlace& place) {
    std::optional<Intent> answer;
    for (const DueRow& row : rows) {
        const DuePress press = due_card(ui, place.index, row);
        if (press.figure >= 0) answer = intent::OpenWhy{place.why + press.figure};
        if (press.form) answer = intent::OpenForm{*press.form, row.item};
        place.why += figures_in(row);
        ++place.index;
        ui.gap(space::middle);
    }
    return answer;
}

void state_line(Ui& ui,
                views::State state,
                const std::string& state_word,
                const std::string& words) {
    name_and_state(ui, {Type::body, 0, words, state, state_word});
}

std::int32_t figure_rows(Ui& ui, const std::vector<FigureSpec>& figures) {
    Pen& pen = ui.pen();
    std::int32_t tapped = -1;
    float labels = 0;
    for (const FigureSpec& figure : figures) {
        labels = std::max(
            labels, pen.width(Type::body, figure.label) + sign_room(pen, figure.said.questioned));
    }
    for (std::uint32_t i = 0; i < figures.size(); ++i) {
        const FigureSpec& figure = figures[i];
        const float room = ui.width() - labels - space::base;
        const float words = height_of(ui, Type::body_strong, figure.said.text, room);
        const Rect box = ui.take(std::max(target::least, words + space::middle));
        ui.press_mark(figure.id, box, shape::tight_radius);
        pen.line({box.left, box.top}, {box.right, box.top}, Tone::line, shape::stroke);
        const float y = box.top + (box.height() - words) / 2;
        figure_label(pen, Type::body, {box.left, y}, figure.label, figure.said.questioned);
        ui.inside({box.right - room, y, box.right, 0},
                  [&] { quiet_paragraph(ui, Type::body_strong, figure.tone, figure.said.text); });
        const std::string spoken =
            ui.say({Word::spoken_figure,
                    {base::text_arg(figure.label), base::text_arg(in_words(ui, figure.said))}});
        if (ui.active(Role::link, figure.id, spoken, box)) tapped = static_cast<std::int32_t>(i);
    }
    return tapped;
}

}  // namespace twoclocks::canvas
