#include "engine/views/why_use.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/limits/hours_factor.hpp"
#include "engine/timeline/storage.hpp"
#include "engine/views/record_care.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::FlightTime;
using base::Word;
using limits::ByStorage;

/// A source, or the words for none.
[[nodiscard]] base::Arg source_arg(const std::string& source) {
    return source.empty() ? base::word_arg(Word::source_none) : base::text_arg(source);
}

}  // namespace

bool explain_storage_day(Why& why, const limits::ClockDue& clock) {
    switch (clock.by_storage) {
        case ByStorage::none:
            return false;
        case ByStorage::began:
            if (clock.counts_from != limits::CountsFrom::anchor) return false;
            add(why,
                Word::why_from_storage_day,
                {base::day_arg(clock.anchor_on)},
                clock.anchor_fact);
            return true;
        case ByStorage::stored:
            add(why, Word::why_return_stored, {base::day_arg(clock.anchor_on)}, clock.anchor_fact);
            return true;
        case ByStorage::back:
            add(why,
                Word::why_return_back,
                {base::day_arg(base::add_days(clock.due_on, 1))},
                clock.anchor_fact);
            return true;
        case ByStorage::doubt:
            add(why, Word::why_storage_doubt);
            return false;
    }
    return false;
}

void explain_in_force(Why& why, const limits::ItemDue& item) {
    if (item.in_force == facts::InForce::always) return;
    if (!item.part.id.empty()) {
        add(why, Word::why_part_always, {}, item.limit_fact);
        return;
    }
    const bool in_storage = item.in_force == facts::InForce::in_storage;
    add(why, in_storage ? Word::why_in_storage : Word::why_on_return, {}, item.limit_fact);
}

void explain_adjusted(Why& why, const Assessed& aircraft, base::HoursForm form) {
    bool disputed = false;
    for (const timeline::MeterState& meter : aircraft.state.meters) {
        for (const timeline::MeterAdjustment& adjusted : meter.adjusted) {
            disputed = disputed || adjusted.disputed;
            add(why,
                Word::why_adjust,
                {base::hours_exact_arg(adjusted.hours, form),
                 base::day_arg(adjusted.on),
                 base::word_arg(adjust_word(adjusted.reason)),
                 source_arg(adjusted.source)},
                adjusted.fact);
        }
    }
    if (disputed) add(why, Word::why_adjust_disputed);
}

std::vector<FlightTime> adjusted_hours(const Assessed& aircraft) {
    std::vector<FlightTime> out;
    for (const timeline::MeterState& meter : aircraft.state.meters) {
        for (const timeline::MeterAdjustment& adjusted : meter.adjusted)
            out.push_back(adjusted.hours);
    }
    return out;
}

void explain_factors(Why& why,
                     const Assessed& aircraft,
                     const limits::ItemDue& item,
                     const limits::ClockDue& clock,
                     base::HoursForm form) {
    const timeline::ItemState* state = item_state(aircraft, item.item);
    if (state == nullptr || clock.extra.seconds == 0) return;
    const std::vector<limits::FactorTerm> terms =
        limits::factor_terms(limits::bearer_of(aircraft.state), *state, clock.used - clock.extra);
    for (const limits::FactorTerm& term : terms) {
        add(why,
            Word::why_factor,
            {base::hours_exact_arg(term.hours, form),
             base::word_arg(operation_word(term.kind)),
             base::text_arg(thousandths_text(term.thousandths)),
             base::hours_exact_arg(term.more, form),
             source_arg(term.source)},
            term.fact);
    }
    if (aircraft.state.use.disputed) add(why, Word::why_factor_disputed);
}

std::vector<base::Message> use_cautions(const Assessed& aircraft) {
    std::vector<base::Message> out;
    std::vector<facts::Operation> told;
    const timeline::UseState& use = aircraft.state.use;
    for (const timeline::FlownState& flown : use.flown) {
        for (const facts::Operation kind : flown.kinds) {
            const bool known = std::any_of(use.factors.begin(),
                                           use.factors.end(),
                                           [&](const auto& factor) { return factor.kind == kind; });
            const bool said = std::find(told.begin(), told.end(), kind) != told.end();
            if (known || said || kind == facts::Operation::ordinary) continue;
            told.push_back(kind);
            out.push_back({Word::caution_no_factor, {base::word_arg(operation_word(kind))}});
        }
    }
    const timeline::StorageState& storage = aircraft.state.storage;
    const timeline::StorageSpell* stored = timeline::storage_on(storage, aircraft.today);
    if (stored != nullptr && stored->source.empty())
        out.push_back({Word::caution_storage_source, {}});
    const bool any_check =
        std::any_of(aircraft.items.begin(), aircraft.items.end(), [](const auto& item) {
            return item.may_be_stored && !item.is_stored;
        });
    if (any_check && !storage.in_question.empty()) out.push_back({Word::caution_storage_doubt, {}});
    return out;
}

}  // namespace twoclocks::views
