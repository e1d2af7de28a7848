#include "wasm/app/checks.hpp"

#include "wasm/app/form_fields.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr const char* search_id = "checks-search";
constexpr const char* order_id = "checks-order";
constexpr const char* until_id = "checks-until";
constexpr const char* within_id = "checks-within";

}  // namespace

Form make_checks_form() {
    Form form;
    form.fields = {
        make_field(search_id, Word::checks_search, FieldKind::search, {}, Need::optional),
        make_choice(order_id,
                    Word::checks_order,
                    {Word::checks_soonest, Word::checks_least, Word::checks_by_chapter},
                    0),
        make_field(until_id, Word::checks_until, FieldKind::date, {}, Need::optional),
        make_field(within_id, Word::checks_within, FieldKind::hours, {}, Need::optional)};
    return form;
}

ChecksPage checks_page(Form& form, const views::Assessed& aircraft) {
    FieldReader reader{form};
    views::ChecksAsked asked;
    asked.search = reader.text(search_id);
    asked.order = static_cast<views::CheckOrder>(reader.choice(order_id));
    asked.until = reader.date(until_id);
    asked.within = reader.hours(within_id);
    const FieldView* order = find_field(form, order_id);
    return {views::make_checks_view(aircraft, asked),
            form.fields,
            order != nullptr && order->open,
            order_id};
}

}  // namespace twoclocks::canvas
