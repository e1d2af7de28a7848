#include "engine/views/sale_view.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using budget::MetAt;

/// What counts landings or starts beside the clocks that a rate of hours moves.
[[nodiscard]] bool counts_events(const limits::ItemDue& item) {
    const auto is_event = [](const limits::ClockDue& clock) {
        return clock.clock == facts::Clock::landings || clock.clock == facts::Clock::starts;
    };
    return item.again.landings || item.again.starts ||
           std::any_of(item.clocks.begin(), item.clocks.end(), is_event) ||
           std::any_of(item.caps.begin(), item.caps.end(), is_event);
}

/// Words of one sale while they are put together.
class SaleWords {
  public:
    explicit SaleWords(const Sale& sale) : sale_(sale) {}

    [[nodiscard]] base::Arg money(std::optional<std::int64_t> minor_units) const {
        return minor_units ? base::money_arg({*minor_units, sale_.setting.home})
                           : base::word_arg(Word::not_known);
    }

    [[nodiscard]] base::Arg cost(std::optional<std::int64_t> minor_units) const {
        return minor_units ? base::cost_arg({*minor_units, sale_.setting.home})
                           : base::word_arg(Word::not_known);
    }

    [[nodiscard]] base::Arg day(std::int32_t days) const {
        return base::day_arg(base::add_days(sale_.asked.today, days));
    }

    [[nodiscard]] static Word stops(const MetAt& met) {
        return met.clock == facts::Clock::calendar ? Word::sale_by_calendar : Word::sale_by_hours;
    }

    [[nodiscard]] Figure usable() const {
        const budget::SaleWorked& worked = sale_.worked;
        Figure out;
        out.text = {stops(*worked.met),
                    {base::hours_left_arg(worked.usable), day(worked.met->days)}};
        out.why = {{Word::why_sale_usable, {}}, out.text, {}};
        add(out.why, Word::why_sale_rate, {base::hours_used_arg(sale_.asked.year)});
        for (const limits::ClockDue& clock : sale_.asked.overhaul.clocks) {
            if (clock.clock == facts::Clock::hours && clock.known)
                add(out.why, Word::why_sale_hours, {base::hours_left_arg(clock.left)});
            if (clock.clock == facts::Clock::calendar && clock.known)
                add(out.why, Word::why_sale_calendar, {base::day_arg(clock.due_on)});
        }
        add_sum(out.why, stops(*worked.met), out.text.args);
        return out;
    }

    [[nodiscard]] Figure life() const {
        const budget::SaleWorked& worked = sale_.worked;
        const bool by_hours = worked.by_hours && *worked.by_hours > worked.by_lesser.value_or(0);
        Figure out;
        out.text = {Word::sale_life, {money(by_hours ? worked.by_hours : worked.by_lesser)}};
        out.why = {{Word::why_sale_life, {}}, out.text, {}};
        add(out.why, Word::why_sale_overhaul, {money(sale_.asked.overhaul_now)});
        add(out.why, Word::why_sale_lesser, {money(worked.by_lesser)});
        if (worked.by_hours)
            add(out.why,
                Word::why_sale_by_hours,
                {money(sale_.asked.calendar_work), money(worked.by_hours)});
        else
            add(out.why, Word::why_sale_no_calendar_work, {});
        add_sum(out.why,
                by_hours ? Word::why_sale_life_by_hours : Word::why_sale_life_by_lesser,
                out.text.args);
        return out;
    }

    [[nodiscard]] Figure hour() const {
        Figure out;
        out.text = {Word::sale_hour, {cost(sale_.worked.usable_hour)}};
        out.why = {{Word::why_sale_hour, {}}, out.text, {}};
        add(out.why, Word::why_sale_now_sum, {money(sale_.worked.now)});
        add(out.why, Word::why_sale_hour_over, {base::hours_left_arg(sale_.worked.usable)});
        return out;
    }

