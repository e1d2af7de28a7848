#include "wasm/app/on_return.hpp"

#include "wasm/app/form_fields.hpp"

#include "engine/views/return_view.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr const char* day_id = "return-on";

}  // namespace

Form make_return_day(const views::Assessed& aircraft) {
    Form form;
    form.fields = {make_field(day_id,
                              Word::field_return_on,
                              FieldKind::date,
                              base::print_date(views::usual_return(aircraft)),
                              Need::optional)};
    return form;
}

ReturnPage return_page(Form& form, const views::Assessed& aircraft) {
    FieldReader reader{form};
    const base::Date on = reader.date(day_id).value_or(views::usual_return(aircraft));
    return {views::make_return_view(aircraft, on), form.fields};
}

}  // namespace twoclocks::canvas
