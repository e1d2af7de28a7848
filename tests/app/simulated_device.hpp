// A device with a disk that can fail, for a simulator, and beside it a plain model of what it must
// show. The model knows lines of text and nothing of the program.
//
// What can go wrong with a save:
//   refused    nothing is stored, and the program is told why
//   unheard    stored, but the program is told that nobody answered
//   late       answered only after other things have happened, also in another order
//   killed     the program ends before the answer; the disk has the segment
//   torn       the program ends while the disk writes: half a segment, which the store takes away
// and with what lies there:
//   damaged    a segment no longer reads, and the store leaves it out
#pragma once

#include "tests/app/fake_host.hpp"
#include "tests/support/random.hpp"

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace twoclocks::canvas::support {

using Lines = std::set<std::string, std::less<>>;

/// The lines of a text after its first.
[[nodiscard]] inline Lines lines_after_first(std::string_view text) {
    Lines out;
    for (std::size_t start = text.find('\n') + 1; start < text.size();) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        out.emplace(text.substr(start, end - start));
        start = end + 1;
    }
    return out;
}

/// What a device holds, worked out from what its segments say and from nothing else.
class PlainModel {
  public:
    void take(const std::string& segment) {
        const std::string head = segment.substr(0, segment.find('\n'));
        const std::string number = after(head, "\"batch\":");
        if (head.find("\"aside\"") != std::string::npos) {
            // What was set aside may have been damaged since; its number may be used again.
            const auto batch = batches_.find(number);
            if (batch != batches_.end())
                batch->second.second = after(head, "\"aside\":") == "true";
            return;
        }
        Lines& into = number.empty() ? own_ : batches_[number].first;
        into.merge(lines_after_first(segment));
    }

    [[nodiscard]] Lines shown() const {
        Lines out = own_;
        for (const auto& [number, batch] : batches_)
            if (!batch.second) out.insert(batch.first.begin(), batch.first.end());
        return out;
    }

    [[nodiscard]] Lines everything() const {
        Lines out = own_;
        for (const auto& [number, batch] : batches_)
            out.insert(batch.first.begin(), batch.first.end());
        return out;
    }

  private:
    [[nodiscard]] static std::string after(const std::string& head, std::string_view key) {
        const std::size_t at = head.find(key);
        if (at == std::string::npos) return {};
        const std::size_t from = at + key.size();
        return head.substr(from, head.find_first_of(",}", from) - from);
    }

    Lines own_;
    std::map<std::string, std::pair<Lines, bool>> batches_;  // and whether they are set aside
};

enum class SaveFault { none, refused, unheard, late, killed, torn };

class SimulatedDevice {
  public:
    SimulatedDevice(std::string name, std::uint64_t seed)
        : name_(std::move(name)), random_(seed) {
        start();
    }

    [[nodiscard]] AppState& app() { return *app_; }

    [[nodiscard]] const PlainModel& model() const { return model_; }

    [[nodiscard]] std::size_t segments() const { return disk_.size(); }

    /// Everything the program would hand to another device.
    [[nodiscard]] std::string exported() {
        app_->apply(intent::ExportJournal{});
        return host_->file;
    }

    void move_clock(std::int64_t by_ms) {
        wall_ms_ += by_ms;
        refresh();
    }

    /// What was asked to be saved meets its fate. True when the program had to be started again.
    bool settle(SaveFault fault) {
        take_snapshots();
        if (host_->asked.empty()) return false;
        if (fault == SaveFault::late) {
            for (auto& one : std::exchange(host_->asked, {}))
                late_.push_back(std::move(one));
            return false;
        }
        const auto asked = std::exchange(host_->asked, {});
        for (const auto& [token, bytes] : asked) {
            if (fault != SaveFault::refused && fault != SaveFault::torn) write(bytes);
            if (fault == SaveFault::none) acknowledge(token, bytes);
            if (fault == SaveFault::refused) app_->committed(token, false, "full");
            if (fault == SaveFault::unheard) app_->committed(token, false, "no_answer");
        }
        walk_back();
        if (fault != SaveFault::killed && fault != SaveFault::torn) return false;
        start();
        if (fault == SaveFault::torn) app_->storage_note("cut", 1);
        return true;
    }

    /// Answers that were late arrive, the last asked for first.
    void hear_late() {
        while (!late_.empty()) {
            const auto [token, bytes] = std::move(late_.back());
            late_.pop_back();
            write(bytes);
            acknowledge(token, bytes);
        }
        walk_back();
        take_snapshots();
    }

    /// The program ends and is started again. What was not written by then never is.
    void restart() { start(); }

    /// The disk loses a segment for good, and the program is started again without it. What only
    /// that segment held is gone from this device; a snapshot may still have it.
    void damage() {
        if (disk_.empty()) return;
        const auto which = static_cast<std::size_t>(
            random_.between(0, static_cast<std::int64_t>(disk_.size()) - 1));
        disk_[which].reset();
        start();
        app_->storage_note("gap", 1);
    }

    /// The newest snapshot no longer reads: the one before it is used, or none.
    void damage_snapshot() {
        if (!snapshots_.empty()) snapshots_.back().bytes.pop_back();
        start();
    }

    [[nodiscard]] FakeHost& host() { return *host_; }

  private:
    struct Snapshot {
        std::size_t covers{0};
        std::string bytes;
        PlainModel model;
    };

    void refresh() {
        app_->refresh({static_cast<std::int32_t>(wall_ms_ / 86'400'000),
                       wall_ms_,
                       random_.next(),
                       random_.next()});
    }

    void write(const std::string& bytes) { disk_.push_back(bytes); }

    void acknowledge(std::uint32_t token, const std::string& bytes) {
        model_.take(bytes);
        acknowledged_ = disk_.size();
        app_->committed(token, true, "");
        take_snapshots();
    }

    void walk_back() {
        for (int left = std::exchange(host_->backs, 0); left > 0; --left)
            app_->back();
    }

    void take_snapshots() {
        for (std::string& bytes : std::exchange(host_->snapshots, {})) {
            snapshots_.push_back({acknowledged_, std::move(bytes), model_});
            if (snapshots_.size() > 2) snapshots_.erase(snapshots_.begin());
        }
    }

    void start() {
        late_.clear();
        host_ = std::make_unique<FakeHost>();
        app_ = std::make_unique<AppState>(*host_);
        app_->set_setting("caution", "accepted");
        app_->set_device(name_);
        refresh();
        model_ = {};
        std::size_t covered = 0;
        for (auto kept = snapshots_.rbegin(); kept != snapshots_.rend(); ++kept) {
            if (!app_->stored(StoredKind::snapshot, kept->bytes)) continue;
            covered = kept->covers;
            model_ = kept->model;
            break;
        }
        for (std::size_t at = covered; at < disk_.size(); ++at) {
            if (!disk_[at]) continue;
            (void)app_->stored(StoredKind::segment, *disk_[at]);
            model_.take(*disk_[at]);
        }
        acknowledged_ = disk_.size();
        app_->loaded();
    }

    std::string name_;
    twoclocks::support::Random random_;
    std::int64_t wall_ms_{1'795'600'000'000};  // 2026-11-25
    std::vector<std::optional<std::string>> disk_;
    std::vector<Snapshot> snapshots_;
    std::size_t acknowledged_{0};
    std::vector<std::pair<std::uint32_t, std::string>> late_;
    PlainModel model_;
    std::unique_ptr<FakeHost> host_;
    std::unique_ptr<AppState> app_;
};

}  // namespace twoclocks::canvas::support
