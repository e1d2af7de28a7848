#include "engine/views/json_object.hpp"

namespace twoclocks::views {

using base::Region;
using facts::Json;

Json text_json(std::string text) {
    Json out;
    out.type = Json::Type::text;
    out.text = std::move(text);
    return out;
}

std::string_view edge_word(Edge edge) {
    switch (edge) {
        case Edge::none:
            return "none";
        case Edge::hours:
            return "hours";
        case Edge::calendar:
            return "calendar";
        case Edge::count:
            return "count";
    }
    return "none";
}

Json why_json(const Why& why, const Region& region) {
    Object out{region};
    out.said("title", why.title).said("figure", why.figure);
    out.put("lines", list_of(why.lines, [&](const WhyLine& line) {
                Object one{region};
                one.said("text", line.text);
                if (line.fact) one.text("fact", base::print_id(*line.fact));
                return one.take();
            }));
    return out.take();
}

Json figure_json(const Figure& figure, const Region& region) {
    Object out{region};
    out.said("text", figure.text).questioned("questioned", figure.questioned);
    return out.put("why", why_json(figure.why, region)).take();
}

Json said_json(const std::vector<base::Message>& lines, const Region& region) {
    return list_of(lines,
                   [&](const base::Message& line) { return text_json(base::say(line, region)); });
}

Json chart_json(const ChartView& chart, const Region& region) {
    Object out{region};
    out.said("title", chart.title).said("greatest", chart.greatest).said("spoken", chart.spoken);
    out.put("bars", list_of(chart.bars, [&](const ChartBar& bar) {
                Object one{region};
                one.said("label", bar.label).whole("permille", bar.permille);
                return one.truth("planned", bar.planned).take();
            }));
    return out.take();
}

}  // namespace twoclocks::views
