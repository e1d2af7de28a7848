#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/chart.hpp"
#include "wasm/widgets/due_card.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/fleet_card.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/history_row.hpp"
#include "wasm/widgets/life_box.hpp"
#include "wasm/widgets/pad.hpp"
#include "wasm/widgets/part_row.hpp"
#include "wasm/widgets/plan_row.hpp"
#include "wasm/widgets/question_card.hpp"
#include "wasm/widgets/swatches.hpp"
#include "wasm/widgets/text.hpp"
#include "wasm/widgets/why_lines.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// The page while it is drawn. Nothing on it does anything but show itself.
class Specimen {
  public:
    Specimen(Ui& ui, const SpecimenPage& page) : ui_(ui), page_(page) {}

    void draw() {
        paragraph(ui_, Type::body, Tone::soft, ui_.say(Word::specimen_intro));
        section(Word::specimen_type, [&] { type_swatches(ui_); });
        section(Word::specimen_pairs, [&] { pair_swatches(ui_); });
        section(Word::specimen_buttons, [&] { buttons(); });
        section(Word::specimen_figures, [&] { figures(); });
        section(Word::specimen_states, [&] { states(); });
        section(Word::specimen_boxes, [&] { boxes(); });
        section(Word::specimen_rows, [&] { rows(); });
        section(Word::specimen_notes, [&] { notes(); });
        section(Word::specimen_entry, [&] { entry(); });
        ui_.gap(space::block);
        bar_chart(ui_, page_.chart);
        ui_.gap(space::base);
        tasks();
        caution_line(ui_);
    }

  private:
    template <class Draw>
    void section(Word title, Draw draw) {
        ui_.gap(space::block);
        heading(ui_, 2, ui_.say(title));
        ui_.gap(space::middle);
        draw();
    }

    void buttons() {
        const std::string label = ui_.say(Word::button_save_reading);
        const std::string later = ui_.say(Word::specimen_not_now);
        (void)primary_button(ui_, "specimen-primary", label);
        ui_.gap(target::apart);
        (void)primary_button(ui_, "specimen-primary-off", later, false);
        ui_.gap(target::apart);
        (void)quiet_button(ui_, "specimen-quiet", label);
        ui_.gap(target::apart);
        (void)button_row(ui_,
                         {{"specimen-row", label},
                          {"specimen-row-off", later, false},
                          {"specimen-row-third", ui_.say(Word::button_history)}});
        ui_.gap(space::middle);
        (void)choice_list(ui_,
                          {{"specimen-chosen", ui_.say(Word::specimen_chosen), true},
                           {"specimen-other", ui_.say(Word::specimen_other), false}});
    }

    void tasks() {
        const auto at = [&](std::int32_t index) -> const views::PlanTaskRow& {
            return page_.tasks[static_cast<std::uint32_t>(index)];
        };
        const auto height = [&](std::int32_t index, float width) {
            return plan_row_height(ui_, at(index), width);
        };
        const auto draw = [&](const ListItem& item, const Rect& box) {
            (void)plan_row(ui_, at(item.index), {350, 800}, item, box);
        };
        const auto count = static_cast<std::int32_t>(page_.tasks.size());
        windowed_list(ui_,
                      {"specimen-tasks", ui_.say(Word::plan_tasks), count, 1, target::apart},
                      {height, draw});
    }