    [[nodiscard]] Figure reach() const {
        const budget::SaleWorked& worked = sale_.worked;
        Figure out;
        out.text = {Word::sale_reach, {cost(worked.now)}};
        out.why = {{Word::why_sale_reach, {}}, out.text, {}};
        for (const budget::SaleItem& one : worked.items)
            if (one.sum)
                add(out.why,
                    Word::why_sale_item,
                    {name_of(one),
                     base::whole_arg(static_cast<std::int64_t>(one.days.size())),
                     money(one.sum)});
        add(out.why,
            sale_.is_estimated ? Word::why_sale_overhaul_estimate : Word::why_sale_overhaul,
            {money(sale_.asked.overhaul_now)});
        add_sum(out.why, Word::why_sale_now_sum, {money(worked.now)});
        add(out.why, Word::why_sale_risen, {money(worked.risen)});
        add(out.why, Word::why_sale_present, {money(worked.present)});
        return out;
    }

    [[nodiscard]] base::Arg name_of(const budget::SaleItem& one) const {
        return base::text_arg(item_label(sale_.asked.items[static_cast<std::size_t>(one.item)]));
    }

    void tell(SumsView& view) const {
        const budget::SaleWorked& worked = sale_.worked;
        if (worked.first && worked.first_item >= 0)
            view.told.push_back(
                {Word::sale_first,
                 {base::text_arg(
                      item_label(sale_.asked.items[static_cast<std::size_t>(worked.first_item)])),
                  day(worked.first->days)}});
        if (worked.risen) view.told.push_back({Word::sale_risen, {cost(worked.risen)}});
        if (worked.present) view.told.push_back({Word::sale_present, {cost(worked.present)}});
        if (!worked.now) view.told.push_back({Word::sale_no_sum, {}});
        if (worked.unpriced > 0)
            view.told.push_back({Word::sale_unpriced, {base::whole_arg(worked.unpriced)}});
    }

    [[nodiscard]] SumsBlock items() const {
        SumsBlock out;
        out.title = {Word::sale_items, {}};
        out.opens = SumsOpens::item_price;
        for (const budget::SaleItem& one : sale_.worked.items) {
            const auto place = static_cast<std::size_t>(one.item);
            SumsRow row;
            row.key = base::print_id(sale_.asked.items[place].item);
            row.name = {Word::record_of, {name_of(one)}};
            const auto& price = sale_.asked.price[place];
            row.figure = one.sum ? Message{Word::record_of, {money(one.sum)}}
                         : price ? Message{Word::sale_each, {money(price)}}
                                 : Message{Word::sale_no_price, {}};
            if (one.is_open)
                row.lines.push_back({Word::sale_open_item, {}});
            else
                row.lines.push_back({Word::sale_times,
                                     {base::whole_arg(static_cast<std::int64_t>(one.days.size())),
                                      day(one.days.front())}});
            if (!one.is_open && counts_events(sale_.asked.items[place]))
                row.lines.push_back({Word::sale_counts_too, {}});
            if (sale_.asked.price[place] && one.days.size() > 1)
                row.lines.push_back({Word::sale_each, {money(sale_.asked.price[place])}});
            out.rows.push_back(std::move(row));
        }
        return out;
    }

    [[nodiscard]] SumsBlock rates() const {
        SumsBlock out;
        out.title = {Word::sale_rates, {}};
        for (const budget::SaleRate& one : sale_.worked.rates) {
            if (!one.met) continue;
            out.pairs.push_back(
                {{Word::sale_rate, {base::hours_whole_arg(one.year)}},
                 {Word::sale_usable, {base::hours_left_arg(one.usable)}},
                 {one.met->clock == facts::Clock::calendar ? Word::sale_rate_calendar
                                                           : Word::sale_rate_hours,
                  {day(one.met->days)}}});
        }
        if (const auto meet = forecast::break_even(sale_.asked.overhaul, sale_.asked.today))
            out.lines.push_back({Word::sale_meet, {base::hours_left_arg(*meet)}});
        return out;
    }

  private:
    const Sale& sale_;
};

[[nodiscard]] SumsView begin_view(const Assessed& aircraft, SumsOf of) {
    SumsView out;
    out.id = aircraft.state.id;
    out.registration = aircraft.state.registration;
    out.of = of;
    return out;
}

