// From where the person is to what the page shows.
#include "wasm/app/inside.hpp"
#include "wasm/app/money.hpp"
#include "wasm/app/plan.hpp"
#include "wasm/app/specimen.hpp"
#include "wasm/app/sums.hpp"
#include "wasm/app/sure.hpp"
#include "wasm/app/working.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/facts/journal.hpp"
#include "engine/views/money_view.hpp"
#include "engine/views/plan_view.hpp"
#include "engine/views/return_view.hpp"
#include "engine/views/status_view.hpp"
#include "engine/views/sure_view.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

[[nodiscard]] LogPage log_page(const Inside& in) {
    LogPage page;
    for (const auto& [id, aircraft] : in.fleet)
        page.choices.push_back(views::make_log_view(aircraft));
    base::sort_stably(page.choices, [](const auto& left, const auto& right) {
        return left.registration < right.registration;
    });
    return page;
}

[[nodiscard]] FormPage form_page(const Inside& in) {
    const Form& form = in.form;
    FormPage page = page_of_form(form);
    page.can_clear = is_touched(form, in.entry.fresh);
    if (page.can_clear) page.draft_note = in.entry.note;
    return page;
}

[[nodiscard]] LogPage pad_of(const Inside& in, const views::Assessed& aircraft) {
    LogPage page{{}, pad_page(in.pad, aircraft)};
    if (page.pad->can_clear) page.pad->draft_note = in.entry.note;
    return page;
}

[[nodiscard]] views::FleetView fleet_page(const Inside& in) {
    views::FleetView page = views::make_fleet_view(in.fleet_list());
    page.reminder = copy_reminder(in);
    return page;
}

/// What a person calls an aircraft or a part; nothing when it is neither.
[[nodiscard]] std::string name_of(Inside& in, base::Id subject) {
    if (const views::Assessed* found = in.assessed(subject)) return found->state.registration;
    const timeline::PartState* part = subject.empty() ? nullptr : in.part(subject);
    return part == nullptr ? std::string{} : timeline::part_label(*part);
}

/// Where the person is; for a form, where it was opened from.
[[nodiscard]] const Place& ground_of(const Inside& in) {
    std::size_t last = in.places.size() - 1;
    while (last > 0 && in.places[last].kind == Place::Kind::form)
        --last;
    return in.places[last];
}

/// The list a page was chosen from; none for a page that was not chosen from one.
[[nodiscard]] std::optional<Beside> beside_of(Inside& in) {
    const Place& here = ground_of(in);
    const bool form = in.here().kind == Place::Kind::form;
    if (!in.caution_accepted || in.fleet.empty()) return std::nullopt;
    switch (here.kind) {
        case Place::Kind::fleet: {
            views::FleetView fleet = fleet_page(in);
            const base::Id first = fleet.cards.front().id;
            return Beside{std::move(fleet), form ? in.form.aircraft : first};
        }
        case Place::Kind::aircraft:
        case Place::Kind::checks:
        case Place::Kind::status:
        case Place::Kind::on_return:
        case Place::Kind::sure:
        case Place::Kind::plan:
        case Place::Kind::routes:
        case Place::Kind::stagger:
        case Place::Kind::money:
        case Place::Kind::sums:
        case Place::Kind::parts:
            return Beside{fleet_page(in), here.subject};
        case Place::Kind::part: {
            const timeline::PartState* part = in.part(here.subject);
            return Beside{fleet_page(in), part == nullptr ? base::Id{} : part->aircraft};
        }
        case Place::Kind::log:
        case Place::Kind::pad:
            return Beside{log_page(in), here.subject};
        case Place::Kind::history: {
            const auto* record = std::get_if<RecordSheet>(&in.sheet);
            const base::Id open = record == nullptr ? base::Id{} : record->row.fact;
            return Beside{views::make_history_view(
                              in.ledger.visible(), here.subject, name_of(in, here.subject)),
                          form ? in.form.subject : open};
        }
        case Place::Kind::files:
        case Place::Kind::form:
        case Place::Kind::specimen:
            return std::nullopt;
    }
    return std::nullopt;
}

/// What stands right of a list from which nothing was chosen by hand.
[[nodiscard]] Page page_beside(const Inside& in, const Beside& beside) {
    if (const auto* fleet = std::get_if<views::FleetView>(&beside.list)) {
        return views::make_aircraft_view(*in.assessed(fleet->cards.front().id));
    }
    if (const auto* record = std::get_if<RecordSheet>(&in.sheet)) return *record;
    const bool log = std::holds_alternative<LogPage>(beside.list);
    return NothingChosenPage{{log ? Word::log_choose : Word::history_choose, {}}};
}

