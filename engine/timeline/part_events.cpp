#include "engine/timeline/part_events.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/timeline/question.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::Id;
using base::Trouble;

template <class Kind>
[[nodiscard]] const Kind* as(const PartEvent& event) {
    return std::get_if<Kind>(&event.record->in_use.fields);
}

[[nodiscard]] bool is_work_on(const facts::WorkDone& work, Id part, const std::vector<Id>& items) {
    return std::any_of(work.renews.begin(), work.renews.end(), [&](const auto& renewal) {
        return renewal.item == part ||
               std::find(items.begin(), items.end(), renewal.item) != items.end();
    });
}

/// The event that a record is for a part: a fit names the part and then its host, so that a host
/// has no event of it; work counts where it renews the part itself or what hangs on it.
[[nodiscard]] std::optional<PartEvent> event_of(const Record& record,
                                                Id part,
                                                const std::vector<Id>& items) {
    const facts::Body& body = record.in_use;
    PartEvent out{&record, body.on, {}, std::nullopt};
    if (const auto* work = std::get_if<facts::WorkDone>(&body.fields)) {
        if (!is_work_on(*work, part, items)) return std::nullopt;
        out.on = body.on;
        if (body.about.front() != part) out.host = body.about.front();
        out.total = work->total;
        return out;
    }
    if (body.about.empty() || body.about.front() != part) return std::nullopt;
    if (const auto* fitted = std::get_if<facts::PartFitted>(&body.fields)) {
        out.total = fitted->host_total;
    } else if (const auto* removed = std::get_if<facts::PartRemoved>(&body.fields)) {
        out.total = removed->host_total;
    } else {
        const bool plain =
            std::holds_alternative<facts::PartScrapped>(body.fields) ||
            std::holds_alternative<facts::PartMoved>(body.fields) ||
            std::holds_alternative<facts::PartRebuilt>(body.fields) ||
            (std::holds_alternative<facts::PartAdded>(body.fields) && record.root == part);
        if (!plain) return std::nullopt;
        return out;
    }
    if (body.about.size() > 1) out.host = body.about[1];
    return out;
}

/// What renews something has not been done while one version of it lies ahead.
[[nodiscard]] bool lies_ahead(const PartEvent& event, Date today) {
    const bool renews =
        as<facts::WorkDone>(event) != nullptr || as<facts::PartRebuilt>(event) != nullptr;
    return (renews ? latest_day(*event.record) : event.on) > today;
}

/// Papers and fits whose day is disputed count on every day that a version names: whichever is
/// right, the part has no fewer hours.
void repeat_disputed(const PartEvent& event, Date today, std::vector<PartEvent>& out) {
    const bool repeats =
        as<facts::PartAdded>(event) != nullptr || as<facts::PartFitted>(event) != nullptr;
    std::vector<Date> days{event.on};
    for (const Head& head : event.record->heads) {
        if (!repeats || head.body == nullptr || head.body->on > today) continue;
        if (std::find(days.begin(), days.end(), head.body->on) != days.end()) continue;
        days.push_back(head.body->on);
        PartEvent again = event;
        again.on = head.body->on;
        out.push_back(again);
    }
}

/// A removal whose day is disputed, with something else on the days between, has not happened yet.
void drop_disputed(std::vector<PartEvent>& events) {
    const std::vector<PartEvent> all = events;
    const auto is_unclear = [&](const PartEvent& event) {
        if (as<facts::PartRemoved>(event) == nullptr || !event.record->open) return false;
        Date earliest = event.on;
        for (const Head& head : event.record->heads) {
            if (head.body != nullptr) earliest = std::min(earliest, head.body->on);
        }
        return std::any_of(all.begin(), all.end(), [&](const PartEvent& other) {
            return other.record != event.record && earliest < event.on && other.on >= earliest &&
                   other.on <= event.on;
        });
    };
    events.erase(std::remove_if(events.begin(), events.end(), is_unclear), events.end());
}

void fold_identity(const PartEvent& event, PartState& part) {
    const auto* added = as<facts::PartAdded>(event);
    if (added == nullptr) return;
    part.withdrawn = false;
    part.part_number = added->part_number;
    part.serial = added->serial;
    part.name = added->name;
    part.chapter = added->chapter;
    part.manufactured = added->manufactured;
    part.cured = added->cured;
    part.shipped = added->shipped;
    part.condition = added->condition;
    part.papers = added->papers;
    part.history_unknown = added->history_unknown;
    part.owner = added->owner;
    part.return_by = added->lent_until;
    part.overhaul_count = added->overhauls;
}

void fold_questions(const std::vector<Record>& records, PartState& part) {
    AircraftState asked;
    for (const Record& record : records) {
        fold_question(record, asked);
        const bool newer =
            std::any_of(record.heads.begin(), record.heads.end(), [](const Head& head) {
                return head.body != nullptr &&
                       std::holds_alternative<facts::UnknownKind>(head.body->fields);
            });
        if (newer) ++part.unknown_records;
    }
    part.questions = std::move(asked.questions);
}

