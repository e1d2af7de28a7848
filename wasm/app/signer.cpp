#include "wasm/app/signer.hpp"

namespace twoclocks::canvas {
namespace {

/// Spreads a counter over 64 bits, so that ids made from one set of random bits differ everywhere.
[[nodiscard]] std::uint64_t spread(std::uint64_t value) {
    value += 0x9E3779B97F4A7C15U;
    value = (value ^ (value >> 30U)) * 0xBF58476D1CE4E5B9U;
    value = (value ^ (value >> 27U)) * 0x94D049BB133111EBU;
    return value ^ (value >> 31U);
}

}  // namespace

void Signer::refresh(const Outside& outside) {
    outside_ = outside;
}

base::Id Signer::new_id() {
    ++count_;
    return base::make_id(
        outside_.wall_ms, outside_.random_a ^ spread(count_), outside_.random_b ^ spread(~count_));
}

facts::Fact Signer::sign(base::Id id, facts::Body body, const facts::Journal& journal) {
    const facts::Stamp seen = facts::latest_stamp(journal, outside_.wall_ms);
    last_ = facts::next_stamp(earlier(last_, seen) ? seen : last_, outside_.wall_ms, device_);
    return {id, last_, author_, std::move(body)};
}

facts::Fact Signer::sign_next(base::Id id, facts::Body body) {
    last_ = facts::next_stamp(last_, outside_.wall_ms, device_);
    return {id, last_, author_, std::move(body)};
}

}  // namespace twoclocks::canvas
