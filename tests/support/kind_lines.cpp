#include "tests/support/kind_lines.hpp"

#include "tests/support/kind_lines_cash.hpp"

namespace twoclocks::support {
namespace {

const std::string one_id = "018c3f8a-0001-7000-8000-000000000001";
const std::string two_id = "018c3f8a-0002-7000-8000-000000000002";
const std::string content = "0123456789abcdef";

/// A whole line from a kind and what comes after `about`.
std::string line(const std::string& kind, const std::string& about, const std::string& rest) {
    return R"({"id":")" + one_id + R"(","kind":")" + kind +
           R"(","on":"2026-05-03","at":1777800000000,"tick":0,"device":"d1","by":"Ann",)" +
           R"("about":[)" + about + "]" + rest + "}";
}

std::string both() {
    return '"' + one_id + R"(",")" + two_id + '"';
}

std::string first() {
    return '"' + one_id + '"';
}

/// Limits and permits: as little as they can hold, and as much.
std::vector<std::string> limit_lines() {
    return {
        line("limit",
             both(),
             R"(,"class":"programme","hours":360000,"calendar_rule":"exact","anchor":"unknown")"),
        line("limit",
             both(),
             R"(,"class":"airworthiness_limitation","hours":7920000,"months":144,)"
             R"("landings":3000,"starts":5000,"calendar_rule":"month_end","anchor":"overhaul",)"
             R"("anchor_on":"2022-04-08","anchor_total":3600000,"anchor_landings":10,)"
             R"("anchor_starts":12,"source":"Manual","revision":"5")"),
        line("limit",
             both(),
             R"(,"class":"programme","hours":360000,"calendar_rule":"exact","anchor":"unknown",)"
             R"("source":"Manual","revision":"5","days":90,"first_hours":720000,"first_months":24,)"
             R"("first_landings":5,"first_starts":6,"once":true,"combine":"later",)"
             R"("cap_hours":540000,"cap_months":30,"cap_landings":7,"cap_starts":8,)"
             R"("tolerance_hours":36000,"tolerance_days":30,"tolerance_permille":100,)"
             R"("tolerance_cap_hours":1800000,"tolerance_cap_days":60,"carry_over":"from_due",)"
             R"("overfly_hours":36000,"tolerance_source":"Programme 3")"),
        line("limit",
             both(),
             R"(,"class":"directive","calendar_rule":"exact","anchor":"unknown","days":90,)"
             R"("first_days":30,"combine":"sooner","cap_days":120,"carry_over":"from_done",)"
             R"("tolerance_source":"Directive 7")"),
        line("permit", both(), R"(,"issuer":"Authority","until":"2026-06-01")"),
        line("permit",
             both(),
             R"(,"issuer":"Authority","reference":"P 7","route":"Home to works","hours":18000,)"
             R"("until":"2026-06-01")"),
    };
}

