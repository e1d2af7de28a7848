#include "wasm/widgets/list.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {
namespace {

float item_width(const Ui& ui, const ListSpec& spec) {
    const auto across = static_cast<float>(spec.across);
    return (ui.width() - spec.between * (across - 1)) / across;
}

const ListMeasure& measure(Ui& ui, const ListSpec& spec, const ListRows& rows) {
    ListMeasure& kept = ui.memory().lists[spec.key];
    const float width = item_width(ui, spec);
    const auto lines = static_cast<std::uint32_t>((spec.items + spec.across - 1) / spec.across);
    if (kept.revision == ui.revision() && kept.look == ui.pen().look() && kept.width == width &&
        kept.tops.size() == lines + 1U) {
        return kept;
    }
    kept.revision = ui.revision();
    kept.look = ui.pen().look();  // heavier type breaks elsewhere
    kept.width = width;
    kept.tops.assign(1, 0);
    for (std::int32_t first = 0; first < spec.items; first += spec.across) {
        float tallest = 0;
        for (std::int32_t i = first; i < std::min(spec.items, first + spec.across); ++i) {
            tallest = std::max(tallest, rows.height(i, width));
        }
        kept.tops.push_back(kept.tops.back() + tallest + spec.between);
    }
    return kept;
}

}  // namespace

void list_item_ground(Ui& ui, const ListItem& item, std::string_view id, const Rect& box) {
    ui.pen().fill(box, Tone::card, shape::card_radius);
    ui.press_mark(id, box, shape::card_radius);
    ui.pen().outline(box,
                     item.chosen ? Tone::ink : Tone::line,
                     shape::card_radius,
                     item.chosen ? shape::chosen : shape::stroke);
}

bool list_item(Ui& ui, const ListItem& item, std::string id, std::string name, const Rect& box) {
    Node node;
    node.role = Role::list_item;
    node.id = std::move(id);
    node.name = std::move(name);
    node.value = item.chosen ? "current" : "";
    node.box = box;
    node.set_size = item.set_size;
    node.position = item.position;
    return ui.active(std::move(node));
}

void windowed_list(Ui& ui, const ListSpec& spec, const ListRows& rows) {
    if (spec.items <= 0) return;
    const ListMeasure& kept = measure(ui, spec, rows);
    const float top = ui.y();
    const float width = item_width(ui, spec);
    const float height = kept.tops.back() - spec.between;
    Node list;
    list.role = Role::list;
    list.name = spec.name;
    list.box = {ui.left(), top, ui.column().right(), top + height};
    const std::int32_t group = ui.node(std::move(list));
    ui.scene().open_group(group);
    const bool windowed = spec.items > spoken_rows_most;
    const Rect clip = ui.clip();
    const float reach = windowed ? clip.height() : height + clip.height() + 1.0e6F;
    for (std::int32_t i = 0; i < spec.items; ++i) {
        const auto line = static_cast<std::uint32_t>(i / spec.across);
        const float row_top = top + kept.tops[line];
        const float row_bottom = top + kept.tops[line + 1] - spec.between;
        if (row_bottom < clip.top - reach) continue;
        if (row_top > clip.bottom + reach) break;
        const float left = ui.left() + static_cast<float>(i % spec.across) * (width + spec.between);
        const Rect box{left, row_top, left + width, row_bottom};
        ui.pen().mute(!ui.in_sight(box));
        rows.draw({i, windowed ? spec.items : 0, windowed ? i + 1 : 0, i == spec.chosen}, box);
    }
    ui.pen().mute(false);
    ui.scene().close_group();
    ui.advance(height);
}

}  // namespace twoclocks::canvas
