// What the overhaul costs: to pay, what comes back, net; each line, what moves the total, rates,
// routes and both kinds of work.
#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/ranked_bars.hpp"
#include "wasm/widgets/text.hpp"

#include <array>

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using views::MoneyRow;
using views::MoneyView;

// Screen::whys of this page, in the order AppState fills it.
enum MoneyWhys : std::int32_t { money_gross, money_back, money_net };

/// The page while it is drawn: what it shows and what was pressed.
class MoneyShown {
  public:
    MoneyShown(Ui& ui, const MoneyPage& page) : ui_(ui), view_(page.view) {}

    void narrow() {
        if (told_missing()) return;
        top();
        movers();
        lines();
        paths();
        currencies();
        more();
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
                top();
                movers();
                paths();
                currencies();
                more();
                settings();
                take_away();
                caution_line(ui_);
            },
            [&] { lines(); });
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

    void all(const std::vector<Message>& told, Type type = Type::body, Tone tone = Tone::ink) {
        for (const Message& one : told)
            line(one, type, tone);
    }

    /// Nothing is recorded: what to begin with is all there is.
    bool told_missing() {
        if (view_.missing.word == Word::blank) return false;
        line(view_.missing);
        begin();
        onward();
        settings();
        caution_line(ui_);
        return true;
    }

    void begin() {
        ui_.gap(space::small);
        if (view_.past_lines > 0) {
            if (quiet_button(ui_,
                             "take-over",
                             ui_.say({Word::money_take_over, {base::whole_arg(view_.past_lines)}})))
                answer_ = intent::TakeOverLines{view_.id};
            ui_.gap(target::apart);
        }
        if (quiet_button(ui_, "usual-lines", ui_.say(Word::money_usual_lines)))
            answer_ = intent::UsualLines{view_.id};
        ui_.gap(target::apart);
    }

    void top() {
        line(view_.route, Type::small, Tone::soft);
        const auto one =
            [&](const char* id, const views::Figure& figure, std::int32_t why, Type type) {
                if (line_link(ui_, id, type, Tone::ink, said(ui_, figure)))
                    answer_ = intent::OpenWhy{why};
                ui_.gap(target::apart);
            };
        one("why-gross", view_.gross, money_gross, Type::body_strong);
        one("why-back", view_.back, money_back, Type::body);
        if (answer_link(ui_, "why-net", Type::answer, Tone::ink, said(ui_, view_.net)))
            answer_ = intent::OpenWhy{money_net};
        ui_.gap(target::apart);
        line(view_.range);
        line(view_.not_whole, Type::body_strong);
        for (const base::Problem& fault : view_.faults) {
            problem_note(ui_, fault);
            ui_.gap(space::middle);
        }
        all(view_.effects, Type::small, Tone::soft);
        onward();
    }

    void take_away() {
        if (Answer told = hand_over_buttons(ui_, view_.registration)) answer_ = std::move(told);
    }

    /// The pages that follow from it.
    void onward() {
        constexpr std::array pages{
            views::SumsOf::cores, views::SumsOf::cash, views::SumsOf::reserve};
        ui_.gap(space::small);
        const std::int32_t pressed =
            button_row(ui_,
                       {{"cores", ui_.say(Word::button_cores), true, view_.registration},
                        {"cash", ui_.say(Word::button_cash), true, view_.registration},
                        {"reserve", ui_.say(Word::button_reserve), true, view_.registration}});
        if (pressed >= 0)
            answer_ = intent::OpenSums{view_.id, pages[static_cast<std::size_t>(pressed)]};
        ui_.gap(space::small);
    }

    void movers() {
        if (view_.movers.size() < 2) return;
        titled(Word::money_movers);
        ranked_bars(ui_, view_.movers);
    }

    [[nodiscard]] RowSpec row_of(const MoneyRow& row, const ListItem& item) const {
        RowSpec out{"line-" + std::to_string(item.index), ui_.say(row.name), {}, item, {}};
        if (row.counts)
            out.figure = ui_.say(row.sum);
        else
            out.details.push_back(ui_.say(row.sum));
        if (row.range.word != Word::blank) out.details.push_back(ui_.say(row.range));
        for (const Message& told : row.lines)
            out.details.push_back(ui_.say(told));
        // What counts tells its workings in the why of the sum.
        if (!row.counts)
            for (const Message& told : row.workings)
                out.details.push_back(ui_.say(told));
        for (const base::Problem& note : row.notes)
            out.details.push_back(base::say_what(note, ui_.region()));
        return out;
    }

    void lines() {
        if (ui_.roomy())
            heading(ui_, 2, ui_.say(Word::money_lines));
        else
            titled(Word::money_lines);
        ui_.gap(space::small);
        const auto at = [&](std::int32_t index) -> const MoneyRow& {
            return view_.rows[static_cast<std::uint32_t>(index)];
        };
        const auto height = [&](std::int32_t index, float width) {
            return open_row_height(ui_, row_of(at(index), {index, 0, 0, false}), width);
        };
        const auto draw = [&](const ListItem& item, const Rect& box) {
            const MoneyRow& row = at(item.index);
            if (!open_row(ui_, row_of(row, item), box)) return;
            const FormKind kind = row.is_recorded ? FormKind::cost_line : FormKind::route;
            answer_ = intent::OpenTask{kind, view_.id, row.key};
        };
        const auto count = static_cast<std::int32_t>(view_.rows.size());
        windowed_list(ui_,
                      {"money-lines", ui_.say(Word::money_lines), count, 1, target::apart},
                      {height, draw});
        ui_.gap(space::base);
        if (quiet_button(ui_, "line-add", ui_.say(Word::money_add_line)))
            answer_ = intent::OpenForm{FormKind::cost_line, view_.id};
        ui_.gap(space::small);
    }

    /// The same figure of each route and of each kind of work.
    void paths() {
        if (view_.paths.size() < 2) return;
        titled(Word::money_paths);
        std::vector<PairSpec> pairs;
        for (const views::MoneyPath& path : view_.paths)
            pairs.push_back({ui_.say(path.name), {ui_.say(path.net), false}});
        pair_rows(ui_, pairs);
        ui_.gap(space::small);
        for (const views::MoneyPath& path : view_.paths) {
            paragraph(ui_, Type::small_strong, Tone::ink, ui_.say(path.name));
            line(path.hour, Type::small, Tone::soft);
            all(path.lines, Type::small, Tone::soft);
        }
    }

    void currencies() {
        if (view_.currencies.empty()) return;
        titled(Word::money_currencies);
        all(view_.currencies);
        all(view_.rates, Type::small, Tone::soft);
    }

    void more() {
        if (!view_.changes.empty()) {
            titled(Word::money_changes);
            all(view_.changes);
        }
        ui_.gap(space::small);
        all(view_.notes, Type::small, Tone::soft);
    }

    void settings() {
        ui_.gap(space::base);
        constexpr std::array kinds{FormKind::exchange_rate,
                                   FormKind::price_list,
                                   FormKind::cost_terms,
                                   FormKind::cost_line};
        std::vector<ButtonSpec> buttons{{"rate-add", ui_.say(Word::money_add_rate)},
                                        {"list-add", ui_.say(Word::money_add_list)},
                                        {"cost-terms", ui_.say(Word::money_terms)}};
        if (view_.rows.empty()) buttons.push_back({"line-add", ui_.say(Word::money_add_line)});
        const std::int32_t pressed = button_row(ui_, buttons);
        if (pressed >= 0)
            answer_ = intent::OpenForm{kinds[static_cast<std::uint32_t>(pressed)], view_.id};
    }

    Ui& ui_;
    const MoneyView& view_;
    Answer answer_;
};

}  // namespace

Answer money_panel(Ui& ui, const Rect& area, const MoneyPage& page) {
    MoneyShown shown{ui, page};
    page_body(ui, area, {"money-" + page.view.registration}, [&] {
        if (ui.roomy())
            shown.wide();
        else
            shown.narrow();
    });
    return shown.answer();
}

}  // namespace twoclocks::canvas
