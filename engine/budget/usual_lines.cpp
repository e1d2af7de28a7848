#include "engine/budget/usual_lines.hpp"

namespace twoclocks::budget {
namespace {

using base::Word;
using facts::CostGroup;
using facts::CostLine;
using facts::CostTaken;

constexpr std::int32_t whole_quantity = 1'000;

[[nodiscard]] UsualLine usual(const char* key, CostGroup group, Word name = Word::blank) {
    UsualLine out;
    out.line.line = key;
    out.line.group = group;
    out.name = name;
    return out;
}

/// One of the engines that can be had.
[[nodiscard]] UsualLine engine(const char* key, Word name) {
    UsualLine out = usual(key, CostGroup::engine, name);
    out.line.one_of = "engine";
    out.line.taken = CostTaken::offered;
    out.line.work = facts::CostFor::overhaul;
    return out;
}

}  // namespace

std::vector<UsualLine> usual_lines() {
    UsualLine kit = usual("kit", CostGroup::kit);
    kit.line.work = facts::CostFor::overhaul;
    kit.line.at_shipment = true;
    UsualLine labour = usual("labour", CostGroup::labour, Word::usual_labour);
    labour.line.low_quantity = 220 * whole_quantity;
    labour.line.quantity = 240 * whole_quantity;
    labour.line.high_quantity = 320 * whole_quantity;
    UsualLine own = engine("engine_own", Word::usual_engine_own);
    own.line.taken = CostTaken::chosen;
    UsualLine interior = usual("interior", CostGroup::interior);
    interior.line.taken = CostTaken::offered;
    return {kit,
            labour,
            own,
            engine("engine_exchange", Word::usual_engine_exchange),
            engine("engine_new", Word::usual_engine_new),
            usual("findings", CostGroup::findings),
            usual("frame", CostGroup::frame),
            interior,
            usual("freight", CostGroup::freight),
            usual("ferry", CostGroup::ferry),
            usual("cover", CostGroup::cover)};
}

}  // namespace twoclocks::budget
