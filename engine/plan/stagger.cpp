#include "engine/plan/stagger.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>

#include "engine/base/order.hpp"
#include "engine/plan/waits.hpp"

namespace twoclocks::plan {
namespace {

using Days = std::vector<std::int64_t>;
using Places = std::vector<std::size_t>;

constexpr std::int64_t nowhere = -without_bound;
constexpr std::size_t bounds = 2;               // out at once, and in one shop at once
constexpr std::int64_t first_work = 8'000'000;  // looks at an arc or a visit, some 3 ns each
constexpr std::int64_t most_work = 12'000'000;

class Search {
  public:
    Search(const std::vector<Visit>& visits, const Capacity& capacity) : visits_(visits) {
        const auto takes = [&](std::int32_t asked) {
            return asked > 0 ? static_cast<std::size_t>(asked) : visits.size();
        };
        for (const Visit& visit : visits) {
            const std::int32_t shop = visit.shop_takes > 0 ? visit.shop_takes : capacity.shop_takes;
            wishes_.push_back(wish_of(visit));
            takes_.push_back({takes(capacity.out_at_once), takes(shop)});
        }
    }

    /// Finds the best plan it can; true where there is none better.
    [[nodiscard]] bool run() {
        first_plan();
        price_.days += 1;  // of plans that cost the same, the one found here
        std::vector<Waits> open{nobody_waits()};
        while (!open.empty() && work_ < most_work) {
            Waits in = std::move(open.back());
            open.pop_back();
            if (price_ <= in.price()) continue;
            Days at = in.days(work_);
            at.erase(at.begin());
            const Places crowd = crowd_in(at);
            if (!crowd.empty()) {
                part(std::move(in), at, crowd, open);
                continue;
            }
            begins_ = at;
            price_ = in.price();
        }
        price_ = price_of(begins_);
        while (!open.empty() && one_by_one())
            continue;
        first_goes_first();
        return open.empty();
    }

    [[nodiscard]] Placement placement(std::size_t place) const {
        const Visit& visit = visits_[place];
        const std::int64_t begin = begins_[place];
        const std::int64_t due = std::max(visit.limit_on, 0);
        Placement out;
        out.begin_on = static_cast<std::int32_t>(begin);
        out.back_on = out.begin_on + visit.out_days;
        out.early_days = static_cast<std::int32_t>(std::max<std::int64_t>(due - begin, 0));
        out.standing_days = static_cast<std::int32_t>(std::max<std::int64_t>(begin - due, 0));
        out.cost = visit.early_cost * out.early_days + visit.standing_cost * out.standing_days;
        out.reason = reason_of(visit, begin);
        out.because_of = in_the_way(place);
        return out;
    }

  private:
    /// Those that would be too many with it if it began on its own day.
    [[nodiscard]] std::vector<std::int32_t> in_the_way(std::size_t place) const {
        Days at = begins_;
        at[place] = wishes_[place].own;
        Places those;
        for (const std::int64_t day : at) {
            if (day < at[place] || day >= at[place] + wishes_[place].days) continue;
            for (std::size_t bound = 0; bound < bounds; ++bound) {
                const Places out = out_with(bound, place, at, day);
                if (out.size() > takes_[place][bound])
                    those.insert(those.end(), out.begin(), out.end());
            }
        }
        std::vector<std::int32_t> out;
        for (std::size_t other = 0; other < at.size(); ++other)
            if (other != place && std::find(those.begin(), those.end(), other) != those.end())
                out.push_back(static_cast<std::int32_t>(other));
        return out;
    }

    [[nodiscard]] bool is_with(std::size_t bound,
                               std::size_t one,
                               const Days& at,
                               std::int64_t day,
                               std::size_t other) const {
        if (at[other] > day || day >= at[other] + wishes_[other].days) return false;
        const std::string& shop = visits_[one].shop;
        return bound == 0 || other == one || (!shop.empty() && shop == visits_[other].shop);
    }

    /// Who is out on a day, of those that count against a bound with one; itself among them.
    [[nodiscard]] Places out_with(std::size_t bound,
                                  std::size_t one,
                                  const Days& at,
                                  std::int64_t day) const {
        Places out;
        for (std::size_t other = 0; other < at.size(); ++other)
            if (is_with(bound, one, at, day, other)) out.push_back(other);
        return out;
    }

    // ---- a first plan: one by one where it costs least, then two by two again ----

    [[nodiscard]] Price price_of(const Days& at) const {
        Price out;
        for (std::size_t place = 0; place < at.size(); ++place)
            out = out + wishes_[place].price(at[place]);
        return out;
    }

    void put(Days& at, std::size_t one) {
        const Wish& wish = wishes_[one];
        Price least = no_price;
        std::int64_t best = wish.own;
        const auto offer = [&](std::int64_t day) {
            at[one] = day;
            if (day < wish.first || least <= wish.price(day) || !fits(at, one)) return;
            least = wish.price(day);
            best = day;
        };
        offer(wish.own);
        for (std::size_t other = 0; other < at.size(); ++other) {
            if (other == one || at[other] == nowhere) continue;
            offer(at[other] - wish.days);
            offer(at[other] + wishes_[other].days);
        }
        at[one] = best;
    }

    [[nodiscard]] bool fits(const Days& at, std::size_t one) {
        work_ += static_cast<std::int64_t>(at.size());
        return std::none_of(at.begin(), at.end(), [&](std::int64_t day) {
            if (day < at[one] || day >= at[one] + wishes_[one].days) return false;
            work_ += static_cast<std::int64_t>(bounds * at.size());
            std::array<std::size_t, bounds> out{};
            for (std::size_t bound = 0; bound < bounds; ++bound)
                for (std::size_t other = 0; other < at.size(); ++other)
                    if (is_with(bound, one, at, day, other)) ++out[bound];
            return out[0] > takes_[one][0] || out[1] > takes_[one][1];
        });
    }

