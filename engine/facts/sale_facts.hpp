// What is recorded for a sale: what an item costs each time, and the points of the closing list.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/base/date.hpp"
#include "engine/base/money.hpp"

namespace twoclocks::facts {

/// What an item costs each time it is done, without tax. About the aircraft, then the item. A later
/// one takes the place of the earlier.
struct ItemPrice {
    std::optional<base::Money> price;
    std::string said_by;
};

/// What a point of the closing list is about.
enum class ClosingTopic : std::uint8_t {
    finding,
    lien,
    tax,
    damage,
    cores,
    warranty,
    records,
    airworthiness_review,
    registration,
    insurance,
    other
};

/// Who pays for it.
enum class ClosingPayer : std::uint8_t { open, seller, buyer, shared };

/// One point. About the aircraft. A later one of the same key takes the place of the earlier.
struct ClosingPoint {
    std::string point;  // its key
    ClosingTopic topic{ClosingTopic::finding};
    std::string text;
    bool settled{false};
    std::optional<base::Date> until;  // an expiry, or the day by which it is to be settled
    std::optional<base::Money> cost;
    ClosingPayer payer{ClosingPayer::open};
    std::string paper;  // where it stands
    bool left_out{false};
};

}  // namespace twoclocks::facts
