#include "engine/timeline/events.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::Id;
using facts::Body;
using facts::Event;
using facts::Fact;
using facts::Journal;

[[nodiscard]] bool names_id(const std::vector<Id>& ids, Id id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

void add_new(std::vector<Id>& ids, Id id) {
    if (!names_id(ids, id)) ids.push_back(id);
}

[[nodiscard]] bool is_event(const Head& head) {
    return head.body != nullptr && std::holds_alternative<Event>(head.body->fields);
}

/// The body of a fact, or of what it puts in another's place.
[[nodiscard]] const Body& told_by(const Fact& fact) {
    const auto* correction = std::get_if<facts::Correction>(&fact.body.fields);
    return correction != nullptr && correction->instead ? *correction->instead : fact.body;
}

[[nodiscard]] bool moves_a_part(const facts::Fields& fields) {
    return std::holds_alternative<facts::PartFitted>(fields) ||
           std::holds_alternative<facts::PartRemoved>(fields);
}

[[nodiscard]] bool ever_happened(const Journal& journal, Id subject) {
    const std::vector<const Fact*> facts = journal.about(subject);
    return std::any_of(facts.begin(), facts.end(), [](const Fact* fact) {
        return std::holds_alternative<Event>(told_by(*fact).fields);
    });
}

/// What a part is on by some version: where it is, where a fit or removal in dispute says, and what
/// only a record in dispute took it off.
[[nodiscard]] std::set<Id> hosts_of(const Journal& journal, Id part, Date today) {
    std::set<Id> out;
    std::set<Id> in_dispute;
    for (const Record& record : resolve(journal, part)) {
        if (!record.open) continue;
        in_dispute.insert(record.root);
        for (const Head& head : record.heads) {
            const bool is_host = head.body != nullptr && moves_a_part(head.body->fields) &&
                                 head.body->about.size() > 1 && head.body->about.front() == part &&
                                 head.body->on <= today;
            if (is_host) out.insert(head.body->about[1]);
        }
    }
    for (const PartSpell& spell : replay_part(journal, part, today).spells) {
        if (!spell.until || in_dispute.count(spell.removal) > 0) out.insert(spell.host);
    }
    return out;
}

/// A part that was taken back is none; one whose papers are not here may be.
[[nodiscard]] bool is_taken_back(const Journal& journal, Id part) {
    bool added = false;
    for (const Record& record : resolve(journal, part)) {
        if (record.root != part) continue;
        if (!record.withdrawn) return false;
        added = true;
    }
    return added;
}

[[nodiscard]] bool renews(const facts::WorkDone& work, Id event) {
    return std::any_of(work.renews.begin(), work.renews.end(), [&](const facts::Renewal& renewal) {
        return renewal.item == event;
    });
}

/// Settled work that renews an event, with what it is about.
struct Signing {
    Id fact;
    Date on;
    std::vector<Id> about;
};

[[nodiscard]] std::vector<Signing> signings(const Journal& journal, Id event, Date today) {
    std::vector<Signing> out;
    for (const Record& found : resolve(journal, event)) {
        // Of two facts that bear one id, the other need not name the event.
        const Record record =
            journal.id_is_shared(found.root) ? resolve_one(journal, found.root) : found;
        if (record.open || record.withdrawn || record.in_use.on > today) continue;
        const auto* work = std::get_if<facts::WorkDone>(&record.in_use.fields);
        if (work == nullptr || !renews(*work, event)) continue;
        out.push_back({record.root, record.in_use.on, record.in_use.about});
    }
    base::sort_stably(out,
                      [](const Signing& left, const Signing& right) { return left.on < right.on; });
    return out;
}

[[nodiscard]] bool is_open(const std::vector<Signing>& works, const Body& version, Id subject) {
    return std::none_of(works.begin(), works.end(), [&](const Signing& work) {
        return work.on >= version.on && names_id(work.about, subject);
    });
}

[[nodiscard]] EventSubject subject_of(const Journal& journal, Id id, Date today) {
    EventSubject out;
    out.id = id;
    for (const Fact* fact : journal.with_id(id)) {
        const auto* aircraft = std::get_if<facts::AircraftAdded>(&fact->body.fields);
        if (aircraft != nullptr) {
            out.name = aircraft->registration;
        } else if (std::holds_alternative<facts::PartAdded>(fact->body.fields)) {
            out.is_part = true;
            out.name = part_label(replay_part(journal, id, today));
        }
        if (!out.name.empty()) break;
    }
    return out;
}

/// The event that a record is, by all its versions; nothing when none of them is one.
[[nodiscard]] std::optional<EventState> read_event(const Journal& journal,
                                                   const Record& record,
                                                   Date today) {
    const auto first = std::find_if(record.heads.begin(), record.heads.end(), is_event);
    if (first == record.heads.end()) return std::nullopt;
    EventState out;
    out.id = record.root;
    out.on = first->body->on;
    out.event = *std::get_if<Event>(&first->body->fields);
    out.disputed = record.open;
    const std::vector<Signing> works = signings(journal, record.root, today);
    std::vector<Id> named;
    std::vector<Id> open;
    for (const Head& head : record.heads) {
        if (!is_event(head)) continue;
        out.on = std::min(out.on, head.body->on);
        for (const Id& subject : head.body->about) {
            add_new(named, subject);
            if (is_open(works, *head.body, subject)) add_new(open, subject);
        }
    }
    for (const Id& id : named) {
        out.subjects.push_back(subject_of(journal, id, today));
        out.subjects.back().open = names_id(open, id);
    }
    for (const Signing& work : works) {
        EventSigned done{work.fact, work.on, {}};
        for (const Id& id : named) {
            if (!names_id(open, id) && names_id(work.about, id)) done.subjects.push_back(id);
        }
        if (!done.subjects.empty()) out.signed_by.push_back(std::move(done));
    }
    return out;
}

/// Events one after the other, each once.
class Events {
  public:
    Events(const Journal& journal, Date today) : journal_(journal), today_(today) {}

    /// Takes those of the records that are open for a subject that `is_here`.
    template <class IsHere>
    void take(const std::vector<Record>& records, IsHere is_here) {
        for (const Record& record : records) {
            if (std::none_of(record.heads.begin(), record.heads.end(), is_event)) continue;
            if (!seen_.insert(record.root).second) continue;
            std::optional<EventState> event = read_event(journal_, record, today_);
            bool stops = false;
            for (EventSubject& subject : event->subjects) {
                subject.here = subject.open && is_here(subject.id);
                stops = stops || subject.here;
            }
            if (stops) out_.push_back(std::move(*event));
        }
    }

    [[nodiscard]] std::vector<EventState> in_order() {
        base::sort_stably(out_, [](const EventState& left, const EventState& right) {
            return left.on != right.on ? left.on < right.on : left.id < right.id;
        });
        return std::move(out_);
    }

  private:
    const Journal& journal_;
    Date today_;
    std::set<Id> seen_;
    std::vector<EventState> out_;
};

}  // namespace

