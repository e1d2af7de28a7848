#include "engine/views/print_views.hpp"

#include "engine/views/json_object.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Region;
using facts::Json;

[[nodiscard]] Json point_json(const BoxPoint& point) {
    Json out;
    out.type = Json::Type::list;
    for (const std::int32_t permille : {point.across_permille, point.up_permille}) {
        Json value;
        value.type = Json::Type::whole;
        value.whole = permille;
        out.items.push_back(value);
    }
    return out;
}

[[nodiscard]] Json box_json(const LifeBoxView& box, const Region& region) {
    Object out{region};
    out.truth("known", box.known);
    if (!box.known) return out.said("missing", box.missing).take();
    out.said("hours_edge", box.hours_edge).said("calendar_edge", box.calendar_edge);
    out.said("start", box.start).said("width", box.width);
    out.put("line", list_of(box.line, point_json)).truth("fan_known", box.fan_known);
    out.put("early", point_json(box.early))
        .put("likely", point_json(box.likely))
        .put("late", point_json(box.late));
    out.put("fan", list_of(box.fan, [&](const BoxSpread& one) {
                Object spread{region};
                spread.whole("across", one.across_permille).whole("early", one.early_permille);
                spread.whole("likely", one.likely_permille).whole("late", one.late_permille);
                return spread.take();
            }));
    out.text("meets", std::string{edge_word(box.meets)}).said("spoken", box.spoken);
    out.put("marks", list_of(box.marks, [&](const BoxMark& mark) {
                Object one{region};
                one.text("edge", std::string{edge_word(mark.edge)})
                    .whole("at_permille", mark.at_permille);
                return one.said("label", mark.label).take();
            }));
    return out.take();
}

[[nodiscard]] Json clock_json(const ClockView& clock, const Region& region) {
    Object out{region};
    out.truth("known", clock.known)
        .said("left", clock.left)
        .whole("left_permille", clock.left_permille);
    return out.truth("over", clock.over).take();
}

[[nodiscard]] Json directive_json(const DirectiveView& view, const Region& region) {
    Object out{region};
    out.said("name", view.name).said("standing", view.standing).said("last", view.last);
    out.said("method", view.method).said("means", view.means);
    out.put("next", list_of(view.next, [&](const Message& line) {
                return text_json(base::say(line, region));
            }));
    return out.take();
}

[[nodiscard]] Json due_json(const DueRow& row, const Region& region) {
    Object out{region};
    out.text("item", base::print_id(row.item)).text("name", row.name).said("state", row.state_word);
    if (!row.part.empty())
        out.text("part", base::print_id(row.part)).said("part_name", row.part_name);
    out.text("binding", std::string{edge_word(row.binding)});
    if (row.hours_left) out.put("hours_left", figure_json(*row.hours_left, region));
    if (row.calendar_left) out.put("calendar_left", figure_json(*row.calendar_left, region));
    if (row.count_left) out.put("count_left", figure_json(*row.count_left, region));
    if (row.wear) out.put("wear", figure_json(*row.wear, region));
    if (row.directive) out.put("directive", directive_json(*row.directive, region));
    return out.put("likely", figure_json(row.likely, region)).said("source", row.source).take();
}

[[nodiscard]] Json event_json(const EventView& event, const Region& region) {
    Object out{region};
    out.text("event", base::print_id(event.event)).put("what", figure_json(event.title, region));
    out.said("total", event.total).said("source", event.source).said("look", event.look);
    if (event.found.word != base::Word::blank) out.said("found", event.found);
    if (event.disputed.word != base::Word::blank) out.said("disputed", event.disputed);
    out.put("open", list_of(event.open, [&](const Message& one) {
                return text_json(base::say(one, region));
            }));
    return out.take();
}

[[nodiscard]] Json question_json(const QuestionView& question, const Region& region) {
    Object out{region};
    out.said("what", question.what).said("in_use", question.in_use);
    out.put("sides", list_of(question.sides, [&](const QuestionView::Side& side) {
                Object one{region};
                one.text("fact", base::print_id(side.fact)).said("value", side.value);
                one.said("told_by", side.told_by);
                one.put("differs", list_of(side.differs, [&](const Message& line) {
                            return text_json(base::say(line, region));
                        }));
                return one.take();
            }));
    return out.take();
}

}  // namespace

Json to_json(const FleetView& view, const Region& region) {
    Object out{region};
    out.truth("has_demo", view.has_demo);
    out.put("cards", list_of(view.cards, [&](const AircraftCard& card) {
                Object one{region};
                one.text("id", base::print_id(card.id)).text("registration", card.registration);
                one.said("state", card.state_word).said("sentence", card.sentence);
                if (card.questions.word != base::Word::blank) one.said("questions", card.questions);
                one.put("hours", clock_json(card.hours, region))
                    .put("calendar", clock_json(card.calendar, region));
                return one.put("box", box_json(card.box, region)).take();
            }));
    return out.take();
}

Json to_json(const AircraftView& view, const Region& region) {
    Object out{region};
    out.text("id", base::print_id(view.id)).text("registration", view.registration);
    out.text("type", view.type).text("serial", view.serial).said("state", view.state_word);
    if (!view.events.empty()) {
        out.put("events", list_of(view.events, [&](const EventView& one) {
                    return event_json(one, region);
                }));
    }
    out.put("answer", figure_json(view.answer, region))
        .put("hours_left", figure_json(view.hours_left, region));
    out.put("calendar_left", figure_json(view.calendar_left, region))
        .put("range", figure_json(view.range, region));
    out.put("total_time", figure_json(view.total_time, region))
        .put("rate", figure_json(view.rate, region));
    out.put("break_even", figure_json(view.break_even, region))
        .put("box", box_json(view.box, region));
    out.put("due", list_of(view.due, [&](const DueRow& row) { return due_json(row, region); }));
    out.put("questions",
            list_of(view.questions, [&](const auto& one) { return question_json(one, region); }));
    out.put("cautions", list_of(view.cautions, [&](const Message& one) {
                return text_json(base::say(one, region));
            }));
    return out.put("troubles", to_json(view.troubles, region)).take();
}

Json to_json(const HistoryView& view, const Region& region) {
    Object out{region};
    out.text("registration", view.registration);
    out.put("rows", list_of(view.rows, [&](const HistoryRow& row) {
                Object one{region};
                one.text("fact", base::print_id(row.fact))
                    .said("date", row.date)
                    .said("what", row.what);
                one.said("detail", row.detail)
                    .said("told_by", row.told_by)
                    .truth("corrected", row.corrected);
                one.truth("withdrawn", row.withdrawn).truth("questioned", row.questioned);
                return one.take();
            }));
    return out.take();
}

Json to_json(const LogView& view, const Region& region) {
    Object out{region};
    out.text("aircraft", base::print_id(view.aircraft)).text("registration", view.registration);
    return out.said("meter", view.meter_name)
        .said("last", view.last)
        .truth("has_meter", view.has_meter)
        .take();
}

Json to_json(const base::Problems& problems, const Region& region) {
    return list_of(problems, [&](const base::Problem& problem) {
        Object one{region};
        one.text("code", std::string{base::name_of(problem.code)})
            .text("what", base::say_what(problem, region));
        return one.text("remedy", base::say_remedy(problem, region))
            .whole("line", problem.line)
            .take();
    });
}

}  // namespace twoclocks::views
