#include "engine/views/part_views.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/timeline/events.hpp"
#include "engine/views/due_row.hpp"
#include "engine/views/event_view.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/record_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using facts::Journal;
using timeline::PartSpell;
using timeline::PartState;
using timeline::Whereabouts;

[[nodiscard]] Message one_text(Word word, const std::string& text) {
    return {word, {base::text_arg(text)}};
}

[[nodiscard]] Message text_or(Word with, const std::string& text, Word without) {
    return text.empty() ? Message{without, {}} : one_text(with, text);
}

/// The latest version of a record, as far as it is not taken back; for names only.
template <class Kind>
[[nodiscard]] std::optional<Kind> named(const Journal& journal, base::Id id) {
    for (const timeline::Record& record : timeline::resolve(journal, id)) {
        const auto* fields = std::get_if<Kind>(&record.in_use.fields);
        if (record.root == id && fields != nullptr) return *fields;
    }
    return std::nullopt;
}

[[nodiscard]] Message host_name(const Journal& journal, base::Id host) {
    return text_or(Word::as_told, name_of_host(journal, host), Word::part_host_missing);
}

[[nodiscard]] Message days_of(base::Date from, const std::optional<base::Date>& until) {
    if (!until) return {Word::part_spell_open, {base::day_arg(from)}};
    return {Word::part_spell, {base::day_arg(from), base::day_arg(*until)}};
}

/// Days in both of two stretches; nothing when they do not meet.
struct Stretch {
    base::Date from;
    std::optional<base::Date> until;
};

[[nodiscard]] std::optional<Stretch> shared(const Stretch& one, const Stretch& other) {
    Stretch out{std::max(one.from, other.from), one.until};
    if (other.until && (!out.until || *other.until < *out.until)) out.until = other.until;
    if (out.until && *out.until <= out.from) return std::nullopt;
    return out;
}

/// Where an assembly was while a part was in it, through every assembly that it was in itself.
void add_aboard(const Journal& journal,
                base::Id assembly,
                const Stretch& inside,
                base::Date today,
                std::vector<Aboard>& out) {
    for (const PartSpell& spell : timeline::replay_part(journal, assembly, today).spells) {
        const auto both = shared({spell.from, spell.until}, inside);
        if (!both) continue;
        if (spell.host_is_part) {
            add_aboard(journal, spell.host, *both, today, out);
        } else {
            out.push_back({spell.host,
                           both->from,
                           both->until,
                           host_name(journal, spell.host),
                           days_of(both->from, both->until)});
        }
    }
}

[[nodiscard]] Message gained_by(const PartSpell& spell) {
    if (!spell.gained) return {Word::part_gained_none, {}};
    const bool estimated = spell.from_estimated || spell.to_estimated;
    return {estimated ? Word::part_gained_estimate : Word::part_gained,
            {base::hours_used_arg(*spell.gained)}};
}

[[nodiscard]] PartHistoryRow row_of(const Journal& journal,
                                    const PartSpell& spell,
                                    base::Date today) {
    PartHistoryRow row;
    row.host = spell.host;
    if (!spell.host_is_part) row.aircraft = spell.host;
    row.from = spell.from;
    row.until = spell.until;
    row.days = days_of(spell.from, spell.until);
    row.host_name = host_name(journal, spell.host);
    row.position = text_or(Word::as_told, spell.position, Word::blank);
    row.gained = gained_by(spell);
    row.estimated = spell.from_estimated || spell.to_estimated;
    row.keeps_status = spell.keeps_status;
    if (spell.host_is_part)
        add_aboard(journal, spell.host, {spell.from, spell.until}, today, row.aboard);
    row.facts.push_back(spell.fit);
    if (!spell.removal.empty()) row.facts.push_back(spell.removal);
    return row;
}

[[nodiscard]] Message where(const Journal& journal, const PartState& part) {
    switch (part.whereabouts) {
        case Whereabouts::shelf:
            return text_or(Word::part_on_shelf_at, part.place, Word::part_on_shelf);
        case Whereabouts::lent:
            return one_text(Word::part_lent_to, part.lent_to);
        case Whereabouts::scrapped:
            return {Word::part_scrapped_on, {base::day_arg(*part.scrapped_on)}};
        case Whereabouts::fitted:
            break;
    }
    const std::string host = name_of_host(journal, part.host);
    const base::Arg on =
        host.empty() ? base::word_arg(Word::part_host_missing) : base::text_arg(host);
    if (part.position.empty()) return {Word::part_fitted_now, {on}};
    return {Word::part_fitted_now_at, {on, base::text_arg(part.position)}};
}

[[nodiscard]] Message hours_since(const std::optional<base::FlightTime>& time,
                                  bool estimated,
                                  Word certain,
                                  Word estimate,
                                  Word none) {
    if (!time) return {none, {}};
    return {estimated ? estimate : certain, {base::hours_used_arg(*time)}};
}

