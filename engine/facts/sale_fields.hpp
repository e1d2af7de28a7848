// The fields of what is recorded for a sale: a stretch of the list in field_list.hpp, which says
// how it is used.
#pragma once

#include "engine/facts/cash_fields.hpp"

namespace twoclocks::facts {

template <class Io, Is<ItemPrice> F>
void visit(Io& io, F& fields) {
    io.money("item_price", fields.price);
    io.text("said_by", fields.said_by);
}

template <class Io, Is<ClosingPoint> F>
void visit(Io& io, F& fields) {
    io.needed_text("point_key", fields.point);
    io.name("closing_topic", fields.topic);
    io.text("point_text", fields.text);
    io.truth("settled", fields.settled);
    io.date("point_until", fields.until);
    io.money("point_cost", fields.cost);
    io.name("payer", fields.payer);
    io.text("paper", fields.paper);
    io.truth("left_out", fields.left_out);
}

}  // namespace twoclocks::facts
