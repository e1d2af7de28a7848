// Cores, cash and the reserve: figures at the top, then blocks of rows.
#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/cash_curve.hpp"
#include "wasm/widgets/form_field.hpp"
#include "wasm/widgets/list.hpp"
#include "wasm/widgets/sum_rows.hpp"
#include "wasm/widgets/text.hpp"

#include <array>

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using views::SumsBlock;
using views::SumsOf;
using views::SumsOpens;
using views::SumsRow;
using views::SumsView;

/// What can be recorded at the end of each page.
struct Offered {
    SumsOf of;
    const char* id;
    Word label;
    FormKind form;
};

constexpr std::array offered{
    Offered{SumsOf::cores, "core-add", Word::cores_add, FormKind::core},
    Offered{SumsOf::cores, "core-step", Word::cores_step, FormKind::core_step},
    Offered{SumsOf::cash, "payment-add", Word::cash_add_payment, FormKind::payment},
    Offered{SumsOf::cash, "term-add", Word::cash_add_term, FormKind::pay_term},
    Offered{SumsOf::cash, "balance-add", Word::reserve_add_balance, FormKind::balance},
    Offered{SumsOf::reserve, "balance-add", Word::reserve_add_balance, FormKind::balance},
    Offered{SumsOf::reserve, "reserve-add", Word::reserve_add_terms, FormKind::reserve_terms},
    Offered{SumsOf::reserve, "holder-add", Word::reserve_add_holder, FormKind::holder},
    Offered{SumsOf::sale, "price-add", Word::sale_price_add, FormKind::item_price},
    Offered{SumsOf::closing, "point-add", Word::closing_add, FormKind::closing},
};

[[nodiscard]] FormKind form_of(SumsOpens opens) {
    switch (opens) {
        case SumsOpens::pay_term:
            return FormKind::pay_term;
        case SumsOpens::payment:
            return FormKind::payment;
        case SumsOpens::balance:
            return FormKind::balance;
        case SumsOpens::holder:
            return FormKind::holder;
        case SumsOpens::item_price:
            return FormKind::item_price;
        case SumsOpens::closing:
            return FormKind::closing;
        case SumsOpens::sale:
        case SumsOpens::core_step:
        case SumsOpens::nothing:
            break;
    }
    return FormKind::core_step;
}

/// The page while it is drawn: what it shows and what was pressed.
class SumsShown {
  public:
    SumsShown(Ui& ui, const SumsPage& page) : ui_(ui), page_(page), view_(page.view) {}

    void narrow() {
        if (told_missing()) return;
        top();
        for (std::size_t place = 0; place < view_.blocks.size(); ++place)
            block(place);
        last();
    }

