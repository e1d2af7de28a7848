#include "wasm/platform/scene.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace twoclocks::canvas {
namespace {

std::string_view name_of(Role role) {
    constexpr std::array<std::string_view, 13> names{"heading",
                                                     "text",
                                                     "button",
                                                     "link",
                                                     "tab",
                                                     "field",
                                                     "list",
                                                     "list_item",
                                                     "choice",
                                                     "status",
                                                     "alert",
                                                     "image",
                                                     "dialog"};
    return names[static_cast<std::uint32_t>(role)];
}

bool can_activate(const Node& node) {
    return node.enabled && !node.id.empty();
}

std::int32_t top_layer(const std::vector<Node>& nodes) {
    std::int32_t top = 0;
    for (const Node& node : nodes)
        top = std::max(top, node.layer);
    return top;
}

void write_escape(std::string& out, unsigned char sign) {
    constexpr std::string_view hex = "0123456789abcdef";
    out += "\\u00";
    out += hex[sign >> 4U];
    out += hex[sign & 15U];
}

void write_text(std::string& out, std::string_view text) {
    out += '"';
    for (const char sign : text) {
        if (sign == '"' || sign == '\\') {
            out += '\\';
            out += sign;
        } else if (static_cast<unsigned char>(sign) < 0x20) {
            write_escape(out, static_cast<unsigned char>(sign));
        } else {
            out += sign;
        }
    }
    out += '"';
}

void write_number(std::string& out, std::string_view key, std::int32_t number) {
    out += ",\"";
    out += key;
    out += "\":";
    out += std::to_string(number);
}

void write_field(std::string& out, std::string_view key, std::string_view text) {
    out += ",\"";
    out += key;
    out += "\":";
    write_text(out, text);
}

std::string pixels(float value) {
    return std::to_string(std::lround(value));
}

void write_box(std::string& out, std::string_view key, const Rect& box, float scale) {
    out += ",\"";
    out += key;
    out += "\":[" + pixels(box.left * scale) + ',' + pixels(box.top * scale) + ',' +
           pixels(box.width() * scale) + ',' + pixels(box.height() * scale) + ']';
}

void write_node(std::string& out, const Node& node, float scale) {
    out += "{\"r\":";
    write_text(out, name_of(node.role));
    if (!node.id.empty()) write_field(out, "id", node.id);
    if (!node.name.empty()) write_field(out, "n", node.name);
    if (!node.value.empty() || node.role == Role::field) write_field(out, "v", node.value);
    write_box(out, "b", node.box, scale);
    if (!node.enabled) write_number(out, "off", 1);
    if (node.level > 0) write_number(out, "l", node.level);
    if (node.layer > 0) write_number(out, "y", node.layer);
    if (node.set_size > 0) write_number(out, "s", node.set_size);
    if (node.position > 0) write_number(out, "p", node.position);
    if (node.parent >= 0) write_number(out, "g", node.parent);
    if (!node.describes.empty()) write_field(out, "d", node.describes);
    if (node.wrong) write_number(out, "w", 1);
    if (node.visible.width() <= 0 || node.visible.height() <= 0)
        write_number(out, "out", 1);
    else if (node.visible.top > node.box.top || node.visible.bottom < node.box.bottom)
        write_box(out, "c", node.visible, scale);
    out += '}';
}

}  // namespace

void Scene::begin() {
    nodes_.clear();
    group_ = -1;
    layer_ = 0;
}

std::int32_t Scene::add(Node node) {
    node.layer = layer_;
    if (node.parent < 0) node.parent = group_;
    nodes_.push_back(std::move(node));
    return static_cast<std::int32_t>(nodes_.size()) - 1;
}

std::int32_t Scene::hit(float x, float y) const {
    const std::int32_t layer = top_layer(nodes_);
    for (std::int32_t i = static_cast<std::int32_t>(nodes_.size()) - 1; i >= 0; --i) {
        const Node& node = nodes_[static_cast<std::uint32_t>(i)];
        if (node.layer == layer && can_activate(node) && node.visible.contains(x, y)) return i;
    }
    return -1;
}

bool Scene::take(std::string_view id) {
    if (id.empty() || pending_ != id) return false;
    pending_.clear();
    return true;
}

void Scene::move_focus(int step) {
    const std::int32_t layer = top_layer(nodes_);
    std::vector<std::string_view> order;
    std::int32_t here = -1;
    for (const Node& node : nodes_) {
        if (node.layer != layer || !can_activate(node)) continue;
        if (node.id == focus_) here = static_cast<std::int32_t>(order.size());
        order.push_back(node.id);
    }
    const auto count = static_cast<std::int32_t>(order.size());
    if (count == 0) {
        focus_.clear();
        return;
    }
    std::int32_t next = step > 0 ? 0 : count - 1;
    if (here >= 0) next = ((here + step) % count + count) % count;
    focus_ = std::string{order[static_cast<std::uint32_t>(next)]};
}

std::string Scene::json(float scale) const {
    std::string out = "[";
    for (const Node& node : nodes_) {
        if (out.size() > 1) out += ',';
        write_node(out, node, scale);
    }
    out += ']';
    return out;
}

}  // namespace twoclocks::canvas
