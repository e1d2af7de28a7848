// Makes facts: an id and a stamp for what a person entered, from what the shell passed in.
#pragma once

#include "wasm/app.hpp"

#include <string>
#include <utility>
#include <vector>

#include "engine/facts/journal.hpp"

namespace twoclocks::canvas {

/// Signs bodies. Ids follow from the time and the random bits of the shell, so that tests can
/// repeat them.
class Signer {
  public:
    [[nodiscard]] const std::string& device() const { return device_; }

    void set_device(std::string_view device) { device_ = device; }

    void set_author(std::string_view author) { author_ = author; }

    [[nodiscard]] const std::string& author() const { return author_; }

    void refresh(const Outside& outside);

    /// An id that no fact bears yet.
    [[nodiscard]] base::Id new_id();
    /// A body signed and stamped; `id` names what it adds, where the body itself names it.
    [[nodiscard]] facts::Fact sign(base::Id id, facts::Body body, const facts::Journal& journal);
    /// The next of many that are signed together: nothing came in since the one before.
    [[nodiscard]] facts::Fact sign_next(base::Id id, facts::Body body);

  private:
    Outside outside_;
    std::uint64_t count_{0};
    facts::Stamp last_;
    std::string device_{"device"};
    std::string author_;
};

/// Records that are signed together: what came in before is looked through once.
class SignedTogether {
  public:
    SignedTogether(Signer& signer, const facts::Journal& journal)
        : signer_(signer), journal_(journal) {}

    void add(base::Id id, facts::Body body) {
        facts_.push_back(facts_.empty() ? signer_.sign(id, std::move(body), journal_)
                                        : signer_.sign_next(id, std::move(body)));
    }

    [[nodiscard]] std::vector<facts::Fact> take() { return std::move(facts_); }

  private:
    Signer& signer_;
    const facts::Journal& journal_;
    std::vector<facts::Fact> facts_;
};

}  // namespace twoclocks::canvas
