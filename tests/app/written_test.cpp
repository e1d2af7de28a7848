// What a person types or pastes into a field: understood and said, or refused with what to do.
#include "wasm/app/written.hpp"

#include "catch_amalgamated.hpp"
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"

#include <string>

#include "engine/base/region.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using base::Word;

FieldView field_of(FieldKind kind, const char* text) {
    if (kind == FieldKind::money)
        return make_money("it", Word::specimen_amount, text, {}, Need::needed);
    return make_field("it", Word::field_other, kind, text, Need::needed);
}

/// What stands beside the field: how it was read, or the name of what is wrong.
std::string beside(FieldView it) {
    const std::optional<base::Problem> problem = problem_of(it);
    understand(it);
    const std::string read = base::say(it.understood, {});
    if (!problem) return read;
    CHECK(read.empty());
    return std::string{base::name_of(problem->code)};
}

struct Row {
    const char* text;
    const char* outcome;
};

}  // namespace

TEST_CASE("hours are understood beside the field, or refused with what to do", "[app][fields]") {
    for (const Row& row : {Row{"", ""},
                           Row{"12.3", "12.3 h = 12 h 18 min"},
                           Row{"12,3", "12.3 h = 12 h 18 min"},
                           Row{"12:18", "12.3 h = 12 h 18 min"},
                           Row{"12.30", "12.3 h = 12 h 18 min"},
                           Row{"12.25", "12.25 h = 12 h 15 min"},
                           Row{"12.33", "12.33 h = 12 h 19 min 48 s"},
                           Row{"12:19", "12 h 19 min, about 12.31 h"},
                           Row{"0:01", "0 h 1 min, about 0.01 h"},
                           Row{"0.01", "0.01 h = 0 h 0 min 36 s"},
                           Row{"2200", "2,200.0 h"},
                           Row{"2 200", "2,200.0 h"},
                           Row{"2'200.0", "2,200.0 h"},
                           Row{"2\u202F200,5", "2,200.5 h = 2,200 h 30 min"},
                           Row{"\u00A02200\u00A0", "2,200.0 h"},
                           Row{"1,234.5", "1,234.5 h = 1,234 h 30 min"},
                           Row{"1,234", "hours_ambiguous"},
                           Row{"1.234", "hours_ambiguous"},
                           Row{"0.234", "0 h 14 min, about 0.23 h"},
                           Row{"12:60", "hours_malformed"},
                           Row{"12:59", "12 h 59 min, about 12.98 h"},
                           Row{"12..3", "hours_malformed"},
                           Row{"-3", "hours_negative"},
                           Row{"200000", "200,000.0 h"},
                           Row{"200000.1", "hours_absurd"}}) {
        CAPTURE(row.text);
        CHECK(beside(field_of(FieldKind::hours, row.text)) == row.outcome);
    }
}

TEST_CASE("whole numbers, decimals, money and days as well", "[app][fields]") {
    for (const Row& row : {Row{"1240", "1,240"},
                           Row{"1 240", "1,240"},
                           Row{"1.240", "1,240"},
                           Row{"12.5", "form_not_whole"},
                           Row{"0,240", "form_not_whole"},
                           Row{"999 999 999", "999,999,999"},
                           Row{"1 000 000 000", "form_too_large"}}) {
        CAPTURE(row.text);
        CHECK(beside(field_of(FieldKind::whole, row.text)) == row.outcome);
    }
    for (const Row& row : {Row{"1234,5", "1,234.50 EUR"},
                           Row{"1'234.50", "1,234.50 EUR"},
                           Row{"1.234", "money_ambiguous"},
                           Row{"1.234 JPY", "1,234 JPY"},
                           Row{"12.345", "money_ambiguous"},
                           Row{"0.345", "money_decimals"},
                           Row{"5 XAU", "money_currency"},
                           Row{"lots", "money_malformed"}}) {
        CAPTURE(row.text);
        CHECK(beside(field_of(FieldKind::money, row.text)) == row.outcome);
    }
    for (const Row& row : {Row{"2026-05-31", "31 May 2026"},
                           Row{" 2026-05-31 ", "31 May 2026"},
                           Row{"2026-02-30", "date_impossible"},
                           Row{"31.5.2026", "date_malformed"}}) {
        CAPTURE(row.text);
        CHECK(beside(field_of(FieldKind::date, row.text)) == row.outcome);
    }
}

TEST_CASE("a decimal number keeps every digit it is asked to keep", "[app][fields]") {
    struct Decimal {
        const char* text;
        std::int32_t decimals;
        std::int64_t value;
        const char* refused;
    };

    for (const Decimal& row : {Decimal{"12", 3, 12'000, nullptr},
                               Decimal{"12.3", 3, 12'300, nullptr},
                               Decimal{"-12,345", 3, 0, "form_figure_ambiguous"},
                               Decimal{"0,345", 3, 345, nullptr},
                               Decimal{"-1234.5", 1, -12'345, nullptr},
                               Decimal{"1 234,5", 1, 12'345, nullptr},
                               Decimal{"1.25", 1, 0, "form_decimals"},
                               Decimal{"2.125", 3, 0, "form_figure_ambiguous"},
                               Decimal{"2.1250", 3, 2'125, nullptr},
                               Decimal{"2.1251", 3, 0, "form_decimals"},
                               Decimal{"2.000", 3, 0, "form_figure_ambiguous"},
                               Decimal{"12:30", 1, 0, "form_not_decimal"},
                               Decimal{"1.2.3", 1, 0, "form_not_decimal"},
                               Decimal{"1000000000", 0, 0, "form_too_large"}}) {
        CAPTURE(row.text);
        const base::Result<std::int64_t> read = read_decimal(row.text, row.decimals);
        REQUIRE(read.ok() == (row.refused == nullptr));
        if (read) CHECK(read.value() == row.value);
        if (!read) CHECK(base::name_of(read.problems().front().code) == row.refused);
    }
}

TEST_CASE("a search finds every word, anywhere and in any case", "[app][fields]") {
    CHECK(matches("first certificate", ""));
    CHECK(matches("first certificate", "CERT"));
    CHECK(matches("first certificate", "cate fir"));
    CHECK(matches("first certificate", "  first "));
    CHECK_FALSE(matches("first certificate", "first fit"));
    FieldView search = make_choice("find", Word::specimen_find, drive_words(), -1);
    search.kind = FieldKind::search;
    understand(search);
    CHECK(search.shown.size() == drive_words().size());
    search.text = "OIL";
    understand(search);
    CHECK(search.shown == std::vector<std::int32_t>{1});
    search.text = "nothing like it";
    understand(search);
    CHECK(search.shown.empty());
}

TEST_CASE("a long list shows no more rows than are looked through, and none while closed",
          "[app][fields]") {
    FieldView money = field_of(FieldKind::money, "");
    understand(money);
    CHECK(money.shown.empty());
    money.open = true;
    understand(money);
    CHECK(money.shown.size() == 40);
    money.filter = "us";
    understand(money);
    REQUIRE_FALSE(money.shown.empty());
    for (const std::int32_t option : money.shown) {
        const std::string code = base::say(money.options[static_cast<std::size_t>(option)], {});
        CHECK(code.find("US") != std::string::npos);
    }
}
