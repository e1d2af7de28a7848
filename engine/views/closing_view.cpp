// The closing list of a sale.
#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/budget/cores.hpp"
#include "engine/views/record_sale.hpp"
#include "engine/views/sale_view.hpp"

namespace twoclocks::views {
namespace {

using base::Word;
using facts::ClosingTopic;
using timeline::ClosingState;

/// What every sale has to settle.
constexpr std::array asked_topics{ClosingTopic::lien,
                                  ClosingTopic::tax,
                                  ClosingTopic::damage,
                                  ClosingTopic::warranty,
                                  ClosingTopic::records,
                                  ClosingTopic::airworthiness_review,
                                  ClosingTopic::registration,
                                  ClosingTopic::insurance};

[[nodiscard]] bool is_over(const ClosingState& point, base::Date today) {
    return point.said.until && *point.said.until < today;
}

[[nodiscard]] SumsRow row_of(const ClosingState& point, base::Date today) {
    const facts::ClosingPoint& said = point.said;
    SumsRow row;
    row.key = said.point;
    row.name = {Word::record_of, {closing_label(said)}};
    if (said.cost) row.figure = {Word::record_of, {base::money_arg(*said.cost)}};
    if (!said.text.empty())
        row.lines.push_back({Word::record_of, {base::word_arg(closing_topic_word(said.topic))}});
    if (said.until)
        row.lines.push_back({is_over(point, today) ? Word::closing_over : Word::closing_until,
                             {base::day_arg(*said.until)}});
    if (said.cost || said.payer != facts::ClosingPayer::open)
        row.lines.push_back({Word::closing_pays, {base::word_arg(closing_payer_word(said.payer))}});
    if (!said.paper.empty())
        row.lines.push_back({Word::closing_paper, {base::text_arg(said.paper)}});
    return row;
}

/// What is open, and what each side pays of it, in each currency.
void add_sums(const std::vector<ClosingState>& points, SumsView& view) {
    struct Sum {
        facts::ClosingPayer payer;
        base::Money money;
    };

    std::vector<Sum> sums;
    for (const ClosingState& point : points) {
        if (point.said.settled || !point.said.cost) continue;
        const auto found = std::find_if(sums.begin(), sums.end(), [&](const Sum& one) {
            return one.payer == point.said.payer && one.money.currency == point.said.cost->currency;
        });
        if (found == sums.end())
            sums.push_back({point.said.payer, *point.said.cost});
        else
            found->money.minor_units += point.said.cost->minor_units;
    }
    for (const Sum& sum : sums)
        view.told.push_back(
            {Word::closing_sum,
             {base::word_arg(closing_payer_word(sum.payer)), base::money_arg(sum.money)}});
}

/// What the record itself does not say.
void add_gaps(const Assessed& aircraft, SumsView& view) {
    SumsBlock block;
    block.title = {Word::closing_gaps, {}};
    const auto count = [&](Word word, std::int64_t number) {
        if (number > 0) block.lines.push_back({word, {base::whole_arg(number)}});
    };
    count(Word::closing_questions, static_cast<std::int64_t>(open_questions(aircraft).size()));
    count(Word::closing_no_source,
          std::count_if(aircraft.items.begin(), aircraft.items.end(), [](const auto& item) {
              return !item.clocks.empty() && item.source.empty();
          }));
    count(Word::closing_unknown,
          std::count_if(aircraft.items.begin(), aircraft.items.end(), [](const auto& item) {
              return !item.complied && !item.all_known();
          }));
    const auto& cores = aircraft.state.money.cores;
    count(Word::closing_cores,
          std::count_if(cores.begin(), cores.end(), [](const timeline::CoreState& core) {
              return budget::is_open(budget::standing_of(core));
          }));
    for (const ClosingTopic topic : asked_topics) {
        const auto& points = aircraft.state.money.closing;
        const bool is_told = std::any_of(points.begin(), points.end(), [&](const auto& point) {
            return point.said.topic == topic;
        });
        if (!is_told)
            block.lines.push_back(
                {Word::closing_untold, {base::word_arg(closing_topic_word(topic))}});
    }
    if (!block.lines.empty()) view.blocks.push_back(std::move(block));
}

}  // namespace

SumsView make_closing_view(const Assessed& aircraft) {
    SumsView view;
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    view.of = SumsOf::closing;
    std::vector<ClosingState> points = aircraft.state.money.closing;
    std::stable_sort(points.begin(), points.end(), [](const auto& one, const auto& other) {
        if (one.said.until.has_value() != other.said.until.has_value())
            return one.said.until.has_value();
        return one.said.until && *one.said.until < *other.said.until;
    });
    const auto open = std::count_if(
        points.begin(), points.end(), [](const auto& point) { return !point.said.settled; });
    view.told.push_back({Word::closing_open, {base::whole_arg(open)}});
    add_sums(points, view);
    for (const bool settled : {false, true}) {
        SumsBlock block;
        block.title = {settled ? Word::closing_settled : Word::closing_to_settle, {}};
        block.opens = SumsOpens::closing;
        for (const ClosingState& point : points)
            if (point.said.settled == settled) block.rows.push_back(row_of(point, aircraft.today));
        if (!block.rows.empty()) view.blocks.push_back(std::move(block));
    }
    add_gaps(aircraft, view);
    view.notes.push_back({Word::closing_note, {}});
    view.notes.push_back({Word::sale_note_papers, {}});
    return view;
}

}  // namespace twoclocks::views
