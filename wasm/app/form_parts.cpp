#include "wasm/app/form_parts.hpp"

#include <algorithm>
#include <set>

#include "engine/base/message_args.hpp"
#include "engine/facts/check.hpp"
#include "engine/timeline/entry.hpp"

namespace twoclocks::canvas {
namespace {

using base::Date;
using base::FlightTime;
using base::Id;
using base::Trouble;
using base::Word;
using timeline::PartState;

[[nodiscard]] const timeline::AircraftState* aircraft_in(const FormContext& context, Id aircraft) {
    if (context.fleet == nullptr) return nullptr;
    const auto found = context.fleet->find(aircraft);
    return found == context.fleet->end() ? nullptr : &found->second.state;
}

/// True when `host` is the part, or ever was in it by way of any others: then it can never hold it.
[[nodiscard]] bool is_inside(const FormContext& context, Id host, Id part) {
    std::set<Id> seen;
    std::vector<Id> left{host};
    while (!left.empty()) {
        const Id one = left.back();
        left.pop_back();
        if (one == part) return true;
        const PartState* state = part_in(context, one);
        if (state == nullptr || !seen.insert(one).second) continue;
        for (const timeline::PartSpell& spell : state->spells)
            left.push_back(spell.host);
    }
    return false;
}

/// The field that a trouble of a part's record is seen beside.
[[nodiscard]] std::string field_of(Trouble code) {
    if (code == Trouble::part_total_falls) return host_total_field;
    if (code == Trouble::part_tsn_falls) return "tsn";
    if (code == Trouble::part_in_itself || code == Trouble::part_host_unknown) return host_field;
    return day_field;
}

[[nodiscard]] bool same(const timeline::PartProblem& left, const timeline::PartProblem& right) {
    return left.code == right.code && left.facts == right.facts;
}

}  // namespace

const PartState* part_in(const FormContext& context, Id part) {
    if (context.parts == nullptr) return nullptr;
    const auto found = std::find_if(context.parts->begin(),
                                    context.parts->end(),
                                    [&](const PartState& each) { return each.id == part; });
    return found == context.parts->end() ? nullptr : &*found;
}

const PartState* part_with_item(const FormContext& context, Id item) {
    if (context.parts == nullptr) return nullptr;
    for (const PartState& part : *context.parts) {
        for (const timeline::ItemState& each : part.items) {
            if (each.id == item) return &part;
        }
    }
    return nullptr;
}

void begin_part_form(Form& form, const FormContext& context, Word title, Word intro) {
    form.title = title;
    form.intro = intro;
    if (const PartState* part = part_in(context, form.subject)) {
        form.named = timeline::part_label(*part);
        form.aircraft = part->aircraft;
    }
    form.fields.push_back(make_field(day_field,
                                     Word::field_date,
                                     FieldKind::date,
                                     base::print_date(context.today),
                                     Need::needed));
}

void add_field(Form& form, const char* id, Word label, FieldKind kind, Need need, Word hint) {
    FieldView field = make_field(id, label, kind, {}, need);
    if (hint != Word::blank) field = with_hint(std::move(field), hint);
    form.fields.push_back(std::move(field));
}

void add_truth(Form& form, const char* id, Word label, Word hint) {
    form.fields.push_back(
        with_hint(make_choice(id, label, {Word::choice_no, Word::choice_yes}, 0), hint));
}

void add_hosts(Form& form, const FormContext& context, Id part, Id chosen) {
    FieldView field = make_choice(host_field, Word::field_fitted_to, {}, 0);
    const auto add = [&](Id id, base::Message name) {
        if (id == chosen) field.chosen = static_cast<std::int32_t>(form.hosts.size());
        form.hosts.push_back(id);
        field.options.push_back(std::move(name));
    };
    add({}, {Word::field_fitted_none, {}});
    if (context.fleet != nullptr) {
        for (const auto& [id, aircraft] : *context.fleet)
            add(id, {Word::as_told, {base::text_arg(aircraft.state.registration)}});
    }
    if (context.parts != nullptr) {
        for (const PartState& each : *context.parts) {
            const bool scrapped = each.whereabouts == timeline::Whereabouts::scrapped;
            if (scrapped || (!part.empty() && is_inside(context, each.id, part))) continue;
            add(each.id, {Word::as_told, {base::text_arg(timeline::part_label(each))}});
        }
    }
    form.fields.push_back(std::move(field));
}

void add_host_total(Form& form, const FormContext& context) {
    add_field(form,
              host_total_field,
              Word::field_host_total,
              FieldKind::hours,
              Need::optional,
              Word::hint_host_total);
    const auto total = known_total(context, host_of(form, context), context.today);
    form.own_total = total ? tenths_text(*total) : std::string{};
    form.fields.back().text = form.own_total;
}

Id host_of(const Form& form, const FormContext& context) {
    for (const FieldView& field : form.fields) {
        if (field.id != host_field) continue;
        const auto place = static_cast<std::size_t>(std::max(0, field.chosen));
        return place < form.hosts.size() ? form.hosts[place] : Id{};
    }
    const PartState* part = part_in(context, form.subject);
    return part == nullptr ? Id{} : part->host;
}

std::optional<FlightTime> known_total(const FormContext& context, Id host, Date on) {
    if (const PartState* part = part_in(context, host)) {
        const bool known = on == context.today && !part->tsn_estimated;
        return known ? part->tsn : std::nullopt;
    }
    const timeline::AircraftState* aircraft = aircraft_in(context, host);
    if (aircraft == nullptr) return std::nullopt;
    const timeline::UsagePoint* last = nullptr;
    for (const timeline::UsagePoint& point : aircraft->usage) {
        if (point.on <= on) last = &point;
    }
    if (last == nullptr) return std::nullopt;
    const bool flown_since = aircraft->usage.back().on > on && last->on != on;
    return flown_since ? std::nullopt : std::optional{last->total};
}

void complain(FieldReader& reader, std::string field, Trouble code, std::vector<base::Arg> args) {
    base::Problem problem = base::trouble(code, std::move(args));
    problem.field = std::move(field);
    reader.complain(std::move(problem));
}

std::optional<Date> read_day(FieldReader& reader,
                             const FormContext& context,
                             std::string_view field) {
    const auto on = reader.date(field);
    if (on && *on > context.today)
        complain(reader, std::string{field}, Trouble::form_day_ahead, {base::day_arg(*on)});
    return on;
}

std::optional<FlightTime> read_host_total(FieldReader& reader,
                                          const FormContext& context,
                                          Id host,
                                          const std::optional<Date>& on) {
    auto total = reader.hours(host_total_field);
    // The field shows tenths; what it was filled with has its seconds.
    const auto known = total && on ? known_total(context, host, *on) : std::nullopt;
    if (known && tenths_text(*known) == tenths_text(*total)) total = known;
    const timeline::AircraftState* aircraft = aircraft_in(context, host);
    if (!total || !on || *on > context.today || aircraft == nullptr) return total;
    for (base::Problem& problem : timeline::check_total(*aircraft, *total, *on)) {
        problem.field = host_total_field;
        reader.complain(std::move(problem));
    }
    return total;
}

std::optional<base::Count> read_count(FieldReader& reader, std::string_view field) {
    const auto told = reader.whole(field);
    if (!told) return std::nullopt;
    return base::Count{*told};
}

void refuse_new_troubles(FieldReader& reader,
                         const FormContext& context,
                         Id part,
                         const std::vector<facts::Fact>& facts) {
    facts::Journal after = context.journal;
    for (const facts::Fact& fact : facts) {
        for (base::Problem& problem : facts::check(fact.body))
            reader.complain(std::move(problem));
        (void)after.add(fact);
    }
    if (!reader.sound()) return;
    const PartState was = timeline::replay_part(context.journal, part, context.today);
    for (timeline::PartProblem& problem :
         timeline::replay_part(after, part, context.today).problems) {
        const bool known = std::any_of(was.problems.begin(),
                                       was.problems.end(),
                                       [&](const auto& each) { return same(each, problem); });
        if (!known) complain(reader, field_of(problem.code), problem.code, problem.args);
    }
}

void follow_change(Form& form, std::string_view field, const FormContext& context) {
    FieldView* total = find_field(form, host_total_field);
    const bool of_host = field == host_field;
    if (total == nullptr || (!of_host && field != day_field)) return;
    // What a person typed stands when the day moves, and is of nothing when the host changes.
    if (!of_host && total->text != form.own_total) return;
    const FieldView* day = find_field(form, day_field);
    const base::Result<Date> on = base::parse_date(day == nullptr ? std::string{} : day->text);
    if (!on && !of_host) return;
    const auto known =
        known_total(context, host_of(form, context), on ? on.value() : context.today);
    form.own_total = known ? tenths_text(*known) : std::string{};
    total->text = form.own_total;
    total->problem.reset();
}

void adopt_total(Form& form, const FormContext& context) {
    const FieldView* total = find_field(form, host_total_field);
    const FieldView* day = find_field(form, day_field);
    if (total == nullptr || day == nullptr) return;
    const base::Result<Date> on = base::parse_date(day->text);
    if (!on) return;
    const auto known = known_total(context, host_of(form, context), on.value());
    form.own_total = known ? tenths_text(*known) : std::string{};
}

}  // namespace twoclocks::canvas
