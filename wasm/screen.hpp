// Everything one page shows, as plain data: made by AppState, drawn by panels.
#pragma once

#include "wasm/intent.hpp"
#include "wasm/platform/host.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/money.hpp"
#include "engine/views/part_list_view.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/plan.hpp"
#include "engine/views/routes.hpp"
#include "engine/views/stagger_view.hpp"
#include "engine/views/status.hpp"
#include "engine/views/sums.hpp"
#include "engine/views/sure.hpp"

namespace twoclocks::canvas {

/// Something a field is filled with at one tap: "Today".
struct QuickFill {
    base::Message label;
    std::string text;
};

/// First start: what this is, and the caution that must be accepted.
struct WelcomePage {};

/// Reading pad of one aircraft, or the list to choose from.
struct LogPage {
    std::vector<views::LogView> choices;  // empty when `pad` is set

    struct Pad {
        views::LogView view;
        std::string digits;        // as typed
        std::string date_text;     // YYYY-MM-DD, the field "date"
        base::Message date;        // as said: "today" or "3 May 2026"
        base::Message difference;  // "+2.3 h since 3 May 2026", word `blank` when none yet
        std::optional<base::Problem> problem;
        bool can_save{false};
        bool offer_meter_change{false};  // the falling-meter problem's way out
        bool can_clear{false};
        bool can_undo_clear{false};
        base::Message draft_note{base::Word::blank, {}};
        std::vector<QuickFill> days;  // of the field "date"
    };

