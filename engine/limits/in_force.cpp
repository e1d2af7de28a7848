#include "engine/limits/in_force.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "engine/facts/interval.hpp"
#include "engine/limits/carry.hpp"
#include "engine/timeline/storage.hpp"

namespace twoclocks::limits {
namespace {

using base::Date;
using facts::InForce;
using timeline::ItemState;
using timeline::StorageSpell;

constexpr auto calendar = static_cast<std::size_t>(facts::Clock::calendar);

/// Which ways of counting any version of the limit may leave in force.
struct Ways {
    bool always{false};
    bool in_storage{false};
    bool on_return{false};

    [[nodiscard]] bool several() const { return always + in_storage + on_return > 1; }
};

void add_way(Ways& ways, const facts::LimitSet& limit) {
    switch (limit.in_force.value_or(InForce::always)) {
        case InForce::always:
            ways.always = true;
            return;
        case InForce::in_storage:
            ways.in_storage = true;
            return;
        case InForce::on_return:
            ways.on_return = true;
            return;
    }
}

[[nodiscard]] Ways ways_of(const ItemState& item) {
    Ways out;
    add_way(out, *item.limit);
    for (const facts::LimitSet& limit : item.limit_versions)
        add_way(out, limit);
    return out;
}

/// The item as it is when its calendar starts on a day: only work from then on renewed it.
[[nodiscard]] ItemState started_on(const ItemState& item, Date on) {
    ItemState out = item;
    const auto is_before = [&](const timeline::Renewed& work) { return work.on < on; };
    std::vector<timeline::Renewed>& earlier = out.earlier[calendar];
    earlier.erase(std::remove_if(earlier.begin(), earlier.end(), is_before), earlier.end());
    std::optional<timeline::Renewed>& last = out.renewed[calendar];
    if (last && is_before(*last)) last.reset();
    out.limit->anchor_on = on;
    for (timeline::DisputedWork& work : out.disputed_works)
        work.on = std::max(work.on, on);
    return out;
}

/// The first day on which work counts for a return to service on another.
[[nodiscard]] Date counts_from(const facts::LimitSet& limit, Date back) {
    std::optional<Date> out;
    if (limit.months) out = base::add_months(back, -*limit.months, base::CalendarRule::exact);
    if (limit.days) {
        const Date by_days = base::add_days(back, -*limit.days);
        out = out ? std::max(*out, by_days) : by_days;
    }
    return out.value_or(back);
}

[[nodiscard]] bool is_done(const ItemState& item, const StorageSpell& spell) {
    const std::optional<timeline::Renewed>& last = item.renewed[calendar];
    return last && spell.until && last->on >= counts_from(*item.limit, *spell.until);
}

/// The day by which it is to be done: while it is not back, the day storage began.
[[nodiscard]] Date due_by(const StorageSpell& spell, Date today) {
    const bool is_back = spell.until && *spell.until <= today;
    return is_back ? base::add_days(*spell.until, -1) : spell.from;
}

[[nodiscard]] CountedItem on_return(const Bearer& bearer, const ItemState& item, Date today) {
    CountedItem out;
    const StorageSpell* spell = timeline::last_storage(bearer.storage, today);
    const bool is_over = item.limit->once && item.renewed[calendar];
    out.asleep = spell == nullptr || is_over || is_done(item, *spell);
    if (out.asleep) return out;
    out.fact = spell->fact;
    out.began = spell->from;
    out.due_on = due_by(*spell, today);
    const bool is_back = spell->until && *spell->until <= today;
    out.by_storage = is_back ? ByStorage::back : ByStorage::stored;
    return out;
}

[[nodiscard]] CountedItem in_storage(const Bearer& bearer, const ItemState& item, Date today) {
    CountedItem out;
    const StorageSpell* spell = timeline::storage_on(bearer.storage, today);
    out.asleep = spell == nullptr;
    if (out.asleep) return out;
    out.changed = started_on(item, spell->from);
    out.by_storage = ByStorage::began;
    out.fact = spell->fact;
    out.began = spell->from;
    out.may_be_stored = out.is_stored = true;
    return out;
}

/// Where the calendar of an item starts; nothing when nobody knows.
[[nodiscard]] std::optional<Date> start_of(const Bearer& bearer, const ItemState& item) {
    if (const std::optional<DayFrom> from = day_from(bearer, item)) return from->from;
    const std::optional<Date> anchor = anchor_day(bearer, *item.limit).on;
    return anchor ? std::optional{day_in_dispute(*anchor, item)} : anchor;
}

/// It counts always, from the earliest it could.
[[nodiscard]] CountedItem in_doubt_of(const Bearer& bearer,
                                      const ItemState& item,
                                      const Ways& ways,
                                      Date today) {
    CountedItem out;
    out.by_storage = ByStorage::doubt;
    out.may_be_stored = ways.in_storage;
    ItemState always = item;
    always.disputed = true;
    const std::optional<Date> usual = start_of(bearer, always);
    std::optional<Date> earliest = usual;
    std::vector<StorageSpell> spells = bearer.storage.in_question;
    spells.insert(spells.end(), bearer.storage.spells.begin(), bearer.storage.spells.end());
    for (const StorageSpell& spell : spells) {
        if (spell.from > today) continue;
        const std::optional<Date> start = start_of(bearer, started_on(always, spell.from));
        if (earliest && ways.in_storage) earliest = std::min(*earliest, *start);
        if (!ways.on_return || is_done(item, spell)) continue;
        const Date by = std::min(due_by(spell, today), spell.from);
        out.due_on = out.due_on ? std::min(*out.due_on, by) : by;
    }
    if (earliest && *earliest < *usual) {
        always.renewed[calendar].reset();
        always.earlier[calendar].clear();
        always.limit->anchor_on = earliest;
    }
    out.changed = std::move(always);
    return out;
}

}  // namespace

CountedItem counted_item(const Bearer& bearer, const ItemState& item, Date today) {
    const Ways ways = ways_of(item);
    const bool is_special = ways.in_storage || ways.on_return;
    if (bearer.is_part || !is_special) return {};
    if (ways.several() || !bearer.storage.in_question.empty())
        return in_doubt_of(bearer, item, ways, today);
    return ways.in_storage ? in_storage(bearer, item, today) : on_return(bearer, item, today);
}

}  // namespace twoclocks::limits