/// Puts the events of one day in order, given what the part is fitted to before.
class Day {
  public:
    explicit Day(std::vector<Id>& open) : open_(open) {}

    void order(std::vector<PartEvent>::iterator first, std::vector<PartEvent>::iterator last) {
        for (; first != last; ++first) {
            auto next = std::find_if(first, last, [&](const PartEvent& event) {
                return !comes_later(event, first, last) && can_happen(event);
            });
            if (next == last) {
                next = std::find_if(first, last, [&](const PartEvent& event) {
                    return !comes_later(event, first, last);
                });
            }
            std::rotate(first, next, next + 1);
            happen(*first);
        }
    }

  private:
    using Place = std::vector<PartEvent>::iterator;

    /// Another event of the same host has a lower total.
    [[nodiscard]] static bool comes_later(const PartEvent& event, Place first, Place last) {
        if (event.host.empty() || !event.total) return false;
        return std::any_of(first, last, [&](const PartEvent& other) {
            return other.host == event.host && other.total && *other.total < *event.total;
        });
    }

    [[nodiscard]] bool is_on(Id host) const {
        return std::find(open_.begin(), open_.end(), host) != open_.end();
    }

    [[nodiscard]] bool can_happen(const PartEvent& event) const {
        if (as<facts::PartFitted>(event) != nullptr) return open_.empty();
        if (as<facts::PartRemoved>(event) != nullptr) return is_on(event.host);
        if (as<facts::PartScrapped>(event) != nullptr) return open_.empty();
        return true;
    }

    void happen(const PartEvent& event) {
        if (as<facts::PartFitted>(event) != nullptr && !is_on(event.host))
            open_.push_back(event.host);
        if (as<facts::PartRemoved>(event) != nullptr)
            open_.erase(std::remove(open_.begin(), open_.end(), event.host), open_.end());
        if (as<facts::PartScrapped>(event) != nullptr) open_.clear();
    }

    std::vector<Id>& open_;
};

void order_events(std::vector<PartEvent>& events) {
    const auto is_added = [](const PartEvent& event) {
        return as<facts::PartAdded>(event) != nullptr;
    };
    base::sort_stably(events, [&](const PartEvent& left, const PartEvent& right) {
        if (left.on != right.on) return left.on < right.on;
        return is_added(left) && !is_added(right);
    });
    std::vector<Id> open;
    Day day{open};
    for (auto first = events.begin(); first != events.end();) {
        const auto last = std::find_if(
            first, events.end(), [&](const PartEvent& event) { return event.on != first->on; });
        day.order(first, last);
        first = last;
    }
}

void doubt_early(const std::vector<PartEvent>& events, PartState& part) {
    for (const PartEvent& event : events) {
        if (!part.manufactured || event.on >= *part.manufactured) continue;
        part.problems.push_back({Trouble::part_before_made,
                                 {base::text_arg(part_label(part)),
                                  base::day_arg(event.on),
                                  base::day_arg(*part.manufactured)},
                                 base::Severity::caution,
                                 {part.id, event.record->root}});
    }
}

}  // namespace

std::vector<PartEvent> part_events(const std::vector<Record>& records,
                                   const std::vector<Id>& items,
                                   Date today,
                                   PartState& part) {
    std::vector<PartEvent> out;
    fold_questions(records, part);
    part.withdrawn = true;
    std::vector<PartEvent> ahead;
    for (const Record& record : records) {
        const auto event = record.withdrawn ? std::nullopt : event_of(record, part.id, items);
        if (!event) continue;
        fold_identity(*event, part);
        // The figures of its papers are as old as the part: they count, whatever their day.
        const bool counts = as<facts::PartAdded>(*event) != nullptr || !lies_ahead(*event, today);
        (counts ? out : ahead).push_back(*event);
        if (counts) repeat_disputed(*event, today, out);
    }
    for (const PartEvent& event : ahead) {
        part.problems.push_back(
            {Trouble::part_record_ahead,
             {base::text_arg(part_label(part)), base::day_arg(latest_day(*event.record))},
             base::Severity::caution,
             {event.record->root}});
    }
    drop_disputed(out);
    order_events(out);
    doubt_early(out, part);
    return out;
}

std::optional<base::FlightTime> hours_of(const PartState& part) {
    switch (part.hours_in) {
        case PartHours::since_new:
            return part.tsn;
        case PartHours::recorded:
            return part.flown.back().total;
        case PartHours::unknown:
            break;
    }
    return std::nullopt;
}

std::string part_label(const PartState& part) {
    return (part.name.empty() ? part.part_number : part.name) + ' ' + part.serial;
}

}  // namespace twoclocks::timeline
