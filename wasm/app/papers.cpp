#include "wasm/app/papers.hpp"

#include "wasm/app/plan.hpp"
#include "wasm/app/sharing.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/facts/journal.hpp"
#include "engine/views/calendar.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/paper.hpp"

namespace twoclocks::canvas {
namespace {

using As = intent::HandOver::As;

/// The page that is open, as a paper; nothing where it is none.
[[nodiscard]] std::optional<views::Paper> paper_of_page(const AppState::Inside& in,
                                                        const views::PaperHead& head) {
    return std::visit(
        [&](const auto& page) -> std::optional<views::Paper> {
            if constexpr (requires { views::paper_of(page, head, in.region); })
                return views::paper_of(page, head, in.region);
            else if constexpr (requires { views::paper_of(page.view, head, in.region); })
                return views::paper_of(page.view, head, in.region);
            else
                return std::nullopt;
        },
        in.screen.page);
}

/// What the papers of several aircraft bear.
[[nodiscard]] views::PaperHead head_of_all(const AppState::Inside& in) {
    const bool is_invented = std::any_of(in.fleet.begin(), in.fleet.end(), [](const auto& each) {
        return each.second.state.invented;
    });
    return views::paper_head(in.today, facts::fingerprint(in.ledger.visible()), is_invented);
}

/// The history of the part that is open, as a paper.
[[nodiscard]] views::Paper paper_of_part(const AppState::Inside& in,
                                         const views::PartHistoryView& part) {
    const bool is_invented = std::any_of(in.fleet.begin(), in.fleet.end(), [&](const auto& each) {
        return each.second.state.invented && views::was_aboard(part, each.first);
    });
    return views::paper_of(
        part,
        views::paper_head(
            part, in.today, facts::fingerprint(in.ledger.visible()), is_invented, in.region),
        in.region);
}

/// The kind of page, for the name of its file.
[[nodiscard]] std::string kind_of(const Page& page) {
    if (const auto* sums = std::get_if<SumsPage>(&page)) {
        constexpr std::array names{"cores", "cash", "reserve", "sale", "compare", "closing"};
        return names[static_cast<std::size_t>(sums->view.of)];
    }
    if (std::holds_alternative<views::FleetView>(page)) return "fleet";
    if (std::holds_alternative<views::HistoryView>(page)) return "history";
    if (std::holds_alternative<RoutesPage>(page)) return "routes";
    if (std::holds_alternative<StaggerPage>(page)) return "order";
    if (std::holds_alternative<PartsPage>(page)) return "parts";
    if (std::holds_alternative<MoneyPage>(page)) return "money";
    if (std::holds_alternative<ChecksPage>(page)) return "due";
    if (std::holds_alternative<PartPage>(page)) return "part";
    return std::holds_alternative<PlanPage>(page) ? "plan" : "status";
}

/// Hands files over and says so.
class Handing {
  public:
    Handing(AppState::Inside& in, std::string name) : in_(in), name_(std::move(name)) {}

    void bytes(const std::string& kind, const char* ending, const std::string& bytes) {
        const std::string name = file_name(in_, name_, kind, ending);
        in_.host.hand_over_file(name, bytes);
        in_.notify({base::Word::paper_done, {base::text_arg(name)}});
    }

    void paper(const std::string& kind, As as, const views::Paper& paper) {
        if (as == As::table)
            bytes(kind, ".csv", views::print_csv(paper, in_.region));
        else if (as == As::print)
            in_.host.print_paper(file_name(in_, name_, kind, ""),
                                 views::print_html(paper, in_.region));
        else
            bytes(kind, ".html", views::print_html(paper, in_.region));
    }

  private:
    AppState::Inside& in_;
    std::string name_;
};

/// What the campaign of the aircraft is needed for.
void hand_over_planned(AppState::Inside& in, const views::Assessed& aircraft, As as) {
    if (!in.lives.are_over({as_planned(aircraft)})) return;
    const views::Living& living = in.lives.of(as_planned(aircraft));
    Handing handing{in, aircraft.state.registration};
    if (as == As::calendar) {
        const auto count = static_cast<std::int64_t>(in.ledger.visible().facts().size());
        handing.bytes("days",
                      ".ics",
                      views::print_calendar(
                          views::calendar_days(aircraft, living), in.wall_ms, count, in.region));
        return;
    }
    const auto head = views::paper_head(aircraft, facts::fingerprint(in.ledger.visible()));
    handing.paper("work",
                  As::paper,
                  views::paper_of(views::make_work_list(aircraft, living), head, in.region));
}

}  // namespace

void open_page(AppState::Inside& in, const intent::HandOver& intent) {
    if (const auto* part = std::get_if<PartPage>(&in.screen.page)) {
        Handing handing{in, base::say(part->view.name, in.region)};
        handing.paper(kind_of(in.screen.page), intent.as, paper_of_part(in, part->view));
        return;
    }
    const views::Assessed* aircraft = in.assessed(in.here().subject);
    if (intent.as == As::calendar || intent.as == As::work_list) {
        if (aircraft != nullptr) hand_over_planned(in, *aircraft, intent.as);
        return;
    }
    // What compares several is of none of them.
    const auto* sums = std::get_if<SumsPage>(&in.screen.page);
    if (sums != nullptr && sums->view.of == views::SumsOf::compare) aircraft = nullptr;
    auto paper =
        paper_of_page(in,
                      aircraft == nullptr
                          ? head_of_all(in)
                          : views::paper_head(*aircraft, facts::fingerprint(in.ledger.visible())));
    if (!paper) return;
    const bool is_of_records = std::holds_alternative<views::HistoryView>(in.screen.page) ||
                               std::holds_alternative<PartsPage>(in.screen.page);
    if (aircraft != nullptr && !is_of_records)
        paper->box = views::make_aircraft_view(*aircraft).box;
    Handing handing{in, aircraft == nullptr ? std::string{"fleet"} : aircraft->state.registration};
    handing.paper(kind_of(in.screen.page), intent.as, *paper);
}

}  // namespace twoclocks::canvas
