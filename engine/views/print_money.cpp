// The estimate as JSON.
#include "engine/views/json_object.hpp"
#include "engine/views/money.hpp"
#include "engine/views/print_views.hpp"

namespace twoclocks::views {
namespace {

using base::Region;
using facts::Json;

[[nodiscard]] Json row_json(const MoneyRow& row, const Region& region) {
    Object out{region};
    out.text("key", row.key).said("name", row.name).said("group", row.group).said("sum", row.sum);
    out.said("range", row.range).put("lines", said_json(row.lines, region));
    out.put("workings", said_json(row.workings, region)).put("notes", to_json(row.notes, region));
    return out.truth("counts", row.counts).take();
}

[[nodiscard]] Json mover_json(const MoverRow& row, const Region& region) {
    Object out{region};
    out.said("name", row.name).said("swing", row.swing);
    return out.whole("permille", row.permille).take();
}

[[nodiscard]] Json path_json(const MoneyPath& path, const Region& region) {
    Object out{region};
    out.said("name", path.name).said("net", path.net).said("hour", path.hour);
    return out.put("lines", said_json(path.lines, region)).take();
}

}  // namespace

Json to_json(const MoneyView& view, const Region& region) {
    Object out{region};
    out.text("id", base::print_id(view.id)).said("missing", view.missing);
    out.said("route", view.route).put("gross", figure_json(view.gross, region));
    out.put("back", figure_json(view.back, region)).put("net", figure_json(view.net, region));
    out.said("range", view.range).said("not_whole", view.not_whole);
    out.put("faults", to_json(view.faults, region));
    out.put("rows", list_of(view.rows, [&](const auto& row) { return row_json(row, region); }));
    out.put("movers",
            list_of(view.movers, [&](const auto& row) { return mover_json(row, region); }));
    out.put("currencies", said_json(view.currencies, region));
    out.put("rates", said_json(view.rates, region));
    out.put("paths",
            list_of(view.paths, [&](const auto& path) { return path_json(path, region); }));
    out.put("changes", said_json(view.changes, region));
    out.put("effects", said_json(view.effects, region));
    return out.put("notes", said_json(view.notes, region)).take();
}

}  // namespace twoclocks::views