    void figures() {
        const views::AircraftCard& card = page_.cards.front();
        const std::string hours = ui_.say(card.hours.left);
        const std::string calendar = ui_.say(card.calendar.left);
        const std::string over = ui_.say(page_.cards.back().hours.left);
        const std::string label = ui_.say(Word::label_hours_left);
        const std::string other = ui_.say(Word::label_calendar_left);
        (void)figure_pair(ui_,
                          {"specimen-hours", label, {hours, true}, Tone::hours},
                          {"specimen-calendar", other, {calendar, false}, Tone::calendar});
        ui_.gap(space::middle);
        (void)figure_pair(
            ui_,
            {"specimen-over", label, {over, false}, Tone::hours, true},
            {"specimen-unknown", other, {ui_.say(Word::unknown_figure), false}, Tone::soft});
        ui_.gap(space::middle);
        (void)figure_rows(ui_,
                          {{"specimen-total", ui_.say(Word::label_total_time), {hours, true}},
                           {"specimen-rate", ui_.say(Word::label_rate), {calendar, false}}});
        ui_.gap(space::middle);
        pair_rows(ui_, {{label, {hours, false}}, {other, {calendar, true}}});
    }

    void states() {
        const auto count = static_cast<std::int32_t>(page_.cards.size());
        const auto at = [&](std::int32_t index) -> const views::AircraftCard& {
            return page_.cards[static_cast<std::uint32_t>(index)];
        };
        windowed_list(ui_,
                      {"specimen-cards", ui_.say(Word::fleet_list), count, 1, space::middle, 1},
                      {[&](std::int32_t index, float width) {
                           return fleet_card_height(ui_, at(index), width);
                       },
                       [&](const ListItem& item, const Rect& box) {
                           (void)fleet_card(ui_, at(item.index), item, box);
                       }});
        for (std::uint32_t i = 0; i < page_.due.size(); ++i) {
            ui_.gap(space::middle);
            (void)due_card(ui_, static_cast<std::int32_t>(i), page_.due[i]);
        }
    }

    void boxes() {
        for (const views::LifeBoxView& box : page_.boxes) {
            large_life_box(ui_, box);
            ui_.gap(space::block);
        }
    }

    void rows() {
        const auto count = static_cast<std::int32_t>(page_.rows.size());
        const auto at = [&](std::int32_t index) -> const views::HistoryRow& {
            return page_.rows[static_cast<std::uint32_t>(index)];
        };
        windowed_list(ui_,
                      {"specimen-rows", ui_.say(Word::history_list), count, 1, target::apart},
                      {[&](std::int32_t index, float width) {
                           return history_row_height(ui_, at(index), width);
                       },
                       [&](const ListItem& item, const Rect& box) {
                           (void)history_row(ui_, at(item.index), item, box);
                       }});
        ui_.gap(space::middle);
        const auto parts = static_cast<std::int32_t>(page_.parts.size());
        const auto part_at = [&](std::int32_t index) -> const views::PartRow& {
            return page_.parts[static_cast<std::uint32_t>(index)];
        };
        windowed_list(ui_,
                      {"specimen-parts", ui_.say(Word::title_parts), parts, 1, target::apart},
                      {[&](std::int32_t index, float width) {
                           return part_row_height(ui_, part_at(index), width);
                       },
                       [&](const ListItem& item, const Rect& box) {
                           (void)part_row(ui_, part_at(item.index), item, box);
                       }});
    }

    void notes() {
        problem_note(ui_, page_.problem);
        ui_.gap(space::middle);
        caution_note(ui_, {Word::caution_no_source, {}});
        ui_.gap(space::middle);
        (void)question_card(ui_, 0, page_.question);
        ui_.gap(space::wide);
        (void)why_lines(ui_, page_.why);
    }

    void entry() {
        for (const FieldView& field : page_.fields) {
            (void)form_field(ui_, field);
            ui_.gap(space::wide);
        }
        (void)typed_figure(
            ui_, {ui_.say(Word::log_typed), page_.digits, ui_.say(Word::log_unit), true, false});
        ui_.gap(space::middle);
        (void)number_pad(ui_);
    }

    Ui& ui_;
    const SpecimenPage& page_;
};

}  // namespace

Answer specimen_panel(Ui& ui, const Rect& area, const SpecimenPage& page) {
    page_body(ui, area, {"specimen"}, [&] { Specimen{ui, page}.draw(); });
    return {};
}

}  // namespace twoclocks::canvas
