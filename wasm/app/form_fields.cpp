#include "wasm/app/form_fields.hpp"

#include "wasm/app/written.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"
#include "engine/views/record_care.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;

[[nodiscard]] std::string trimmed(const std::string& text) {
    return std::string{base::without_margins(text)};
}

/// A person said something here, or must.
[[nodiscard]] bool says_something(const FieldView& field) {
    if (field.problem) return true;
    if (field.kind == FieldKind::choice) return field.chosen != field.usual;
    return !trimmed(field.text).empty();
}

/// A hint for every field that takes more than one way of writing.
[[nodiscard]] Word usual_hint(FieldKind kind) {
    if (kind == FieldKind::hours) return Word::hint_hours;
    return kind == FieldKind::money ? Word::hint_money : Word::blank;
}

}  // namespace

FieldView make_field(std::string id, Word label, FieldKind kind, std::string text, Need need) {
    FieldView field;
    field.id = std::move(id);
    field.label = {label, {}};
    field.hint = {usual_hint(kind), {}};
    field.kind = kind;
    field.text = std::move(text);
    field.optional = need == Need::optional;
    return field;
}

FieldView make_choice(std::string id, Word label, std::vector<Word> options, std::int32_t chosen) {
    FieldView field = make_field(std::move(id), label, FieldKind::choice, {}, Need::needed);
    for (const Word option : options)
        field.options.push_back({option, {}});
    field.chosen = chosen;
    return field;
}

FieldView make_money(
    std::string id, Word label, std::string text, base::Currency currency, Need need) {
    FieldView field = make_field(std::move(id), label, FieldKind::money, std::move(text), need);
    for (const base::Currency& each : base::currencies()) {
        if (each == currency) field.chosen = static_cast<std::int32_t>(field.options.size());
        field.options.push_back({Word::as_told, {base::text_arg(base::print_currency(each))}});
    }
    return field;
}

FieldView make_amount(std::string id,
                      Word label,
                      const std::optional<base::Money>& amount,
                      base::Currency otherwise) {
    const base::Currency currency = amount ? amount->currency : otherwise;
    std::string text = amount ? base::print_money(*amount) : std::string{};
    text = text.substr(0, text.find(' '));  // the code stands beside it
    return make_money(std::move(id), label, std::move(text), currency, Need::optional);
}

void add_fleet(Form& form, FieldView& field, const FormContext& context, base::Word word) {
    if (context.fleet == nullptr) return;
    std::vector<std::pair<std::string, base::Id>> fleet;
    for (const auto& [id, aircraft] : *context.fleet)
        fleet.emplace_back(aircraft.state.registration, id);
    std::sort(fleet.begin(), fleet.end());
    for (const auto& [name, id] : fleet) {
        form.hosts.push_back(id);
        field.options.push_back({word, {base::text_arg(name)}});
    }
}

std::vector<QuickFill> quick_days(base::Date today) {
    const base::Date yesterday{today.day_number - 1};
    return {{{Word::chip_today, {}}, base::print_date(today)},
            {{Word::chip_yesterday, {}}, base::print_date(yesterday)}};
}

FieldView with_hint(FieldView field, Word hint) {
    field.hint = {hint, {}};
    return field;
}

std::string tenths_text(base::FlightTime time) {
    return base::print_tenths(time, base::Round::down);
}

void put_apart(Form& form) {
    for (FieldView& field : form.fields)
        field.apart = field.more && !form.asks_more && !says_something(field);
}

FieldView* find_field(Form& form, std::string_view id) {
    const auto found = std::find_if(form.fields.begin(),
                                    form.fields.end(),
                                    [&](const FieldView& field) { return field.id == id; });
    return found == form.fields.end() ? nullptr : &*found;
}

FieldReader::FieldReader(Form& form) : form_(form) {
    form.problems.clear();
    for (FieldView& field : form.fields)
        field.problem.reset();
}

void FieldReader::refuse(FieldView& field, const base::Problem& problem) {
    sound_ = false;
    field.apart = false;
    if (!field.problem) field.problem = problem;
}

void FieldReader::complain(base::Problem problem) {
    sound_ = false;
    FieldView* field = find_field(form_, problem.field);
    if (field != nullptr) {
        refuse(*field, problem);
    } else {
        form_.problems.push_back(std::move(problem));
    }
}

void FieldReader::complain(std::string field, Trouble code, std::vector<base::Arg> args) {
    base::Problem problem = base::trouble(code, std::move(args));
    problem.field = std::move(field);
    complain(std::move(problem));
}

FieldView* FieldReader::filled(std::string_view id) {
    FieldView* field = find_field(form_, id);
    if (field == nullptr) return nullptr;
    if (!trimmed(field->text).empty()) return field;
    if (!field->optional) refuse(*field, base::trouble(Trouble::form_needed));
    return nullptr;
}

std::string FieldReader::text(std::string_view id) {
    FieldView* field = filled(id);
    if (field == nullptr) return {};
    std::string text = trimmed(field->text);
    if (text.size() > static_cast<std::size_t>(facts::longest_text_bytes)) {
        refuse(*field, base::trouble(Trouble::line_text_too_long));
    }
    return text;
}

template <class Value>
std::optional<Value> FieldReader::taken(FieldView& field, const base::Result<Value>& result) {
    if (result) return result.value();
    refuse(field, result.problems().front());
    return std::nullopt;
}

std::optional<base::FlightTime> FieldReader::hours(std::string_view id) {
    FieldView* field = filled(id);
    if (field == nullptr) return std::nullopt;
    return taken(*field, base::parse_flight_time(field->text));
}

std::optional<std::int64_t> FieldReader::whole(std::string_view id) {
    FieldView* field = filled(id);
    if (field == nullptr) return std::nullopt;
    return taken(*field, read_whole(field->text));
}

std::string typed_thousandths(std::int64_t thousandths) {
    constexpr std::int32_t decimals = 3;
    std::string out = views::thousandths_text(thousandths);
    if (!read_decimal(out, decimals)) out += '0';
    return out;
}

std::string typed_tenths(std::int64_t tenths) {
    constexpr std::int64_t ten = 10;
    return std::to_string(tenths / ten) + '.' + std::to_string(tenths % ten);
}

std::optional<std::int64_t> FieldReader::decimal(std::string_view id, std::int32_t decimals) {
    FieldView* field = filled(id);
    if (field == nullptr) return std::nullopt;
    return taken(*field, read_decimal(field->text, decimals));
}

std::optional<base::Money> FieldReader::money(std::string_view id) {
    FieldView* field = filled(id);
    if (field == nullptr) return std::nullopt;
    return taken(*field, read_money(*field));
}

std::optional<base::Date> FieldReader::date(std::string_view id) {
    FieldView* field = filled(id);
    if (field == nullptr) return std::nullopt;
    return taken(*field, base::parse_date(trimmed(field->text)));
}

std::int32_t FieldReader::choice(std::string_view id) {
    const FieldView* field = find_field(form_, id);
    if (field == nullptr || field->options.empty()) return 0;
    return std::clamp(field->chosen, 0, static_cast<std::int32_t>(field->options.size()) - 1);
}

}  // namespace twoclocks::canvas
