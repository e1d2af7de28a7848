#include "engine/timeline/part_items.hpp"

#include <algorithm>

#include "engine/timeline/directives.hpp"
#include "engine/timeline/items.hpp"
#include "engine/timeline/limit_marks.hpp"
#include "engine/timeline/wear.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;
using base::Id;

/// Kinds that say what a part has flown.
[[nodiscard]] bool tells_hours(const facts::Fields& fields) {
    return std::holds_alternative<facts::PartAdded>(fields) ||
           std::holds_alternative<facts::PartFitted>(fields) ||
           std::holds_alternative<facts::PartRemoved>(fields) ||
           std::holds_alternative<facts::PartRebuilt>(fields) ||
           std::holds_alternative<facts::PartScrapped>(fields);
}

/// True when a card tells the time since new of a part from a day on. One that says less than is
/// counted changes nothing now, and may after an answer.
[[nodiscard]] bool told_from(const std::vector<Record>& records, Id part, Date on) {
    return std::any_of(records.begin(), records.end(), [&](const Record& record) {
        const auto* fitted = std::get_if<facts::PartFitted>(&record.in_use.fields);
        return !record.withdrawn && fitted != nullptr && fitted->tsn &&
               record.in_use.about.front() == part && latest_day(record) >= on;
    });
}

/// True when a version of an open record is about the hours of a part.
[[nodiscard]] bool disputes_hours(const Record& record, Id part) {
    return record.open &&
           std::any_of(record.heads.begin(), record.heads.end(), [&](const Head& head) {
               return head.body != nullptr && tells_hours(head.body->fields) &&
                      head.body->about.front() == part;
           });
}

/// The most time since new that any version of what is asked about tells of a part.
[[nodiscard]] std::optional<FlightTime> most_told(const std::vector<Record>& records, Id part) {
    std::optional<FlightTime> out;
    for (const Record& record : records) {
        if (!disputes_hours(record, part)) continue;
        for (const Head& head : record.heads) {
            if (head.body == nullptr) continue;
            const auto* added = std::get_if<facts::PartAdded>(&head.body->fields);
            const auto* fitted = std::get_if<facts::PartFitted>(&head.body->fields);
            const std::optional<FlightTime> tsn = added != nullptr    ? added->tsn
                                                  : fitted != nullptr ? fitted->tsn
                                                                      : std::nullopt;
            if (tsn) out = std::max(out.value_or(*tsn), *tsn);
        }
    }
    return out;
}

/// True when records disagree about the day of work, so that it may be a day on which nobody knows
/// the hours.
[[nodiscard]] bool is_on_several_days(const Record& work) {
    return work.open && std::any_of(work.heads.begin(), work.heads.end(), [&](const Head& head) {
               return head.body != nullptr && head.body->on != work.in_use.on;
           });
}

/// True when versions of a record about the hours of a part lie on both sides of a day, or on it:
/// then nobody knows what the part had by that day. Nor where one lies before it and a card told
/// the time since new after it: what was flown in between is the rest.
[[nodiscard]] bool hides_hours(const Record& record, Id part, Date on, bool told_later) {
    if (!record.open) return false;
    bool from = false;
    bool until = false;
    for (const Head& head : record.heads) {
        const bool counts = head.body != nullptr && tells_hours(head.body->fields) &&
                            head.body->about.front() == part;
        from = from || (counts && head.body->on <= on);
        until = until || (counts && head.body->on >= on);
    }
    return from && (until || told_later);
}

/// The hours of a part at work, in what its limits count in. Of two ways of knowing them the
/// lesser: a card may have put an estimate right in between.
[[nodiscard]] std::optional<FlightTime> hours_at(const PartState& part,
                                                 const PartWork& work,
                                                 std::int32_t gaps) {
    const std::optional<FlightTime> now = hours_of(part);
    std::optional<FlightTime> out;
    if (part.hours_in == PartHours::since_new) out = work.renewed.total;
    if (now && work.gaps == gaps) {
        const FlightTime counted = *now - (part.flown.back().total - work.count);
        out = out ? std::min(*out, counted) : counted;
    }
    return out;
}

