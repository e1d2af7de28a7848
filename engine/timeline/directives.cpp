#include "engine/timeline/directives.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/facts/interval.hpp"
#include "engine/timeline/directive_links.hpp"
#include "engine/timeline/directive_serials.hpp"
#include "engine/timeline/events.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;
using base::Trouble;
using facts::Applicability;

/// What the directives of one bearer are held against.
struct Ground {
    base::Id bearer;
    bool is_part{false};
    std::string serial;
    std::vector<std::string> numbers;  // of the parts that may be here
    UsageSeries hours;                 // as limits count: no more than had been flown by each day
};

[[nodiscard]] Says number_says(const std::string& number, const std::vector<std::string>& here) {
    if (number.empty() || here.empty()) return Says::nothing;
    const bool is_here = std::find(here.begin(), here.end(), number) != here.end();
    return is_here ? Says::names_this : Says::names_others;
}

/// What both say together: others, where either does.
[[nodiscard]] Says both_say(Says serials, Says number) {
    if (serials == Says::names_others || number == Says::names_others) return Says::names_others;
    return serials == Says::nothing ? number : serials;
}

void add_start(DirectiveState& out, const std::optional<Date>& on, const Ground& ground) {
    const bool known = std::any_of(
        out.starts.begin(), out.starts.end(), [&](const auto& start) { return start.on == on; });
    if (known) return;
    out.starts.push_back({on, on ? hours_by(ground.hours, *on) : std::nullopt});
}

/// Adds what one version decides, held against what it says of serials and part number.
void decide(const Told<facts::Directive>& told, const Ground& ground, DirectiveState& out) {
    const facts::Directive& fields = told.fields;
    out.serials = serials_say(fields.serials, ground.serial);
    out.number = number_says(fields.part_number, ground.numbers);
    const Says says = both_say(out.serials, out.number);
    const bool here = fields.applies == Applicability::applies;
    const bool not_here = fields.applies == Applicability::not_applicable;
    const bool doubted =
        (here && says == Says::names_others) || (not_here && says == Says::names_this);
    out.doubted = out.doubted || doubted;
    out.counts = out.counts || here || doubted;
    out.not_known = out.not_known || (!here && !not_here);
    out.sure = out.sure && here && !doubted;
    if (not_here && !doubted) return;
    out.before_flight = out.before_flight || fields.before_flight;
    add_start(out, fields.effective_on, ground);
}

[[nodiscard]] DirectiveState state_of(const AllTold<facts::Directive>& told,
                                      const Ground& ground,
                                      Date today) {
    DirectiveState out;
    out.told = !told.versions.empty();
    out.disputed = told.disputed || (out.told && told.may_be_none);
    out.may_be_none = told.may_be_none;
    out.counts = told.may_be_none;
    out.sure = out.told && !told.may_be_none;
    for (const Told<facts::Directive>& version : told.versions) {
        decide(version, ground, out);
        const bool in_effect =
            !version.fields.effective_on || *version.fields.effective_on <= today;
        out.sure = out.sure && in_effect;
        out.directive = version.fields;
        out.fact = version.fact;
    }
    if (told.may_be_none || out.starts.empty()) add_start(out, std::nullopt, ground);
    return out;
}

/// What a person should look at in the directive of one item.
void caution_directive(const ItemState& item, const Directives& all, std::vector<Caution>& out) {
    const DirectiveState& directive = *item.directive;
    const base::Arg name = base::text_arg(name_of_directive(item));
    const auto add = [&](Trouble code, std::vector<base::Arg> args) {
        out.push_back({code, std::move(args), directive.fact});
    };
    if (directive.in_ring) add(Trouble::directive_ring, {name});
    if (directive.doubted) {
        const bool here = directive.directive.applies == Applicability::applies;
        add(here ? Trouble::directive_named_others : Trouble::directive_named_here, {name});
    }
    if (!are_readable(directive.directive.serials))
        add(Trouble::directive_serials_unread, {name, base::text_arg(directive.directive.serials)});
    if (names_elsewhere(item.id, all)) add(Trouble::directive_elsewhere, {name});
}

