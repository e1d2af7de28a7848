// Hours that a meter did not count, hours of a kind of flying, and how fast it uses limits.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/written.hpp"

#include "engine/base/message_args.hpp"
#include "engine/facts/care_fields.hpp"
#include "engine/timeline/entry.hpp"
#include "engine/timeline/meter_adjust.hpp"
#include "engine/views/record_care.hpp"

namespace twoclocks::canvas {
namespace {

using base::Date;
using base::FlightTime;
using base::Trouble;
using base::Word;

constexpr std::int64_t day_hours = 24;

[[nodiscard]] std::vector<Word> reason_words() {
    return {views::adjust_word(facts::AdjustReason::dead),
            views::adjust_word(facts::AdjustReason::rolled_over),
            views::adjust_word(facts::AdjustReason::other)};
}

[[nodiscard]] std::vector<Word> kind_words() {
    std::vector<Word> out;
    for (auto kind = static_cast<std::int32_t>(facts::Operation::ordinary);
         kind <= static_cast<std::int32_t>(facts::Operation::other);
         ++kind)
        out.push_back(views::operation_word(static_cast<facts::Operation>(kind)));
    return out;
}

void check_day(const std::optional<Date>& on, Date today, const char* field, FieldReader& reader) {
    if (on && *on > today) reader.complain(field, Trouble::form_day_ahead, {base::day_arg(*on)});
}

/// More than a clock has since the meter was fitted cannot be missing; a rollover only makes good
/// what the reading fell by.
void check_missing(const timeline::MeterState& meter,
                   const facts::MeterAdjusted& adjusted,
                   Date on,
                   FieldReader& reader) {
    if (adjusted.hours.seconds == 0) reader.complain("hours", Trouble::form_adjust_nothing);
    if (on < meter.fitted_on) {
        reader.complain("date", Trouble::entry_before_meter, {base::day_arg(meter.fitted_on)});
        return;
    }
    const std::int64_t most = (base::days_between(meter.fitted_on, on) + 1) * day_hours;
    const bool at_once = adjusted.reason != facts::AdjustReason::rolled_over;
    if (at_once && adjusted.hours > base::hours(most)) {
        reader.complain("hours",
                        Trouble::form_adjust_absurd,
                        {base::whole_arg(most), base::day_arg(meter.fitted_on)});
    }
}

/// Whether the total goes on from what is recorded: as a reading that the hours are on record for.
void check_total(const FormContext& context,
                 const facts::MeterAdjusted& adjusted,
                 Date on,
                 FieldReader& reader) {
    timeline::AircraftState state = *context.aircraft;
    state.meters.back().adjusted.push_back(
        {on, adjusted.hours, adjusted.reads, adjusted.reason, adjusted.source, {}});
    for (base::Problem& problem :
         timeline::check_reading(state, adjusted.reads, on, context.today)) {
        if (problem.code == Trouble::entry_day_ahead) continue;
        reader.complain(std::move(problem));
    }
}

/// The kind of flying that mostly uses more.
void add_operation(Form& form) {
    form.fields.push_back(make_choice("operation",
                                      Word::field_operation,
                                      kind_words(),
                                      static_cast<std::int32_t>(facts::Operation::agricultural)));
}

}  // namespace

void make_adjust(Form& form, const FormContext& context) {
    form.title = Word::form_adjust;
    form.intro = Word::form_adjust_intro;
    const timeline::MeterState* meter =
        context.aircraft == nullptr ? nullptr : timeline::meter_in_use(*context.aircraft);
    const std::string last =
        meter != nullptr ? tenths_text(meter->last_reads.value_or(meter->reads)) : std::string{};
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    form.fields.push_back(make_choice("reason", Word::field_reason, reason_words(), 0));
    field("date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed);
    field("hours", Word::field_added_hours, FieldKind::hours, {}, Need::needed);
    form.fields.back().hint = {Word::hint_adjust, {}};
    field("reads", Word::field_reads_after, FieldKind::hours, last, Need::needed);
    field("source", Word::field_adjust_source, FieldKind::text, {}, Need::needed);
    field("why", Word::field_why, FieldKind::text, {}, Need::optional);
}

Facts take_adjust(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const timeline::MeterState* meter = timeline::meter_in_use(*context.aircraft);
    facts::MeterAdjusted adjusted;
    adjusted.reason = static_cast<facts::AdjustReason>(reader.choice("reason"));
    const auto on = reader.date("date");
    const auto hours = reader.hours("hours");
    const auto reads = reader.hours("reads");
    adjusted.source = reader.text("source");
    adjusted.why = reader.text("why");
    check_day(on, context.today, "date", reader);
    if (meter == nullptr) reader.complain("reads", Trouble::entry_no_meter);
    if (meter != nullptr && on && hours && reads) {
        adjusted.hours = *hours;
        adjusted.reads = *reads;
        check_missing(*meter, adjusted, *on, reader);
        if (reader.sound()) check_total(context, adjusted, *on, reader);
    }
    if (!reader.sound()) return {};
    facts::Body body{*on, {form.aircraft, meter->id}, std::move(adjusted), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_flown_as(Form& form, const FormContext& context) {
    form.title = Word::form_flown_as;
    form.intro = Word::form_flown_as_intro;
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    add_operation(form);
    field("hours", Word::field_flown_hours, FieldKind::hours, {}, Need::needed);
    field("from", Word::field_first_day, FieldKind::date, {}, Need::optional);
    form.fields.back().hint = {Word::hint_first_day, {}};
    field("date",
          Word::field_last_day,
          FieldKind::date,
          base::print_date(context.today),
          Need::needed);
    field("why", Word::field_why, FieldKind::text, {}, Need::optional);
}

Facts take_flown_as(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::FlownAs flown;
    flown.operation = static_cast<facts::Operation>(reader.choice("operation"));
    const auto hours = reader.hours("hours");
    flown.from = reader.date("from");
    const auto on = reader.date("date");
    flown.why = reader.text("why");
    check_day(on, context.today, "date", reader);
    if (on && flown.from && *flown.from > *on)
        reader.complain("from", Trouble::form_ends_before_start);
    if (hours && on && reader.sound()) {
        const std::int64_t most =
            (base::days_between(flown.from.value_or(*on), *on) + 1) * day_hours;
        flown.hours = *hours;
        if (*hours > base::hours(most))
            reader.complain("hours", Trouble::form_flown_absurd, {base::whole_arg(most)});
    }
    if (!reader.sound()) return {};
    facts::Body body{*on, {form.aircraft}, std::move(flown), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_factor(Form& form, const FormContext& context) {
    form.title = Word::form_factor;
    form.intro = Word::form_factor_intro;
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    add_operation(form);
    field("factor", Word::field_factor_thousandths, FieldKind::decimal, {}, Need::needed);
    form.fields.back().hint = {Word::hint_factor, {}};
    FieldView items = make_choice("item", Word::field_factor_item, {Word::factor_all}, 0);
    if (context.aircraft != nullptr) {
        for (const timeline::ItemState& item : context.aircraft->items)
            items.options.push_back({Word::as_told, {base::text_arg(item.name)}});
    }
    form.fields.push_back(std::move(items));
    field("date", Word::field_from, FieldKind::date, base::print_date(context.today), Need::needed);
    field("source", Word::field_source, FieldKind::text, {}, Need::needed);
    field("revision", Word::field_revision, FieldKind::text, {}, Need::optional);
}

Facts take_factor(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    constexpr std::int64_t whole = 1000;
    facts::HoursFactor said;
    said.operation = static_cast<facts::Operation>(reader.choice("operation"));
    const auto factor = reader.decimal("factor", field_decimals);
    const auto item = static_cast<std::size_t>(reader.choice("item"));
    const auto on = reader.date("date");
    said.source = reader.text("source");
    said.revision = reader.text("revision");
    check_day(on, context.today, "date", reader);
    if (factor && (*factor < whole || *factor > facts::most_factor_thousandths)) {
        reader.complain("factor",
                        Trouble::form_factor_absurd,
                        {base::whole_arg(facts::most_factor_thousandths / whole)});
    }
    if (!reader.sound()) return {};
    said.factor_thousandths = static_cast<std::int32_t>(*factor);
    std::vector<base::Id> about{form.aircraft};
    if (item > 0 && item <= context.aircraft->items.size())
        about.push_back(context.aircraft->items[item - 1].id);
    facts::Body body{*on, std::move(about), std::move(said), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

}  // namespace twoclocks::canvas
