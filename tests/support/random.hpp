// Random numbers that are the same on every build: splitmix64, and whole-number draws from it.
#pragma once

#include <cstdint>

namespace twoclocks::support {

/// Source: Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators".
class Random {
  public:
    explicit Random(std::uint64_t seed) : state_(seed) {}

    [[nodiscard]] std::uint64_t next() {
        state_ += 0x9E3779B97F4A7C15U;
        std::uint64_t mixed = state_;
        mixed = (mixed ^ mixed >> 30U) * 0xBF58476D1CE4E5B9U;
        mixed = (mixed ^ mixed >> 27U) * 0x94D049BB133111EBU;
        return mixed ^ mixed >> 31U;
    }

    /// From `least` to `most`, both possible.
    [[nodiscard]] std::int64_t between(std::int64_t least, std::int64_t most) {
        const auto width = static_cast<std::uint64_t>(most - least) + 1;
        return least + static_cast<std::int64_t>(next() % width);
    }

    /// True once in so many draws.
    [[nodiscard]] bool once_in(std::int64_t draws) { return between(1, draws) == 1; }

  private:
    std::uint64_t state_;
};

}  // namespace twoclocks::support