void fold(const std::vector<Record>& records,
          const Ground& ground,
          Date today,
          std::vector<ItemState>& items,
          std::vector<Caution>& cautions) {
    Directives all{items, {}};
    for (const ItemState& item : items)
        all.told.push_back(told_directive(records, ground.bearer, item.id, today));
    for (std::size_t place = 0; place < items.size(); ++place) {
        if (all.told[place].versions.empty() && !is_named(items[place].id, all)) continue;
        DirectiveState state = state_of(all.told[place], ground, today);
        // Another approved way belongs to a directive: a limit that one names has none.
        if (state.told) tell_means(records, ground.bearer, items[place].id, today, state);
        if (state.may_be_none && !state.means.empty()) state.means_in_doubt = true;
        const bool in_doubt = state.disputed || state.means_in_doubt;
        items[place].disputed = items[place].disputed || in_doubt;
        items[place].directive = std::move(state);
    }
    link({records, ground.bearer, ground.is_part, ground.hours, today}, all);
    for (const ItemState& item : items) {
        if (item.directive && item.directive->told) caution_directive(item, all, cautions);
    }
}

[[nodiscard]] bool is_told(const std::vector<Record>& records, bool with_number) {
    return std::any_of(records.begin(), records.end(), [&](const Record& record) {
        return std::any_of(record.heads.begin(), record.heads.end(), [&](const Head& head) {
            const auto* directive =
                head.body == nullptr ? nullptr : std::get_if<facts::Directive>(&head.body->fields);
            return directive != nullptr && (!with_number || !directive->part_number.empty());
        });
    });
}

/// Part numbers of what may be on an aircraft.
[[nodiscard]] std::vector<std::string> numbers_aboard(const facts::Journal& journal,
                                                      base::Id aircraft,
                                                      Date today) {
    std::vector<std::string> out;
    for (const base::Id& part : ever_aboard(journal, aircraft)) {
        const std::vector<base::Id> hosts = may_be_aboard(journal, part, today);
        if (std::find(hosts.begin(), hosts.end(), aircraft) == hosts.end()) continue;
        out.push_back(replay_part(journal, part, today).part_number);
    }
    return out;
}

/// Time since new of a part on the days it is recorded for, never more than it was: of two ways of
/// knowing it the lesser, for a card may have told of hours in between.
[[nodiscard]] UsageSeries least_since_new(const PartState& part) {
    UsageSeries out;
    if (!part.tsn || !part.flown_is_whole || !part.questions.empty()) return out;
    for (const UsagePoint& point : part.flown) {
        std::optional<FlightTime> then;
        for (const PartOffset& offset : part.offsets) {
            if (offset.on <= point.on) then = point.total + offset.tsn_less_count;
        }
        if (!then) continue;
        const FlightTime since = part.flown.back().total - point.total;
        out.push_back({point.on, std::min(*then, *part.tsn - since), point.fact});
    }
    return out;
}

}  // namespace

bool is_wholly_renewed(const ItemState& item) {
    constexpr std::array all{
        facts::Clock::hours, facts::Clock::calendar, facts::Clock::landings, facts::Clock::starts};
    const auto renewed = [&](facts::Clock clock) {
        return item.renewed[static_cast<std::size_t>(clock)].has_value();
    };
    if (std::all_of(all.begin(), all.end(), renewed)) return true;
    if (!item.limit) return false;
    return std::all_of(all.begin(), all.end(), [&](facts::Clock clock) {
        const bool counts = !is_empty(part(repeat_of(*item.limit), clock)) ||
                            !is_empty(part(item.limit->first, clock));
        return !counts || renewed(clock);
    });
}

void fold_directives(const facts::Journal& journal,
                     const std::vector<Record>& records,
                     Date today,
                     AircraftState& state) {
    if (!is_told(records, false)) return;
    Ground ground{state.id, false, state.serial, {}, state.certain};
    if (is_told(records, true)) ground.numbers = numbers_aboard(journal, state.id, today);
    fold(records, ground, today, state.items, state.cautions);
}

void fold_directives(const std::vector<Record>& records, Date today, PartState& part) {
    if (!is_told(records, false)) return;
    const Ground ground{part.id, true, part.serial, {part.part_number}, least_since_new(part)};
    fold(records, ground, today, part.items, part.cautions);
}

}  // namespace twoclocks::timeline
