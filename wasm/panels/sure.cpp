#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/chart.hpp"
#include "wasm/widgets/due_card.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/life_box.hpp"
#include "wasm/widgets/text.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using views::SureView;

// Screen::whys of this page, in the order AppState fills it.
enum SureWhys : std::int32_t { sure_answer, sure_range, sure_rate };

/// The page while it is drawn: what it shows and what was pressed.
class SureShown {
  public:
    SureShown(Ui& ui, const SurePage& page) : ui_(ui), page_(page), view_(page.view) {}

    void narrow() {
        sentences();
        box();
        trial();
        limits();
        months();
        plan();
        look_back();
        paths();
        caution_line(ui_);
    }

    void wide() {
        ui_.side_by_side(
            page::half,
            space::block,
            [&] {
                sentences();
                box();
                trial();
                limits();
                caution_line(ui_);
            },
            [&] {
                months();
                plan();
                look_back();
                paths();
            });
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    void titled(Word title) {
        ui_.gap(space::wide);
        heading(ui_, 2, ui_.say(title));
        ui_.gap(space::small);
    }

    void line(const Message& told, Type type = Type::body, Tone tone = Tone::ink) {
        if (told.word == Word::blank) return;
        paragraph(ui_, type, tone, ui_.say(told));
        ui_.gap(space::small);
    }

    void lines(const std::vector<Message>& told) {
        for (const Message& one : told)
            line(one);
    }

    void sentences() {
        if (answer_link(ui_, "why-answer", Type::answer, Tone::ink, said(ui_, view_.answer)))
            answer_ = intent::OpenWhy{sure_answer};
        ui_.gap(target::apart);
        if (line_link(ui_, "why-range", Type::body, Tone::ink, said(ui_, view_.range)))
            answer_ = intent::OpenWhy{sure_range};
        line(view_.chance);
        ui_.gap(space::small);
    }

    void box() {
        if (const auto point = life_box_with_handle(ui_, view_.box, "life-line"))
            answer_ = intent::TryThrough{point->across_permille, point->up_permille};
        ui_.gap(space::middle);
    }

    void trial() {
        const std::int32_t asked =
            figure_rows(ui_, {{"why-rate", ui_.say(Word::label_rate), said(ui_, view_.rate)}});
        if (asked == 0) answer_ = intent::OpenWhy{sure_rate};
        ui_.gap(space::small);
        paragraph(ui_, Type::small, Tone::soft, ui_.say(Word::sure_try_intro));
        ui_.gap(space::small);
        if (const std::optional<Intent> told = form_field(ui_, page_.month)) answer_ = told;
        ui_.gap(space::small);
        const auto step = [&](Word word, base::FlightTime month) {
            return ui_.say({word, {base::hours_used_arg(month)}});
        };
        const std::int32_t pressed =
            button_row(ui_,
                       {{"try-less", step(Word::button_try_less, page_.less)},
                        {"try-more", step(Word::button_try_more, page_.more)}});
        if (pressed == 0) answer_ = intent::TryMonth{page_.less};
        if (pressed == 1) answer_ = intent::TryMonth{page_.more};
        if (view_.tried.word == Word::blank) return;
        ui_.gap(space::middle);
        line(view_.tried, Type::body_strong);
        const std::int32_t next = button_row(ui_,
                                             {{"stop-trying", ui_.say(Word::button_stop_trying)},
                                              {"keep-tried", ui_.say(Word::button_keep_tried)}});
        if (next == 0) answer_ = intent::StopTrying{};
        if (next == 1) answer_ = intent::KeepTried{};
    }

    void limits() {
        titled(Word::sure_limits);
        if (view_.rows.empty()) line({Word::sure_no_limits, {}}, Type::body, Tone::soft);
        for (const views::SureRow& row : view_.rows) {
            card(ui_, [&] {
                paragraph(ui_, Type::body_strong, Tone::ink, row.name);
                paragraph(ui_, Type::answer, tone_of(row.edge), ui_.say(row.likely));
                if (row.range.word != Word::blank)
                    paragraph(ui_, Type::small, Tone::soft, ui_.say(row.range));
                if (row.before.word != Word::blank)
                    paragraph(ui_, Type::small_strong, Tone::ink, ui_.say(row.before));
            });
            ui_.gap(space::small);
        }
    }

    void months() {
        if (!view_.months) return;
        if (!ui_.roomy()) ui_.gap(space::wide);
        bar_chart(ui_, *view_.months);
        paragraph(ui_, Type::small, Tone::soft, ui_.say(Word::chart_months_key));
    }

    void plan() {
        titled(Word::sure_plan);
        lines(view_.plan);
        if (button_row(ui_, {{"usage-plan", ui_.say(Word::button_usage_plan)}}) == 0)
            answer_ = intent::OpenForm{FormKind::usage_plan, view_.id};
    }

    void look_back() {
        titled(Word::sure_back);
        lines(view_.look_back);
    }

    void paths() {
        const views::BothPathsView& both = view_.paths;
        titled(Word::sure_paths);
        line(both.when);
        for (const views::BothPathsView::Path& path : both.paths) {
            card(ui_, [&] {
                paragraph(ui_, Type::body_strong, Tone::ink, ui_.say(path.title));
                paragraph(ui_, Type::small, Tone::soft, ui_.say(path.source));
                paragraph(ui_, Type::body, Tone::ink, ui_.say(path.next_stop));
                if (path.after.word != Word::blank)
                    paragraph(ui_, Type::body, Tone::ink, ui_.say(path.after));
            });
            ui_.gap(space::small);
        }
        line(both.given_up);
        line(both.meet);
        line(both.missing, Type::body, Tone::soft);
        if (both.paths.size() > 1) items(both);
        line(both.others, Type::small, Tone::soft);
    }

    void items(const views::BothPathsView& both) {
        for (const views::PathItem& item : both.items) {
            ui_.gap(space::small);
            paragraph(ui_, Type::body_strong, Tone::ink, item.name);
            pair_rows(ui_,
                      {{ui_.say(both.paths[0].title), {ui_.say(item.calendar_path), false}},
                       {ui_.say(both.paths[1].title), {ui_.say(item.full_path), false}}});
        }
        ui_.gap(space::small);
    }

    Ui& ui_;
    const SurePage& page_;
    const SureView& view_;
    Answer answer_;
};

}  // namespace

Answer sure_panel(Ui& ui, const Rect& area, const SurePage& page) {
    SureShown shown{ui, page};
    page_body(ui, area, {"sure-" + page.view.registration}, [&] {
        if (ui.roomy())
            shown.wide();
        else
            shown.narrow();
    });
    return shown.answer();
}

}  // namespace twoclocks::canvas
