// A new aircraft with its two limits, and the change of its hour meter.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_template.hpp"
#include "wasm/app/shipped_templates.hpp"

#include "engine/base/message_args.hpp"
#include "engine/timeline/entry.hpp"
#include "engine/timeline/meter_adjust.hpp"

namespace twoclocks::canvas {
namespace {

using base::Date;
using base::FlightTime;
using base::Problem;
using base::Trouble;
using base::Word;

[[nodiscard]] Problem at_field(std::string field, Trouble code, std::vector<base::Arg> args = {}) {
    Problem problem = base::trouble(code, std::move(args));
    problem.field = std::move(field);
    return problem;
}

/// What the form of a new aircraft says, as figures.
struct NewAircraft {
    std::string registration;
    std::optional<FlightTime> limit;
    std::optional<std::int64_t> years;
    std::optional<Date> anchor_on;
    std::optional<FlightTime> anchor_total;
    std::optional<FlightTime> reads;
    std::optional<FlightTime> total;
    std::optional<FlightTime> plan;
    Date today;
};

[[nodiscard]] NewAircraft read_new_aircraft(FieldReader& reader, Date today) {
    NewAircraft out;
    out.today = today;
    out.registration = reader.text("registration");
    out.limit = reader.hours("limit_hours");
    out.years = reader.whole("limit_years");
    out.anchor_on = reader.date("anchor_on");
    out.anchor_total = reader.hours("anchor_total");
    out.reads = reader.hours("reads");
    out.total = reader.hours("total");
    out.plan = reader.hours("plan");
    return out;
}

void check_new_aircraft(const NewAircraft& told, FieldReader& reader) {
    constexpr std::int64_t most_years = 100;
    if (told.limit && told.limit->seconds == 0)
        reader.complain(at_field("limit_hours", Trouble::limit_zero));
    if (told.years && *told.years == 0)
        reader.complain(at_field("limit_years", Trouble::limit_zero));
    if (told.years && *told.years > most_years) {
        reader.complain(
            at_field("limit_years", Trouble::months_absurd, {base::whole_arg(*told.years * 12)}));
    }
    if (!told.limit && !told.years && reader.sound()) {
        reader.complain(at_field("limit_hours", Trouble::limit_without_any));
    }
    if (told.anchor_on && *told.anchor_on > told.today) {
        reader.complain(
            at_field("anchor_on", Trouble::entry_day_ahead, {base::day_arg(*told.anchor_on)}));
    }
    const std::optional<FlightTime> total = told.total ? told.total : told.reads;
    if (told.anchor_total && total && *told.anchor_total > *total) {
        reader.complain(at_field(
            "anchor_total", Trouble::form_anchor_above_total, {base::hours_used_arg(*total)}));
    }
}

[[nodiscard]] facts::LimitSet overhaul_limit(const NewAircraft& told, FieldReader& reader) {
    facts::LimitSet limit;
    limit.limit_class = facts::LimitClass::airworthiness_limitation;
    limit.hours = told.limit;
    if (told.years) limit.months = static_cast<std::int32_t>(*told.years * 12);
    limit.anchor =
        reader.choice("anchor") == 0 ? facts::Anchor::manufacture : facts::Anchor::overhaul;
    limit.anchor_on = told.anchor_on;
    limit.anchor_total = told.anchor_total ? *told.anchor_total : FlightTime{0};
    limit.source = reader.text("source");
    limit.revision = reader.text("revision");
    return limit;
}

/// The overhaul limits of a template, as they are typed.
struct Proposal {
    std::string hours;
    std::string years;
};

[[nodiscard]] Proposal proposal_of(const facts::TypeTemplate& type) {
    constexpr std::int32_t year_months = 12;
    const facts::TemplateItem* item = overhaul_of(type);
    if (item == nullptr) return {};
    Proposal out;
    if (item->limit.hours) out.hours = tenths_text(*item->limit.hours);
    if (item->limit.months) out.years = std::to_string(*item->limit.months / year_months);
    return out;
}

/// Puts a proposal where nothing stands yet, or that of another template; what was typed stays.
template <class Pick>
void propose(FieldView* field, const std::string& text, Pick pick) {
    if (field == nullptr) return;
    bool is_ours = field->text.empty();
    for (const facts::TypeTemplate& type : shipped_templates())
        is_ours = is_ours || field->text == pick(proposal_of(type));
    if (is_ours) field->text = text;
}

/// The overhaul as its template has it, or by its plain name.
[[nodiscard]] facts::ItemAdded overhaul_item(Form& form) {
    const facts::TypeTemplate* type = chosen_template(form);
    const facts::TemplateItem* item = type == nullptr ? nullptr : overhaul_of(*type);
    if (item != nullptr) return item->item;
    return {std::string{base::pattern(Word::item_overhaul)}, facts::ItemRole::overhaul, {}};
}

}  // namespace

std::vector<Word> drive_words() {
    return {Word::drive_collective,
            Word::drive_oil_pressure,
            Word::drive_tachometer,
            Word::drive_electrical,
            Word::drive_other};
}

void make_new_aircraft(Form& form, const FormContext&) {
    form.title = Word::form_new_aircraft;
    form.intro = Word::form_new_aircraft_intro;
    form.submit = Word::form_add_aircraft;
    const auto field =
        [&](const char* id, Word label, FieldKind kind, Need need, Word hint = Word::blank) {
            form.fields.push_back(with_hint(make_field(id, label, kind, {}, need), hint));
        };
    field("registration", Word::field_registration, FieldKind::code, Need::needed);
    form.fields.push_back(template_field());
    field("limit_hours",
          Word::field_limit_hours,
          FieldKind::hours,
          Need::optional,
          Word::hint_limit_hours);
    field("limit_years",
          Word::field_limit_years,
          FieldKind::whole,
          Need::optional,
          Word::hint_limit_years);
    form.fields.push_back(make_choice(
        "anchor", Word::field_anchor, {Word::anchor_manufacture, Word::anchor_overhaul}, 0));
    field("anchor_on", Word::field_anchor_on, FieldKind::date, Need::needed, Word::hint_anchor_on);
    field("anchor_total",
          Word::field_anchor_total,
          FieldKind::hours,
          Need::optional,
          Word::hint_anchor_total);
    field("reads", Word::field_reads_now, FieldKind::hours, Need::needed);
    field("total", Word::field_total_now, FieldKind::hours, Need::optional, Word::hint_total_now);
    field("plan", Word::field_plan_year, FieldKind::hours, Need::optional, Word::hint_plan_year);
    form.fields.push_back(make_choice("drive", Word::field_drive, drive_words(), 0));
    field("type", Word::field_type, FieldKind::text, Need::optional);
    field("serial", Word::field_serial, FieldKind::code, Need::optional);
    field("source", Word::field_source, FieldKind::text, Need::optional, Word::hint_source);
    field("revision", Word::field_revision, FieldKind::text, Need::optional);
}

void propose_overhaul(Form& form) {
    const facts::TypeTemplate* type = chosen_template(form);
    const Proposal chosen = type == nullptr ? Proposal{} : proposal_of(*type);
    propose(find_field(form, "limit_hours"), chosen.hours, [](const Proposal& one) {
        return one.hours;
    });
    propose(find_field(form, "limit_years"), chosen.years, [](const Proposal& one) {
        return one.years;
    });
}

Facts take_new_aircraft(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const NewAircraft told = read_new_aircraft(reader, context.today);
    check_new_aircraft(told, reader);
    facts::LimitSet limit = overhaul_limit(told, reader);
    const facts::TypeTemplate* type = chosen_template(form);
    if (type != nullptr && overhaul_of(*type) != nullptr)
        limit.limit_class = overhaul_of(*type)->limit.limit_class;
    facts::AircraftAdded added{
        told.registration, reader.text("type"), reader.text("serial"), {}, false};
    if (limit.anchor == facts::Anchor::manufacture) added.manufactured = told.anchor_on;
    if (!reader.sound()) return {};
    const base::Id aircraft = signer.new_id();
    const base::Id meter = signer.new_id();
    const base::Id item = signer.new_id();
    const auto drive = static_cast<facts::MeterDrive>(reader.choice("drive"));
    const FlightTime total = told.total ? *told.total : *told.reads;
    const auto sign = [&](base::Id id, std::vector<base::Id> about, facts::Fields fields) {
        return signer.sign(
            id, {context.today, std::move(about), std::move(fields), {}}, context.journal);
    };
    Facts out;
    out.push_back(sign(aircraft, {aircraft}, std::move(added)));
    out.push_back(
        sign(meter, {aircraft, meter}, facts::MeterFitted{{}, drive, *told.reads, total, {}}));
    out.push_back(sign(item, {aircraft, item}, overhaul_item(form)));
    out.push_back(sign(signer.new_id(), {aircraft, item}, limit));
    if (told.plan) {
        const FlightTime month{told.plan->seconds / 12};
        out.push_back(sign(signer.new_id(), {aircraft}, facts::UsagePlanned{month, {}}));
    }
    form.aircraft = aircraft;
    return out;
}

void make_meter_change(Form& form, const FormContext& context) {
    form.title = Word::form_meter_change;
    form.intro = Word::form_meter_change_intro;
    const timeline::MeterState* meter =
        context.aircraft == nullptr ? nullptr : timeline::meter_in_use(*context.aircraft);
    const std::string last =
        meter != nullptr ? tenths_text(meter->last_reads.value_or(meter->reads)) : std::string{};
    const bool first = meter == nullptr;
    form.fields.push_back(make_field(
        "date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed));
    if (!first) {
        form.fields.push_back(
            make_field("old_reads", Word::field_old_reads, FieldKind::hours, last, Need::needed));
    }
    form.fields.push_back(
        make_field("new_reads", Word::field_new_reads, FieldKind::hours, "0", Need::needed));
    if (first) {
        form.fields.push_back(
            make_field("total", Word::field_total_now, FieldKind::hours, {}, Need::needed));
    }
    const std::int32_t drive = meter == nullptr ? 0 : static_cast<std::int32_t>(meter->drive);
    form.fields.push_back(make_choice("drive", Word::field_drive, drive_words(), drive));
    form.fields.push_back(
        make_field("name", Word::field_meter_name, FieldKind::text, {}, Need::optional));
    form.fields.push_back(make_field("why", Word::field_why, FieldKind::text, {}, Need::optional));
}

Facts take_meter_change(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const timeline::MeterState* meter = timeline::meter_in_use(*context.aircraft);
    const auto on = reader.date("date");
    const auto old_reads = meter == nullptr ? std::nullopt : reader.hours("old_reads");
    const auto new_reads = reader.hours("new_reads");
    const auto first_total = meter == nullptr ? reader.hours("total") : std::nullopt;
    if (meter != nullptr && on && old_reads) {
        for (Problem& problem :
             timeline::check_reading(*context.aircraft, *old_reads, *on, context.today)) {
            if (problem.field == "reads") problem.field = "old_reads";
            reader.complain(std::move(problem));
        }
    }
    const std::string name = reader.text("name");
    const std::string why = reader.text("why");
    if (!reader.sound()) return {};
    Facts out;
    FlightTime total = first_total.value_or(FlightTime{0});
    if (meter != nullptr) {
        total = timeline::total_of(*meter, *old_reads, *on);
        out.push_back(
            signer.sign(signer.new_id(),
                        {*on, {form.aircraft, meter->id}, facts::Reading{*old_reads, {}, {}}, {}},
                        context.journal));
    }
    const base::Id id = signer.new_id();
    const auto drive = static_cast<facts::MeterDrive>(reader.choice("drive"));
    facts::MeterFitted fitted{name, drive, *new_reads, total, why};
    out.push_back(
        signer.sign(id, {*on, {form.aircraft, id}, std::move(fitted), {}}, context.journal));
    return out;
}

}  // namespace twoclocks::canvas
