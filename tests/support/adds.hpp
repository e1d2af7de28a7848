// Whether two kinds of quantity have a sum at all.
#pragma once

namespace twoclocks::support {

template <class Left, class Right>
constexpr bool adds = requires(Left left, Right right) {
    left + right;
};

}  // namespace twoclocks::support
