// What is recorded of payments, of shares of prices and of the reserve.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_keys.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_plan.hpp"
#include "wasm/app/record_fields.hpp"
#include "wasm/app/record_labels.hpp"

#include "engine/budget/from_records.hpp"
#include "engine/facts/names.hpp"
#include "engine/plan/by_route.hpp"
#include "engine/views/record_cash.hpp"
#include "engine/views/record_money.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;
using timeline::CostLineState;
using timeline::HolderState;
using timeline::PayTermState;

[[nodiscard]] const timeline::MoneyState& money_in(const FormContext& context) {
    static const timeline::MoneyState none;
    return context.aircraft == nullptr ? none : context.aircraft->money;
}

[[nodiscard]] base::Currency home_for(const FormContext& context) {
    return context.aircraft == nullptr ? base::Currency{} : budget::home_of(*context.aircraft);
}

[[nodiscard]] std::string key_of_term(const PayTermState& term) {
    return term.said.term;
}

[[nodiscard]] std::string key_of_holder(const HolderState& holder) {
    return holder.said.holder;
}

[[nodiscard]] std::string key_of_a_line(const CostLineState& line) {
    return line.said.line;
}

[[nodiscard]] base::Arg name_of_a_line(const CostLineState& line) {
    return views::cost_name(line.said);
}

/// The lines of the estimate, those of the route too.
[[nodiscard]] std::vector<CostLineState> lines_for(const FormContext& context) {
    if (context.aircraft == nullptr) return {};
    const facts::Route* route = plan::chosen_route(context.aircraft->campaign);
    return budget::lines_of(*context.aircraft, route == nullptr ? std::string{} : route->route);
}

/// A list of the lines of the estimate, with a word for none of them.
void add_lines(
    Form& form, Word label, Word none, const std::string& key, const FormContext& context) {
    form.fields.push_back(make_field("line_key", label, FieldKind::text, key, Need::optional));
    choose_key(form, "line_key", none, lines_for(context), key_of_a_line, name_of_a_line);
}

void lay_out_term(Form& form, const FormContext& context) {
    const PayTermState* term = chosen_in(form, money_in(context).pay_terms);
    const facts::PayTerm said = term == nullptr ? facts::PayTerm{} : term->said;
    form.named = said.term;
    form.fields.resize(1);
    Form made;
    facts::PayTerm plain = said;
    plain.group.reset();  // chosen below, also from none
    add_record_fields(made, plain, home_for(context));
    for (FieldView& field : made.fields)
        if (field.id != "term_key" && field.id != "line_key")
            form.fields.push_back(std::move(field));
    add_lines(form, Word::field_pay_line, Word::pay_every_line, said.line, context);
    std::vector<Word> groups{Word::pay_every_line};
    for (const Word word : option_words(facts::Choices::cost_group))
        groups.push_back(word);
    form.fields.push_back(make_choice("cost_group",
                                      Word::field_pay_group,
                                      groups,
                                      said.group ? static_cast<std::int32_t>(*said.group) + 1 : 0));
}

void lay_out_holder(Form& form, const FormContext& context) {
    const HolderState* holder = chosen_in(form, money_in(context).holders);
    const facts::Holder said = holder == nullptr ? facts::Holder{} : holder->said;
    form.named = said.holder;
    form.fields.resize(1);
    add_record_fields(form, said, {});
}

