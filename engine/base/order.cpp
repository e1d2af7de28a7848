#include "engine/base/order.hpp"

#include <algorithm>
#include <numeric>

namespace twoclocks::base {

std::vector<std::uint32_t> places_in_order(std::uint32_t count, PlaceOrder order) {
    std::vector<std::uint32_t> out(count);
    std::iota(out.begin(), out.end(), 0U);
    std::stable_sort(out.begin(), out.end(), [&](std::uint32_t left, std::uint32_t right) {
        return order.before(order.of, left, right);
    });
    return out;
}

}  // namespace twoclocks::base
