// Networks against printed exercises and a general-purpose library.
//
// Sources: P1 and P2 two exercises of university courses on PERT, sums and digits as printed there
// (their sums; which arrows lead where is not printed for P1). Triangular values computed with two
// general-purpose libraries. Random networks against the longest path as Boost.Graph's
// Bellman-Ford finds it on lengths of the other sign.
#include "tests/plan/networks.hpp"

#include "tests/support/pen.hpp"
#include "tests/support/random.hpp"

#include "engine/plan/campaign.hpp"
#include "engine/plan/pert.hpp"

#ifndef __EMSCRIPTEN__
#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"  // inside the library, by its own hand
#endif
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/bellman_ford_shortest_paths.hpp>
#endif

using namespace twoclocks;
using Catch::Matchers::WithinAbs;
using support::at;
using support::day;
using support::network;
using support::task;

TEST_CASE("a printed path of seven tasks", "[plan][outside]") {
    // 1-3-5-7 is critical there, 24 days, variance 5, 0.9633 within 28 days by a table of z.
    const auto net = network({task("1", {5, 8, 17}),
                              task("2", {7, 10, 13}),
                              task("3", {3, 5, 7}, "1"),
                              task("4", {1, 3, 5}, "2"),
                              task("5", {4, 6, 8}, "3"),
                              task("6", {3, 3, 3}, "4"),
                              task("7", {3, 4, 5}, "56")});
    const plan::Pert pert = plan::pert_of(net);
    CHECK_THAT(pert.mean, WithinAbs(24, 1e-9));
    CHECK_THAT(pert.variance, WithinAbs(5, 1e-9));
    CHECK_THAT(plan::pert_chance(pert, 28), WithinAbs(0.9633, 0.0005));
    CHECK_THAT(plan::pert_chance(pert, 28), WithinAbs(0.963181, 1e-6));
    std::string path;
    for (const std::int32_t place : pert.path)
        path += net.tasks[static_cast<std::size_t>(place)].key;
    CHECK(path == "1357");
}

TEST_CASE("a printed network of fourteen tasks", "[plan][outside]") {
    const auto net = network({task("A", {5, 5, 7}),
                              task("B", {1, 2, 5}),
                              task("C", {5, 5, 5}, "A"),
                              task("D", {4, 8, 13}, "A"),
                              task("E", {1, 10, 17}, "BC"),
                              task("F", {1, 5, 7}, "D"),
                              task("G", {2, 6, 9}, "D"),
                              task("H", {4, 4, 6}, "EF"),
                              task("I", {2, 7, 10}, "GH"),
                              task("J", {2, 4, 7}, "I"),
                              task("K", {6, 10, 13}, "I"),
                              task("L", {2, 6, 6}, "J"),
                              task("M", {2, 2, 3}, "K"),
                              task("N", {7, 7, 12}, "LM")});
    const plan::Pert pert = plan::pert_of(net);
    CHECK_THAT(pert.mean, WithinAbs(50.8333, 0.00005));
    CHECK_THAT(pert.variance, WithinAbs(11.19444, 0.000005));
    CHECK_THAT(plan::pert_chance(pert, 55), WithinAbs(0.893496, 1e-6));
    const auto slack = [&](const char* key) { return pert.slack[at(net, key)].total; };
    for (const char* key : {"A", "C", "E", "H", "I", "K", "M", "N"})
        CHECK(pert.slack[at(net, key)].critical);
    CHECK_THAT(slack("B"), WithinAbs(8, 1e-6));
    CHECK_THAT(slack("D"), WithinAbs(1.8333, 0.00005));
    CHECK_THAT(slack("F"), WithinAbs(1.8333, 0.00005));
    CHECK_THAT(slack("G"), WithinAbs(5, 1e-6));
    CHECK_THAT(slack("J"), WithinAbs(2.5, 1e-6));
    CHECK_THAT(slack("L"), WithinAbs(2.5, 1e-6));
}