    /// What is longest stands at the right: the first rows that can be many.
    void wide() {
        if (told_missing()) return;
        const std::size_t half = view_.blocks.size() / 2;
        ui_.side_by_side(
            page::half,
            space::block,
            [&] {
                top();
                for (std::size_t place = 0; place < half; ++place)
                    block(place);
                last();
            },
            [&] {
                for (std::size_t place = half; place < view_.blocks.size(); ++place)
                    block(place);
            });
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    void keep(Answer answer) {
        if (answer) answer_ = std::move(answer);
    }

    void line(const Message& told, Type type = Type::body, Tone tone = Tone::ink) {
        if (told.word == Word::blank) return;
        paragraph(ui_, type, tone, ui_.say(told));
        ui_.gap(space::small);
    }

    bool told_missing() {
        if (view_.missing.word == Word::blank) return false;
        line(view_.missing);
        ask();
        buttons();
        caution_line(ui_);
        return true;
    }

    void last() {
        ui_.gap(space::small);
        for (const Message& note : view_.notes)
            line(note, Type::small, Tone::soft);
        buttons();
        keep(hand_over_buttons(ui_, view_.registration));
        caution_line(ui_);
    }

    void top() {
        for (std::size_t place = 0; place < view_.top.size(); ++place) {
            const views::Figure& figure = view_.top[place];
            const auto why = static_cast<std::int32_t>(place);
            const std::string id = "why-" + std::to_string(why);
            const bool is_answer = place + 1 == view_.top.size();
            const bool tapped =
                is_answer ? answer_link(ui_, id, Type::answer, Tone::ink, said(ui_, figure))
                          : line_link(ui_, id, Type::body_strong, Tone::ink, said(ui_, figure));
            if (tapped) answer_ = intent::OpenWhy{why};
            ui_.gap(target::apart);
        }
        ask();
        for (const Message& told : view_.told)
            line(told);
        for (const base::Problem& fault : view_.faults) {
            problem_note(ui_, fault);
            ui_.gap(space::middle);
        }
    }

    /// What is asked of the page; nothing of it is recorded.
    void ask() {
        if (!page_.asked) return;
        if (const std::optional<Intent> told = form_field(ui_, *page_.asked)) answer_ = told;
        ui_.gap(space::middle);
    }

    /// From a sale to what belongs to it.
    void onward() {
        if (view_.of != SumsOf::sale) return;
        ui_.gap(space::small);
        const std::int32_t pressed =
            button_row(ui_,
                       {{"closing", ui_.say(Word::button_closing), true, view_.registration},
                        {"compare", ui_.say(Word::button_compare)}});
        if (pressed == 0) answer_ = intent::OpenSums{view_.id, SumsOf::closing};
        if (pressed == 1) answer_ = intent::OpenSums{view_.id, SumsOf::compare};
    }

    [[nodiscard]] RowSpec row_of(std::size_t place,
                                 const SumsRow& row,
                                 const ListItem& item) const {
        RowSpec out{"row-" + std::to_string(place) + "-" + std::to_string(item.index),
                    ui_.say(row.name),
                    {},
                    item,
                    {}};
        if (row.figure.word != Word::blank) out.figure = ui_.say(row.figure);
        for (const Message& told : row.lines)
            out.details.push_back(ui_.say(told));
        for (const base::Problem& note : row.notes)
            out.details.push_back(base::say_what(note, ui_.region()));
        return out;
    }

    void rows(const SumsBlock& block, std::size_t place) {
        const auto at = [&](std::int32_t index) -> const SumsRow& {
            return block.rows[static_cast<std::uint32_t>(index)];
        };
        const auto height = [&](std::int32_t index, float width) {
            return open_row_height(ui_, row_of(place, at(index), {index, 0, 0, false}), width);
        };
        const auto draw = [&](const ListItem& item, const Rect& box) {
            if (!open_row(ui_, row_of(place, at(item.index), item), box)) return;
            if (block.opens == SumsOpens::sale) {
                const auto id = base::parse_id(at(item.index).key);
                if (id) answer_ = intent::OpenSums{id.value(), SumsOf::sale};
                return;
            }
            answer_ = intent::OpenTask{form_of(block.opens), view_.id, at(item.index).key};
        };
        windowed_list(ui_,
                      {"sums-" + std::to_string(place),
                       ui_.say(block.title),
                       static_cast<std::int32_t>(block.rows.size()),
                       1,
                       target::apart},
                      {height, draw});
        ui_.gap(space::small);
    }

    void block(std::size_t place) {
        const SumsBlock& block = view_.blocks[place];
        ui_.gap(space::wide);
        heading(ui_, 2, ui_.say(block.title));
        ui_.gap(space::small);
        if (block.curve) {
            cash_curve(ui_, *block.curve);
            ui_.gap(space::small);
        }
        for (const Message& told : block.lines)
            line(told, Type::small, Tone::soft);
        sum_rows(ui_, block.pairs);
        if (!block.rows.empty()) rows(block, place);
    }

    void buttons() {
        onward();
        ui_.gap(space::base);
        std::vector<ButtonSpec> specs;
        std::vector<FormKind> forms;
        const bool is_empty = view_.missing.word != Word::blank;
        for (const Offered& one : offered) {
            // Nothing happened to a core before there is one.
            const bool fits = one.of == view_.of && (one.form != FormKind::core_step || !is_empty);
            if (!fits) continue;
            specs.push_back({one.id, ui_.say(one.label)});
            forms.push_back(one.form);
        }
        const std::int32_t pressed = button_row(ui_, specs);
        if (pressed >= 0)
            answer_ = intent::OpenForm{forms[static_cast<std::size_t>(pressed)], view_.id};
    }

    Ui& ui_;
    const SumsPage& page_;
    const SumsView& view_;
    Answer answer_;
};

}  // namespace

Answer sums_panel(Ui& ui, const Rect& area, const SumsPage& page) {
    SumsShown shown{ui, page};
    const std::string key = "sums-" + std::to_string(static_cast<int>(page.view.of)) + "-";
    page_body(ui, area, {key + page.view.registration}, [&] {
        if (ui.roomy())
            shown.wide();
        else
            shown.narrow();
    });
    return shown.answer();
}

}  // namespace twoclocks::canvas
