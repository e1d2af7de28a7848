#include "engine/views/report_paper.hpp"

#include "engine/facts/parse.hpp"
#include "engine/views/calendar.hpp"
#include "engine/views/cash_view.hpp"
#include "engine/views/cores_view.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/money_view.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/paper.hpp"
#include "engine/views/plan_view.hpp"
#include "engine/views/reserve_view.hpp"
#include "engine/views/sale_view.hpp"
#include "engine/views/status_view.hpp"

namespace twoclocks::views {
namespace {

using base::Region;

constexpr std::int64_t day_ms = 86'400'000;

/// A fleet of a journal, and the aircraft that is asked for.
struct Reported {
    facts::Journal journal;
    std::vector<Assessed> fleet;
    std::size_t place{0};

    [[nodiscard]] const Assessed& aircraft() const { return fleet[place]; }
};

[[nodiscard]] std::optional<Reported> reported(std::string_view text,
                                               base::Date today,
                                               const std::string& registration) {
    Reported out;
    for (const facts::Fact& fact : facts::parse_journal(text).facts)
        out.journal.add(fact);
    std::optional<std::size_t> place;
    for (const base::Id& id : out.journal.aircraft()) {
        auto one = assess_recorded(out.journal, id, today);
        if (!one) continue;
        if (one->state.registration == registration) place = out.fleet.size();
        out.fleet.push_back(std::move(*one));
    }
    if (!place) return std::nullopt;
    out.place = *place;
    return out;
}

[[nodiscard]] std::optional<Paper> paper_named(const Reported& of,
                                               const Living& living,
                                               const std::string& page,
                                               const Region& region) {
    const Assessed& one = of.aircraft();
    const PaperHead head = paper_head(one, facts::fingerprint(of.journal));
    const auto made = [&](const auto& view) { return paper_of(view, head, region); };
    if (page == "status") return made(make_status_view(of.journal, one));
    if (page == "plan") return made(make_plan_view(one, living));
    if (page == "money") return made(make_money_view(one));
    if (page == "cores") return made(make_cores_view(one, living));
    if (page == "cash") return made(make_cash_view(one, living));
    if (page == "reserve") return made(make_reserve_view(one, living));
    if (page == "sale") return made(make_sale_view(one, std::nullopt));
    if (page == "closing") return made(make_closing_view(one));
    if (page != "compare") return std::nullopt;
    std::vector<const Assessed*> all;
    for (const Assessed& each : of.fleet)
        all.push_back(&each);
    return made(make_compare_view(all, std::nullopt));
}

}  // namespace

std::optional<std::string> report_paper(std::string_view journal_text,
                                        base::Date today,
                                        const PaperAsked& asked,
                                        const Region& region) {
    const auto of = reported(journal_text, today, asked.registration);
    if (!of) return std::nullopt;
    const Assessed& one = of->aircraft();
    const Living living = live(one, one.state.campaign, plan::campaign_count);
    if (asked.page == "days")
        return print_calendar(calendar_days(one, living),
                              today.day_number * day_ms,
                              static_cast<std::int64_t>(of->journal.facts().size()),
                              region);
    auto paper = paper_named(*of, living, asked.page, region);
    if (!paper) return std::nullopt;
    paper->box = make_aircraft_view(one).box;
    return asked.is_table ? print_csv(*paper, region) : print_html(*paper, region);
}

}  // namespace twoclocks::views