[[nodiscard]] Page page_of(Inside& in) {
    if (!in.caution_accepted) return WelcomePage{};
    const Place& here = in.here();
    const views::Assessed* aircraft = in.assessed(here.subject);
    const bool about_one = here.kind == Place::Kind::aircraft || here.kind == Place::Kind::pad ||
                           here.kind == Place::Kind::checks || here.kind == Place::Kind::status ||
                           here.kind == Place::Kind::on_return || here.kind == Place::Kind::sure ||
                           here.kind == Place::Kind::plan || here.kind == Place::Kind::routes ||
                           here.kind == Place::Kind::money;
    if (about_one && aircraft == nullptr) return fleet_page(in);
    if (const auto working = working_page(in)) return *working;
    switch (here.kind) {
        case Place::Kind::fleet:
            return fleet_page(in);
        case Place::Kind::aircraft:
            return views::make_aircraft_view(*aircraft);
        case Place::Kind::log:
            return log_page(in);
        case Place::Kind::pad:
            return pad_of(in, *aircraft);
        case Place::Kind::history:
            return views::make_history_view(
                in.ledger.visible(), here.subject, name_of(in, here.subject));
        case Place::Kind::files:
            return files_page(in);
        case Place::Kind::form:
            return form_page(in);
        case Place::Kind::checks:
            return checks_page(in.checks, *aircraft);
        case Place::Kind::status:
            return views::make_status_view(in.ledger.visible(), *aircraft);
        case Place::Kind::on_return:
            return return_page(in.return_asked, *aircraft);
        case Place::Kind::sure:
            return sure_page(in.tried, *aircraft);
        case Place::Kind::plan:
            return plan_page(in, *aircraft);
        case Place::Kind::routes:
            return routes_page(in, *aircraft);
        case Place::Kind::stagger:
            return stagger_page(in);
        case Place::Kind::money:
            return money_page(in, *aircraft);
        case Place::Kind::sums:
            return sums_page(in, here.of, *aircraft);
        case Place::Kind::parts:
            return parts_page(in.parts_asked, here.subject, in.context_of(here.subject));
        case Place::Kind::part:
            if (const timeline::PartState* part = in.part(here.subject))
                return part_page(*part, in.context_of(part->aircraft));
            return parts_page(in.parts_asked, {}, in.context_of({}));
        case Place::Kind::specimen:
            return make_specimen(in.today);
    }
    return WelcomePage{};
}

[[nodiscard]] Tab tab_of(const Inside& in) {
    // On a small screen a form has the page for itself; beside a list the tabs have room.
    switch (in.two_panes ? ground_of(in).kind : in.places.back().kind) {
        case Place::Kind::fleet:
        case Place::Kind::aircraft:
        case Place::Kind::checks:
        case Place::Kind::status:
        case Place::Kind::on_return:
        case Place::Kind::sure:
        case Place::Kind::plan:
        case Place::Kind::routes:
        case Place::Kind::stagger:
        case Place::Kind::money:
        case Place::Kind::sums:
        case Place::Kind::parts:
        case Place::Kind::part:
            return Tab::fleet;
        case Place::Kind::log:
        case Place::Kind::pad:
            return Tab::log;
        case Place::Kind::history:
            return Tab::history;
        case Place::Kind::files:
            return Tab::files;
        case Place::Kind::form:
        case Place::Kind::specimen:
            return Tab::none;
    }
    return Tab::none;
}

[[nodiscard]] base::Message status_of(const Inside& in) {
    if (!in.pending.empty()) return {Word::status_saving, {}};
    if (in.is_read_only) return {Word::status_read_only, {}};
    return {in.is_online ? Word::status_saved : Word::status_saved_offline, {}};
}

}  // namespace

FormContext AppState::Inside::context_of(base::Id subject) {
    const views::Assessed* found = assessed(aircraft_of_subject(ledger.visible(), subject));
    return {ledger.visible(),
            found == nullptr ? nullptr : &found->state,
            today,
            signer.author(),
            &fleet,
            &parts(),
            planned ? &*planned : nullptr,
            &region};
}

void AppState::Inside::make_screen() {
    const std::uint64_t revision = screen.revision + 1;
    screen = {};
    if (two_panes) screen.beside = beside_of(*this);
    const Place::Kind kind = here().kind;
    // What is itself a list stands at its side; everything else was chosen from one.
    const bool chosen =
        !screen.beside ||
        (kind != Place::Kind::fleet && kind != Place::Kind::log && kind != Place::Kind::history &&
         kind != Place::Kind::files && kind != Place::Kind::specimen);
    screen.page = chosen ? page_of(*this) : page_beside(*this, *screen.beside);
    screen.tab = caution_accepted ? tab_of(*this) : Tab::none;
    screen.can_go_back = places.size() > 1;
    screen.status = status_of(*this);
    for (const auto& [what, count] : alarms)
        screen.notices.push_back(
            {{what, {base::whole_arg(count)}}, true, std::nullopt, {Word::blank, {}}});
    screen.notices.insert(screen.notices.end(), notices.begin(), notices.end());
    if (has_new_version) {
        screen.notices.push_back({{Word::version_ready, {}},
                                  true,
                                  Intent{intent::StartNewVersion{}},
                                  {Word::version_start, {}}});
    }
    if (const auto* aircraft = std::get_if<views::AircraftView>(&screen.page))
        screen.whys = views::whys_of(*aircraft);
    if (const auto* part = std::get_if<PartPage>(&screen.page))
        screen.whys = views::whys_of(part->view);
    if (const auto* listed = std::get_if<ChecksPage>(&screen.page))
        screen.whys = views::whys_of(listed->view);
    if (const auto* status = std::get_if<views::StatusView>(&screen.page))
        screen.whys = views::whys_of(*status);
    if (const auto* back = std::get_if<ReturnPage>(&screen.page))
        screen.whys = views::whys_of(back->view);
    if (const auto* sure = std::get_if<SurePage>(&screen.page))
        screen.whys = views::whys_of(sure->view);
    if (const auto* plan = std::get_if<PlanPage>(&screen.page))
        screen.whys = views::whys_of(plan->view);
    if (const auto* sums = std::get_if<SumsPage>(&screen.page))
        screen.whys = views::whys_of(sums->view);
    if (const auto* costs = std::get_if<MoneyPage>(&screen.page))
        screen.whys = views::whys_of(costs->view);
    if (!std::holds_alternative<RecordSheet>(screen.page)) screen.sheet = sheet;
    screen.theme = theme;
    screen.single_keys = single_keys;
    screen.read_only = is_read_only;
    screen.revision = revision;
    dirty = false;
}

}  // namespace twoclocks::canvas
