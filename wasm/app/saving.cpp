// Saving: nothing counts before the host has acknowledged it.
#include "wasm/app/inside.hpp"

#include <algorithm>
#include <set>

#include "engine/base/message_args.hpp"
#include "engine/views/otherwise.hpp"

namespace twoclocks::canvas {

using base::Word;

void AppState::Inside::notify(base::Message text, bool urgent) {
    notices.clear();
    notices.push_back({std::move(text), urgent, std::nullopt, {Word::blank, {}}});
    host.announce(base::say(notices.back().text, region));
    dirty = true;
}

void AppState::Inside::alarm(Word what, std::int64_t count) {
    std::int64_t& all = alarms[what];
    all += count;
    host.announce(base::say({what, {base::whole_arg(all)}}, region));
    dirty = true;
}

void AppState::Inside::save_facts(const std::vector<facts::Fact>& facts, Pending pending_save) {
    pending_save.segment = Ledger::own_segment(facts);
    for (const facts::Fact& fact : facts)
        pending_save.taken_back_by_tap.push_back(fact.id);
    save_segment(std::move(pending_save));
}

void AppState::Inside::save_segment(Pending pending_save) {
    if (is_read_only) {
        notify({Word::save_read_only, {}}, true);
        return;
    }
    const std::uint32_t token = ++last_token;
    const std::string segment = pending_save.segment;
    pending.emplace(token, std::move(pending_save));
    dirty = true;
    host.commit(token, segment);
}

base::Problems AppState::Inside::take_in(std::string_view segment) {
    worked_out.reset();
    const std::size_t before = ledger.visible().facts().size();
    const std::size_t batches = ledger.batches().size();
    base::Problems problems = ledger.take_in(segment);
    const auto& facts = ledger.visible().facts();
    const bool whole =
        facts.size() < before || ledger.batches().size() != batches || facts.size() == before;
    if (whole) {
        reassess();
        return problems;
    }
    std::set<base::Id> touched;
    for (std::size_t place = before; place < facts.size(); ++place) {
        // A part carries its hours from one aircraft to another.
        for (const base::Id& id : facts::subjects_of(facts[place].body)) {
            touched.insert(id);
            for (const base::Id& other : timeline::sharing_parts(ledger.visible(), id))
                touched.insert(other);
        }
    }
    for (const base::Id& id : touched)
        reassess(id);
    return problems;
}

void AppState::Inside::acknowledge(std::uint32_t token, bool ok, std::string_view reason) {
    const auto found = pending.find(token);
    if (found == pending.end()) return;
    const Pending saved = std::move(found->second);
    pending.erase(found);
    dirty = true;
    if (!ok) {
        notify({Word::save_failed, {base::text_arg(std::string{reason})}}, true);
        return;
    }
    (void)take_in(saved.segment);
    ++segments_since_snapshot;
    maybe_snapshot();
    draft_saved(saved);
    notify(saved.done);
    if (!saved.taken_back_by_tap.empty()) {
        notices.back().action = Intent{intent::WithdrawSaved{saved.taken_back_by_tap}};
        notices.back().action_label = {Word::saved_undo, {}};
    }
    switch (saved.after) {
        case Pending::After::stay:
            break;
        case Pending::After::aircraft:
            start_template(saved.aircraft);
            break;
        case Pending::After::template_part:
            lead_on_template();
            break;
        case Pending::After::leave_form:
            host.go_back();
            break;
        case Pending::After::stay_on_files:
            import.reset();
            break;
    }
}

/// After a save the aircraft is shown: the page it was opened from, when that is it already.
void AppState::Inside::lead_to_aircraft(base::Id aircraft) {
    const Place wanted{Place::Kind::aircraft, aircraft};
    const bool came_from_it = places.size() > 1 && places[places.size() - 2].kind == wanted.kind &&
                              places[places.size() - 2].subject == wanted.subject;
    if (came_from_it)
        host.go_back();
    else
        replace(wanted);
}

void AppState::Inside::maybe_snapshot() {
    constexpr std::int32_t often = 50;
    // A snapshot would leave out what a later version may be able to read.
    if (segments_since_snapshot < often || !pending.empty() || has_unread) return;
    host.keep_snapshot(ledger.snapshot());
    segments_since_snapshot = 0;
}

void AppState::Inside::reassess(base::Id aircraft) {
    planned.reset();
    lives.clear();
    routes.reset();
    staggered.reset();
    costed.reset();
    summed.reset();
    auto recorded = views::assess_recorded(ledger.visible(), aircraft, today);
    if (recorded)
        fleet.insert_or_assign(aircraft, std::move(*recorded));
    else
        fleet.erase(aircraft);
}

void AppState::Inside::reassess() {
    fleet.clear();
    worked_out.reset();
    for (const base::Id& id : ledger.visible().aircraft())
        reassess(id);
    dirty = true;
}

const views::Assessed* AppState::Inside::assessed(base::Id aircraft) const {
    const auto found = fleet.find(aircraft);
    return found == fleet.end() ? nullptr : &found->second;
}

const std::vector<timeline::PartState>& AppState::Inside::parts() {
    if (!worked_out) worked_out = timeline::replay_parts(ledger.visible(), today);
    return *worked_out;
}

const timeline::PartState* AppState::Inside::part(base::Id id) {
    const auto found = std::find_if(
        parts().begin(), parts().end(), [&](const auto& each) { return each.id == id; });
    return found == parts().end() ? nullptr : &*found;
}

std::vector<views::Assessed> AppState::Inside::fleet_list() const {
    std::vector<views::Assessed> out;
    for (const auto& [id, aircraft] : fleet)
        out.push_back(aircraft);
    return out;
}

}  // namespace twoclocks::canvas