/// What a sale needs to be like one that was overhauled today.
[[nodiscard]] std::optional<std::int64_t> need_of(const Sale& sale) {
    const budget::SaleWorked& worked = sale.worked;
    if (!worked.by_lesser || !sale.asked.overhaul_now) return std::nullopt;
    const std::int64_t life = std::max(*worked.by_lesser, worked.by_hours.value_or(0));
    return *sale.asked.overhaul_now - life;
}

[[nodiscard]] SumsRow compared(const Sale& sale, const Sale* best) {
    const SaleWords words{sale};
    SumsRow row;
    row.key = base::print_id(sale.aircraft.state.id);
    row.name = {Word::record_of, {base::text_arg(sale.aircraft.state.registration)}};
    if (sale.missing.word != Word::blank) {
        row.lines.push_back(sale.missing);
        return row;
    }
    const auto need = need_of(sale);
    row.figure = {Word::record_of, {words.cost(need)}};
    row.lines.push_back({Word::compare_overhaul, {words.cost(sale.asked.overhaul_now)}});
    row.lines.push_back(words.life().text);
    row.lines.push_back(words.usable().text);
    row.lines.push_back({Word::sale_reach, {words.cost(sale.worked.now)}});
    row.lines.push_back({Word::sale_hour, {words.cost(sale.worked.usable_hour)}});
    if (sale.worked.unpriced > 0)
        row.lines.push_back({Word::sale_unpriced, {base::whole_arg(sale.worked.unpriced)}});
    if (!need || best == nullptr || best == &sale) return row;
    if (!(best->setting.home == sale.setting.home))
        row.lines.push_back({Word::compare_currency, {}});
    else
        row.lines.push_back({Word::compare_tie,
                             {words.money(*need - *need_of(*best)),
                              base::text_arg(best->aircraft.state.registration)}});
    return row;
}

}  // namespace

SumsView make_sale_view(const Assessed& aircraft, std::optional<base::FlightTime> year) {
    SumsView view = begin_view(aircraft, SumsOf::sale);
    const Sale sale = make_sale(aircraft, year);
    view.missing = sale.missing;
    if (sale.missing.word != Word::blank) return view;
    const SaleWords words{sale};
    view.top = {words.usable(), words.life(), words.hour(), words.reach()};
    view.told.push_back({Word::sale_at_rate, {base::hours_used_arg(sale.asked.year)}});
    words.tell(view);
    if (SumsBlock items = words.items(); !items.rows.empty())
        view.blocks.push_back(std::move(items));
    view.blocks.push_back(words.rates());
    view.notes.push_back({Word::money_estimate, {base::day_arg(aircraft.today)}});
    view.notes.push_back({Word::sale_note_life, {}});
    view.notes.push_back({Word::sale_note_papers, {}});
    return view;
}

SumsView make_compare_view(const std::vector<const Assessed*>& fleet,
                           std::optional<base::FlightTime> year) {
    SumsView view;
    view.of = SumsOf::compare;
    std::vector<Sale> sales;
    for (const Assessed* const one : fleet)
        sales.push_back(make_sale(*one, year));
    std::vector<const Sale*> order;
    for (const Sale& sale : sales)
        order.push_back(&sale);
    std::stable_sort(order.begin(), order.end(), [](const Sale* one, const Sale* other) {
        const auto left = need_of(*one);
        const auto right = need_of(*other);
        if (left.has_value() != right.has_value()) return left.has_value();
        // Of two currencies neither is less.
        if (!(one->setting.home == other->setting.home))
            return one->setting.home < other->setting.home;
        return left && *left < *right;
    });
    const Sale* best = order.empty() || !need_of(*order.front()) ? nullptr : order.front();
    if (sales.empty()) view.missing = {Word::compare_nothing, {}};
    if (year) view.told.push_back({Word::sale_at_rate, {base::hours_used_arg(*year)}});
    if (!year) view.told.push_back({Word::compare_own_rates, {}});
    SumsBlock block;
    block.title = {Word::compare_rows, {}};
    block.opens = SumsOpens::sale;
    for (const Sale* const sale : order)
        block.rows.push_back(compared(*sale, best));
    view.blocks.push_back(std::move(block));
    view.notes.push_back({Word::compare_note, {}});
    view.notes.push_back({Word::sale_note_papers, {}});
    return view;
}

}  // namespace twoclocks::views
