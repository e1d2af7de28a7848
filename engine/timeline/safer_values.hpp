// Of two values that people say otherwise, the safer.
#pragma once

#include <algorithm>
#include <optional>

namespace twoclocks::timeline {

/// The smaller of two values that may be missing; a missing limit is no limit, so the other one
/// counts.
/// Units: those of the values. Errors: none. Source: our choice.
template <class T>
[[nodiscard]] std::optional<T> least(const std::optional<T>& left, const std::optional<T>& right) {
    if (!left) return right;
    if (!right) return left;
    return std::min(*left, *right);
}

/// The smaller of two anchors; a missing one is unknown and so counts from the earliest.
/// Units: those of the values. Errors: none. Source: our choice.
template <class T>
[[nodiscard]] std::optional<T> least_anchor(const std::optional<T>& left,
                                            const std::optional<T>& right) {
    if (!left || !right) return std::nullopt;
    return std::min(*left, *right);
}

/// The greater of two values that may be missing.
/// Units: those of the values. Errors: none. Source: our choice.
template <class T>
[[nodiscard]] std::optional<T> greatest(const std::optional<T>& left,
                                        const std::optional<T>& right) {
    if (!left) return right;
    if (!right) return left;
    return std::max(*left, *right);
}

}  // namespace twoclocks::timeline
