// Papers of the workshop: what is due, the history of a part, a list to work by.
#include <algorithm>

#include "engine/views/checks_view.hpp"
#include "engine/views/cores_view.hpp"
#include "engine/views/event_view.hpp"
#include "engine/views/paper_sheet.hpp"
#include "engine/views/plan_view.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Region;
using base::Word;

[[nodiscard]] Message text_of(const std::optional<Figure>& figure) {
    return figure ? figure->text : Message{Word::blank, {}};
}

/// What a directive says of itself, below its item.
[[nodiscard]] std::vector<Message> directive_lines(const DueRow& row) {
    if (!row.directive) return {};
    const DirectiveView& directive = *row.directive;
    std::vector<Message> out{
        directive.name, directive.standing, directive.last, directive.method, directive.means};
    out.insert(out.end(), directive.next.begin(), directive.next.end());
    return out;
}

/// Name, what is said of it, what is left, when.
[[nodiscard]] std::vector<std::string> due_cells(const DueRow& row, const Sheet& sheet) {
    std::vector<Message> below{row.state_word, row.part_name, row.source};
    const std::vector<Message> directive = directive_lines(row);
    below.insert(below.end(), directive.begin(), directive.end());
    return {row.name,
            sheet.cell(below),
            sheet.cell({text_of(row.hours_left),
                        text_of(row.calendar_left),
                        sheet.labelled(Word::label_count_left, text_of(row.count_left)),
                        text_of(row.wear)}),
            sheet.said(row.likely.text)};
}

[[nodiscard]] std::string to_sign(const Sheet& sheet) {
    return sheet.said({Word::paper_to_sign, {}});
}

void put_events(const std::vector<EventView>& events, bool is_to_sign, Sheet& sheet) {
    PaperBlock block{{Word::paper_work_events, {}}, {}, {}};
    for (const EventView& event : events) {
        std::vector<Message> lines{
            event.total, event.found, event.source, event.disputed, event.look};
        lines.insert(lines.end(), event.open.begin(), event.open.end());
        block.rows.push_back({sheet.said(event.title.text), sheet.cell(lines)});
        if (is_to_sign) block.rows.back().push_back(to_sign(sheet));
    }
    sheet.put(std::move(block));
}

void put_spells(const std::vector<PartHistoryRow>& rows, Sheet& sheet) {
    PaperBlock block{{Word::heading_spells, {}}, {}, {}};
    for (const PartHistoryRow& row : rows) {
        std::vector<Message> lines{row.position};
        for (const Aboard& aboard : row.aboard)
            lines.push_back({Word::part_aboard,
                             {base::text_arg(sheet.said(aboard.aircraft_name)),
                              base::text_arg(sheet.said(aboard.days))}});
        block.rows.push_back({sheet.said(row.host_name),
                              sheet.cell(lines),
                              sheet.said(row.days),
                              sheet.said(row.gained)});
    }
    sheet.put(std::move(block));
}

}  // namespace

PaperHead paper_head(const PartHistoryView& part,
                     base::Date today,
                     std::string fingerprint,
                     bool is_invented,
                     const Region& region) {
    std::string plate = base::say(part.name, region);
    if (part.part_number.word != Word::blank) plate += ", " + base::say(part.part_number, region);
    return {std::move(plate), today, std::move(fingerprint), is_invented};
}

bool was_aboard(const PartHistoryView& part, base::Id aircraft) {
    return std::any_of(part.rows.begin(), part.rows.end(), [&](const PartHistoryRow& row) {
        return row.aircraft == aircraft ||
               std::any_of(row.aboard.begin(), row.aboard.end(), [&](const Aboard& aboard) {
                   return aboard.aircraft == aircraft;
               });
    });
}

Paper paper_of(const ChecksView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::paper_due, {base::text_arg(view.registration)}}, head, region};
    sheet.lines({Word::blank, {}}, {view.summary});
    for (const ChecksGroup& group : view.groups) {
        PaperBlock block{group.title, {}, {}};
        for (const CheckRow& row : group.rows)
            block.rows.push_back(due_cells(row.due, sheet));
        sheet.put(std::move(block));
    }
    return sheet.done({});
}

Paper paper_of(const PartHistoryView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::paper_part, {base::text_arg(base::say(view.name, region))}}, head, region};
    std::vector<Message> top{view.where,
                             sheet.labelled(Word::field_part_number, view.part_number),
                             sheet.labelled(Word::label_since_new, view.hours_new.text),
                             sheet.labelled(Word::label_since_overhaul, view.hours_overhaul.text),
                             sheet.labelled(Word::field_condition, view.condition),
                             sheet.labelled(Word::field_owner, view.owner),
                             sheet.labelled(Word::field_lent_until, view.returns),
                             sheet.labelled(Word::field_papers, view.papers)};
    if (view.history_unknown) top.push_back({Word::part_history_unknown, {}});
    if (view.unknown) top.push_back({Word::part_unknown, {}});
    sheet.lines({Word::blank, {}}, std::move(top));
    sheet.faults(view.troubles);
    put_events(view.events, false, sheet);
    PaperBlock due{{Word::heading_due, {}}, {}, {}};
    for (const DueRow& row : view.due)
        due.rows.push_back(due_cells(row, sheet));
    sheet.put(std::move(due));
    put_spells(view.rows, sheet);
    return sheet.done({});
}

WorkList make_work_list(const Assessed& aircraft, const Living& living) {
    WorkList out{make_plan_view(aircraft, living), {}, {}, make_cores_view(aircraft, living)};
    ChecksAsked asked;
    asked.until = out.plan.as_it_stands.back_on;
    out.due = make_checks_view(aircraft, asked);
    out.events = make_event_views(aircraft.state.events);
    return out;
}

Paper paper_of(const WorkList& list, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::paper_work, {base::text_arg(list.plan.registration)}}, head, region};
    sheet.lines({Word::blank, {}}, {list.plan.missing, list.plan.stop.text, list.plan.back.text});
    put_events(list.events, true, sheet);
    PaperBlock tasks{{Word::paper_tasks, {}}, {}, {}};
    for (const PlanTaskRow& row : list.plan.rows)
        tasks.rows.push_back({sheet.said(row.name),
                              sheet.said(row.days),
                              row.done ? std::string{} : to_sign(sheet)});
    sheet.put(std::move(tasks));
    PaperBlock due{{Word::paper_work_due, {}}, {}, {}};
    if (!list.plan.as_it_stands.back_on) due.lines.push_back({Word::paper_work_undated, {}});
    for (const ChecksGroup& group : list.due.groups)
        for (const CheckRow& row : group.rows) {
            due.rows.push_back(due_cells(row.due, sheet));
            due.rows.back().push_back(to_sign(sheet));
        }
    sheet.put(std::move(due));
    for (const SumsBlock& of_cores : list.cores.blocks) {
        const bool is_here = of_cores.title.word == Word::cores_now ||
                             of_cores.title.word == Word::cores_on_aircraft;
        if (!is_here) continue;
        PaperBlock block{of_cores.title, {}, {}};
        for (const SumsRow& row : of_cores.rows)
            block.rows.push_back(
                {sheet.said(row.name), sheet.cell(row.lines, row.notes), to_sign(sheet)});
        sheet.put(std::move(block));
    }
    return sheet.done({{Word::paper_work_note, {}}});
}

}  // namespace twoclocks::views