std::set<Id> ever_aboard(const Journal& journal, Id host) {
    std::set<Id> out;
    std::vector<Id> left{host};
    while (!left.empty()) {
        const Id one = left.back();
        left.pop_back();
        for (const Fact* fact : journal.about(one)) {
            const Body& body = told_by(*fact);
            const bool is_here = moves_a_part(body.fields) && body.about.size() > 1 &&
                                 body.about[1] == one && body.about.front() != host;
            if (is_here && out.insert(body.about.front()).second)
                left.push_back(body.about.front());
        }
    }
    return out;
}

std::vector<Id> may_be_aboard(const Journal& journal, Id part, Date today) {
    std::set<Id> out;
    std::set<Id> seen;
    std::vector<Id> left{part};
    while (!left.empty()) {
        const Id one = left.back();
        left.pop_back();
        if (!seen.insert(one).second) continue;
        const std::vector<const Fact*> same = journal.with_id(one);
        const bool flies = std::any_of(same.begin(), same.end(), [](const Fact* fact) {
            return std::holds_alternative<facts::AircraftAdded>(fact->body.fields);
        });
        if (flies) {
            out.insert(one);
        } else if (!is_taken_back(journal, one)) {
            const std::set<Id> hosts = hosts_of(journal, one, today);
            left.insert(left.end(), hosts.begin(), hosts.end());
        }
    }
    return {out.begin(), out.end()};
}

std::vector<EventState> events_stopping(const Journal& journal,
                                        const std::vector<Record>& records,
                                        Id aircraft,
                                        Date today) {
    std::map<Id, bool> aboard{{aircraft, true}};
    const auto is_here = [&](Id subject) {
        const auto known = aboard.find(subject);
        if (known != aboard.end()) return known->second;
        const bool here = names_id(may_be_aboard(journal, subject, today), aircraft);
        return aboard.emplace(subject, here).first->second;
    };
    Events events{journal, today};
    events.take(records, is_here);
    for (const Id& part : ever_aboard(journal, aircraft)) {
        if (ever_happened(journal, part)) events.take(resolve(journal, part), is_here);
    }
    return events.in_order();
}

std::vector<EventState> events_of_part(const Journal& journal, Id part, Date today) {
    Events events{journal, today};
    if (ever_happened(journal, part)) {
        events.take(resolve(journal, part), [&](Id subject) { return subject == part; });
    }
    return events.in_order();
}

std::optional<EventState> find_event(const Journal& journal, Id event, Date today) {
    return read_event(journal, resolve_one(journal, event), today);
}

void fold_events(const Journal& journal,
                 const std::vector<Record>& records,
                 Date today,
                 AircraftState& state) {
    state.events = events_stopping(journal, records, state.id, today);
    for (const EventState& event : state.events) {
        if (event.on <= today) continue;
        state.cautions.push_back({base::Trouble::event_ahead, {base::day_arg(event.on)}, event.id});
    }
}

}  // namespace twoclocks::timeline
