// An app with one aircraft, and hands that fill in the forms of its limits.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/support/said.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"

namespace twoclocks::canvas::support {

using facts::LimitSet;
using twoclocks::support::said;

inline constexpr base::Date today{20'782};  // as start says

/// One aircraft with its overhaul.
struct Hangar {
    Hangar() {
        start(app);
        add_aircraft(app);
        host.answer(app);
        const auto* view = std::get_if<views::AircraftView>(&app.screen().page);
        REQUIRE(view != nullptr);
        aircraft = view->id;
        overhaul = view->due.front().item;
    }

    const FormPage& form() {
        const auto* page = std::get_if<FormPage>(&app.screen().page);
        REQUIRE(page != nullptr);
        return *page;
    }

    const FieldView* find(std::string_view id) {
        for (const FieldView& field : form().fields)
            if (field.id == id) return &field;
        return nullptr;
    }

    const FieldView& field(std::string_view id) {
        const FieldView* found = find(id);
        CAPTURE(id);
        REQUIRE(found != nullptr);
        return *found;
    }

    void open(FormKind kind, base::Id subject) { app.apply(intent::OpenForm{kind, subject}); }

    void more() { app.apply(intent::ToggleMore{}); }

    void type(std::string_view id, std::string_view text) {
        (void)field(id);  // what is not on the page cannot be typed into
        app.field_text(id, text);
        app.field_closed(id);
    }

    void choose(const std::string& id, const std::string& words) {
        const FieldView& it = field(id);
        for (std::size_t at = 0; at < it.options.size(); ++at) {
            if (said(it.options[at]) != words) continue;
            app.apply(intent::ChooseOption{id, static_cast<std::int32_t>(at)});
            return;
        }
        FAIL("no such option");
    }

    /// Sends the form; what is wrong stands on it then.
    void send() {
        app.apply(intent::SubmitForm{});
        host.answer(app);
    }

    [[nodiscard]] std::vector<facts::Fact> records() {
        app.apply(intent::ExportJournal{});
        return facts::parse_journal(host.file).facts;
    }

    /// The last record of a kind, in the order they were written.
    template <class T>
    std::pair<facts::Body, T> last() {
        const facts::Fact* found = nullptr;
        const std::vector<facts::Fact> all = records();
        for (const facts::Fact& fact : all) {
            if (!std::holds_alternative<T>(fact.body.fields)) continue;
            if (found == nullptr || facts::earlier(found->stamp, fact.stamp)) found = &fact;
        }
        REQUIRE(found != nullptr);
        return {found->body, std::get<T>(found->body.fields)};
    }

    std::optional<base::Trouble> problem(std::string_view id) {
        const FieldView* found = find(id);
        if (found == nullptr || !found->problem) return std::nullopt;
        return found->problem->code;
    }

    /// What is due, by its name.
    views::DueRow due(const std::string& name) {
        app.apply(intent::OpenFleet{});
        app.apply(intent::OpenAircraft{aircraft});
        const auto* view = std::get_if<views::AircraftView>(&app.screen().page);
        REQUIRE(view != nullptr);
        for (const views::DueRow& row : view->due)
            if (row.name == name) return row;
        FAIL("no such item");
        return {};
    }

    FakeHost host;
    AppState app{host};
    base::Id aircraft;
    base::Id overhaul;
};

/// Adds an inspection every 100 h, which the test may change before it is sent.
inline void begin_inspection(Hangar& hangar, bool with_more) {
    hangar.open(FormKind::new_item, hangar.aircraft);
    hangar.type("name", "Inspection");
    hangar.choose("role", "inspection");
    hangar.type("hours", "100");
    hangar.type("anchor_total", "");
    if (with_more) hangar.more();
}

inline LimitSet inspection() {
    LimitSet limit;
    limit.hours = base::hours(100);
    limit.anchor = facts::Anchor::release;
    return limit;
}

inline bool same(const LimitSet& left, const LimitSet& right) {
    return facts::say_the_same({today, {}, left, {}}, {today, {}, right, {}});
}

}  // namespace twoclocks::canvas::support
