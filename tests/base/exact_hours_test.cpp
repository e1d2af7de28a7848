// Hours that are written without cutting anything: the form, the figures, the region's signs.
#include "catch_amalgamated.hpp"

#include <string>
#include <vector>

#include "engine/base/message_args.hpp"
#include "engine/base/region.hpp"

using namespace twoclocks::base;

TEST_CASE("times of one sum share the first form that holds them all", "[base][exact]") {
    struct Row {
        std::vector<FlightTime> times;
        HoursForm form;
    };

    const FlightTime minute{60};
    const FlightTime hundredth{36};
    for (const Row& row : {Row{{}, HoursForm::tenths},
                           Row{{hours(5), tenths(-3)}, HoursForm::tenths},
                           Row{{hours(5), minute}, HoursForm::minutes},
                           Row{{tenths(1), minute + tenths(1)}, HoursForm::minutes},
                           Row{{hours(5), hundredth}, HoursForm::hundredths},
                           Row{{minute, hundredth}, HoursForm::seconds},
                           Row{{FlightTime{1}}, HoursForm::seconds},
                           Row{{FlightTime{-180}}, HoursForm::minutes}}) {
        CAPTURE(row.times.size(), static_cast<int>(row.form));
        CHECK(exact_form(row.times) == row.form);
    }
}

TEST_CASE("exact hours are printed whole, with one sign", "[base][exact]") {
    struct Row {
        std::int64_t seconds;
        HoursForm form;
        const char* text;
    };

    for (const Row& row : {Row{0, HoursForm::tenths, "0.0"},
                           Row{0, HoursForm::minutes, "0:00"},
                           Row{35'640, HoursForm::tenths, "9.9"},
                           Row{35'640, HoursForm::minutes, "9:54"},
                           Row{35'640, HoursForm::hundredths, "9.90"},
                           Row{35'496, HoursForm::hundredths, "9.86"},
                           Row{35'496, HoursForm::seconds, "9:51:36"},
                           Row{-60, HoursForm::minutes, "-0:01"},
                           Row{-36, HoursForm::hundredths, "-0.01"},
                           Row{-3661, HoursForm::seconds, "-1:01:01"},
                           Row{720'000'000, HoursForm::minutes, "200000:00"}}) {
        CHECK(print_exact({row.seconds}, row.form) == row.text);
    }
}

TEST_CASE("exact hours take the region's signs, and a clock keeps its colon", "[base][exact]") {
    const Region comma{",", "'", DateOrder::day_first};
    const auto said = [](std::int64_t seconds, HoursForm form, const Region& region) {
        return say(Message{Word::day_figure, {hours_exact_arg({seconds}, form)}}, region);
    };
    CHECK(said(4'445'400, HoursForm::minutes, {}) == "1,234:50");
    CHECK(said(4'445'400, HoursForm::minutes, comma) == "1'234:50");
    CHECK(said(4'443'336, HoursForm::hundredths, comma) == "1'234,26");
    CHECK(said(-4'443'336, HoursForm::seconds, comma) == "−1'234:15:36");
    CHECK(said(-3600, HoursForm::tenths, comma) == "−1,0");
}
