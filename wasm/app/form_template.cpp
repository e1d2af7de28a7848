// "What your documents say": a part of a type template at a time, with the document it stands in.
#include "wasm/app/form_template.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/work_words.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"
#include "engine/facts/check.hpp"
#include "engine/facts/journal.hpp"

namespace twoclocks::canvas {
namespace {

using base::Problem;
using base::Word;
using facts::LimitSet;
using facts::TemplateItem;
using facts::TemplateWork;
using timeline::AircraftState;

/// The options of an item, in this order; a work has the first and the last.
enum Taking : std::int32_t { as_shown, other_figures, left_out };

[[nodiscard]] FieldView named_field(
    const std::string& id, Word label, FieldKind kind, const std::string& name, std::string text) {
    FieldView out = make_field(id, label, kind, std::move(text), Need::optional);
    out.label.args = {base::text_arg(name)};
    return out;
}

template <class Figure>
[[nodiscard]] std::string whole_text(const std::optional<Figure>& figure) {
    if (!figure) return {};
    if constexpr (std::is_same_v<Figure, base::Count>)
        return std::to_string(figure->value);
    else
        return std::to_string(*figure);
}

/// What an item of other figures asks for.
void add_other_fields(const TemplateItem& item, std::vector<FieldView>& out) {
    const LimitSet& limit = item.limit;
    const std::string& name = item.item.name;
    const auto field = [&](const char* id, Word label, FieldKind kind, std::string text) {
        out.push_back(named_field(id + item.key, label, kind, name, std::move(text)));
    };
    field("hours-",
          Word::field_other_hours,
          FieldKind::hours,
          limit.hours ? tenths_text(*limit.hours) : std::string{});
    if (limit.days)
        field("days-", Word::field_other_days, FieldKind::whole, whole_text(limit.days));
    else
        field("months-", Word::field_other_months, FieldKind::whole, whole_text(limit.months));
    if (limit.landings)
        field(
            "landings-", Word::field_other_landings, FieldKind::whole, whole_text(limit.landings));
    if (limit.starts)
        field("starts-", Word::field_other_starts, FieldKind::whole, whole_text(limit.starts));
    field("source-", Word::field_other_source, FieldKind::text, {});
    field("revision-", Word::field_other_revision, FieldKind::text, {});
}

void add_item(const TemplateItem& item, const std::vector<FieldView>& before, Form& form) {
    FieldView choice =
        make_choice("take-" + item.key,
                    Word::as_told,
                    {Word::template_take, Word::template_change, Word::template_leave},
                    as_shown);
    choice.label.args = {base::text_arg(item.item.name)};
    choice.alike = true;
    choice.told = limit_lines(item.limit);
    keep_entry(choice, before);
    const bool other = choice.chosen == other_figures;
    form.fields.push_back(std::move(choice));
    if (!other) return;
    std::vector<FieldView> fields;
    add_other_fields(item, fields);
    for (FieldView& field : fields) {
        keep_entry(field, before);
        form.fields.push_back(std::move(field));
    }
}

void add_work(const TemplateWork& work,
              const std::vector<facts::Renewal>& renews,
              const AircraftState& aircraft,
              const std::vector<FieldView>& before,
              Form& form) {
    FieldView choice = make_choice(
        "work-" + work.name, Word::as_told, {Word::template_take, Word::template_leave}, 0);
    choice.label.args = {base::text_arg(work.name)};
    choice.alike = true;
    choice.told = renewal_lines(renews, aircraft);
    keep_entry(choice, before);
    form.fields.push_back(std::move(choice));
}

[[nodiscard]] LimitSet read_other(FieldReader& reader, const TemplateItem& item) {
    LimitSet limit = item.limit;
    const auto small = [&](const char* id) -> std::optional<std::int32_t> {
        const auto whole = reader.whole(id + item.key);
        return whole ? std::optional{static_cast<std::int32_t>(*whole)} : std::nullopt;
    };
    const auto counted = [&](const char* id) -> std::optional<base::Count> {
        const auto whole = reader.whole(id + item.key);
        return whole ? std::optional{base::Count{*whole}} : std::nullopt;
    };
    limit.hours = reader.hours("hours-" + item.key);
    limit.months = small("months-");
    limit.days = small("days-");
    limit.landings = counted("landings-");
    limit.starts = counted("starts-");
    return limit;
}

[[nodiscard]] facts::TakenOver taken_over(FieldReader& reader,
                                          const Form& form,
                                          const FormContext& context) {
    return {context.today, form.aircraft, reader.text("source"), reader.text("revision")};
}

/// Where the aircraft's overhaul counts from, clock by clock.
[[nodiscard]] facts::LastOverhaul last_overhaul(const AircraftState& aircraft) {
    facts::LastOverhaul out;
    for (const timeline::ItemState& item : aircraft.items) {
        if (item.role != facts::ItemRole::overhaul || !item.limit) continue;
        const auto& hours = item.renewed[static_cast<std::size_t>(facts::Clock::hours)];
        const auto& calendar = item.renewed[static_cast<std::size_t>(facts::Clock::calendar)];
        if (!hours && !calendar) out.anchor = item.limit->anchor;
        out.on = calendar ? calendar->on : item.limit->anchor_on;
        out.total = hours ? hours->total : item.limit->anchor_total;
        return out;
    }
    return out;
}

/// Takes the items of a form over, each with its own figures and document where it has them.
class Taker {
  public:
    Taker(Form& form, const FormContext& context, Signer& signer)
        : form_(form),
          context_(context),
          signer_(signer),
          reader_(form),
          taken_(taken_over(reader_, form, context)),
          last_(last_overhaul(*context.aircraft)) {}

