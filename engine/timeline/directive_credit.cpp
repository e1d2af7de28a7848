#include "engine/timeline/directive_credit.hpp"

#include <algorithm>

#include "engine/base/order.hpp"
#include "engine/timeline/limit_marks.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using facts::Clock;
using facts::Directive;

/// Work on one clock that may count.
struct Candidate {
    std::size_t clock{0};
    Renewed work;
};

[[nodiscard]] Works works_of(const ItemState& item) {
    Works out = item.earlier;
    for (std::size_t clock = 0; clock < clock_count; ++clock) {
        if (item.renewed[clock]) out[clock].push_back(*item.renewed[clock]);
    }
    return out;
}

void add(Works& works, const Candidate& candidate) {
    std::vector<Renewed>& clock = works[candidate.clock];
    clock.push_back(candidate.work);
    base::sort_stably(clock,
                      [](const Renewed& left, const Renewed& right) { return left.on < right.on; });
}

/// One version of work in dispute. Without its total, and of a part, the hours surely flown by
/// then.
[[nodiscard]] Renewed renewed_by(const Recorded& recorded,
                                 const Record& record,
                                 const facts::Body& body,
                                 const facts::WorkDone& work) {
    Renewed out{body.on, work.total, false, work.landings, work.starts, record.root};
    if (out.total && !recorded.is_part) return out;
    out.total = hours_by(recorded.hours, body.on).value_or(base::FlightTime{0});
    out.total_estimated = true;
    if (recorded.is_part) out.landings = out.starts = std::nullopt;
    return out;
}

/// Every version of work in dispute that renews an item.
[[nodiscard]] std::vector<Candidate> disputed_works(const Recorded& recorded,
                                                    const ItemState& item) {
    std::vector<Candidate> out;
    const auto take = [&](const Record& record, const facts::Body& body) {
        const auto* work = std::get_if<facts::WorkDone>(&body.fields);
        if (work == nullptr || body.on > recorded.today) return;
        for (const facts::Renewal& renewal : work->renews) {
            if (!is_renewed_by(renewal, item, recorded.is_part ? recorded.bearer : base::Id{}))
                continue;
            for (std::size_t clock = 0; clock < clock_count; ++clock) {
                const auto& named = renewal.clocks;
                const bool renews =
                    named.empty() ||
                    std::find(named.begin(), named.end(), static_cast<Clock>(clock)) != named.end();
                if (renews) out.push_back({clock, renewed_by(recorded, record, body, *work)});
            }
        }
    };
    for (const Record& record : recorded.records) {
        if (!record.open) continue;
        for (const Head& head : record.heads) {
            if (head.body != nullptr) take(record, *head.body);
        }
    }
    return out;
}

/// Gathers what the directive of one item is credited with, from version to version.
class Credit {
  public:
    Credit(const Recorded& recorded, const Directives& all, std::size_t place)
        : recorded_(recorded), all_(all), place_(place) {}

    void go() {
        const ItemState& item = all_.items[place_];
        const AllTold<Directive>& told = all_.told[place_];
        in_doubt_ = item.directive->in_ring || (told.may_be_none && !told.versions.empty()) ||
                    told.disputed;
        take_disputed(item, recorded_.today);
        for (const Told<Directive>& version : told.versions)
            follow(version);
        fill(*all_.items[place_].directive, works_of(item));
    }

  private:
    struct Step {
        const Told<Directive>* version;
        Date until;
    };

    /// The last day of work that a version of a directive credits.
    [[nodiscard]] static Date last_credited(const Told<Directive>& version) {
        return version.fields.effective_on.value_or(version.on);
    }

    void take_disputed(const ItemState& item, Date until) {
        for (const Candidate& candidate : disputed_works(recorded_, item)) {
            in_doubt_ = true;
            if (candidate.work.on <= until) candidates_.push_back(candidate);
        }
    }

    /// What one version credits, and what that was credited with.
    void follow(const Told<Directive>& version) {
        std::vector<bool> seen(all_.items.size(), false);
        seen[place_] = true;
        std::vector<Step> left{{&version, last_credited(version)}};
        while (!left.empty()) {
            const Step step = left.back();
            left.pop_back();
            if (!step.version->fields.credit) continue;
            for (const base::Id& id : step.version->fields.replaces) {
                const std::size_t other = place_of(id);
                if (other == seen.size() || seen[other]) continue;
                seen[other] = true;
                take(other, step.until);
                for (const Told<Directive>& next : all_.told[other].versions)
                    left.push_back({&next, std::min(step.until, last_credited(next))});
            }
        }
    }

    [[nodiscard]] std::size_t place_of(base::Id item) const {
        std::size_t out = 0;
        while (out < all_.items.size() && all_.items[out].id != item)
            ++out;
        return out;
    }

    void take(std::size_t other, Date until) {
        const ItemState& item = all_.items[other];
        in_doubt_ = in_doubt_ || item.work_disputed || all_.told[other].disputed;
        take_disputed(item, until);
        const Works works = works_of(item);
        for (std::size_t clock = 0; clock < clock_count; ++clock) {
            for (const Renewed& work : works[clock]) {
                if (work.on > until) continue;
                candidates_.push_back({clock, work});
                credited_ = true;
            }
        }
    }

    void fill(DirectiveState& directive, Works own) const {
        directive.credited = credited_;
        directive.histories.push_back(own);
        for (const Candidate& candidate : candidates_) {
            if (!in_doubt_) {
                add(directive.histories.front(), candidate);
                continue;
            }
            Works one = own;
            add(one, candidate);
            directive.histories.push_back(std::move(one));
        }
    }

    const Recorded& recorded_;
    const Directives& all_;
    std::size_t place_;
    bool in_doubt_{false};
    bool credited_{false};
    std::vector<Candidate> candidates_;
};

}  // namespace

void credit(const Recorded& recorded, const Directives& all, std::size_t place) {
    Credit{recorded, all, place}.go();
}

}  // namespace twoclocks::timeline
