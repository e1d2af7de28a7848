// An app with two aircraft and a gearbox on the shelf, for what is entered of parts.
//   TEST-1 at 1,000.0 h and TEST-2 at 500.0 h on 2026-11-01; TEST-1 at 1,050.0 h on 2026-11-20
//   gearbox 7: 300.0 h since new and 100.0 h since overhaul on 2026-11-01
// Today is 2026-11-25.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/support/pen.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"
#include "engine/timeline/parts.hpp"

namespace twoclocks::canvas::support {

struct PartsHangar {
    using Fact = facts::Fact;
    using Typed = std::vector<std::pair<std::string, std::string>>;

    PartsHangar() {
        start(app);
        std::vector<Fact> all{first, first_meter, second, second_meter, reading, gearbox};
        join(all);
    }

    [[nodiscard]] static facts::PartAdded plate(const char* serial) {
        facts::PartAdded out;
        out.part_number = "GB-1";
        out.serial = serial;
        out.name = "Gearbox";
        out.tsn = base::hours(300);
        out.tso = base::hours(100);
        return out;
    }

    [[nodiscard]] static facts::MeterFitted meter(std::int64_t total_hours) {
        return {{}, {}, {}, base::hours(total_hours), {}};
    }

    void join(const std::vector<Fact>& some) {
        app.file_chosen("other.jsonl", facts::print_journal(twoclocks::support::journal_of(some)));
        app.apply(intent::AcceptImport{});
        host.answer(app);
    }

    /// Opens a form, types and chooses, and saves what it becomes.
    void enter(FormKind kind, base::Id subject, const Typed& typed) {
        app.apply(intent::OpenForm{kind, subject});
        for (const auto& [field, text] : typed)
            put(field, text);
        app.apply(intent::SubmitForm{});
    }

    void put(const std::string& id, const std::string& text) {
        const FieldView& field = form_field(id);
        if (field.options.empty()) {
            app.field_text(id, text);
            return;
        }
        for (std::size_t at = 0; at < field.options.size(); ++at) {
            if (base::say(field.options[at], {}) != text) continue;
            app.apply(intent::ChooseOption{id, static_cast<std::int32_t>(at)});
            return;
        }
        FAIL("no option " + text + " of " + id);
    }

    [[nodiscard]] const FormPage& form() {
        const auto* page = std::get_if<FormPage>(&app.screen().page);
        REQUIRE(page != nullptr);
        return *page;
    }

    [[nodiscard]] const FieldView& form_field(const std::string& id) {
        const auto& fields = form().fields;
        const auto found = std::find_if(
            fields.begin(), fields.end(), [&](const FieldView& each) { return each.id == id; });
        CAPTURE(id);
        REQUIRE(found != fields.end());
        return *found;
    }

    [[nodiscard]] std::vector<std::string> options(const std::string& id) {
        std::vector<std::string> out;
        for (const base::Message& option : form_field(id).options)
            out.push_back(base::say(option, {}));
        return out;
    }

    /// "field code" of every problem on the form.
    [[nodiscard]] std::vector<std::string> problems() {
        std::vector<std::string> out;
        for (const FieldView& field : form().fields) {
            if (field.problem)
                out.push_back(field.id + ' ' + std::string{base::name_of(field.problem->code)});
        }
        for (const base::Problem& problem : form().problems)
            out.push_back(std::string{base::name_of(problem.code)});
        return out;
    }

    /// Saves what the form handed over, and reads what is stored.
    [[nodiscard]] std::vector<Fact> saved() {
        REQUIRE(host.asked.size() == 1);
        host.answer(app);
        app.apply(intent::ExportJournal{});
        const std::vector<Fact> all = facts::parse_journal(host.file).facts;
        std::vector<Fact> out;
        for (const Fact& fact : all) {
            const bool known = std::any_of(
                seen.begin(), seen.end(), [&](const base::Id& id) { return id == fact.id; });
            if (!known) out.push_back(fact);
            seen.push_back(fact.id);
        }
        return out;
    }

    [[nodiscard]] timeline::PartState state(base::Id part) {
        app.apply(intent::ExportJournal{});
        return timeline::replay_part(
            twoclocks::support::journal_from(host.file), part, base::Date{20'782});
    }

    [[nodiscard]] const PartPage& part_page(base::Id part) {
        app.apply(intent::OpenFleet{});
        app.apply(intent::OpenPart{part});
        const auto* page = std::get_if<PartPage>(&app.screen().page);
        REQUIRE(page != nullptr);
        return *page;
    }

    FakeHost host;
    AppState app{host};
    twoclocks::support::Pen ann{"ann"};
    Fact first = ann.add(
        twoclocks::support::day("2026-11-01"), {}, facts::AircraftAdded{"TEST-1", {}, {}, {}, {}});
    Fact first_meter = ann.add(twoclocks::support::day("2026-11-01"), {first.id}, meter(1000));
    Fact second = ann.add(
        twoclocks::support::day("2026-11-01"), {}, facts::AircraftAdded{"TEST-2", {}, {}, {}, {}});
    Fact second_meter = ann.add(twoclocks::support::day("2026-11-01"), {second.id}, meter(500));
    Fact reading = ann.write(twoclocks::support::day("2026-11-20"),
                             {first.id, first_meter.id},
                             twoclocks::support::reads(500));
    Fact gearbox = ann.add(twoclocks::support::day("2026-11-01"), {}, plate("7"));
    std::vector<base::Id> seen{
        first.id, first_meter.id, second.id, second_meter.id, reading.id, gearbox.id};
};

}  // namespace twoclocks::canvas::support
