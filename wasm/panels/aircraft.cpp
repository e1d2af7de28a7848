#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/due_card.hpp"
#include "wasm/widgets/event_card.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/life_box.hpp"
#include "wasm/widgets/question_card.hpp"
#include "wasm/widgets/text.hpp"

#include <array>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using views::AircraftView;
using views::Edge;

// Screen::whys of this page, in the order AppState fills it; events follow, then the
// due rows.
enum AircraftWhys : std::int32_t {
    why_answer,
    why_hours_left,
    why_calendar_left,
    why_range,
    why_total_time,
    why_rate,
    why_break_even,
    why_event_first
};

/// What can be recorded of an aircraft, the most pressing first.
struct Recorded {
    const char* id;
    Word label;
    FormKind form;
};

constexpr std::array recorded{
    Recorded{"event", Word::button_event, FormKind::event},
    Recorded{"new-item", Word::button_new_item, FormKind::new_item},
    Recorded{"directive", Word::button_directive, FormKind::directive},
    Recorded{"template", Word::button_template, FormKind::from_template},
    Recorded{"wear-limit", Word::button_wear_limit, FormKind::wear_limit},
    Recorded{"meter-change", Word::button_meter_change, FormKind::meter_change},
    Recorded{"usage-plan", Word::button_usage_plan, FormKind::usage_plan},
    Recorded{"parked", Word::button_parked, FormKind::parked},
    Recorded{"storage", Word::button_storage, FormKind::storage},
    Recorded{"adjust", Word::button_adjust, FormKind::meter_adjusted},
    Recorded{"flown-as", Word::button_flown_as, FormKind::flown_as},
    Recorded{"factor", Word::button_factor, FormKind::hours_factor},
};

/// The page while it is drawn: what it shows and what was pressed.
class AircraftPage {
  public:
    AircraftPage(Ui& ui, const AircraftView& view) : ui_(ui), view_(view) {}

    void narrow() {
        identity();
        events();
        storage();
        clocks();
        sentences();
        ui_.gap(space::small);
        large_life_box(ui_, view_.box);
        ui_.gap(space::base);
        doubts();
        rates();
        due();
        actions();
        caution_line(ui_);
    }

