#include "wasm/app/sure.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/plan.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/views/sure_view.hpp"

namespace twoclocks::canvas {
namespace {

using base::FlightTime;
using base::Trouble;
using base::Word;

constexpr const char* month_id = "try-month";
constexpr std::int64_t most_month_hours = 744;

[[nodiscard]] std::optional<FlightTime> tried_month(Form& form) {
    FieldReader reader{form};
    const auto month = reader.hours(month_id);
    if (!month || *month <= base::hours(most_month_hours)) return month;
    reader.complain(month_id, Trouble::form_month_absurd, {base::whole_arg(most_month_hours)});
    return std::nullopt;
}

void set_month(Form& form, FlightTime month) {
    FieldView* field = find_field(form, month_id);
    if (field != nullptr) field->text = tenths_text(month);
}

/// An hour below twenty, five above: a few taps are far enough on either.
[[nodiscard]] FlightTime step_from(FlightTime month, bool up) {
    constexpr std::int64_t fine_to_hours = 20;
    const FlightTime border = base::hours(fine_to_hours);
    const bool fine = up ? month < border : month <= border;
    const std::int64_t step = base::hours(fine ? 1 : 5).seconds;
    const std::int64_t whole = month.seconds / step * step;
    if (up) return {std::min(whole + step, base::hours(most_month_hours).seconds)};
    return {std::max<std::int64_t>(0, whole == month.seconds ? whole - step : whole)};
}

}  // namespace

Form make_tried() {
    Form form;
    form.fields = {
        make_field(month_id, Word::field_try_month, FieldKind::hours, {}, Need::optional)};
    return form;
}

SurePage sure_page(Form& form, const views::Assessed& aircraft) {
    SurePage page;
    page.view = views::make_sure_view(aircraft, tried_month(form));
    page.month = form.fields.front();
    page.less = step_from(page.view.month, false);
    page.more = step_from(page.view.month, true);
    return page;
}

void try_out(AppState::Inside& in, const intent::OpenSure& intent) {
    if (in.assessed(intent.aircraft) == nullptr) return;
    in.tried = make_tried();
    in.open({Place::Kind::sure, intent.aircraft});
}

void try_out(AppState::Inside& in, const intent::TryMonth& intent) {
    set_month(in.tried, intent.month);
}

void try_out(AppState::Inside& in, const intent::TryThrough& intent) {
    const views::Assessed* aircraft = in.assessed(in.here().subject);
    if (aircraft == nullptr) return;
    const auto month =
        views::month_through(*aircraft, {intent.across_permille, intent.up_permille});
    if (month) set_month(in.tried, *month);
}

void try_out(AppState::Inside& in, const intent::StopTrying&) {
    if (in.here().kind == Place::Kind::plan)
        stop_weighing(in);
    else
        in.tried = make_tried();
}

void try_out(AppState::Inside& in, const intent::KeepTried&) {
    if (in.here().kind == Place::Kind::plan) {
        keep_weighed(in);
        return;
    }
    const auto month = tried_month(in.tried);
    if (!month) return;
    const base::Id aircraft = in.here().subject;
    in.open({Place::Kind::form, aircraft});
    in.open_form(FormKind::usage_plan, aircraft);
    FieldView* field = find_field(in.form, "month");
    if (field != nullptr) field->text = tenths_text(*month);
}

}  // namespace twoclocks::canvas
