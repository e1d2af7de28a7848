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
    works_.clear();
}

void Walk::happen(const PartEvent& event, const facts::WorkDone& work) {
    const bool lacks = one_lacks<facts::WorkDone>(
        *event.record, [](const auto& one) { return one.total.has_value(); });
    const bool on_itself =
        std::any_of(work.renews.begin(), work.renews.end(), [&](const facts::Renewal& renewal) {
            return renewal.item == part_.id;
        });
    const bool estimated = on_itself && count_to(event, work.total, lacks);
    PartWork by = by_work(event, work, lacks);
    by.renewed.total_estimated = by.renewed.total_estimated || estimated;
    if (on_itself) overhaul(event, work, by.renewed, estimated);
    works_.push_back(std::move(by));
}

void Walk::overhaul(const PartEvent& event,
                    const facts::WorkDone& work,
                    const Renewed& renewed,
                    bool estimated) {
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

PartWork Walk::by_work(const PartEvent& event, const facts::WorkDone& work, bool lacks) {
    PartWork out;
    bool estimated = part_.tsn_estimated;
    FlightTime ahead;
    for (OpenSpell& open : open_) {
        const HostTotal to = total_at(open, event, work.total, lacks);
        const bool is_exact = to.count && !to.estimated;
        if (is_exact) clock_.advance(open, to.count);
        ahead = ahead + PartClock::ahead(open, to.count);
        estimated = estimated || !is_exact;
        out.in_doubt = out.in_doubt || (open.line != nullptr && open.line->is_disputed);
    }
    out.record = event.record;
    out.count = clock_.count() + ahead;
    out.gaps = clock_.gaps();
    out.tells = clock_.tells();
    out.renewed.on = event.on;
    if (part_.tsn) out.renewed.total = *part_.tsn + ahead;
    out.renewed.total_estimated = estimated;
    out.renewed.landings = count_by(event, part_.landings, &OpenSpell::landings, work.landings);
    out.renewed.starts = count_by(event, part_.starts, &OpenSpell::starts, work.starts);
    out.renewed.fact = event.record->root;
    return out;
}

std::optional<Count> Walk::count_by(const PartEvent& event,
                                    const std::optional<Count>& own,
                                    const std::optional<Count> OpenSpell::*at_fit,
                                    const std::optional<Count>& at_work) const {
    if (open_.empty()) return own;
    const OpenSpell& open = open_.front();
    const bool is_known = own && at_work && open.*at_fit && open_.size() == 1;
    if (!is_known || open.host != event.host) return std::nullopt;
    return *own + std::max(Count{0}, *at_work - *(open.*at_fit));
}

HostTotal Walk::total_at(const OpenSpell& open,
                         const PartEvent& event,
                         const std::optional<FlightTime>& total,
                         bool lacks) const {
    if (open.line == nullptr) return {};
    const bool is_of_host = open.host == event.host;
    if (!is_of_host && total && !lacks) {
        // In an assembly: the total is that of the aircraft which the assembly was on.
        const std::optional<FlightTime> count = count_on(*open.line, event.host, *total);
        if (count) return {count, false};
    }
    return least_total(
        *open.line, is_of_host ? total : std::nullopt, lacks || !is_of_host, event.on);
}

bool Walk::count_to(const PartEvent& event, const std::optional<FlightTime>& total, bool lacks) {
    bool estimated = false;
    for (OpenSpell& open : open_) {
        HostTotal to = total_at(open, event, total, lacks);
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
