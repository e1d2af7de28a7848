// Screens of parts: the list, one part with everything that can be said of it, and a form.
#include "tests/support/sample_screens.hpp"
#include "wasm/app/parts.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Word;
using timeline::PartState;
using timeline::Whereabouts;

PartState state(std::uint64_t number, std::string name, base::Id host) {
    PartState part;
    part.id = id_of(number);
    part.part_number = "B-200-17-4";
    part.serial = "0" + std::to_string(number);
    part.name = std::move(name);
    part.host = host;
    part.whereabouts = host.empty() ? Whereabouts::shelf : Whereabouts::fitted;
    part.position = host.empty() ? "" : "forward, left";
    part.tsn = base::tenths(12'345 + static_cast<std::int64_t>(number));
    part.tso = base::tenths(345);
    part.condition = facts::PartCondition::overhauled;
    return part;
}

std::vector<PartState> states() {
    std::vector<PartState> made{state(201, "Main gearbox", id_of(1)),
                                state(202, "Planet carrier of the second stage", id_of(201)),
                                state(203, "Bearing", id_of(202)),
                                state(204, "Tail rotor blade, first of the matched pair", id_of(1)),
                                state(205, "", {}),
                                state(206, "Swashplate", {})};
    made[1].tsn_estimated = true;
    made[2].tsn.reset();
    made[2].tso.reset();
    made[2].history_unknown = true;
    made[2].problems.push_back({});
    made[3].condition = facts::PartCondition::unserviceable;
    made[5].whereabouts = Whereabouts::lent;
    made[5].lent_to = "A workshop in the next valley";
    return made;
}

Screen page_over_the_fleet(Page shown) {
    Screen screen = aircraft();
    screen.page = std::move(shown);
    screen.whys.clear();
    return screen;
}

PartsPage listed(const std::vector<PartState>& some, const views::PartsAsked& asked) {
    const std::map<base::Id, std::string> registrations{{id_of(1), "ISLE-1"}};
    return {views::make_part_list(some, registrations, id_of(1), asked),
            make_parts_form("ISLE-1").fields};
}

views::PartHistoryRow spell(std::string host, std::string days) {
    views::PartHistoryRow row;
    row.host_name = told(std::move(host));
    row.days = told(std::move(days));
    row.position = told("forward, left");
    row.gained = {Word::part_gained, {base::hours_used_arg(base::tenths(12'345))}};
    row.facts = {id_of(301), id_of(302)};
    return row;
}

}  // namespace

Screen parts() {
    PartsPage page = listed(states(), {{}, true});
    page.fields[0].text = "a";
    page.fields[1].chosen = 1;
    return page_over_the_fleet(std::move(page));
}

Screen no_parts() {
    return page_over_the_fleet(listed({}, {}));
}

Screen part() {
    PartPage page;
    views::PartHistoryView& view = page.view;
    view.part = id_of(201);
    view.name = {Word::part_named, {base::text_arg("Main gearbox"), base::text_arg("0201")}};
    view.part_number = told("B-200-17-4");
    view.where = told("Fitted to ISLE-1: forward, left");
    view.condition = {Word::condition_as_removed, {}};
    view.hours_new = {{Word::part_gained_estimate, {base::hours_used_arg(base::tenths(12'345))}},
                      true};
    view.hours_overhaul = {{Word::unknown_figure, {}}, false};
    view.owner = told("A workshop in the next valley");
    view.returns = {Word::day_figure, {base::day_arg(day_of(day_3_may_2026))}};
    view.papers = told("Release certificate 4711");
    view.history_unknown = true;
    view.unknown = true;
    view.rows = {spell("ISLE-1", "Since 3 May 2026"),
                 spell("Main gearbox 0201", "1 Jan 2025 to 3 May 2026")};
    view.rows[0].facts.pop_back();
    view.rows[1].keeps_status = true;
    view.rows[1].aboard = {{id_of(1), {}, {}, told("ISLE-1"), told("1 Jan 2025 to 2 Feb 2025")}};
    view.questions = std::get<views::AircraftView>(troubled_aircraft().page).questions;
    view.troubles = {base::Problem{base::Trouble::part_on_two_hosts,
                                   {base::text_arg("Main gearbox 0201"),
                                    base::day_arg(day_of(day_3_may_2026)),
                                    base::day_arg(day_of(day_3_may_2026 + 9))},
                                   base::Severity::caution,
                                   0,
                                   {}}};
    view.trouble_facts = {{id_of(301), id_of(302)}};
    view.events = {std::get<views::AircraftView>(struck_aircraft().page).events.back()};
    view.due = std::get<views::AircraftView>(directive_aircraft().page).due;
    for (const Whereabouts where : {Whereabouts::fitted, Whereabouts::shelf}) {
        for (PartOffer& offer : offered(where)) {
            const bool both =
                std::any_of(page.offered.begin(), page.offered.end(), [&](const PartOffer& other) {
                    return other.id == offer.id;
                });
            if (!both) page.offered.push_back(std::move(offer));
        }
    }
    std::vector<views::Why> whys = views::whys_of(view);
    Screen screen = page_over_the_fleet(std::move(page));
    screen.whys = std::move(whys);
    return screen;
}

Screen part_form() {
    const facts::Journal journal;
    const std::vector<PartState> some = states();
    Form made = make_form(FormKind::part_fit,
                          id_of(206),
                          {journal, nullptr, day_of(day_3_may_2026), {}, nullptr, &some});
    FormPage page;
    page.title = {made.title, {}};
    page.intro = {made.intro, {base::text_arg(made.named)}};
    page.fields = made.fields;
    page.submit = {made.submit, {}};
    return page_over_the_fleet(std::move(page));
}

}  // namespace twoclocks::canvas::samples
