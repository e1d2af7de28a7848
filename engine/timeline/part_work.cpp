// What happens to a part between its fits: papers, work, a rebuild, a move, its end.
#include <algorithm>

#include "engine/timeline/part_life.hpp"

namespace twoclocks::timeline {

using base::Count;
using base::FlightTime;

namespace {

constexpr std::array all_clocks{
    facts::Clock::hours, facts::Clock::calendar, facts::Clock::landings, facts::Clock::starts};

}  // namespace

void Walk::happen(const PartEvent& event, const facts::PartAdded& added) {
    const bool estimated = count_to(event, std::nullopt, true);
    forget_counts();
    if (event.record->open && papers_told_) {
        repeat_papers(event, added);
        return;
    }
    papers_told_ = true;
    // A figure that one version lacks is unknown.
    if (event.record->open && !added.tsn) part_.tsn.reset();
    if (event.record->open && !added.tso) part_.tso.reset();
    const std::optional<FlightTime> before = part_.tso;
    if (added.tsn) clock_.tell_tsn(*added.tsn, estimated, event.on, event.record->root);
    if (added.tso) {
        part_.tso = before ? std::max(*before, *added.tso) : *added.tso;
        part_.tso_estimated = part_.tso_estimated || estimated;
    }
    part_.landings = added.landings;
    part_.starts = added.starts;
}

void Walk::repeat_papers(const PartEvent& event, const facts::PartAdded& added) {
    const std::optional<FlightTime> before = part_.tso;
    if (!added.tsn) part_.tsn.reset();
    if (part_.tsn && *added.tsn > *part_.tsn)
        clock_.tell_tsn(*added.tsn, part_.tsn_estimated, event.on, event.record->root);
    if (!added.tso) part_.tso.reset();
    if (part_.tso) part_.tso = std::max(*before, *added.tso);
    part_.landings.reset();
    part_.starts.reset();
}

void Walk::happen(const PartEvent& event, const facts::PartScrapped& scrapped) {
    while (!open_.empty()) {
        part_.landings.reset();
        part_.starts.reset();
        part_.spells[open_.front().spell].removal = event.record->root;
        end(open_.front(), std::nullopt, true, event.on);
    }
    part_.scrapped_on = event.on;
    part_.scrap_proof = scrapped.proof;
    scrapped_by_ = event.record->root;
}

void Walk::happen(const PartEvent&, const facts::PartMoved& moved) {
    part_.place = moved.place;
    if (!moved.owner.empty()) part_.owner = moved.owner;
    part_.lent_to = moved.lent_to;
    part_.return_by = moved.return_by;
}

void Walk::happen(const PartEvent& event, const facts::PartRebuilt& rebuilt) {
    const bool lacks = one_lacks<facts::PartRebuilt>(
        *event.record, [](const auto& one) { return one.host_total.has_value(); });
    PartEvent at = event;
    if (!open_.empty()) at.host = open_.back().host;
    clock_.start_again(count_to(at, rebuilt.host_total, lacks), event.on);
    part_.landings = part_.starts = Count{0};
    forget_counts();
    part_.rebuilt_on = event.on;
}

void Walk::happen(const PartEvent& event, const facts::WorkDone& work) {
    const bool lacks = one_lacks<facts::WorkDone>(
        *event.record, [](const auto& one) { return one.total.has_value(); });
    const bool estimated = count_to(event, work.total, lacks);
    const Renewed renewed{event.on,
                          part_.tsn,
                          part_.tsn_estimated || estimated,
                          open_.empty() ? part_.landings : std::nullopt,
                          open_.empty() ? part_.starts : std::nullopt,
                          event.record->root};
    bool overhauled = false;
    for (const facts::Renewal& renewal : work.renews) {
        if (renewal.item != part_.id) continue;
        for (const facts::Clock clock : all_clocks) {
            const auto& named = renewal.clocks;
            if (!named.empty() && std::find(named.begin(), named.end(), clock) == named.end())
                continue;
            part_.renewed[static_cast<std::size_t>(clock)] = renewed;
            overhauled = overhauled || clock == facts::Clock::hours;
        }
    }
    if (!overhauled) return;
    part_.tso = FlightTime{0};
    part_.tso_estimated = estimated;
    part_.overhauled_on = event.on;
    ++part_.overhauls_recorded;
    if (part_.overhaul_count) part_.overhaul_count = *part_.overhaul_count + Count{1};
}

bool Walk::count_to(const PartEvent& event, const std::optional<FlightTime>& total, bool lacks) {
    bool estimated = false;
    for (OpenSpell& open : open_) {
        HostTotal to;
        const bool is_of_host = open.host == event.host;
        if (open.line != nullptr) {
            to = least_total(
                *open.line, is_of_host ? total : std::nullopt, lacks || !is_of_host, event.on);
        }
        if (!to.count && open.counted) to = {open.counted, true};
        estimated = estimated || to.estimated || !to.count;
        clock_.advance(open, to.count);
    }
    return estimated;
}

void Walk::forget_counts() {
    for (OpenSpell& open : open_) {
        open.landings.reset();
        open.starts.reset();
    }
}

void Walk::settle_place() {
    if (part_.scrapped_on && part_.whereabouts != Whereabouts::fitted) {
        part_.whereabouts = Whereabouts::scrapped;
    } else if (part_.whereabouts != Whereabouts::fitted && !part_.lent_to.empty()) {
        part_.whereabouts = Whereabouts::lent;
    }
}

}  // namespace twoclocks::timeline
