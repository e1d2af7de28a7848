// Papers of lists: the fleet, parts, records, routes, who goes in when.
#include "engine/views/paper_sheet.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Region;
using base::Word;

[[nodiscard]] Message titled(Word of_one, Word of_all, const std::string& registration) {
    if (registration.empty()) return {of_all, {}};
    return {of_one, {base::text_arg(registration)}};
}

}  // namespace

PaperHead paper_head(base::Date today, std::string fingerprint, bool is_invented) {
    return {{}, today, std::move(fingerprint), is_invented};
}

Paper paper_of(const FleetView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::tab_fleet, {}}, head, region};
    PaperBlock block{{Word::fleet_list, {}}, {}, {}};
    for (const AircraftCard& card : view.cards)
        block.rows.push_back({card.registration,
                              sheet.cell({card.state_word, card.sentence, card.questions}),
                              sheet.said(card.hours.left),
                              sheet.said(card.calendar.left)});
    sheet.put(std::move(block));
    return sheet.done({});
}

Paper paper_of(const PartListView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{titled(Word::title_parts_of, Word::title_parts, view.registration), head, region};
    sheet.lines({Word::blank, {}}, {view.summary});
    for (const PartGroup& group : view.groups) {
        PaperBlock block{group.title, {}, {}};
        for (const PartRow& row : group.rows) {
            std::vector<Message> below{row.plate, row.position, row.condition};
            below.insert(below.end(), row.marks.begin(), row.marks.end());
            block.rows.push_back({sheet.said(row.name),
                                  sheet.cell(below),
                                  sheet.said(row.since_new),
                                  sheet.said(row.since_overhaul)});
        }
        sheet.put(std::move(block));
    }
    return sheet.done({});
}

Paper paper_of(const HistoryView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{titled(Word::title_history_of, Word::tab_history, view.registration), head, region};
    PaperBlock block{{Word::history_list, {}}, {}, {}};
    for (const HistoryRow& row : view.rows) {
        const std::pair<bool, Word> marks[] = {{row.corrected, Word::flag_corrected},
                                               {row.withdrawn, Word::flag_withdrawn},
                                               {row.questioned, Word::flag_questioned}};
        std::vector<Message> below{row.detail, row.told_by};
        for (const auto& [is_so, word] : marks)
            if (is_so) below.push_back({word, {}});
        block.rows.push_back({sheet.said(row.what), sheet.cell(below), sheet.said(row.date)});
    }
    sheet.put(std::move(block));
    return sheet.done({});
}

Paper paper_of(const RoutesView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::routes_title, {base::text_arg(view.registration)}}, head, region};
    sheet.lines({Word::blank, {}}, {view.missing});
    PaperBlock block;
    for (const RouteRow& row : view.rows) {
        std::vector<Message> below{row.who, row.mark};
        below.insert(below.end(), row.praise.begin(), row.praise.end());
        below.insert(below.end(), row.lines.begin(), row.lines.end());
        block.rows.push_back({sheet.said(row.name),
                              sheet.cell(below),
                              sheet.cell({sheet.labelled(Word::route_days_out, row.days),
                                          sheet.labelled(Word::route_late_chance, row.late),
                                          sheet.labelled(Word::route_hours_used, row.hours)}),
                              sheet.said(row.cost)});
    }
    sheet.put(std::move(block));
    return sheet.done(view.notes);
}

Paper paper_of(const StaggerView& view, const PaperHead& head, const Region& region) {
    Sheet sheet{{Word::stagger_title, {}}, head, region};
    std::vector<Message> top{view.missing};
    top.insert(top.end(), view.bounds.begin(), view.bounds.end());
    sheet.lines({Word::blank, {}}, std::move(top));
    PaperBlock block;
    for (const StaggerRow& row : view.rows)
        block.rows.push_back({sheet.said(row.name), sheet.said(row.reason), sheet.said(row.days)});
    sheet.put(std::move(block));
    return sheet.done(view.notes);
}

}  // namespace twoclocks::views
