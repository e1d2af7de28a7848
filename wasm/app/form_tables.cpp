// Readings and parts out of a table: nothing is saved before it was shown.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"
#include "wasm/app/table_form.hpp"

#include "engine/base/message_args.hpp"
#include "engine/timeline/entry.hpp"

namespace twoclocks::canvas {
namespace {

using base::Id;
using base::Trouble;
using base::Word;

void add_aircraft(Form& form, const FormContext& context) {
    FieldView field = make_choice(host_field, Word::field_aircraft, {}, 0);
    // Of several none is chosen: the wrong aircraft is one hasty tap away.
    if (context.fleet != nullptr && context.fleet->size() > 1) {
        form.hosts.push_back({});
        field.options.push_back({Word::please_choose, {}});
    }
    add_fleet(form, field, context, Word::as_told);
    form.fields.push_back(std::move(field));
}

}  // namespace

void make_readings_table(Form& form, const FormContext& context) {
    form.title = Word::form_readings_table;
    form.intro = Word::form_table_intro;
    add_aircraft(form, context);
    add_table_fields(form);
}

void make_parts_table(Form& form, const FormContext& context) {
    form.title = Word::form_parts_table;
    form.intro = Word::form_table_intro;
    add_aircraft(form, context);
    form.fields.push_back(make_field(day_field,
                                     Word::field_date,
                                     FieldKind::date,
                                     base::print_date(context.today),
                                     Need::needed));
    add_host_total(form, context);
    add_table_fields(form);
}

Facts take_readings_table(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    TableForm reading{form, context};
    const timeline::AircraftState* aircraft = chosen_aircraft(form, context);
    const timeline::MeterState* meter =
        aircraft == nullptr ? nullptr : timeline::meter_in_use(*aircraft);
    if (meter == nullptr)
        reader.complain(host_field,
                        aircraft == nullptr ? Trouble::form_needed : Trouble::entry_no_meter);
    if (!reading.is_readable(reader)) return {};
    const auto sorted = reading.readings(*aircraft);
    if (!may_save(reader, sorted)) return {};
    form.aircraft = aircraft->id;
    SignedTogether out{signer, context.journal};
    for (const facts::ReadingRow& row : sorted.fresh)
        out.add(signer.new_id(), {row.on, {aircraft->id, meter->id}, row.reading, {}});
    return out.take();
}

Facts take_parts_table(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    TableForm reading{form, context};
    const Id host = host_of(form, context);
    const auto on = read_day(reader, context);
    const auto total = read_host_total(reader, context, host, on);
    if (host.empty()) reader.complain(host_field, Trouble::form_needed);
    if (!reading.is_readable(reader)) return {};
    const auto sorted = reading.parts();
    if (!may_save(reader, sorted)) return {};
    form.aircraft = host;
    SignedTogether out{signer, context.journal};
    for (const facts::PartRow& row : sorted.fresh) {
        const Id part = signer.new_id();
        out.add(part, {*on, {part}, row.part, {}});
        facts::PartFitted fitted;
        fitted.position = row.position;
        fitted.host_total = total;
        out.add(signer.new_id(), {*on, {part, host}, fitted, {}});
    }
    return out.take();
}

}  // namespace twoclocks::canvas