    void first_plan() {
        begins_.assign(wishes_.size(), nowhere);
        for (std::size_t one = 0; one < wishes_.size(); ++one)
            put(begins_, one);
        price_ = price_of(begins_);
        for (bool more = Price{} < price_; more && work_ < first_work;) {
            more = false;
            for (std::size_t one = 0; one < wishes_.size(); ++one)
                for (std::size_t other = 0; other < wishes_.size() && work_ < first_work; ++other)
                    more |= put_again(one, other);
        }
    }

    /// Better plans by taking two out and putting them in one after the other.
    bool put_again(std::size_t one, std::size_t other) {
        Days at = begins_;
        at[one] = at[other] = nowhere;
        put(at, one);
        if (one != other) put(at, other);
        const Price price = price_of(at);
        if (price_ <= price) return false;
        begins_ = at;
        price_ = price;
        return true;
    }

    /// One may have room nearer its own day now.
    bool one_by_one() {
        bool better = false;
        for (std::size_t one = 0; one < wishes_.size(); ++one)
            better |= put_again(one, one);
        return better;
    }

    void first_goes_first() {
        for (std::size_t one = 0; one < wishes_.size(); ++one)
            for (std::size_t other = one + 1; other < wishes_.size(); ++other)
                if (visits_[one] == visits_[other] && begins_[other] < begins_[one])
                    std::swap(begins_[one], begins_[other]);
    }

    // ---- every plan: whoever is out with too many is before another, or after it ----

    /// Nobody waits but, of two alike in everything, the second for the first.
    [[nodiscard]] Waits nobody_waits() const {
        Waits out{wishes_.size() + 1};
        for (std::size_t place = 0; place < wishes_.size(); ++place) {
            const Wish& wish = wishes_[place];
            out.add(0, place + 1, wish.first, no_price);
            out.add(0, place + 1, wish.own, wish.early);
            out.add(place + 1, 0, -wish.own, wish.late);
            for (std::size_t alike = 0; alike < place; ++alike)
                if (visits_[alike] == visits_[place]) out.add(alike + 1, place + 1, 0, no_price);
        }
        return out;
    }

    /// The cheapest first.
    [[nodiscard]] std::vector<InOrder> pairs_in(const Days& at, const Places& crowd) const {
        std::vector<InOrder> out;
        for (const std::size_t one : crowd)
            for (const std::size_t other : crowd) {
                if (one == other) continue;
                const std::int64_t over = at[one] + wishes_[one].days - at[other];
                out.push_back(
                    {one, other, std::min(wishes_[one].early, wishes_[other].late) * over});
            }
        base::sort_stably(out, [](const InOrder& left, const InOrder& right) {
            return left.price < right.price;
        });
        return out;
    }

    /// Takes out whoever is cheapest to part from another, until so many are left.
    [[nodiscard]] Price thin(const Days& at, Places& crowd, std::size_t left) const {
        while (true) {
            const InOrder least = pairs_in(at, crowd).front();
            if (crowd.size() <= left) return least.price;
            const bool early = wishes_[least.one].early < wishes_[least.other].late;
            crowd.erase(std::find(crowd.begin(), crowd.end(), early ? least.one : least.other));
        }
    }

    /// Visits of which two must be parted: those that cost most to part. None: it is a plan.
    [[nodiscard]] Places crowd_in(const Days& at) {
        work_ += static_cast<std::int64_t>(bounds * at.size() * at.size());
        Places out;
        Price most;
        for (std::size_t place = 0; place < at.size(); ++place)
            for (std::size_t bound = 0; bound < bounds; ++bound) {
                Places crowd = out_with(bound, place, at, at[place]);
                if (crowd.size() <= takes_[place][bound]) continue;
                const Price parted = thin(at, crowd, takes_[place][bound] + 1);
                if (!out.empty() && parted <= most) continue;
                most = parted;
                out = crowd;
            }
        return out;
    }

    /// Every way to part a crowd, none twice, the cheapest last.
    void part(Waits in, const Days& at, const Places& crowd, std::vector<Waits>& open) {
        std::vector<Waits> ways;
        for (const auto& [one, other, price] : pairs_in(at, crowd)) {
            const std::int64_t days = wishes_[one].days;
            Waits way = in;
            if (way.must(one + 1, other + 1, days, price_, work_)) ways.push_back(std::move(way));
            in.add(other + 1, one + 1, 1 - days, no_price);  // in the other ways this one is not
        }
        base::sort_stably(ways, [](const Waits& left, const Waits& right) {
            return right.price() < left.price();
        });
        for (Waits& way : ways)
            open.push_back(std::move(way));
    }

    const std::vector<Visit>& visits_;
    std::vector<Wish> wishes_;
    std::vector<std::array<std::size_t, bounds>> takes_;
    Days begins_;  // of the best plan so far
    Price price_;
    std::int64_t work_{0};
};

}  // namespace

Stagger stagger(const std::vector<Visit>& visits, const Capacity& capacity) {
    Search search{visits, capacity};
    Stagger out;
    out.proven = search.run();
    for (std::size_t place = 0; place < visits.size(); ++place) {
        out.placements.push_back(search.placement(place));
        out.cost += out.placements.back().cost;
        out.alone_cost += visits[place].standing_cost *
                          std::max(visits[place].ready_on - std::max(visits[place].limit_on, 0), 0);
        if (out.placements.back().begin_on > visits[place].limit_on)
            out.unmet.push_back(static_cast<std::int32_t>(place));
    }
    return out;
}

}  // namespace twoclocks::plan
