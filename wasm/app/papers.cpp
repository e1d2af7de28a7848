#include "wasm/app/papers.hpp"

#include "wasm/app/plan.hpp"

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
    const Page& page = in.screen.page;
    if (const auto* sums = std::get_if<SumsPage>(&page))
        return views::paper_of(sums->view, head, in.region);
    if (const auto* money = std::get_if<MoneyPage>(&page))
        return views::paper_of(money->view, head, in.region);
    if (const auto* plan = std::get_if<PlanPage>(&page))
        return views::paper_of(plan->view, head, in.region);
    if (const auto* status = std::get_if<views::StatusView>(&page))
        return views::paper_of(*status, head, in.region);
    return std::nullopt;
}

/// The kind of page, for the name of its file.
[[nodiscard]] std::string kind_of(const Page& page) {
    if (const auto* sums = std::get_if<SumsPage>(&page)) {
        constexpr std::array names{"cores", "cash", "reserve", "sale", "compare", "closing"};
        return names[static_cast<std::size_t>(sums->view.of)];
    }
    if (std::holds_alternative<MoneyPage>(page)) return "money";
    return std::holds_alternative<PlanPage>(page) ? "plan" : "status";
}

/// Letters and digits of any registration; the rest would be no name of a file.
[[nodiscard]] std::string file_name(const AppState::Inside& in,
                                    const std::string& registration,
                                    const std::string& kind,
                                    const char* ending) {
    std::string out;
    for (const char sign : registration) {
        const bool is_plain = (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z') ||
                              (sign >= '0' && sign <= '9') || sign == '-';
        out += is_plain ? sign : '_';
    }
    return out + '-' + kind + '-' + base::print_date(in.today) + ending;
}

}  // namespace

void open_page(AppState::Inside& in, const intent::HandOver& intent) {
    const views::Assessed* aircraft = in.assessed(in.here().subject);
    if (aircraft == nullptr) return;
    const std::string& registration = aircraft->state.registration;
    const auto hand_over = [&](const std::string& name, const std::string& bytes) {
        in.host.hand_over_file(name, bytes);
        in.notify({base::Word::paper_done, {base::text_arg(name)}});
    };
    if (intent.as == As::calendar) {
        if (!in.lives.are_over({as_planned(*aircraft)})) return;
        const auto count = static_cast<std::int64_t>(in.ledger.visible().facts().size());
        const auto days = views::calendar_days(*aircraft, in.lives.of(as_planned(*aircraft)));
        hand_over(file_name(in, registration, "days", ".ics"),
                  views::print_calendar(days, in.wall_ms, count, in.region));
        return;
    }
    auto paper =
        paper_of_page(in, views::paper_head(*aircraft, facts::fingerprint(in.ledger.visible())));
    if (!paper) return;
    paper->box = views::make_aircraft_view(*aircraft).box;
    const std::string kind = kind_of(in.screen.page);
    if (intent.as == As::table)
        hand_over(file_name(in, registration, kind, ".csv"), views::print_csv(*paper, in.region));
    else
        hand_over(file_name(in, registration, kind, ".html"), views::print_html(*paper, in.region));
}

}  // namespace twoclocks::canvas
