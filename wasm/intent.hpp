// What a person wants, as panels report it. An intent becomes a new page, a new fact or a host
// call;
// nothing edits state in place.
#pragma once

#include "wasm/form_kind.hpp"
#include "wasm/text_size.hpp"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "engine/base/flight_time.hpp"
#include "engine/base/id.hpp"
#include "engine/views/sums.hpp"

namespace twoclocks::canvas {

enum class ThemeChoice : std::uint8_t { system, paper, night, sun };

namespace intent {
struct OpenFleet {};

struct OpenLog {};  // the Log tab: choose an aircraft, or straight to its pad

struct OpenPad {
    base::Id aircraft;
};

struct OpenAircraft {
    base::Id aircraft;
};

struct OpenHistory {
    base::Id aircraft;
};  // empty id: the whole fleet

struct OpenStatus {
    base::Id aircraft;
};

struct OpenChecks {
    base::Id aircraft;
};

struct OpenReturn {
    base::Id aircraft;
};  // what is due before the next flight of a stored one

struct OpenSure {
    base::Id aircraft;
};  // how sure the date is

struct OpenPlan {
    base::Id aircraft;
};  // the campaign of its overhaul

struct OpenTask {
    FormKind
        kind{};  // what is recorded of it: its days, how far it is, or what a route or a line is
    base::Id aircraft;
    std::string task;  // its key, or that of the route or the line
};

struct OpenRoutes {
    base::Id aircraft;
};  // the routes of its overhaul, side by side

struct HandOver {
    enum class As : std::uint8_t { paper, table, print, calendar, work_list };
    As as{As::paper};  // the page that is open
};

struct OpenSums {
    base::Id aircraft;
    views::SumsOf of{views::SumsOf::cores};
};

struct OpenMoney {
    base::Id aircraft;
};  // what its overhaul costs

struct UsualLines {
    base::Id aircraft;
};  // recorded, to begin an estimate with

struct TakeOverLines {
    base::Id aircraft;
};  // those of the last overhaul, recorded anew

struct OpenStagger {};  // who of the fleet goes in when

struct TryMonth {
    base::FlightTime month;
};  // hours a month, tried and not recorded

struct TryThrough {
    std::int32_t across_permille{0};
    std::int32_t up_permille{0};
};  // a point of the life box that the line is to go through

struct StopTrying {};

struct KeepTried {};  // as the plan, or as what days are worth: a form, filled in

struct WeighDays {};  // opens or closes what days and hours are worth, on the page of the plan

struct OpenParts {
    base::Id aircraft;
};  // empty id: all parts of the record

struct OpenPart {
    base::Id part;
};

struct OpenFiles {};

struct OpenForm {
    FormKind kind{};
    base::Id subject;
};

struct Back {};

struct PadKey {
    char key{};
};  // '0'..'9', '.', '<' erases the last, 'c' clears all, 'u' brings back what was cleared

struct SaveReading {};

struct EditField {
    std::string field;
};  // panels pass its box to the host themselves

struct ChooseOption {
    std::string field;
    std::int32_t option{0};
};

struct FillField {
    std::string field;
    std::string text;
};  // at one tap: a day, nothing

struct ToggleChoice {
    std::string field;
};  // opens or closes the list of a choice of many

struct ToggleMore {};  // opens or closes the settings of a form that few need

struct ChooseFieldFile {
    std::string field;
};

struct ClearEntry {};  // what is typed in the form or on the pad; also discards a draft

struct UndoClear {};

struct SubmitForm {};

struct OpenWhy {
    std::int32_t why{0};
};  // index into Screen::whys

struct OpenRecord {
    base::Id fact;
};  // from a why line or a history row: its sheet

struct CloseSheet {};

struct AnswerQuestion {
    std::int32_t question{0};
    std::int32_t side{0};
};

struct ExportJournal {};

struct ChooseFile {};

struct AcceptImport {};

struct DropImport {};

struct SetAside {
    std::int32_t batch{0};
};

struct TakeBack {
    std::int32_t batch{0};
};

struct LoadDemo {};

struct WithdrawSaved {
    std::vector<base::Id> facts;
};  // right after they were saved

struct SetTheme {
    ThemeChoice theme{};
};

struct SetTextSize {
    std::int32_t percent{100};
};

struct OpenKeys {};  // the sheet of shortcut keys

struct SetSingleKeys {
    bool on{true};
};

struct AcceptCaution {};  // first start

struct StartNewVersion {};

struct DismissNotice {};
}  // namespace intent

using Intent = std::variant<intent::OpenFleet,
                            intent::OpenLog,
                            intent::OpenPad,
                            intent::OpenAircraft,
                            intent::OpenHistory,
                            intent::OpenChecks,
                            intent::OpenStatus,
                            intent::OpenReturn,
                            intent::OpenSure,
                            intent::OpenPlan,
                            intent::OpenTask,
                            intent::OpenRoutes,
                            intent::OpenStagger,
                            intent::OpenMoney,
                            intent::OpenSums,
                            intent::HandOver,
                            intent::UsualLines,
                            intent::TakeOverLines,
                            intent::TryMonth,
                            intent::TryThrough,
                            intent::StopTrying,
                            intent::KeepTried,
                            intent::WeighDays,
                            intent::OpenParts,
                            intent::OpenPart,
                            intent::OpenFiles,
                            intent::OpenForm,
                            intent::Back,
                            intent::PadKey,
                            intent::SaveReading,
                            intent::EditField,
                            intent::ChooseOption,
                            intent::FillField,
                            intent::ToggleChoice,
                            intent::ToggleMore,
                            intent::ChooseFieldFile,
                            intent::ClearEntry,
                            intent::UndoClear,
                            intent::SubmitForm,
                            intent::OpenWhy,
                            intent::OpenRecord,
                            intent::CloseSheet,
                            intent::AnswerQuestion,
                            intent::ExportJournal,
                            intent::ChooseFile,
                            intent::AcceptImport,
                            intent::DropImport,
                            intent::SetAside,
                            intent::TakeBack,
                            intent::LoadDemo,
                            intent::WithdrawSaved,
                            intent::SetTheme,
                            intent::SetTextSize,
                            intent::OpenKeys,
                            intent::SetSingleKeys,
                            intent::AcceptCaution,
                            intent::StartNewVersion,
                            intent::DismissNotice>;

}  // namespace twoclocks::canvas
