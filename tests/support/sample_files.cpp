#include "tests/support/sample_screens.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Word;

views::HistoryRow row(std::uint64_t number, base::Message what, std::string detail) {
    views::HistoryRow made;
    made.fact = id_of(number);
    made.aircraft = id_of(1);
    made.on = day_of(day_3_may_2026 - static_cast<std::int32_t>(number));
    made.date = {Word::day_figure, {base::day_arg(made.on)}};
    made.what = std::move(what);
    made.detail = told(std::move(detail));
    made.told_by = {Word::told_by, {base::text_arg("Ann"), base::day_arg(made.on)}};
    made.can_correct = true;
    made.can_withdraw = true;
    return made;
}

base::Message reading(std::int64_t tenths) {
    return {Word::record_reading, {base::hours_left_arg(base::tenths(tenths))}};
}

Screen saved_page(Page shown, Tab tab, bool can_go_back) {
    Screen screen;
    screen.page = std::move(shown);
    screen.tab = tab;
    screen.can_go_back = can_go_back;
    screen.status = told("saved");
    screen.revision = 3;
    return screen;
}

FilesPage files_page() {
    FilesPage made;
    made.summary = told("3 aircraft, 214 records");
    made.fingerprint = told("4f1d09ac77b2");
    made.last_export = told("Last export: 12 days ago");
    made.batches = {{1, "isle-fleet-2026-05-03.txt", told("62 records, 3 May 2026"), false},
                    {2, "workshop copy.txt", told("8 records, 9 May 2026"), true}};
    made.not_copied = {Word::files_new_records, {base::whole_arg(17)}};
    made.storage = {{Word::files_kept, {}},
                    {Word::files_not_promised, {}},
                    {Word::files_room, {base::whole_arg(3), base::whole_arg(12'000)}},
                    {Word::files_device, {base::text_arg("4f1d09")}}};
    made.author = told("Records are signed: Ann");
    return made;
}

FieldView field(std::string id, std::string label, FieldKind kind, std::string text) {
    FieldView made;
    made.id = std::move(id);
    made.label = told(std::move(label));
    made.hint = {Word::blank, {}};
    made.kind = kind;
    made.text = std::move(text);
    return made;
}

FormPage form_page() {
    FormPage made;
    made.title = {Word::button_add_aircraft, {}};
    made.intro = told("What the data plate and the logbook say.");
    made.fields = {field("registration", "Registration", FieldKind::text, "ISLE-6"),
                   field("hours_limit", "Overhaul limit, hours", FieldKind::decimal, "2400"),
                   field("start", "Calendar counts from", FieldKind::date, "2022-05-31"),
                   field("drive", "What drives the meter", FieldKind::text, ""),
                   field("note", "Note", FieldKind::note, "Bought with papers from new.")};
    made.fields[1].hint = told("From the approved maintenance data.");
    made.fields[3].options = {
        {Word::drive_collective, {}}, {Word::drive_oil_pressure, {}}, {Word::drive_tachometer, {}}};
    made.fields[4].optional = true;
    made.submit = {Word::button_add_aircraft, {}};
    return made;
}

}  // namespace

Screen history() {
    views::HistoryView view;
    view.rows = {row(31, reading(12368), "ISLE-1, collective"),
                 row(32, reading(12345), "ISLE-1, collective"),
                 row(33,
                     {Word::record_work, {base::text_arg("Inspection, 100 hours")}},
                     "ISLE-1, at 1,211.0 h total"),
                 row(34, reading(12101), "ISLE-1, collective"),
                 row(35, {Word::record_newer, {base::text_arg("wear_measured")}}, "ISLE-3")};
    view.rows[1].withdrawn = true;
    view.rows[3].corrected = true;
    view.rows[3].questioned = true;
    view.rows[4].unknown_kind = true;
    return saved_page(std::move(view), Tab::history, false);
}

Screen long_history(std::int32_t records) {
    views::HistoryView view;
    view.registration = "ISLE-1";
    for (std::int32_t i = 0; i < records; ++i) {
        const auto number = static_cast<std::uint64_t>(i);
        view.rows.push_back(row(1000 + number, reading(13000 - i), "ISLE-1, collective"));
    }
    return saved_page(std::move(view), Tab::history, true);
}

Screen files() {
    return saved_page(files_page(), Tab::files, false);
}

Screen preview() {
    FilesPage made = files_page();
    ImportPreview shown;
    shown.file_name = "from-ben.txt";
    shown.summary = told("12 new records, 40 already here, 1 disagreement");
    shown.changes = {told("New aircraft ISLE-4"), told("ISLE-1: 3 new readings")};
    Disagreement falls;
    falls.about = {Word::import_disagrees, {base::text_arg("ISLE-1")}};
    falls.question.what = {Word::question_falling, {}};
    views::QuestionView::Side here{id_of(40), reading(12345), told("Ann, written 3 May 2026")};
    here.origin = {Word::question_here, {}};
    views::QuestionView::Side filed{id_of(41), reading(12245), told("Ben, written 4 May 2026")};
    filed.origin = {Word::question_in_file, {}};
    filed.differs = {told("Landings 4,711"), told("Dated 4 May 2026")};
    falls.question.sides = {here, filed};
    shown.disagreements = {falls};
    shown.problems = {
        base::Problem{base::Trouble::line_not_json, {}, base::Severity::caution, 17, {}}};
    shown.can_accept = true;
    made.preview = shown;
    return saved_page(std::move(made), Tab::files, false);
}

Screen form() {
    return saved_page(form_page(), Tab::fleet, true);
}

Screen wrong_form() {
    FormPage made = form_page();
    made.fields[1].text = "1,234";
    made.fields[1].problem = base::Problem{base::Trouble::hours_ambiguous,
                                           {base::text_arg("1,234")},
                                           base::Severity::refused,
                                           0,
                                           "hours_limit"};
    made.fields[2].text = "2022-02-30";
    made.fields[2].problem = base::Problem{base::Trouble::date_impossible,
                                           {base::text_arg("2022-02-30")},
                                           base::Severity::refused,
                                           0,
                                           "start"};
    made.problems = {base::trouble(base::Trouble::limit_without_any)};
    return saved_page(std::move(made), Tab::fleet, true);
}

Screen record() {
    Screen screen = history();
    RecordSheet sheet;
    sheet.row = std::get<views::HistoryView>(screen.page).rows[0];
    sheet.lines = {{Word::record_on, {base::day_arg(sheet.row.on)}},
                   {Word::record_id, {base::text_arg("01900000-0000-7000-8000-00000000001f")}}};
    screen.sheet = sheet;
    return screen;
}

}  // namespace twoclocks::canvas::samples
