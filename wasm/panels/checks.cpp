#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/check_card.hpp"
#include "wasm/widgets/choice_field.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// The page while it is drawn: what it shows and what was asked for.
class Checks {
  public:
    Checks(Ui& ui, const ChecksPage& page) : ui_(ui), page_(page) {}

    void draw() {
        for (const FieldView& field : page_.fields) {
            if (field.kind != FieldKind::search && !page_.asks_more) continue;
            ask(field);
            ui_.gap(space::middle);
        }
        const Word more = page_.asks_more ? Word::checks_ask_less : Word::checks_ask_more;
        if (button_row(ui_, {{"checks-more", ui_.say(more)}}) == 0)
            answer_ = intent::ToggleChoice{page_.toggle};
        ui_.gap(space::wide);
        heading(ui_, 2, ui_.say(page_.view.summary));
        ui_.gap(space::small);
        for (const views::ChecksGroup& group : page_.view.groups)
            show(group);
        if (button_row(ui_, {{"new-item", ui_.say(Word::button_new_item)}}) == 0)
            answer_ = intent::OpenForm{FormKind::new_item, page_.view.id};
        if (Answer told = hand_over_buttons(ui_, page_.view.registration))
            answer_ = std::move(told);
        caution_line(ui_);
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    void ask(const FieldView& field) {
        if (field.kind != FieldKind::search) {
            if (const std::optional<Intent> told = form_field(ui_, field)) answer_ = told;
            return;
        }
        const SearchPress press = search_box(ui_, field);
        if (press.edit) answer_ = intent::EditField{field.id};
        if (press.clear) answer_ = intent::FillField{field.id, {}};
    }

    void show(const views::ChecksGroup& group) {
        const std::string title = ui_.say(group.title);
        if (!title.empty()) {
            ui_.gap(space::small);
            heading(ui_, 2, title);
            ui_.gap(space::small);
        }
        for (const views::CheckRow& row : group.rows) {
            const DuePress press = check_card(ui_, index_, row);
            if (press.figure >= 0) answer_ = intent::OpenWhy{why_ + press.figure};
            if (press.form) answer_ = intent::OpenForm{*press.form, row.due.item};
            why_ += figures_in(row.due);
            ++index_;
            ui_.gap(space::middle);
        }
    }

    Ui& ui_;
    const ChecksPage& page_;
    Answer answer_;
    std::int32_t index_{0};
    std::int32_t why_{0};
};

}  // namespace

Answer checks_panel(Ui& ui, const Rect& area, const ChecksPage& page) {
    Checks checks{ui, page};
    page_body(ui, area, {"checks-" + page.view.registration}, [&] { checks.draw(); });
    return checks.answer();
}

}  // namespace twoclocks::canvas
