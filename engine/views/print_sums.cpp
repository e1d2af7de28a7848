// Cores, cash and the reserve as JSON.
#include "engine/views/json_object.hpp"
#include "engine/views/print_views.hpp"

namespace twoclocks::views {
namespace {

using base::Region;
using facts::Json;

[[nodiscard]] Json row_json(const SumsRow& row, const Region& region) {
    Object out{region};
    out.text("key", row.key).said("name", row.name).said("figure", row.figure);
    out.put("lines", said_json(row.lines, region));
    return out.put("notes", to_json(row.notes, region)).take();
}

[[nodiscard]] Json pair_json(const SumsPair& pair, const Region& region) {
    Object out{region};
    return out.said("name", pair.name).said("figure", pair.figure).said("below", pair.below).take();
}

[[nodiscard]] Json block_json(const SumsBlock& block, const Region& region) {
    Object out{region};
    out.said("title", block.title).put("lines", said_json(block.lines, region));
    if (block.curve) out.said("curve", block.curve->spoken);
    out.put("pairs", list_of(block.pairs, [&](const auto& one) { return pair_json(one, region); }));
    out.put("rows", list_of(block.rows, [&](const auto& one) { return row_json(one, region); }));
    return out.take();
}

}  // namespace

Json to_json(const SumsView& view, const Region& region) {
    Object out{region};
    out.text("id", base::print_id(view.id)).said("missing", view.missing);
    out.put("top", list_of(view.top, [&](const auto& one) { return figure_json(one, region); }));
    out.put("told", said_json(view.told, region)).put("faults", to_json(view.faults, region));
    out.put("blocks",
            list_of(view.blocks, [&](const auto& one) { return block_json(one, region); }));
    return out.put("notes", said_json(view.notes, region)).take();
}

}  // namespace twoclocks::views
