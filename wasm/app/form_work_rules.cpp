// Work done by a rule on record: which one, and what it renews and keeps.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/work_words.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/facts/interval.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;
using facts::Clock;
using facts::Renewal;
using timeline::AircraftState;
using timeline::ItemState;
using timeline::WorkRuleState;

struct ClockWord {
    Clock clock;
    Word word;
};

constexpr std::array clock_words{ClockWord{Clock::hours, Word::clock_hours},
                                 ClockWord{Clock::calendar, Word::clock_calendar},
                                 ClockWord{Clock::landings, Word::clock_landings},
                                 ClockWord{Clock::starts, Word::clock_starts}};

/// The clocks of an item that a renewal renews, and those that it keeps.
struct Split {
    std::vector<Word> renewed;
    std::vector<Word> kept;
};

[[nodiscard]] bool counts(const ItemState& item, Clock clock) {
    if (!item.limit) return false;
    return !facts::is_empty(facts::part(facts::repeat_of(*item.limit), clock)) ||
           !facts::is_empty(facts::part(item.limit->first, clock)) ||
           !facts::is_empty(facts::part(item.limit->cap, clock));
}

[[nodiscard]] bool renews(const std::vector<Renewal>& renewals, base::Id item, Clock clock) {
    return std::any_of(renewals.begin(), renewals.end(), [&](const Renewal& renewal) {
        const auto& clocks = renewal.clocks;
        return renewal.item == item &&
               (clocks.empty() || std::find(clocks.begin(), clocks.end(), clock) != clocks.end());
    });
}

[[nodiscard]] bool names(const std::vector<Renewal>& renewals, base::Id item) {
    return std::any_of(renewals.begin(), renewals.end(), [&](const Renewal& renewal) {
        return renewal.item == item;
    });
}

[[nodiscard]] Split split_of(const ItemState& item, const std::vector<Renewal>& renewals) {
    Split out;
    for (const ClockWord& each : clock_words) {
        if (!counts(item, each.clock)) continue;
        (renews(renewals, item.id, each.clock) ? out.renewed : out.kept).push_back(each.word);
    }
    return out;
}

/// "Renews Overhaul: hours and calendar", a line for each pair and what is left of it.
void add_clocks(Word word,
                const std::string& name,
                const std::vector<Word>& clocks,
                std::vector<Message>& out) {
    for (const Word clock : clocks)
        out.push_back({word, {base::text_arg(name), base::word_arg(clock)}});
}

[[nodiscard]] bool is_offered(const Form& form, const WorkRuleState& rule) {
    return form.subject == form.aircraft || names(rule.renews, form.subject);
}

[[nodiscard]] Message named(const std::string& name) {
    return {Word::record_of, {base::text_arg(name)}};
}

/// What was done, where nothing was typed or another work's name stands.
void name_work(Form& form, const WorkRuleState* rule, const AircraftState& aircraft) {
    FieldView* what = find_field(form, "what");
    if (what == nullptr) return;
    const auto is_name = [&](const auto& each) { return each.name == what->text; };
    const bool ours =
        what->text.empty() ||
        std::any_of(aircraft.work_rules.begin(), aircraft.work_rules.end(), is_name) ||
        std::any_of(aircraft.items.begin(), aircraft.items.end(), is_name);
    if (!ours) return;
    if (rule != nullptr) {
        what->text = rule->name;
        return;
    }
    what->text.clear();
    for (const ItemState& item : aircraft.items) {
        if (item.id == form.subject) what->text = item.name;
    }
}

}  // namespace

std::vector<Message> renewal_lines(const std::vector<Renewal>& renews,
                                   const AircraftState& aircraft) {
    std::vector<Message> out;
    std::string whole;
    std::int64_t others = 0;
    for (const ItemState& item : aircraft.items) {
        const Split split = split_of(item, renews);
        if (!names(renews, item.id)) {
            ++others;
        } else if (split.kept.empty()) {
            whole += (whole.empty() ? "" : ", ") + item.name;
        } else {
            add_clocks(Word::work_renews_some, item.name, split.renewed, out);
            add_clocks(Word::work_keeps, item.name, split.kept, out);
        }
    }
    if (!whole.empty()) out.insert(out.begin(), {Word::work_renews_all, {base::text_arg(whole)}});
    if (others > 0) out.push_back({Word::work_keeps_others, {base::whole_arg(others)}});
    return out;
}

std::optional<FieldView> rule_field(const Form& form, const FormContext& context) {
    if (context.aircraft == nullptr) return std::nullopt;
    FieldView out = make_choice("rule", Word::field_work_rule, {Word::work_rule_none}, 0);
    for (const WorkRuleState& rule : context.aircraft->work_rules) {
        if (is_offered(form, rule)) out.options.push_back(named(rule.name));
    }
    if (out.options.size() < 2) return std::nullopt;
    return out;
}

FieldView item_field(const AircraftState& aircraft) {
    FieldView out = make_choice("item", Word::field_item, {}, 0);
    for (const ItemState& item : aircraft.items)
        out.options.push_back(named(item.name));
    return out;
}

const WorkRuleState* chosen_rule(Form& form, const FormContext& context) {
    const FieldView* field = find_field(form, "rule");
    if (field == nullptr || field->chosen < 1 || context.aircraft == nullptr) return nullptr;
    const auto place = static_cast<std::size_t>(field->chosen);
    if (place >= field->options.size()) return nullptr;
    for (const WorkRuleState& rule : context.aircraft->work_rules) {
        if (is_offered(form, rule) && named(rule.name) == field->options[place]) return &rule;
    }
    return nullptr;
}

void reshape_work_done(Form& form, const FormContext& context) {
    FieldView* choice = find_field(form, "rule");
    if (choice == nullptr) return;
    const AircraftState& aircraft = *context.aircraft;
    const WorkRuleState* rule = chosen_rule(form, context);
    choice->told.clear();
    if (rule != nullptr) choice->told = renewal_lines(rule->renews, aircraft);
    if (rule != nullptr && rule->disputed) choice->told.push_back({Word::say_question_card, {}});
    name_work(form, rule, aircraft);
    form.intro = rule == nullptr ? Word::form_work_done_intro : Word::form_work_rule_intro;
    const bool chooses = form.subject == form.aircraft && rule == nullptr;
    FieldView* item = find_field(form, "item");
    if (item != nullptr && !chooses) form.fields.erase(form.fields.begin() + 1);
    if (item == nullptr && chooses)
        form.fields.insert(form.fields.begin() + 1, item_field(aircraft));
}

}  // namespace twoclocks::canvas
