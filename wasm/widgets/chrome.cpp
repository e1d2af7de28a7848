#include "wasm/widgets/chrome.hpp"

#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr float tab_mark_width = 28;
constexpr float tab_mark_height = 4;
constexpr float rail_tabs_from = 84;

struct TabSpec {
    Tab tab;
    const char* id;
    Word label;
};

constexpr std::array<TabSpec, 4> tabs{{{Tab::fleet, "tab-fleet", Word::tab_fleet},
                                       {Tab::log, "tab-log", Word::tab_log},
                                       {Tab::history, "tab-history", Word::tab_history},
                                       {Tab::files, "tab-files", Word::tab_files}}};

bool tab_pressed(Ui& ui, const TabSpec& tab, const Rect& box, bool current) {
    Node node;
    node.role = Role::tab;
    node.id = tab.id;
    node.name = ui.say(tab.label);
    node.value = current ? "current" : "";
    node.box = box;
    return ui.active(std::move(node));
}

void title_node(Ui& ui, const HeaderSpec& header, const Rect& box) {
    if (header.title.empty()) return;
    Node node;
    node.role = Role::heading;
    node.level = header.level;
    node.name = header.title;
    node.box = box;
    ui.node(std::move(node));
}

void status_text(Ui& ui, const std::string& status, Point top_right) {
    if (status.empty()) return;
    Pen& pen = ui.pen();
    pen.text_right(Type::small, Tone::soft, top_right, status);
    Node node;
    node.role = Role::status;
    node.name = status;
    node.box = {top_right.x - pen.width(Type::small, status),
                top_right.y,
                top_right.x,
                top_right.y + pen.line(Type::small)};
    ui.node(std::move(node));
}

}  // namespace

void back_arrow(Pen& pen, const Rect& box, Tone tone) {
    const Point tip{box.left + box.width() / 2 - 7, box.top + box.height() / 2};
    pen.path({{tip.x + 7, tip.y - 7}, tip, {tip.x + 7, tip.y + 7}}, tone, 2.4F);
    pen.line(tip, {tip.x + 16, tip.y}, tone, 2.4F);
}

bool page_header(Ui& ui, const HeaderSpec& header) {
    Pen& pen = ui.pen();
    const float top = ui.y() + space::small;
    const float line = target::least;
    bool back = false;
    float left = ui.left();
    if (header.can_go_back) {
        const Rect box{left - space::middle, top, left - space::middle + target::least, top + line};
        ui.press_mark("back", box, target::least / 2);
        back_arrow(pen, box, Tone::ink);
        back = ui.active(Role::button, "back", ui.say(Word::go_back), box);
        left = box.right + space::tight;
    }
    const float status_width = pen.width(Type::small, header.status);
    const float room = ui.column().right() - left;
    const Type beside = fitting_type(
        pen, {Type::title, Type::name}, {header.title}, room - status_width - space::base);
    const bool below =
        status_width > 0 && pen.width(beside, header.title) > room - status_width - space::base;
    const float title_room = below ? room : room - status_width;
    const Type type = fitting_type(pen, {Type::title, Type::name}, {header.title}, title_room);
    const std::string shown = pen.shorten(type, header.title, title_room);
    const float y = top + (line - pen.line(type)) / 2;
    pen.text(type, Tone::ink, {left, y}, shown);
    title_node(ui, header, {left, y, left + pen.width(type, shown), y + pen.line(type)});
    const float base_line =
        below ? top + line - space::hair : top + (line - pen.line(Type::small)) / 2 + 3;
    status_text(ui, header.status, {ui.column().right(), base_line});
    ui.use(
        {ui.left(), ui.width(), top + line + (below ? pen.line(Type::small) : 0) + space::tight});
    return back;
}

std::optional<Tab> tab_bar(Ui& ui, const Rect& box, Tab current) {
    Pen& pen = ui.pen();
    pen.fill(box, Tone::card);
    pen.line({box.left, box.top + 0.5F}, {box.right, box.top + 0.5F}, Tone::line, shape::stroke);
    std::optional<Tab> pressed;
    const float each = box.width() / static_cast<float>(tabs.size());
    for (std::uint32_t i = 0; i < tabs.size(); ++i) {
        const TabSpec& tab = tabs[i];
        const bool on = tab.tab == current;
        const float left = box.left + each * static_cast<float>(i) + target::apart / 2;
        const Rect cell{
            left, box.top + 4, left + each - target::apart, box.top + target::tab_bar - 4};
        ui.press_mark(tab.id, cell, shape::field_radius);
        const float middle = cell.left + cell.width() / 2;
        if (on) {
            const Rect mark{middle - tab_mark_width / 2,
                            box.top + 9,
                            middle + tab_mark_width / 2,
                            box.top + 9 + tab_mark_height};
            pen.fill(mark, Tone::ink, 2);
        }
        pen.text_middle(on ? Type::small_strong : Type::small,
                        on ? Tone::ink : Tone::soft,
                        {cell.left, box.top + 18, cell.right, box.top + 52},
                        ui.say(tab.label));
        if (tab_pressed(ui, tab, cell, on)) pressed = tab.tab;
    }
    return pressed;
}

std::optional<Tab> tab_rail(Ui& ui, const Rect& box, Tab current) {
    Pen& pen = ui.pen();
    pen.fill(box, Tone::card);
    pen.line(
        {box.right - 0.5F, box.top}, {box.right - 0.5F, box.bottom}, Tone::line, shape::stroke);
    const bool low = ui.frame().low();
    if (!low) {
        pen.text(Type::name,
                 Tone::ink,
                 {box.left + space::block, box.top + space::wide},
                 ui.say(Word::product_name));
    }
    std::optional<Tab> pressed;
    float y = box.top + ui.frame().safe_top + (low ? space::small : rail_tabs_from);
    for (const TabSpec& tab : tabs) {
        const bool on = tab.tab == current;
        const Rect cell{box.left + space::middle, y, box.right - space::middle, y + target::least};
        if (on) {
            pen.fill({cell.left, y + 12, cell.left + tab_mark_height, y + 36}, Tone::ink, 2);
        }
        ui.press_mark(tab.id, cell, shape::field_radius);
        pen.text(on ? Type::body_strong : Type::body,
                 on ? Tone::ink : Tone::soft,
                 {box.left + space::block, y + (target::least - pen.line(Type::body)) / 2},
                 ui.say(tab.label));
        if (tab_pressed(ui, tab, cell, on)) pressed = tab.tab;
        y += target::least + target::apart;
    }
    return pressed;
}

}  // namespace twoclocks::canvas
