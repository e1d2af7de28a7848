// The gallery of what can be wrong: every code of words.def with a case that raises it and no
// other.
//   files/    what is refused, or kept and warned of, when a file is read, named by its code
//   records/  records that are sound alone and do not add up, named by their code
//   parts/    the same of parts
//   templates/  type templates that are refused, named by their code
// What a person types stands in the tables below.
#include "catch_amalgamated.hpp"
#include "tests/errors/typed_codes.hpp"
#include "tests/support/first_trouble.hpp"
#include "tests/support/pen.hpp"

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include "engine/base/money.hpp"
#include "engine/base/region.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/type_template.hpp"
#include "engine/timeline/entry.hpp"
#include "engine/timeline/parts.hpp"

using namespace twoclocks;
using support::day;
using support::file_text;
using namespace support::typed;

namespace {

CodeNames codes_in(const std::string& folder) {
    CodeNames out;
    const std::filesystem::path path{std::string{HOUSE_ROOT} + "/tests/errors/" + folder};
    for (const auto& entry : std::filesystem::directory_iterator{path}) {
        out.insert(entry.path().stem().string());
    }
    return out;
}

CodeNames all_codes() {
    return {
#define WORD(id, text)
#define TROUBLE(id, what, remedy) #id,
#include "engine/base/words.def"
#undef WORD
#undef TROUBLE
    };
}

/// Every trouble has a sentence for what happened and one for what to do, with nothing left open.
void check_sentences(const base::Problem& problem) {
    for (const std::string& text : {base::say_what(problem, {}), base::say_remedy(problem, {})}) {
        CAPTURE(text);
        CHECK(text.size() > 10);
        CHECK(text.find('{') == std::string::npos);
        CHECK(text.find("–") == std::string::npos);
        CHECK((text.back() == '.' || text.back() == '?'));
    }
}

timeline::AircraftState read_meter() {
    support::Pen pen{"ann"};
    std::vector<facts::Fact> facts{
        pen.add(day("2026-03-01"), {}, facts::AircraftAdded{"ISLE-1", {}, {}, {}, {}})};
    const base::Id aircraft = facts.front().id;
    facts.push_back(pen.add(day("2026-03-01"), {aircraft}, facts::MeterFitted{}));
    const base::Id meter = facts.back().id;
    facts.push_back(pen.write(day("2026-04-01"), {aircraft, meter}, support::reads(1000)));
    facts.push_back(pen.write(day("2026-04-11"), {aircraft, meter}, support::reads(1100)));
    return timeline::replay(support::journal_of(facts), aircraft, day("2026-06-01"));
}

}  // namespace