/// The other kinds likewise.
std::vector<std::string> other_lines() {
    const std::string reading =
        R"({"kind":"reading","on":"2026-05-02","about":[)" + both() + R"(],"reads":4444200})";
    return {
        line("aircraft", first(), R"(,"registration":"ISLE-1")"),
        line("aircraft",
             first(),
             R"(,"registration":"ISLE-1","type":"Gannet 2","serial":"G2-1",)"
             R"("manufactured":"2015-01-10","invented":true)"),
        line("aircraft_changed", first(), R"(,"registration":"ISLE-2")"),
        line("aircraft_changed", first(), R"(,"registration":"ISLE-2","why":"Sold")"),
        line("meter", both(), R"(,"drive":"collective","reads":0,"total":0)"),
        line("meter",
             both(),
             R"(,"name":"Second","drive":"oil_pressure","reads":360,"total":3600,"why":"Failed")"),
        line("reading", both(), R"(,"reads":0)"),
        line("reading", both(), R"(,"reads":4444200,"landings":7,"starts":9)"),
        line("item", both(), R"(,"name":"Overhaul","role":"overhaul")"),
        line("item", both(), R"(,"name":"Belt","role":"component","chapter":"63-10")"),
        line("item_changed", both(), R"(,"name":"Drive belt")"),
        line("item_changed", both(), R"(,"name":"Drive belt","why":"Clearer")"),
        line("work", first(), R"(,"what":"Annual","renews":[])"),
        line("work",
             both(),
             R"(,"what":"Annual","renews":[{"item":")" + two_id + R"("},{"item":")" + one_id +
                 R"(","clocks":["hours","calendar","landings","starts"]}],"total":4320000,)"
                 R"("landings":100,"starts":200,"place":"Shed","done_by":"R. I.",)"
                 R"("reference":"W 1")"),
        line("usage_planned", first(), R"(,"month":36000)"),
        line("usage_planned", first(), R"(,"month":36000,"why":"Summer")"),
        line("usage_planned",
             first(),
             R"(,"month":36000,"why":"Survey","january":0,"february":3600,"march":7200,)"
             R"("april":36000,"may":72000,"june":108000,"july":144000,"august":144000,)"
             R"("september":72000,"october":36000,"november":3600,"december":0)"),
        line("out_of_service", first(), ""),
        line("out_of_service", first(), R"(,"until":"2027-03-15","why":"Winter")"),
        line("note", "", R"(,"text":"")"),
        line("note", first(), R"(,"text":"Two\nlines")"),
        line("correction",
             first(),
             R"(,"replaces":")" + two_id + R"(","why":"Misread","instead":)" + reading),
        line("correction",
             first(),
             R"(,"replaces":")" + two_id + "/" + content + R"(","why":"","instead":)" + reading),
        line("withdrawal", first(), R"(,"withdraws":")" + two_id + R"(","why":"Twice")"),
        line("answer", first(), R"(,"settles":[")" + two_id + R"("],"keeps":[])"),
        line("answer",
             first(),
             R"(,"settles":[")" + two_id + "/" + content + R"(",")" + one_id + R"("],"keeps":[")" +
                 two_id + "/" + content + R"("],"why":"Logbook")"),
    };
}

/// The kinds about parts, the same way.
std::vector<std::string> part_lines() {
    return {
        line("part", first(), R"(,"part_number":"P-1","serial":"7","condition":"unknown")"),
        line("part",
             first(),
             R"(,"part_number":"P-1","serial":"7","name":"Clutch","chapter":"63-10",)"
             R"("tsn":7200,"tso":3600,"overhauls":1,"landings":5,"starts":6,)"
             R"("manufactured":"2015-01-10","cured":"2015-01-09","shipped":"2015-02-01",)"
             R"("condition":"new","papers":"Tag 1","history_unknown":true,"owner":"Lender",)"
             R"("lent_until":"2027-01-01")"),
        line("part_fitted", both(), ""),
        line("part_fitted",
             both(),
             R"(,"position":"Left","host_total":3600,"tsn":7200,"host_landings":1,)"
             R"("host_starts":2,"reference":"W 1")"),
        line("part_removed", both(), R"(,"condition":"unserviceable")"),
        line("part_removed",
             both(),
             R"(,"host_total":3600,"host_landings":1,"host_starts":2,)"
             R"("condition":"as_removed","why":"Leaks","temporarily":true)"),
        line("part_scrapped", first(), R"(,"proof":"Cut in two")"),
        line("part_moved", first(), ""),
        line("part_moved",
             first(),
             R"(,"place":"Shelf 2","owner":"Ann","lent_to":"Ben","return_by":"2027-01-01",)"
             R"("why":"Asked for it")"),
        line("part_rebuilt", first(), R"(,"document":"RB 1")"),
        line("part_rebuilt",
             first(),
             R"(,"document":"RB 1","host_total":3600,"done_by":"Maker","place":"Works")"),
    };
}

