#include "engine/views/report_paper.hpp"

#include <algorithm>
#include <array>
#include <map>

#include "engine/facts/parse.hpp"
#include "engine/timeline/parts.hpp"
#include "engine/views/calendar.hpp"
#include "engine/views/cash_view.hpp"
#include "engine/views/checks_view.hpp"
#include "engine/views/cores_view.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/money_view.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/paper.hpp"
#include "engine/views/part_list_view.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/plan_view.hpp"
#include "engine/views/reserve_view.hpp"
#include "engine/views/routes_view.hpp"
#include "engine/views/sale_view.hpp"
#include "engine/views/stagger_view.hpp"
#include "engine/views/status_view.hpp"

namespace twoclocks::views {
namespace {

using base::Region;

constexpr std::int64_t day_ms = 86'400'000;

/// A fleet of a journal, and the aircraft that is asked for.
struct Reported {
    facts::Journal journal;
    std::vector<Assessed> fleet;
    std::optional<std::size_t> place{};

    [[nodiscard]] const Assessed& aircraft() const { return fleet[*place]; }
};

[[nodiscard]] Reported reported(std::string_view text,
                                base::Date today,
                                const std::string& registration) {
    Reported out;
    for (const facts::Fact& fact : facts::parse_journal(text).facts)
        out.journal.add(fact);
    for (const base::Id& id : out.journal.aircraft()) {
        auto one = assess_recorded(out.journal, id, today);
        if (!one) continue;
        if (one->state.registration == registration) out.place = out.fleet.size();
        out.fleet.push_back(std::move(*one));
    }
    return out;
}

/// The history of the part with a serial number.
[[nodiscard]] std::optional<Paper> part_paper(const Reported& of,
                                              base::Date today,
                                              const std::string& serial,
                                              const Region& region) {
    for (const timeline::PartState& part : timeline::replay_parts(of.journal, today)) {
        if (part.serial != serial) continue;
        const PartHistoryView view = part_history(of.journal, part, today);
        const bool is_invented =
            std::any_of(of.fleet.begin(), of.fleet.end(), [&](const Assessed& one) {
                return one.state.invented && was_aboard(view, one.state.id);
            });
        return paper_of(
            view,
            paper_head(view, today, facts::fingerprint(of.journal), is_invented, region),
            region);
    }
    return std::nullopt;
}

/// As asked for: a table or a paper.
[[nodiscard]] std::string printed(const Paper& paper, bool is_table, const Region& region) {
    return is_table ? print_csv(paper, region) : print_html(paper, region);
}

/// A paper of the whole fleet.
[[nodiscard]] std::optional<Paper> paper_of_all(const Reported& of,
                                                const std::string& page,
                                                const Region& region) {
    const bool is_invented = std::any_of(
        of.fleet.begin(), of.fleet.end(), [](const auto& one) { return one.state.invented; });
    const PaperHead head =
        paper_head(of.aircraft().today, facts::fingerprint(of.journal), is_invented);
    std::vector<const Assessed*> all;
    for (const Assessed& each : of.fleet)
        all.push_back(&each);
    if (page == "fleet") return paper_of(make_fleet_view(of.fleet), head, region);
    if (page == "order") return paper_of(make_stagger_view(all), head, region);
    if (page != "compare") return std::nullopt;
    return paper_of(make_compare_view(all, std::nullopt), head, region);
}

[[nodiscard]] std::optional<Paper> paper_named(const Reported& of,
                                               const Living& living,
                                               const std::string& page,
                                               const Region& region) {
    const Assessed& one = of.aircraft();
    const PaperHead head = paper_head(one, facts::fingerprint(of.journal));
    const auto made = [&](const auto& view) { return paper_of(view, head, region); };
    if (page == "status") return made(make_status_view(of.journal, one));
    if (page == "due") return made(make_checks_view(one, {}));
    if (page == "work") return made(make_work_list(one, living));
    if (page == "plan") return made(make_plan_view(one, living));
    if (page == "money") return made(make_money_view(one));
    if (page == "cores") return made(make_cores_view(one, living));
    if (page == "cash") return made(make_cash_view(one, living));
    if (page == "reserve") return made(make_reserve_view(one, living));
    if (page == "sale") return made(make_sale_view(one, std::nullopt));
    if (page == "closing") return made(make_closing_view(one));
    if (page == "history")
        return made(make_history_view(of.journal, one.state.id, one.state.registration));
    if (page == "routes") return made(make_routes_view(one));
    if (page == "parts") {
        std::map<base::Id, std::string> names;
        for (const Assessed& each : of.fleet)
            names[each.state.id] = each.state.registration;
        return made(
            make_part_list(timeline::replay_parts(of.journal, one.today), names, one.state.id, {}));
    }
    return paper_of_all(of, page, region);
}

}  // namespace

std::optional<std::string> report_paper(std::string_view journal_text,
                                        base::Date today,
                                        const PaperAsked& asked,
                                        const Region& region) {
    const Reported of = reported(journal_text, today, asked.registration);
    if (asked.page == "part") {
        const auto paper = part_paper(of, today, asked.registration, region);
        return paper ? std::optional{printed(*paper, asked.is_table, region)} : std::nullopt;
    }
    if (!of.place) return std::nullopt;
    const Assessed& one = of.aircraft();
    const Living living = live(one, one.state.campaign, plan::campaign_count);
    if (asked.page == "days")
        return print_calendar(calendar_days(one, living),
                              today.day_number * day_ms,
                              static_cast<std::int64_t>(of.journal.facts().size()),
                              region);
    auto paper = paper_named(of, living, asked.page, region);
    if (!paper) return std::nullopt;
    // What is of several, or of records, bears no box.
    constexpr std::array without{"compare", "fleet", "order", "history", "parts"};
    const bool has_box = std::find(without.begin(), without.end(), asked.page) == without.end();
    if (has_box) paper->box = make_aircraft_view(one).box;
    return printed(*paper, asked.is_table, region);
}

}  // namespace twoclocks::views
