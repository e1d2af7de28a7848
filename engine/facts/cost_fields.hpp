// The fields of what is recorded of money: a stretch of the list in field_list.hpp, which says how
// it is used.
#pragma once

#include "engine/facts/plan_fields.hpp"

namespace twoclocks::facts {

template <class Io, Is<CostLine> F>
void visit(Io& io, F& fields) {
    io.needed_text("line_key", fields.line);
    io.text("line_name", fields.name);
    io.name("cost_group", fields.group);
    io.text("route_key", fields.route);
    io.name("cost_for", fields.work);
    io.number("low_quantity_thousandths", fields.low_quantity, most_quantity);
    io.number("quantity_thousandths", fields.quantity, most_quantity);
    io.number("high_quantity_thousandths", fields.high_quantity, most_quantity);
    io.money("low_price", fields.low_price);
    io.money("price", fields.price);
    io.money("high_price", fields.high_price);
    io.date("price_on", fields.price_on);
    io.date("price_until", fields.price_until);
    io.truth("at_shipment", fields.at_shipment);
    io.number("deposit_permille", fields.deposit_permille, whole_permille);
    io.truth("deposit_back", fields.deposit_back);
    io.name("tax", fields.tax);
    io.number("tax_permille", fields.tax_permille, whole_permille);
    io.number("duty_permille", fields.duty_permille, whole_permille);
    io.name("duty_relief", fields.relief);
    io.date("relief_until", fields.relief_until);
    io.text("relief_terms", fields.relief_terms);
    io.name("taken", fields.taken);
    io.text("one_of", fields.one_of);
    io.text("needs", fields.needs);
    io.text("excludes", fields.excludes);
    io.text("serials", fields.serials);
    io.time("work_hours", fields.added_hours);
    io.number("added_days", fields.added_days, most_plan_days);
    io.number("added_grams", fields.added_grams, most_grams);
    io.number("removed_grams", fields.removed_grams, most_grams);
    io.text("price_list", fields.list);
    io.text("article", fields.article);
    io.truth("left_out", fields.left_out);
    io.text("said_by", fields.said_by);
}

template <class Io, Is<PriceList> F>
void visit(Io& io, F& fields) {
    io.needed_text("price_list", fields.list);
    io.note("list_rows", fields.rows);
    io.text("said_by", fields.said_by);
}

template <class Io, Is<ExchangeRate> F>
void visit(Io& io, F& fields) {
    io.needed_text("rate_from", fields.from);
    io.needed_text("rate_to", fields.to);
    io.needed_text("rate", fields.rate);
    io.text("said_by", fields.said_by);
}

template <class Io, Is<CostTerms> F>
void visit(Io& io, F& fields) {
    io.text("home_currency", fields.home);
    io.number("linked_permille", fields.linked_permille, whole_permille);
    io.number("kit_rise_permille", fields.kit_rise_permille, whole_permille);
    io.number("labour_rise_permille", fields.labour_rise_permille, whole_permille);
    io.number("engine_rise_permille", fields.engine_rise_permille, whole_permille);
    io.number("other_rise_permille", fields.other_rise_permille, whole_permille);
    io.name("tax_round", fields.tax_round);
    io.number("rate_days", fields.rate_days, most_plan_days);
    io.number("tax_back_days", fields.tax_back_days, most_plan_days);
}

}  // namespace twoclocks::facts
