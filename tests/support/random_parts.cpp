// What a random journal writes about parts: a gearbox that goes on and off the aircraft, and a
// bearing inside it that is sometimes fitted to the aircraft itself, or the wrong way round.
#include "tests/support/random_journal.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::support {

using base::Date;
using base::Id;
using facts::Fact;
using facts::Fields;

namespace {

constexpr Date part_start{18'262};  // 2020-01-01

}  // namespace

std::vector<Fact> RandomJournal::new_parts() {
    std::vector<Fact> out;
    for (const char* serial : {"1", "2"}) {
        out.push_back(pens_.front().add(part_start, {}, papers(serial)));
        parts_.push_back(out.back().id);
    }
    if (!mix_.hung) return out;
    const std::vector<Fact> parts = out;
    for (const Fact& part : parts) {
        for (const Fact& fact : new_hung(part))
            out.push_back(fact);
    }
    return out;
}

facts::PartAdded RandomJournal::papers(const std::string& serial) {
    facts::PartAdded out;
    out.part_number = "GB-1";
    out.serial = serial;
    if (!random_.once_in(4)) out.tsn = base::tenths(random_.between(0, 5000));
    if (!random_.once_in(3)) out.tso = base::tenths(random_.between(0, 500));
    // No part was overhauled before it was made.
    if (mix_.hung && out.tsn && out.tso) out.tso = std::min(*out.tso, *out.tsn);
    if (random_.once_in(3)) out.landings = base::Count{random_.between(0, 500)};
    if (random_.once_in(3)) out.manufactured = base::add_days(part_start, -400);
    if (random_.once_in(8)) out.history_unknown = true;
    return out;
}

/// What the bearing or the gearbox is on or comes off.
Id RandomJournal::any_host(std::size_t part) {
    if (random_.once_in(20)) return parts_[1 - part];
    return part == 1 && !random_.once_in(4) ? parts_[0] : aircraft_;
}

std::optional<base::FlightTime> RandomJournal::host_total(Id host, Date on) {
    if (host != aircraft_ || random_.once_in(3)) return std::nullopt;
    return base::tenths(10'000 + 3 * std::int64_t{base::days_between(part_start, on)} + stray());
}

facts::PartFitted RandomJournal::fit(Id host, Date on) {
    facts::PartFitted out;
    out.host_total = host_total(host, on);
    if (random_.once_in(8)) out.tsn = base::tenths(random_.between(0, 9000));
    if (random_.once_in(2)) out.host_landings = base::Count{random_.between(4000, 6000)};
    return out;
}

facts::PartRemoved RandomJournal::removal(Id host, Date on) {
    facts::PartRemoved out;
    out.host_total = host_total(host, on);
    if (random_.once_in(2)) out.host_landings = base::Count{random_.between(4000, 6000)};
    out.temporarily = random_.once_in(3);
    return out;
}

Fact RandomJournal::part_fact(Pen& pen, Date on) {
    const auto part = static_cast<std::size_t>(random_.between(0, 1));
    if (mix_.hung && random_.once_in(3)) return hung_fact(pen, on, part);
    const Id host = any_host(part);
    switch (random_.between(0, 9)) {
        case 0:
            return pen.write(on, {parts_[part]}, facts::PartRebuilt{"Maker 1", {}, {}, {}});
        case 1:
            return pen.write(on, {parts_[part]}, facts::PartMoved{"Shelf", {}, {}, {}, {}});
        case 2:
            if (!random_.once_in(3)) return pen.write(on, {parts_[part], host}, fit(host, on));
            return pen.write(on, {parts_[part]}, facts::PartScrapped{"Cut in two"});
        case 3:
            return pen.write(on, {parts_[part]}, renews({parts_[part]}, -1));
        case 4:
        case 5:
        case 6:
            return pen.write(on, {parts_[part], host}, removal(host, on));
        default:
            return pen.write(on, {parts_[part], host}, fit(host, on));
    }
}

/// Limits that hang on a part: its overhaul, and one of any other role.
std::vector<Fact> RandomJournal::new_hung(const Fact& part) {
    std::vector<Fact> out;
    for (const facts::ItemRole role : {facts::ItemRole::overhaul, facts::ItemRole::inspection}) {
        out.push_back(pens_.front().add(part_start, {part.id}, facts::ItemAdded{"Hung", role, {}}));
        hung_.push_back(out.back().id);
        out.push_back(pens_.front().write(part_start, {part.id, hung_.back()}, random_limit()));
    }
    return out;
}

facts::WorkDone RandomJournal::hung_work(Id item, Date on) {
    facts::WorkDone out = renews({item}, -1);
    if (!random_.once_in(3)) out.total = host_total(aircraft_, on);
    if (random_.once_in(3)) out.renews.front().clocks = {facts::Clock::hours};
    return out;
}

/// A new limit of what hangs on a part, or work on it: on the aircraft or on the shelf.
Fact RandomJournal::hung_fact(Pen& pen, Date on, std::size_t part) {
    const Id item = hung_[2 * part + static_cast<std::size_t>(random_.between(0, 1))];
    if (random_.once_in(5)) return pen.write(on, {parts_[part], item}, random_limit());
    std::vector<Id> about{parts_[part], item};
    if (!random_.once_in(4)) about.insert(about.begin(), aircraft_);
    return pen.write(on, std::move(about), hung_work(item, on));
}

/// The same record of a part as somebody else would have it; false when it is of none.
bool RandomJournal::vary_part(facts::Body& body) {
    Fields& fields = body.fields;
    const Id host = body.about.back();
    if (auto* done = std::get_if<facts::WorkDone>(&fields)) {
        const Id item = done->renews.empty() ? Id{} : done->renews.front().item;
        if (std::find(hung_.begin(), hung_.end(), item) == hung_.end()) return false;
        *done = hung_work(item, body.on);
        return true;
    }
    if (auto* added = std::get_if<facts::PartAdded>(&fields)) {
        *added = papers(added->serial);
    } else if (auto* fitted = std::get_if<facts::PartFitted>(&fields)) {
        *fitted = fit(host, body.on);
    } else if (auto* removed = std::get_if<facts::PartRemoved>(&fields)) {
        *removed = removal(host, body.on);
    } else if (auto* rebuilt = std::get_if<facts::PartRebuilt>(&fields)) {
        rebuilt->done_by = "Somebody else";
    } else {
        return std::holds_alternative<facts::PartMoved>(fields) ||
               std::holds_alternative<facts::PartScrapped>(fields);
    }
    return true;
}

}  // namespace twoclocks::support