TEST_CASE("every file of the gallery is complained of by its own name, at its line and field",
          "[errors][gallery]") {
    struct Row {
        const char* code;
        std::int32_t line;
        const char* field;
    };

    const std::vector<Row> rows{Row{"about_missing", 2, "about"},
                                Row{"answer_empty", 2, "settles"},
                                Row{"count_absurd", 2, "landings"},
                                Row{"date_impossible", 2, "on"},
                                Row{"date_malformed", 2, "on"},
                                Row{"date_out_of_range", 2, "on"},
                                Row{"fact_field_missing", 2, "reads"},
                                Row{"fact_field_wrong", 2, "reads"},
                                Row{"fact_kind_nested", 2, "instead"},
                                Row{"file_empty", 0, ""},
                                Row{"file_foreign", 1, ""},
                                Row{"file_newer", 1, ""},
                                Row{"file_torn", 3, ""},
                                Row{"hours_absurd", 2, "reads"},
                                Row{"hours_negative", 2, "reads"},
                                Row{"limit_without_any", 2, "hours"},
                                Row{"limit_zero", 2, "hours"},
                                Row{"line_double_key", 2, ""},
                                Row{"line_not_json", 2, ""},
                                Row{"line_not_object", 2, ""},
                                Row{"line_null", 2, ""},
                                Row{"line_number_not_whole", 2, ""},
                                Row{"line_text_too_long", 2, "registration"},
                                Row{"line_too_deep", 2, ""},
                                Row{"limit_two_calendars", 2, "days"},
                                Row{"months_absurd", 2, "months"},
                                Row{"number_absurd", 2, "tolerance_permille"},
                                Row{"overfly_not_programme", 2, "overfly_hours"},
                                Row{"permit_without_any", 2, "hours"},
                                Row{"tolerance_cap_alone", 2, "tolerance_cap_hours"},
                                Row{"tolerance_not_allowed", 2, "tolerance_hours"},
                                Row{"tolerance_without_source", 2, "tolerance_source"},
                                Row{"rebuild_without_document", 2, "document"},
                                Row{"directive_without_number", 2, "number"},
                                Row{"approval_without_reference", 2, "reference"},
                                Row{"wear_without_unit", 2, "unit"},
                                Row{"source_needed", 2, "source"},
                                Row{"factor_below_one", 2, "factor_thousandths"},
                                Row{"flown_backwards", 2, "from"},
                                Row{"plan_task_days_missing", 2, "low_days"},
                                Row{"task_out_of_order", 2, "likely_days"},
                                Row{"plan_promise_missing", 2, "promised"},
                                Row{"plan_confidence_range", 2, "confidence_percent"},
                                Row{"price_negative", 2, "lost_day"},
                                Row{"costs_currencies", 2, "saved_day"},
                                Row{"rate_malformed", 2, "rate"},
                                Row{"rate_same_currency", 2, "rate_to"},
                                Row{"list_row_wrong", 2, "list_rows"},
                                Row{"list_empty", 2, "list_rows"},
                                Row{"line_currencies", 2, "price"},
                                Row{"line_out_of_order", 2, "price"},
                                Row{"line_points_missing", 2, "price"},
                                Row{"closed_backwards", 2, "closed_last"},
                                Row{"core_currencies", 2, "best_credit"},
                                Row{"core_credit_high", 2, "best_credit"},
                                Row{"core_part_high", 2, "part_credit"},
                                Row{"core_chances", 2, "part_permille"},
                                Row{"core_grade_missing", 2, "core_grade"},
                                Row{"core_two_ways", 2, "core_credit"},
                                Row{"amount_missing", 2, "amount"},
                                Row{"proof_missing", 2, "core_reference"},
                                Row{"word_newer", 2, "class"}};
    CodeNames tried;
    for (const Row& row : rows) {
        CAPTURE(row.code);
        tried.insert(row.code);
        const std::string file = std::string{"tests/errors/files/"} + row.code + ".jsonl";
        const facts::Parsed parsed = facts::parse_journal(file_text(file));
        REQUIRE(parsed.problems.size() == 1);
        const base::Problem& problem = parsed.problems.front();
        CHECK(base::name_of(problem.code) == row.code);
        CHECK(problem.line == row.line);
        CHECK(problem.field == row.field);
        const bool is_kept = problem.severity == base::Severity::caution;
        CHECK(is_kept == (problem.code == base::Trouble::word_newer));
        if (is_kept) CHECK(parsed.facts.size() == 1);
        check_sentences(problem);
    }
    CHECK(tried == codes_in("files"));
}

TEST_CASE("every record of the gallery that does not add up says so, and nothing else",
          "[errors][gallery]") {
    for (const std::string& code : codes_in("records")) {
        CAPTURE(code);
        const facts::Journal journal =
            support::journal_from(file_text("tests/errors/records/" + code + ".jsonl"));
        const auto state = timeline::replay(journal, journal.aircraft().front(), day("2026-06-01"));
        CHECK(state.questions.empty());
        REQUIRE(state.cautions.size() == 1);
        const timeline::Caution& caution = state.cautions.front();
        CHECK(base::name_of(caution.code) == code);
        CHECK(caution.fact == journal.in_order().back()->id);
        check_sentences({caution.code, caution.args, base::Severity::caution, 0, {}});
    }
}

