// Correcting a record of any kind, and taking one back. The fields come from the one list of
// fields that
// the file format has, so a new kind of record can be corrected without a line here.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/limit_fields.hpp"
#include "wasm/app/record_fields.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/facts/fields.hpp"
#include "engine/facts/names.hpp"
#include "engine/views/record_care.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr const char* date_field = "date";

/// The record to correct or take back, null when it is gone from view.
[[nodiscard]] const facts::Fact* subject_of(const Form& form, const FormContext& context) {
    const auto same = context.journal.with_id(form.subject);
    return same.empty() ? nullptr : same.front();
}

[[nodiscard]] const facts::Body& body_of(const facts::Fact& fact) {
    const auto* correction = std::get_if<facts::Correction>(&fact.body.fields);
    return correction != nullptr && correction->instead ? *correction->instead : fact.body;
}

}  // namespace

void make_correct(Form& form, const FormContext& context) {
    form.title = Word::form_correct;
    form.intro = Word::form_correct_intro;
    form.submit = Word::form_correct_submit;
    const facts::Fact* fact = subject_of(form, context);
    if (fact == nullptr) return;
    const facts::Body& body = body_of(*fact);
    form.fields.push_back(make_field(
        date_field, Word::field_date, FieldKind::date, base::print_date(body.on), Need::needed));
    if (const auto* limit = std::get_if<facts::LimitSet>(&body.fields)) {
        add_usual_fields(form, *limit);
        add_rare_fields(form, *limit);
    } else {
        add_record_fields(form, body.fields, {});
    }
    form.fields.push_back(
        make_field("why", Word::field_why_corrected, FieldKind::text, {}, Need::needed));
}

Facts take_correct(Form& form, const FormContext& context, Signer& signer) {
    const facts::Fact* fact = subject_of(form, context);
    if (fact == nullptr) return {};
    FieldReader reader{form};
    auto instead = std::make_shared<facts::Body>(body_of(*fact));
    const auto on = reader.date(date_field);
    if (auto* limit = std::get_if<facts::LimitSet>(&instead->fields)) {
        read_limit(reader, *limit);
    } else {
        read_record_fields(reader, instead->fields);
    }
    const std::string why = reader.text("why");
    if (on) instead->on = *on;
    check_fields(reader, *instead);
    if (!reader.sound()) return {};
    facts::Correction correction{facts::ref_to(context.journal, *fact), why, instead};
    facts::Body body{context.today, fact->body.about, std::move(correction), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_withdraw(Form& form, const FormContext&) {
    form.title = Word::form_withdraw;
    form.intro = Word::form_withdraw_intro;
    form.submit = Word::form_withdraw_submit;
    form.fields.push_back(
        make_field("why", Word::field_why_withdrawn, FieldKind::text, {}, Need::needed));
}

Facts take_withdraw(Form& form, const FormContext& context, Signer& signer) {
    const facts::Fact* fact = subject_of(form, context);
    if (fact == nullptr) return {};
    FieldReader reader{form};
    const std::string why = reader.text("why");
    if (!reader.sound()) return {};
    facts::Withdrawal withdrawal{facts::ref_to(context.journal, *fact), why};
    facts::Body body{context.today, fact->body.about, std::move(withdrawal), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

}  // namespace twoclocks::canvas
