// The status and the parts of an aircraft as JSON.
#include "engine/views/json_object.hpp"
#include "engine/views/print_views.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Region;
using facts::Json;

[[nodiscard]] Json clock_json(const StatusClock& clock, const Region& region) {
    Object out{region};
    out.text("edge", std::string{edge_word(clock.edge)}).said("limit", clock.limit);
    out.said("used", clock.used).said("left", clock.left).said("next", clock.next);
    out.questioned("questioned", clock.questioned);
    return out.truth("over", clock.over).put("why", why_json(clock.why, region)).take();
}

[[nodiscard]] Json row_json(const StatusRow& row, const Region& region) {
    Object out{region};
    out.text("item", base::print_id(row.item)).text("name", row.name).said("state", row.state_word);
    out.said("source", row.source).said("last", row.last).said("method", row.method);
    out.put("clocks", list_of(row.clocks, [&](const StatusClock& clock) {
                return clock_json(clock, region);
            }));
    return out.put("notes", said_json(row.notes, region)).take();
}

[[nodiscard]] Json part_json(const StatusPart& part, const Region& region) {
    Object out{region};
    out.text("part", base::print_id(part.part)).text("name", part.name).said("plate", part.plate);
    out.said("since_new", part.since_new).said("since_overhaul", part.since_overhaul);
    return out.said("papers", part.papers).truth("papers_missing", part.papers_missing).take();
}

}  // namespace

Json to_json(const StatusView& view, const Region& region) {
    Object out{region};
    out.text("id", base::print_id(view.id)).text("registration", view.registration);
    out.text("type", view.type).text("serial", view.serial).said("state", view.state_word);
    out.said("as_of", view.as_of).said("total", view.total);
    out.said("landings", view.landings).said("starts", view.starts);
    out.put("groups", list_of(view.groups, [&](const StatusGroup& group) {
                Object one{region};
                one.said("title", group.title);
                return one
                    .put("rows",
                         list_of(group.rows,
                                 [&](const StatusRow& row) { return row_json(row, region); }))
                    .take();
            }));
    out.put("parts",
            list_of(view.parts, [&](const StatusPart& part) { return part_json(part, region); }));
    return out.put("missing", said_json(view.missing, region)).take();
}

Json to_json(const PartHistoryView& view, const Region& region) {
    Object out{region};
    out.text("part", base::print_id(view.part)).said("name", view.name);
    out.said("part_number", view.part_number).said("where", view.where);
    out.said("since_new", view.since_new).said("since_overhaul", view.since_overhaul);
    out.said("condition", view.condition).said("papers", view.papers);
    out.put("rows", list_of(view.rows, [&](const PartHistoryRow& row) {
                Object one{region};
                one.said("days", row.days).said("host", row.host_name);
                one.said("position", row.position).said("gained", row.gained);
                return one.truth("estimated", row.estimated).take();
            }));
    return out.take();
}

}  // namespace twoclocks::views
