// Facts for tests: a pen writes on one device, with its own ids and stamps, the same bytes every
// time.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/facts/journal.hpp"

namespace twoclocks::support {

/// The date a test means; the test fails when there is none.
[[nodiscard]] base::Date day(const std::string& text);

/// The id with this number, for tests that only need one that differs from others.
[[nodiscard]] base::Id id_of(std::uint64_t number);

/// A body without unknown fields.
[[nodiscard]] facts::Body body(base::Date on, std::vector<base::Id> about, facts::Fields fields);

/// A reading in tenths of an hour.
[[nodiscard]] facts::Reading reads(std::int64_t tenths);

/// Work that renews every clock of some items at a total in tenths; below zero is not given.
[[nodiscard]] facts::WorkDone renews(std::vector<base::Id> items, std::int64_t total_tenths);

/// A programme limit in hours and months; 0 is none of them.
[[nodiscard]] facts::LimitSet limit(std::int64_t whole_hours, std::int32_t months);

/// A directive that applies, by its number.
[[nodiscard]] facts::Directive directive(const std::string& number);

/// A route of which nothing is said.
[[nodiscard]] facts::Route route(const std::string& key);

/// A line of an estimate, and nothing else said of it.
[[nodiscard]] facts::CostLine cost_line(const std::string& key);
[[nodiscard]] facts::Core core(const std::string& key);
[[nodiscard]] facts::ClosingPoint closing(const std::string& key);

/// Writes facts on one device, a minute apart.
class Pen {
  public:
    explicit Pen(std::string device, std::int64_t wall_ms = 1'700'000'000'000);

    [[nodiscard]] facts::Fact write(base::Date on,
                                    std::vector<base::Id> about,
                                    facts::Fields fields);
    /// A fact that adds something: its own id ends the list of what it is about.
    [[nodiscard]] facts::Fact add(base::Date on, std::vector<base::Id> about, facts::Fields fields);
    [[nodiscard]] facts::Fact correct(const facts::Fact& fact, facts::Body instead);
    /// The same record with other fields.
    [[nodiscard]] facts::Fact correct(const facts::Fact& fact, facts::Fields instead);
    [[nodiscard]] facts::Fact withdraw(const facts::Fact& fact);
    [[nodiscard]] facts::Fact answer(base::Id aircraft,
                                     std::vector<facts::Ref> settles,
                                     std::vector<facts::Ref> keeps);

  private:
    std::string device_;
    std::int64_t wall_ms_;
    std::uint64_t count_{0};
    std::uint64_t salt_{0};
};

/// A journal of these facts.
[[nodiscard]] facts::Journal journal_of(const std::vector<facts::Fact>& facts);

/// The file's text read, every line of it; the test fails when anything was refused.
[[nodiscard]] facts::Journal journal_from(const std::string& text);

/// A file under the root of the repository, byte for byte; the test fails when it is not there.
[[nodiscard]] std::string file_text(const std::string& path);

/// Names of the invented fleets under demo/, in order.
[[nodiscard]] std::vector<std::string> demo_files();

}  // namespace twoclocks::support
