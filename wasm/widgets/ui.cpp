#include "wasm/widgets/ui.hpp"

#include "imgui.h"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {
namespace {

std::string on_one_line(std::string text) {
    for (char& sign : text) {
        if (static_cast<unsigned char>(sign) < 0x20) sign = ' ';
    }
    return text;
}

}  // namespace

Rect cut(const Rect& box, const Rect& by) {
    Rect made{std::max(box.left, by.left),
              std::max(box.top, by.top),
              std::min(box.right, by.right),
              std::min(box.bottom, by.bottom)};
    if (made.right <= made.left || made.bottom <= made.top) return {};
    return made;
}

Rect grown(const Rect& box, float by) {
    return {box.left - by, box.top - by, box.right + by, box.bottom + by};
}

Ui::Ui(Pen& pen, Scene& scene, const base::Region& region, Memory& memory, PageFrame frame)
    : pen_(&pen), scene_(&scene), region_(&region), memory_(&memory), frame_(frame) {
    column_ = {frame.whole.left, frame.whole.width(), frame.whole.top};
    clips_.push_back(frame.whole);
}

std::string Ui::say(const base::Message& message) const {
    return on_one_line(base::say(message, *region_));
}

std::string Ui::say(base::Word word) const {
    return base::say(word, *region_);
}

Rect Ui::take(float height) {
    const Rect box{column_.left, column_.y, column_.right(), column_.y + height};
    column_.y += height;
    return box;
}

float Ui::inside(const Rect& box, base::FunctionRef<void()> draw) {
    const Column before = column_;
    column_ = {box.left, box.width(), box.top};
    draw();
    const float bottom = column_.y;
    column_ = before;
    return bottom;
}

void Ui::side_by_side(float share,
                      float between,
                      base::FunctionRef<void()> left,
                      base::FunctionRef<void()> right) {
    const Column whole = column_;
    const float first = (whole.width - between) * share;
    const Rect at_left{whole.left, whole.y, whole.left + first, whole.y};
    const Rect at_right{whole.left + first + between, whole.y, whole.right(), whole.y};
    const float left_bottom = inside(at_left, left);
    const float right_bottom = inside(at_right, right);
    column_.y = std::max(left_bottom, right_bottom);
}

std::int32_t Ui::node(Node node) {
    node.visible = cut(node.box, clips_.back());
    node.name = on_one_line(std::move(node.name));
    return scene_->add(std::move(node));
}

bool Ui::active(Role role, std::string id, std::string name, const Rect& box) {
    Node made;
    made.role = role;
    made.id = std::move(id);
    made.name = std::move(name);
    made.box = box;
    return active(std::move(made));
}

bool Ui::active(Node made) {
    const std::string id = made.id;
    const bool enabled = made.enabled;
    const Rect box = made.box;
    node(std::move(made));
    if (memory_->show_focus && scene_->focus() == id) {
        pen_->outline(
            grown(box, shape::focus), Tone::hours_fill, shape::tight_radius, shape::focus);
    }
    return enabled && scene_->take(id);
}

void Ui::press_mark(std::string_view id, const Rect& box, float radius) {
    if (!id.empty() && memory_->pressed == id) pen_->fill(box, Tone::pressed, radius);
}

bool Ui::in_sight(const Rect& box) const {
    const Rect& clip = clips_.back();
    return box.bottom > clip.top && box.top < clip.bottom;
}

void Ui::push_clip(const Rect& box) {
    clips_.push_back(cut(box, clips_.back()));
    pen_->clip(box);
}

void Ui::pop_clip() {
    clips_.pop_back();
    pen_->unclip();
}

void Ui::set_layer(std::int32_t layer) {
    layer_ = layer;
    scene_->set_layer(layer);
}

std::optional<Point> Ui::dragged(const std::string& key, const Rect& box) {
    const Rect visible = cut(box, clip());
    if (visible.right > visible.left && visible.bottom > visible.top)
        memory_->drag_areas.push_back({key, visible});
    Drag& drag = memory_->drag;
    if (drag.key != key || !drag.moved) return std::nullopt;
    drag.moved = false;
    return drag.at;
}

void Ui::scroll(const std::string& key, const Rect& box, base::FunctionRef<void()> draw) {
    const float offset = memory_->offsets[key];
    push_clip(box);
    const Column before = column_;
    column_ = {box.left, box.width(), box.top - offset};
    draw();
    const float height = column_.y - (box.top - offset);
    column_ = before;
    pop_clip();
    const float most = std::max(0.0F, height - box.height());
    if (offset > most) memory_->unsettled = true;
    memory_->regions.push_back({key, box, std::min(offset, most), most, layer_});
    memory_->offsets[key] = std::min(offset, most);
    if (most <= 0 || pen_->look() == Look::sun) return;
    const float thumb = std::max(28.0F, box.height() * box.height() / height);
    const float top = box.top + (box.height() - thumb) * (offset / most);
    pen_->fill({box.right - 5, top, box.right - 2, top + thumb}, Tone::line, 1.5F);
}

void card(Ui& ui, base::FunctionRef<void()> draw) {
    const Column before = ui.column();
    ImDrawList* list = ImGui::GetWindowDrawList();
    ImDrawListSplitter splitter;
    splitter.Split(list, 2);
    splitter.SetCurrentChannel(list, 1);
    const float bottom = ui.inside({before.left + space::base,
                                    before.y + space::base,
                                    before.right() - space::base,
                                    before.y},
                                   draw) +
                         space::base;
    splitter.SetCurrentChannel(list, 0);
    const Rect box{before.left, before.y, before.right(), bottom};
    ui.pen().fill(box, Tone::card, shape::card_radius);
    ui.pen().outline(box, Tone::line, shape::card_radius, shape::stroke);
    splitter.Merge(list);
    ui.use({before.left, before.width, bottom});
}

}  // namespace twoclocks::canvas
