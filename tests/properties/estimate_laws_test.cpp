// What holds of every estimate, over a hundred thousand random ones.
#include "tests/budget/lines.hpp"

#include <algorithm>
#include <array>
#include <random>

using namespace twoclocks;
using namespace twoclocks::budget;
using namespace twoclocks::budget::by_hand;

namespace {

constexpr std::array<const char*, 4> codes_used{"EUR", "USD", "JPY", "KWD"};

class RandomEstimate {
  public:
    explicit RandomEstimate(std::uint64_t seed) : random_(seed) {}

    [[nodiscard]] std::int64_t below(std::int64_t bound) {
        return static_cast<std::int64_t>(random_() % static_cast<std::uint64_t>(bound));
    }

    [[nodiscard]] timeline::CostLineState line(std::int64_t number) {
        facts::CostLine out;
        out.line = std::to_string(number);
        out.group = static_cast<facts::CostGroup>(below(15));
        if (below(10) > 0) {
            const base::Currency code =
                currency(codes_used[static_cast<std::size_t>(below(codes_used.size()))]);
            std::array<std::int64_t, 3> points{
                below(100'000'000), below(100'000'000), below(100'000'000)};
            std::sort(points.begin(), points.end());
            out.price = base::Money{points[1], code};
            if (below(2) > 0) out.low_price = base::Money{points[0], code};
            if (below(2) > 0) out.high_price = base::Money{points[2], code};
        }
        if (below(2) > 0) out.quantity = static_cast<std::int32_t>(below(400'000));
        out.tax = static_cast<facts::TaxCase>(below(5));
        if (below(3) > 0) out.tax_permille = static_cast<std::int32_t>(below(1'001));
        if (below(3) == 0) out.duty_permille = static_cast<std::int32_t>(below(1'001));
        out.taken = static_cast<facts::CostTaken>(below(3));
        if (below(5) == 0) out.one_of = "Engine";
        if (below(8) == 0) out.needs = std::to_string(below(6));
        if (below(8) == 0) out.excludes = std::to_string(below(6));
        return recorded(std::move(out));
    }

    [[nodiscard]] std::vector<timeline::CostLineState> lines() {
        std::vector<timeline::CostLineState> out;
        const std::int64_t count = 1 + below(6);
        for (std::int64_t number = 0; number < count; ++number)
            out.push_back(line(number));
        return out;
    }

    [[nodiscard]] Setting how() {
        Setting out = setting();
        out.terms.kit_rise_permille = static_cast<std::int32_t>(below(200));
        out.terms.linked_permille = static_cast<std::int32_t>(below(1'001));
        out.days = {day("2026-02-01"),
                    day("2026-03-01"),
                    day("2026-09-01"),
                    day("2026-10-01"),
                    day("2027-01-01")};
        out.rates = {rate("USD", "EUR", "0.9183", "2025-12-30"),
                     rate("JPY", "EUR", "0.0061", "2025-12-30")};
        if (below(4) > 0) out.rates.push_back(rate("KWD", "EUR", "2.98765", "2025-12-30"));
        return out;
    }

  private:
    std::mt19937_64 random_;
};

[[nodiscard]] bool in_order(const Points& points) {
    return points.low <= points.likely && points.likely <= points.high;
}

}  // namespace

TEST_CASE("no minor unit is lost or made, and net is gross less what comes back",
          "[properties][estimate]") {
    std::int64_t counted = 0;
    std::int64_t missing = 0;
    for (std::uint64_t seed = 0; seed < 100'000; ++seed) {
        RandomEstimate random{seed};
        const auto lines = random.lines();
        const Estimate out = estimate(lines, {}, random.how(), 0);
        CAPTURE(seed);
        Points gross;
        Points back;
        for (const CostedLine& line : out.lines) {
            if (!line.counts || !line.known) continue;
            ++counted;
            // Of one line in its own currency: the parts are the whole.
            REQUIRE(line.gross().likely == line.risen.likely + line.duty.likely + line.tax.likely);
            REQUIRE(line.risen.likely >= line.price.likely);
            REQUIRE(in_order(line.home_gross));
            REQUIRE(in_order(line.home_back));
            REQUIRE(line.home_back.high <= line.home_gross.high);
            gross = {gross.low + line.home_gross.low,
                     gross.likely + line.home_gross.likely,
                     gross.high + line.home_gross.high};
            back = {back.low + line.home_back.low,
                    back.likely + line.home_back.likely,
                    back.high + line.home_back.high};
        }
        REQUIRE(out.gross == gross);
        REQUIRE(out.back == back);
        REQUIRE(out.net ==
                Points{gross.low - back.low, gross.likely - back.likely, gross.high - back.high});
        missing += out.missing;
        // Every currency that counts is summed in itself.
        std::int64_t own = 0;
        for (const CurrencySum& sum : out.by_currency)
            own += sum.gross.likely;
        std::int64_t all = 0;
        for (const CostedLine& line : out.lines)
            if (line.counts && line.known) all += line.gross().likely;
        REQUIRE(own == all);
    }
    CHECK(counted > 100'000);
    CHECK(missing > 1'000);
}

TEST_CASE("shares are in order and between the sums of all lows and all highs",
          "[properties][estimate]") {
    for (std::uint64_t seed = 0; seed < 2'000; ++seed) {
        RandomEstimate random{seed + 500'000};
        const auto lines = random.lines();
        const Estimate out = estimate(lines, {}, random.how(), 100);
        CAPTURE(seed);
        for (const auto& [shares, sums] :
             {std::pair{out.gross_shares, out.gross}, std::pair{out.net_shares, out.net}}) {
            REQUIRE(std::min(sums.low, sums.likely) <= shares.tenth);
            REQUIRE(shares.tenth <= shares.half);
            REQUIRE(shares.half <= shares.ninth);
            REQUIRE(shares.ninth <= std::max(sums.likely, sums.high));
        }
    }
}