void fold_works(const std::vector<Record>& records, const PartWorks& works, PartState& part) {
    for (const PartWork& work : works.done) {
        Renewed renewed = work.renewed;
        renewed.total = hours_at(part, work, works.gaps);
        const bool any_day = is_on_several_days(*work.record);
        const bool told_later =
            work.tells != works.tells || told_from(records, part.id, renewed.on);
        const bool in_doubt =
            work.in_doubt || std::any_of(records.begin(), records.end(), [&](const Record& record) {
                return (any_day && disputes_hours(record, part.id)) ||
                       hides_hours(record, part.id, renewed.on, told_later);
            });
        if (in_doubt && renewed.total) renewed.total = FlightTime{0};
        if (in_doubt) renewed.landings = renewed.starts = std::nullopt;
        renewed.total_estimated = renewed.total_estimated || in_doubt;
        const auto* done = std::get_if<facts::WorkDone>(&work.record->in_use.fields);
        for (const facts::Renewal& renewal : done->renews) {
            for (ItemState& item : part.items) {
                if (!is_renewed_by(renewal, item, part.id)) continue;
                item.disputed = item.disputed || in_doubt;
                renew(item, renewal, renewed);
            }
        }
    }
}

/// True when a record that is not taken back sets a limit of an item on some days.
template <class Days>
[[nodiscard]] bool any_limit(const std::vector<Record>& records, Id item, Days days) {
    return std::any_of(records.begin(), records.end(), [&](const Record& record) {
        return !record.withdrawn && record.in_use.about.size() > 1 &&
               record.in_use.about[1] == item &&
               std::holds_alternative<facts::LimitSet>(record.in_use.fields) && days(record);
    });
}

/// What a limit set before the maker's rebuild counts from, the rebuild starts again. While records
/// disagree about the limit: hours as if it was set before, a day as if it was set after.
void start_again(const std::vector<Record>& records, PartState& part) {
    if (!part.rebuilt_on) return;
    const Date rebuilt = *part.rebuilt_on;
    for (ItemState& item : part.items) {
        if (!item.limit) continue;
        const bool set_before = any_limit(records, item.id, [&](const Record& record) {
            return record.root == item.limit_fact && record.in_use.on <= rebuilt;
        });
        const bool any_after = any_limit(records, item.id, [&](const Record& record) {
            const bool counts = item.disputed || record.root == item.limit_fact;
            return counts && latest_day(record) > rebuilt;
        });
        facts::LimitSet& limit = *item.limit;
        if (set_before || item.disputed) {
            limit.anchor_total.reset();
            limit.anchor_landings.reset();
            limit.anchor_starts.reset();
        }
        if (!any_after && limit.anchor_on && *limit.anchor_on < rebuilt) limit.anchor_on.reset();
    }
}

}  // namespace

std::vector<Id> hung_on(const std::vector<Record>& records, Id part) {
    std::vector<Id> out;
    for (const Record& record : records) {
        const bool hangs =
            std::any_of(record.heads.begin(), record.heads.end(), [&](const Head& head) {
                return head.body != nullptr && head.body->about.size() > 1 &&
                       head.body->about.front() == part &&
                       std::holds_alternative<facts::ItemAdded>(head.body->fields);
            });
        if (hangs) out.push_back(record.root);
    }
    return out;
}

void fold_part_items(const std::vector<Record>& records,
                     const PartWorks& works,
                     Date today,
                     PartState& part) {
    if (part.tsn) {
        part.hours_in = PartHours::since_new;
    } else if (part.questions.empty() && !part.flown.empty()) {
        part.hours_in = PartHours::recorded;
    }
    part.most_told = most_told(records, part.id);
    const std::optional<Date> earliest = part.rebuilt_on ? part.rebuilt_on : part.manufactured;
    fold_items(by_day(records), part.id, earliest, today, part.items);
    fold_limit_marks(records, part.id, today, part.items, part.cautions);
    fold_wear(records, today, part.items);
    fold_works(records, works, part);
    start_again(records, part);
    fold_directives(records, today, part);
}

}  // namespace twoclocks::timeline
