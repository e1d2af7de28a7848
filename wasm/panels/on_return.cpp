#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/due_card.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// The page while it is drawn: what it shows and what was pressed.
class OnReturn {
  public:
    OnReturn(Ui& ui, const ReturnPage& page) : ui_(ui), page_(page) {}

    void draw() {
        lines(page_.view.storage, Type::body_strong);
        paragraph(ui_, Type::body, Tone::soft, ui_.say(Word::return_intro));
        ui_.gap(space::middle);
        for (const FieldView& field : page_.fields) {
            if (const std::optional<Intent> told = form_field(ui_, field)) answer_ = told;
            ui_.gap(space::middle);
        }
        heading(ui_, 2, ui_.say(page_.view.summary));
        ui_.gap(space::small);
        if (page_.view.is_empty) paragraph(ui_, Type::body, Tone::ink, ui_.say(Word::return_none));
        lines(page_.view.events, Type::body);
        for (const views::ReturnGroup& group : page_.view.groups)
            show(group);
        ui_.gap(space::middle);
        if (button_row(ui_, {{"return", ui_.say(Word::button_return)}}) == 0)
            answer_ = intent::OpenForm{FormKind::return_to_service, page_.view.id};
        caution_line(ui_);
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    void lines(const std::vector<base::Message>& told, Type type) {
        for (const base::Message& line : told) {
            paragraph(ui_, type, Tone::ink, ui_.say(line));
            ui_.gap(space::small);
        }
    }

    void show(const views::ReturnGroup& group) {
        ui_.gap(space::small);
        heading(ui_, 2, ui_.say(group.title));
        ui_.gap(space::small);
        if (const auto pressed = due_cards(ui_, group.rows, place_)) answer_ = *pressed;
    }

    Ui& ui_;
    const ReturnPage& page_;
    Answer answer_;
    DuePlace place_;
};

}  // namespace

Answer return_panel(Ui& ui, const Rect& area, const ReturnPage& page) {
    OnReturn shown{ui, page};
    page_body(ui, area, {"return-" + page.view.registration}, [&] { shown.draw(); });
    return shown.answer();
}

}  // namespace twoclocks::canvas
