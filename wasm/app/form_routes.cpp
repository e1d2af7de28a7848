// The routes of a campaign: who does the work, by which way, for what.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_plan.hpp"
#include "wasm/app/limit_fields.hpp"
#include "wasm/app/record_labels.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"
#include "engine/facts/names.hpp"
#include "engine/views/record_plan.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;
using facts::Route;

/// Fields of a route that hold whole days, and where they go.
struct DaysField {
    const char* id;
    Word label;
    std::optional<std::int32_t> Route::*days;
};

constexpr DaysField usual_days[]{{"likely_days", Word::field_shop_likely, &Route::likely_days},
                                 {"low_days", Word::field_shop_low, &Route::low_days},
                                 {"high_days", Word::field_shop_high, &Route::high_days},
                                 {"queue_days", Word::field_queue_days, &Route::queue_days},
                                 {"kit_days", Word::field_kit_days, &Route::kit_days}};
constexpr DaysField way_days[]{{"there_days", Word::field_there_days, &Route::there_days},
                               {"back_days", Word::field_back_days, &Route::back_days}};

template <class T>
[[nodiscard]] FieldView enum_field(const char* id, Word label, T value) {
    return make_choice(
        id, label, option_words(facts::choices_of<T>), static_cast<std::int32_t>(value));
}

class RouteFields {
  public:
    RouteFields(Form& form, const Route& route, base::Currency currency)
        : form_(form), route_(route), currency_(currency) {}

    void usual() {
        text("name", Word::field_route_name, route_.name);
        find_field(form_, "name")->optional = false;
        form_.fields.push_back(enum_field("by", Word::field_route_by, route_.by));
        form_.fields.push_back(enum_field("carriage", Word::field_carriage, route_.carriage));
        form_.fields.push_back(
            enum_field("accepted", Word::field_release_accepted, route_.accepted));
        form_.fields.push_back(make_amount("price", Word::field_price, route_.price, currency_));
        form_.fields.push_back(enum_field("basis", Word::field_price_basis, route_.basis));
        days(usual_days);
        find_field(form_, "likely_days")->hint = {Word::hint_shop_days, {}};
        form_.fields.push_back(make_choice("chosen",
                                           Word::field_chosen,
                                           {Word::choice_no, Word::route_is_chosen},
                                           route_.chosen ? 1 : 0));
    }

    void rare() {
        const std::size_t first = form_.fields.size();
        field("ferry", Word::field_ferry_hours, FieldKind::hours, typed(route_.ferry));
        days(way_days);
        form_.fields.push_back(
            make_amount("freight", Word::field_freight, route_.freight, currency_));
        form_.fields.push_back(enum_field("tax", Word::field_tax, route_.tax));
        field("tax_share",
              Word::field_tax_percent,
              FieldKind::decimal,
              typed_percent(route_.tax_permille));
        field("duty_share",
              Word::field_duty_percent,
              FieldKind::decimal,
              typed_percent(route_.duty_permille));
        field("until", Word::field_price_until, FieldKind::date, typed(route_.price_until));
        field(
            "months", Word::field_warranty_months, FieldKind::whole, typed(route_.warranty_months));
        field("hours", Word::field_warranty_hours, FieldKind::hours, typed(route_.warranty_hours));
        form_.fields.push_back(enum_field("from", Word::field_warranty_from, route_.warranty_from));
        field("takes", Word::field_shop_takes, FieldKind::whole, typed(route_.shop_takes));
        text("said_by", Word::field_said_by, route_.said_by);
        form_.fields.push_back(make_choice(
            "left_out", Word::field_route_left_out, {Word::choice_no, Word::choice_yes}, 0));
        for (std::size_t place = first; place < form_.fields.size(); ++place)
            form_.fields[place].more = true;
    }

  private:
    void field(const char* id, Word label, FieldKind kind, std::string value) {
        form_.fields.push_back(make_field(id, label, kind, std::move(value), Need::optional));
    }

    void text(const char* id, Word label, const std::string& value) {
        field(id, label, FieldKind::text, value);
    }

    template <std::size_t Count>
    void days(const DaysField (&fields)[Count]) {
        for (const auto& [id, label, at] : fields)
            field(id, label, FieldKind::whole, typed(route_.*at));
    }

