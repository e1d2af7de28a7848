// How sure the date is, as JSON.
#include "engine/views/json_object.hpp"
#include "engine/views/print_views.hpp"

namespace twoclocks::views {
namespace {

using base::Region;
using base::Word;
using facts::Json;

[[nodiscard]] Json paths_json(const BothPathsView& view, const Region& region) {
    Object out{region};
    if (view.missing.word != Word::blank) out.said("missing", view.missing);
    out.said("when", view.when).said("given_up", view.given_up).said("meet", view.meet);
    out.put("paths", list_of(view.paths, [&](const BothPathsView::Path& path) {
                Object one{region};
                one.said("title", path.title).said("source", path.source);
                return one.said("next_stop", path.next_stop).said("after", path.after).take();
            }));
    out.put("items", list_of(view.items, [&](const PathItem& item) {
                Object one{region};
                one.text("name", item.name).said("calendar_path", item.calendar_path);
                return one.said("full_path", item.full_path).take();
            }));
    return out.said("others", view.others).take();
}

}  // namespace

Json to_json(const SureView& view, const Region& region) {
    Object out{region};
    out.text("id", base::print_id(view.id)).said("chance", view.chance);
    out.put("rows", list_of(view.rows, [&](const SureRow& row) {
                Object one{region};
                one.text("name", row.name).text("edge", std::string{edge_word(row.edge)});
                return one.said("likely", row.likely).said("range", row.range).take();
            }));
    if (view.months) out.put("months", chart_json(*view.months, region));
    out.put("look_back", said_json(view.look_back, region));
    out.put("plan", said_json(view.plan, region));
    return out.put("paths", paths_json(view.paths, region)).take();
}

}  // namespace twoclocks::views
