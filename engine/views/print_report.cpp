// Every view of a journal at once: what the report program prints.
#include "engine/facts/parse.hpp"
#include "engine/views/cash_view.hpp"
#include "engine/views/cores_view.hpp"
#include "engine/views/json_object.hpp"
#include "engine/views/money_view.hpp"
#include "engine/views/otherwise.hpp"
#include "engine/views/plan_view.hpp"
#include "engine/views/print_views.hpp"
#include "engine/views/reserve_view.hpp"
#include "engine/views/routes_view.hpp"
#include "engine/views/status_view.hpp"
#include "engine/views/sure_view.hpp"

namespace twoclocks::views {
namespace {

using base::Region;

/// The campaign of each aircraft, lived through once for every view of it.
[[nodiscard]] std::vector<Living> lives_of(const std::vector<Assessed>& fleet) {
    std::vector<Living> out;
    for (const Assessed& one : fleet)
        out.push_back(live(one, one.state.campaign, plan::campaign_count));
    return out;
}

}  // namespace

std::string print_report(std::string_view journal_text, base::Date today, const Region& region) {
    const facts::Parsed parsed = facts::parse_journal(journal_text);
    facts::Journal journal;
    for (const facts::Fact& fact : parsed.facts)
        journal.add(fact);
    std::vector<Assessed> fleet;
    for (const base::Id& id : journal.aircraft()) {
        std::optional<Assessed> one = assess_recorded(journal, id, today);
        if (one) fleet.push_back(std::move(*one));
    }
    Object out{region};
    out.text("today", base::print_date(today)).text("fingerprint", facts::fingerprint(journal));
    out.put("problems", to_json(parsed.problems, region));
    out.put("fleet", to_json(make_fleet_view(fleet), region));
    out.put("aircraft", list_of(fleet, [&](const Assessed& one) {
                return to_json(make_aircraft_view(one), region);
            }));
    out.put("sure", list_of(fleet, [&](const Assessed& one) {
                return to_json(make_sure_view(one, std::nullopt), region);
            }));
    const std::vector<Living> lives = lives_of(fleet);
    const auto lived = [&](const auto& make) {
        std::size_t place = 0;
        return list_of(
            fleet, [&](const Assessed& one) { return to_json(make(one, lives[place++]), region); });
    };
    out.put("plans", lived([](const auto& one, const Living& living) {
                return make_plan_view(one, living);
            }));
    out.put("cores", lived(make_cores_view));
    out.put("cash", lived(make_cash_view));
    out.put("reserve", lived(make_reserve_view));
    out.put("routes", list_of(fleet, [&](const Assessed& one) {
                return to_json(make_routes_view(one), region);
            }));
    out.put("money", list_of(fleet, [&](const Assessed& one) {
                return to_json(make_money_view(one), region);
            }));
    std::vector<const Assessed*> all;
    for (const Assessed& one : fleet)
        all.push_back(&one);
    out.put("stagger", to_json(make_stagger_view(all), region));
    out.put("log", list_of(fleet, [&](const Assessed& one) {
                return to_json(make_log_view(one), region);
            }));
    out.put("status", list_of(fleet, [&](const Assessed& one) {
                return to_json(make_status_view(journal, one), region);
            }));
    out.put("parts", list_of(timeline::replay_parts(journal, today), [&](const auto& part) {
                return to_json(part_history(journal, part, today), region);
            }));
    out.put("history", to_json(make_history_view(journal, {}, {}), region));
    std::string text;
    facts::print_json(out.take(), text);
    return text + '\n';
}

}  // namespace twoclocks::views
