// Readings and parts out of a table: which column holds what, what is read, and what cannot be.
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"
#include "wasm/app/form_template.hpp"
#include "wasm/app/table_sorted.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"
#include "engine/timeline/entry.hpp"

namespace twoclocks::canvas {
namespace {

using base::Id;
using base::Message;
using base::Trouble;
using base::Word;
using facts::Column;
using facts::Table;
using facts::TableAsked;

[[nodiscard]] bool is_of_parts(const Form& form) {
    return form.kind == FormKind::parts_table;
}

[[nodiscard]] std::vector<Column> columns_of(const Form& form) {
    if (is_of_parts(form)) return {facts::part_columns.begin(), facts::part_columns.end()};
    return {facts::reading_columns.begin(), facts::reading_columns.end()};
}

[[nodiscard]] std::vector<Column> needed_of(const Form& form) {
    if (is_of_parts(form)) return {Column::serial, Column::part_number};
    return {Column::day, Column::hours};
}

/// The text of the file, or what was pasted.
[[nodiscard]] const std::string& text_of(Form& form) {
    const auto chosen = form.files.find("file");
    return chosen != form.files.end() ? chosen->second : find_field(form, "rows")->text;
}

/// The aircraft that is chosen, null for none.
[[nodiscard]] const timeline::AircraftState* chosen_aircraft(const Form& form,
                                                             const FormContext& context) {
    const Id id = host_of(form, context);
    if (context.fleet == nullptr) return nullptr;
    const auto found = context.fleet->find(id);
    return found == context.fleet->end() ? nullptr : &found->second.state;
}

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

void begin(Form& form, const FormContext& context) {
    form.intro = Word::form_table_intro;
    add_aircraft(form, context);
    if (is_of_parts(form)) {
        form.fields.push_back(make_field(day_field,
                                         Word::field_date,
                                         FieldKind::date,
                                         base::print_date(context.today),
                                         Need::needed));
        add_host_total(form, context);
    }
    add_field(form, "file", Word::field_table_file, FieldKind::file, Need::optional);
    add_field(form,
              "rows",
              Word::field_list_rows,
              FieldKind::note,
              Need::optional,
              Word::hint_table_rows);
}

/// A choice among the columns of the table.
[[nodiscard]] FieldView column_choice(const Table& table,
                                      Column column,
                                      const std::optional<std::size_t>& proposed,
                                      bool is_headed) {
    FieldView field = make_choice(facts::column_field(column), Word::field_table_column, {}, 0);
    field.label.args = {base::word_arg(facts::column_word(column))};
    field.options.push_back({Word::table_column_none, {}});
    const std::vector<std::string>& first = table.rows.front().fields;
    for (std::size_t at = 0; at < table.columns; ++at) {
        const base::Arg number = base::whole_arg(static_cast<std::int64_t>(at) + 1);
        const std::string heading = at < first.size() ? first[at] : std::string{};
        if (is_headed && !heading.empty())
            field.options.push_back(
                {Word::table_column_headed, {number, base::excerpt_arg(heading)}});
        else
            field.options.push_back({Word::table_column_plain, {number}});
    }
    field.chosen = proposed ? static_cast<std::int32_t>(*proposed) + 1 : 0;
    field.usual = field.chosen;
    field.alike = true;
    return field;
}

/// What the fields say of the table.
[[nodiscard]] TableAsked asked_in(Form& form) {
    TableAsked out;
    const auto chosen = [&](std::string_view id) {
        const FieldView* field = find_field(form, id);
        return field == nullptr ? 0 : field->chosen;
    };
    for (const Column column : columns_of(form)) {
        const std::int32_t at = chosen(facts::column_field(column));
        if (at > 0) out.of(column) = static_cast<std::size_t>(at) - 1;
    }
    out.has_headings = chosen("first") == 0;
    const std::int32_t order = chosen("order");
    if (order > 0) out.order = static_cast<base::DayOrder>(order - 1);
    return out;
}

/// The table of a form while it is sorted; a form without one has a problem instead.
class TableForm {
  public:
    TableForm(Form& form, const FormContext& context) : form_(form), context_(context) {}

