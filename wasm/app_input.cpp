// What taps, keys, wheels and the mirror do.
#include "wasm/app_inside.hpp"
#include "wasm/shortcuts.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {
namespace {

constexpr float arrow_px = 64;
constexpr float page_share = 0.85F;
constexpr float show_above_px = 120;  // room for the label and field that a problem stands under

}  // namespace

std::string App::Inside::node_at(float x, float y) const {
    const std::int32_t index = scene_.hit(x, y);
    return index < 0 ? std::string{} : scene_.nodes()[static_cast<std::uint32_t>(index)].id;
}

bool App::Inside::sheet_open() const {
    return std::any_of(scene_.nodes().begin(), scene_.nodes().end(), [](const Node& node) {
        return node.role == Role::dialog;
    });
}

void App::Inside::pointer(const PointerEvent& event) {
    if (!started_) return;
    if (drag(event)) {
        host_.wake(1);
        return;
    }
    // Fingers are measured on the page; what they mean, in the pixels of its layout.
    Gesture gesture = gestures_.pointer(event);
    const float scale = text_scale();
    for (float* const length : {&gesture.first_x,
                                &gesture.first_y,
                                &gesture.x,
                                &gesture.y,
                                &gesture.scroll_x,
                                &gesture.scroll_y})
        *length /= scale;
    switch (gesture.kind) {
        case Gesture::Kind::none:
            return;
        case Gesture::Kind::press:
            memory_.pressed = node_at(gesture.x, gesture.y);
            pinched_from_percent_ = 0;
            break;
        case Gesture::Kind::tap:
            tap(gesture, event.kind == PointerKind::mouse);
            break;
        case Gesture::Kind::scroll:
            memory_.pressed.clear();
            scroll_at(gesture.first_x, gesture.first_y, -gesture.scroll_y);
            break;
        case Gesture::Kind::pinch:
            memory_.pressed.clear();
            pinch(gesture.spread);
            break;
        case Gesture::Kind::cancel:
            memory_.pressed.clear();
            break;
    }
    host_.wake(1);
}

/// Two fingers choose the text size, a step at a time.
void App::Inside::pinch(float spread) {
    const double shown = static_cast<double>(text_scale()) * 100;
    if (pinched_from_percent_ == 0) pinched_from_percent_ = static_cast<std::int32_t>(shown);
    const std::int32_t wanted = text_size_near(pinched_from_percent_ * static_cast<double>(spread));
    if (wanted != state_.text_percent()) apply(intent::SetTextSize{wanted});
}

void App::Inside::tap(const Gesture& gesture, bool is_mouse) {
    memory_.pressed.clear();
    memory_.show_focus = false;
    scene_.set_focus({});
    const std::string began = node_at(gesture.first_x, gesture.first_y);
    const std::string id = is_mouse ? node_at(gesture.x, gesture.y) : began;
    if (!id.empty() && id == began) {
        activate_and_lay_out(id);
        return;
    }
    const auto& nodes = scene_.nodes();
    const auto dialog = std::find_if(
        nodes.begin(), nodes.end(), [](const Node& node) { return node.role == Role::dialog; });
    const bool beside = dialog != nodes.end() && !dialog->box.contains(gesture.x, gesture.y);
    if (beside)
        apply(intent::CloseSheet{});
    else
        drop_field();
    lay_out();
}

void App::Inside::activate_and_lay_out(const std::string& id) {
    scene_.activate(id);
    lay_out();
}

void App::Inside::activate(std::string_view id) {
    if (!started_) return;
    const std::string wanted{id};
    show_node(wanted);
    activate_and_lay_out(wanted);
    host_.wake(1);
}

void App::Inside::focus(std::string_view id) {
    if (!started_ || scene_.focus() == id) return;
    scene_.set_focus(id);
    memory_.show_focus = !id.empty();
    show_node(scene_.focus());
    host_.wake(1);
}

void App::Inside::scroll_at(float x, float y, float by) {
    if (by == 0) return;
    const bool sheet = sheet_open();
    for (auto region = memory_.regions.rbegin(); region != memory_.regions.rend(); ++region) {
        if ((region->layer > 0) != sheet || !region->box.contains(x, y)) continue;
        float& offset = memory_.offsets[region->key];
        const float wanted = std::clamp(offset + by, 0.0F, region->most);
        if (wanted != offset + by) gestures_.stop();  // the end of the page stops a glide
        offset = wanted;
        return;
    }
    gestures_.stop();
}

void App::Inside::wheel(float x, float y, float /*delta_x*/, float delta_y) {
    if (!started_) return;
    gestures_.stop();
    const float scale = text_scale();
    scroll_at(x / scale, y / scale, delta_y / scale);
    host_.wake(1);
}