    std::optional<Pad> pad;
};

/// One field of a form.
struct FieldView {
    std::string id;
    base::Message label;
    base::Message hint;  // word `blank` when none
    FieldKind kind{FieldKind::text};
    std::string text;
    std::vector<base::Message> options;  // a choice when not empty
    std::int32_t chosen{0};
    std::optional<base::Problem> problem;
    bool optional{false};
    bool more{false};       // one that few need: asked for under "More settings"
    bool apart{false};      // of these: not on the page now
    std::int32_t usual{0};  // of a choice of these: what it is when nobody says
    base::Message group{base::Word::blank, {}};       // heading of the fields it stands among
    base::Message understood{base::Word::blank, {}};  // what was typed, as it was read
    bool alike{false};  // one of many with the same options: each says which it is of
    std::vector<base::Message> told{};  // what it is about, a line each, before its box
    std::vector<QuickFill> quick;
    // A choice of many, the currencies of an amount, a search: the list that is looked through.
    bool open{false};
    std::string filter;               // of a search, its text
    std::vector<std::int32_t> shown;  // options that are left, in order, cut to what is seen
    std::int64_t size_bytes{0};       // of a file; its name is the text
};

/// More options than this are looked through with a search.
inline constexpr std::int32_t few_options = 6;

/// Any form: a title, fields, one button.
struct FormPage {
    base::Message title;
    base::Message intro;  // word `blank` when none
    std::vector<FieldView> fields;
    base::Message submit;
    std::vector<base::Problem> problems;              // of the whole form
    base::Message draft_note{base::Word::blank, {}};  // "Your unfinished entry of today is back."
    bool can_clear{false};
    base::Message about{base::Word::blank, {}};  // what it is for: "Annual inspection, ISLE-1"
    std::int32_t more_at{-1};  // the field before which "More settings" stands, -1 for none
    bool asks_more{false};
};

/// One import that is on this device.
struct BatchView {
    std::int32_t number{0};
    std::string file_name;
    base::Message detail;  // "62 records, 3 May 2026"
    bool aside{false};
};

/// Records that would disagree once a file is joined.
struct Disagreement {
    base::Message about;  // "ISLE-1: records would disagree"
    views::QuestionView question;
};

/// What an import would change, before it does.
struct ImportPreview {
    std::string file_name;
    base::Message summary;               // "12 new records, 40 already here, 1 disagreement"
    std::vector<base::Message> changes;  // "New aircraft ISLE-4", "ISLE-1: 3 new readings"
    std::vector<Disagreement> disagreements;
    std::vector<base::Problem> problems;  // with their lines
    bool can_accept{false};
    bool read_only{false};
};

struct FilesPage {
    base::Message summary;                            // "3 aircraft, 214 records"
    base::Message fingerprint;                        // short form of the journal's SHA-256
    base::Message last_export;                        // "Last export: never"
    base::Message not_copied{base::Word::blank, {}};  // how many records are in no file yet
    std::vector<BatchView> batches;
    std::optional<ImportPreview> preview;
    ThemeChoice theme{ThemeChoice::system};
    std::int32_t text_percent{100};
    std::vector<base::Message> storage;  // where it is kept, what the browser promised, room
    base::Message author;                // "Records are signed: Ann"
};

/// One record in full: its fields in words, who and when, what replaces it.
struct RecordSheet {
    views::HistoryRow row;
    std::vector<base::Message> lines;
};

/// Every item of one aircraft, and what was asked of the list.
struct ChecksPage {
    views::ChecksView view;
    std::vector<FieldView> fields;  // the first is the search
    bool asks_more{false};          // the others are shown too
    std::string toggle;             // the field whose list opens and closes them
};

/// What is due before the next flight if it comes back on the day in the field.
struct ReturnPage {
    views::ReturnView view;
    std::vector<FieldView> fields;
};

/// How sure the date is, with the hours a month that are tried in the field.
struct SurePage {
    views::SureView view;
    FieldView month;
    base::FlightTime less;  // a step down or up from what is shown
    base::FlightTime more;
};

/// The plan of an overhaul, and what can be recorded of it.
struct PlanPage {
    views::PlanView view;
    std::vector<FieldView> worth{};  // fields that are tried; empty: closed
    bool is_tried{false};            // they say something else than the record
};

/// A page whose campaigns are still being lived through.
struct WorkingPage {
    base::Message title;
    base::Message told;  // how far it is
};

/// The routes of an overhaul, side by side.
struct RoutesPage {
    views::RoutesView view;
};

/// Cores, cash or the reserve of an overhaul.
struct SumsPage {
    views::SumsView view;
    std::optional<FieldView> asked{};  // the hours a year of a buyer
};

/// What an overhaul costs.
struct MoneyPage {
    views::MoneyView view;
};

/// Who of the fleet goes in when.
struct StaggerPage {
    views::StaggerView view;
};

/// Parts of one aircraft or of all the record, and what was asked of the list.
struct PartsPage {
    views::PartListView view;
    std::vector<FieldView> fields;
};

/// Something that can be recorded of a part where it is.
struct PartOffer {
    FormKind form{};
    std::string id;
    base::Message label;
};

/// One part: where it is and was, and what can be recorded of it there.
struct PartPage {
    views::PartHistoryView view;
    std::vector<PartOffer> offered;
};

/// Every widget in every state, for contributors. Invented.
struct SpecimenPage {
    std::vector<views::AircraftCard> cards;  // one a state
    std::vector<views::LifeBoxView> boxes;
    std::vector<views::DueRow> due;  // one a state
    views::QuestionView question;
    std::vector<views::HistoryRow> rows;
    views::ChartView chart;
    base::Problem problem;
    views::Why why;
    std::vector<FieldView> fields;
    std::vector<views::PartRow> parts;
    std::vector<views::PlanTaskRow> tasks;
    std::string digits;  // on the number pad
};

/// The pane beside a list nothing was chosen from yet.
struct NothingChosenPage {
    base::Message what;  // "Choose a record to see it whole."
};

using Page = std::variant<WelcomePage,
                          views::FleetView,
                          views::AircraftView,
                          LogPage,
                          views::HistoryView,
                          FilesPage,
                          FormPage,
                          RecordSheet,
                          SpecimenPage,
                          ChecksPage,
                          views::StatusView,
                          ReturnPage,
                          SurePage,
                          PlanPage,
                          WorkingPage,
                          RoutesPage,
                          StaggerPage,
                          MoneyPage,
                          SumsPage,
                          PartsPage,
                          PartPage,
                          NothingChosenPage>;

/// The list a page was chosen from, shown at its left where there is room for two panes.
struct Beside {
    Page list;
    base::Id chosen;  // empty: none
};

enum class Tab : std::uint8_t { none, fleet, log, history, files };

/// Something said at the bottom of the page: a save, a failure, a new version.
struct Notice {
    base::Message text;
    bool urgent{false};  // an alert: it stays until dismissed
    std::optional<Intent> action;
    base::Message action_label;
};

/// The shortcut keys, and whether single letters work.
struct KeysSheet {
    bool single_keys{true};
};

using Sheet = std::variant<std::monostate, views::Why, RecordSheet, KeysSheet>;

struct Screen {
    Page page;
    std::optional<Beside> beside;
    Tab tab{Tab::none};
    bool can_go_back{false};
    base::Message status;  // "no signal · saved", top right
    std::vector<Notice> notices;
    std::vector<views::Why> whys;  // what OpenWhy points into
    Sheet sheet;
    ThemeChoice theme{ThemeChoice::system};
    bool read_only{false};
    bool single_keys{true};
    std::uint64_t revision{0};  // changes whenever anything here does
};

}  // namespace twoclocks::canvas
