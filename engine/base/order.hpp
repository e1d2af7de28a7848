// Sorting that keeps what compares alike in its order. One compiled sort, of places, serves lists
// of anything: a sort of its own for each kind of list is kilobytes each.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

namespace twoclocks::base {

/// Whether what stands at one place comes before what stands at another.
struct PlaceOrder {
    const void* of{nullptr};
    bool (*before)(const void* of, std::uint32_t left, std::uint32_t right){nullptr};
};

/// The places 0 to count - 1 in their order; places that compare alike keep theirs.
/// Units: none. Range: count below 2^32. Errors: none. Source: our choice.
[[nodiscard]] std::vector<std::uint32_t> places_in_order(std::uint32_t count, PlaceOrder order);

/// Sorts a list; what compares alike keeps its order.
/// Units: none. Errors: none. Source: our choice.
template <class T, class Before>
void sort_stably(std::vector<T>& list, Before before) {
    struct Sorting {
        const std::vector<T>& list;
        const Before& before;
    };

    const Sorting sorting{list, before};
    const auto compare = [](const void* of, std::uint32_t left, std::uint32_t right) {
        const auto& in = *static_cast<const Sorting*>(of);
        return static_cast<bool>(in.before(in.list[left], in.list[right]));
    };
    std::vector<T> sorted;
    sorted.reserve(list.size());
    for (const std::uint32_t place :
         places_in_order(static_cast<std::uint32_t>(list.size()), {&sorting, compare}))
        sorted.push_back(std::move(list[place]));
    list = std::move(sorted);
}

}  // namespace twoclocks::base
