#include "engine/limits/directive_due.hpp"

#include <algorithm>
#include <utility>

#include "engine/facts/interval.hpp"
#include "engine/limits/least_due.hpp"
#include "engine/timeline/directives.hpp"

namespace twoclocks::limits {
namespace {

using base::Date;
using facts::Clock;
using facts::LimitSet;
using timeline::DirectiveStart;
using timeline::DirectiveState;
using timeline::ItemState;
using timeline::MeansState;
using timeline::Works;

template <class T>
[[nodiscard]] std::optional<T> earlier_of(const std::optional<T>& left,
                                          const std::optional<T>& right) {
    if (!left) return right;
    if (!right) return left;
    return std::min(*left, *right);
}

void use_history(const Works& works, ItemState& item) {
    for (std::size_t clock = 0; clock < works.size(); ++clock) {
        item.earlier[clock] = works[clock];
        item.renewed[clock].reset();
        if (works[clock].empty()) continue;
        item.renewed[clock] = works[clock].back();
        item.earlier[clock].pop_back();
    }
}

/// The item as one version has it, without another way to comply.
[[nodiscard]] ItemState version_of(const ItemState& item,
                                   const DirectiveStart& start,
                                   const Works& history) {
    ItemState out = item;
    out.directive.reset();
    out.disputed_works.clear();  // a version for each
    use_history(history, out);
    if (!out.limit) return out;
    LimitSet& limit = *out.limit;
    limit.tolerance.carry_over.reset();
    if (!start.on) return out;
    limit.anchor_on = earlier_of(limit.anchor_on, start.on);
    limit.anchor_total = earlier_of(limit.anchor_total, start.hours);
    return out;
}

/// Puts another way to comply in the place of what is printed.
[[nodiscard]] ItemState by_means(ItemState item, const facts::AlternativeMeans& means) {
    if (!item.limit) return item;
    LimitSet& limit = *item.limit;
    limit.tolerance = {};
    limit.tolerance.hours = means.grace_hours;
    limit.tolerance.days = means.grace_days;
    limit.tolerance.source = means.reference;
    if (is_empty(means.interval)) return item;
    limit.first = initial_of(limit);
    limit.hours = means.interval.hours;
    limit.months = means.interval.months;
    limit.days = means.interval.days;
    limit.landings = means.interval.landings;
    limit.starts = means.interval.starts;
    limit.once = false;
    return item;
}

/// An end on a day, when what is printed counts again and is passed by then.
[[nodiscard]] std::optional<Date> end_of(const MeansState& means, const ItemDue& printed) {
    if (!means.means.until) return std::nullopt;
    if (printed.passed()) return means.means.until;
    const ClockDue* calendar = clock_of(printed, Clock::calendar);
    const bool ends =
        calendar != nullptr && calendar->known && printed.combine == facts::Combine::sooner;
    if (!ends) return std::nullopt;
    return std::max(*means.means.until, calendar->due_on);
}

void cap_on(ItemDue& due, const MeansState& means, Date end, Date today) {
    const ClockDue* calendar = clock_of(due, Clock::calendar);
    const bool is_sooner = calendar == nullptr || !calendar->known || end < calendar->due_on;
    if (due.complied || !is_sooner) return;
    ClockDue cap;
    cap.clock = Clock::calendar;
    cap.counts_from = CountsFrom::anchor;
    cap.known = true;
    cap.anchor_fact = means.fact;
    cap.anchor_on = std::min(means.on, end);
    cap.due_on = end;
    cap.days_left = base::days_between(today, end);
    due.caps.push_back(cap);
}

/// The least that any version leaves, with and without another way to comply as either may be.
class Versions {
  public:
    Versions(const Bearer& bearer, const ItemState& item, Date today)
        : bearer_(bearer), item_(item), today_(today) {}

    [[nodiscard]] ItemDue least() {
        const DirectiveState& directive = *item_.directive;
        for (const DirectiveStart& start : directive.starts) {
            for (const Works& history : directive.histories)
                take(version_of(item_, start, history));
        }
        return std::move(*least_);
    }