    Form& form_;
    const Route& route_;
    base::Currency currency_;
};

/// Lays out the fields of the route chosen in the list, which stays as it is.
void lay_out(Form& form, const FormContext& context) {
    const auto& routes = routes_in(context);
    const std::int32_t place = form.fields.front().chosen - 1;
    const bool is_one = place >= 0 && place < static_cast<std::int32_t>(routes.size());
    Route route = is_one ? routes[static_cast<std::size_t>(place)].said : Route{};
    // Another may have been chosen since: mending a price must not choose it again.
    route.chosen = is_one && context.aircraft->campaign.chosen_route == place;
    form.named = route.route;
    form.fields.resize(1);
    RouteFields fields{form, route, usual_currency(context)};
    fields.usual();
    fields.rare();
}

template <std::size_t Count>
void read_days(FieldReader& reader, const DaysField (&fields)[Count], Route& route) {
    for (const auto& [id, label, at] : fields)
        route.*at = count_in(reader, id, facts::most_plan_days);
}

}  // namespace

void make_route(Form& form, const FormContext& context) {
    form.title = Word::form_route;
    form.intro = Word::form_route_intro;
    FieldView list = make_choice("route", Word::field_which_route, {Word::field_new_route}, 0);
    for (const timeline::RouteState& one : routes_in(context))
        list.options.push_back({Word::record_of, {views::route_name(one.said)}});
    form.fields.push_back(std::move(list));
    lay_out(form, context);
}

void reshape_route(Form& form, const FormContext& context) {
    const auto& routes = routes_in(context);
    const std::int32_t place = form.fields.front().chosen - 1;
    const bool is_one = place >= 0 && place < static_cast<std::int32_t>(routes.size());
    const std::string key =
        is_one ? routes[static_cast<std::size_t>(place)].said.route : std::string{};
    if (key != form.named) lay_out(form, context);
}

void choose_route(Form& form, const FormContext& context, const std::string& key) {
    const auto& routes = routes_in(context);
    const auto found = std::find_if(
        routes.begin(), routes.end(), [&](const auto& one) { return one.said.route == key; });
    if (found == routes.end()) return;
    form.fields.front().chosen = static_cast<std::int32_t>(found - routes.begin()) + 1;
    lay_out(form, context);
}

Facts take_route(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    Route said;
    if (base::without_margins(find_field(form, "name")->text).empty())
        reader.complain("name", Trouble::route_nameless);
    else
        said.name = reader.text("name");
    said.by = static_cast<facts::RouteBy>(reader.choice("by"));
    said.carriage = static_cast<facts::Carriage>(reader.choice("carriage"));
    said.accepted = static_cast<facts::Acceptance>(reader.choice("accepted"));
    said.basis = static_cast<facts::PriceBasis>(reader.choice("basis"));
    said.tax = static_cast<facts::TaxCase>(reader.choice("tax"));
    said.warranty_from = static_cast<facts::WarrantyFrom>(reader.choice("from"));
    said.price = reader.money("price");
    said.freight = reader.money("freight");
    read_days(reader, usual_days, said);
    read_days(reader, way_days, said);
    check_points(reader, "low_days", "likely_days", said, said.name);
    said.ferry = reader.hours("ferry");
    said.tax_permille = share_in(reader, "tax_share");
    said.duty_permille = share_in(reader, "duty_share");
    said.price_until = reader.date("until");
    said.warranty_months = count_in(reader, "months", facts::most_plan_days);
    said.warranty_hours = reader.hours("hours");
    said.shop_takes = count_in(reader, "takes", facts::most_at_once);
    said.chosen = reader.choice("chosen") > 0;
    said.left_out = reader.choice("left_out") > 0;
    said.said_by = reader.text("said_by");
    said.route = form.named.empty() ? base::print_id(signer.new_id()) : form.named;
    const facts::Body body{context.today, {form.aircraft}, said, {}};
    check_fields(reader, body);
    if (!reader.sound()) return {};
    return signed_today(form, std::move(said), context, signer);
}

}  // namespace twoclocks::canvas
