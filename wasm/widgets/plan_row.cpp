#include "wasm/widgets/plan_row.hpp"

#include "wasm/widgets/text.hpp"

#include <algorithm>

namespace twoclocks::canvas {
namespace {

constexpr float task_arrow = space::wide;
constexpr float task_bar = 12;
constexpr float tick_over = 4;  // what a tick stands out above and below the bar
constexpr float bar_least = 3;

struct TaskWords {
    std::string name;
    std::string days;
    std::string decides;
};

TaskWords words_of(Ui& ui, const views::PlanTaskRow& row) {
    return {ui.say(row.name), ui.say(row.days), ui.say(row.decides)};
}

float task_height(Ui& ui, const TaskWords& words, float width) {
    float height = height_of(ui, Type::body_strong, words.name, width) +
                   height_of(ui, Type::body, words.days, width);
    if (!words.decides.empty()) height += height_of(ui, Type::small, words.decides, width);
    return height;
}

/// From the day it is expected to begin to the day it is expected to end, then how late it may be.
void bar(Ui& ui, const views::PlanTaskRow& row, const TimeLine& line, const Rect& strip) {
    Pen& pen = ui.pen();
    const auto across = [&](std::int32_t permille) {
        return strip.left + strip.width() * static_cast<float>(permille) / 1000;
    };
    const float middle = strip.top + strip.height() / 2;
    const float left = across(row.from_permille);
    const float right = std::max(across(row.to_permille), left + bar_least);
    pen.line({strip.left, middle}, {strip.right, middle}, Tone::line, shape::stroke);
    const float late = across(row.late_permille);
    if (late > right) pen.dashes({right, middle}, {late, middle}, Tone::soft, shape::outline, {});
    const Rect box{left, middle - task_bar / 2, right, middle + task_bar / 2};
    if (row.done) {
        pen.outline(box, Tone::soft, 0, shape::stroke);
    } else {
        pen.fill(box, row.decides_often ? Tone::ink : Tone::soft);
    }
    const auto tick = [&](std::int32_t permille, Tone tone) {
        if (permille < 0) return;
        const float x = across(permille);
        pen.line({x, strip.top - tick_over}, {x, strip.bottom + tick_over}, tone, shape::outline);
    };
    tick(line.today_permille, Tone::ink);
    tick(line.limit_permille, Tone::calendar_fill);
}

}  // namespace

float plan_row_height(Ui& ui, const views::PlanTaskRow& row, float width) {
    const float inner = width - 2 * space::base - task_arrow;
    return task_height(ui, words_of(ui, row), inner) + space::small + task_bar + 2 * space::middle;
}

bool plan_row(Ui& ui,
              const views::PlanTaskRow& row,
              const TimeLine& line,
              const ListItem& item,
              const Rect& box) {
    const TaskWords words = words_of(ui, row);
    const std::string id = "task-" + row.key;
    list_item_ground(ui, item, id, box);
    const float inner = box.width() - 2 * space::base - task_arrow;
    const float top = box.top + space::middle;
    const float end =
        ui.inside({box.left + space::base, top, box.left + space::base + inner, top}, [&] {
            quiet_paragraph(ui, Type::body_strong, Tone::ink, words.name);
            quiet_paragraph(ui, Type::body, Tone::ink, words.days);
            if (!words.decides.empty()) quiet_paragraph(ui, Type::small, Tone::soft, words.decides);
        });
    bar(ui,
        row,
        line,
        {box.left + space::base,
         end + space::small,
         box.right - space::base,
         end + space::small + task_bar});
    std::string spoken = words.name + ". " + words.days;
    if (!words.decides.empty()) spoken += ". " + words.decides;
    forward_arrow(ui.pen(), {box.right - space::base, top + ui.pen().line(Type::body_strong) / 2});
    return list_item(ui, item, id, spoken, box);
}

}  // namespace twoclocks::canvas
