#include "engine/views/paper.hpp"

#include "engine/views/paper_sheet.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Region;
using base::Word;

}  // namespace

PaperHead paper_head(const Assessed& aircraft, std::string fingerprint) {
    const timeline::AircraftState& state = aircraft.state;
    std::string plate = state.registration;
    for (const std::string* const more : {&state.type, &state.serial})
        if (!more->empty()) plate += ", " + *more;
    return {std::move(plate), aircraft.today, std::move(fingerprint), state.invented};
}

Paper paper_of(const SumsView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{sums_title(view.of), {base::text_arg(view.registration)}}, head, region};
    std::vector<Message> top{view.missing};
    for (const Figure& figure : view.top)
        top.push_back(figure.text);
    top.insert(top.end(), view.told.begin(), view.told.end());
    sheet.lines({Word::blank, {}}, std::move(top));
    sheet.faults(view.faults);
    for (const SumsBlock& block : view.blocks) {
        PaperBlock out{block.title, block.lines, {}};
        for (const SumsPair& pair : block.pairs)
            out.rows.push_back(
                {sheet.said(pair.name), sheet.said(pair.below), sheet.said(pair.figure)});
        for (const SumsRow& row : block.rows)
            out.rows.push_back(
                {sheet.said(row.name), sheet.cell(row.lines, row.notes), sheet.said(row.figure)});
        sheet.put(std::move(out));
    }
    return sheet.done(view.notes);
}

Paper paper_of(const StatusView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::title_status_of, {base::text_arg(view.registration)}}, head, region};
    sheet.lines({Word::blank, {}},
                {view.state_word,
                 sheet.labelled(Word::label_total_time, view.total.text),
                 sheet.labelled(Word::label_landings, view.landings.text),
                 sheet.labelled(Word::label_starts, view.starts.text)});
    for (const StatusGroup& group : view.groups) {
        PaperBlock out{group.title, {}, {}};
        for (const StatusRow& row : group.rows) {
            std::vector<Message> left;
            std::vector<Message> next;
            for (const StatusClock& clock : row.clocks) {
                left.push_back(clock.left);
                next.push_back(clock.next);
            }
            out.rows.push_back({row.name,
                                sheet.cell({row.state_word, row.last, row.method, row.source}),
                                sheet.cell(left),
                                sheet.cell(next)});
        }
        sheet.put(std::move(out));
    }
    PaperBlock parts{{Word::paper_parts, {}}, {}, {}};
    for (const StatusPart& part : view.parts)
        parts.rows.push_back({part.name + '\n' + sheet.said(part.plate),
                              sheet.said(part.papers),
                              sheet.said(part.since_new.text),
                              sheet.said(part.since_overhaul.text)});
    sheet.put(std::move(parts));
    sheet.lines({Word::paper_missing, {}}, view.missing);
    return sheet.done({});
}

Paper paper_of(const MoneyView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::money_title, {base::text_arg(view.registration)}}, head, region};
    sheet.lines({Word::blank, {}},
                {view.missing,
                 view.route,
                 view.gross.text,
                 view.back.text,
                 view.net.text,
                 view.range,
                 view.not_whole});
    sheet.faults(view.faults);
    PaperBlock rows{{Word::money_lines, {}}, {}, {}};
    for (const MoneyRow& row : view.rows)
        rows.rows.push_back({sheet.said(row.name),
                             sheet.cell(row.lines, row.notes),
                             sheet.cell(row.workings),
                             sheet.said(row.sum)});
    sheet.put(std::move(rows));
    PaperBlock paths{{Word::money_paths, {}}, {}, {}};
    for (const MoneyPath& path : view.paths)
        paths.rows.push_back({sheet.said(path.name), sheet.cell(path.lines), sheet.said(path.net)});
    sheet.put(std::move(paths));
    sheet.lines({Word::money_currencies, {}}, view.currencies);
    return sheet.done(view.notes);
}

Paper paper_of(const PlanView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::title_plan, {base::text_arg(view.registration)}}, head, region};
    sheet.lines({Word::blank, {}},
                {view.missing,
                 view.order.text,
                 view.book.text,
                 view.stop.text,
                 view.back.text,
                 view.window,
                 view.confidence});
    sheet.faults(view.faults);
    PaperBlock tasks{{Word::paper_tasks, {}}, {}, {}};
    for (const PlanTaskRow& row : view.rows)
        tasks.rows.push_back(
            {sheet.said(row.name), sheet.said(row.estimate), sheet.said(row.days)});
    sheet.put(std::move(tasks));
    return sheet.done(view.notes);
}

}  // namespace twoclocks::views
