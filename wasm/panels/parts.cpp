// Parts of one aircraft, or of all the record, to look through.
#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/choice_field.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/part_row.hpp"
#include "wasm/widgets/text.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// The page while it is drawn: what it shows and what was asked for.
class Parts {
  public:
    Parts(Ui& ui, const PartsPage& page) : ui_(ui), page_(page) {}

    void draw() {
        for (const FieldView& field : page_.fields) {
            ask(field);
            ui_.gap(space::middle);
        }
        ui_.gap(space::small);
        heading(ui_, 2, ui_.say(page_.view.summary));
        if (page_.view.groups.empty()) {
            ui_.gap(space::small);
            paragraph(ui_, Type::body, Tone::soft, ui_.say(Word::parts_none));
        }
        for (std::size_t group = 0; group < page_.view.groups.size(); ++group)
            show(page_.view.groups[group], "parts-" + std::to_string(group));
        ui_.gap(space::wide);
        if (button_row(ui_, {{"new-part", ui_.say(Word::button_new_part)}}) == 0)
            answer_ = intent::OpenForm{FormKind::new_part, page_.view.aircraft};
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

    void show(const views::PartGroup& group, const std::string& key) {
        const std::string title = ui_.say(group.title);
        ui_.gap(space::base);
        heading(ui_, 3, title);
        ui_.gap(space::small);
        const auto at = [&](std::int32_t index) -> const views::PartRow& {
            return group.rows[static_cast<std::uint32_t>(index)];
        };
        const auto height = [&](std::int32_t index, float width) {
            return part_row_height(ui_, at(index), width);
        };
        const auto draw = [&](const ListItem& item, const Rect& box) {
            if (part_row(ui_, at(item.index), item, box))
                answer_ = intent::OpenPart{at(item.index).part};
        };
        const std::string name = ui_.say({Word::parts_list, {base::text_arg(title)}});
        const auto count = static_cast<std::int32_t>(group.rows.size());
        windowed_list(ui_, {key, name, count, 1, target::apart}, {height, draw});
    }

    Ui& ui_;
    const PartsPage& page_;
    Answer answer_;
};

}  // namespace

Answer parts_panel(Ui& ui, const Rect& area, const PartsPage& page) {
    Parts parts{ui, page};
    page_body(ui, area, {"parts-" + page.view.registration}, [&] { parts.draw(); });
    return parts.answer();
}

}  // namespace twoclocks::canvas