const ScrollRegion* App::Inside::main_region() const {
    return memory_.regions.empty() ? nullptr : &memory_.regions.back();
}

/// The region a box stands in: the last drawn of those it lies across.
const ScrollRegion* App::Inside::region_of(const Rect& box) const {
    const bool sheet = sheet_open();
    for (auto region = memory_.regions.rbegin(); region != memory_.regions.rend(); ++region) {
        const bool across = box.left < region->box.right && box.right > region->box.left;
        if ((region->layer > 0) == sheet && across) return &*region;
    }
    return nullptr;
}

/// Scrolls a box into sight. True when the page moved.
bool App::Inside::show_box(const Rect& box) {
    const ScrollRegion* region = region_of(box);
    if (region == nullptr) return false;
    const bool above = box.top < region->box.top;
    const bool below = box.bottom > region->box.bottom;
    if (above == below) return false;
    float& offset = memory_.offsets[region->key];
    const float before = offset;
    offset += above ? box.top - region->box.top - show_above_px
                    : box.bottom - region->box.bottom + space::base;
    offset = std::clamp(offset, 0.0F, region->most);
    return offset != before;
}

void App::Inside::show_node(const std::string& id) {
    const auto& nodes = scene_.nodes();
    const auto node =
        std::find_if(nodes.begin(), nodes.end(), [&](const Node& each) { return each.id == id; });
    if (node == nodes.end() || node->visible.height() >= node->box.height() - 0.5F) return;
    if (show_box(node->box)) lay_out();
}

void App::Inside::move_focus(int step) {
    memory_.show_focus = true;
    scene_.move_focus(step);
    show_node(scene_.focus());
}

void App::Inside::escape() {
    if (sheet_open()) {
        apply(intent::CloseSheet{});
    } else if (!shown_field_.id.empty()) {
        drop_field();
    } else if (state_.screen().can_go_back) {
        apply(intent::Back{});
    }
    lay_out();
}

void App::Inside::scroll_main(float by) {
    const ScrollRegion* region = main_region();
    if (region == nullptr) return;
    float& offset = memory_.offsets[region->key];
    offset = std::clamp(offset + by, 0.0F, region->most);
}

void App::Inside::key(Key key) {
    if (!started_) return;
    const ScrollRegion* region = main_region();
    const float leaf = region == nullptr ? 0 : region->box.height() * page_share;
    switch (key) {
        case Key::tab:
            move_focus(1);
            break;
        case Key::back_tab:
            move_focus(-1);
            break;
        case Key::enter:
        case Key::space:
            if (!scene_.focus().empty()) activate_and_lay_out(scene_.focus());
            break;
        case Key::escape:
            escape();
            break;
        case Key::up:
            scroll_main(-arrow_px);
            break;
        case Key::down:
            scroll_main(arrow_px);
            break;
        case Key::page_up:
            scroll_main(-leaf);
            break;
        case Key::page_down:
            scroll_main(leaf);
            break;
        case Key::home:
            scroll_main(-1.0e9F);
            break;
        case Key::end:
            scroll_main(1.0e9F);
            break;
        case Key::erase:
            typed('<');
            break;
    }
    host_.wake(1);
}

/// A character typed outside any field. On the number pad it is a key of the pad; elsewhere a
/// shortcut, for those who left these on.
void App::Inside::typed(char sign) {
    if (!started_) return;
    const Screen& screen = state_.screen();
    const auto* log = std::get_if<LogPage>(&screen.page);
    const std::optional<Intent> intent = sheet_open() ? std::optional<Intent>{}
                                         : log != nullptr && log->pad && is_pad_key(sign)
                                             ? Intent{intent::PadKey{sign}}
                                         : screen.single_keys ? shortcut(sign, screen)
                                                              : std::optional<Intent>{};
    if (!intent) return;
    apply(*intent);
    lay_out();
    host_.wake(1);
}

void App::Inside::field_closed(std::string_view id, bool next) {
    if (!started_) return;
    const std::string closed{id};
    if (closed == shown_field_.id) {
        shown_field_ = {};
        memory_.editing.clear();
    }
    const std::string follows = next ? field_after(closed) : std::string{};
    if (!follows.empty()) {
        show_node(follows);
        activate_and_lay_out(follows);
    }
    host_.wake(1);
}

std::string App::Inside::field_after(const std::string& id) const {
    bool passed = false;
    for (const Node& node : scene_.nodes()) {
        if (node.role != Role::field) continue;
        if (passed) return node.id;
        passed = node.id == id;
    }
    return {};
}

}  // namespace twoclocks::canvas