/// Directives, events, wear and use, the same way.
std::vector<std::string> care_lines() {
    const std::string list = "[\"" + two_id + "\",\"" + one_id + "\"]";
    return {
        line("limit",
             both(),
             R"(,"class":"programme","calendar_rule":"exact","anchor":"unknown","days":30,)"
             R"("in_force":"in_storage")"),
        line("out_of_service",
             first(),
             R"(,"why":"Winter","stored":true,"source":"Manual","revision":"5")"),
        line("directive", both(), R"(,"number":"D 1","applies":"unknown")"),
        line("directive",
             both(),
             R"(,"number":"D 1","revision":"R1","issuer":"Authority","effective_on":"2026-01-05",)"
             R"("serials":"1001-1234, 1240","part_number":"P-1","applies":"applies",)"
             R"("applies_why":"By serial","before_flight":true,"credit":true,"replaces":)" +
                 list + R"(,"ended_by":)" + list),
        line("alternative_means", both(), R"(,"issuer":"Authority","reference":"A 1")"),
        line("alternative_means",
             both(),
             R"(,"issuer":"Authority","reference":"A 1","method":"Eddy current","hours":360000,)"
             R"("months":6,"landings":5,"starts":6,"grace_hours":3600,"grace_days":10,)"
             R"("valid_until":"2027-01-01")"),
        line("alternative_means", both(), R"(,"issuer":"Authority","reference":"A 1","days":60)"),
        line("event", first(), R"(,"happened":"lightning")"),
        line("event",
             both(),
             R"(,"happened":"hard_landing","found":"Spread skids","total":3600,"source":"Manual",)"
             R"("revision":"5")"),
        line("wear_limit", both(), R"(,"limit_thousandths":500,"unit":"mm","sense":"at_most")"),
        line("wear_limit",
             both(),
             R"(,"limit_thousandths":2000000000,"unit":"mm","sense":"at_least","source":"Manual",)"
             R"("revision":"5")"),
        line("wear", both(), R"(,"value_thousandths":0,"unit":"mm")"),
        line("wear",
             both(),
             R"(,"value_thousandths":125,"unit":"mm","total":3600,"done_by":"Ann",)"
             R"("reference":"W 1")"),
        line("meter_adjusted",
             both(),
             R"(,"reason":"dead","added_hours":36000,"reads":360,"source":"Flight log",)"
             R"("why":"Cable")"),
        line("work_rule", first(), R"(,"name":"Annual","renews":[])"),
        line("work_rule",
             first(),
             R"(,"name":"Annual","renews":[{"item":")" + two_id +
                 R"(","clocks":["calendar"]}],"source":"Manual","revision":"5")"),
        line("hours_factor",
             first(),
             R"(,"operation":"agricultural","factor_thousandths":1500,"source":"Letter 3",)"
             R"("revision":"1")"),
        line("flown_as", first(), R"(,"operation":"external_load","flown_hours":3600)"),
        line("flown_as",
             first(),
             R"(,"operation":"training","from":"2026-05-01","flown_hours":3600,"why":"Course")"),
    };
}