TEST_CASE("every part of the gallery that does not add up names its facts, and no other trouble",
          "[errors][gallery]") {
    for (const std::string& code : codes_in("parts")) {
        CAPTURE(code);
        const facts::Journal journal =
            support::journal_from(file_text("tests/errors/parts/" + code + ".jsonl"));
        CodeNames found;
        for (const auto& part : timeline::replay_parts(journal, day("2026-06-01"))) {
            CHECK(part.questions.empty());
            for (const timeline::PartProblem& problem : part.problems) {
                found.insert(std::string{base::name_of(problem.code)});
                CHECK_FALSE(problem.facts.empty());
                for (const base::Id& fact : problem.facts)
                    CHECK_FALSE(journal.with_id(fact).empty());
                check_sentences({problem.code, problem.args, problem.severity, 0, {}});
            }
        }
        CHECK(found == CodeNames{code});
    }
}

TEST_CASE("every template of the gallery is refused by its own name", "[errors][gallery]") {
    for (const std::string& code : codes_in("templates")) {
        CAPTURE(code);
        const auto read =
            facts::parse_template(file_text("tests/errors/templates/" + code + ".json"));
        REQUIRE_FALSE(read.ok());
        REQUIRE(read.problems().size() == 1);
        CHECK(base::name_of(read.problems().front().code) == code);
        CHECK_FALSE(read.problems().front().field.empty());
        check_sentences(read.problems().front());
    }
}

TEST_CASE("what a person types is refused by its own name", "[errors][gallery]") {
    for (const Typed& row : typed_hours) {
        CAPTURE(row.text);
        const auto read = base::parse_flight_time(row.text);
        REQUIRE(support::first_trouble(read) == row.code);
        check_sentences(read.problems().front());
    }
    for (const Typed& row : typed_money) {
        CAPTURE(row.text);
        const auto read = base::parse_money(row.text, {});
        REQUIRE(support::first_trouble(read) == row.code);
        check_sentences(read.problems().front());
    }
    for (const Typed& row : typed_ids) {
        CAPTURE(row.text);
        const auto read = base::parse_id(row.text);
        REQUIRE(support::first_trouble(read) == row.code);
        check_sentences(read.problems().front());
    }
}

TEST_CASE("a reading that cannot be is refused by its own name", "[errors][gallery]") {
    const timeline::AircraftState state = read_meter();
    for (const Entry& row : entries) {
        CAPTURE(row.code);
        const base::Problems problems = timeline::check_reading(
            state, base::tenths(row.reads_tenths), day(row.on), day("2026-06-01"));
        REQUIRE(problems.size() == 1);
        CHECK(base::name_of(problems.front().code) == row.code);
        CHECK(problems.front().field == row.field);
        check_sentences(problems.front());
    }
    const base::Problems none =
        timeline::check_reading({}, {}, day("2026-06-01"), day("2026-06-01"));
    REQUIRE(none.size() == 1);
    CHECK(base::name_of(none.front().code) == "entry_no_meter");
    CHECK(none.front().field == "reads");
    check_sentences(none.front());
}

TEST_CASE("every code of the catalogue stands in the gallery", "[errors][gallery]") {
    CodeNames covered = codes_in("files");
    covered.merge(codes_in("records"));
    covered.merge(codes_in("parts"));
    covered.merge(codes_in("templates"));
    for (const Typed& row : typed_hours)
        covered.insert(row.code);
    for (const Typed& row : typed_money)
        covered.insert(row.code);
    for (const Typed& row : typed_ids)
        covered.insert(row.code);
    for (const Entry& row : entries)
        covered.insert(row.code);
    covered.insert("entry_no_meter");
    covered.insert(of_great_files.begin(), of_great_files.end());
    covered.insert(of_totals.begin(), of_totals.end());
    covered.insert(of_forms.begin(), of_forms.end());
    covered.insert(of_tables.begin(), of_tables.end());
    covered.insert(of_locks.begin(), of_locks.end());
    covered.insert(of_plans.begin(), of_plans.end());
    covered.insert(of_estimates.begin(), of_estimates.end());
    covered.insert(of_cash.begin(), of_cash.end());
    CHECK(covered == all_codes());
}
