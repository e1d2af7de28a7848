// "Hours the meter did not count", "Hours of a kind of flying" and "How fast that uses limits".
#include "catch_amalgamated.hpp"
#include "tests/app/shown.hpp"
#include "tests/support/stored.hpp"
#include "wasm/app/form.hpp"
#include "wasm/app/pad.hpp"

#include <string>

#include "engine/views/assess.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using base::Trouble;
using canvas::support::field;
using twoclocks::support::Stored;

/// A form on the invented journal, without a page around it.
struct UseDesk : Stored {
    UseDesk() { signer.refresh({19'905, 1'719'800'000'000, 0x1234U, 0x5678U}); }

    [[nodiscard]] FormContext context() {
        now = state();
        return {journal, &now, today, {}};
    }

    [[nodiscard]] Form open(FormKind kind) { return make_form(kind, id(), context()); }

    bool save(Form& form) {
        const auto facts = submit_form(form, context(), signer);
        for (const facts::Fact& fact : facts)
            keep(fact);
        return !facts.empty();
    }

    Signer signer;
    timeline::AircraftState now;
};

std::optional<Trouble> wrong(Form& form, std::string_view id) {
    const FieldView& found = field(form, id);
    return found.problem ? std::optional{found.problem->code} : std::nullopt;
}

Form filled(UseDesk& desk, const char* hours, const char* reads) {
    Form form = desk.open(FormKind::meter_adjusted);
    field(form, "hours").text = hours;
    field(form, "reads").text = reads;
    field(form, "source").text = "Flight log";
    return form;
}

}  // namespace

TEST_CASE("hours of a dead meter are saved and the total holds them", "[app][adjust]") {
    UseDesk desk;
    Form form = desk.open(FormKind::meter_adjusted);
    CHECK(field(form, "reads").text == "160.0");
    CHECK_FALSE(desk.save(form));
    CHECK(wrong(form, "hours") == Trouble::form_needed);
    CHECK(wrong(form, "source") == Trouble::form_needed);
    form = filled(desk, "12.5", "160.0");
    REQUIRE(desk.save(form));
    CHECK(desk.total_tenths() == 11'725);
}

TEST_CASE("after a rollover the pad takes the lower reading", "[app][adjust]") {
    UseDesk desk;
    const auto refused = [&](const char* digits) {
        const PadDraft pad{desk.id(), digits, "2024-07-01", {}};
        const auto page = pad_page(pad, views::assess(desk.state(), desk.today));
        return page.problem ? std::optional{page.problem->code} : std::nullopt;
    };
    CHECK(refused("001.0") == Trouble::entry_falls);
    Form form = filled(desk, "160.5", "0.2");
    field(form, "reason").chosen = 1;
    REQUIRE(desk.save(form));
    CHECK(refused("001.0") == std::nullopt);
    CHECK(desk.total_tenths() == 11'607);
}

TEST_CASE("what the meter cannot have missed is refused", "[app][adjust]") {
    struct Row {
        const char* hours;
        const char* reads;
        const char* date;
        const char* field;
        Trouble code;
    };

    for (const Row& row :
         {Row{"0", "160.0", "2024-07-01", "hours", Trouble::form_adjust_nothing},
          Row{"5", "160.0", "2024-07-02", "date", Trouble::form_day_ahead},
          Row{"5", "160.0", "2023-12-31", "date", Trouble::entry_before_meter},
          Row{"5", "154.9", "2024-07-01", "reads", Trouble::entry_falls},
          // 183 days from 1 January to 1 July, of 24 h each.
          Row{"4392.1", "160.0", "2024-07-01", "hours", Trouble::form_adjust_absurd}}) {
        CAPTURE(row.hours, row.reads, row.date);
        UseDesk desk;
        Form form = filled(desk, row.hours, row.reads);
        field(form, "date").text = row.date;
        CHECK_FALSE(desk.save(form));
        CHECK(wrong(form, row.field) == row.code);
    }
    UseDesk desk;
    Form most = filled(desk, "4392", "160.0");
    CHECK(desk.save(most));
    Form least = filled(desk, "5", "160.0");
    CHECK(desk.save(least));
}

TEST_CASE("hours of a kind and their factor are saved and used", "[app][factor]") {
    UseDesk desk;
    Form flown = desk.open(FormKind::flown_as);
    field(flown, "hours").text = "10";
    field(flown, "from").text = "2024-06-30";
    REQUIRE(desk.save(flown));
    Form factor = desk.open(FormKind::hours_factor);
    field(factor, "factor").text = "1.5";
    CHECK_FALSE(desk.save(factor));
    CHECK(wrong(factor, "source") == Trouble::form_needed);
    field(factor, "source").text = "Letter 7";
    REQUIRE(field(factor, "item").options.size() == 3);
    field(factor, "item").chosen = 2;  // the check
    REQUIRE(desk.save(factor));
    const auto left = [&](const facts::Fact& item) {
        const limits::ItemDue due = desk.due(item);
        return limits::clock_of(due, facts::Clock::hours)->left;
    };
    CHECK(left(desk.check) == base::hours(55));
    CHECK(left(desk.overhaul) == base::hours(1040));
}

TEST_CASE("a factor below one or above ten, and more hours than the days have, are refused",
          "[app][factor]") {
    for (const auto& [factor, is_fine] : {std::pair{"0.999", false},
                                          std::pair{"1", true},
                                          std::pair{"10", true},
                                          std::pair{"10.0010", false}}) {
        CAPTURE(factor);
        UseDesk desk;
        Form form = desk.open(FormKind::hours_factor);
        field(form, "factor").text = factor;
        field(form, "source").text = "Letter 7";
        CHECK(desk.save(form) == is_fine);
        CHECK((wrong(form, "factor") == Trouble::form_factor_absurd) == !is_fine);
    }
    for (const auto& [hours, from, is_fine] : {std::tuple{"24", "", true},
                                               std::tuple{"24.1", "", false},
                                               std::tuple{"48", "2024-06-30", true},
                                               std::tuple{"48.1", "2024-06-30", false}}) {
        CAPTURE(hours, from);
        UseDesk desk;
        Form form = desk.open(FormKind::flown_as);
        field(form, "hours").text = hours;
        field(form, "from").text = from;
        CHECK(desk.save(form) == is_fine);
        CHECK((wrong(form, "hours") == Trouble::form_flown_absurd) == !is_fine);
    }
    UseDesk desk;
    Form backwards = desk.open(FormKind::flown_as);
    field(backwards, "hours").text = "1";
    field(backwards, "from").text = "2024-07-02";
    CHECK_FALSE(desk.save(backwards));
    CHECK(wrong(backwards, "from") == Trouble::form_ends_before_start);
}
