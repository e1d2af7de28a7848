// The fields of the kinds about parts: a stretch of the list in field_list.hpp, which says how it
// is used.
#pragma once

#include <concepts>
#include <type_traits>

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// True for T and for const T.
template <class F, class T>
concept Is = std::same_as<std::remove_const_t<F>, T>;

template <class Io, Is<PartAdded> F>
void visit(Io& io, F& fields) {
    io.needed_text("part_number", fields.part_number);
    io.needed_text("serial", fields.serial);
    io.text("name", fields.name);
    io.text("chapter", fields.chapter);
    io.time("tsn", fields.tsn);
    io.time("tso", fields.tso);
    io.count("overhauls", fields.overhauls);
    io.count("landings", fields.landings);
    io.count("starts", fields.starts);
    io.date("manufactured", fields.manufactured);
    io.date("cured", fields.cured);
    io.date("shipped", fields.shipped);
    io.name("condition", fields.condition);
    io.text("papers", fields.papers);
    io.truth("history_unknown", fields.history_unknown);
    io.text("owner", fields.owner);
    io.date("lent_until", fields.lent_until);
}

template <class Io, Is<PartFitted> F>
void visit(Io& io, F& fields) {
    io.text("position", fields.position);
    io.time("host_total", fields.host_total);
    io.time("tsn", fields.tsn);
    io.count("host_landings", fields.host_landings);
    io.count("host_starts", fields.host_starts);
    io.text("reference", fields.reference);
}

template <class Io, Is<PartRemoved> F>
void visit(Io& io, F& fields) {
    io.time("host_total", fields.host_total);
    io.count("host_landings", fields.host_landings);
    io.count("host_starts", fields.host_starts);
    io.name("condition", fields.condition);
    io.text("why", fields.why);
    io.truth("temporarily", fields.temporarily);
}

template <class Io, Is<PartScrapped> F>
void visit(Io& io, F& fields) {
    io.needed_text("proof", fields.proof);
}

template <class Io, Is<PartMoved> F>
void visit(Io& io, F& fields) {
    io.text("place", fields.place);
    io.text("owner", fields.owner);
    io.text("lent_to", fields.lent_to);
    io.date("return_by", fields.return_by);
    io.text("why", fields.why);
}

template <class Io, Is<PartRebuilt> F>
void visit(Io& io, F& fields) {
    io.needed_text("document", fields.document);
    io.time("host_total", fields.host_total);
    io.text("done_by", fields.done_by);
    io.text("place", fields.place);
}

}  // namespace twoclocks::facts