void add_day(Form& form, const FormContext& context) {
    form.fields.push_back(make_field(
        "date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed));
}

/// The day that was typed, not ahead; signs the record of it.
[[nodiscard]] Facts signed_of_day(FieldReader& reader,
                                  Form& form,
                                  facts::Fields said,
                                  const FormContext& context,
                                  Signer& signer) {
    const auto on = reader.date("date");
    if (on && *on > context.today) reader.complain("date", Trouble::form_day_ahead);
    check_fields(reader, {on.value_or(context.today), {form.aircraft}, said, {}});
    if (!reader.sound()) return {};
    return {signed_on(*on, form, std::move(said), context, signer)};
}

}  // namespace

void make_pay_term(Form& form, const FormContext& context) {
    form.title = Word::form_pay_term;
    form.intro = Word::form_pay_term_intro;
    add_which(form,
              "term",
              Word::field_which_term,
              money_in(context).pay_terms,
              [](const PayTermState& one) {
                  return base::text_arg(one.said.name.empty() ? one.said.term : one.said.name);
              });
    lay_out_term(form, context);
}

void reshape_pay_term(Form& form, const FormContext& context) {
    const PayTermState* term = chosen_in(form, money_in(context).pay_terms);
    if ((term == nullptr ? std::string{} : term->said.term) != form.named)
        lay_out_term(form, context);
}

void choose_pay_term(Form& form, const FormContext& context, const std::string& key) {
    if (choose_in(form, money_in(context).pay_terms, key_of_term, key)) lay_out_term(form, context);
}

Facts take_pay_term(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const PayTermState* term = chosen_in(form, money_in(context).pay_terms);
    facts::Fields fields = facts::PayTerm{};
    read_record_fields(reader, fields);
    auto& said = *std::get_if<facts::PayTerm>(&fields);
    said.term = term == nullptr ? base::print_id(signer.new_id()) : term->said.term;
    said.line = chosen_key(reader, "line_key", lines_for(context), key_of_a_line);
    const std::int32_t group = reader.choice("cost_group");
    if (group > 0) said.group = static_cast<facts::CostGroup>(group - 1);
    check_fields(reader, {context.today, {form.aircraft}, said, {}});
    if (!reader.sound()) return {};
    return signed_today(form, std::move(said), context, signer);
}

void make_payment(Form& form, const FormContext& context) {
    form.title = Word::form_payment;
    form.intro = Word::form_payment_intro;
    add_lines(form, Word::field_pay_line, Word::pay_no_line, {}, context);
    form.fields.push_back(make_amount("amount", Word::field_amount, {}, home_for(context)));
    form.fields.back().optional = false;
    add_day(form, context);
    form.fields.push_back(
        make_choice("came_back", Word::field_came_back, {Word::choice_no, Word::choice_yes}, 0));
    form.fields.push_back(
        make_field("payee", Word::field_payee, FieldKind::text, {}, Need::optional));
    form.fields.push_back(make_field(
        "payment_reference", Word::field_payment_reference, FieldKind::text, {}, Need::optional));
}

Facts take_payment(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Payment said;
    said.line = chosen_key(reader, "line_key", lines_for(context), key_of_a_line);
    said.amount = reader.money("amount");
    said.back = reader.choice("came_back") == 1;
    said.payee = reader.text("payee");
    said.reference = reader.text("payment_reference");
    return signed_of_day(reader, form, std::move(said), context, signer);
}

void make_balance(Form& form, const FormContext& context) {
    form.title = Word::form_balance;
    form.intro = Word::form_balance_intro;
    facts::Balance last;
    if (!money_in(context).balances.empty()) last = money_in(context).balances.back().said;
    last.amount.reset();
    add_record_fields(form, last, home_for(context));
    find_field(form, "amount")->optional = false;
    add_day(form, context);
}

void choose_balance(Form& form, const FormContext& context, const std::string& key) {
    for (const timeline::BalanceState& balance : money_in(context).balances) {
        if (balance.said.account != key) continue;
        find_field(form, "account")->text = key;
        find_field(form, "held_by")->text = balance.said.held_by;
    }
}

Facts take_balance(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Fields fields = facts::Balance{};
    read_record_fields(reader, fields);
    return signed_of_day(reader, form, std::move(fields), context, signer);
}

void make_reserve_terms(Form& form, const FormContext& context) {
    form.title = Word::form_reserve_terms;
    form.intro = Word::form_reserve_terms_intro;
    add_record_fields(form, money_in(context).reserve, home_for(context));
}

Facts take_reserve_terms(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Fields fields = facts::ReserveTerms{};
    read_record_fields(reader, fields);
    check_fields(reader, {context.today, {form.aircraft}, fields, {}});
    if (!reader.sound()) return {};
    return signed_today(form, std::move(fields), context, signer);
}

void make_holder(Form& form, const FormContext& context) {
    form.title = Word::form_holder;
    form.intro = Word::form_holder_intro;
    add_which(
        form, "which", Word::field_which_holder, money_in(context).holders, [](const auto& one) {
            return base::text_arg(one.said.holder);
        });
    lay_out_holder(form, context);
}

void reshape_holder(Form& form, const FormContext& context) {
    const HolderState* holder = chosen_in(form, money_in(context).holders);
    if ((holder == nullptr ? std::string{} : holder->said.holder) != form.named)
        lay_out_holder(form, context);
}

void choose_holder(Form& form, const FormContext& context, const std::string& key) {
    if (choose_in(form, money_in(context).holders, key_of_holder, key))
        lay_out_holder(form, context);
}

Facts take_holder(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Fields fields = facts::Holder{};
    read_record_fields(reader, fields);
    check_fields(reader, {context.today, {form.aircraft}, fields, {}});
    if (!reader.sound()) return {};
    return signed_today(form, std::move(fields), context, signer);
}

}  // namespace twoclocks::canvas
