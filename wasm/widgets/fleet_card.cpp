#include "wasm/widgets/fleet_card.hpp"

#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/life_box.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

constexpr float padding = 14;
constexpr float bar_row = 23;
constexpr float bar_least = 28;  // a shorter bar says nothing: the figure takes the line
constexpr float narrow_card = 300;
constexpr float narrow_box_width = 60;
constexpr float words_only_card = 250;  // with the largest text the picture gives way

/// Where the parts of a card go, worked out once for height and drawing alike.
struct Parts {
    float box_width{small_box_width};
    float words{0};  // width of the right side
    std::string state;
    std::string sentence;
    std::string questions;  // empty: none are open
    std::string hours;
    std::string calendar;
    bool chip_below{false};
    float words_height{0};
};

float questions_height(Ui& ui, const Parts& parts) {
    return parts.questions.empty() ? 0 : ui.pen().line(Type::small) + space::tight;
}

Parts parts_of(Ui& ui, const views::AircraftCard& card, float width) {
    Parts parts;
    Pen& pen = ui.pen();
    parts.box_width = width < narrow_card ? narrow_box_width : small_box_width;
    if (width < words_only_card) parts.box_width = 0;
    const float picture = parts.box_width > 0 ? parts.box_width + padding : 0;
    parts.words = width - 2 * padding - picture;
    parts.state = ui.say(card.state_word);
    parts.sentence = ui.say(card.sentence);
    parts.questions = ui.say(card.questions);
    parts.hours = ui.say(card.hours.left);
    parts.calendar = ui.say(card.calendar.left);
    const float name = pen.width(Type::name, card.registration);
    parts.chip_below = name + space::small + state_chip_width(pen, parts.state) > parts.words;
    parts.words_height = pen.line(Type::name) + (parts.chip_below ? 30.0F : 0) + space::hair +
                         height_of(ui, Type::body, parts.sentence, parts.words) +
                         questions_height(ui, parts) + space::small + 2 * bar_row;
    return parts;
}

std::string spoken(Ui& ui, const views::AircraftCard& card, const Parts& parts) {
    const std::string words = ui.say({base::Word::spoken_card,
                                      {base::text_arg(card.registration),
                                       base::text_arg(parts.state),
                                       base::text_arg(parts.sentence),
                                       base::text_arg(parts.hours),
                                       base::text_arg(parts.calendar)}});
    return parts.questions.empty() ? words : words + ' ' + parts.questions + '.';
}

void bars(Ui& ui, const views::AircraftCard& card, const Parts& parts) {
    Pen& pen = ui.pen();
    const float longest = std::max(pen.width(Type::body_strong, parts.hours),
                                   pen.width(Type::body_strong, parts.calendar)) +
                          2 * space::tight;
    const float most = parts.words - bar_least;
    const float words = std::min(std::max(longest, std::min(104.0F, most - 40)), most);
    clock_bar(pen, ui.take(bar_row), card.hours, {views::Edge::hours, parts.hours, words});
    clock_bar(pen, ui.take(bar_row), card.calendar, {views::Edge::calendar, parts.calendar, words});
}

void words(Ui& ui, const views::AircraftCard& card, const Parts& parts) {
    Pen& pen = ui.pen();
    const Rect row = ui.take(pen.line(Type::name));
    pen.text(Type::name,
             Tone::ink,
             {row.left, row.top},
             pen.shorten(Type::name, card.registration, parts.words));
    if (parts.chip_below) {
        const float width = state_chip_width(pen, parts.state);
        const bool plain = card.state == views::State::nothing_due;
        const float right = ui.left() + width - (plain ? 20.0F : 0);
        state_chip(pen, card.state, parts.state, {right, ui.y() + space::hair});
        ui.gap(30);
    } else {
        state_chip(pen, card.state, parts.state, {row.right, row.top});
    }
    ui.gap(space::hair);
    quiet_paragraph(ui, Type::body, Tone::soft, parts.sentence);
    if (!parts.questions.empty()) {
        const Rect line = ui.take(questions_height(ui, parts));
        question_sign(pen, {line.left, line.top + line.height() / 2});
        const Point at{line.left + sign_room(pen, true),
                       line.top + (line.height() - pen.line(Type::small_strong)) / 2};
        pen.text(Type::small_strong, Tone::ink, at, parts.questions);
    }
    ui.gap(space::small);
    bars(ui, card, parts);
}

}  // namespace

float fleet_card_height(Ui& ui, const views::AircraftCard& card, float width) {
    const Parts parts = parts_of(ui, card, width);
    const float picture = parts.box_width > 0 ? small_box_height : 0;
    return std::max(picture, parts.words_height) + 2 * padding;
}

bool fleet_card(Ui& ui, const views::AircraftCard& card, const ListItem& item, const Rect& box) {
    Pen& pen = ui.pen();
    const Parts parts = parts_of(ui, card, box.width());
    const std::string id = "aircraft-" + base::print_id(card.id);
    list_item_ground(ui, item, id, box);
    const Rect picture{box.left + padding,
                       box.top + padding,
                       box.left + padding + parts.box_width,
                       box.top + padding + small_box_height};
    if (parts.box_width > 0 && ui.in_sight(box)) small_life_box(pen, card.box, picture);
    const float top = box.top + std::max(padding, (box.height() - parts.words_height) / 2);
    ui.inside({box.right - padding - parts.words, top, box.right - padding, 0},
              [&] { words(ui, card, parts); });
    return list_item(ui, item, id, spoken(ui, card, parts), box);
}

}  // namespace twoclocks::canvas
