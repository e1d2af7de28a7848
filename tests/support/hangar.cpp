#include "tests/support/hangar.hpp"

namespace twoclocks::support {

Hangar::Hangar() : today(day("2024-07-01")) {
    const base::Date start = day("2024-01-01");
    facts::AircraftAdded added{"ISLE-1", "Gannet 2", "G2-0001", day("2020-01-01"), false};
    aircraft = ann.add(start, {}, added);
    meter = ann.add(
        start, {id()}, facts::MeterFitted{"Collective meter", {}, {}, base::hours(1000), {}});
    overhaul = ann.add(start, {id()}, facts::ItemAdded{"Overhaul", facts::ItemRole::overhaul, {}});
    facts::LimitSet life = limit(2200, 144);
    life.limit_class = facts::LimitClass::airworthiness_limitation;
    life.anchor = facts::Anchor::manufacture;
    life.anchor_on = added.manufactured;
    life.anchor_total = base::FlightTime{0};
    life.source = "Manual";
    life.revision = "revision 7";
    overhaul_limit = ann.write(start, with(overhaul), life);
    check = ann.add(start, {id()}, facts::ItemAdded{"Check", facts::ItemRole::inspection, {}});
    facts::LimitSet interval = limit(100, 12);
    interval.anchor = facts::Anchor::release;
    interval.anchor_on = start;
    interval.anchor_total = base::hours(1050);
    interval.source = "Manual";
    check_limit = ann.write(start, with(check), interval);
    first_reading = read(ann, "2024-03-01", 1000);
    work = ann.write(day("2024-04-01"), {id()}, renews({check.id}, 11'200));
    reading = read(ann, "2024-06-01", 1600);
    journal = journal_of({aircraft,
                          meter,
                          overhaul,
                          overhaul_limit,
                          check,
                          check_limit,
                          first_reading,
                          work,
                          reading});
}

facts::Fact Hangar::read(Pen& pen, const char* on, std::int64_t tenths) const {
    return pen.write(day(on), with(meter), reads(tenths));
}

}  // namespace twoclocks::support
