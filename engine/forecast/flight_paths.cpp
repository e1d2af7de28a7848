#include "engine/forecast/flight_paths.hpp"

#include <algorithm>
#include <random>

#include "engine/base/real.hpp"
#include "engine/forecast/uniform.hpp"

namespace twoclocks::forecast {
namespace {

constexpr std::size_t months_in_a_row = 3;
constexpr std::size_t rows = months_ahead / months_in_a_row;

/// What chance gives one way.
struct Draws {
    double level{0};                         // normal
    std::array<std::uint8_t, rows> steps{};  // which of the steps
    std::array<double, rows> shares{};       // even, from 0 to 1
};

/// The middle of one of so many parts of the normal distribution that are alike in chance.
[[nodiscard]] double normal_part(std::size_t part, std::size_t parts) {
    const double chance = (static_cast<double>(part) + 0.5) / static_cast<double>(parts);
    return base::normal_quantile(chance);
}

[[nodiscard]] std::vector<double> normal_parts(std::size_t parts) {
    std::vector<double> out;
    for (std::size_t part = 0; part < parts; ++part)
        out.push_back(normal_part(part, parts));
    return out;
}

/// Levels that stand for all: one from each part of their distribution. Every second way is the
/// other way round.
[[nodiscard]] std::vector<Draws> draw_all(std::size_t step_count) {
    constexpr std::uint64_t seed = 21'991'231;
    std::mt19937_64 random{seed};
    std::vector<Draws> out(path_count);
    constexpr std::size_t pairs = path_count / 2;
    for (std::size_t pair = 0; pair < pairs; ++pair) {
        Draws& one = out[2 * pair];
        Draws& other = out[2 * pair + 1];
        one.level = normal_part(pairs + pair, path_count);
        other.level = -one.level;
        for (std::size_t row = 0; row < rows; ++row) {
            const auto step =
                static_cast<std::size_t>(uniform(random) * static_cast<double>(step_count));
            one.steps[row] = static_cast<std::uint8_t>(step);
            other.steps[row] = static_cast<std::uint8_t>(step_count - 1 - step);
            one.shares[row] = uniform(random);
            other.shares[row] = uniform(random);
        }
    }
    return out;
}

}  // namespace

FlightPaths::FlightPaths(const FlyingModel& model) : model_(model) {
    static const std::vector<double> normals = normal_parts(steps);
    const double row_spread = model.year_spread / 2;  // of a quarter of a year: by its root
    for (std::size_t step = 0; step < steps; ++step)
        step_factors_[step] = base::exp_fixed(row_spread * normals[step]);
}

Factors FlightPaths::follow(std::int32_t path) const {
    // Nothing in them is about an aircraft: drawn once.
    static const std::vector<Draws> all_draws = draw_all(steps);
    const Draws& draws = all_draws[static_cast<std::size_t>(path)];
    const std::vector<double>& ratios = model_.ratios;
    const auto count = static_cast<double>(ratios.size());
    double level = base::exp_fixed(model_.level_spread * draws.level);
    Factors out{};
    for (std::size_t row = 0; row < rows; ++row) {
        level *= step_factors_[draws.steps[row]];
        auto from = static_cast<std::size_t>(draws.shares[row] * count);
        for (std::size_t place = row * months_in_a_row; place < (row + 1) * months_in_a_row;
             ++place) {
            out[place] = ratios.empty() ? level : level * ratios[from];
            if (++from >= ratios.size()) from = 0;
        }
    }
    return out;
}

std::vector<double> flown_on_paths(const FlyingModel& model,
                                   const std::vector<Run>& runs,
                                   std::int32_t day) {
    Factors expected{};
    for (const Run& run : runs) {
        const std::int32_t days = std::min(run.days, day - (run.to_day - run.days));
        if (days <= 0) break;
        if (!run.out) expected[static_cast<std::size_t>(run.month)] += run.day_seconds * days;
    }
    const FlightPaths paths{model};
    std::vector<double> out;
    out.reserve(path_count);
    for (std::int32_t path = 0; path < path_count; ++path) {
        const Factors factors = paths.follow(path);
        double flown = 0;
        for (std::size_t month = 0; month < factors.size(); ++month)
            flown += expected[month] * factors[month];
        out.push_back(flown);
    }
    return out;
}

double tenth_of(std::vector<double> values, std::size_t tenths) {
    if (values.empty()) return 0;
    const auto place =
        values.begin() + static_cast<std::ptrdiff_t>((values.size() - 1) * tenths / 10);
    std::nth_element(values.begin(), place, values.end());
    return *place;
}

}  // namespace twoclocks::forecast
