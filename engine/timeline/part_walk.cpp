#include "engine/timeline/part_walk.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/timeline/part_life.hpp"

namespace twoclocks::timeline {

using base::Count;
using base::Date;
using base::FlightTime;
using base::Id;
using base::Trouble;

namespace {

/// Adds what a host counted between two ends; where one is missing the sum is not known.
void add_count(std::optional<Count>& into,
               const std::optional<Count>& from,
               const std::optional<Count>& to) {
    if (!into) return;
    if (!from || !to) {
        into.reset();
    } else {
        into = *into + std::max(Count{0}, *to - *from);
    }
}

}  // namespace

PartWorks Walk::go(const std::vector<PartEvent>& events) {
    for (const PartEvent& event : events) {
        std::visit([&](const auto& fields) { happen(event, fields); }, event.record->in_use.fields);
    }
    while (!open_.empty())
        run_on(open_.front());
    if (start_is_disputed_) {
        part_.tsn.reset();
        part_.tso.reset();
    }
    clock_.finish(events.empty() ? today_ : events.front().on);
    settle_place();
    return {std::move(works_), clock_.gaps(), clock_.tells()};
}

void Walk::happen(const PartEvent& event, const facts::PartFitted& fitted) {
    const Id fact = event.record->root;
    OpenSpell* same = on_host(event.host);
    if (same != nullptr && part_.spells[same->spell].fit == fact) return;
    if (part_.scrapped_on) {
        doubt(Trouble::part_scrapped_fitted,
              {base::day_arg(*part_.scrapped_on), base::day_arg(event.on)},
              {scrapped_by_, fact});
    }
    for (const OpenSpell& other : open_) {
        const PartSpell& spell = part_.spells[other.spell];
        doubt(Trouble::part_on_two_hosts,
              {base::day_arg(spell.from), base::day_arg(event.on)},
              {spell.fit, fact});
    }
    if (same != nullptr) {
        // Two people recorded one fit: the hours of one of them count.
        part_.spells[same->spell].position = fitted.position;
        return;
    }
    open_.push_back(begin(event, fitted));
    if (!part_.first_fitted) part_.first_fitted = event.on;
}

void Walk::happen(const PartEvent& event, const facts::PartRemoved& removed) {
    OpenSpell* open = on_host(event.host);
    if (open == nullptr) {
        doubt(Trouble::part_removed_unfitted, {base::day_arg(event.on)}, {event.record->root});
        return;
    }
    PartSpell& spell = part_.spells[open->spell];
    spell.temporarily = removed.temporarily;
    spell.removal = event.record->root;
    const bool lacks = one_lacks<facts::PartRemoved>(
        *event.record, [](const auto& one) { return one.host_total.has_value(); });
    doubt_falling(*open, removed.host_total);
    add_count(part_.landings, open->landings, removed.host_landings);
    add_count(part_.starts, open->starts, removed.host_starts);
    end(*open, removed.host_total, lacks, event.on);
    part_.condition = removed.condition;
    part_.place.clear();
}

OpenSpell Walk::begin(const PartEvent& event, const facts::PartFitted& fitted) {
    const HostFound found = host_of_(event.host);
    if (found.in_itself) {
        doubt(Trouble::part_in_itself, {}, {event.record->root});
    } else if (found.line == nullptr) {
        doubt(Trouble::part_host_unknown, {base::day_arg(event.on)}, {event.record->root});
    }
    PartSpell spell;
    spell.from = event.on;
    spell.host = event.host;
    spell.position = fitted.position;
    spell.gained = FlightTime{0};
    spell.fit = event.record->root;
    spell.keeps_status = keeps_status(event, fitted);
    tell_card(event, fitted);
    spell.count = clock_.count();
    OpenSpell open{part_.spells.size(), event.host, found.line, {}, {}, {}, {}};
    if (found.line != nullptr) {
        const bool lacks = one_lacks<facts::PartFitted>(
            *event.record, [](const auto& one) { return one.host_total.has_value(); });
        const HostTotal from = least_total(*found.line, fitted.host_total, lacks, event.on);
        spell.host_is_part = found.line->is_part;
        spell.from_total = own_total(*found.line, from.count, event.on);
        spell.from_estimated = from.estimated || found.line->is_estimated;
        open.from = open.counted = from.count;
        mark(spell.from_estimated);
    }
    open.landings = fitted.host_landings;
    open.starts = fitted.host_starts;
    part_.spells.push_back(std::move(spell));
    return open;
}

void Walk::tell_card(const PartEvent& event, const facts::PartFitted& fitted) {
    if (!fitted.tsn) return;
    const bool lacks = one_lacks<facts::PartFitted>(
        *event.record, [](const auto& one) { return one.tsn.has_value(); });
    // What it flew elsewhere counts since overhaul too; while records disagree, that is unknown.
    if (!part_.questions.empty()) part_.tso.reset();
    if ((lacks || !part_.questions.empty()) && !part_.tsn) {
        start_is_disputed_ = true;
        return;
    }
    clock_.tell_tsn(*fitted.tsn, false, event.on, event.record->root);
}

bool Walk::keeps_status(const PartEvent& event, const facts::PartFitted& fitted) const {
    if (part_.spells.empty() || !open_.empty()) return false;
    const PartSpell& last = part_.spells.back();
    const bool nothing_flown = !fitted.tsn || (part_.tsn && *fitted.tsn <= *part_.tsn);
    return last.temporarily && last.host == event.host && nothing_flown;
}

void Walk::doubt_falling(const OpenSpell& open, const std::optional<FlightTime>& total) {
    const PartSpell& spell = part_.spells[open.spell];
    if (!total || !spell.from_total || spell.from_estimated || *total >= *spell.from_total) return;
    doubt(Trouble::part_total_falls,
          {base::hours_used_arg(*total), base::hours_used_arg(*spell.from_total)},
          {spell.fit, spell.removal});
}

void Walk::end(OpenSpell& open, const std::optional<FlightTime>& total, bool lacks, Date on) {
    PartSpell& spell = part_.spells[open.spell];
    spell.until = on;
    HostTotal to;
    if (open.line != nullptr) {
        to = greatest_total(*open.line, total, lacks, on);
        spell.to_total = own_total(*open.line, to.count, on);
        spell.to_estimated = to.estimated || open.line->is_estimated;
    }
    close(open, to.count, spell.to_estimated, on);
}

void Walk::run_on(OpenSpell& open) {
    std::optional<FlightTime> now;
    bool estimated = false;
    if (open.line != nullptr) {
        if (open.line->is_whole) now = open.line->now;
        estimated = open.line->is_estimated;
        add_count(part_.landings, open.landings, open.line->landings);
        add_count(part_.starts, open.starts, open.line->starts);
        part_.spells[open.spell].to_total = own_total(*open.line, now, today_);
        part_.spells[open.spell].to_estimated = estimated;
    } else {
        part_.landings.reset();
        part_.starts.reset();
    }
    part_.host = open.host;
    part_.position = part_.spells[open.spell].position;
    part_.whereabouts = Whereabouts::fitted;
    close(open, now, estimated, today_);
}

void Walk::close(OpenSpell& open, std::optional<FlightTime> to, bool estimated, Date on) {
    clock_.advance(open, to);
    mark(estimated);
    clock_.keep_points(open, on);
    open_.erase(open_.begin() + (&open - open_.data()));
}

void Walk::mark(bool estimated) {
    part_.tsn_estimated = part_.tsn_estimated || estimated;
    part_.tso_estimated = part_.tso_estimated || estimated;
}

OpenSpell* Walk::on_host(Id host) {
    const auto found = std::find_if(
        open_.begin(), open_.end(), [&](const OpenSpell& open) { return open.host == host; });
    return found == open_.end() ? nullptr : &*found;
}

void Walk::doubt(Trouble code, std::vector<base::Arg> args, std::vector<Id> facts) {
    args.insert(args.begin(), base::text_arg(part_label(part_)));
    part_.problems.push_back({code, std::move(args), base::Severity::caution, std::move(facts)});
}

PartWorks walk_part(const std::vector<PartEvent>& events,
                    base::FunctionRef<HostFound(Id)> host_of,
                    Date today,
                    PartState& part) {
    return Walk{part, host_of, today}.go(events);
}

}  // namespace twoclocks::timeline
