#include "wasm/app/form_fields.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Trouble;
using base::Word;

[[nodiscard]] std::string trimmed(const std::string& text) {
    const std::size_t from = text.find_first_not_of(" \t\r\n");
    if (from == std::string::npos) return {};
    return text.substr(from, text.find_last_not_of(" \t\r\n") - from + 1);
}

}  // namespace

FieldView make_field(std::string id, Word label, FieldKind kind, std::string text, Need need) {
    FieldView field;
    field.id = std::move(id);
    field.label = {label, {}};
    field.hint = {Word::blank, {}};
    field.kind = kind;
    field.text = std::move(text);
    field.optional = need == Need::optional;
    return field;
}

FieldView make_choice(std::string id, Word label, std::vector<Word> options, std::int32_t chosen) {
    FieldView field = make_field(std::move(id), label, FieldKind::text, {}, Need::needed);
    for (const Word option : options)
        field.options.push_back({option, {}});
    field.chosen = chosen;
    return field;
}

FieldView with_hint(FieldView field, Word hint) {
    field.hint = {hint, {}};
    return field;
}

std::string tenths_text(base::FlightTime time) {
    return base::print_tenths(time, base::Round::down);
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
    if (!field.problem) field.problem = problem;
}

void FieldReader::complain(base::Problem problem) {
    sound_ = false;
    FieldView* field = find_field(form_, problem.field);
    if (field != nullptr) {
        if (!field->problem) field->problem = std::move(problem);
    } else {
        form_.problems.push_back(std::move(problem));
    }
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

std::optional<base::FlightTime> FieldReader::hours(std::string_view id) {
    FieldView* field = filled(id);
    if (field == nullptr) return std::nullopt;
    const base::Result<base::FlightTime> time = base::parse_flight_time(field->text);
    if (time) return time.value();
    refuse(*field, time.problems().front());
    return std::nullopt;
}

std::optional<std::int64_t> FieldReader::whole(std::string_view id) {
    FieldView* field = filled(id);
    if (field == nullptr) return std::nullopt;
    const std::string text = trimmed(field->text);
    constexpr std::size_t most_digits = 9;
    const bool digits =
        text.find_first_not_of("0123456789") == std::string::npos && text.size() <= most_digits;
    if (digits) return std::stoll(text);
    refuse(*field, base::trouble(Trouble::form_not_whole, {base::text_arg(text)}));
    return std::nullopt;
}

std::optional<base::Date> FieldReader::date(std::string_view id) {
    FieldView* field = filled(id);
    if (field == nullptr) return std::nullopt;
    const base::Result<base::Date> date = base::parse_date(trimmed(field->text));
    if (date) return date.value();
    refuse(*field, date.problems().front());
    return std::nullopt;
}

std::int32_t FieldReader::choice(std::string_view id) {
    const FieldView* field = find_field(form_, id);
    if (field == nullptr || field->options.empty()) return 0;
    return std::clamp(field->chosen, 0, static_cast<std::int32_t>(field->options.size()) - 1);
}

}  // namespace twoclocks::canvas
