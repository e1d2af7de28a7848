#include "wasm/widgets/question_card.hpp"

#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// One side of a disagreement. What it says, for the button beside it.
std::string side_words(Ui& ui, const views::QuestionView::Side& side) {
    ui.gap(space::middle);
    paragraph(ui, Type::small_strong, Tone::ink, ui.say(side.origin));
    paragraph(ui, Type::answer, Tone::ink, ui.say(side.value));
    std::string about = ui.say(side.value);
    for (const base::Message& line : side.differs) {
        paragraph(ui, Type::body, Tone::ink, ui.say(line));
        about += ", " + ui.say(line);
    }
    paragraph(ui, Type::small, Tone::soft, ui.say(side.told_by));
    return about;
}

/// What the sign on a figure says.
void sign_line(Ui& ui) {
    Pen& pen = ui.pen();
    question_sign(pen, {ui.left(), ui.y() + pen.line(Type::body) / 2});
    const float from = ui.left() + sign_room(pen, true);
    const float bottom = ui.inside({from, ui.y(), ui.column().right(), 0}, [&] {
        paragraph(ui, Type::body, Tone::soft, ui.say(Word::question_marks));
    });
    ui.use({ui.left(), ui.width(), bottom});
    ui.gap(space::middle);
}

}  // namespace

std::int32_t question_card(Ui& ui, std::int32_t index, const views::QuestionView& question) {
    std::int32_t chosen = -1;
    card(ui, [&] {
        paragraph(ui, Type::body_strong, Tone::ink, ui.say(question.what));
        paragraph(ui, Type::body, Tone::ink, ui.say(question.in_use));
        for (std::uint32_t i = 0; i < question.sides.size(); ++i) {
            const std::string about = side_words(ui, question.sides[i]);
            const std::string id = "use-" + std::to_string(index) + "-" + std::to_string(i);
            ui.gap(space::small);
            if (quiet_button(ui, {id, ui.say(Word::button_use_this), true, about}))
                chosen = static_cast<std::int32_t>(i);
        }
    });
    return chosen;
}

std::optional<Intent> question_cards(Ui& ui, const std::vector<views::QuestionView>& questions) {
    std::optional<Intent> answer;
    if (questions.empty()) return answer;
    heading(ui, 2, ui.say(Word::heading_questions));
    ui.gap(space::small);
    sign_line(ui);
    for (std::uint32_t i = 0; i < questions.size(); ++i) {
        const auto question = static_cast<std::int32_t>(i);
        const std::int32_t side = question_card(ui, question, questions[i]);
        if (side >= 0) answer = intent::AnswerQuestion{question, side};
        ui.gap(space::middle);
    }
    ui.gap(space::small);
    return answer;
}

void question_ahead(Ui& ui, const views::QuestionView& question) {
    paragraph(ui, Type::body, Tone::ink, ui.say(question.what));
    for (const views::QuestionView::Side& side : question.sides)
        static_cast<void>(side_words(ui, side));
}

}  // namespace twoclocks::canvas
