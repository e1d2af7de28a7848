// Work that renews items, flying planned, and spells out of service.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/work_words.hpp"

#include "engine/base/message_args.hpp"
#include "engine/limits/due.hpp"

namespace twoclocks::canvas {
namespace {

using base::FlightTime;
using base::Trouble;
using base::Word;

[[nodiscard]] std::string total_text(const FormContext& context) {
    if (context.aircraft == nullptr) return {};
    const std::optional<FlightTime> total = limits::total_time(*context.aircraft);
    return total ? tenths_text(*total) : std::string{};
}

[[nodiscard]] std::optional<base::Count> as_count(const std::optional<std::int64_t>& whole) {
    if (!whole) return std::nullopt;
    return base::Count{*whole};
}

/// The item that a work form renews: its subject, or the one chosen from the list.
[[nodiscard]] base::Id renewed_item(FieldReader& reader,
                                    const Form& form,
                                    const FormContext& context) {
    if (form.subject != form.aircraft) return form.subject;
    const auto& items = context.aircraft->items;
    const auto chosen = static_cast<std::size_t>(reader.choice("item"));
    return chosen < items.size() ? items[chosen].id : base::Id{};
}

[[nodiscard]] std::string item_name(const FormContext& context, base::Id id) {
    const timeline::ItemState* item = item_of(context, id);
    return item == nullptr ? std::string{} : item->name;
}

}  // namespace

std::vector<Word> class_words() {
    return {Word::class_airworthiness,
            Word::class_directive,
            Word::class_programme,
            Word::class_recommended};
}

std::vector<Word> rule_words() {
    return {Word::rule_exact, Word::rule_month_end};
}

void make_work_done(Form& form, const FormContext& context) {
    form.title = Word::form_work_done;
    form.intro = Word::form_work_done_intro;
    const bool chooses = form.subject == form.aircraft;
    if (std::optional<FieldView> rules = rule_field(form, context))
        form.fields.push_back(std::move(*rules));
    if (chooses && context.aircraft != nullptr)
        form.fields.push_back(item_field(*context.aircraft));
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    field("what",
          Word::field_what,
          FieldKind::text,
          chooses ? std::string{} : item_name(context, form.subject),
          Need::needed);
    field("date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed);
    field(
        "total", Word::field_total_at_work, FieldKind::hours, total_text(context), Need::optional);
    field("landings", Word::field_landings_at_work, FieldKind::whole, {}, Need::optional);
    field("done_by", Word::field_done_by, FieldKind::text, {}, Need::optional);
    field("place", Word::field_place, FieldKind::text, {}, Need::optional);
    field("reference", Word::field_reference, FieldKind::text, {}, Need::optional);
}

Facts take_work_done(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::WorkDone work;
    work.what = reader.text("what");
    work.total = reader.hours("total");
    work.landings = as_count(reader.whole("landings"));
    work.done_by = reader.text("done_by");
    work.place = reader.text("place");
    work.reference = reader.text("reference");
    const auto on = reader.date("date");
    const timeline::WorkRuleState* rule = chosen_rule(form, context);
    const base::Id item = rule != nullptr ? base::Id{} : renewed_item(reader, form, context);
    if (on && *on > context.today)
        reader.complain("date", Trouble::entry_day_ahead, {base::day_arg(*on)});
    const bool renews = rule == nullptr ? !item.empty() : !rule->renews.empty();
    if (!renews) reader.complain(rule == nullptr ? "item" : "rule", Trouble::form_no_item);
    if (!reader.sound()) return {};
    std::vector<base::Id> about{form.aircraft};
    if (rule == nullptr) about.push_back(item);
    // A copy: the record stands alone whatever becomes of the rule.
    work.renews = rule == nullptr ? std::vector<facts::Renewal>{{item, {}}} : rule->renews;
    facts::Body body{*on, std::move(about), std::move(work), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_usage_plan(Form& form, const FormContext&) {
    form.title = Word::form_usage_plan;
    form.intro = Word::form_usage_plan_intro;
    form.fields.push_back(
        make_field("month", Word::field_plan_month, FieldKind::hours, {}, Need::needed));
    form.fields.push_back(make_field("why", Word::field_why, FieldKind::text, {}, Need::optional));
    for (std::size_t month = 0; month < facts::month_keys.size(); ++month) {
        FieldView field = make_field(std::string{facts::month_keys[month]},
                                     base::month_word(month),
                                     FieldKind::hours,
                                     {},
                                     Need::optional);
        field.more = true;
        form.fields.push_back(std::move(field));
    }
}

Facts take_usage_plan(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const auto hours_of = [&](std::string_view id) {
        constexpr std::int64_t most_month_hours = 744;
        const auto hours = reader.hours(id);
        if (hours && *hours > base::hours(most_month_hours)) {
            reader.complain(
                std::string{id}, Trouble::form_month_absurd, {base::whole_arg(most_month_hours)});
        }
        return hours;
    };
    facts::UsagePlanned plan;
    const auto month = hours_of("month");
    plan.why = reader.text("why");
    for (std::size_t place = 0; place < facts::month_keys.size(); ++place)
        plan.by_month[place] = hours_of(facts::month_keys[place]);
    if (!reader.sound()) return {};
    plan.month = *month;
    facts::Body body{context.today, {form.aircraft}, std::move(plan), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_parked(Form& form, const FormContext& context) {
    form.title = Word::form_parked;
    form.intro = Word::form_parked_intro;
    form.fields.push_back(make_field(
        "date", Word::field_from, FieldKind::date, base::print_date(context.today), Need::needed));
    form.fields.push_back(
        make_field("until", Word::field_until, FieldKind::date, {}, Need::optional));
    form.fields.push_back(make_field("why", Word::field_why, FieldKind::text, {}, Need::optional));
}

Facts take_parked(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const auto from = reader.date("date");
    const auto until = reader.date("until");
    const std::string why = reader.text("why");
    if (from && until && *until <= *from) reader.complain("until", Trouble::form_ends_before_start);
    if (!reader.sound()) return {};
    facts::Body body{*from, {form.aircraft}, facts::OutOfService{until, why}, {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_author(Form& form, const FormContext& context) {
    form.title = Word::form_author;
    form.intro = Word::form_author_intro;
    form.fields.push_back(
        make_field("author", Word::field_author, FieldKind::text, context.author, Need::optional));
}

}  // namespace twoclocks::canvas
