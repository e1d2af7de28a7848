#include "wasm/text_size.hpp"

#include <algorithm>

namespace twoclocks::canvas {

std::int32_t text_size_beside(std::int32_t percent, std::int32_t step) {
    const auto* const here =
        std::find(text_sizes.begin(), text_sizes.end(), text_size_near(percent));
    const auto place = static_cast<std::int32_t>(here - text_sizes.begin()) + step;
    const auto last = static_cast<std::int32_t>(text_sizes.size()) - 1;
    return text_sizes[static_cast<std::uint32_t>(std::clamp(place, 0, last))];
}

std::int32_t text_size_near(double percent) {
    std::int32_t nearest = text_sizes.front();
    for (const std::int32_t size : text_sizes) {
        const double lower = nearest;
        // Between two sizes the geometric middle decides, as a pinch feels it.
        if (percent > 0 && percent * percent >= lower * size) nearest = size;
    }
    return nearest;
}

}  // namespace twoclocks::canvas
