// Notices and sheets: what lies over a page.
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/chrome.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {
namespace {

using base::Word;

/// Draws a notice's button in inverted colours.
bool notice_button(Ui& ui, const std::string& id, const std::string& label, const Rect& box) {
    Pen& pen = ui.pen();
    pen.outline(box, Tone::paper, shape::field_radius, shape::outline);
    pen.text_middle(Type::body_strong, Tone::paper, box, label);
    return ui.active(Role::button, id, label, box);
}

struct NoticeParts {
    std::string text;
    std::vector<ButtonSpec> buttons;
    float words{0};
    float height{0};
    float beside{0};  // width of the only button when it has room beside the words, else 0
};

float button_width(Ui& ui, const std::string& label) {
    return std::max(target::button_least,
                    ui.pen().width(Type::body_strong, label) + 2 * space::base);
}

/// A notice with one button is low when both share a line: it covers less of the page.
void put_beside(Ui& ui, NoticeParts& parts, float width) {
    if (parts.buttons.size() != 1) return;
    constexpr float most_lines = 2;
    const float button = button_width(ui, parts.buttons[0].label);
    const float room = width - button - 2 * space::base - space::middle;
    const float words = room <= button ? 0 : height_of(ui, Type::body, parts.text, room);
    if (words <= 0 || words > most_lines * ui.pen().line(Type::body)) return;
    parts.beside = button;
    parts.words = words;
    parts.height = std::max(words, target::least) + 2 * space::middle;
}

NoticeParts measure(Ui& ui, const Notice& notice, std::uint32_t index, float width) {
    NoticeParts parts;
    parts.text = ui.say(notice.text);
    if (notice.action) {
        parts.buttons.push_back(
            {"notice-action-" + std::to_string(index), ui.say(notice.action_label)});
    }
    if (notice.urgent) {
        parts.buttons.push_back({"notice-close-" + std::to_string(index), ui.say(Word::dismiss)});
    }
    parts.words = height_of(ui, Type::body, parts.text, width - 2 * space::base);
    parts.height = parts.words + 2 * space::middle;
    if (!parts.buttons.empty()) parts.height += target::least + space::small;
    put_beside(ui, parts, width);
    return parts;
}

/// Returns the index of the button pressed, -1 for none.
std::int32_t draw_notice(Ui& ui, const NoticeParts& parts, const Rect& box, bool urgent) {
    ui.pen().fill(box, Tone::ink, shape::card_radius);
    Node node;
    node.role = urgent ? Role::alert : Role::status;
    node.name = parts.text;
    node.box = box;
    ui.node(std::move(node));
    const float margin = parts.beside > 0 ? parts.beside + space::middle : 0;
    const float top =
        parts.beside > 0 ? box.top + (box.height() - parts.words) / 2 : box.top + space::middle;
    ui.inside({box.left + space::base, top, box.right - space::base - margin, 0},
              [&] { quiet_paragraph(ui, Type::body, Tone::paper, parts.text); });
    std::int32_t pressed = -1;
    float x = box.right - space::base;
    for (std::uint32_t i = 0; i < parts.buttons.size(); ++i) {
        const ButtonSpec& button = parts.buttons[i];
        const float width = button_width(ui, button.label);
        const Rect at{
            x - width, box.bottom - space::middle - target::least, x, box.bottom - space::middle};
        if (notice_button(ui, button.id, button.label, at)) pressed = static_cast<std::int32_t>(i);
        x -= width + target::apart;
    }
    return pressed;
}

}  // namespace

NoticePress notice_stack(Ui& ui, const std::vector<Notice>& notices, const Rect& area) {
    NoticePress press;
    float bottom = area.bottom;
    for (std::uint32_t i = 0; i < notices.size(); ++i) {
        const NoticeParts parts = measure(ui, notices[i], i, area.width());
        const Rect box{area.left, bottom - parts.height, area.right, bottom};
        const std::int32_t pressed = draw_notice(ui, parts, box, notices[i].urgent);
        const bool was_action = pressed == 0 && notices[i].action.has_value();
        if (was_action) press.action = static_cast<std::int32_t>(i);
        if (pressed >= 0 && !was_action) press.dismissed = true;
        bottom = box.top - space::small;
    }
    press.height = area.bottom - bottom;
    return press;
}

namespace {

/// Where a sheet lies: at the right of a wide page, so that what it explains stays in sight; from
/// below on a narrow one, as tall as its words were in the last frame, to most of the page.
Rect sheet_box(const Ui& ui, float words_height) {
    const PageFrame& frame = ui.frame();
    if (frame.wide()) {
        return {frame.whole.right - page::side_sheet,
                frame.whole.top + frame.safe_top,
                frame.whole.right,
                frame.whole.bottom};
    }
    const float width = std::min(frame.whole.width(), page::column_most);
    const float left = frame.whole.left + (frame.whole.width() - width) / 2;
    const float most = frame.whole.height() * page::sheet_most - frame.safe_top;
    const float height = std::clamp(
        words_height + frame.safe_bottom + space::base, std::min(page::sheet_least, most), most);
    return {left, frame.whole.bottom - height, left + width, frame.whole.bottom};
}

void sheet_ground(Pen& pen, const Rect& box, bool side) {
    if (side) {
        pen.fill(box, Tone::paper);
        pen.line({box.left, box.top}, {box.left, box.bottom}, Tone::line, shape::stroke);
        return;
    }
    // Rounded above only: the rest lies below the page.
    const Rect shown{box.left, box.top, box.right, box.bottom + shape::sheet_radius};
    pen.fill(shown, Tone::paper, shape::sheet_radius);
    pen.outline(shown, Tone::line, shape::sheet_radius, shape::stroke);
}

/// Title and Close. Gives where the words begin.
float sheet_head(Ui& ui, const Rect& box, const std::string& title, bool& pressed) {
    Pen& pen = ui.pen();
    const std::string close = ui.say(Word::close);
    const float close_width =
        std::max(target::button_least, pen.width(Type::body_strong, close) + 2 * space::base);
    const float right = box.right - space::base;
    const float close_bottom = ui.inside({right - close_width, box.top + space::middle, right, 0},
                                         [&] { pressed = quiet_button(ui, "sheet-close", close); });
    const float title_bottom = ui.inside(
        {box.left + space::wide, box.top + space::base, right - close_width - space::middle, 0},
        [&] { heading(ui, 2, title); });
    return std::max(close_bottom + space::middle, title_bottom + space::small);
}

}  // namespace

bool sheet(Ui& ui, const std::string& title, base::FunctionRef<void()> draw) {
    const PageFrame& frame = ui.frame();
    ui.pen().fill(frame.whole, Tone::scrim);
    ui.set_layer(1);
    float& known = ui.memory().offsets["sheet-height"];
    const Rect box = sheet_box(ui, known);
    sheet_ground(ui.pen(), box, frame.wide());
    Node node;
    node.role = Role::dialog;
    node.name = title;
    node.box = box;
    ui.scene().open_group(ui.node(std::move(node)));
    bool pressed = false;
    const float from = sheet_head(ui, box, title, pressed);
    const Rect inner{box.left, from, box.right, box.bottom - frame.safe_bottom};
    float words = 0;
    ui.scroll("sheet", inner, [&] {
        const float top = ui.y();
        ui.use({box.left + space::wide, box.width() - 2 * space::wide, top});
        draw();
        ui.gap(space::base);
        words = ui.y() - top;
        ui.use({box.left, box.width(), ui.y()});
    });
    const float wanted = words + from - box.top;
    if (known != wanted) ui.memory().unsettled = true;
    known = wanted;
    ui.scene().close_group();
    ui.set_layer(0);
    return pressed;
}

}  // namespace twoclocks::canvas
