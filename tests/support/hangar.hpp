// One aircraft that every named case starts from.
//   2020-01-01  manufactured
//   2024-01-01  meter fitted: reads 0.0 at 1,000.0 h total; items and limits
//   2024-03-01  reads 100.0 (1,100.0 h)
//   2024-04-01  check done at 1,120.0 h
//   2024-06-01  reads 160.0 (1,160.0 h): of the check's 100 h, 60.0 h are left
// Today is 2024-07-01.
#pragma once

#include "tests/support/pen.hpp"

#include "engine/facts/journal.hpp"

namespace twoclocks::support {

struct Hangar {
    Hangar();

    Pen ann{"ann"};
    Pen ben{"ben", 1'700'000'500'000};
    facts::Fact aircraft;
    facts::Fact meter;
    facts::Fact overhaul;
    facts::Fact overhaul_limit;  // 2,200 h, 144 months, from manufacture
    facts::Fact check;
    facts::Fact check_limit;  // 100 h, 12 months, from 1,050.0 h on 2024-01-01
    facts::Fact first_reading;
    facts::Fact work;
    facts::Fact reading;
    facts::Journal journal;
    base::Date today;

    [[nodiscard]] base::Id id() const { return aircraft.id; }

    /// A reading of the meter by somebody.
    [[nodiscard]] facts::Fact read(Pen& pen, const char* on, std::int64_t tenths) const;

    /// What a fact of this aircraft is about: it and one more.
    [[nodiscard]] std::vector<base::Id> with(const facts::Fact& other) const {
        return {aircraft.id, other.id};
    }
};

}  // namespace twoclocks::support