TEST_CASE("a triangle to the printed digits", "[plan][outside]") {
    CHECK_THAT(plan::triangular(2, 4, 9, 0.1), WithinAbs(3.183216, 5e-7));
    CHECK_THAT(plan::triangular(2, 4, 9, 0.5), WithinAbs(4.816700, 5e-7));
    CHECK_THAT(plan::triangular(2, 4, 9, 0.9), WithinAbs(7.129171, 5e-7));
    // Its mean is 5 and its variance 2.1666667: added up over even steps of chance.
    double sum = 0;
    double squares = 0;
    constexpr int steps = 200'000;
    for (int step = 0; step < steps; ++step) {
        const double value = plan::triangular(2, 4, 9, (step + 0.5) / steps);
        sum += value;
        squares += value * value;
    }
    CHECK_THAT(sum / steps, WithinAbs(5, 1e-5));
    CHECK_THAT(squares / steps - 25, WithinAbs(2.1666667, 1e-4));
    CHECK(plan::triangular(3, 3, 3, 0.7) == 3);
}

#ifndef __EMSCRIPTEN__
namespace {

/// A task waits for some of those before it, in a shuffled order of places.
plan::Tasks any_tasks(support::Random& random) {
    plan::Tasks out;
    const auto count = static_cast<int>(random.between(1, 30));
    for (int number = 0; number < count; ++number) {
        const auto days = static_cast<std::int32_t>(random.between(0, 20));
        plan::Task one = task("t" + std::to_string(number), {days, days, days});
        for (int other = 0; other < number; ++other)
            if (random.between(0, 4) == 0)
                one.after.push_back(
                    {"t" + std::to_string(other), static_cast<std::int32_t>(random.between(0, 3))});
        out.push_back(one);
    }
    for (std::size_t place = out.size(); place > 1; --place)
        std::swap(out[place - 1],
                  out[static_cast<std::size_t>(random.between(0, static_cast<int>(place) - 1))]);
    return out;
}

/// The longest way from the start to the end of each task.
std::vector<double> by_boost(const plan::Tasks& tasks) {
    using Weight = boost::property<boost::edge_weight_t, double>;
    using Graph = boost::
        adjacency_list<boost::vecS, boost::vecS, boost::directedS, boost::no_property, Weight>;
    Graph graph(tasks.size() + 1);
    const std::size_t start = tasks.size();
    for (std::size_t place = 0; place < tasks.size(); ++place) {
        boost::add_edge(start, place, -static_cast<double>(tasks[place].days.likely), graph);
        for (const plan::Link& link : tasks[place].after) {
            for (std::size_t other = 0; other < tasks.size(); ++other) {
                if (tasks[other].key != link.key) continue;
                boost::add_edge(
                    other, place, -static_cast<double>(tasks[place].days.likely + link.lag), graph);
            }
        }
    }
    std::vector<double> distance(tasks.size() + 1, 1e9);
    distance[start] = 0;
    const bool sound = boost::bellman_ford_shortest_paths(
        graph,
        static_cast<int>(tasks.size() + 1),
        boost::weight_map(boost::get(boost::edge_weight, graph)).distance_map(distance.data()));
    REQUIRE(sound);
    return distance;
}

}  // namespace

TEST_CASE("ten thousand networks end when the longest way does", "[plan][outside][slow]") {
    support::Random random{7};
    const plan::WorkDays work{day("2026-11-30"), {}};
    for (int run = 0; run < 10'000; ++run) {
        const plan::Tasks tasks = any_tasks(random);
        const auto made = plan::make_network(tasks);
        REQUIRE(made.ok());
        const plan::Network& net = made.value();
        std::vector<double> days;
        for (const plan::Task& one : net.tasks)
            days.push_back(one.days.likely);
        plan::Times times;
        plan::pass_forward(net, work, days, std::vector<double>(days.size(), 0), times);
        const std::vector<double> longest = by_boost(tasks);
        for (std::size_t place = 0; place < tasks.size(); ++place)
            REQUIRE(times.finish[at(net, tasks[place].key)] == -longest[place]);
        // Backward: from the same end, somebody has no slack, and nobody less than none.
        const auto slack = plan::slack_of(net, work, days);
        bool any = false;
        for (const plan::Slack& one : slack) {
            REQUIRE(one.total >= -1e-9);
            REQUIRE(one.free <= one.total + 1e-9);
            any = any || one.critical;
        }
        REQUIRE(any);
    }
}
#endif