    void item(const TemplateItem& item) {
        const std::int32_t taking = reader_.choice("take-" + item.key);
        if (taking == left_out) return;
        facts::TakenOver taken = taken_;
        LimitSet limit = item.limit;
        if (taking == other_figures) {
            limit = read_other(reader_, item);
            const std::string source = reader_.text("source-" + item.key);
            const std::string revision = reader_.text("revision-" + item.key);
            // A document has its own revision: the one of another says nothing of it.
            if (!source.empty()) taken.source = source;
            if (!source.empty() || !revision.empty()) taken.revision = revision;
        }
        const base::Id id = signer_.new_id();
        bool first = true;
        for (facts::Body& body : facts::item_bodies(item, limit, taken, last_, id)) {
            complain(body, item);
            sign(first ? id : signer_.new_id(), std::move(body));
            first = false;
        }
    }

    /// A rule on record that lacks what has been taken over since is corrected, not doubled.
    void work(const TemplateWork& work, const std::vector<std::pair<std::string, base::Id>>& ids) {
        if (reader_.choice("work-" + work.name) != as_shown) return;
        facts::Body body = facts::rule_body(work, ids, taken_);
        for (const timeline::WorkRuleState& rule : context_.aircraft->work_rules) {
            if (rule.name == work.name) return correct(rule.version, std::move(body));
        }
        sign(signer_.new_id(), std::move(body));
    }

    [[nodiscard]] Facts facts() {
        if (reader_.sound() && out_.empty())
            reader_.complain(base::trouble(base::Trouble::form_nothing_taken));
        return reader_.sound() ? std::move(out_) : Facts{};
    }

  private:
    void complain(const facts::Body& body, const TemplateItem& item) {
        for (Problem& problem : facts::check(body)) {
            problem.field += "-" + item.key;
            reader_.complain(std::move(problem));
        }
    }

    void correct(base::Id rule, facts::Body body) {
        const std::vector<const facts::Fact*> same = context_.journal.with_id(rule);
        if (same.empty()) return;
        facts::Correction correction{facts::ref_to(context_.journal, *same.front()),
                                     std::string{base::pattern(Word::reason_more_items)},
                                     std::make_shared<facts::Body>(std::move(body))};
        sign(signer_.new_id(), {context_.today, {form_.aircraft}, std::move(correction), {}});
    }

    void sign(base::Id id, facts::Body body) {
        out_.push_back(signer_.sign(id, std::move(body), context_.journal));
    }

    Form& form_;
    const FormContext& context_;
    Signer& signer_;
    FieldReader reader_;
    facts::TakenOver taken_;
    facts::LastOverhaul last_;
    Facts out_;
};

}  // namespace

void make_from_template(Form& form, const FormContext&) {
    form.title = Word::form_template;
    form.intro = Word::form_template_intro;
    form.submit = Word::form_template_submit;
    form.fields.push_back(template_field());
}

void reshape_from_template(Form& form, const FormContext& context) {
    const std::vector<FieldView> before = std::exchange(form.fields, {});
    const auto add = [&](FieldView field) {
        keep_entry(field, before);
        form.fields.push_back(std::move(field));
    };
    add(template_field());
    const facts::TypeTemplate* type = chosen_template(form);
    if (type == nullptr || context.aircraft == nullptr) return;
    const std::vector<TemplatePart> parts = parts_left(*type, *context.aircraft);
    form.fields.front().told = {{Word::as_told, {base::text_arg(type->note)}}};
    if (parts.empty()) {
        form.fields.front().told.push_back({Word::template_nothing_left, {}});
        return;
    }
    FieldView part = make_choice("part", Word::field_template_part, {}, 0);
    for (const TemplatePart& each : parts)
        part.options.push_back(title_of(each));
    add(std::move(part));
    add(with_hint(make_field("source", Word::field_source, FieldKind::text, {}, Need::optional),
                  Word::hint_template_source));
    add(make_field("revision", Word::field_revision, FieldKind::text, {}, Need::optional));
    const std::optional<TemplatePart> asked = part_asked(form);
    if (!asked) return;
    for (const TemplateItem* item : items_left(*type, *context.aircraft, *asked))
        add_item(*item, before, form);
    if (asked->kind != TemplatePart::Kind::works) return;
    const auto ids = on_record(*type, *context.aircraft);
    for (const TemplateWork* work : works_left(*type, *context.aircraft))
        add_work(*work, facts::renewals_of(*work, ids), *context.aircraft, before, form);
}

Facts take_from_template(Form& form, const FormContext& context, Signer& signer) {
    const facts::TypeTemplate* type = chosen_template(form);
    const std::optional<TemplatePart> asked = part_asked(form);
    Taker taker{form, context, signer};
    if (type == nullptr || !asked) return taker.facts();
    for (const TemplateItem* item : items_left(*type, *context.aircraft, *asked))
        taker.item(*item);
    if (asked->kind == TemplatePart::Kind::works) {
        const auto ids = on_record(*type, *context.aircraft);
        for (const TemplateWork* work : works_left(*type, *context.aircraft))
            taker.work(*work, ids);
    }
    return taker.facts();
}

}  // namespace twoclocks::canvas
