#include "wasm/widgets/swatches.hpp"

#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

constexpr float swatch_width = 132;

}  // namespace

void type_swatches(Ui& ui) {
    const std::string letters = ui.say(base::Word::specimen_letters);
    for (std::uint8_t i = 0; i < static_cast<std::uint8_t>(Type::type_count); ++i) {
        const auto type = static_cast<Type>(i);
        // Some are baked with the letters of figures alone.
        const std::string shown =
            size_of(type).figures_only ? letters.substr(0, letters.rfind(' ')) : letters;
        paragraph(ui, type, Tone::ink, shown);
        ui.gap(space::tight);
    }
}

void pair_swatches(Ui& ui) {
    const std::string letters = ui.say(base::Word::specimen_letters);
    float x = ui.left();
    float y = ui.y();
    for (const Pair& pair : text_pairs()) {
        if (x > ui.left() && x + swatch_width > ui.column().right()) {
            x = ui.left();
            y += target::least + space::small;
        }
        const Rect box{x, y, x + swatch_width, y + target::least};
        ui.pen().fill(box, pair.back, shape::field_radius);
        ui.pen().outline(box, Tone::line, shape::field_radius, shape::stroke);
        ui.pen().text_middle(Type::body_strong, pair.front, box, letters);
        x += swatch_width + space::small;
    }
    ui.use({ui.left(), ui.width(), y + target::least});
}

}  // namespace twoclocks::canvas