    /// By every version all of it was complied with.
    [[nodiscard]] bool complied() const { return complied_; }

  private:
    void take(const ItemState& version) {
        const DirectiveState& directive = *item_.directive;
        complied_ = complied_ && timeline::is_wholly_renewed(version);
        const ItemDue printed = plain_due(bearer_, version, today_);
        if (directive.means.empty() || directive.means_in_doubt) add(printed);
        for (const MeansState& means : directive.means) {
            ItemDue due = plain_due(bearer_, by_means(version, means.means), today_);
            const std::optional<Date> end = end_of(means, printed);
            if (end) cap_on(due, means, *end, today_);
            add(std::move(due));
        }
    }

    void add(ItemDue due) {
        if (!least_) {
            least_ = std::move(due);
        } else {
            least_ = least_due(std::move(*least_), due);
        }
    }

    const Bearer& bearer_;
    const ItemState& item_;
    Date today_;
    std::optional<ItemDue> least_;
    bool complied_{true};
};

[[nodiscard]] DirectiveStanding standing_of(const DirectiveState& directive,
                                            const ItemDue& due,
                                            bool complied) {
    if (!directive.counts && !directive.not_known) return DirectiveStanding::not_here;
    if (directive.superseded_by) return DirectiveStanding::superseded;
    if (directive.ended_by) return DirectiveStanding::ended;
    if (!directive.counts) return DirectiveStanding::unknown;
    if (directive.before_flight && !complied) return DirectiveStanding::before_flight;
    const bool only_once = directive.before_flight && due.limit_fact.empty();
    return due.complied || only_once ? DirectiveStanding::complied : DirectiveStanding::open;
}

/// The day it takes effect, where every version says that this is to come.
[[nodiscard]] std::optional<Date> ahead_of(const DirectiveState& directive, Date today) {
    std::optional<Date> out;
    for (const DirectiveStart& start : directive.starts) {
        if (!start.on || *start.on <= today) return std::nullopt;
        out = earlier_of(out, start.on);
    }
    return out;
}

void hide(std::vector<ClockDue>& clocks) {
    for (ClockDue& clock : clocks)
        clock.known = false;
}

void settle(ItemDue& due) {
    switch (due.directive->standing) {
        case DirectiveStanding::open:
        case DirectiveStanding::before_flight:
            return;
        case DirectiveStanding::unknown:
            hide(due.clocks);
            hide(due.caps);
            due.complied = false;
            return;
        case DirectiveStanding::complied:
        case DirectiveStanding::ended:
        case DirectiveStanding::superseded:
        case DirectiveStanding::not_here:
            due.clocks.clear();
            due.caps.clear();
            due.complied = true;
            return;
    }
}

}  // namespace

ItemDue directive_due(const Bearer& bearer, const ItemState& item, Date today) {
    const DirectiveState& directive = *item.directive;
    Versions versions{bearer, item, today};
    ItemDue due = versions.least();
    if (!item.limit) due.limit_class = facts::LimitClass::directive;
    if (due.source.empty()) {
        due.source = directive.directive.number;
        due.revision = directive.directive.revision;
    }
    DirectiveDue told;
    told.standing = standing_of(directive, due, versions.complied());
    told.ahead = ahead_of(directive, today);
    told.stops_now = told.standing == DirectiveStanding::before_flight && !told.ahead;
    const bool only_limit = directive.told && directive.may_be_none && !item.limit;
    const bool ends =
        told.standing == DirectiveStanding::superseded || told.standing == DirectiveStanding::ended;
    told.unsure = !ends && (only_limit || (directive.counts && directive.not_known));
    if (directive.means.size() == 1 && !directive.means_in_doubt)
        told.means = directive.means.front().fact;
    due.directive = told;
    settle(due);
    return due;
}

}  // namespace twoclocks::limits
