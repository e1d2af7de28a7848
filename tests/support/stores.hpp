// Two aircraft and a part that every case about parts starts from.
//   2024-01-01  ISLE-1 at 1,000.0 h, ISLE-2 at 500.0 h; a gearbox with 300.0 h since new and
//               100.0 h since its one overhaul lies on the shelf
//   2024-03-01  ISLE-1 at 1,100.0 h, ISLE-2 at 550.0 h
//   2024-06-01  ISLE-1 at 1,160.0 h, ISLE-2 at 620.0 h
// Today is 2024-07-01.
#pragma once

#include "tests/support/pen.hpp"

#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "engine/timeline/parts.hpp"

namespace twoclocks::support {

struct Stores {
    Pen ann{"ann"};
    Pen ben{"ben", 1'700'000'500'000};
    facts::Journal journal;
    base::Id first;   // ISLE-1
    base::Id second;  // ISLE-2
    base::Id first_meter;
    base::Id second_meter;
    facts::Fact gearbox;
    base::Date today{day("2024-07-01")};

    Stores() {
        std::tie(first, first_meter) = aircraft("ISLE-1", 1000);
        std::tie(second, second_meter) = aircraft("ISLE-2", 500);
        read(first, first_meter, "2024-03-01", 1000);
        read(second, second_meter, "2024-03-01", 500);
        read(first, first_meter, "2024-06-01", 1600);
        read(second, second_meter, "2024-06-01", 1200);
        facts::PartAdded added = plate("7");
        added.tsn = base::hours(300);
        added.tso = base::hours(100);
        added.overhauls = base::Count{1};
        gearbox = add(added);
    }

    [[nodiscard]] static facts::PartAdded plate(const std::string& serial) {
        facts::PartAdded out;
        out.part_number = "GB-1";
        out.serial = serial;
        out.name = "Main gearbox";
        return out;
    }

    facts::Fact keep(facts::Fact fact) {
        journal.add(fact);
        return fact;
    }

    facts::Fact add(const facts::PartAdded& added, const char* on = "2024-01-01") {
        return keep(ann.add(day(on), {}, added));
    }

    /// Totals in tenths of an hour; below zero is not given.
    facts::Fact fit(const facts::Fact& part,
                    base::Id host,
                    const char* on,
                    std::int64_t total,
                    std::int64_t tsn = -1) {
        facts::PartFitted fitted;
        fitted.position = "Main";
        if (total >= 0) fitted.host_total = base::tenths(total);
        if (tsn >= 0) fitted.tsn = base::tenths(tsn);
        return keep(ann.write(day(on), {part.id, host}, fitted));
    }

    facts::Fact remove(const facts::Fact& part,
                       base::Id host,
                       const char* on,
                       std::int64_t total,
                       bool temporarily = false) {
        facts::PartRemoved removed;
        if (total >= 0) removed.host_total = base::tenths(total);
        removed.temporarily = temporarily;
        return keep(ann.write(day(on), {part.id, host}, removed));
    }

    facts::Fact overhaul(const facts::Fact& part, std::vector<base::Id> about, const char* on) {
        return keep(ann.write(day(on), std::move(about), renews({part.id}, -1)));
    }

    void read(base::Id plane, base::Id meter, const char* on, std::int64_t tenths) {
        keep(ann.write(day(on), {plane, meter}, reads(tenths)));
    }

    [[nodiscard]] timeline::PartState state(const facts::Fact& part) const {
        return timeline::replay_part(journal, part.id, today);
    }

  private:
    [[nodiscard]] std::pair<base::Id, base::Id> aircraft(const char* marks, std::int64_t total) {
        const base::Date start = day("2024-01-01");
        const base::Id plane =
            keep(ann.add(start, {}, facts::AircraftAdded{marks, {}, {}, {}, false})).id;
        const base::Id meter =
            keep(ann.add(start, {plane}, facts::MeterFitted{{}, {}, {}, base::hours(total), {}}))
                .id;
        return {plane, meter};
    }
};

/// The troubles of a part, each once a problem, in order.
[[nodiscard]] inline std::string troubles(const timeline::PartState& part) {
    std::string out;
    for (const timeline::PartProblem& problem : part.problems) {
        if (!out.empty()) out += ' ';
        out += base::name_of(problem.code);
    }
    return out;
}

}  // namespace twoclocks::support
