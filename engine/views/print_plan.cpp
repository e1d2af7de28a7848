// The plan of an overhaul, its routes, and who of a fleet goes in when, as JSON.
#include "engine/views/json_object.hpp"
#include "engine/views/print_views.hpp"

namespace twoclocks::views {
namespace {

using base::Region;
using base::Word;
using facts::Json;

[[nodiscard]] Json task_json(const PlanTaskRow& row, const Region& region) {
    Object out{region};
    out.text("key", row.key).said("name", row.name).said("days", row.days);
    out.said("estimate", row.estimate).said("decides", row.decides);
    out.truth("grounded", row.grounded).truth("done", row.done);
    out.whole("from", row.from_permille).whole("to", row.to_permille);
    return out.whole("late", row.late_permille).take();
}

[[nodiscard]] Json induction_json(const InductionView& view, const Region& region) {
    Object out{region};
    if (view.missing.word != Word::blank) out.said("missing", view.missing);
    if (!view.chart) return out.take();
    out.put("best", figure_json(view.best, region)).put("lines", said_json(view.lines, region));
    return out.put("chart", chart_json(*view.chart, region)).take();
}

[[nodiscard]] Json route_json(const RouteRow& row, const Region& region) {
    Object out{region};
    out.text("key", row.key).said("name", row.name).said("who", row.who).said("mark", row.mark);
    out.said("days_out", row.days).said("late", row.late).said("hours", row.hours);
    out.said("cost", row.cost).truth("ruled_out", row.ruled_out).truth("chosen", row.chosen);
    out.put("praise", said_json(row.praise, region));
    return out.put("lines", said_json(row.lines, region)).take();
}

}  // namespace

Json to_json(const PlanView& view, const Region& region) {
    Object out{region};
    out.text("id", base::print_id(view.id));
    if (view.missing.word != Word::blank)
        return out.said("missing", view.missing).put("faults", to_json(view.faults, region)).take();
    out.put("order", figure_json(view.order, region)).put("book", figure_json(view.book, region));
    out.put("stop", figure_json(view.stop, region)).put("back", figure_json(view.back, region));
    out.said("window", view.window).said("confidence", view.confidence);
    out.put("route", said_json(view.route, region));
    out.put("slip", list_of(view.slip, [&](const SlipRow& row) {
                Object one{region};
                return one.said("name", row.name).said("moved", row.moved).take();
            }));
    out.said("title", view.title).put("today", said_json(view.today, region));
    out.put("next", list_of(view.next, [&](const PlanNextRow& row) {
                Object one{region};
                one.text("key", row.key).said("name", row.name).said("when", row.when);
                return one.truth("late", row.late).take();
            }));
    out.put("induction", induction_json(view.induction, region));
    out.put("tasks", list_of(view.rows, [&](const auto& row) { return task_json(row, region); }));
    if (view.chart) out.put("chart", chart_json(*view.chart, region));
    out.put("sure", said_json(view.sure, region));
    return out.put("notes", said_json(view.notes, region)).take();
}

Json to_json(const RoutesView& view, const Region& region) {
    Object out{region};
    out.text("id", base::print_id(view.id));
    if (view.missing.word != Word::blank) return out.said("missing", view.missing).take();
    out.put("routes", list_of(view.rows, [&](const auto& row) { return route_json(row, region); }));
    return out.put("notes", said_json(view.notes, region)).take();
}

Json to_json(const StaggerView& view, const Region& region) {
    Object out{region};
    if (view.missing.word != Word::blank) return out.said("missing", view.missing).take();
    out.put("bounds", said_json(view.bounds, region));
    out.put("rows", list_of(view.rows, [&](const StaggerRow& row) {
                Object one{region};
                one.said("name", row.name).said("days", row.days).said("reason", row.reason);
                return one.truth("stands", row.stands).take();
            }));
    return out.put("notes", said_json(view.notes, region)).take();
}

}  // namespace twoclocks::views
