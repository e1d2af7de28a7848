// The plan of an overhaul: days to act by, what comes of beginning today, every task on its line.
#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/chart.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/plan_row.hpp"
#include "wasm/widgets/text.hpp"

#include <array>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using views::PlanView;

// Screen::whys of this page, in the order AppState fills it.
enum PlanWhys : std::int32_t { why_order, why_book, why_stop, why_back, why_induct };

/// The page while it is drawn: what it shows and what was pressed.
class PlanShown {
  public:
    PlanShown(Ui& ui, const PlanPage& page) : ui_(ui), page_(page), view_(page.view) {}

    void narrow() {
        if (told_missing()) return;
        dates();
        today();
        next();
        when();
        tasks(true);
        sure();
        settings();
        take_away();
        caution_line(ui_);
    }

    void wide() {
        if (told_missing()) return;
        ui_.side_by_side(
            page::half,
            space::block,
            [&] {
                dates();
                today();
                next();
                when();
                sure();
                settings();
                take_away();
                caution_line(ui_);
            },
            [&] { tasks(false); });
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    void titled(const Message& title) {
        ui_.gap(space::wide);
        heading(ui_, 2, ui_.say(title));
        ui_.gap(space::small);
    }

    void line(const Message& told, Type type = Type::body, Tone tone = Tone::ink) {
        if (told.word == Word::blank) return;
        paragraph(ui_, type, tone, ui_.say(told));
        ui_.gap(space::small);
    }

    void take_away() {
        if (Answer told = hand_over_buttons(ui_, view_.registration, true))
            answer_ = std::move(told);
    }

    /// Why there is no date; then what to mend it with is all there is.
    bool told_missing() {
        if (view_.missing.word == Word::blank) return false;
        line(view_.missing, Type::answer);
        for (const base::Problem& fault : view_.faults) {
            paragraph(ui_, Type::body_strong, Tone::ink, base::say_what(fault, ui_.region()));
            paragraph(ui_, Type::body, Tone::ink, base::say_remedy(fault, ui_.region()));
            ui_.gap(space::small);
        }
        settings();
        caution_line(ui_);
        return true;
    }

    void dates() {
        const auto one =
            [&](const char* id, const views::Figure& figure, std::int32_t why, Type type) {
                if (figure.text.word == Word::blank) return;
                if (line_link(ui_, id, type, Tone::ink, said(ui_, figure)))
                    answer_ = intent::OpenWhy{why};
                ui_.gap(target::apart);
            };
        if (answer_link(ui_, "why-order", Type::answer, Tone::ink, said(ui_, view_.order)))
            answer_ = intent::OpenWhy{why_order};
        ui_.gap(target::apart);
        one("why-book", view_.book, why_book, Type::body_strong);
        one("why-stop", view_.stop, why_stop, Type::body);
        one("why-back", view_.back, why_back, Type::body);
        line(view_.window);
        line(view_.confidence, Type::small, Tone::soft);
        for (const Message& told : view_.route)
            line(told, Type::small, Tone::soft);
        if (view_.slip.empty()) return;
        titled(view_.slip_title);
        std::vector<PairSpec> pairs;
        for (const views::SlipRow& row : view_.slip)
            pairs.push_back({ui_.say(row.name), {ui_.say(row.moved), false}});
        pair_rows(ui_, pairs);
    }

    /// The cheapest day to go in.
    void when() {
        const views::InductionView& induction = view_.induction;
        const bool is_in = induction.missing.word == Word::blank && !induction.chart;
        if (is_in) return;
        titled({Word::plan_induct, {}});
        line(induction.missing);
        if (induction.chart) {
            if (line_link(
                    ui_, "why-induct", Type::body_strong, Tone::ink, said(ui_, induction.best)))
                answer_ = intent::OpenWhy{why_induct};
            ui_.gap(target::apart);
            for (const Message& told : induction.lines)
                line(told);
            bar_chart(ui_, *induction.chart);
        }
        ui_.gap(space::small);
        const ButtonSpec costs{"plan-costs", ui_.say(Word::plan_costs), true};
        if (quiet_button(ui_, costs)) answer_ = intent::WeighDays{};
        weigh();
    }

    /// What days and hours are worth, tried in place: the day above moves with it.
    void weigh() {
        if (page_.worth.empty()) return;
        ui_.gap(space::small);
        line({Word::plan_weigh_intro, {}}, Type::small, Tone::soft);
        for (const FieldView& field : page_.worth) {
            if (const std::optional<Intent> told = form_field(ui_, field)) answer_ = told;
            ui_.gap(space::base);
        }
        if (!page_.is_tried) return;
        const std::int32_t next = button_row(ui_,
                                             {{"stop-trying", ui_.say(Word::button_stop_trying)},
                                              {"keep-tried", ui_.say(Word::plan_weigh_keep)}});
        if (next == 0) answer_ = intent::StopTrying{};
        if (next == 1) answer_ = intent::KeepTried{};
    }

    void today() {
        titled(view_.title);
        for (const Message& told : view_.today)
            line(told);
    }

    void next() {
        titled({Word::plan_next, {}});
        if (view_.next.empty()) line({Word::plan_next_none, {}}, Type::body, Tone::soft);
        const auto at = [&](std::int32_t index) -> const views::PlanNextRow& {
            return view_.next[static_cast<std::uint32_t>(index)];
        };
        const auto row_of = [&](const ListItem& item) {
            const views::PlanNextRow& row = at(item.index);
            return RowSpec{"next-" + row.key, ui_.say(row.name), {ui_.say(row.when)}, item};
        };
        const auto height = [&](std::int32_t index, float width) {
            return open_row_height(ui_, row_of({index, 0, 0, false}), width);
        };
        const auto draw = [&](const ListItem& item, const Rect& box) {
            if (open_row(ui_, row_of(item), box))
                answer_ = intent::OpenTask{FormKind::plan_step, view_.id, at(item.index).key};
        };
        const auto count = static_cast<std::int32_t>(view_.next.size());
        windowed_list(
            ui_, {"plan-next", ui_.say(Word::plan_next), count, 1, target::apart}, {height, draw});
    }

    void tasks(bool is_below) {
        if (is_below) ui_.gap(space::wide);
        heading(ui_, 2, ui_.say(Word::plan_tasks));
        ui_.gap(space::small);
        pair_of_ends();
        const TimeLine shared{view_.today_permille, view_.limit_permille};
        const auto at = [&](std::int32_t index) -> const views::PlanTaskRow& {
            return view_.rows[static_cast<std::uint32_t>(index)];
        };
        const auto height = [&](std::int32_t index, float width) {
            return plan_row_height(ui_, at(index), width);
        };
        const auto draw = [&](const ListItem& item, const Rect& box) {
            if (plan_row(ui_, at(item.index), shared, item, box))
                answer_ = intent::OpenTask{FormKind::plan_task, view_.id, at(item.index).key};
        };
        const auto count = static_cast<std::int32_t>(view_.rows.size());
        windowed_list(ui_,
                      {"plan-tasks", ui_.say(Word::plan_tasks), count, 1, target::apart},
                      {height, draw});
    }

    /// The ends of the time line, and what its ticks are.
    void pair_of_ends() {
        paragraph(
            ui_,
            Type::small,
            Tone::soft,
            ui_.say({Word::plan_line_key,
                     {base::text_arg(ui_.say(view_.from)), base::text_arg(ui_.say(view_.to))}}));
        ui_.gap(space::small);
    }

    void sure() {
        titled({Word::plan_sure, {}});
        if (view_.chart) bar_chart(ui_, *view_.chart);
        ui_.gap(space::small);
        for (const Message& told : view_.sure)
            line(told, Type::small, Tone::soft);
        for (const Message& told : view_.notes)
            line(told, Type::small, Tone::soft);
    }

    void settings() {
        ui_.gap(space::base);
        const std::int32_t pressed = button_row(ui_,
                                                {{"plan-terms", ui_.say(Word::plan_terms)},
                                                 {"plan-closed", ui_.say(Word::plan_closed)},
                                                 {"plan-task", ui_.say(Word::plan_change_task)},
                                                 {"plan-step", ui_.say(Word::button_plan_step)},
                                                 {"plan-keep", ui_.say(Word::plan_keep)},
                                                 {"plan-routes", ui_.say(Word::plan_routes)},
                                                 {"plan-money", ui_.say(Word::button_money)}});
        constexpr std::array kinds{FormKind::plan_terms,
                                   FormKind::closed_days,
                                   FormKind::plan_task,
                                   FormKind::plan_step,
                                   FormKind::plan_kept};
        if (pressed == static_cast<std::int32_t>(kinds.size()))
            answer_ = intent::OpenRoutes{view_.id};
        else if (pressed > static_cast<std::int32_t>(kinds.size()))
            answer_ = intent::OpenMoney{view_.id};
        else if (pressed >= 0)
            answer_ = intent::OpenForm{kinds[static_cast<std::uint32_t>(pressed)], view_.id};
    }

    Ui& ui_;
    const PlanPage& page_;
    const PlanView& view_;
    Answer answer_;
};

}  // namespace

Answer plan_panel(Ui& ui, const Rect& area, const PlanPage& page) {
    PlanShown shown{ui, page};
    page_body(ui, area, {"plan-" + page.view.registration}, [&] {
        if (ui.roomy())
            shown.wide();
        else
            shown.narrow();
    });
    return shown.answer();
}

}  // namespace twoclocks::canvas
