// The routes of an overhaul, side by side where there is room, one below the other where not.
#include "wasm/panels/hand_over.hpp"
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using views::RouteRow;
using views::RoutesView;

/// The page while it is drawn.
class RoutesShown {
  public:
    RoutesShown(Ui& ui, const RoutesPage& page) : ui_(ui), view_(page.view) {}

    void draw() {
        if (view_.missing.word != Word::blank)
            paragraph(ui_, Type::body, Tone::ink, ui_.say(view_.missing));
        if (view_.rows.size() > 1) compare();
        if (ui_.roomy())
            pairs();
        else
            for (const RouteRow& row : view_.rows)
                one(row);
        for (const Message& note : view_.notes) {
            paragraph(ui_, Type::small, Tone::soft, ui_.say(note));
            ui_.gap(space::small);
        }
        ui_.gap(space::small);
        if (button_row(ui_, {{"route-add", ui_.say(Word::route_add)}}) == 0)
            answer_ = intent::OpenForm{FormKind::route, view_.id};
        if (Answer told = hand_over_buttons(ui_, view_.registration)) answer_ = std::move(told);
        caution_line(ui_);
    }

    [[nodiscard]] const Answer& answer() const { return answer_; }

  private:
    /// The same figure of each route, one below the other.
    void compare() {
        compare(Word::route_days_out, &RouteRow::days);
        compare(Word::route_late_chance, &RouteRow::late);
        compare(Word::route_hours_used, &RouteRow::hours);
        compare(Word::route_all_in, &RouteRow::cost);
    }

    void compare(Word label, Message RouteRow::*figure) {
        heading(ui_, 2, ui_.say(label));
        ui_.gap(space::small);
        std::vector<PairSpec> pairs;
        for (const RouteRow& row : view_.rows) {
            const Message& told = row.ruled_out ? row.mark : row.*figure;
            pairs.push_back({ui_.say(row.name), {ui_.say(told), false}});
        }
        pair_rows(ui_, pairs);
        ui_.gap(space::wide);
    }

    /// Two beside each other, the taller one says where the next two begin.
    void pairs() {
        for (std::size_t place = 0; place < view_.rows.size(); place += 2) {
            ui_.side_by_side(
                page::half,
                space::base,
                [&] { one(view_.rows[place]); },
                [&] {
                    if (place + 1 < view_.rows.size()) one(view_.rows[place + 1]);
                });
        }
    }

    void one(const RouteRow& row) {
        card(ui_, [&] {
            heading(ui_, 2, ui_.say(row.name));
            paragraph(ui_, Type::small, Tone::soft, ui_.say(row.who));
            if (row.mark.word != Word::blank)
                paragraph(ui_,
                          Type::body_strong,
                          row.ruled_out ? Tone::soft : Tone::ink,
                          ui_.say(row.mark));
            for (const Message& praise : row.praise)
                paragraph(ui_, Type::body_strong, Tone::ink, ui_.say(praise));
            ui_.gap(space::small);
            if (view_.rows.size() == 1) figures(row);
            ui_.gap(space::small);
            for (const Message& line : row.lines) {
                paragraph(ui_, Type::small, Tone::ink, ui_.say(line));
                ui_.gap(space::tight);
            }
            ui_.gap(space::small);
            const ButtonSpec change{
                "route-" + row.key, ui_.say(Word::route_change), true, ui_.say(row.name)};
            if (quiet_button(ui_, change))
                answer_ = intent::OpenTask{FormKind::route, view_.id, row.key};
        });
        ui_.gap(space::base);
    }

    void figures(const RouteRow& row) {
        std::vector<PairSpec> pairs;
        const auto add = [&](Word label, const Message& figure) {
            if (figure.word != Word::blank)
                pairs.push_back({ui_.say(label), {ui_.say(figure), false}});
        };
        add(Word::route_days_out, row.days);
        add(Word::route_late_chance, row.late);
        add(Word::route_hours_used, row.hours);
        add(Word::route_all_in, row.cost);
        pair_rows(ui_, pairs);
    }

    Ui& ui_;
    const RoutesView& view_;
    Answer answer_;
};

}  // namespace

Answer routes_panel(Ui& ui, const Rect& area, const RoutesPage& page) {
    RoutesShown shown{ui, page};
    page_body(ui, area, {"routes-" + page.view.registration}, [&] { shown.draw(); });
    return shown.answer();
}

}  // namespace twoclocks::canvas