[[nodiscard]] Message figure(const std::optional<base::FlightTime>& time, bool estimated) {
    return hours_since(
        time, estimated, Word::part_gained, Word::part_gained_estimate, Word::unknown_figure);
}

[[nodiscard]] Message figure_new(const PartState& part) {
    return figure(part.tsn, part.tsn_estimated);
}

[[nodiscard]] Message figure_overhaul(const PartState& part) {
    return figure(part.tso, part.tso_estimated);
}

/// The part where it is: on its aircraft, or by itself when it is on none.
[[nodiscard]] Assessed assess_where_it_is(const Journal& journal,
                                          const PartState& part,
                                          base::Date today) {
    std::optional<Assessed> aboard;
    if (!part.aircraft.empty()) aboard = assess_recorded(journal, part.aircraft, today);
    return aboard ? std::move(*aboard) : assess_part(journal, part, today);
}

/// What hangs on the part.
[[nodiscard]] std::vector<DueRow> due_rows(const Assessed& assessed, const PartState& part) {
    std::vector<DueRow> out;
    for (const std::int32_t place : soonest_first(assessed)) {
        if (assessed.items[static_cast<std::size_t>(place)].part.id == part.id)
            out.push_back(views::make_row(assessed, place));
    }
    return out;
}

void take_troubles(const PartState& part, PartHistoryView& view) {
    for (const timeline::Caution& caution : part.cautions) {
        view.troubles.push_back({caution.code, caution.args, base::Severity::caution, 0, {}});
        view.trouble_facts.push_back({caution.fact});
    }
    for (const timeline::PartProblem& problem : part.problems) {
        view.troubles.push_back({problem.code, problem.args, problem.severity, 0, {}});
        view.trouble_facts.push_back(problem.facts);
    }
}

}  // namespace

std::string name_of_host(const Journal& journal, base::Id host) {
    if (const auto part = named<facts::PartAdded>(journal, host))
        return (part->name.empty() ? part->part_number : part->name) + ' ' + part->serial;
    const auto aircraft = named<facts::AircraftAdded>(journal, host);
    return aircraft ? aircraft->registration : std::string{};
}

Message since_new(const PartState& part) {
    return hours_since(part.tsn,
                       part.tsn_estimated,
                       Word::part_since_new,
                       Word::part_since_new_estimate,
                       Word::part_since_new_none);
}

Message since_overhaul(const PartState& part) {
    return hours_since(part.tso,
                       part.tso_estimated,
                       Word::part_since_overhaul,
                       Word::part_since_overhaul_estimate,
                       Word::part_since_overhaul_none);
}

PartHistoryView part_history(const Journal& journal, const PartState& part, base::Date today) {
    const Assessed assessed = assess_where_it_is(journal, part, today);
    PartHistoryView view;
    view.part = part.id;
    const std::string& name = part.name.empty() ? part.part_number : part.name;
    view.name = {Word::part_named, {base::text_arg(name), base::text_arg(part.serial)}};
    view.part_number = one_text(Word::as_told, part.part_number);
    view.where = where(journal, part);
    view.since_new = told_of_part(assessed, part, &since_new);
    view.since_overhaul = told_of_part(assessed, part, &since_overhaul);
    view.condition = {condition_word(part.condition), {}};
    view.hours_new = told_of_part(assessed, part, &figure_new);
    view.hours_overhaul = told_of_part(assessed, part, &figure_overhaul);
    view.owner = text_or(Word::as_told, part.owner, Word::blank);
    view.returns = part.return_by ? Message{Word::day_figure, {base::day_arg(*part.return_by)}}
                                  : Message{Word::blank, {}};
    view.papers = text_or(Word::as_told, part.papers, Word::blank);
    view.history_unknown = part.history_unknown;
    view.unknown = part.unknown_records > 0 ||
                   std::any_of(part.questions.begin(),
                               part.questions.end(),
                               [](const auto& question) { return question.no_safe_side; });
    for (auto spell = part.spells.rbegin(); spell != part.spells.rend(); ++spell)
        view.rows.push_back(row_of(journal, *spell, today));
    view.questions = make_questions(part.questions);
    view.due = due_rows(assessed, part);
    view.events = make_event_views(timeline::events_of_part(journal, part.id, today));
    take_troubles(part, view);
    return view;
}

PartHistoryView part_history(const Journal& journal, base::Id part, base::Date today) {
    return part_history(journal, timeline::replay_part(journal, part, today), today);
}

std::vector<Why> whys_of(const PartHistoryView& view) {
    std::vector<Why> out;
    for (const EventView& event : view.events)
        out.push_back(event.title.why);
    for (const DueRow& row : view.due)
        add_whys(out, row);
    return out;
}

}  // namespace twoclocks::views
