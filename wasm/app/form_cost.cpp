// What the money of a campaign rests on: lines, rates, price lists, terms.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_keys.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_plan.hpp"
#include "wasm/app/limit_fields.hpp"
#include "wasm/app/record_fields.hpp"

#include <algorithm>
#include <array>

#include "engine/budget/from_records.hpp"
#include "engine/facts/price_rows.hpp"
#include "engine/views/record_money.hpp"
#include "engine/views/record_plan.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;
using facts::CostLine;
using timeline::CostLineState;

/// The fields that most lines have; the others are further settings.
constexpr std::array<std::string_view, 8> usual_fields{"line_name",
                                                       "cost_group",
                                                       "price",
                                                       "quantity_thousandths",
                                                       "tax",
                                                       "tax_permille",
                                                       "taken",
                                                       "said_by"};

[[nodiscard]] const std::vector<CostLineState>& lines_in(const FormContext& context) {
    static const std::vector<CostLineState> none;
    return context.aircraft == nullptr ? none : context.aircraft->money.lines;
}

[[nodiscard]] base::Currency home_in(const FormContext& context) {
    return context.aircraft == nullptr ? base::Currency{} : budget::home_of(*context.aircraft);
}

[[nodiscard]] std::string key_of_line(const CostLineState& line) {
    return line.said.line;
}

[[nodiscard]] std::string key_of_route(const timeline::RouteState& route) {
    return route.said.route;
}

/// The line chosen in the list; null for a new one.
[[nodiscard]] const CostLineState* line_in(const Form& form, const FormContext& context) {
    return chosen_in(form, lines_in(context));
}

void lay_out(Form& form, const FormContext& context) {
    const CostLineState* line = line_in(form, context);
    const CostLine said = line == nullptr ? CostLine{} : line->said;
    form.named = said.line;
    form.fields.resize(1);
    add_record_fields(form, said, home_in(context));
    std::erase_if(form.fields, [](const FieldView& field) { return field.id == "line_key"; });
    find_field(form, "price")->label = {Word::field_one_price, {}};
    const auto name_of_line = [](const CostLineState& one) { return views::cost_name(one.said); };
    choose_key(form, "needs", Word::option_no_other, lines_in(context), key_of_line, name_of_line);
    choose_key(
        form, "excludes", Word::option_no_other, lines_in(context), key_of_line, name_of_line);
    choose_key(form,
               "route_key",
               Word::money_every_route,
               routes_in(context),
               key_of_route,
               [](const timeline::RouteState& one) { return views::route_name(one.said); });
    for (FieldView& field : form.fields)
        field.more =
            field.id != "line" &&
            std::find(usual_fields.begin(), usual_fields.end(), field.id) == usual_fields.end();
    std::stable_partition(
        form.fields.begin(), form.fields.end(), [](const FieldView& field) { return !field.more; });
}

}  // namespace

void make_cost_line(Form& form, const FormContext& context) {
    form.title = Word::form_cost_line;
    form.intro = Word::form_cost_line_intro;
    add_which(form, "line", Word::field_which_line, lines_in(context), [](const auto& one) {
        return views::cost_name(one.said);
    });
    lay_out(form, context);
}

void reshape_cost_line(Form& form, const FormContext& context) {
    const CostLineState* line = line_in(form, context);
    if ((line == nullptr ? std::string{} : line->said.line) != form.named) lay_out(form, context);
}

void choose_cost_line(Form& form, const FormContext& context, const std::string& key) {
    if (choose_in(form, lines_in(context), key_of_line, key)) lay_out(form, context);
}

Facts take_cost_line(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const CostLineState* line = line_in(form, context);
    facts::Fields fields = line == nullptr ? CostLine{} : line->said;
    read_record_fields(reader, fields);
    auto& said = *std::get_if<CostLine>(&fields);
    said.line = line == nullptr ? base::print_id(signer.new_id()) : line->said.line;
    said.needs = chosen_key(reader, "needs", lines_in(context), key_of_line);
    said.excludes = chosen_key(reader, "excludes", lines_in(context), key_of_line);
    said.route = chosen_key(reader, "route_key", routes_in(context), key_of_route);
    check_fields(reader, {context.today, {form.aircraft}, said, {}});
    if (!reader.sound()) return {};
    return signed_today(form, std::move(said), context, signer);
}

void make_exchange_rate(Form& form, const FormContext& context) {
    form.title = Word::form_exchange_rate;
    form.intro = Word::form_exchange_rate_intro;
    facts::ExchangeRate rate;
    rate.to = base::print_currency(home_in(context));
    form.fields.push_back(make_field(
        "date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed));
    add_record_fields(form, rate, {});
    for (const char* id : {"rate_from", "rate_to"})
        find_field(form, id)->kind = FieldKind::code;
    find_field(form, "rate")->kind = FieldKind::decimal;
}

Facts take_exchange_rate(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Fields fields = facts::ExchangeRate{};
    read_record_fields(reader, fields);
    const auto on = reader.date("date");
    if (on && *on > context.today) reader.complain("date", Trouble::form_day_ahead);
    auto& said = *std::get_if<facts::ExchangeRate>(&fields);
    // As people type it; in the record it is written one way.
    std::replace(said.rate.begin(), said.rate.end(), ',', '.');
    for (std::string* const code : {&said.from, &said.to})
        if (const auto currency = base::parse_currency(*code))
            *code = base::print_currency(currency.value());
    check_fields(reader, {on.value_or(context.today), {form.aircraft}, said, {}});
    if (!reader.sound()) return {};
    return {signed_on(*on, form, std::move(said), context, signer)};
}

void make_cost_terms(Form& form, const FormContext& context) {
    form.title = Word::form_cost_terms;
    form.intro = Word::form_cost_terms_intro;
    facts::CostTerms terms =
        context.aircraft == nullptr ? facts::CostTerms{} : context.aircraft->money.terms;
    if (terms.home.empty()) terms.home = base::print_currency(home_in(context));
    add_record_fields(form, terms, {});
    find_field(form, "home_currency")->kind = FieldKind::code;
}

Facts take_cost_terms(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Fields fields = facts::CostTerms{};
    read_record_fields(reader, fields);
    auto& said = *std::get_if<facts::CostTerms>(&fields);
    if (const auto currency = base::parse_currency(said.home))
        said.home = base::print_currency(currency.value());
    check_fields(reader, {context.today, {form.aircraft}, said, {}});
    if (!reader.sound()) return {};
    return signed_today(form, std::move(said), context, signer);
}

}  // namespace twoclocks::canvas
