// Three devices that write about one aircraft, at random: readings, work, limits, meters, plans,
// spells, notes, parts, corrections, withdrawals, answers, one id used twice, and now and then a
// merge.
#pragma once

#include "tests/support/pen.hpp"
#include "tests/support/random.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "engine/facts/journal.hpp"

namespace twoclocks::support {

inline constexpr base::Date random_today{20'454};  // 2026-01-01: after everything that is written

/// What a random journal may hold.
struct Mix {
    std::int32_t steps{12};
    bool strangers{true};     // kinds of a newer version, and names that disagree
    bool answers{true};       // answers to nothing in particular
    bool stray_totals{true};  // readings that are wrong, so that meters fall and jump
    bool parts{true};         // parts that go on and off
    bool hung{false};         // limits that hang on the parts, and work on them
};

class RandomJournal {
  public:
    explicit RandomJournal(std::uint64_t seed, Mix mix = {});

    [[nodiscard]] const std::array<facts::Journal, 3>& devices() const { return devices_; }

    [[nodiscard]] facts::Journal all() const;

    [[nodiscard]] base::Id aircraft() const { return aircraft_; }

    [[nodiscard]] const std::vector<base::Id>& parts() const { return parts_; }

    [[nodiscard]] base::Id meter() const { return meters_.front(); }

  private:
    void write_base();
    void step();
    void write_new(std::size_t device);
    void write_change(std::size_t device);
    [[nodiscard]] static facts::UsagePlanned planned(std::int64_t tenths);
    [[nodiscard]] facts::Fields new_fields(base::Date on);
    [[nodiscard]] facts::Body varied(const facts::Body& body);
    [[nodiscard]] facts::Reading reading(base::Date on, base::Id meter);
    [[nodiscard]] facts::WorkDone work(base::Date on);
    [[nodiscard]] facts::LimitSet random_limit();
    void add_settings(facts::LimitSet& limit);
    [[nodiscard]] base::Date random_day();
    [[nodiscard]] const facts::Fact& any_fact(std::size_t device);
    [[nodiscard]] std::int64_t stray();
    [[nodiscard]] std::vector<facts::Fact> new_parts();
    [[nodiscard]] facts::PartAdded papers(const std::string& serial);
    [[nodiscard]] base::Id any_host(std::size_t part);
    [[nodiscard]] std::optional<base::FlightTime> host_total(base::Id host, base::Date on);
    [[nodiscard]] facts::PartFitted fit(base::Id host, base::Date on);
    [[nodiscard]] facts::PartRemoved removal(base::Id host, base::Date on);
    [[nodiscard]] facts::Fact part_fact(Pen& pen, base::Date on);
    [[nodiscard]] bool vary_part(facts::Body& body);
    [[nodiscard]] std::vector<facts::Fact> new_hung(const facts::Fact& part);
    [[nodiscard]] facts::Fact hung_fact(Pen& pen, base::Date on, std::size_t part);
    [[nodiscard]] facts::WorkDone hung_work(base::Id item, base::Date on);

    Random random_;
    Mix mix_;
    std::vector<Pen> pens_;
    std::array<facts::Journal, 3> devices_;
    base::Id aircraft_;
    std::vector<base::Id> meters_;
    std::vector<std::int64_t> offsets_;  // tenths, one a meter
    std::vector<base::Id> items_;
    std::vector<base::Id> parts_;
    std::vector<base::Id> hung_;  // two a part
};

/// The same facts, added in another order.
[[nodiscard]] facts::Journal shuffled(const facts::Journal& journal, std::uint64_t seed);

}  // namespace twoclocks::support
