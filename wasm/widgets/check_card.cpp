#include "wasm/widgets/check_card.hpp"

#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// The rows of one card while they are drawn.
class Rows {
  public:
    Rows(Ui& ui, std::int32_t index, std::string item)
        : ui_(ui), start_("check-" + std::to_string(index) + "-"), item_(std::move(item)) {}

    /// What is left of one clock: a bar and its figure.
    void bar(Word label,
             const views::Figure& figure,
             const views::ClockView& clock,
             views::Edge edge) {
        Pen& pen = ui_.pen();
        const std::string words = ui_.say(label);
        const Said left = said(ui_, figure);
        const Rect box = ui_.take(target::least);
        const std::string id = start_ + std::to_string(count_);
        ui_.press_mark(id, box, shape::tight_radius);
        figure_label(pen, Type::small, {box.left, box.top}, words, left.questioned);
        const float longest = std::max(figure_room, pen.width(Type::body_strong, left.text));
        clock_bar(pen,
                  {box.left, box.top + pen.line(Type::small), box.right, box.bottom},
                  clock,
                  {edge, left.text, longest});
        press(id, words, left, box);
    }

    /// A figure without a bar.
    void line(Word label, const views::Figure& figure) {
        Pen& pen = ui_.pen();
        const std::string words = ui_.say(label);
        const Said shown = said(ui_, figure);
        const Rect box = ui_.take(target::least);
        const std::string id = start_ + std::to_string(count_);
        ui_.press_mark(id, box, shape::tight_radius);
        figure_label(pen, Type::small, {box.left, box.top}, words, shown.questioned);
        const Point below{box.left, box.top + pen.line(Type::small)};
        pen.text(Type::body_strong, Tone::ink, below, shown.text);
        press(id, words, shown, box);
    }

    [[nodiscard]] std::int32_t tapped() const { return tapped_; }

  private:
    static constexpr float figure_room = 104;

    void press(const std::string& id,
               const std::string& label,
               const Said& shown,
               const Rect& box) {
        const std::string figure = ui_.say(
            {Word::spoken_figure, {base::text_arg(label), base::text_arg(in_words(ui_, shown))}});
        const std::string spoken =
            ui_.say({Word::spoken_pair, {base::text_arg(item_), base::text_arg(figure)}});
        if (ui_.active(Role::link, id, spoken, box)) tapped_ = count_;
        ++count_;
        ui_.gap(target::apart);
    }

    Ui& ui_;
    std::string start_;
    std::string item_;
    std::int32_t count_{0};
    std::int32_t tapped_{-1};
};

}  // namespace

DuePress check_card(Ui& ui, std::int32_t index, const views::CheckRow& row) {
    DuePress press;
    const views::DueRow& due = row.due;
    card(ui, [&] {
        name_and_state(ui, {Type::answer, 3, due.name, due.state, ui.say(due.state_word)});
        paragraph(ui, Type::small, Tone::soft, ui.say(due.source));
        directive_lines(ui, due);
        ui.gap(space::middle);
        Rows rows{ui, index, due.name};
        if (due.hours_left && row.hours)
            rows.bar(Word::label_hours_left, *due.hours_left, *row.hours, views::Edge::hours);
        if (due.calendar_left && row.calendar)
            rows.bar(Word::label_calendar_left,
                     *due.calendar_left,
                     *row.calendar,
                     views::Edge::calendar);
        if (due.count_left) rows.line(Word::label_count_left, *due.count_left);
        if (due.wear) rows.line(Word::label_wear, *due.wear);
        rows.line(Word::label_likely, due.likely);
        press.figure = rows.tapped();
        press.form = item_buttons(ui, index, due, true);
    });
    return press;
}

}  // namespace twoclocks::canvas