[[nodiscard]] std::vector<std::string> plan_lines() {
    return {
        line("plan_task", first(), R"(,"task":"kit")"),
        line("plan_task",
             first(),
             R"(,"task":"crane","task_name":"Hire a crane","low_days":1,"likely_days":2,)"
             R"("high_days":3653,"runs":"calendar","waits_for":"kit+5","resource":"Yard",)"
             R"("left_out":true,"said_by":"Ann")"),
        line("plan_step", first(), R"(,"task":"kit","step":"begun")"),
        line("plan_step",
             first(),
             R"(,"task":"kit","step":"promised","promised":"2027-01-01","reference":"Order 7")"),
        line("plan_terms", first(), R"(,"plan_work":"overhaul","confidence_percent":90)"),
        line("plan_terms",
             first(),
             R"(,"plan_work":"calendar_work","confidence_percent":50,"margin_days":10,)"
             R"("core_days":120,"keeps_days":365,"out_at_once":2)"),
        line("closed", first(), R"()"),
        line("closed", first(), R"(,"closed_last":"2027-01-01","why":"Turn of the year")"),
        line("route",
             first(),
             R"(,"route_key":"r1","route_by":"works","carriage":"flown","price_basis":"estimate",)"
             R"("tax":"unknown","warranty_from":"unknown","release_accepted":"unknown")"),
        line("route",
             first(),
             R"(,"route_key":"r2","route_name":"Over the water","route_by":"abroad",)"
             R"("carriage":"crated","ferry_hours":9000,"there_days":10,"back_days":12,)"
             R"("queue_days":40,"kit_days":0,"low_days":30,"likely_days":40,"high_days":70,)"
             R"("price_basis":"fixed","price":"310000.00 EUR","freight":"1500000 JPY",)"
             R"("tax":"borne","tax_permille":200,"duty_permille":25,"price_until":"2027-01-31",)"
             R"("warranty_months":12,"warranty_hours":3600000,"warranty_from":"shipment",)"
             R"("release_accepted":"refused","shop_takes":1,"chosen":true,"left_out":true,)"
             R"("said_by":"Ann")"),
        line("plan_costs", first(), R"()"),
        line("plan_costs",
             first(),
             R"(,"overhaul_sum":"280000.00 EUR","lost_day":"450.00 EUR","saved_day":"90.00 EUR",)"
             R"("life_hour":"127.28 EUR","life_month":"0.00 EUR","interest_permille":45)"),
        line("plan_kept", first(), R"()"),
        line("plan_kept",
             first(),
             R"(,"order_on":"2026-07-01","book_on":"2026-08-01","stop_on":"2027-01-10",)"
             R"("back_on":"2027-03-20")"),
    };
}

[[nodiscard]] std::vector<std::string> money_lines() {
    return {
        line("cost_line",
             first(),
             R"(,"line_key":"kit","cost_group":"kit","cost_for":"either","tax":"unknown",)"
             R"("duty_relief":"none","taken":"counted")"),
        line("cost_line",
             first(),
             R"(,"line_key":"e2","line_name":"Exchange engine","cost_group":"engine",)"
             R"("route_key":"r1","cost_for":"overhaul","low_quantity_thousandths":0,)"
             R"("quantity_thousandths":1000,"high_quantity_thousandths":2500,)"
             R"("low_price":"75000.00 EUR","price":"90000.00 EUR","high_price":"152000.00 EUR",)"
             R"("price_on":"2026-04-01","price_until":"2026-09-30","at_shipment":true,)"
             R"("deposit_permille":300,"deposit_back":true,"tax":"reverse_charge",)"
             R"("tax_permille":200,"duty_permille":27,"duty_relief":"processing",)"
             R"("relief_until":"2027-06-30","relief_terms":"Back","taken":"chosen",)"
             R"("one_of":"Engine","needs":"kit","excludes":"e1","serials":"1-9",)"
             R"("work_hours":43200,"added_days":3,"added_grams":0,"removed_grams":9,)"
             R"("price_list":"Kits","article":"E","left_out":true,"said_by":"Ann")"),
        line("price_list", first(), R"(,"price_list":"Kits","list_rows":"K-1\t90.00 EUR\tKit\n")"),
        line("price_list",
             first(),
             R"(,"price_list":"Kits","list_rows":"K-2\t5 JPY\t\n","said_by":"Ann")"),
    };
}

}  // namespace

std::vector<std::string> kind_lines() {
    std::vector<std::string> out = limit_lines();
    for (auto* const more : {&other_lines, &part_lines, &care_lines, &plan_lines, &money_lines})
        for (std::string& line : more())
            out.push_back(std::move(line));
    for (const auto& [kind, rest] : cash_lines())
        out.push_back(line(kind, first(), rest));
    out.push_back(line("item_price", both(), R"(,"item_price":"1500.00 EUR")"));
    out.push_back(line("item_price", both(), R"(,"item_price":"0 JPY","said_by":"Shop")"));
    return out;
}

}  // namespace twoclocks::support
