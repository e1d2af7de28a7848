// What is recorded for a sale: what an item costs each time, and points of the closing list.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_keys.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_plan.hpp"
#include "wasm/app/record_fields.hpp"

#include "engine/budget/from_records.hpp"
#include "engine/views/record_sale.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using timeline::ClosingState;

/// An item that can have a price, on the aircraft or on a part aboard.
struct PricedItem {
    base::Id id;
    std::string name;
};

[[nodiscard]] std::vector<PricedItem> items_in(const FormContext& context) {
    std::vector<PricedItem> out;
    if (context.aircraft == nullptr) return out;
    for (const timeline::ItemState& item : context.aircraft->items)
        out.push_back({item.id, item.name});
    if (context.parts == nullptr) return out;
    for (const timeline::PartState& part : *context.parts) {
        if (part.aircraft != context.aircraft->id) continue;
        for (const timeline::ItemState& item : part.items)
            out.push_back({item.id, timeline::part_label(part) + ": " + item.name});
    }
    return out;
}

[[nodiscard]] base::Currency home_for_sale(const FormContext& context) {
    return context.aircraft == nullptr ? base::Currency{} : budget::home_of(*context.aircraft);
}

[[nodiscard]] const std::vector<ClosingState>& points_in(const FormContext& context) {
    static const std::vector<ClosingState> none;
    return context.aircraft == nullptr ? none : context.aircraft->money.closing;
}

void lay_out_point(Form& form, const FormContext& context) {
    const ClosingState* point = chosen_in(form, points_in(context));
    const facts::ClosingPoint said = point == nullptr ? facts::ClosingPoint{} : point->said;
    form.named = said.point;
    form.fields.resize(1);
    add_record_fields(form, said, home_for_sale(context));
    std::erase_if(form.fields, [](const FieldView& field) { return field.id == "point_key"; });
}

}  // namespace

void make_item_price(Form& form, const FormContext& context) {
    form.title = Word::form_item_price;
    form.intro = Word::form_item_price_intro;
    FieldView list = make_choice("item", Word::field_which_item, {}, 0);
    for (const PricedItem& item : items_in(context))
        list.options.push_back({Word::record_of, {base::text_arg(item.name)}});
    form.fields.push_back(std::move(list));
    add_record_fields(form, facts::ItemPrice{}, home_for_sale(context));
    find_field(form, "item_price")->optional = false;
}

void choose_item_price(Form& form, const FormContext& context, const std::string& key) {
    const std::vector<PricedItem> items = items_in(context);
    for (std::size_t place = 0; place < items.size(); ++place)
        if (base::print_id(items[place].id) == key)
            form.fields.front().chosen = static_cast<std::int32_t>(place);
}

Facts take_item_price(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const std::vector<PricedItem> items = items_in(context);
    const auto place = static_cast<std::size_t>(reader.choice("item"));
    facts::Fields fields = facts::ItemPrice{};
    read_record_fields(reader, fields);
    if (place >= items.size()) reader.complain("item", base::Trouble::form_needed);
    if (!reader.sound()) return {};
    facts::Body body{context.today, {form.aircraft, items[place].id}, std::move(fields), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_closing(Form& form, const FormContext& context) {
    form.title = Word::form_closing;
    form.intro = Word::form_closing_intro;
    add_which(form, "point", Word::field_which_point, points_in(context), [](const auto& one) {
        return views::closing_label(one.said);
    });
    lay_out_point(form, context);
}

void reshape_closing(Form& form, const FormContext& context) {
    const ClosingState* point = chosen_in(form, points_in(context));
    if ((point == nullptr ? std::string{} : point->said.point) != form.named)
        lay_out_point(form, context);
}

void choose_closing(Form& form, const FormContext& context, const std::string& key) {
    const auto key_of = [](const ClosingState& one) { return one.said.point; };
    if (choose_in(form, points_in(context), key_of, key)) lay_out_point(form, context);
}

Facts take_closing(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const ClosingState* point = chosen_in(form, points_in(context));
    facts::Fields fields = facts::ClosingPoint{};
    read_record_fields(reader, fields);
    auto& said = *std::get_if<facts::ClosingPoint>(&fields);
    said.point = point == nullptr ? base::print_id(signer.new_id()) : point->said.point;
    check_fields(reader, {context.today, {form.aircraft}, said, {}});
    if (!reader.sound()) return {};
    return signed_today(form, std::move(said), context, signer);
}

}  // namespace twoclocks::canvas
