// Who of the fleet goes in when: soonest first, each with why.
#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using views::StaggerRow;

void lines(Ui& ui, const std::vector<Message>& all, Type type, Tone tone) {
    for (const Message& line : all) {
        paragraph(ui, type, tone, ui.say(line));
        ui.gap(space::small);
    }
}

void rows(Ui& ui, const views::StaggerView& view, Answer& answer) {
    const auto at = [&](std::int32_t index) -> const StaggerRow& {
        return view.rows[static_cast<std::uint32_t>(index)];
    };
    const auto row_of = [&](const ListItem& item) {
        const StaggerRow& row = at(item.index);
        std::vector<std::string> told{ui.say(row.days)};
        if (row.reason.word != Word::blank) told.push_back(ui.say(row.reason));
        return RowSpec{"in-" + base::print_id(row.id), ui.say(row.name), std::move(told), item};
    };
    const auto height = [&](std::int32_t index, float width) {
        return open_row_height(ui, row_of({index, 0, 0, false}), width);
    };
    const auto draw = [&](const ListItem& item, const Rect& box) {
        if (open_row(ui, row_of(item), box)) answer = intent::OpenPlan{at(item.index).id};
    };
    windowed_list(ui,
                  {"stagger",
                   ui.say(Word::stagger_title),
                   static_cast<std::int32_t>(view.rows.size()),
                   1,
                   target::apart},
                  {height, draw});
}

}  // namespace

Answer stagger_panel(Ui& ui, const Rect& area, const StaggerPage& page) {
    Answer answer;
    const views::StaggerView& view = page.view;
    page_body(ui, area, {"stagger"}, [&] {
        if (view.missing.word != Word::blank)
            paragraph(ui, Type::body, Tone::ink, ui.say(view.missing));
        lines(ui, view.bounds, Type::body, Tone::ink);
        if (view.missing.word == Word::blank) {
            const ButtonSpec bound{"fleet-bound", ui.say(Word::stagger_say_bound), true};
            if (quiet_button(ui, bound))
                answer = intent::OpenForm{FormKind::fleet_bound, base::Id{}};
        }
        if (!view.rows.empty()) {
            ui.gap(space::small);
            rows(ui, view, answer);
            ui.gap(space::base);
        }
        lines(ui, view.notes, Type::small, Tone::soft);
        if (Answer told = hand_over_buttons(ui, ui.say(base::Word::stagger_title)))
            answer = std::move(told);
        caution_line(ui);
    });
    return answer;
}

}  // namespace twoclocks::canvas
