#include "wasm/app/table_form.hpp"

#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"
#include "wasm/app/form_template.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"
#include "engine/budget/from_records.hpp"

namespace twoclocks::canvas {
namespace {

using base::Id;
using base::Message;
using base::Trouble;
using base::Word;
using facts::Table;
using facts::TableAsked;

[[nodiscard]] std::vector<facts::Column> columns_of(FormKind kind) {
    if (kind == FormKind::parts_table)
        return {facts::part_columns.begin(), facts::part_columns.end()};
    if (kind == FormKind::price_list)
        return {facts::price_columns.begin(), facts::price_columns.end()};
    return {facts::reading_columns.begin(), facts::reading_columns.end()};
}

[[nodiscard]] std::vector<facts::Column> needed_of(FormKind kind) {
    if (kind == FormKind::parts_table) return {facts::Column::serial, facts::Column::part_number};
    if (kind == FormKind::price_list) return {facts::Column::article, facts::Column::price};
    return {facts::Column::day, facts::Column::hours};
}

/// Columns by their headings; of a price list without any, as most are written.
[[nodiscard]] TableAsked proposed_for(FormKind kind, const Table& table) {
    const std::vector<facts::Column> columns = columns_of(kind);
    TableAsked out = facts::proposed(table, columns);
    if (kind != FormKind::price_list || out.has_headings) return out;
    for (std::size_t at = 0; at < std::min(columns.size(), table.columns); ++at)
        out.of(columns[at]) = at;
    return out;
}

/// The text of the file, or what was pasted.
[[nodiscard]] const std::string& text_of(Form& form) {
    const auto chosen = form.files.find("file");
    return chosen != form.files.end() ? chosen->second : find_field(form, "rows")->text;
}

/// A choice among the columns of the table.
[[nodiscard]] FieldView column_choice(const Table& table,
                                      facts::Column column,
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
    for (const facts::Column column : columns_of(form.kind)) {
        const std::int32_t at = chosen(facts::column_field(column));
        if (at > 0) out.of(column) = static_cast<std::size_t>(at) - 1;
    }
    out.has_headings = chosen("first") == 0;
    const std::int32_t order = chosen("order");
    if (order > 0) out.order = static_cast<base::DayOrder>(order - 1);
    return out;
}

[[nodiscard]] Message told_of_change(const budget::PriceChange& change) {
    const base::Arg name = budget::name_of(change.line);
    if (!change.before) return {Word::table_price_first, {name, base::money_arg(*change.now)}};
    if (!change.now) return {Word::table_price_gone, {name, base::money_arg(*change.before)}};
    return {Word::table_price_change,
            {name, base::money_arg(*change.before), base::money_arg(*change.now)}};
}

}  // namespace

void add_table_fields(Form& form) {
    add_field(form, "file", Word::field_table_file, FieldKind::file, Need::optional);
    add_field(form,
              "rows",
              Word::field_list_rows,
              FieldKind::note,
              Need::optional,
              Word::hint_table_rows);
}

const timeline::AircraftState* chosen_aircraft(const Form& form, const FormContext& context) {
    const Id id = host_of(form, context);
    if (context.fleet == nullptr) return nullptr;
    const auto found = context.fleet->find(id);
    return found == context.fleet->end() ? nullptr : &found->second.state;
}

base::Problems TableForm::problems() {
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
    return facts::unclear(table_, asked_, needed_of(form_.kind));
}

bool TableForm::is_readable(FieldReader& reader) {
    for (base::Problem& problem : problems())
        reader.complain(std::move(problem));
    return reader.sound();
}

Sorted<facts::ReadingRow> TableForm::readings(const timeline::AircraftState& aircraft) const {
    return sorted_readings(table_, asked_, context_, aircraft);
}

Sorted<facts::PartRow> TableForm::parts() const {
    return sorted_parts(table_, asked_, context_);
}

Sorted<facts::PriceLine> TableForm::prices() const {
    const base::Currency home =
        context_.aircraft == nullptr ? base::Currency{} : budget::home_of(*context_.aircraft);
    auto read = facts::price_lines(table_, asked_, home);
    return {std::move(read.rows), 0, std::move(read.faults)};
}

std::vector<Message> TableForm::told() const {
    if (form_.kind == FormKind::parts_table) return told_of(parts(), *context_.region);
    if (form_.kind == FormKind::price_list) return told_of_prices();
    const auto* aircraft = chosen_aircraft(form_, context_);
    return aircraft == nullptr ? std::vector<Message>{}
                               : told_of(readings(*aircraft), *context_.region);
}

std::vector<Message> TableForm::told_of_prices() const {
    Sorted<facts::PriceLine> sorted = prices();
    std::vector<Message> out = told_of(sorted, *context_.region);
    const auto on = base::parse_date(base::without_margins(find_field(form_, "date")->text));
    const bool is_saved =
        sorted.faults.empty() || find_field(form_, "faults")->chosen == leaves_out_faults;
    const bool is_sound = on && on.value() <= context_.today && !sorted.fresh.empty();
    if (context_.aircraft == nullptr || !is_saved || !is_sound) return out;
    timeline::PriceListState said;
    said.list = base::without_margins(find_field(form_, "list")->text);
    said.on = on.value();
    if (said.list.empty()) {
        out.push_back({Word::table_price_unnamed, {}});
        return out;
    }
    for (facts::PriceLine& line : sorted.fresh)
        said.rows.push_back(std::move(line.price));
    const auto changes = budget::price_changes(context_.aircraft->money, std::move(said));
    const auto count = [](std::size_t size) {
        return base::whole_arg(static_cast<std::int64_t>(size));
    };
    out.push_back({Word::table_price_changes, {count(changes.size())}});
    for (std::size_t at = 0; at < std::min(changes.size(), most_told); ++at)
        out.push_back(told_of_change(changes[at]));
    if (changes.size() > most_told)
        out.push_back({Word::table_more_faults, {count(changes.size() - most_told)}});
    return out;
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
    const TableAsked proposed = proposed_for(form.kind, table.value());
    const auto add = [&](FieldView field) {
        keep_entry(field, before);
        form.fields.push_back(std::move(field));
    };
    for (const facts::Column column : columns_of(form.kind))
        add(column_choice(table.value(), column, proposed.of(column), proposed.has_headings));
    add(make_choice("first",
                    Word::field_table_first,
                    {Word::table_first_heading, Word::table_first_row},
                    proposed.has_headings ? 0 : 1));
    if (form.kind == FormKind::readings_table)
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

}  // namespace twoclocks::canvas