    void wide() {
        ui_.side_by_side(
            page::figures_share,
            space::block,
            [&] {
                identity();
                events();
                storage();
                clocks();
                sentences();
                ui_.gap(space::base);
                rates();
                doubts();
                actions();
                caution_line(ui_);
            },
            [&] {
                large_life_box(ui_, view_.box);
                ui_.gap(space::base);
                due();
            });
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    void open_why(std::int32_t why) { answer_ = intent::OpenWhy{why}; }

    void open_form(FormKind kind, base::Id subject) { answer_ = intent::OpenForm{kind, subject}; }

    void identity() {
        const std::string words = ui_.say(
            {Word::aircraft_is, {base::text_arg(view_.type), base::text_arg(view_.serial)}});
        state_line(ui_, view_.state, ui_.say(view_.state_word), words);
        ui_.gap(space::middle);
    }

    void events() {
        if (view_.events.empty()) return;
        heading(ui_, 2, ui_.say(Word::heading_events));
        ui_.gap(space::small);
        for (std::uint32_t i = 0; i < view_.events.size(); ++i) {
            const auto index = static_cast<std::int32_t>(i);
            const EventPress press = event_card(ui_, index, view_.events[i]);
            if (press.why) open_why(why_event_first + index);
            if (press.sign) open_form(FormKind::sign_event, view_.events[i].event);
            ui_.gap(space::middle);
        }
        ui_.gap(space::small);
    }

    /// Since when it is stored, and what that leads to.
    void storage() {
        if (view_.storage.empty()) return;
        for (const base::Message& line : view_.storage) {
            paragraph(ui_, Type::body_strong, Tone::ink, ui_.say(line));
            ui_.gap(space::small);
        }
        std::vector<ButtonSpec> buttons{
            {"on-return", ui_.say(Word::button_on_return), true, view_.registration}};
        if (view_.can_return)
            buttons.push_back({"return", ui_.say(Word::button_return), true, view_.registration});
        const std::int32_t pressed = button_row(ui_, buttons);
        if (pressed == 0) answer_ = intent::OpenReturn{view_.id};
        if (pressed == 1) open_form(FormKind::return_to_service, view_.id);
        ui_.gap(space::middle);
    }

    [[nodiscard]] bool past(Edge edge) const {
        for (const views::DueRow& row : view_.due) {
            const bool stops =
                row.state == views::State::over || row.state == views::State::before_next_flight;
            if (row.is_overhaul && stops && row.binding == edge) return true;
        }
        return false;
    }

    void clocks() {
        const std::int32_t tapped = figure_pair(ui_,
                                                {"why-hours-left",
                                                 ui_.say(Word::label_hours_left),
                                                 said(ui_, view_.hours_left),
                                                 view_.hours_known ? Tone::hours : Tone::soft,
                                                 past(Edge::hours)},
                                                {"why-calendar-left",
                                                 ui_.say(Word::label_calendar_left),
                                                 said(ui_, view_.calendar_left),
                                                 view_.calendar_known ? Tone::calendar : Tone::soft,
                                                 past(Edge::calendar)});
        if (tapped == 0) open_why(why_hours_left);
        if (tapped == 1) open_why(why_calendar_left);
        ui_.gap(space::small);
    }

    void sentences() {
        if (answer_link(ui_, "why-answer", Type::answer, Tone::ink, said(ui_, view_.answer))) {
            open_why(why_answer);
        }
        ui_.gap(target::apart);
        if (line_link(ui_, "why-range", Type::body, Tone::soft, said(ui_, view_.range))) {
            open_why(why_range);
        }
        ui_.gap(target::apart);
        const ButtonSpec sure{"sure", ui_.say(Word::button_sure), true, view_.registration};
        if (quiet_button(ui_, sure)) answer_ = intent::OpenSure{view_.id};
        ui_.gap(target::apart);
        const ButtonSpec plan{"plan", ui_.say(Word::button_plan), true, view_.registration};
        if (quiet_button(ui_, plan)) answer_ = intent::OpenPlan{view_.id};
        ui_.gap(target::apart);
        const ButtonSpec money{"money", ui_.say(Word::button_money), true, view_.registration};
        if (quiet_button(ui_, money)) answer_ = intent::OpenMoney{view_.id};
        ui_.gap(target::apart);
        const ButtonSpec sale{"sale", ui_.say(Word::button_sale), true, view_.registration};
        if (quiet_button(ui_, sale)) answer_ = intent::OpenSums{view_.id, views::SumsOf::sale};
    }

    void rates() {
        const std::int32_t tapped = figure_rows(
            ui_,
            {{"why-total-time", ui_.say(Word::label_total_time), said(ui_, view_.total_time)},
             {"why-rate", ui_.say(Word::label_rate), said(ui_, view_.rate)},
             {"why-break-even", ui_.say(Word::label_break_even), said(ui_, view_.break_even)}});
        if (tapped >= 0) open_why(why_total_time + tapped);
        ui_.gap(space::wide);
    }

    void doubts() {
        for (const base::Message& caution : view_.cautions) {
            caution_note(ui_, caution);
            ui_.gap(space::middle);
        }
        for (const base::Problem& trouble : view_.troubles) {
            problem_note(ui_, trouble);
            ui_.gap(space::middle);
        }
        if (const auto answer = question_cards(ui_, view_.questions)) answer_ = *answer;
    }

    void due() {
        heading(ui_, 2, ui_.say(Word::heading_due));
        ui_.gap(space::small);
        if (view_.due.empty()) paragraph(ui_, Type::body, Tone::soft, ui_.say(Word::due_none));
        std::int32_t why = why_event_first + static_cast<std::int32_t>(view_.events.size());
        for (std::uint32_t i = 0; i < view_.due.size(); ++i) {
            const DuePress press = due_card(ui_, static_cast<std::int32_t>(i), view_.due[i]);
            if (press.figure >= 0) open_why(why + press.figure);
            if (press.form) open_form(*press.form, view_.due[i].item);
            why += figures_in(view_.due[i]);
            ui_.gap(space::middle);
        }
        const std::string& mine = view_.registration;
        const std::int32_t pressed =
            button_row(ui_,
                       {{"checks", ui_.say(Word::button_checks)},
                        {"parts", ui_.say(Word::button_parts), true, mine},
                        {"status", ui_.say(Word::button_status), true, mine},
                        {"history", ui_.say(Word::button_history), true, mine}});
        if (pressed == 0) answer_ = intent::OpenChecks{view_.id};
        if (pressed == 1) answer_ = intent::OpenParts{view_.id};
        if (pressed == 2) answer_ = intent::OpenStatus{view_.id};
        if (pressed == 3) answer_ = intent::OpenHistory{view_.id};
        ui_.gap(space::wide);
    }

    void actions() {
        heading(ui_, 2, ui_.say(Word::heading_record));
        ui_.gap(space::small);
        std::vector<ButtonSpec> buttons;
        for (const Recorded& one : recorded)
            buttons.push_back({one.id, ui_.say(one.label)});
        const std::int32_t pressed = button_row(ui_, buttons);
        if (pressed >= 0) open_form(recorded[static_cast<std::size_t>(pressed)].form, view_.id);
    }

    Ui& ui_;
    const AircraftView& view_;
    Answer answer_;
};

}  // namespace

Answer aircraft_panel(Ui& ui, const Rect& area, const views::AircraftView& view) {
    AircraftPage page{ui, view};
    Answer log;
    page_body(
        ui,
        area,
        {"aircraft-" + view.registration, target::primary},
        [&] {
            if (ui.roomy())
                page.wide();
            else
                page.narrow();
        },
        [&] {
            if (primary_button(ui, "log-reading", ui.say(Word::button_log_reading))) {
                log = intent::OpenPad{view.id};
            }
        });
    return log ? log : page.answer();
}

}  // namespace twoclocks::canvas
