// Storage of an aircraft: since when, until when, by which document.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/date.hpp"
#include "engine/base/id.hpp"

namespace twoclocks::timeline {

/// Days in storage, `until` not included; no end is not known yet.
struct StorageSpell {
    base::Date from;
    std::optional<base::Date> until;
    base::Id fact;
    std::string source;
    std::string revision;
};

/// Every storage on record.
struct StorageState {
    std::vector<StorageSpell> spells{};       // nobody disputes them; by day, those that touch one
    std::vector<StorageSpell> in_question{};  // every way that records disagree about tell it
};

}  // namespace twoclocks::timeline