    /// What keeps the rows from being read, each at its field.
    [[nodiscard]] base::Problems problems() {
        const bool is_file = form_.files.count("file") > 0;
        if (is_file && !base::without_margins(find_field(form_, "rows")->text).empty()) {
            base::Problem problem = base::trouble(Trouble::table_two_sources);
            problem.field = "rows";
            return {problem};
        }
        const base::Result<Table> table = facts::read_table(text_of(form_));
        if (!table) {
            base::Problem problem = table.problems().front();
            problem.field = is_file ? "file" : "rows";
            return {problem};
        }
        table_ = table.value();
        asked_ = asked_in(form_);
        return facts::unclear(table_, asked_, needed_of(form_));
    }

    [[nodiscard]] Sorted<facts::ReadingRow> readings(
        const timeline::AircraftState& aircraft) const {
        return sorted_readings(table_, asked_, context_, aircraft);
    }

    [[nodiscard]] Sorted<facts::PartRow> parts() const {
        return sorted_parts(table_, asked_, context_);
    }

    [[nodiscard]] std::vector<Message> told() const {
        if (is_of_parts(form_)) return told_of(parts(), *context_.region);
        const auto* aircraft = chosen_aircraft(form_, context_);
        if (aircraft == nullptr) return {};
        return told_of(readings(*aircraft), *context_.region);
    }

  private:
    Form& form_;
    const FormContext& context_;
    Table table_;
    TableAsked asked_;
};

/// True when the rows may be saved; otherwise the form complains.
template <class Row>
[[nodiscard]] bool may_save(FieldReader& reader, const Sorted<Row>& sorted) {
    const bool leaves_out = reader.choice("faults") == 1;
    if (!sorted.faults.empty() && !leaves_out)
        reader.complain("faults",
                        Trouble::table_rows_faulty,
                        {base::whole_arg(static_cast<std::int64_t>(sorted.faults.size()))});
    else if (sorted.fresh.empty())
        reader.complain(base::trouble(Trouble::table_nothing_new));
    return reader.sound();
}

[[nodiscard]] bool is_readable(TableForm& reading, FieldReader& reader) {
    for (base::Problem& problem : reading.problems())
        reader.complain(std::move(problem));
    return reader.sound();
}

}  // namespace

void make_readings_table(Form& form, const FormContext& context) {
    form.title = Word::form_readings_table;
    begin(form, context);
}

void make_parts_table(Form& form, const FormContext& context) {
    form.title = Word::form_parts_table;
    begin(form, context);
}

void reshape_table(Form& form, const FormContext& context) {
    const auto first_of_table =
        std::find_if(form.fields.begin(), form.fields.end(), [](const FieldView& field) {
            return field.id.starts_with("column-");
        });
    std::vector<FieldView> before{first_of_table, form.fields.end()};
    form.fields.erase(first_of_table, form.fields.end());
    const base::Result<Table> table = facts::read_table(text_of(form));
    if (!table || context.region == nullptr) return;
    std::string headings;
    for (const std::string& cell : table.value().rows.front().fields)
        headings += cell + '\n';
    // Another table: what was chosen for the last one says nothing of it.
    if (std::exchange(form.headings, headings) != headings) before.clear();
    const std::vector<Column> columns = columns_of(form);
    const TableAsked proposed = facts::proposed(table.value(), columns);
    const auto add = [&](FieldView field) {
        keep_entry(field, before);
        form.fields.push_back(std::move(field));
    };
    for (const Column column : columns)
        add(column_choice(table.value(), column, proposed.of(column), proposed.has_headings));
    add(make_choice("first",
                    Word::field_table_first,
                    {Word::table_first_heading, Word::table_first_row},
                    proposed.has_headings ? 0 : 1));
    if (!is_of_parts(form))
        add(make_choice(
            "order",
            Word::field_day_order,
            {Word::please_choose, Word::day_order_dmy, Word::day_order_mdy, Word::day_order_ymd},
            0));
    add(make_choice("faults",
                    Word::field_table_faults,
                    {Word::table_faults_stop, Word::table_faults_leave},
                    0));
    TableForm reading{form, context};
    if (reading.problems().empty()) form.fields.back().told = reading.told();
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
    if (!is_readable(reading, reader)) return {};
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
    if (!is_readable(reading, reader)) return {};
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
