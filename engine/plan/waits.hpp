// The days that cost least while some visits wait for others: the solver that stagger.cpp asks over
// and over, with one more visit waiting or one less.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

#include "engine/plan/stagger.hpp"

namespace twoclocks::plan {

/// Money first, then days moved: nothing moves for nothing.
struct Price {
    std::int64_t money{0};
    std::int64_t days{0};

    bool operator<(Price other) const {
        return money != other.money ? money < other.money : days < other.days;
    }

    bool operator<=(Price other) const { return !(other < *this); }

    Price operator+(Price more) const { return {money + more.money, days + more.days}; }

    Price operator-(Price less) const { return {money - less.money, days - less.days}; }

    Price operator*(std::int64_t times) const { return {money * times, days * times}; }
};

inline constexpr std::int64_t without_bound = std::numeric_limits<std::int64_t>::max() / 4;
inline constexpr Price no_price{without_bound, without_bound};

/// A visit as the search sees it.
struct Wish {
    std::int64_t first;  // the first day it can begin
    std::int64_t own;    // the day it would begin if nothing were shared
    std::int64_t days;
    Price early;  // of a day before its own, and of one after it
    Price late;

    [[nodiscard]] Price price(std::int64_t begin) const {
        return begin < own ? early * (own - begin) : late * (begin - own);
    }
};

/// Units: days, minor units of money. Errors: none. Source: our choice.
[[nodiscard]] inline Wish wish_of(const Visit& visit) {
    const std::int64_t first = std::max(visit.ready_on, 0);
    return {first,
            std::max<std::int64_t>(first, visit.limit_on),
            visit.out_days,
            {visit.early_cost, 1},
            {visit.standing_cost, 1}};
}

/// Why it begins on a day.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] inline Reason reason_of(const Visit& visit, std::int64_t begin) {
    const std::int64_t own = wish_of(visit).own;
    if (begin < own) return Reason::moved_earlier;
    if (begin > own) return Reason::moved_later;
    if (own == visit.limit_on) return Reason::on_limit;
    return own == 0 ? Reason::limit_past : Reason::not_ready;
}

/// One to be back before another goes in, and what it costs about.
struct InOrder {
    std::size_t one;
    std::size_t other;
    Price price;
};

/// Wishes of the kind "so many days after", each with a price, and the days that break the
/// cheapest of them. Its dual is a circulation, and one more wish sends some more weight round.
class Waits {
  public:
    /// Node 0 is today. Units: nodes. Errors: none. Source: our choice.
    explicit Waits(std::size_t nodes) : nodes_(nodes) {}

    /// `to` is wanted so many days after `from`, or `most` is paid for each day less.
    /// Units: days. Range: nothing that the days as they are break. Errors: none.
    /// Source: our choice.
    void add(std::size_t from, std::size_t to, std::int64_t days, Price most) {
        arcs_.push_back({from, to, days, most, {}});
    }

    /// `to` must be so many days after `from`. False where it cannot, or the price is not below.
    /// Units: days. Errors: none. Source: successive longest ways, common practice.
    [[nodiscard]] bool must(
        std::size_t from, std::size_t to, std::int64_t days, Price below, std::int64_t& work) {
        Price sent;
        while (price_ < below) {
            const Ways ways = ways_from(to, work);
            const std::int64_t gain = ways.days[from] + days;
            if (gain <= 0) break;
            const Price room = room_on(ways, from, to);
            if (no_price < room * 2) return false;  // they wait for each other
            send(ways, from, to, room);
            price_ = price_ + room * gain;
            sent = sent + room;
        }
        arcs_.push_back({from, to, days, no_price, sent});
        return price_ < below;
    }

    /// The earliest of the days that cost no more, by node.
    /// Units: days. Errors: none. Source: complementary slackness.
    [[nodiscard]] std::vector<std::int64_t> days(std::int64_t& work) const {
        return ways_from(0, work).days;
    }

    /// Units: minor units of money, days. Errors: none. Source: our choice.
    [[nodiscard]] Price price() const { return price_; }

  private:
    struct Arc {
        std::size_t from;
        std::size_t to;
        std::int64_t days;
        Price most;
        Price flow;  // its weight in the dual
    };

    /// The longest way from one node to each, over arcs that take more and back over those in use.
    struct Ways {
        std::vector<std::int64_t> days;
        std::vector<std::size_t> by;  // the arc it came over, twice, and one more where backwards
    };

    [[nodiscard]] Ways ways_from(std::size_t start, std::int64_t& work) const {
        Ways out{std::vector<std::int64_t>(nodes_, -without_bound),
                 std::vector<std::size_t>(nodes_, 0)};
        out.days[start] = 0;
        const auto reach =
            [&](std::size_t from, std::size_t to, std::int64_t days, std::size_t by) {
                const std::int64_t far = out.days[from] + days;
                if (out.days[from] == -without_bound || far <= out.days[to]) return false;
                out.days[to] = far;
                out.by[to] = by;
                return true;
            };
        for (bool more = true; more; work += static_cast<std::int64_t>(arcs_.size())) {
            more = false;
            for (std::size_t at = 0; at < arcs_.size(); ++at) {
                const Arc& arc = arcs_[at];
                if (arc.flow < arc.most) more |= reach(arc.from, arc.to, arc.days, 2 * at);
                if (Price{} < arc.flow) more |= reach(arc.to, arc.from, -arc.days, 2 * at + 1);
            }
        }
        return out;
    }

    [[nodiscard]] Price room_on(const Ways& ways, std::size_t from, std::size_t to) const {
        Price room = no_price;
        for (std::size_t node = from; node != to;) {
            const Arc& arc = arcs_[ways.by[node] / 2];
            const bool back = ways.by[node] % 2 == 1;
            room = std::min(room, back ? arc.flow : arc.most - arc.flow);
            node = back ? arc.to : arc.from;
        }
        return room;
    }

    void send(const Ways& ways, std::size_t from, std::size_t to, Price weight) {
        for (std::size_t node = from; node != to;) {
            Arc& arc = arcs_[ways.by[node] / 2];
            const bool back = ways.by[node] % 2 == 1;
            arc.flow = back ? arc.flow - weight : arc.flow + weight;
            node = back ? arc.to : arc.from;
        }
    }

    std::size_t nodes_;
    std::vector<Arc> arcs_;
    Price price_;
};

}  // namespace twoclocks::plan
