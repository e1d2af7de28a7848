#include "engine/timeline/parts.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "engine/base/message_args.hpp"
#include "engine/timeline/part_items.hpp"
#include "engine/timeline/usage.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::Id;
using facts::Fact;
using facts::Journal;

/// The body of a fact, or of what it puts in another's place.
[[nodiscard]] const facts::Body& told_by(const Fact& fact) {
    const auto* correction = std::get_if<facts::Correction>(&fact.body.fields);
    return correction != nullptr && correction->instead ? *correction->instead : fact.body;
}

[[nodiscard]] bool is_fit(const facts::Body& body) {
    const bool kind = std::holds_alternative<facts::PartFitted>(body.fields) ||
                      std::holds_alternative<facts::PartRemoved>(body.fields);
    return kind && body.about.size() > 1;
}

/// Parts and hosts, each worked out once.
class Workshop {
  public:
    Workshop(const Journal& journal, Date today) : journal_(journal), today_(today) {}

    [[nodiscard]] const PartState& part(Id id) {
        const auto found = parts_.find(id);
        if (found != parts_.end()) return found->second;
        PartState state;
        state.id = id;
        const std::vector<Record>& all = records(id);
        const std::vector<PartEvent> events = part_events(all, hung_on(all, id), today_, state);
        const PartWorks works = walk_part(
            events, [&](Id host) { return find_host(id, host); }, today_, state);
        fold_part_items(all, works, today_, state);
        state.aircraft = aircraft_under(state);
        return parts_.emplace(id, std::move(state)).first->second;
    }

  private:
    [[nodiscard]] bool is_added(Id id, bool as_part) const {
        const std::vector<const Fact*> facts = journal_.with_id(id);
        return std::any_of(facts.begin(), facts.end(), [&](const Fact* fact) {
            return as_part ? std::holds_alternative<facts::PartAdded>(fact->body.fields)
                           : std::holds_alternative<facts::AircraftAdded>(fact->body.fields);
        });
    }

    [[nodiscard]] const std::vector<Record>& records(Id id) {
        const auto found = records_.find(id);
        if (found != records_.end()) return found->second;
        std::vector<Record> out = resolve(journal_, id);
        std::vector<Id> subjects = hung_on(out, id);
        if (!subjects.empty()) {
            // Work may name what hangs on the part and not the part.
            subjects.push_back(id);
            out = resolve(journal_, subjects);
        }
        return records_.emplace(id, std::move(out)).first->second;
    }

    /// Parts that a part was ever fitted to.
    [[nodiscard]] std::vector<Id> part_hosts(Id id) {
        std::vector<Id> out;
        for (const Record& record : records(id)) {
            const facts::Body& body = record.in_use;
            const bool counts = !record.withdrawn &&
                                std::holds_alternative<facts::PartFitted>(body.fields) &&
                                body.about.size() > 1 && body.about.front() == id;
            if (counts && is_added(body.about[1], true)) out.push_back(body.about[1]);
        }
        return out;
    }

    /// True when `host` is the part, or was ever fitted to it by way of any others.
    [[nodiscard]] bool is_inside(Id part, Id host) {
        std::vector<Id> left{host};
        std::set<Id> seen;
        while (!left.empty()) {
            const Id one = left.back();
            left.pop_back();
            if (one == part) return true;
            if (!seen.insert(one).second) continue;
            const std::vector<Id> next = part_hosts(one);
            left.insert(left.end(), next.begin(), next.end());
        }
        return false;
    }

    [[nodiscard]] HostFound find_host(Id part_id, Id host) {
        if (is_added(host, true)) {
            if (is_inside(part_id, host)) return {nullptr, true};
            if (lines_.count(host) == 0) lines_.emplace(host, line_of(part(host)));
        } else if (is_added(host, false)) {
            if (lines_.count(host) == 0) lines_.emplace(host, aircraft_line(host));
        } else {
            return {nullptr, host == part_id};
        }
        return {&lines_.at(host), false};
    }

    [[nodiscard]] HostLine aircraft_line(Id aircraft) const {
        AircraftState state;
        state.id = aircraft;
        fold_usage(resolve(journal_, aircraft), today_, state);
        return line_of(state);
    }

