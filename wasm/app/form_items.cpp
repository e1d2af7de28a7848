// Items with their limits, and work that renews them.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"

#include "engine/base/message_args.hpp"
#include "engine/limits/due.hpp"

namespace twoclocks::canvas {
namespace {

using base::Date;
using base::FlightTime;
using base::Problem;
using base::Trouble;
using base::Word;

[[nodiscard]] std::string total_text(const FormContext& context) {
    if (context.aircraft == nullptr) return {};
    const std::optional<FlightTime> total = limits::total_time(*context.aircraft);
    return total ? tenths_text(*total) : std::string{};
}

void complain(FieldReader& reader,
              std::string field,
              Trouble code,
              std::vector<base::Arg> args = {}) {
    Problem problem = base::trouble(code, std::move(args));
    problem.field = std::move(field);
    reader.complain(std::move(problem));
}

[[nodiscard]] std::optional<base::Count> as_count(const std::optional<std::int64_t>& whole) {
    if (!whole) return std::nullopt;
    return base::Count{*whole};
}

[[nodiscard]] facts::LimitSet read_limit(FieldReader& reader) {
    facts::LimitSet limit;
    limit.limit_class = static_cast<facts::LimitClass>(reader.choice("class"));
    limit.hours = reader.hours("hours");
    const auto months = reader.whole("months");
    if (months) limit.months = static_cast<std::int32_t>(*months);
    limit.landings = as_count(reader.whole("landings"));
    limit.rule = static_cast<base::CalendarRule>(reader.choice("rule"));
    limit.anchor = facts::Anchor::release;
    limit.anchor_on = reader.date("last_on");
    limit.anchor_total = reader.hours("last_total");
    limit.source = reader.text("source");
    limit.revision = reader.text("revision");
    return limit;
}

void check_limit(const facts::LimitSet& limit, Date today, FieldReader& reader) {
    constexpr std::int32_t most_months = 1200;
    if (!limit.hours && !limit.months && !limit.landings) {
        if (reader.sound()) complain(reader, "hours", Trouble::limit_without_any);
        return;
    }
    if (limit.hours && limit.hours->seconds == 0) complain(reader, "hours", Trouble::limit_zero);
    if (limit.months && *limit.months == 0) complain(reader, "months", Trouble::limit_zero);
    if (limit.landings && limit.landings->value == 0)
        complain(reader, "landings", Trouble::limit_zero);
    if (limit.months && *limit.months > most_months) {
        complain(reader, "months", Trouble::months_absurd, {base::whole_arg(*limit.months)});
    }
    if (limit.anchor_on && *limit.anchor_on > today) {
        complain(reader, "last_on", Trouble::entry_day_ahead, {base::day_arg(*limit.anchor_on)});
    }
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
    if (context.aircraft == nullptr) return {};
    for (const timeline::ItemState& item : context.aircraft->items) {
        if (item.id == id) return item.name;
    }
    return {};
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

void make_new_item(Form& form, const FormContext& context) {
    form.title = Word::form_new_item;
    form.intro = Word::form_new_item_intro;
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    const bool has_overhaul = context.aircraft != nullptr && !context.aircraft->items.empty();
    field("name", Word::field_item_name, FieldKind::text, {}, Need::needed);
    form.fields.push_back(make_choice(
        "role",
        Word::field_role,
        {Word::role_overhaul, Word::role_inspection, Word::role_component, Word::role_other},
        has_overhaul ? 1 : 0));
    field("hours", Word::field_hours, FieldKind::hours, {}, Need::optional);
    field("months", Word::field_months, FieldKind::whole, {}, Need::optional);
    field("landings", Word::field_landings, FieldKind::whole, {}, Need::optional);
    field("last_on", Word::field_last_on, FieldKind::date, {}, Need::optional);
    field("last_total",
          Word::field_last_total,
          FieldKind::hours,
          total_text(context),
          Need::optional);
    form.fields.push_back(make_choice("class", Word::field_class, class_words(), 2));
    form.fields.push_back(make_choice("rule", Word::field_rule, rule_words(), 0));
    field("source", Word::field_source, FieldKind::text, {}, Need::optional);
    field("revision", Word::field_revision, FieldKind::text, {}, Need::optional);
}

Facts take_new_item(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const std::string name = reader.text("name");
    const facts::LimitSet limit = read_limit(reader);
    check_limit(limit, context.today, reader);
    if (!reader.sound()) return {};
    const base::Id item = signer.new_id();
    const auto role = static_cast<facts::ItemRole>(reader.choice("role"));
    const auto sign = [&](base::Id id, facts::Fields fields) {
        return signer.sign(
            id, {context.today, {form.aircraft, item}, std::move(fields), {}}, context.journal);
    };
    return {sign(item, facts::ItemAdded{name, role, {}}), sign(signer.new_id(), limit)};
}

void make_work_done(Form& form, const FormContext& context) {
    form.title = Word::form_work_done;
    form.intro = Word::form_work_done_intro;
    const bool chooses = form.subject == form.aircraft;
    if (chooses && context.aircraft != nullptr) {
        FieldView choice = make_choice("item", Word::field_item, {}, 0);
        for (const timeline::ItemState& item : context.aircraft->items) {
            choice.options.push_back({Word::record_of, {base::text_arg(item.name)}});
        }
        form.fields.push_back(std::move(choice));
    }
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
    const base::Id item = renewed_item(reader, form, context);
    if (on && *on > context.today)
        complain(reader, "date", Trouble::entry_day_ahead, {base::day_arg(*on)});
    if (item.empty()) complain(reader, "item", Trouble::form_no_item);
    if (!reader.sound()) return {};
    work.renews = {{item, {}}};
    facts::Body body{*on, {form.aircraft, item}, std::move(work), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_usage_plan(Form& form, const FormContext&) {
    form.title = Word::form_usage_plan;
    form.intro = Word::form_usage_plan_intro;
    form.fields.push_back(
        make_field("month", Word::field_plan_month, FieldKind::hours, {}, Need::needed));
    form.fields.push_back(make_field("why", Word::field_why, FieldKind::text, {}, Need::optional));
}

Facts take_usage_plan(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    constexpr std::int64_t most_month_hours = 744;
    const auto month = reader.hours("month");
    const std::string why = reader.text("why");
    if (month && *month > base::hours(most_month_hours)) {
        complain(reader, "month", Trouble::form_month_absurd, {base::whole_arg(most_month_hours)});
    }
    if (!reader.sound()) return {};
    facts::Body body{context.today, {form.aircraft}, facts::UsagePlanned{*month, why}, {}};
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
    if (from && until && *until <= *from)
        complain(reader, "until", Trouble::form_ends_before_start);
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
