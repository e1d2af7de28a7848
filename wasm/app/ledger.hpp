// What this device holds: its own facts, the imports joined to them, and which imports are set
// aside.
//
// Only facts travel between devices. Segments (what one save stores) and batches (what one import
// brought)
// are local: setting an import aside hides it here and loses nothing.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/facts/journal.hpp"

namespace twoclocks::canvas {

/// One import on this device.
struct Batch {
    std::int32_t number{0};
    std::string file_name;
    std::int64_t wall_ms{0};
    bool aside{false};
    std::vector<facts::Fact> facts;
};

/// Facts of this device and of its imports; `visible` is what everything else works with.
class Ledger {
  public:
    [[nodiscard]] const facts::Journal& visible() const { return visible_; }

    /// Facts written on this device, in the order they were saved.
    [[nodiscard]] const std::vector<facts::Fact>& own() const { return own_; }

    [[nodiscard]] const std::vector<Batch>& batches() const { return batches_; }

    [[nodiscard]] std::int32_t next_batch() const;

    // What a save stores. Each makes the bytes; nothing changes before `take_in` of the same bytes.
    [[nodiscard]] static std::string own_segment(const std::vector<facts::Fact>& facts);
    [[nodiscard]] std::string import_segment(std::string_view file_name,
                                             std::int64_t wall_ms,
                                             const std::vector<facts::Fact>& facts) const;
    [[nodiscard]] static std::string aside_segment(std::int32_t batch, bool aside);

    /// Takes one stored segment in. What does not read is reported and the rest is kept.
    base::Problems take_in(std::string_view segment);

    [[nodiscard]] std::string snapshot() const;
    /// Takes a snapshot in whole; false, and nothing changed, when it does not read cleanly.
    [[nodiscard]] bool take_snapshot(std::string_view bytes);

  private:
    void rebuild();
    void take_aside(std::int32_t number, bool aside);

    std::vector<facts::Fact> own_;
    std::vector<Batch> batches_;
    facts::Journal visible_;
};

}  // namespace twoclocks::canvas
