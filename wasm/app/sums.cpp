#include "wasm/app/sums.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/plan.hpp"

#include "engine/views/cash_view.hpp"
#include "engine/views/cores_view.hpp"
#include "engine/views/reserve_view.hpp"
#include "engine/views/sale_view.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using views::SumsOf;

constexpr const char* year_id = "buyer-year";
constexpr std::int64_t most_year_hours = 8'784;

[[nodiscard]] Form make_asked() {
    Form form;
    form.fields = {
        make_field(year_id, Word::field_buyer_year, FieldKind::hours, {}, Need::optional)};
    form.fields.front().hint = {Word::hint_buyer_year, {}};
    return form;
}

/// The hours a year that were typed; nothing where none were.
[[nodiscard]] std::optional<base::FlightTime> asked_year(Form& form) {
    FieldReader reader{form};
    const auto year = reader.hours(year_id);
    if (!year || *year <= base::hours(most_year_hours)) return year;
    reader.complain(year_id,
                    base::Trouble::number_absurd,
                    {base::hours_whole_arg(*year), base::whole_arg(most_year_hours)});
    return std::nullopt;
}

[[nodiscard]] views::SumsView made_of_plan(const views::Assessed& aircraft,
                                           const views::Living& living,
                                           SumsOf of) {
    if (of == SumsOf::cores) return views::make_cores_view(aircraft, living);
    if (of == SumsOf::cash) return views::make_cash_view(aircraft, living);
    return views::make_reserve_view(aircraft, living);
}

/// Every aircraft of the fleet, those with an overhaul first.
[[nodiscard]] std::vector<const views::Assessed*> all_of(const AppState::Inside& in) {
    std::vector<const views::Assessed*> out;
    for (const auto& [id, one] : in.fleet)
        out.push_back(&one);
    return out;
}

}  // namespace

bool rests_on_plan(SumsOf of) {
    return of == SumsOf::cores || of == SumsOf::cash || of == SumsOf::reserve;
}

SumsPage sums_page(AppState::Inside& in, SumsOf of, const views::Assessed& aircraft) {
    if (rests_on_plan(of)) {
        if (!in.summed || in.summed->id != aircraft.state.id || in.summed->of != of)
            in.summed = made_of_plan(aircraft, in.lives.of(as_planned(aircraft)), of);
        return {*in.summed, std::nullopt};
    }
    if (of == SumsOf::closing) return {views::make_closing_view(aircraft), std::nullopt};
    if (in.sale_asked.fields.empty()) in.sale_asked = make_asked();
    const auto year = asked_year(in.sale_asked);
    SumsPage page;
    page.view = of == SumsOf::sale ? views::make_sale_view(aircraft, year)
                                   : views::make_compare_view(all_of(in), year);
    page.view.id = aircraft.state.id;
    page.asked = in.sale_asked.fields.front();
    return page;
}

void open_page(AppState::Inside& in, const intent::OpenSums& intent) {
    if (in.assessed(intent.aircraft) == nullptr) return;
    in.open({Place::Kind::sums, intent.aircraft, intent.of});
}

}  // namespace twoclocks::canvas
