// A price list: typed, pasted or from a file, in as many records as it takes.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_plan.hpp"
#include "wasm/app/table_form.hpp"

#include "engine/facts/json.hpp"
#include "engine/facts/price_rows.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;

/// The rows of one record after the other, none longer than a record can be.
[[nodiscard]] std::vector<std::string> in_records(const std::vector<facts::PriceLine>& rows) {
    std::vector<std::string> out{{}};
    for (const facts::PriceLine& row : rows) {
        const std::string line = facts::print_price_rows({row.price});
        const bool is_full =
            out.back().size() + line.size() > static_cast<std::size_t>(facts::longest_note_bytes);
        if (is_full) out.emplace_back();
        out.back() += line;
    }
    return out;
}

}  // namespace

void make_price_list(Form& form, const FormContext& context) {
    form.title = Word::form_price_list;
    form.intro = Word::form_price_list_intro;
    const auto field = [&](const char* id, Word label, FieldKind kind, Need need) {
        form.fields.push_back(make_field(id, label, kind, {}, need));
    };
    field("list", Word::field_price_list, FieldKind::text, Need::needed);
    form.fields.push_back(make_field(
        "date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed));
    field("said_by", Word::field_said_by, FieldKind::text, Need::optional);
    add_table_fields(form);
}

Facts take_price_list(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::PriceList said;
    said.list = reader.text("list");
    said.said_by = reader.text("said_by");
    const auto on = reader.date("date");
    if (on && *on > context.today) reader.complain("date", Trouble::form_day_ahead);
    TableForm reading{form, context};
    if (!reading.is_readable(reader) || !on) return {};
    const auto sorted = reading.prices();
    if (!may_save(reader, sorted)) return {};
    Facts out;
    for (std::string& record : in_records(sorted.fresh)) {
        said.rows = std::move(record);
        out.push_back(signed_on(*on, form, said, context, signer));
    }
    return out;
}

}  // namespace twoclocks::canvas