    [[nodiscard]] Id aircraft_under(const PartState& state) {
        if (state.host.empty() || is_added(state.host, false)) return state.host;
        if (!is_added(state.host, true) || is_inside(state.id, state.host)) return {};
        return part(state.host).aircraft;
    }

    const Journal& journal_;
    Date today_;
    std::map<Id, PartState> parts_;
    std::map<Id, std::vector<Record>> records_;
    std::map<Id, HostLine> lines_;
};

/// Parts that were ever fitted to an aircraft or a part, as far as any version says.
[[nodiscard]] std::vector<Id> ever_on(const Journal& journal, Id host) {
    std::vector<Id> out;
    for (const Fact* fact : journal.about(host)) {
        const facts::Body& body = told_by(*fact);
        if (is_fit(body) && body.about[1] == host) out.push_back(body.about.front());
    }
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

/// Asks about parts that bear one number and serial.
void ask_twins(std::vector<PartState>& parts) {
    std::map<std::pair<std::string, std::string>, std::vector<std::size_t>> plates;
    for (std::size_t at = 0; at < parts.size(); ++at) {
        if (!parts[at].serial.empty())
            plates[{parts[at].part_number, parts[at].serial}].push_back(at);
    }
    for (const auto& [plate, places] : plates) {
        if (places.size() < 2) continue;
        std::vector<Id> ids;
        for (const std::size_t place : places)
            ids.push_back(parts[place].id);
        for (const std::size_t place : places) {
            parts[place].problems.push_back(
                {base::Trouble::part_twice,
                 {base::text_arg(plate.first), base::text_arg(plate.second)},
                 base::Severity::question,
                 ids});
        }
    }
}

}  // namespace

PartState replay_part(const Journal& journal, Id part, Date today) {
    return Workshop{journal, today}.part(part);
}

std::vector<PartState> replay_parts(const Journal& journal, Date today) {
    Workshop workshop{journal, today};
    std::vector<PartState> out;
    for (const Id& id : journal.parts()) {
        const PartState& part = workshop.part(id);
        if (!part.withdrawn) out.push_back(part);
    }
    ask_twins(out);
    return out;
}

std::vector<PartState> parts_of(const Journal& journal, Id aircraft, Date today) {
    Workshop workshop{journal, today};
    std::set<Id> seen;
    std::vector<Id> left = ever_on(journal, aircraft);
    while (!left.empty()) {
        const Id id = left.back();
        left.pop_back();
        if (!seen.insert(id).second) continue;
        const std::vector<Id> inside = ever_on(journal, id);
        left.insert(left.end(), inside.begin(), inside.end());
    }
    std::vector<PartState> out;
    for (const Id& id : seen) {
        const PartState& part = workshop.part(id);
        if (!part.withdrawn && part.aircraft == aircraft) out.push_back(part);
    }
    return out;
}

std::vector<Id> sharing_parts(const Journal& journal, Id subject) {
    std::set<Id> seen;
    std::vector<Id> left{subject};
    while (!left.empty()) {
        const Id id = left.back();
        left.pop_back();
        if (!seen.insert(id).second) continue;
        for (const Fact* fact : journal.about(id)) {
            const facts::Body& body = told_by(*fact);
            if (is_fit(body)) left.insert(left.end(), body.about.begin(), body.about.end());
            if (std::holds_alternative<facts::ItemAdded>(body.fields) && !body.about.empty())
                left.push_back(body.about.front());
        }
    }
    std::vector<Id> out;
    for (const Id& id : seen) {
        const std::vector<const Fact*> facts = journal.with_id(id);
        const bool flies =
            id == subject
                ? std::none_of(
                      facts.begin(),
                      facts.end(),
                      [](const Fact* fact) {
                          return std::holds_alternative<facts::PartAdded>(fact->body.fields);
                      })
                : std::any_of(facts.begin(), facts.end(), [](const Fact* fact) {
                      return std::holds_alternative<facts::AircraftAdded>(fact->body.fields);
                  });
        if (flies) out.push_back(id);
    }
    return out;
}

}  // namespace twoclocks::timeline
