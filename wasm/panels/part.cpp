// One part: where it is, what it has, where it was, and what can be recorded of it.
#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/due_card.hpp"
#include "wasm/widgets/event_card.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/question_card.hpp"
#include "wasm/widgets/text.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;

/// The page while it is drawn: what it shows and what was pressed.
class PartHistory {
  public:
    PartHistory(Ui& ui, const PartPage& page) : ui_(ui), page_(page), view_(page.view) {}

    void narrow() {
        identity();
        events();
        doubts();
        limits();
        actions();
        spells();
        caution_line(ui_);
    }

    void wide() {
        ui_.side_by_side(
            page::half,
            space::block,
            [&] {
                identity();
                events();
                doubts();
                actions();
            },
            [&] {
                limits();
                spells();
            });
        caution_line(ui_);
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    /// A title that does not fit is cut; the page then says it whole.
    void whole_name() {
        const std::string name = ui_.say(view_.name);
        const float room = ui_.width() - target::least - space::tight;
        if (ui_.pen().width(Type::name, name) <= room) return;
        paragraph(ui_, Type::body_strong, Tone::ink, name);
        ui_.gap(space::small);
    }

    void identity() {
        whole_name();
        paragraph(ui_, Type::answer, Tone::ink, ui_.say(view_.where));
        ui_.gap(space::small);
        std::vector<PairSpec> rows;
        const auto row = [&](Word label, const Message& message) {
            const std::string words = ui_.say(message);
            if (!words.empty()) rows.push_back({ui_.say(label), {words, false}});
        };
        row(Word::field_part_number, view_.part_number);
        rows.push_back({ui_.say(Word::label_since_new), said(ui_, view_.hours_new)});
        rows.push_back({ui_.say(Word::label_since_overhaul), said(ui_, view_.hours_overhaul)});
        row(Word::field_condition, view_.condition);
        row(Word::field_owner, view_.owner);
        row(Word::field_lent_until, view_.returns);
        row(Word::field_papers, view_.papers);
        pair_rows(ui_, rows);
        ui_.gap(space::base);
    }

    void events() {
        if (view_.events.empty()) return;
        heading(ui_, 2, ui_.say(Word::heading_events));
        ui_.gap(space::small);
        for (std::size_t place = 0; place < view_.events.size(); ++place) {
            const auto index = static_cast<std::int32_t>(place);
            const EventPress press = event_card(ui_, index, view_.events[place]);
            if (press.why) answer_ = intent::OpenWhy{index};
            if (press.sign)
                answer_ = intent::OpenForm{FormKind::sign_event, view_.events[place].event};
            ui_.gap(space::middle);
        }
        ui_.gap(space::small);
    }

    void doubts() {
        if (view_.history_unknown) {
            caution_note(ui_, {Word::part_history_unknown, {}});
            ui_.gap(space::middle);
        }
        if (view_.unknown) {
            caution_note(ui_, {Word::part_unknown, {}});
            ui_.gap(space::middle);
        }
        for (std::size_t place = 0; place < view_.troubles.size(); ++place)
            trouble(place);
        if (const auto answer = question_cards(ui_, view_.questions)) answer_ = *answer;
    }

    /// What does not add up, and the records that it is about, to correct or to withdraw.
    void trouble(std::size_t place) {
        const base::Problem& problem = view_.troubles[place];
        problem_note(ui_, problem);
        ui_.gap(space::small);
        std::vector<ButtonSpec> buttons;
        const std::vector<base::Id>& facts = view_.trouble_facts[place];
        for (std::size_t fact = 0; fact < facts.size(); ++fact) {
            const auto number = static_cast<std::int64_t>(fact) + 1;
            buttons.push_back({"trouble-" + std::to_string(place) + "-" + std::to_string(fact),
                               ui_.say({Word::button_record_named, {base::whole_arg(number)}}),
                               true,
                               base::say_what(problem, ui_.region())});
        }
        const std::int32_t pressed = button_row(ui_, buttons);
        if (pressed >= 0) answer_ = intent::OpenRecord{facts[static_cast<std::size_t>(pressed)]};
        ui_.gap(space::middle);
    }

    /// What hangs on it, wherever it is.
    void limits() {
        if (view_.due.empty()) return;
        heading(ui_, 2, ui_.say(Word::heading_due));
        ui_.gap(space::small);
        DuePlace place{0, static_cast<std::int32_t>(view_.events.size())};
        if (const auto pressed = due_cards(ui_, view_.due, place)) answer_ = *pressed;
        ui_.gap(space::small);
    }

    void actions() {
        heading(ui_, 2, ui_.say(Word::heading_record));
        ui_.gap(space::small);
        std::vector<ButtonSpec> buttons;
        for (const PartOffer& offer : page_.offered)
            buttons.push_back({offer.id, ui_.say(offer.label)});
        buttons.push_back({"part-records", ui_.say(Word::button_part_records)});
        const std::int32_t pressed = button_row(ui_, buttons);
        if (Answer told = hand_over_buttons(ui_, ui_.say(view_.name))) answer_ = std::move(told);
        ui_.gap(space::wide);
        if (pressed < 0) return;
        const auto place = static_cast<std::size_t>(pressed);
        if (place < page_.offered.size())
            answer_ = intent::OpenForm{page_.offered[place].form, view_.part};
        else
            answer_ = intent::OpenHistory{view_.part};
    }

    void spells() {
        heading(ui_, 2, ui_.say(Word::heading_spells));
        ui_.gap(space::small);
        if (view_.rows.empty()) paragraph(ui_, Type::body, Tone::soft, ui_.say(Word::spells_none));
        for (std::size_t place = 0; place < view_.rows.size(); ++place) {
            card(ui_, [&] { spell(place); });
            ui_.gap(space::middle);
        }
    }

    void spell(std::size_t place) {
        const views::PartHistoryRow& row = view_.rows[place];
        const std::string host = ui_.say(row.host_name);
        const std::string days = ui_.say(row.days);
        heading(ui_, 3, host);
        soft(row.position);
        paragraph(ui_, Type::body, Tone::ink, days);
        paragraph(ui_, Type::body_strong, Tone::ink, ui_.say(row.gained));
        for (const views::Aboard& aboard : row.aboard) {
            const std::string name = ui_.say(aboard.aircraft_name);
            const std::string then = ui_.say(aboard.days);
            soft({Word::part_aboard, {base::text_arg(name), base::text_arg(then)}});
        }
        if (row.keeps_status) soft({Word::part_kept_status, {}});
        ui_.gap(space::small);
        const std::string start = "spell-" + std::to_string(place) + "-";
        const std::string about = host + ", " + days;
        std::vector<ButtonSpec> buttons{
            {start + "fit", ui_.say(Word::button_record_fit), true, about}};
        if (row.facts.size() > 1)
            buttons.push_back(
                {start + "removal", ui_.say(Word::button_record_removal), true, about});
        const std::int32_t pressed = button_row(ui_, buttons);
        if (pressed >= 0)
            answer_ = intent::OpenRecord{row.facts[static_cast<std::size_t>(pressed)]};
    }

    void soft(const Message& message) {
        const std::string words = ui_.say(message);
        if (!words.empty()) paragraph(ui_, Type::body, Tone::soft, words);
    }

    Ui& ui_;
    const PartPage& page_;
    const views::PartHistoryView& view_;
    Answer answer_;
};

}  // namespace

Answer part_panel(Ui& ui, const Rect& area, const PartPage& page) {
    PartHistory part{ui, page};
    page_body(ui, area, {"part-" + base::print_id(page.view.part)}, [&] {
        if (ui.roomy())
            part.wide();
        else
            part.narrow();
    });
    return part.answer();
}

}  // namespace twoclocks::canvas
