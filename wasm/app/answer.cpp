// A question answered, of an aircraft or of a part: the fact that settles it.
#include "wasm/app/inside.hpp"

#include "engine/base/message_args.hpp"
#include "engine/timeline/question.hpp"

namespace twoclocks::canvas {
namespace {

/// Of an aircraft or a part.
void answer(AppState::Inside& in,
            const std::vector<timeline::Question>& questions,
            const intent::AnswerQuestion& asked,
            base::Id subject) {
    const auto place = static_cast<std::size_t>(asked.question);
    const auto side = static_cast<std::size_t>(asked.side);
    if (place >= questions.size() || side >= questions[place].sides.size()) return;
    const facts::Journal& journal = in.ledger.visible();
    facts::Body body = timeline::answer_to(journal, questions[place], side, subject, in.today);
    const facts::Fact fact = in.signer.sign(in.signer.new_id(), std::move(body), journal);
    const base::Message done{base::Word::saved_records, {base::whole_arg(1)}};
    in.save_facts({fact}, {{}, Pending::After::stay, subject, done});
}

}  // namespace

void answer_question(AppState::Inside& in, const intent::AnswerQuestion& asked) {
    if (in.dirty) in.make_screen();
    if (asked.question < 0 || asked.side < 0 || !in.pending.empty()) return;
    if (const auto* shown = std::get_if<views::AircraftView>(&in.screen.page)) {
        const views::Assessed* aircraft = in.assessed(shown->id);
        if (aircraft != nullptr) answer(in, views::open_questions(*aircraft), asked, shown->id);
    }
    if (const auto* shown = std::get_if<PartPage>(&in.screen.page)) {
        const timeline::PartState* part = in.part(shown->view.part);
        if (part != nullptr) answer(in, part->questions, asked, part->id);
    }
}

}  // namespace twoclocks::canvas
