// What the tests of type templates do with the app: add an aircraft from one, and go on.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/app/limit_bench.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/said.hpp"

#include <string>
#include <vector>

#include "engine/limits/due.hpp"
#include "engine/timeline/state.hpp"

namespace twoclocks::canvas::bench {

using twoclocks::canvas::support::FakeHost;
using twoclocks::support::said;

using canvas::support::today;

inline const FormPage& form(AppState& app) {
    const auto* page = std::get_if<FormPage>(&app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

inline const FieldView* field(AppState& app, std::string_view id) {
    for (const FieldView& each : form(app).fields)
        if (each.id == id) return &each;
    return nullptr;
}

inline std::string text_of(AppState& app, std::string_view id) {
    const FieldView* found = field(app, id);
    return found == nullptr ? "no such field" : found->text;
}

/// Chooses by what the option says.
inline void choose(AppState& app, const std::string& id, const std::string& option) {
    const FieldView* found = field(app, id);
    REQUIRE(found != nullptr);
    for (std::size_t at = 0; at < found->options.size(); ++at) {
        if (said(found->options[at]) != option) continue;
        app.apply(intent::ChooseOption{id, static_cast<std::int32_t>(at)});
        return;
    }
    FAIL("no option says " << option);
}

inline std::string chosen(AppState& app, std::string_view id) {
    const FieldView* found = field(app, id);
    REQUIRE(found != nullptr);
    return said(found->options[static_cast<std::size_t>(found->chosen)]);
}

inline std::string told(AppState& app, std::string_view id) {
    const FieldView* found = field(app, id);
    REQUIRE(found != nullptr);
    std::string out;
    for (const base::Message& line : found->told)
        out += said(line) + '\n';
    return out;
}

inline void submit(AppState& app, FakeHost& host) {
    app.apply(intent::SubmitForm{});
    host.answer(app);
}

inline constexpr const char* piston = "Light piston helicopter, overhauled as a whole";

inline void start(AppState& app) {
    twoclocks::canvas::support::start(app);
}

/// An aircraft made on 2016-06-15 from the piston template.
inline void add_from_template(AppState& app, FakeHost& host, std::string_view reads = "1000.0") {
    start(app);
    app.apply(intent::OpenForm{FormKind::new_aircraft, {}});
    choose(app, "template", piston);
    app.field_text("registration", "TEST-1");
    app.field_text("anchor_on", "2016-06-15");
    app.field_text("reads", reads);
    app.field_text("plan", "100");
    submit(app, host);
}

inline bool asks_documents(AppState& app) {
    const auto* page = std::get_if<FormPage>(&app.screen().page);
    return page != nullptr && page->title.word == base::Word::form_template;
}

/// Takes everything over as it is shown, part by part.
inline int take_all(AppState& app, FakeHost& host) {
    int saves = 0;
    for (; asks_documents(app) && saves < 20; ++saves)
        submit(app, host);
    return saves;
}

inline facts::Journal journal(AppState& app, FakeHost& host) {
    app.apply(intent::ExportJournal{});
    return twoclocks::support::journal_from(host.file);
}

inline timeline::AircraftState state(AppState& app, FakeHost& host) {
    const facts::Journal all = journal(app, host);
    REQUIRE(all.aircraft().size() == 1);
    return timeline::replay(all, all.aircraft().front(), today);
}

inline base::Id item(const timeline::AircraftState& state, const std::string& name) {
    for (const timeline::ItemState& each : state.items)
        if (each.name == name) return each.id;
    FAIL("no item " << name);
    return {};
}

/// "1100.0 h, 2038-11-25" of an item; a clock it lacks is a dash.
inline std::string left(const timeline::AircraftState& state, const std::string& name) {
    for (const limits::ItemDue& due : limits::due_items(state, today)) {
        if (due.item != item(state, name)) continue;
        const auto* hours = limits::clock_of(due, facts::Clock::hours);
        const auto* calendar = limits::clock_of(due, facts::Clock::calendar);
        return (hours == nullptr ? std::string{"-"}
                                 : base::print_tenths(hours->left, base::Round::down) + " h") +
               ", " + (calendar == nullptr ? "-" : base::print_date(calendar->due_on));
    }
    return "not due";
}

}  // namespace twoclocks::canvas::bench
